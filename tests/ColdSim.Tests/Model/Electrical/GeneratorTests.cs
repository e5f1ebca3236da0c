using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Furnace;
using Xunit;

namespace ColdSim.Tests.Model.Electrical;

public class GeneratorTests
{
    private const double PoundAnHour_W = ColdSim.Physics.Units.ConversionFactors.Pound_kg * 50.33e6 / 3600;

    private static readonly GeneratorSpecification Set = new() { Rated_W = 3000 };

    [Theory]
    [InlineData(0, 1.2, 1.5)]
    [InlineData(1000, 1.8, 2.2)]
    [InlineData(2000, 2.4, 2.9)]
    public void Gas_follows_the_trades_line(double load_W, double least_lb_h, double most_lb_h)
        => Assert.InRange(Set.Input_W(load_W) / PoundAnHour_W, least_lb_h, most_lb_h);

    [Theory]
    [InlineData(1000, 0.96, 0.97)]
    [InlineData(5000, 0.80, 0.85)]
    public void Height_takes_three_to_four_percent_per_thousand_feet(double feet, double least, double most)
        => Assert.InRange(Set.Power_W(feet * 0.3048) / 3000, least, most);

    [Theory]
    [InlineData(12_000, 1.2, 2.0)]
    [InlineData(18_000, 2, 3.5)]
    [InlineData(25_000, 4, 6)]
    [InlineData(30_000, 6, 8)]
    [InlineData(35_000, 7, 9)]
    [InlineData(41_000, 10, 12)]
    public void A_furnace_fan_draws_the_current_of_its_class(double input_Btu_h, double least_A, double most_A)
        => Assert.InRange(FurnaceSpecification.UsualFanCurrent_A(input_Btu_h * Rigs.Btu_h), least_A, most_A);

    [Fact]
    public void Generator_starts_on_low_charge_stops_on_high_and_keeps_its_hours()
    {
        GeneratorControl set = new(Set with { Hours = [new ClockWindow(8 * 3600, 20 * 3600)] });
        set.SetClock(3600);
        Assert.False(set.Update(0.1, true, 3000, 0));
        set.SetClock(9 * 3600);
        Assert.True(set.Update(0.1, true, 3000, 10));
        Assert.False(set.Update(0.5, true, 3000, 20));
        Assert.True(set.Update(0.9, true, 3000, 100));
        Assert.True(set.Update(0.2, true, 3000, 200));
        set.SetClock(20 * 3600);
        Assert.True(set.Update(0.3, true, 3000, 210));
        Assert.False(set.Runs);
    }

    [Fact]
    public void Generator_runs_and_rests_for_a_minute_at_least_whatever_the_charge()
    {
        GeneratorControl set = new(Set with { StartBelow_frac = 0.5, StopAbove_frac = 0.500001 });
        set.SetClock(0);
        Assert.True(set.Update(0.4, true, 3000, 0));
        Assert.False(set.Update(0.6, true, 3000, 59));
        Assert.True(set.Update(0.6, true, 3000, 60));
        Assert.False(set.Update(0.4, true, 3000, 119));
        Assert.True(set.Update(0.4, true, 3000, 120));
    }

    [Fact]
    public void Generator_needs_voltage_to_start_and_gas_to_run()
    {
        GeneratorControl set = new(Set);
        set.SetClock(0);
        Assert.False(set.Update(0, false, 3000, 0));
        Assert.True(set.Update(0.1, true, 3000, 0));
        Assert.True(set.Update(0.1, true, 1000, 5));
        Assert.True(set.WantsGas);
        Assert.False(set.Update(0.1, true, 3000, 6));
        Assert.True(set.Update(0.1, true, 3000, 606));
    }

    [Fact]
    public void A_converter_of_45_A_draws_some_750_W()
    {
        ConverterSpecification converter = new();
        Assert.Equal(540, converter.Rated_W, 1e-9);
        Assert.InRange(converter.Mains_W(converter.Rated_W), 700, 800);
    }
}
