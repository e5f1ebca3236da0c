using ColdSim.App.Screens.Frame;

namespace ColdSim.App.Screens.Pages;

/// <summary>Which night a page shows after a message, where all it has to choose is a night.</summary>
internal static class NightChoice
{
    /// <summary>Index of the night, within the run.</summary>
    /// <param name="message">What came.</param>
    /// <param name="night">The one shown so far.</param>
    /// <param name="nights">How many there are.</param>
    public static int After(PageMessage message, int night, int nights)
    {
        int wanted = message switch
        {
            PageMessage.Opened { At: { } at } => at.Night,
            PageMessage.NextNight next => night + next.Direction,
            PageMessage.Rows rows => night + Math.Sign(rows.Count),
            PageMessage.First => 0,
            PageMessage.Last => nights - 1,
            _ => night,
        };
        return Math.Clamp(wanted, 0, nights - 1);
    }
}
