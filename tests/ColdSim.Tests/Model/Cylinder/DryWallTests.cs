using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>The heat balance of a dry wall with round numbers, by hand.</summary>
public class DryWallTests
{
    private const double Liquid_K = 250;

    // 2000 J/K; 3, 2, 0.5 and 1.5 W/K to liquid, vapour, outside and beside; outside at 260 K; 40 % of the power; the top 1.5 times the mean.
    private static DryWall Wall => new(2000, 3, 2, 0.5, 1.5, 260, 0.4, 1.5);

    [Fact]
    public void Its_excess_is_its_energy_over_its_capacity_and_none_without_one()
    {
        Assert.Equal(10, Wall.Excess_K(20_000), 1e-12);
        Assert.Equal(0, (Wall with { Capacity_J_K = 0 }).Excess_K(20_000));
    }

    // At 4 K: 0.4 · 100 + 0.5 · (260 − 250 − 4) − (3 + 1.5) · 4 = 40 + 3 − 18 = 25 W.
    [Fact]
    public void It_gains_what_is_made_and_comes_in_less_what_goes()
        => Assert.Equal(25, Wall.Gain_W(4, Liquid_K, 100, 0), 1e-12);

    // A draw of 1e-3 kg/s carries 1.56 W/K, in series with the film's 2: 0.876404 W/K.
    [Fact]
    public void A_draw_carries_warmth_off_through_the_film_and_with_the_gas_in_series()
    {
        Assert.Equal(25 - 4 * 0.8764045, Wall.Gain_W(4, Liquid_K, 100, 1e-3), 1e-6);
        Assert.Equal(25, Wall.Gain_W(4, Liquid_K, 100, -1e-3), 1e-12);
        Assert.Equal(25, (Wall with { ToVapour_W_K = 0 }).Gain_W(4, Liquid_K, 100, 1e-3), 1e-12);
    }

    // All conductances are 5 W/K: (0.4 · 100 + 0.5 · 10) / 5 = 9 K, and with the draw over 5.876404.
    [Fact]
    public void Steady_it_is_as_warm_as_what_comes_in_over_all_conductances()
    {
        Assert.Equal(9, Wall.SteadyExcess_K(Liquid_K, 100, 0), 1e-12);
        Assert.Equal(45 / 5.8764045, Wall.SteadyExcess_K(Liquid_K, 100, 1e-3), 1e-6);
        Assert.Equal(0, default(DryWall).SteadyExcess_K(Liquid_K, 100, 0));
    }

    // At 259 K (5 · 9 − 0.5 · 10) / 0.4 = 100 W; at 250.5 K it is as warm without.
    [Fact]
    public void The_power_that_keeps_it_warm_is_what_its_excess_loses()
    {
        Assert.Equal(100, Wall.PowerAt_W(259, Liquid_K, 0), 1e-9);
        Assert.Equal((5.8764045 * 9 - 5) / 0.4, Wall.PowerAt_W(259, Liquid_K, 1e-3), 1e-5);
        Assert.Equal(0, Wall.PowerAt_W(250.5, Liquid_K, 0));
        Assert.Equal(double.PositiveInfinity, (Wall with { Power_frac = 0 }).PowerAt_W(259, Liquid_K, 0));
    }

    [Fact]
    public void The_liquid_gets_its_conductances_part_of_what_is_made_here()
    {
        Assert.Equal(0.6, Wall.ToLiquid_frac(0), 1e-12);
        Assert.Equal(3 / 5.8764045, Wall.ToLiquid_frac(1e-3), 1e-6);
        Assert.Equal(0, default(DryWall).ToLiquid_frac(0));
    }

    [Fact]
    public void Its_hottest_place_is_above_the_liquid_by_its_factor_and_never_below_it()
    {
        Assert.Equal(265, Wall.Hottest_K(10, Liquid_K), 1e-12);
        Assert.Equal(250, Wall.Hottest_K(-10, Liquid_K));
    }

    // 2000 J/K over 3 + 2 + 0.5 + 1.5 W/K.
    [Fact]
    public void It_follows_in_its_capacity_over_all_that_touches_it()
    {
        Assert.Equal(2000 / 7.0, Wall.TimeConstant_s, 1e-9);
        Assert.Equal(double.PositiveInfinity, (Wall with { Capacity_J_K = 0 }).TimeConstant_s);
    }

    // The coupling: 4 W/K to 260 K, half of the blanket's heat into the liquid at once, the wall beside it.
    [Fact]
    public void The_liquid_gets_what_comes_from_outside_at_once_and_down_the_wall()
    {
        HeatCoupling c = new(4, 260, WettedShare_frac: 0.5, Wall: Wall);
        Assert.Equal(4 * 10 + 50, c.DirectHeat_W(Liquid_K, 100), 1e-12);
        Assert.Equal(4 * 10 + 50 + 3 * 9, c.Heat_W(Liquid_K, 100, 0), 1e-12);
        Assert.Equal(4 * 10 + 3 * 1, c.Heat_W(Liquid_K), 1e-12);
        Assert.Equal(0.5 + 0.4 * 0.6, c.BlanketShare_frac(0), 1e-12);
    }
}
