using ColdSim.Physics.Flow;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Flow;

public class FlowTests
{
    // The printed coefficients, got back through the whole formula: with 1000 cm² the flow squared is the coefficient itself.
    [Theory]
    [InlineData(ShelterClass.None, 0, 1, 0.000319)]
    [InlineData(ShelterClass.Isolated, 0, 1, 0.000246)]
    [InlineData(ShelterClass.AcrossTheRoad, 0, 1, 0.000174)]
    [InlineData(ShelterClass.Surrounded, 0, 1, 0.000104)]
    [InlineData(ShelterClass.Adjacent, 0, 1, 0.000032)]
    [InlineData(ShelterClass.None, 1, 0, 0.000145)]
    public void Basic_infiltration_gives_back_the_printed_coefficients(ShelterClass shelter, double dT_K, double wind_m_s, double printed)
        => Assert.Equal(Math.Sqrt(printed), Infiltration.Basic_m3_s(1000, dT_K, wind_m_s, shelter), 1e-12);

    // The rule for homes of unknown leakage: 0.7 Btu/h per °F and foot of perimeter, 1.21 W/(K m). A factor of two either way:
    // the rule knows neither wind nor leakage, and a trailer of 7.3 by 2.4 m has some 125 cm².
    [Fact]
    public void Basic_infiltration_of_a_trailer_is_of_the_size_of_the_manufactured_home_rule()
    {
        double rule_W_K = 0.7 * 0.29307107 * 1.8 / 0.3048 * 2 * (7.3 + 2.4);
        double ours_W_K = Infiltration.Basic_m3_s(125, 40, 6.7, ShelterClass.Isolated) * 1.3 * 1006;
        Assert.InRange(ours_W_K / rule_W_K, 0.5, 2);
    }

    [Fact]
    public void Stack_and_wind_add_as_squares_and_more_of_either_never_lets_in_less()
        => Gen.Select(Gen.Double[0, 300], Gen.Double[0, 60], Gen.Double[0, 25], Gen.Int[1, 5]).Sample((area, dT, wind, c) =>
        {
            ShelterClass shelter = (ShelterClass)c;
            double both = Infiltration.Basic_m3_s(area, dT, wind, shelter);
            double stack = Infiltration.Basic_m3_s(area, -dT, 0, shelter);
            double gusts = Infiltration.Basic_m3_s(area, 0, wind, shelter);
            return Math.Abs((both * both) - (stack * stack) - (gusts * gusts)) < 1e-9
                && Infiltration.Basic_m3_s(area, dT + 1, wind, shelter) >= both && Infiltration.Basic_m3_s(area, dT, wind + 1, shelter) >= both;
        });

    [Fact]
    public void More_shelter_never_lets_in_more()
    {
        for (ShelterClass c = ShelterClass.None; c < ShelterClass.Adjacent; c++)
            Assert.True(Infiltration.Basic_m3_s(100, 20, 5, c + 1) < Infiltration.Basic_m3_s(100, 20, 5, c));
    }

    [Fact]
    public void Wind_at_the_station_s_own_height_and_terrain_is_the_station_s()
        => Assert.Equal(1, WindProfile.Factor(10, Terrain.Open), 1e-12);

    // (270/10)^0.14 = 1.5863 at the top of the layer, times (height/layer)^exponent, worked out by hand.
    [Theory]
    [InlineData(10, Terrain.OpenWater, 1.5863 * 0.73753)]
    [InlineData(2, Terrain.Open, 0.79827)]
    [InlineData(10, Terrain.Wooded, 1.5863 * 0.45192)]
    [InlineData(2, Terrain.Wooded, 1.5863 * 0.31718)]
    [InlineData(10, Terrain.City, 1.5863 * 0.28273)]
    public void Wind_at_a_height_is_the_power_law_of_its_terrain(double height_m, Terrain terrain, double factor)
        => Assert.Equal(factor, WindProfile.Factor(height_m, terrain), 1e-4);

    [Fact]
    public void All_terrains_meet_the_same_wind_at_the_top_of_their_boundary_layer()
        => Assert.Equal(Math.Pow(27, 0.14), WindProfile.Factor(210, Terrain.OpenWater), 1e-10);

    [Fact]
    public void Wind_rises_with_height_and_falls_with_roughness()
        => Gen.Select(Gen.Double[0.1, 100], Gen.Double[1.01, 2]).Sample((z, more) =>
            Enum.GetValues<Terrain>().All(t => WindProfile.Factor(z * more, t) > WindProfile.Factor(z, t))
            && WindProfile.Factor(z, Terrain.OpenWater) > WindProfile.Factor(z, Terrain.Open)
            && WindProfile.Factor(z, Terrain.Open) > WindProfile.Factor(z, Terrain.Wooded)
            && WindProfile.Factor(z, Terrain.Wooded) > WindProfile.Factor(z, Terrain.City));

    [Fact]
    public void Choked_flow_is_the_largest_and_joins_the_subsonic_branch_smoothly()
    {
        Assert.Equal(0.578, Orifice.CriticalRatio, 5e-4);
        Assert.Equal(Orifice.ChokedFlowFunction, Orifice.FlowFunction(0.1));
        Assert.Equal(Orifice.ChokedFlowFunction, Orifice.FlowFunction(Orifice.CriticalRatio + 1e-9), 1e-12);
        Gen.Double[Orifice.CriticalRatio, 0.999].Sample(r => Orifice.FlowFunction(r) > Orifice.FlowFunction(r + 0.001));
        Assert.Equal(0, Orifice.FlowFunction(1));
        Assert.Equal(0, Orifice.FlowFunction(1.5));
    }

    [Fact]
    public void The_flow_function_is_the_isentropic_law_to_a_part_in_ten_to_the_fourteenth()
        => Gen.Double[Orifice.CriticalRatio, 0.9].Sample(r =>
        {
            const double g = Orifice.Gamma;
            double law = Math.Sqrt(2 * g / (g - 1) * (Math.Pow(r, 2 / g) - Math.Pow(r, (g + 1) / g)));
            Assert.Equal(1, Orifice.FlowFunction(r) / law, 1e-14);
        });

    [Fact]
    public void The_pressure_ratio_is_the_inverse_of_the_flow_function()
    {
        Gen.Double[Orifice.CriticalRatio + 1e-3, 1].Sample(r => Assert.Equal(1 - r, 1 - Orifice.PressureRatio(Orifice.FlowFunction(r)), 1e-11));
        Assert.Equal(1, Orifice.PressureRatio(0));
        Assert.Equal(Orifice.CriticalRatio, Orifice.PressureRatio(Orifice.ChokedFlowFunction), 1e-11);
    }

    [Fact]
    public void Choked_flow_moves_at_the_speed_of_sound_in_the_throat()
    {
        const double p = 4e5, t = 260, g = Orifice.Gamma, r = Orifice.GasConstant_J_kgK;
        double throat_K = t * 2 / (g + 1);
        double throat_kg_m3 = p * Orifice.CriticalRatio / (r * throat_K);
        Assert.Equal(throat_kg_m3 * Math.Sqrt(g * r * throat_K), Orifice.MassFlux_kg_m2s(p, t, 1e5), 1e-9);
    }

    [Fact]
    public void A_small_drop_gives_the_incompressible_flow()
    {
        const double p = 1e5, t = 270, drop = 10;
        double density = p / (Orifice.GasConstant_J_kgK * t);
        Assert.Equal(1, Orifice.MassFlux_kg_m2s(p, t, p - drop) / Math.Sqrt(2 * density * drop), 2e-4);
    }

    [Fact]
    public void Arguments_out_of_range_are_refused_with_value_and_limits()
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => Infiltration.Basic_m3_s(100, 20, -1, ShelterClass.None));
        Assert.Equal(("wind_m_s", (object)(-1.0)), (e.ParamName, e.ActualValue));
        Assert.Contains("0 to 100 m/s", e.Message, StringComparison.Ordinal);
        Assert.Contains("class 1 to 5", Assert.Throws<ArgumentOutOfRangeException>(() => Infiltration.Basic_m3_s(100, 20, 1, 0)).Message, StringComparison.Ordinal);
        Assert.Contains("0.1 to 210 m", Assert.Throws<ArgumentOutOfRangeException>(() => WindProfile.Factor(0, Terrain.Open)).Message, StringComparison.Ordinal);
        Assert.Equal("terrain", Assert.Throws<ArgumentOutOfRangeException>(() => WindProfile.Factor(2, (Terrain)9)).ParamName);
    }
}
