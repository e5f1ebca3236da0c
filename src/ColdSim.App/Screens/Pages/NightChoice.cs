namespace ColdSim.App.Screens.Pages;

/// <summary>The choice of a night on a page that has no time cursor.</summary>
internal static class NightChoice
{
    /// <summary>Index of the night after a message.</summary>
    /// <param name="message">The message.</param>
    /// <param name="night">Index of the night shown so far.</param>
    /// <param name="nights">How many nights there are.</param>
    public static int Update(PageMessage message, int night, int nights)
    {
        int chosen = message switch
        {
            PageMessage.Opened { At: { } at } => at.Night,
            PageMessage.NextNight next => night + next.Direction,
            PageMessage.Rows rows => night + Math.Sign(rows.Count),
            PageMessage.First => 0,
            PageMessage.Last => nights - 1,
            _ => night,
        };
        return Math.Clamp(chosen, 0, nights - 1);
    }
}
