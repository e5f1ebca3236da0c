using ColdSim.App.Commands;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;

namespace ColdSim.App.Screens;

/// <summary>Which pages there are.</summary>
internal static class FramePages
{
    public static FrameView Open(Opening opening, UnitStyle units) => new(
        [
            new NightFramePage(NightView.Open(opening.Report, units)),
        ],
        units);
}
