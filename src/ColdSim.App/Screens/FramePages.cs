using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Readings;
using ColdSim.App.Text;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens;

/// <summary>What the screen opens on.</summary>
/// <param name="Report">The run.</param>
/// <param name="Options">The scenario's options.</param>
/// <param name="File">The scenario's file as it was given; null for the demo.</param>
internal sealed record Opening(RunReport Report, IReadOnlyList<ComparedOption> Options, string? File = null);

/// <summary>Which pages there are.</summary>
internal static class FramePages
{
    public static FrameView Open(Opening opening, UnitStyle units) => new(
        [
            new NightFramePage(NightView.Open(opening.Report, units)),
            TripPage.Of(opening.Report.Scenario, units),
            OptionsPage.Of(opening.Report, opening.Options, units),
            WhyPage.Of(opening.Report, units),
            LimitsPage.Of(opening.Report.Scenario, units),
            ReadingsPage.Of(opening.Report.Scenario, opening.File, units, TimeProvider.System),
            ChancePage.Of(opening.Report, units),
            .. GasPage.Of(opening.Report, units),
            .. PowerPage.Of(opening.Report, units),
        ],
        units);
}
