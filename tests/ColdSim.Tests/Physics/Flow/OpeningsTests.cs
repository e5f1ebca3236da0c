using ColdSim.Physics.Flow;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Flow;

public class OpeningsTests
{
    // The older rule of the handbook: Q = 9.4 A √(h ΔT) in cubic feet a minute, square feet, feet and °F, for inlets as large as outlets and an
    // effectiveness of 65 %; ours is 61 %. Buildings of its day are at about 80 °F.
    [Theory]
    [InlineData(1.0, 10, 10)]
    [InlineData(20, 30, 15)]
    [InlineData(0.1, 2, 30)]
    [Outside("BS 5925", Field.Infiltration, FromMemory = true)]
    public void Stack_flow_of_equal_openings_is_that_of_the_handbooks_rule(double area_ft2, double height_ft, double warmer_F)
    {
        double rule_m3_s = 9.4 * area_ft2 * Math.Sqrt(height_ft * warmer_F) * 0.028316847 / 60 * 0.61 / 0.65;
        double area_m2 = area_ft2 * 0.09290304;
        Assert.Equal(1, Openings.Stack_m3_s(area_m2, area_m2, height_ft * 0.3048, 300 + warmer_F / 1.8, 300) / rule_m3_s, 0.03);
    }

    [Fact]
    public void Stack_flow_does_not_care_which_way_it_goes_nor_which_opening_is_the_larger()
        => Gen.Select(Gen.Double[0, 0.2], Gen.Double[0, 0.2], Gen.Double[0, 2], Gen.Double[220, 320], Gen.Double[220, 320]).Sample((a, b, h, t, u) =>
            Openings.Stack_m3_s(a, b, h, t, u) == Openings.Stack_m3_s(b, a, h, u, t) && Openings.Stack_m3_s(a, b, h, t, u) >= 0);

    [Fact]
    public void One_opening_alone_has_no_stack_flow_and_a_far_larger_second_one_does_not_count()
    {
        Assert.Equal(0, Openings.Stack_m3_s(0.1, 0, 1, 250, 260));
        Assert.Equal(1, Openings.Stack_m3_s(0.01, 10, 1, 250, 260) / (Openings.Discharge * 0.01 * Math.Sqrt(2 * 9.80665 * 10.0 / 255)), 1e-6);
    }

    // A window of 1 m² on one side and a wind of 4 m/s: 0.1 m³/s.
    [Fact]
    [Outside("BS 5925", Field.Infiltration, FromMemory = true)]
    public void Wind_on_one_side_drives_a_fortieth_of_area_times_speed()
    {
        Assert.Equal(0.1, Openings.Wind_m3_s(1, 4), 1e-12);
        Assert.Equal(0.0125, Openings.Wind_m3_s(0.1, 5), 1e-12);
    }

    [Fact]
    public void Wind_and_weight_of_air_add_up_as_squares()
    {
        Assert.Equal(5e-3, Openings.Both_m3_s(3e-3, 4e-3), 1e-15);
        Assert.Equal(13e-3, Openings.Both_m3_s(12e-3, 5e-3), 1e-15);
    }

    [Fact]
    public void No_opening_lets_nothing_through() => Assert.Equal(0, Openings.Stack_m3_s(0, 0, 1, 250, 260));
}
