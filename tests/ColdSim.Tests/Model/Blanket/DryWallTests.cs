using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Tests.Model.Cylinder;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Blanket;

public class DryWallTests
{
    private const double Liquid_K = 243.15;
    private static readonly WeatherSample Cold = Some.Weather(253.15);

    private static readonly Gen<CylinderSpecification> AnyUnder =
        Gen.Select(Some.AnyCylinder, Some.Fill, Gen.Double[0.001, 1], Gen.Double[0, 2]).Select((cylinder, fill, coverage_frac, insulation_m2K_W) => cylinder with
        {
            Contents_kg = fill * cylinder.LegalFill_kg,
            Blanket = new BlanketSpecification { Power_W = 100, Coverage_frac = coverage_frac, Insulation_m2K_W = insulation_m2K_W },
        });

    private static CylinderSpecification Under(string size, double fill, double power_W = 100)
        => Bottle(size, fill) with { Surroundings = Some.Sheltered, Blanket = new BlanketSpecification { Power_W = power_W, StuckOn = true } };

    private static HeatCoupling Coupling(CylinderSpecification cylinder, double t_K = Liquid_K)
        => HeatCoupling.At(new CylinderBody(cylinder), Cold, cylinder.Contents_kg, t_K, default);

    // It was 98 % whatever the level.
    [Theory]
    [InlineData("20 lb", 1, 0.91)]
    [InlineData("20 lb", 0.5, 0.74)]
    [InlineData("20 lb", 0.25, 0.61)]
    [InlineData("100 lb", 1, 0.84)]
    [InlineData("100 lb", 0.25, 0.36)]
    public void The_emptier_and_taller_the_cylinder_the_less_of_a_blankets_heat_reaches_the_liquid(string size, double fill, double share_frac)
        => Assert.Equal(share_frac, Coupling(Under(size, fill)).BlanketShare_frac(0), 0.015);

    [Fact]
    public void A_wall_that_conducts_without_limit_brings_all_but_what_the_insulation_lets_through()
    {
        CylinderSpecification cylinder = Under("100 lb", 0.25) with { WallConductivity_W_mK = 1e9 };
        HeatCoupling c = Coupling(cylinder with { Blanket = cylinder.Blanket! with { Coverage_frac = 1 } });
        Assert.InRange(c.BlanketShare_frac(0), 0.9, 1);
        Assert.InRange(c.Wall.Hottest_factor, 1, 1.002);
    }

    [Fact]
    public void What_is_made_goes_to_the_liquid_outside_and_with_the_gas_and_nowhere_else()
        => Gen.Select(AnyUnder, Some.AnyWeather, Gen.Double[225, 300], Gen.Double[0, 1e-3]).Sample((cylinder, weather, liquid_K, draw_kg_s) =>
        {
            HeatCoupling c = HeatCoupling.At(new CylinderBody(cylinder), weather, cylinder.Contents_kg, liquid_K, default);
            DryWall wall = c.Wall;
            double excess_K = wall.SteadyExcess_K(liquid_K, 100, draw_kg_s), size_W = 100 + Math.Abs(wall.Outside_W_K * (wall.Environment_K - liquid_K));
            Assert.Equal(0, wall.Gain_W(excess_K, liquid_K, 100, draw_kg_s), 1e-9 * size_W);
            Assert.InRange(c.BlanketShare_frac(draw_kg_s), 0, 1);
            Assert.True(c.BlanketShare_frac(draw_kg_s) <= c.BlanketShare_frac(0));
            Assert.True(wall.TimeConstant_s > 1 && double.IsFinite(wall.TimeConstant_s));
            Assert.True(wall.Hottest_factor >= 1);
            Assert.Equal(100, wall.PowerAt_W(liquid_K + excess_K, liquid_K, draw_kg_s), 1e-6 * size_W / wall.Power_frac);
        });

    // Heat that comes before its wall is warm is what the wall takes up, to the last joule.
    [Fact]
    public void A_wall_warms_to_the_steady_excess_and_keeps_its_energy_in_the_books()
    {
        CylinderSpecification vessel = Under("100 lb", 0.5, 60) with { InitialTemperature_K = 258.15 };
        Trace run = Run(new Rig { Cylinders = [vessel] }, Steady(-15), 30);
        StepRecord last = run.Steps[^1];
        WeatherSample weather = Steady(-15).First();
        HeatCoupling c = HeatCoupling.At(new CylinderBody(vessel), weather, last.To.Propane_kg, last.To.Liquid_K, default);
        double steady_K = last.To.Liquid_K + c.Wall.Hottest_factor * c.Wall.SteadyExcess_K(last.To.Liquid_K, 60, 0);
        Assert.Equal(steady_K, last.To.Cylinder(0).Hottest_K, 0.1);
        Assert.True(run.Steps[0].To.Cylinder(0).Hottest_K < 273.15);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void A_stuck_thermostat_brings_the_wall_past_125_F_while_the_liquid_is_cold()
    {
        Trace run = Run(new Rig { Cylinders = [Under("20 lb", 0.25, 150) with { InitialTemperature_K = 263.15 }] }, Steady(-10), 2);
        SimulationEvent hot = run.Events.First(e => e.Kind == EventKind.CylinderHot);
        Assert.Equal((125 - 32) / 1.8 + Zero_K, hot.Value, 0.05);
        Assert.True(run.Steps.First(s => s.To.Time_s >= hot.Time_s).To.Liquid_K < 275);
    }

    [Fact]
    public void The_thermostat_feels_the_dry_wall_and_rests_while_the_liquid_is_still_cold()
    {
        CylinderSpecification vessel = Bottle("20 lb", 0.25) with { InitialTemperature_K = 258.15, Blanket = new BlanketSpecification { Power_W = 150 } };
        Trace run = Run(new Rig { Cylinders = [vessel] }, Steady(-15), 6);
        SimulationEvent off = run.Events.First(e => e.Kind == EventKind.BlanketOff);
        Assert.Equal(293.15, off.Value, 0.05);
        Assert.True(run.Steps.First(s => s.To.Time_s >= off.Time_s).To.Liquid_K < 273.15);
    }

    [Fact]
    public void A_run_in_two_parts_keeps_the_warmth_of_the_wall()
    {
        Rig rig = new() { Cylinders = [Under("20 lb", 0.5) with { InitialTemperature_K = 258.15 }], Appliances = [Draw(6000)] };
        SimulationSettings Of(double from_h, double hours, RigState? from) => new()
        {
            Start = Start.AddHours(from_h),
            Duration_s = 3600 * hours,
            Step_s = 300,
            Undersupplied_frac = 0.95,
            From = from,
        };
        Simulation first = new(rig, Steady(-15), Of(0, 2, null)), whole = new(rig, Steady(-15), Of(0, 4, null));
        first.Run(new Trace());
        whole.Run(new Trace());
        Simulation second = new(rig, Steady(-15), Of(2, 2, first.State()));
        second.Run(new Trace());
        Assert.True(first.State().Cylinders[0].Wall_J > 1000);
        Assert.Equal(whole.State().Cylinders[0].Wall_J, second.State().Cylinders[0].Wall_J, 0.05);
        Assert.Equal(whole.State().Cylinders[0].Liquid_K, second.State().Cylinders[0].Liquid_K, 1e-4);
    }

    // The last liquid goes once also under a blanket: heat down the wall is the same function on both sides.
    [Fact]
    public void Heat_from_the_wall_does_not_jump_where_the_last_liquid_goes()
    {
        CylinderSpecification vessel = Under("20 lb", 0.25);
        CylinderBody body = new(vessel);
        DryWall Wall(double mass_kg) => HeatCoupling.At(body, Cold, mass_kg, Liquid_K, default).Wall;
        double saturated_kg = vessel.Volume_m3 / body.Contents(vessel.Contents_kg, Liquid_K).VapourVolume_m3_kg;
        DryWall wet = Wall(saturated_kg * (1 + 1e-9)), dry = Wall(saturated_kg * (1 - 1e-9));
        Assert.Equal(wet.ToLiquid_W_K, dry.ToLiquid_W_K, 1e-5);
        Assert.Equal(wet.ToVapour_W_K, dry.ToVapour_W_K, 1e-5);
        Assert.True(Wall(0.3 * saturated_kg).ToLiquid_W_K > wet.ToLiquid_W_K + 1);
    }

    [Fact]
    public void A_capacity_counts_what_a_blanket_gives_through_its_thermostat()
    {
        CylinderSpecification vessel = Bottle("20 lb", 0.25) with { Surroundings = Some.Sheltered };
        CylinderSpecification With(bool stuck) => vessel with { Blanket = new BlanketSpecification { Power_W = 400, StuckOn = stuck } };
        double Draw(CylinderSpecification c) => ColdSim.Model.Supply.SteadySupply.Draw_kg_s(new CylinderBody(c), Cold, c.Contents_kg, Liquid_K, 400, default);
        Assert.True(Draw(With(stuck: false)) < 0.7 * Draw(With(stuck: true)));
        HeatCoupling c = Coupling(With(stuck: false));
        double at15_W = c.Wall.PowerAt_W(288.15, Liquid_K, Draw(With(stuck: false)));
        double heat_W = c.Heat_W(Liquid_K, at15_W, Draw(With(stuck: false)));
        Assert.Equal(1, Draw(With(stuck: false)) * new CylinderBody(vessel).Contents(vessel.Contents_kg, Liquid_K).DrawHeat_J_kg / heat_W, 1e-3);
    }
}
