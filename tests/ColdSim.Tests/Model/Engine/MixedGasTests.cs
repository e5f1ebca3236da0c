using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Gas;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class MixedGasTests
{
    private static GasSpecification Of(GasMasses composition) => new()
    {
        Composition = composition,
        HeatingValue_J_kg = GasBlend.Heat_J(composition),
    };

    private static readonly string[] Sizes = ["5 lb", "20 lb", "40 lb"];

    private static readonly GasSpecification Blend = Of(GasGrade.Winter.Composition);

    private static readonly Gen<(Rig Rig, WeatherSeries Weather)> Sane = Gen.Select(
        Gen.Select(Gen.Int[0, 2].Select(i => Sizes[i]), Gen.Double[0.02, 0.9], Gen.Double[0, 3000]),
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0.001, 1]),
        Gen.Select(Gen.Double[-35, 15], Gen.Double[0, 10], Gen.Double[80, 200]),
        (place, gas, sky) =>
        {
            (string size, double left, double elevation_m) = place;
            (double mean_C, double swing_K, double loss_W_K) = sky;
            return HeatedFrom(Bottle(size, left), new GasMasses(gas.Item1, gas.Item2, gas.Item3).Parts(), loss_W_K, mean_C, swing_K, elevation_m);
        });

    private static (Rig Rig, WeatherSeries Weather) HeatedFrom(
        CylinderSpecification cylinder, GasMasses composition, double loss_W_K, double mean_C, double swing_K, double elevation_m = 0)
    {
        SiteSpecification site = new() { Elevation_m = elevation_m };
        Rig rig = Heated(loss_W_K: loss_W_K) with
        {
            Site = site,
            Gas = Of(composition),
            Cylinders = [cylinder],
            Appliances = [Draw(1200, 0.4)],
        };
        return (rig, Changing(h => mean_C + swing_K * Math.Sin(h / 4), 16, site: site));
    }

    [Fact]
    public void Ledger_closes_and_values_stay_physical_for_random_gases()
    {
        int dry = 0, starved = 0;
        Sane.Sample(s =>
        {
            Trace run = Run(s.Rig, s.Weather, 14);
            LedgerBalance l = run.Result.Ledger;
            Assert.True(l.Closes, l.ToString());
            foreach (StepRecord step in run.Steps)
            {
                RunSnapshot m = step.To;
                CylinderReading r = m.Cylinders[0];
                Assert.True(double.IsFinite(m.Liquid_K + m.CylinderPressure_Pa + m.DeliveryPressure_Pa + step.Asked_W + step.Given_W));
                Assert.True(m.Propane_kg > 0 && m.Propane_kg <= step.From.Propane_kg);
                Assert.True(r.NormalButane_kg >= 0 && r.Isobutane_kg > 0 && r.NormalButane_kg + r.Isobutane_kg <= r.Propane_kg * (1 + 1e-9));
                AssertGivenIsWithinAsked(step);
            }

            if (run.Has(EventKind.LiquidGone)) Interlocked.Increment(ref dry);
            if (run.Has(EventKind.ShortBegins)) Interlocked.Increment(ref starved);
        }, iter: 120);
        Assert.True(dry > 2 && starved > 2, $"Too tame: {dry} dry, {starved} starved.");
    }

    // In these the beginning of a shortage cuts a step, and the part made anew crosses the point at which supply begins to starve.
    [Theory]
    [InlineData("20 lb", 0.8484848484848485, 0, 1, 0, 162.105145135449)]
    [InlineData("40 lb", 0.20754716981132076, 0.6841967585584103, 0.5, -4, 172)]
    public void A_step_cut_at_an_event_gives_no_more_gas_than_is_asked(string size, double left, double propane, double isobutane, double air_C, double loss_W_K)
    {
        (Rig rig, WeatherSeries weather) = HeatedFrom(Bottle(size, left), new GasMasses(propane, 0, isobutane).Parts(), loss_W_K, air_C, 0);
        Trace run = Run(rig, weather, 14);
        Assert.True(run.Has(EventKind.ShortBegins));
        Assert.All(run.Steps, AssertGivenIsWithinAsked);
    }

    [Fact]
    public void Gas_never_flows_back_where_a_cylinder_rises_above_the_air_within_a_step()
    {
        GasMasses gas = new GasMasses(0.027346201243261703, 0.7651979696812161, 0.5555555555555556).Parts();
        (Rig rig, WeatherSeries weather) = HeatedFrom(Bottle("40 lb", 0.4010976702254812), gas, 154.72016137947443, -11.828469374917177, 8.73957883015189);
        Assert.All(Run(rig, weather, 14).Steps, AssertGivenIsWithinAsked);
    }

    // Nothing takes more than it asks for, nor gives gas back; a step is accepted when the sum of its stages is within 1e-9 of that.
    private static void AssertGivenIsWithinAsked(StepRecord step)
        => Assert.True(step.Given_W >= 0 && step.Given_W <= step.Asked_W * (1 + 1e-9) + 1e-9, $"{step.Given_W} of {step.Asked_W}");

    [Fact]
    public void A_blend_that_is_propane_but_for_a_trace_runs_as_propane_does()
    {
        Rig rig = Heated() with { Cylinders = [Bottle("20 lb")] };
        GasMasses trace = new(1 - 1e-9, 1e-9, 0);
        Trace pure = Run(rig, Steady(-20), 14), mixed = Run(rig with { Gas = Of(trace) with { HeatingValue_J_kg = 50.33e6 } }, Steady(-20), 14);
        Assert.Equal(pure.Last.Propane_kg, mixed.Last.Propane_kg, 1e-5);
        Assert.Equal(pure.Last.Liquid_K, mixed.Last.Liquid_K, 1e-3);
        Assert.Equal(pure.Last.CylinderPressure_Pa, mixed.Last.CylinderPressure_Pa, 10.0);
        Assert.Equal(1, mixed.Given_J / pure.Given_J, 1e-5);
    }

    [Fact]
    public void Liquid_left_becomes_richer_in_butane_as_gas_is_drawn()
    {
        Trace run = Run(Heated() with { Gas = Blend, Cylinders = [Bottle("20 lb")] }, Steady(-5), 20);
        double before = 0;
        foreach (StepRecord step in run.Steps)
        {
            double butane = 1 - step.To.Cylinders[0].Gas.Parts().Propane;
            Assert.True(butane >= before - 1e-12);
            before = butane;
        }

        Assert.True(before > 1 - Blend.Composition.Propane + 0.05);
    }

    [Fact]
    public void An_orifice_made_for_propane_gives_an_eighth_more_heat_of_butane()
    {
        // √(58.12/44.10) × 49.50/50.33.
        Rig rig = new() { Cylinders = [BigTank()], Appliances = [Draw(10_000)] };
        Trace butane = Run(rig with { Gas = Of(new GasMasses(0, 1, 0)), Cylinders = [BigTank() with { InitialTemperature_K = 300 }] }, Steady(27), 2);
        Assert.Equal(1.1292, butane.Given_J / Run(rig, Steady(27), 2).Given_J, 1e-3);
    }

    [Fact]
    public void Two_cylinders_on_a_changeover_keep_their_own_gas()
    {
        Rig rig = Heated(30_000) with
        {
            Gas = Blend,
            Cylinders = [Bottle("20 lb", 0.3), Bottle("20 lb")],
            Arrangement = new AutomaticChangeover(),
        };
        Trace run = Run(rig, Steady(-12), 20);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.True(run.Has(EventKind.ReserveFeeds));
        Assert.True(run.Last.Cylinders[0].Gas.Parts().Propane < run.Last.Cylinders[1].Gas.Parts().Propane);
    }

    [Fact]
    public void Composition_goes_on_from_one_run_into_the_next()
    {
        Rig rig = Heated() with { Gas = Blend, Cylinders = [Bottle("20 lb")] };
        Simulation first = new(rig, Steady(-5), Settings(10));
        Trace one = new(), two = new();
        first.Run(one);
        RigState between = first.State();
        new Simulation(rig, Steady(-5), Settings(4, start: Start.AddHours(10)) with { From = between }).Run(two);
        Assert.Equal(one.Last.Cylinders[0].Gas.Parts().Propane, two.Steps[0].From.Cylinders[0].Gas.Parts().Propane, 1e-12);
    }

    [Fact]
    public void A_stated_heating_value_is_that_of_the_gas_as_filled()
    {
        Rig rig = Heated() with { Gas = Blend with { HeatingValue_J_kg = 46e6 }, Cylinders = [Bottle("20 lb")] };
        Trace run = Run(rig, Steady(-5), 10);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Trace plain = Run(rig with { Gas = Blend }, Steady(-5), 10);
        Assert.True(run.Steps[^1].To.Propane_kg < plain.Steps[^1].To.Propane_kg);
    }

    [Fact]
    public void Cylinders_open_together_are_refused()
        => Assert.Throws<ArgumentException>(() => Run(
            Heated() with { Gas = Blend, Cylinders = [Bottle(), Bottle()], Arrangement = new OpenTogether() }, Steady(-5), 1));

    [Fact]
    public void The_step_loop_allocates_no_more_for_a_blend()
    {
        long Allocated(GasSpecification gas)
        {
            Rig rig = Heated() with { Gas = gas, Cylinders = [Bottle("20 lb")] };
            Idle idle = new();
            new Simulation(rig, Steady(-5), Settings(24)).Run(idle);
            Simulation again = new(rig, Steady(-5), Settings(24));
            long before = GC.GetAllocatedBytesForCurrentThread();
            again.Run(idle);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.True(Allocated(Blend) <= Allocated(new GasSpecification()) + 256);
    }

    private sealed class Idle : IRunObserver
    {
        public void Stepped(StepRecord record)
        {
        }

        public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
        {
        }
    }
}
