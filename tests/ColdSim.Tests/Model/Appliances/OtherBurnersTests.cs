using ColdSim.Model;
using ColdSim.Model.Appliances;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Appliances;

public class OtherBurnersTests
{
    [Fact]
    public void A_stove_burns_at_meals_and_its_heat_stays_inside()
    {
        Cooker stove = new() { Name = "stove", Input_W = 3000, Hours = [Everything.At(18, 18.5)] };
        Rig rig = new() { Cylinders = [BigTank()], Coach = OneNode(100, inside_C: 10), Appliances = [stove] };
        Trace with = Run(rig, Steady(0), 4), without = Run(rig with { Appliances = [] }, Steady(0), 4);
        Assert.Equal(3000 * 1800, with.Given_J, 1);
        Assert.True(with.At(2.5 * 3600).Inside_K - without.At(2.5 * 3600).Inside_K > 5);
        Assert.True(stove.IsUnvented);
    }

    [Fact]
    public void A_heater_keeps_its_own_thermostat_s_band_in_its_hours()
    {
        CatalyticHeater heater = new() { Name = "panel", Input_W = 4000, OwnThermostat = new SwitchBand(287.15, 289.15), Hours = [Everything.At(17, 23)] };
        Rig rig = new() { Cylinders = [BigTank()], Coach = OneNode(100, inside_C: 15), Appliances = [heater] };
        Trace run = Run(rig, Steady(-5), 12);
        Assert.All(run.Steps.Where(s => s.To.Time_s is > 3 * 3600 and < 7 * 3600), s => Assert.InRange(s.To.Inside_K, 287.14, 289.16));
        Assert.All(run.Steps.Where(s => s.From.Time_s >= 7 * 3600), s => Assert.Equal(0, s.Gas_W[1]));
        Assert.True(run.Last.Inside_K < 280);
    }

    [Fact]
    public void Appliance_that_needs_more_pressure_starves_first()
    {
        Rig rig = new()
        {
            Cylinders = [Bottle("5 lb", 0.5)],
            Appliances =
            [
                Draw(40_000) with { Name = "modest", MinimumPressure_Pa = 500 },
                Draw(8_000) with { Name = "proud", MinimumPressure_Pa = 2400 },
            ],
        };
        Trace run = Run(rig, Steady(-20), 3);
        double proud_s = run.Steps.First(s => s.IsShort[2] && s.Gas_W[2] == 0).From.Time_s;
        Assert.DoesNotContain(run.Steps, s => s.From.Time_s < proud_s && s.Gas_W[1] == 0);
        Assert.Equal("proud", Nights(rig, Steady(-20, 30), 1).Nights[0].FirstToStarve);
    }
}
