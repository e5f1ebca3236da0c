using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Coach;

public class CoachBodyTests
{
    [Fact]
    public void Furnishings_that_follow_the_air_within_two_seconds_are_air()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 200e3, FurnishingsCapacity_J_K = 1000, Coupling_W_K = 1000 });
        Assert.False(body.HasFurnishings);
        Assert.Equal(201e3, body.AirCapacity_J_K);
    }

    [Fact]
    public void Air_has_at_least_the_capacity_with_which_it_follows_in_two_seconds()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 10, FurnishingsCapacity_J_K = 1e6, Coupling_W_K = 900 });
        Assert.Equal(2 * (900 + body.Envelope_W_K + body.Specification.GroundConductance_W_K), body.AirCapacity_J_K);
    }

    [Fact]
    public void Ground_counts_in_that_capacity_with_what_it_conducts()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 10, FurnishingsCapacity_J_K = 1e6, Coupling_W_K = 900, GroundConductance_W_K = 40 });
        Assert.Equal(2 * (900 + body.Envelope_W_K + 40), body.AirCapacity_J_K);
    }

    [Fact]
    public void Covers_take_their_conductance_off_in_their_hours_and_sun_comes_in_by_its_aperture()
    {
        CoachBody body = new(TwoNodes(100) with { Covers_W_K = 12, CoverHours = [new(20 * 3600, 7 * 3600)], SolarAperture_m2 = 2, InternalGains_W = 50 });
        ColdSim.Model.Weather.WeatherSample weather = ColdSim.Tests.Model.Cylinder.Some.Weather(263.15) with { WindowSun_W_m2 = 80 };
        Assert.Equal(body.Envelope_W_K - 12, body.At(weather, 23 * 3600).Envelope_W_K, 1e-12);
        Assert.Equal(body.Envelope_W_K, body.At(weather, 12 * 3600).Envelope_W_K, 1e-12);
        Assert.Equal(50 + 2 * 80, body.At(weather, 0).Gains_W, 1e-12);
    }

    // By hand: -10 °C at sea level, 1.342 kg/m³ of dry air; 100 m³/h let in cost 1.342 · 1006 · 100/3600 = 37.5 W/K.
    [Fact]
    public void Air_let_in_costs_its_heat_and_comes_on_top_of_what_leaks()
    {
        ColdSim.Model.Weather.WeatherSample weather = ColdSim.Tests.Model.Cylinder.Some.Weather(263.15, 5);
        CoachBody open = new(TwoNodes(100) with { Ventilation_m3_s = 100 / 3600.0 }), both = new(open.Specification with { LeakageArea_cm2 = 100 });
        Assert.Equal(37.5, open.Infiltration_W_K(weather, 293.15), 0.05);
        Assert.Equal(100 + 37.5, open.At(weather, 0).Loss_W_K(30), 0.05);
        double leaks_W_K = new CoachBody(TwoNodes(100) with { LeakageArea_cm2 = 100 }).Infiltration_W_K(weather, 293.15);
        Assert.True(leaks_W_K > 5);
        Assert.Equal(37.5 + leaks_W_K, both.Infiltration_W_K(weather, 293.15), 0.05);
    }

    [Fact]
    public void What_is_stored_is_that_of_air_and_of_furnishings()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 200e3, FurnishingsCapacity_J_K = 1e6, Coupling_W_K = 300 });
        Assert.Equal(200e3 * 290 + 1e6 * 285, body.StoredEnergy_J(290, 285), 1e-3);
    }

    [Fact]
    public void A_coach_almost_without_air_takes_no_more_steps_than_two_a_second()
    {
        CoachSpecification coach = TwoNodes(3000) with { AirCapacity_J_K = 150, FurnishingsCapacity_J_K = 45e3, Coupling_W_K = 16 };
        Trace run = Run(Heated() with { Coach = coach }, Steady(-10), 0.5);
        Assert.InRange(run.Steps.Count, 1, 3600);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void Furnishings_that_take_just_two_seconds_are_a_node_of_their_own()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 200e3, FurnishingsCapacity_J_K = 2000, Coupling_W_K = 1000 });
        Assert.True(body.HasFurnishings);
        Assert.Equal(200e3, body.AirCapacity_J_K);
    }

    [Theory]
    [InlineData(0, 300)]
    [InlineData(1e6, 0)]
    public void Furnishings_without_a_capacity_or_without_a_coupling_are_left_out(double capacity_J_K, double coupling_W_K)
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 200e3, FurnishingsCapacity_J_K = capacity_J_K, Coupling_W_K = coupling_W_K });
        Assert.False(body.HasFurnishings);
        Assert.Equal(200e3, body.AirCapacity_J_K);
        Assert.Equal(200e3 * 290, body.StoredEnergy_J(290, 285), 1e-3);
    }

    // Nothing but the walls holds such a little air back: two seconds of 100 W/K.
    [Fact]
    public void A_coupling_to_nothing_does_not_count_in_the_least_capacity()
        => Assert.Equal(200, new CoachBody(TwoNodes(100) with { AirCapacity_J_K = 1, FurnishingsCapacity_J_K = 0, Coupling_W_K = 900, GroundConductance_W_K = 0 }).AirCapacity_J_K, 1e-9);

    [Fact]
    public void Covers_without_hours_are_up_always_and_the_ground_keeps_its_conductance()
    {
        CoachBody body = new(TwoNodes(100) with { Covers_W_K = 12, GroundConductance_W_K = 7 });
        ColdSim.Model.Weather.WeatherSample weather = ColdSim.Tests.Model.Cylinder.Some.Weather(263.15);
        Assert.Equal(body.Envelope_W_K - 12, body.At(weather, 12 * 3600).Envelope_W_K, 1e-12);
        Assert.Equal(7, body.At(weather, 0).Ground_W_K);
    }

    // By hand: leaks by wind of 5 m/s alone, and by 30 K alone, add in squares.
    [Fact]
    public void Wind_and_warmth_leak_in_squares_and_fresh_air_adds_to_them()
    {
        CoachBody body = new(TwoNodes(100) with { LeakageArea_cm2 = 100, Ventilation_m3_s = 0.01 });
        CoachCoupling windy = body.At(ColdSim.Tests.Model.Cylinder.Some.Weather(263.15, 5), 0), still = body.At(ColdSim.Tests.Model.Cylinder.Some.Weather(263.15), 0);
        double byWind_m3_s = windy.Air_m3_s(0) - 0.01, byWarmth_m3_s = still.Air_m3_s(30) - 0.01;
        Assert.True(byWind_m3_s > 0.001 && byWarmth_m3_s > 0.001);
        Assert.Equal(0.01 + Math.Sqrt(byWind_m3_s * byWind_m3_s + byWarmth_m3_s * byWarmth_m3_s), windy.Air_m3_s(30), 1e-9);
        Assert.Equal(windy.Envelope_W_K + windy.Air_J_m3K * windy.Air_m3_s(30), windy.Loss_W_K(30), 1e-9);
    }
}
