using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;
using Xunit;

namespace ColdSim.Tests.Model.Gas;

public class LeftBehindTests
{
    private const double Volume_m3 = 0.0216, Needed_Pa = 130_000;

    private static double Left_kg(GasMasses gas, double t_C) => MixedContents.LeftBehind_kg(gas, Volume_m3, t_C + 273.15, Needed_Pa);

    [Fact]
    public void Propane_leaves_nothing_as_long_as_it_has_pressure_and_all_when_it_has_none()
    {
        Assert.Equal(0, Left_kg(new(9, 0, 0), -20));
        Assert.Equal(9, Left_kg(new(9, 0, 0), -40), 0.1);
    }

    [Fact]
    public void A_blend_leaves_more_the_colder_it_is_and_what_is_left_has_just_the_pressure_needed()
    {
        GasMasses blend = GasGrade.Winter.Composition * 8;
        double before_kg = 0;
        foreach (double t_C in (double[])[0, -5, -10, -15, -20])
        {
            double left_kg = Left_kg(blend, t_C);
            Assert.True(left_kg >= before_kg);
            before_kg = left_kg;
        }

        Assert.InRange(before_kg, 3, 8);
        Assert.Equal(0, Left_kg(blend, 20), 1e-9);
    }

    [Fact]
    public void Most_of_the_special_duty_grade_can_be_used_at_minus_20_C()
        => Assert.InRange(Left_kg(GasGrade.SpecialDuty.Composition * 9, -20), 0, 0.35);

    [Fact, Outside("ASTM D1835", Field.Propane)]
    public void The_special_duty_grade_keeps_under_its_pressure_limit_at_100_F()
        => Assert.InRange(MixedContents.BubblePressure_Pa(GasGrade.SpecialDuty.Composition, 310.928) - 101_325, 1_150_000, 1_430_000);

    [Fact]
    public void The_special_duty_grade_has_two_and_a_half_percent_of_butane_by_liquid_volume()
        => Assert.Equal(0.025, 1 - GasBlend.LiquidVolumes(GasGrade.SpecialDuty.Composition).Propane, 1e-12);

    [Theory]
    [InlineData(2, 0.60)]
    [InlineData(3, 0.40)]
    public void Seasonal_blends_are_those_of_the_table(int place, double propane)
        => Assert.Equal(propane, GasBlend.LiquidVolumes(GasGrade.Of(place).Composition).Propane, 1e-12);
}
