using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;
using ColdSim.Tests.Model.Appliances;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Nodes;

public class FreezingTests
{
    // Some of it is read at the ends of steps: of five minutes, so that it is known to as much.
    private static Trace Run(ThermalNode node, double air_C, double hours)
        => Rigs.Run(new Rig { Cylinders = [BigTank()], Water = [node] }, Steady(air_C, hours + 1), hours, step_s: 300);

    [Theory]
    [InlineData(0.0127, 10, -7, 10)]
    [InlineData(0.0127, 10, -20, 4)]
    [InlineData(0.0127, 25, -20, 2)]
    [InlineData(0.019, 10, -10, 9)]
    public void A_bare_pipe_cools_and_freezes_through_as_the_closed_forms_say(double diameter_m, double film_W_m2K, double air_C, double hours)
    {
        ThermalNode pipe = Everything.Pipe(-1, 1, film_W_m2K, diameter_m) with { Initial_K = 278.15 };
        double air_K = air_C + Water.Freezing_K;
        double begins_s = FreezingTime.ToFreezing_s(pipe.Capacity_J_K, pipe.Outside_W_K, pipe.Initial_K, air_K);
        double through_s = FreezingTime.RoundThrough_s(diameter_m, film_W_m2K, air_K);
        Trace run = Run(pipe, air_C, hours);
        Assert.Equal(begins_s, run.First_s(EventKind.WaterFreezes), begins_s * 1e-4);
        Assert.Equal(begins_s + through_s, run.First_s(EventKind.WaterSolid), through_s * 1e-3);
    }

    [Theory]
    [InlineData(8, 15.1, 17.4, 174)]
    [InlineData(2.5, 48.4, 55.7, 557)]
    public void A_tank_of_150_litres_freezes_as_its_heat_and_its_wall_say(double conductance_W_K, double begins_h, double tenth_h, double all_h)
    {
        Trace run = Run(Everything.Tank(150, conductance_W_K) with { Initial_K = 283.15 }, -10, begins_h + all_h + 5);
        double from_h = run.First_s(EventKind.WaterFreezes) / 3600;
        Assert.Equal(begins_h, from_h, 0.1);
        Assert.Equal(tenth_h, run.Steps.First(s => s.Ice_frac[0] >= 0.1).To.Time_s / 3600 - from_h, 0.1);
        Assert.Equal(all_h, run.First_s(EventKind.WaterSolid) / 3600 - from_h, 0.5);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void Ice_thaws_again_and_is_reported_once()
    {
        ThermalNode pipe = Everything.Pipe(-1, 1) with { Initial_K = 274.15 };
        Trace run = Rigs.Run(new Rig { Cylinders = [BigTank()], Water = [pipe] }, Changing(h => h < 6 ? -10 : 8, 40), 30);
        Assert.Single(run.Times_s(EventKind.WaterFreezes));
        Assert.Single(run.Times_s(EventKind.WaterSolid));
        Assert.Single(run.Times_s(EventKind.WaterThawed));
        Assert.Equal(0, run.Steps[^1].Ice_frac[0]);
    }

    [Fact]
    public void Below_freezing_a_frozen_pipe_goes_on_to_the_air()
        => Assert.Equal(253.15, Run(Everything.Pipe(-1, 1), -20, 12).Steps[^1].Node_K[0], 0.5);

    // By hand: 20 kg of ice at 2,090 J/kgK behind 2.5 W/K goes half-way to the air in ln 2 · 41,800/2.5 s; as water it would take twice as long.
    [Fact]
    public void A_frozen_tank_goes_on_to_the_air_at_the_pace_of_ice()
    {
        Trace run = Run(Everything.Tank(20, 2.5) with { Initial_K = 273.65 }, -10, 90);
        double solid_s = run.First_s(EventKind.WaterSolid), half_s = run.Steps.First(s => s.Node_K[0] <= 268.15).To.Time_s;
        Assert.Equal(Math.Log(2) * 20 * 2090 / 2.5, half_s - solid_s, 310.0);
    }

    [Fact]
    public void A_kilogram_of_ice_at_minus_10_C_lacks_the_heat_of_fusion_and_of_ten_kelvins_of_ice()
    {
        NodeBody kilogram = new(Everything.Tank(1, 1));
        Assert.Equal(-(334e3 + 20.9e3), kilogram.Energy_J(263.15), 1e-6);
        Assert.Equal(263.15, kilogram.Temperature_K(-(334e3 + 20.9e3)), 1e-9);
        Assert.Equal(283.15, kilogram.Temperature_K(41.9e3), 1e-9);
    }

    [Fact]
    public void A_duct_keeps_the_bay_warm_that_without_it_freezes()
    {
        Rig rig = Heated() with { Cylinders = [BigTank()] };
        Trace without = Rigs.Run(rig with { Water = [Everything.Bay(0), Everything.Pipe(0, 3)] }, Steady(-15), 48);
        Trace with = Rigs.Run(rig with { Water = [Everything.Bay(0.1), Everything.Pipe(0, 3)] }, Steady(-15), 48);
        Assert.True(without.Has(EventKind.WaterFreezes));
        Assert.False(with.Has(EventKind.WaterFreezes));
        Assert.True(with.Given_J > without.Given_J);
    }

    [Fact]
    public void A_bay_settles_between_inside_and_outside()
    {
        Rig rig = Heated() with { Cylinders = [BigTank()], Water = [Everything.Bay(0)] };
        Trace run = Rigs.Run(rig, Steady(-10), 30);
        Assert.Equal((4 * run.Last.Inside_K + 9 * 263.15) / 13, run.Steps[^1].Node_K[0], 0.5);
    }
}
