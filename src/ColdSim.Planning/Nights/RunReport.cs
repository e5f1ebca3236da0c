using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>An event with its instant and the state at that instant. SI units.</summary>
/// <param name="Time">When it happened.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Inside_K">Inside air; NaN without a coach. [K]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="CylinderPressure_Pa">Pressure before the regulator; NaN for a filling. [Pa gauge]</param>
/// <param name="Left_kg">Propane left. [kg]</param>
public sealed record ReportedEvent(
    DateTimeOffset Time, ReportedKind Kind, double Inside_K, double Liquid_K, double CylinderPressure_Pa, double Left_kg)
{
    /// <summary>Place of the cylinder it happens to; 0 where it is none's.</summary>
    public int Cylinder { get; init; }

    /// <summary>The pipe, tank or bay whose water it is; null where it is none's.</summary>
    public string? Node { get; init; }

    /// <summary>The number that goes with the kind, SI.</summary>
    public double Value { get; init; }
}

/// <summary>Report of a run.</summary>
public sealed record RunReport
{
    /// <summary>The scenario that was run.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The whole run in one row.</summary>
    public required RunSummary Summary { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<NightReport> Nights { get; init; }

    /// <summary>What happened, in order.</summary>
    public required IReadOnlyList<ReportedEvent> Events { get; init; }

    /// <summary>How well energy and mass close.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>The curves at one-minute spacing; those that were not kept are worked out at first use.</summary>
    public RunSeries Series
    {
        get => Curves.Whole;
        init => Curves = new RunCurves(value);
    }

    /// <summary>The same curves, of which a run may have kept only a part.</summary>
    internal RunCurves Curves { get; init; } = new(new RunSeries(0));

    /// <summary>Why the run ended.</summary>
    public required RunEnd End { get; init; }

    /// <summary>What happens after the furnace stops, where the scenario says that it does.</summary>
    public CoolDown? CoolDown { get; init; }
}

/// <summary>A run's ledger does not close, so its results must not be reported.</summary>
internal sealed class LedgerOpenException(LedgerBalance ledger) : Exception("The ledger of a run does not close.")
{
    public LedgerBalance Ledger { get; } = ledger;
}

/// <summary>Why the rig of a scenario cannot start: what would end its run at the first instant.</summary>
/// <param name="Cause">Liquid that fills a cylinder, or a cylinder at its relief pressure.</param>
public sealed record CannotStart(RunEnd Cause)
{
    /// <summary>The reason as a sentence.</summary>
    public string Message => Cause == RunEnd.LiquidFull
        ? "The cylinder cannot start: at its first temperature its charge fills it with liquid."
        : "The cylinder cannot start: at its first temperature it is at its relief pressure.";
}

/// <summary>What a scenario came to: the report of its run, or why its rig cannot start. One of the two is null.</summary>
/// <param name="Report">The report.</param>
/// <param name="CannotStart">The reason.</param>
public sealed record RunOutcome(RunReport? Report, CannotStart? CannotStart)
{
    /// <summary>The report, for callers that have no answer without a run.</summary>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    public RunReport ReportOrThrow() => Report ?? throw new CannotRunException(CannotStart!.Message);
}

/// <summary>A question that cannot be answered by a run, for a reason that lies in what the person stated.</summary>
/// <param name="message">The reason, as a sentence for the person.</param>
internal sealed class CannotRunException(string message) : Exception(message);

/// <summary>A requested instant lies outside the run or beyond its weather.</summary>
/// <param name="time">The instant.</param>
internal sealed class TimeOutsideRunException(DateTimeOffset time)
    : Exception(FormattableString.Invariant($"{time:yyyy-MM-dd'T'HH:mmzzz} is outside the run."))
{
    /// <summary>The instant.</summary>
    public DateTimeOffset Time { get; } = time;
}
