using ColdSim.App.Screens.Plan;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Readings;
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

    /// <summary>The pages there are, the nights open.</summary>
    public FrameView Frame(UnitStyle units) => new(
        [
            PlanPage.Of(Report, units),
            TripPage.Of(Report.Scenario, units),
            OptionsPage.Of(Report, Options, units),
            WhyPage.Of(Report, units),
            LimitsPage.Of(Report.Scenario, units),
            ReadingsPage.Of(AsWritten ?? Report.Scenario, File, units, Clock) with { Reads = Reads, TakeOver = Files is { } files && File is { } file ? fit => files.TakeOver(fit, file) : null },
            ChancePage.Of(Report, units),
            .. GasPage.Of(Report, units),
            .. PowerPage.Of(Report, units),
        ],
        units)
    {
        Report = Report,
        Source = this,
    };
}
