using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Plan;
using ColdSim.App.Screens.Readings;
using ColdSim.App.Screens.Signs;
using ColdSim.App.Screens.Tries;
using ColdSim.App.Text;
using ColdSim.Files.Disk;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Frame;

/// <summary>What the screen opens on.</summary>
/// <param name="Report">The run.</param>
/// <param name="Options">The scenario's options.</param>
/// <param name="Clock">By which readings are dated.</param>
/// <param name="File">The scenario's file as it was given; null for the demo.</param>
internal sealed record Opening(RunReport Report, IReadOnlyList<ComparedOption> Options, TimeProvider Clock, string? File = null)
{
    /// <summary>The files that were read for it, which the log may not be.</summary>
    public FilesRead? Reads { get; init; }

    /// <summary>The scenario files that can be opened from the screen; null for none.</summary>
    public IScenarioFiles? Files { get; init; }

    /// <summary>The files as they were when they were read.</summary>
    public FileStamps Stamps { get; init; } = FileStamps.None;

    /// <summary>The scenario as its file says, with which the log is compared; null where the run is of it.</summary>
    public Scenario? AsWritten { get; init; }

    /// <summary>Whether it is drawn with plain characters only.</summary>
    public bool Plain { get; init; }

    /// <summary>The scenario on the bench; null where nothing can be tried.</summary>
    public Workbench? Bench { get; init; }

    /// <summary>Where tries are saved; null where they cannot be.</summary>
    public TryFiles? Tries { get; init; }

    /// <summary>The pages there are, the plan open.</summary>
    public FrameView Frame(UnitStyle units)
    {
        PlanPage plan = PlanPage.Of(Report, units);
        if (Bench is not null)
            plan = plan with { Try = TryState.Of(Bench) with { Units = units, Night = plan.View.Night }, Files = Tries };
        IPage readings = ReadingsPage.Of(AsWritten ?? Report.Scenario, File, units, Clock) with
        {
            Reads = Reads,
            TakeOver = Files is { } files && File is { } file ? fit => files.TakeOver(fit, file) : null,
        };
        return new(Pages(plan, readings, DiagnosePage.Of(Report, units), Report, units), units)
        {
            Report = Report,
            Source = this,
            PagesOf = (run, view) => Pages(
                view.Pages[0], view.Pages.First(p => p.Key == readings.Key),
                DiagnosePage.Of(run, view.Units).After(view.Pages.OfType<DiagnosePage>().First()), run, view.Units),
        };
    }

    // The readings are compared with the scenario as its file says, whatever is tried.
    private IReadOnlyList<IPage> Pages(IPage plan, IPage readings, IPage diagnose, RunReport run, UnitStyle units) =>
    [
        plan,
        TripPage.Of(run.Scenario, units),
        OptionsPage.Of(run, Options, units),
        WhyPage.Of(run, units),
        LimitsPage.Of(run.Scenario, units),
        readings,
        ChancePage.Of(run, units),
        .. GasPage.Of(run, units),
        .. PowerPage.Of(run, units),
        diagnose,
        BuyPage.Of(run == Report ? AsWritten ?? run.Scenario : run.Scenario, units),
    ];
}
