namespace ColdSim.Model.Engine;

/// <summary>Settings of a run.</summary>
internal sealed record SimulationSettings
{
    /// <summary>First instant; its offset from UTC is the clock of the run.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Duration. [s]</summary>
    public required double Duration_s { get; init; }

    /// <summary>Longest step. [s]</summary>
    public required double Step_s { get; init; }

    /// <summary>Satisfied fraction below which an appliance is undersupplied.</summary>
    public required double Undersupplied_frac { get; init; }

    /// <summary>Initial state; null for that of the specifications.</summary>
    public RigState? From { get; init; }
}

/// <summary>Result of a run.</summary>
/// <param name="End">Reason.</param>
/// <param name="Ended_s">Time of the end since the start. [s]</param>
/// <param name="Ledger">Residuals of its balances.</param>
internal readonly record struct SimulationResult(RunEnd End, double Ended_s, LedgerBalance Ledger);

/// <summary>Why a run ended.</summary>
public enum RunEnd
{
    /// <summary>It reached its whole duration.</summary>
    Complete,

    /// <summary>The weather file ended first.</summary>
    WeatherEnded,

    /// <summary>Liquid filled the cylinder; the equations stop there.</summary>
    LiquidFull,

    /// <summary>Relief pressure was reached; the equations stop there.</summary>
    ReliefPressure,
}
