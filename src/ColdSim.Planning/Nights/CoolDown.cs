using ColdSim.Physics.Units;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>What happens, and how soon, when the furnace stops at an instant and stays out.</summary>
public sealed record CoolDown
{
    /// <summary>50 °F, below which a coach is too cold to live in. [K]</summary>
    public const double Fifty_K = 283.15;

    /// <summary>Freezing. [K]</summary>
    public const double Freezing_K = ConversionFactors.ZeroCelsius_K;

    /// <summary>When the furnace stops.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Outside air then.</summary>
    public required Temperature Outside { get; init; }

    /// <summary>Inside air then; null without a coach.</summary>
    public required Temperature? Inside { get; init; }

    /// <summary>Until inside is at 50 °F (10 °C); null where it is not within <see cref="Watched"/>, or without a coach.</summary>
    public required Duration? FiftyAfter { get; init; }

    /// <summary>Until inside is at freezing; null as for <see cref="FiftyAfter"/>.</summary>
    public required Duration? FreezingAfter { get; init; }

    /// <summary>Every bay's contents, pipe and tank that holds water.</summary>
    public required IReadOnlyList<WaterAfter> Water { get; init; }

    /// <summary>How far ahead the run goes: to the end of the weather, at most <see cref="CoolDownRun.LongestWatch_s"/>.</summary>
    public required Duration Watched { get; init; }

    /// <summary>The first water to freeze, or freezing by then, before any that is ice already; null where none does within <see cref="Watched"/>.</summary>
    public WaterAfter? First => Water.Where(w => w.BeginsAfter is not null)
        .OrderBy(w => w.SolidAfter is { Seconds: <= 0 }).ThenBy(w => w.BeginsAfter!.Value.Seconds).FirstOrDefault();
}

/// <summary>One body of water after the furnace has stopped.</summary>
/// <param name="Name">Name of the water.</param>
/// <param name="BeginsAfter">Until it begins to freeze; zero where it already had; null where it does not.</param>
/// <param name="SolidAfter">Until it is ice through and through; null where it is not.</param>
public sealed record WaterAfter(string Name, Duration? BeginsAfter, Duration? SolidAfter);
