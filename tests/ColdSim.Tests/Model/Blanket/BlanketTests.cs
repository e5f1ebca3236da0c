using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Tests.Model.Cylinder;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Blanket;

public class BlanketTests
{
    private static BlanketSpecification Of(double power_W) => new() { Power_W = power_W };

    // No heat but the blanket's, none of it to the vapour, a wall that holds none back, asked for more than it can boil: what flows carries off just
    // that heat.
    [Theory]
    [InlineData(60)]
    [InlineData(150)]
    public void A_starved_vessel_under_a_blanket_settles_to_its_power_over_the_heat_of_a_draw(double power_W)
    {
        CylinderSpecification tight = Bottle("100 lb", 0.9).Fixed(0);
        CylinderSpecification vessel = tight with
        {
            InitialTemperature_K = 243.15,
            WallConductivity_W_mK = 1e7,
            Surroundings = tight.Surroundings with { VapourFilm_W_m2K = 0 },
            Blanket = new BlanketSpecification { Power_W = power_W, StuckOn = true, Coverage_frac = 1 },
        };
        Trace run = Run(new Rig { Cylinders = [vessel], Appliances = [Draw(120_000) with { MinimumPressure_Pa = 0 }] }, Steady(-20), 30);
        StepRecord last = run.Steps[^1];
        CylinderContents contents = CylinderContents.Of(last.To.Propane_kg, vessel.Volume_m3, last.To.Liquid_K);
        double expected_W = power_W / contents.DrawHeat_J_kg * 50.33e6;
        Assert.Equal(expected_W, last.Given_W, 0.005 * expected_W);
    }

    // The property is of the wall: frost that already lies on bare metal could resist more than a thin jacket, so there is none.
    [Fact]
    public void Without_power_a_blanket_never_raises_supply()
        => Gen.Select(Gen.Int[0, 3], Gen.Double[0.1, 0.9], Gen.Double[225, 260], Gen.Double[0.5, 30], Gen.Double[0, 8], Gen.Double[0.01, 1], Gen.Double[0, 2]).Sample(
            (size, fill, liquid_K, above_K, wind_m_s, coverage_frac, insulation_m2K_W) =>
            {
                string[] sizes = ["20 lb", "40 lb", "100 lb", "10 gal"];
                CylinderSpecification bare = Bottle(sizes[size], fill);
                CylinderSpecification under = bare with { Blanket = new BlanketSpecification { Power_W = 0, Coverage_frac = coverage_frac, Insulation_m2K_W = insulation_m2K_W } };
                double Draw(CylinderSpecification c) => SteadySupply.Draw_kg_s(
                    new CylinderBody(c), Some.Weather(liquid_K + above_K, wind_m_s, 0.3), c.Contents_kg, liquid_K, 0, default);
                Assert.True(Draw(under) <= Draw(bare) * (1 + 1e-9), $"{Draw(under)} against {Draw(bare)}");
            }, iter: 3000);

    [Fact]
    public void The_thermostat_keeps_the_wall_within_its_band()
    {
        CylinderSpecification vessel = Bottle("30 lb", 0.7) with { InitialTemperature_K = 260, Blanket = Of(150) };
        Trace run = Run(new Rig { Cylinders = [vessel], Appliances = [Draw(6000)] }, Steady(-15), 48);
        double[] on = run.Times_s(EventKind.BlanketOn), off = run.Times_s(EventKind.BlanketOff);
        Assert.True(on.Length >= 2 && off.Length >= 1);
        Assert.All(run.Events.Where(e => e.Kind == EventKind.BlanketOff), e => Assert.Equal(293.15, e.Value, 0.05));
        Assert.All(run.Events.Where(e => e.Kind == EventKind.BlanketOn).Skip(1), e => Assert.Equal(283.15, e.Value, 0.05));
    }

    [Fact]
    public void Shore_power_is_there_only_at_a_hookup()
    {
        CylinderSpecification vessel = Bottle("30 lb", 0.7) with { Blanket = Of(80) with { Supply = BlanketSupply.ShorePower, StuckOn = true } };
        double Heated_J(bool hookup) => Run(new Rig { Cylinders = [vessel], Site = new SiteSpecification { Hookup = hookup } }, Steady(-15), 6)
            .Steps.Sum(s => s.Blanket_W * (s.To.Time_s - s.From.Time_s));
        Assert.Equal(0, Heated_J(false));
        Assert.Equal(80.0 * 6 * 3600, Heated_J(true), 4800.0);
    }

    [Fact]
    public void Blanket_heats_only_in_its_hours()
    {
        BlanketSpecification evening = Of(60) with { Hours = [new ClockWindow(18 * 3600, 21 * 3600)], StuckOn = true };
        Trace run = Run(new Rig { Cylinders = [Bottle("30 lb", 0.7) with { Blanket = evening }] }, Steady(-15), 20);
        Assert.Equal(2.0 * 3600, run.First_s(EventKind.BlanketOn), 1e-6);
        Assert.Equal(5.0 * 3600, run.First_s(EventKind.BlanketOff), 1e-6);
        Assert.Equal(60 * 3 * 3600, run.Steps.Sum(s => s.Blanket_W * (s.To.Time_s - s.From.Time_s)), 1e-3);
    }

    // 49 CFR and the compressed-gas trade: no cylinder above 125 °F, at its hottest place.
    [Fact]
    public void A_stuck_thermostat_passes_125_F_and_is_reported()
    {
        BlanketSpecification stuck = Of(150) with { StuckOn = true };
        Trace run = Run(new Rig { Cylinders = [Bottle("20 lb", 0.15) with { InitialTemperature_K = 278.15, Blanket = stuck }] }, Steady(5), 12);
        SimulationEvent hot = run.Events.First(e => e.Kind == EventKind.CylinderHot);
        Assert.Equal((125 - 32) / 1.8 + Zero_K, hot.Value, 0.02);
        Assert.InRange(hot.Time_s, 300, 3600);
    }

    [Fact]
    public void A_stuck_thermostat_on_a_full_cylinder_ends_liquid_full()
    {
        BlanketSpecification stuck = Of(300) with { StuckOn = true, Coverage_frac = 1 };
        CylinderSpecification full = Bottle("20 lb", 1.08) with { InitialTemperature_K = 278.15, Blanket = stuck };
        Trace run = Run(new Rig { Cylinders = [full] }, Steady(10), 24);
        Assert.Equal(RunEnd.LiquidFull, run.Result.End);
        Assert.True(run.Has(EventKind.LiquidFull));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Books_close_under_blankets()
        => Gen.Select(Gen.Double[0.05, 0.9], Gen.Double[-40, 5], Gen.Double[0, 200], Gen.Double[0, 1], Gen.Double[1000, 40_000]).Sample(
            (fill, air_C, power_W, coverage_frac, draw_Btu_h) =>
            {
                CylinderSpecification under = Bottle("20 lb", fill) with { Blanket = Of(power_W) with { Coverage_frac = coverage_frac } };
                Rig rig = new() { Cylinders = [under, Bottle("20 lb", fill)], Arrangement = new OpenTogether(), Appliances = [Draw(draw_Btu_h)] };
                Trace run = Run(rig, Steady(air_C), 10);
                Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
            }, iter: 100);

    // An on/off thermostat makes exact monotony false: one burner cycle either way is allowed.
    [Fact]
    public void More_watts_more_fill_or_more_cylinders_never_bring_a_shortage_forward()
        => Gen.Select(Gen.Double[0.15, 0.8], Gen.Double[-38, -15], Gen.Double[15_000, 35_000], Gen.Double[90, 200], Gen.Double[0, 80], Gen.Double[5, 120], Gen.Int[0, 2]).Sample(
            (fill, air_C, input_Btu_h, loss_W_K, power_W, more_W, what) =>
            {
                const double cycle_s = 3600;
                BlanketSpecification On(double w) => new() { Power_W = w, StuckOn = true, Coverage_frac = 0.6 };
                CylinderSpecification one = Bottle("20 lb", fill) with { InitialTemperature_K = air_C + Zero_K, Blanket = On(power_W) };
                Rig rig = Heated(input_Btu_h, loss_W_K) with { Cylinders = [one] };
                Rig better = what switch
                {
                    0 => rig with { Cylinders = [one with { Blanket = On(power_W + more_W) }] },
                    1 => rig with { Cylinders = [one with { Contents_kg = one.Contents_kg * 1.1 }] },
                    _ => rig with { Cylinders = [one, one], Arrangement = new OpenTogether() },
                };
                double First_s(Rig r)
                {
                    double[] times = Run(r, Steady(air_C), 14).Times_s(EventKind.ShortBegins);
                    return times.Length > 0 ? times[0] : double.PositiveInfinity;
                }

                double before_s = First_s(rig), after_s = First_s(better);
                Assert.True(after_s >= before_s - cycle_s, $"{after_s} s after {before_s} s");
            }, iter: 60);
}
