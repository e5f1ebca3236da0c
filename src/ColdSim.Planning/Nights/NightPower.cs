using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>What somebody drew from the 12 V side in a night.</summary>
/// <param name="Name">Who.</param>
/// <param name="Energy">How much.</param>
public sealed record NightDraw(string Name, Energy Energy);

/// <summary>The 12 V side of a night.</summary>
public sealed record NightPower
{
    /// <summary>Each who draws, in order: the furnace's fan, the blankets, the loads.</summary>
    public required IReadOnlyList<NightDraw> Drawn { get; init; }

    /// <summary>What the panels gave.</summary>
    public required Energy Solar { get; init; }

    /// <summary>What shore power gave through the converter.</summary>
    public required Energy Shore { get; init; }

    /// <summary>What the generator gave through the converter.</summary>
    public required Energy Generator { get; init; }

    /// <summary>How long the generator ran.</summary>
    public required Duration GeneratorTime { get; init; }

    /// <summary>Lowest charge, of the rated.</summary>
    public required Ratio ChargeLow { get; init; }

    /// <summary>When that was.</summary>
    public required DateTimeOffset ChargeLowAt { get; init; }

    /// <summary>Charge at the last instant counted, of the rated.</summary>
    public required Ratio ChargeAtEnd { get; init; }

    /// <summary>When voltage was first gone; null where it never was.</summary>
    public required DateTimeOffset? FlatAt { get; init; }

    /// <summary>Gas left in the cylinders when voltage was first gone; null where it never was.</summary>
    public Mass? GasLeftAtFlat { get; init; }

    /// <summary>How long it was gone in all.</summary>
    public required Duration VoltageGone { get; init; }

    /// <summary>How long the bank was too cold to be charged.</summary>
    public Duration TooCold { get; init; }

    /// <summary>Everything drawn.</summary>
    public Energy DrawnInAll => Energy.FromJoules(Drawn.Sum(d => d.Energy.Joules));
}
