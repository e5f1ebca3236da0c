namespace ColdSim.Model.Engine;

/// <summary>How a run is to be made.</summary>
public sealed record SimulationSettings
{
    /// <summary>The first instant; its offset is the clock of the run.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>How long. [s]</summary>
    public required double Duration_s { get; init; }

    /// <summary>Longest step. [s]</summary>
    public required double Step_s { get; init; }

    /// <summary>Part of the asked gas below which an appliance is undersupplied.</summary>
    public required double Undersupplied_frac { get; init; }

    /// <summary>How cylinders and coach stand at the start; null takes it from their specifications.</summary>
    public RigState? From { get; init; }
}

/// <summary>How a run ended.</summary>
/// <param name="End">Why.</param>
/// <param name="Ended_s">When, since its start. [s]</param>
/// <param name="Ledger">How well it closes.</param>
public readonly record struct SimulationResult(RunEnd End, double Ended_s, LedgerBalance Ledger);

/// <summary>Why a run ended.</summary>
public enum RunEnd
{
    /// <summary>It reached the time asked for.</summary>
    Complete,

    /// <summary>The weather file ended first.</summary>
    WeatherEnded,

    /// <summary>Liquid filled the cylinder; the equations stop there.</summary>
    LiquidFull,

    /// <summary>Relief pressure was reached; the equations stop there.</summary>
    ReliefPressure,
}
