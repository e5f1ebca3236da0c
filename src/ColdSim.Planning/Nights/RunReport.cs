using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>An event with its instant and what stood at that instant. SI units.</summary>
/// <param name="Time">When.</param>
/// <param name="Kind">What.</param>
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

/// <summary>Everything a run says.</summary>
public sealed record RunReport
{
    /// <summary>The question.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The whole run in one row.</summary>
    public required RunSummary Summary { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<NightReport> Nights { get; init; }

    /// <summary>What happened, in order.</summary>
    public required IReadOnlyList<ReportedEvent> Events { get; init; }

    /// <summary>How well energy and mass close.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>The curves at one-minute spacing.</summary>
    public required RunSeries Series { get; init; }

    /// <summary>Why the run ended.</summary>
    public required RunEnd End { get; init; }

    /// <summary>What happens after the furnace stops, where the scenario says that it does.</summary>
    public Freezing.HeatStop? HeatStop { get; init; }
}
