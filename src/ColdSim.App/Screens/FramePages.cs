using ColdSim.App.Commands;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Readings;
using ColdSim.App.Text;

namespace ColdSim.App.Screens;

/// <summary>Which pages there are.</summary>
internal static class FramePages
{
    public static FrameView Open(Opening opening, UnitStyle units) => new(
        [
            new NightFramePage(NightView.Open(opening.Report, units), opening.Parts),
            TripPage.Of(opening.Report.Scenario, opening.Parts, units),
            OptionsPage.Of(opening.Report, opening.Options, opening.Parts, units),
            WhyPage.Of(opening.Report, opening.Parts, units),
            LimitsPage.Of(opening.Report.Scenario, opening.Parts, units),
            ReadingsPage.Of(opening.Report.Scenario, opening.File, units, TimeProvider.System),
            ChancePage.Of(opening.Report, opening.Parts, units),
            .. GasPage.Of(opening.Report, units),
            .. PowerPage.Of(opening.Report, units),
        ],
        units);
}
