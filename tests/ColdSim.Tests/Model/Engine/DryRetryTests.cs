using ColdSim.Model;
using ColdSim.Model.Engine;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class DryRetryTests
{
    [Fact]
    public void A_dry_rig_in_falling_cold_is_not_stepped_from_minute_to_minute()
    {
        const double dry_h = 12, hours = 36, longest_s = 300;
        Rig rig = new() { Cylinders = [Bottle("5 lb", 0.02)], Appliances = [Draw(1200)] };
        Trace run = Run(rig, Changing(h => -5 - 0.5 * h, hours + 2), hours, longest_s);
        Assert.Contains(run.Steps, s => s.From.Time_s < dry_h * 3600 && s.To.CylinderPressure_Pa < rig.Appliances[0].MinimumPressure_Pa);
        Assert.InRange(run.Steps.Count(s => s.From.Time_s >= dry_h * 3600), 1, (hours - dry_h) * 3600 / longest_s + hours);
    }
}
