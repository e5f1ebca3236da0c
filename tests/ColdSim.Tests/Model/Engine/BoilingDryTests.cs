using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Gas;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

/// <summary>Cylinders at and past their last liquid: heat that goes over to the whole shell, vapour hotter than the saturation line goes.</summary>
public class BoilingDryTests
{
    private static BlanketSpecification Stuck(double power_W) => new() { Power_W = power_W, StuckOn = true };

    // More steps and events than any of these runs needs: one that goes back and forth at one instant gets there at once.
    private static Trace RunWithin(int records, Rig rig, double air_C, double hours, double step_s = ColdSim.Planning.Scenario.DefaultStep_s)
        => RunWithin(records, rig, Steady(air_C), hours, step_s);

    private static Trace RunWithin(int records, Rig rig, WeatherSeries weather, double hours, double step_s = ColdSim.Planning.Scenario.DefaultStep_s)
    {
        BoundedTrace trace = new(records);
        trace.Result = new Simulation(rig, weather, Settings(hours, step_s), new Ledger()).Run(trace);
        return trace.Kept;
    }

    [Theory]
    [InlineData(340, -30)]
    [InlineData(335, -20)]
    [InlineData(341, -29)]
    public void A_shut_cylinder_that_a_stuck_blanket_boils_dry_stays_dry(double start_K, double air_C)
    {
        CylinderSpecification nearly = Bottle("100 lb", 7.0327 / StandardSize.Find("100 lb")!.LegalFill_kg) with
        {
            InitialTemperature_K = start_K,
            Blanket = Stuck(300),
        };
        Trace run = RunWithin(3000, new Rig { Cylinders = [nearly] }, air_C, 24);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.InRange(run.Events.Count(e => e.Kind is EventKind.LiquidGone or EventKind.LiquidAgain), 0, 3);
    }

    // The heat of the element goes out through wall and insulation in the end, however hot that makes an empty shell.
    [Theory]
    [InlineData(0.0, 300)]
    [InlineData(0.0, 2000)]
    [InlineData(0.05, 2000)]
    public void An_empty_cylinder_under_a_stuck_blanket_warms_until_it_loses_what_it_gets(double left_frac, double power_W)
    {
        CylinderSpecification cylinder = Bottle("20 lb", left_frac) with { Blanket = Stuck(power_W) };
        Trace run = RunWithin(20_000, new Rig { Cylinders = [cylinder], Appliances = [Draw(10_000)] }, -20, 14);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.Equal(RunEnd.Complete, run.Result.End);
        Assert.InRange(run.Last.Cylinder(0).Hottest_K, 350, 1200);
        Assert.Equal(0, run.Steps[^1].HeatIntoCylinder_W, 0.02 * power_W);
    }

    [Theory]
    [InlineData(99)]
    [InlineData(500)]
    public void A_cylinder_that_follows_the_air_within_seconds_closes_its_books(double heatTransfer_W_K)
    {
        CylinderSpecification cylinder = Bottle("40 lb", 0.003).Fixed(heatTransfer_W_K) with { InitialTemperature_K = 297.25 };
        Trace run = Run(new Rig { Cylinders = [cylinder] }, Changing(h => -16 + 10 * Math.Sin(h / 2), 24), 20);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-8);
        Assert.Equal(-16 + 10 * Math.Sin(10), run.Last.Liquid_K - Zero_K, 0.5);
    }

    // Vapour of the warm dry one condenses in the cold one, which is at its last liquid for as long as it comes.
    [Theory]
    [InlineData(-11.744048326157056, 52_781.468116576536, 0.1039829804440881, 12.09629988861098, 0.22786381478787576)]
    [InlineData(-19.550655083521573, 16_108.330684298802, 0.08780615099137935, 32.83090117984959, 0.7487836041249258)]
    [InlineData(1.9607452545132205, 43_289.44003735177, 0.14943753090660905, 44.62987298361485, 0.14478182054347444)]
    public void Two_open_together_of_which_one_warms_run_dry_once(double air_C, double draw_Btu_h, double left_frac, double power_W, double coverage_frac)
    {
        CylinderSpecification bare = Bottle("20 lb", left_frac);
        CylinderSpecification under = bare with { Blanket = new BlanketSpecification { Power_W = power_W, Coverage_frac = coverage_frac } };
        Rig rig = new() { Cylinders = [under, bare], Arrangement = new OpenTogether(), Appliances = [Draw(draw_Btu_h)] };
        Trace run = RunWithin(8000, rig, air_C, 10);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-7);
        Assert.InRange(run.Events.Count(e => e.Kind is EventKind.LiquidGone or EventKind.LiquidAgain), 2, 12);
    }

    // The dry one in the sun warms on and sends vapour; in each of the others so little liquid stays that what comes in condenses and boils off again.
    [Fact]
    public void Vapour_that_comes_into_cylinders_at_their_last_liquid_does_not_boil_them_dry_within_milliseconds()
    {
        (double Air_C, double Wind_m_s, double Sun_W_m2)[] tenMinutes =
        [
            (-34.9, 6.5, 844.7), (-31.5, 5, 228.7), (-31.7, 1.4, 745.3), (-31.9, 6.3, 462.2), (-30.5, 1, 877.5), (-31.2, 6.6, 107.8), (-30.9, 0.4,
            92.5), (-27.7, 5.5, 192.1), (-30.2, 6.2, 846.9), (-30.2, 7.1, 98.7), (-30.4, 4.4, 518.3), (-30.4, 1.7, 824.5), (-26.8, 5.5, 554.8), (-23.2,
            6.6, 826.3), (-23.8, 4.9, 560.8),
        ];
        WeatherRow[] rows = [.. tenMinutes.Select((w, i) => new WeatherRow(Start.AddMinutes(10 * i), w.Air_C + Zero_K, w.Wind_m_s, Sun_W_m2: w.Sun_W_m2))];
        CylinderSpecification small = Bottle("20 lb", 0), dry = Bottle("20 gal", 0);
        Rig rig = new()
        {
            Cylinders =
            [
                dry with { Contents_kg = 0.1811, InitialTemperature_K = 234.897, Surroundings = dry.Surroundings with { FixedFin_m = 1.66 } },
                small with { Volume_m3 = 9.963e-3, OutsideDiameter_m = 0.2115, LegalFill_kg = 4.18, MetalMass_kg = 3.9, Contents_kg = 0.024250, InitialTemperature_K = 231.21 },
                small with { Volume_m3 = 4.759e-3, OutsideDiameter_m = 0.1192, LegalFill_kg = 2, MetalMass_kg = 2.7, Contents_kg = 0.011591, InitialTemperature_K = 231.21 },
                small with { Contents_kg = 0.0525379, InitialTemperature_K = 231.21 },
            ],
            Arrangement = new OpenTogether(),
        };
        Trace run = RunWithin(4000, rig, new WeatherSeries(rows, new WeatherDefaults(), new SiteSpecification()), (rows.Length - 1) / 6.0);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-8);
        Assert.InRange(run.Events.Count(e => e.Kind is EventKind.LiquidGone or EventKind.LiquidAgain), 0, 20);
    }

    // Each time the last liquid goes or comes back the equations change: a place that is off by a hundredth of a second would show in the energy.
    [Theory]
    [InlineData(0.078, 770, 100)]
    [InlineData(0.078, 770, 136)]
    [InlineData(0.080, 800, 136)]
    [InlineData(0.076, 700, 150)]
    [InlineData(0.079, 900, 170)]
    public void A_blanket_that_boils_a_cylinder_dry_again_and_again_keeps_the_books(double left_frac, double power_W, double draw_Btu_h)
    {
        CylinderSpecification cylinder = Bottle("25 gal", left_frac) with { Blanket = new() { Power_W = power_W, On_K = 283.15, Off_K = 320.65 } };

        // The wall conducts so well that the thermostat feels it only some two kelvins above the liquid, and lets it boil dry.
        cylinder = cylinder with { WallConductivity_W_mK = 1e5, Surroundings = cylinder.Surroundings with { InsideFilm_W_m2K = 225 } };
        Trace run = RunWithin(20_000, new Rig { Cylinders = [cylinder], Appliances = [Draw(draw_Btu_h)] }, -15, 20);
        Assert.InRange(run.Events.Count(e => e.Kind == EventKind.LiquidAgain), 2, 100);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 2e-9);
    }

    // Two nearly empty cold ones beside a hot one that follows cold air in minutes: all pressures fall, and none below nothing.
    [Fact]
    public void Cylinders_open_together_with_very_different_fills_and_pressures_keep_what_they_hold()
    {
        CylinderSpecification hot = Bottle("100 lb", 0.2).Fixed(476) with { InitialTemperature_K = 323 };
        CylinderSpecification low = Bottle("40 lb", 0.02) with { InitialTemperature_K = 228 };
        Rig rig = new() { Cylinders = [low, Bottle("40 lb", 0.001) with { InitialTemperature_K = 228 }, hot], Arrangement = new OpenTogether { MeetingTime_s = 4800 } };
        Trace run = RunWithin(20_000, rig, -45, 12);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-7);
        Assert.All(run.Steps, s => Assert.True(s.To.Cylinders[0].Propane_kg > 0 && s.To.Cylinders[1].Propane_kg > 0 && s.To.Cylinders[2].Propane_kg > 0));
        Assert.All(run.Steps, s => Assert.InRange(s.To.Cylinders[2].Liquid_K, 220, 324));
        Assert.Equal(run.Last.Cylinders[2].Pressure_Pa, run.Last.Cylinders[0].Pressure_Pa, 500.0);
    }

    // The vapour is a little unsaturated, so that a tenth of a kelvin changes how much of the shell counts by a fifth.
    [Fact]
    public void A_dry_shell_under_a_blanket_in_strong_convection_comes_to_rest_in_few_steps()
    {
        CylinderSpecification dry = Bottle("20 gal", 0);
        dry = dry with
        {
            LegalFill_kg = 5.458689,
            Contents_kg = 1.98308,
            Surroundings = dry.Surroundings with { FixedConvection_W_m2K = 182.7151, FixedRadiation_W_m2K = 1.581292 },
            Blanket = Stuck(2000) with { Coverage_frac = 0.01 },
        };
        Trace run = RunWithin(12_000, new Rig { Cylinders = [dry], Gas = Blends.Winter }, -52, 24);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 2e-8);
        Assert.Equal(0, run.Steps[^1].HeatIntoCylinder_W, 5.0);
    }

    // Where the saturation line ends the shortage of vapour stops to grow with temperature, and so does the heat: a kink that is crossed at 1.5 K/s.
    [Fact]
    public void A_small_dry_cylinder_that_a_strong_blanket_heats_past_the_end_of_the_saturation_line_keeps_the_books()
    {
        CylinderSpecification small = Bottle("20 lb", 0) with
        {
            Volume_m3 = 2.179811e-3,
            OutsideDiameter_m = 0.1183268,
            MetalMass_kg = 1.5,
            LegalFill_kg = 0.9155,
            Contents_kg = 0.1158,
            InitialTemperature_K = 226.66,
            Blanket = Stuck(1608.8),
        };
        GasSpecification gas = Blends.Winter with
        {
            Composition = GasGrade.SpecialDuty.Composition,
            HeatingValue_J_kg = GasBlend.Heat_J(GasGrade.SpecialDuty.Composition),
        };
        Trace run = RunWithin(4000, new Rig { Cylinders = [small], Gas = gas }, 0, 1);
        Assert.Equal(RunEnd.ReliefPressure, run.Result.End);
        Assert.InRange(run.Last.Liquid_K, ColdSim.Physics.Propane.SaturationTable.Highest_K + 5, 500);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 5e-8);
    }

    // The sun warms the wall, and its heat comes in by the wetted wall as that of the air does.
    [Fact]
    public void Fixed_sun_brings_no_heat_into_a_cylinder_whose_wall_conducts_nothing()
    {
        CylinderSpecification cylinder = Bottle("15 gal", 0);
        CylinderBody body = new(cylinder with { Surroundings = cylinder.Surroundings with { InsideFilm_W_m2K = 0, FixedSun_W = 300 } });
        HeatCoupling coupling = HeatCoupling.At(body, Steady(-20).First(), 0, wholeShell_frac: 0, 250, default);
        Assert.Equal(0, coupling.Conductance_W_K, 1e-9);
        Assert.Equal(0, coupling.Heat_W(250), 1e-6);
    }

    // A relief valve may be set higher than propane's pressure at the end of its saturation line.
    [Fact]
    public void Liquid_at_the_end_of_the_saturation_line_ends_a_run_as_a_relief_valve_does()
    {
        CylinderSpecification hot = Bottle("40 lb", 0.3) with { InitialTemperature_K = 320, ReliefPressure_Pa = 4e6, Blanket = Stuck(2000) };
        Trace run = RunWithin(4000, new Rig { Cylinders = [hot] }, 20, 24);
        Assert.Equal(RunEnd.ReliefPressure, run.Result.End);
        Assert.Equal(ColdSim.Physics.Propane.SaturationTable.Highest_K, run.Last.Liquid_K, 0.01);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-8);
    }

    [Fact]
    public void An_empty_cylinder_of_mixed_gas_is_one_without_gas()
    {
        Trace run = Run(new Rig { Cylinders = [Bottle("20 lb", 0)], Gas = Blends.Winter, Appliances = [Draw(20_000)] }, Steady(-30), 14);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.All(run.Steps, s => Assert.Equal(0, s.Given_W));
        Assert.True(run.Has(EventKind.ShortBegins));
    }

    private sealed class BoundedTrace(int records) : IRunObserver
    {
        public Trace Kept { get; } = new();

        public SimulationResult Result
        {
            set => Kept.Result = value;
        }

        public void Stepped(StepRecord record)
        {
            Kept.Stepped(record);
            Check();
        }

        public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
        {
            Kept.Happened(happened, snapshot);
            Check();
        }

        private void Check() => Assert.True(Kept.Steps.Count + Kept.Events.Count <= records, $"The run goes nowhere: {Kept.Events.LastOrDefault()}.");
    }
}
