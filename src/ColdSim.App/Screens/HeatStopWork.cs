using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens;

/// <summary>Working out how long is left when the furnace stops at an instant.</summary>
internal static class HeatStopWork
{
    public static PageWork At(Scenario scenario, DateTimeOffset at) => new(
        $"Finding how long is left when the furnace stops on {ClockText.DayClock(at)}",
        (_, cancel) =>
        {
            try
            {
                return FreezeOutlook.Of(scenario, [at], cancel).Stops[0];
            }
            catch (ArgumentOutOfRangeException e) when (e.ActualValue is DateTimeOffset)
            {
                throw new InvalidOperationException("nothing is known of the weather after that instant.");
            }
            catch (LedgerOpenException)
            {
                throw new InvalidOperationException(PageFaults.Ledger);
            }
        })
    { InPlace = true };
}
