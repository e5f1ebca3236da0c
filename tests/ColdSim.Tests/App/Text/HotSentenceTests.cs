using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.App.Text;

public class HotSentenceTests
{
    private static RunReport Under(BlanketSpecification blanket)
        => Rigs.Nights(new Rig { Cylinders = [Bottle("20 lb", 0.15) with { Blanket = blanket }], Appliances = [Draw(300)] }, Steady(5, 30), 1);

    [Fact]
    public void A_stuck_thermostat_is_a_danger_that_comes_before_anything_else()
    {
        RunReport report = Under(new BlanketSpecification { Power_W = 150, StuckOn = true });
        string first = string.Join(' ', RunText.Sections(report, UnitStyle.Us, [])[0].Lines.SkipWhile(l => l.Length > 0).Skip(1));
        Assert.StartsWith("DANGER: the cylinder passes 125 °F", first, StringComparison.Ordinal);
        Assert.Contains("under the stuck   thermostat", first, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blanket_that_switches_off_is_no_danger()
        => Assert.Null(NightSentence.Hot(Under(new BlanketSpecification { Power_W = 150 }), UnitStyle.Us));
}
