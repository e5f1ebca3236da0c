using ColdSim.App.Text;
using ColdSim.App.Text.Reports;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Purchases;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Commands;

/// <summary>What is worked out for a report: the run and its advice, the options, and what else was asked for.</summary>
/// <param name="started">The scenario.</param>
/// <param name="units">The person's units.</param>
internal sealed class ReportWork(StartedScenario started, UnitStyle units)
{
    private const int Seed = 1;

    /// <summary>Whether limits are found.</summary>
    public bool WithLimits { get; init; }

    /// <summary>Members of the chance; null where it is not asked for.</summary>
    public int? Members { get; init; }

    /// <summary>Whether set-ups that can be bought are compared.</summary>
    public bool WithPurchases { get; init; }

    /// <summary>Whether it says what the cylinders' instruments should show.</summary>
    public bool WithGauges { get; init; }

    /// <summary>Whether it says what to look at if the furnace will not light.</summary>
    public bool WithNoHeat { get; init; }

    /// <summary>Everything.</summary>
    public ReportContents Find(IProgress<int> done, CancellationToken cancel)
    {
        Scenario scenario = started.Scenario;
        RunAnswer run = RunWork.Of(scenario, latest: started.Latest, adviseIn: units).Answer(done, cancel);
        ReportContents contents = new(run.Report, run.Advice);
        return !run.Report.Ledger.Closes ? contents : contents with
        {
            Measured = run.Measured,
            Trip = scenario.Trip is null ? null : TripRun.Of(scenario, done, cancel: cancel),
            Options = started.Options.Count == 0 ? null : Comparison.Of(scenario, started.Options, done, cancel: cancel),
            Limits = WithLimits ? Limits(done, cancel) : null,
            Purchases = WithPurchases ? Purchases(AsWritten, done, cancel) : null,
            Gauges = WithGauges ? ExpectedReadings.Of(run.Report, at: null, cylinder: null) : null,
            NoHeat = WithNoHeat ? NoHeatContents.Of(run.Report) : null,
            Chance = Members is { } members ? ChanceRun.Of(scenario, [], members, Seed, done, cancel: cancel) : null,
        };
    }

    /// <summary>The limits alone.</summary>
    public LimitChart Limits(IProgress<int> done, CancellationToken cancel)
        => LimitChart.Of(started.Scenario, Axis, finished: done, cancel: cancel);

    // Cylinders are compared over all of the weather, as 'buy' does, wherever the run starts.
    private Scenario AsWritten => started.Latest?.Before ?? started.Scenario;

    private LimitAxis Axis => units.IsUs ? LimitAxis.Fahrenheit : LimitAxis.Celsius;

    private PurchaseReport Purchases(Scenario scenario, IProgress<int> done, CancellationToken cancel)
        => PurchaseReport.Of(scenario, SetUp.For(scenario.Rig, metric: !units.IsUs), Axis, finished: done, cancel: cancel);
}
