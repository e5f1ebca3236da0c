using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Tries;

/// <summary>What came of a try: its run, or why there is none.</summary>
/// <param name="Settings">What was tried.</param>
/// <param name="Report">The run; null where there is none.</param>
/// <param name="Refusal">Why not; empty where there is a run.</param>
internal sealed record TriedRun(TrySettings Settings, RunReport? Report, string Refusal = "")
{
    /// <summary>Whether all nights hold.</summary>
    public bool Holds => Report is { Summary.Verdict: Verdict.Holds, End: not (RunEnd.LiquidFull or RunEnd.ReliefPressure) };
}

/// <summary>The scenario on the bench: it is read again with what is tried, and run.</summary>
/// <param name="Draft">The scenario's text.</param>
/// <param name="AsItIs">The run without what is tried.</param>
/// <param name="Start">Moves a scenario to where the run starts, such as the latest reading of a log; it keeps the contents of the cylinders at the given places in the file.</param>
internal sealed record Workbench(ScenarioDraft Draft, RunReport AsItIs, Func<Scenario, IReadOnlyList<int>, Scenario> Start)
{
    /// <summary>What stands before the title of a scenario that is tried.</summary>
    public const string Tried = "AS TRIED: ";

    /// <summary>Everything that can be turned.</summary>
    public IReadOnlyList<Adjustment> Adjustments { get; private init; } = AdjustmentList.Of(AsItIs.Scenario);

    /// <summary>The bench with another run as the one without a try.</summary>
    public Workbench On(RunReport report) => this with { AsItIs = report, Adjustments = AdjustmentList.Of(report.Scenario) };

    /// <summary>Where adjustments are read.</summary>
    public TryPlace Place(TrySettings settings, int night, UnitStyle units) => new(AsItIs, Draft, settings, night, units);

    /// <summary>The keys of what is tried.</summary>
    public IReadOnlyList<KeyChange> Changes(TrySettings settings, UnitStyle units) => AdjustmentList.Changes(Adjustments, Place(settings, 0, units));

    /// <summary>Reads the scenario with what is tried and runs it.</summary>
    /// <param name="settings">What is tried.</param>
    /// <param name="night">The night that its words are of.</param>
    /// <param name="units">The units of its words.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public TriedRun Run(TrySettings settings, int night, UnitStyle units, CancellationToken cancel)
    {
        if (settings.IsNone)
            return new(settings, AsItIs);
        IReadOnlyList<KeyChange> changes = Changes(settings, units);
        ReadResult read;

        // The weather is read the first time, and by one thread.
        lock (Draft)
            read = Draft.With(changes);
        if (read.Scenario is not { } scenario)
            return new(settings, null, read.Problems[0].Accepted is { } accepted ? $"{read.Problems[0].What}; {accepted}" : read.Problems[0].What);
        scenario = Start(scenario, OwnCylinders(changes));
        string words = AdjustmentList.Words(Adjustments, Place(settings, night, units));
        RunOutcome outcome = NightRun.Try(scenario with { Title = $"{Tried}{words}; {AsItIs.Scenario.Title}" }, cancel);
        return outcome.Report is not { } report ? new(settings, null, outcome.CannotStart!.Message)
            : report.Ledger.Closes ? new(settings, report) : new(settings, null, Pages.PageJob.OpenLedger);
    }

    // Places in the file of the cylinders whose contents the try says.
    private static int[] OwnCylinders(IReadOnlyList<KeyChange> changes)
        => [.. changes.Select(c => c.Key.Split('.')).Where(k => k[0] == "cylinder" && k[^1] is "left" or "size").Select(k => k.Length > 2 ? int.Parse(k[1], System.Globalization.CultureInfo.InvariantCulture) - 1 : 0).Distinct()];
}
