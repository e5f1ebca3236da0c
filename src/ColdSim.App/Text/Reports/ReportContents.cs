using System.Globalization;
using ColdSim.Planning.Advice;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Purchases;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text.Reports;

/// <summary>What was worked out for a report.</summary>
/// <param name="Run">The run.</param>
/// <param name="Advice">Why it fails, what to do and what it hangs on.</param>
internal sealed record ReportContents(RunReport Run, RunAdvice? Advice)
{
    /// <summary>The same as a trip; null where it has no stops and no refills.</summary>
    public TripReport? Trip { get; init; }

    /// <summary>What was measured beside what was computed; null where the log has no such values.</summary>
    public MeasuredComparison? Measured { get; init; }

    /// <summary>The options side by side; null where there are none.</summary>
    public Comparison? Options { get; init; }

    /// <summary>The limits; null where they were not asked for.</summary>
    public LimitChart? Limits { get; init; }

    /// <summary>The chance; null where it was not asked for.</summary>
    public ChanceReport? Chance { get; init; }

    /// <summary>Set-ups that can be bought; null where they were not asked for.</summary>
    public PurchaseReport? Purchases { get; init; }

    /// <summary>What the cylinders' instruments should show; null where it was not asked for.</summary>
    public ExpectedReadings? Gauges { get; init; }

    /// <summary>What to look at if the furnace will not light; null where it was not asked for.</summary>
    public NoHeatContents? NoHeat { get; init; }
}

/// <summary>What a report was made of, by what and when.</summary>
/// <param name="File">The scenario's file.</param>
/// <param name="Version">The program's version.</param>
/// <param name="Today">The day.</param>
internal sealed record ReportOrigin(string File, string Version, DateTimeOffset Today)
{
    /// <summary>The same as a sentence.</summary>
    public string Sentence => string.Create(
        CultureInfo.InvariantCulture,
        $"Made from {File} on {Today:d MMMM yyyy} by coldsim {Version}. Estimates of a model, not measurements.");
}
