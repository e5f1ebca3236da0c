using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Propane;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class SimulationTests
{
    // ---- the cylinder through the engine

    [Theory]
    [InlineData(6)]
    [InlineData(10)]
    public void A_steady_draw_settles_where_heat_in_is_heat_of_boiling(double conductance_W_K)
    {
        Rig rig = new() { Cylinders = [Bottle("100 lb").Fixed(conductance_W_K)], Appliances = [Draw(20_000)] };
        RunSnapshot end = Run(rig, Steady(-5, 80), 40).Last;
        double draw_kg_s = 20_000 * Btu_h / rig.Gas.HeatingValue_J_kg;
        double expected_K = Zero_K - 5 - draw_kg_s * SaturationTable.At(end.Liquid_K).DrawHeat_J_kg / conductance_W_K;
        Assert.Equal(expected_K, end.Liquid_K, 0.01);
    }

    // Half a 30 lb charge under 30,000 Btu/h, worked out beforehand with the whole equation of state.
    [Theory]
    [InlineData(1.9, 0.5, -15.23)]
    [InlineData(1.9, 1, -19.99)]
    [InlineData(1.9, 2, -28.13)]
    [InlineData(4.0, 1, -18.49)]
    [InlineData(4.0, 4, -27.06)]
    [InlineData(4.0, 8, -28.03)]
    public void A_half_full_cylinder_cools_along_the_reference_curves(double conductance_W_K, double hours, double expected_C)
    {
        CylinderSpecification cylinder = Bottle("30 lb") with { Volume_m3 = 0.03242, MetalMass_kg = 10.5, Contents_kg = 6.804 };
        Rig rig = new() { Cylinders = [cylinder.Fixed(conductance_W_K)], Appliances = [Draw(30_000)] };
        Assert.Equal(expected_C, Run(rig, Steady(-10), hours).Last.Liquid_K - Zero_K, 0.03);
    }

    // ---- regulator, furnace and coach take hold of each other

    [Fact]
    public void Half_the_regulator_changes_pressure_burner_and_inside_at_every_later_minute()
    {
        // Twenty-four thousand asked of a regulator that gives it hardly, then not nearly: it binds from the first flame on.
        Trace whole = Run(Bound(26_000), Steady(-18), 6), half = Run(Bound(13_000), Steady(-18), 6);
        RunSeries a = Curves(Bound(26_000), 6), b = Curves(Bound(13_000), 6);
        double first_s = whole.First_s(EventKind.BurnerOn);
        double burnerA_s = 0, burnerB_s = 0;
        int minutes = 0;
        for (int i = 0; i < a.Count; i++)
        {
            burnerA_s += 60 * a.Burner_frac[i];
            burnerB_s += 60 * b.Burner_frac[i];
            if (i * 60 < first_s + 60) continue;
            minutes++;
            Assert.True(b.DeliveryPressure_Pa[i] != a.DeliveryPressure_Pa[i], $"Same delivery in minute {i}.");
            Assert.True(b.Inside_K[i] < a.Inside_K[i], $"Inside not colder in minute {i}.");
            Assert.True(burnerB_s != burnerA_s, $"Same burner time by minute {i}.");
        }

        Assert.True(minutes > 330);
        Assert.True(half.Has(EventKind.ShortBegins) && half.Has(EventKind.Lockout));
    }

    [Fact]
    public void Half_a_regulator_that_just_carries_the_furnace_starves_it_a_little_and_inside_falls_behind()
    {
        RunSeries a = Curves(Bound(56_000), 6), b = Curves(Bound(28_000), 6);
        int lit = Array.FindIndex(b.Burner_frac, f => f > 0);
        for (int i = lit + 1; i < a.Count; i++)
        {
            Assert.True(b.DeliveryPressure_Pa[i] < a.DeliveryPressure_Pa[i], $"No less delivery in minute {i}.");
            Assert.True(b.Given_W[i] < a.Given_W[i] && b.Given_W[i] > 0.8 * a.Given_W[i], $"No less gas in minute {i}.");
            Assert.True(b.Inside_K[i] < a.Inside_K[i], $"No colder in minute {i}.");
        }

        Assert.True(b.Inside_K[^1] < a.Inside_K[^1] - 1);
    }

    private static Rig Bound(double rating_Btu_h) => new()
    {
        Cylinders = [Bottle("100 lb")],
        Regulator = new RegulatorSpecification { RatedFlow_W = rating_Btu_h * Btu_h },
        Coach = TwoNodes(160),
        Thermostat = Holding(20),
        Furnace = Plated(24_000),
    };

    private static RunSeries Curves(Rig rig, double hours)
    {
        RunSeries series = new(hours * 3600);
        new Simulation(rig, Steady(-18), Settings(hours)).Run(new SeriesRecorder(series));
        return series;
    }

    [Fact]
    public void A_starved_furnace_gives_less_heat_then_drops_out_and_the_coach_cools()
    {
        Rig rig = Heated(40_000, 300) with { Cylinders = [Bottle("20 lb", 0.4)] };
        Trace run = Run(rig, Steady(-30), 12);
        double full_W = rig.Furnace!.Input_W;
        Assert.Contains(run.Steps, s => s is { BurnerLit: true } && s.Given_W < 0.94 * full_W && s.To.DeliveryPressure_Pa < rig.Furnace.FullPressure_Pa);
        double lost_s = run.First_s(EventKind.FlameLost), locked_s = run.First_s(EventKind.Lockout);
        Assert.True(run.First_s(EventKind.ShortBegins) < lost_s && lost_s < locked_s);
        Assert.True(run.At(Math.Ceiling(locked_s / 300) * 300 + 3000).Inside_K < run.At(Math.Floor(locked_s / 300) * 300).Inside_K - 3);
        Assert.All(run.Steps.Where(s => s.BurnerLit), s => Assert.True(s.To.DeliveryPressure_Pa >= rig.Furnace.DropOutPressure_Pa - 0.1));
        for (int i = 0; i < run.Events.Count; i++)
        {
            if (run.Events[i].Kind == EventKind.BurnerOn) Assert.True(run.Events[i].Value >= rig.Furnace.IgnitionPressure_Pa);
        }
    }

    [Fact]
    public void Gas_given_falls_with_the_root_of_delivery_pressure_below_full()
    {
        Trace run = Run(Bound(26_000), Steady(-18), 2, step_s: 5);
        StepRecord[] starved = [.. run.Steps.Where(s => s.BurnerLit && s.To.DeliveryPressure_Pa < 10.4 * WaterColumn_Pa)];
        Assert.NotEmpty(starved);
        Assert.All(starved, s => Assert.Equal(
            24_000 * Btu_h * Math.Sqrt(0.5 * (s.From.DeliveryPressure_Pa + s.To.DeliveryPressure_Pa) / (10.5 * WaterColumn_Pa)), s.Given_W, 5.0));
    }

    [Fact]
    public void A_dry_cylinder_is_reported_once_and_everything_goes_out()
    {
        Trace run = Run(new Rig { Cylinders = [Bottle("5 lb", 0.3)], Appliances = [Draw(5000)] }, Steady(5), 8);
        Assert.Single(run.Times_s(EventKind.LiquidGone));
        Assert.True(run.First_s(EventKind.LiquidGone) < run.First_s(EventKind.ShortBegins));
        Assert.Equal(0, run.Steps[^1].Given_W, 1e-9);
        Assert.True(run.Steps[^1].Undersupplied && run.Steps[^1].Asked_W > 1400);
        Assert.True(run.Last.Propane_kg > 0);
    }

    [Fact]
    public void A_draw_runs_in_its_hours_only_also_over_midnight()
    {
        Rig rig = new() { Cylinders = [Bottle()], Appliances = [Draw(5000, 0, new ClockWindow(22.25 * 3600, 1.5 * 3600), new ClockWindow(18 * 3600, 18.5 * 3600))] };
        Trace run = Run(rig, Steady(0), 24);
        foreach (StepRecord s in run.Steps)
        {
            double clock_h = (16 + 0.5 * (s.From.Time_s + s.To.Time_s) / 3600) % 24;
            bool on = clock_h is >= 22.25 or < 1.5 or (>= 18 and < 18.5);
            Assert.Equal(on ? 5000 * Btu_h : 0, s.Given_W, 1e-6);
            Assert.Equal(on ? 5000 * Btu_h : 0, s.Asked_W, 1e-6);
        }

        Assert.Equal(3.75 * 3600 * 5000 * Btu_h, run.Given_J, 1.0);
    }

    // ---- ends

    [Fact]
    public void A_cylinder_filled_too_far_ends_liquid_full_in_the_warm()
    {
        CylinderSpecification cylinder = Bottle("20 lb", 1.17) with { InitialTemperature_K = 275 };
        Trace run = Run(new Rig { Cylinders = [cylinder.Fixed(15)] }, Steady(45), 48);
        Assert.Equal(RunEnd.LiquidFull, run.Result.End);
        Assert.Equal(EventKind.LiquidFull, run.Events[^1].Kind);
        Assert.Equal(run.Result.Ended_s, run.Events[^1].Time_s);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        double density_kg_m3 = cylinder.Contents_kg / cylinder.Volume_m3;
        Assert.Equal(density_kg_m3, PropaneSaturation.LiquidDensity_kg_m3(run.Last.Liquid_K), 0.01);
    }

    [Fact]
    public void A_fixed_sun_brings_a_cylinder_to_its_relief_pressure()
    {
        CylinderSpecification cylinder = Bottle("20 lb", 0.5);
        cylinder = cylinder with { ReliefPressure_Pa = 12e5, Surroundings = cylinder.Surroundings with { FixedSun_W = 500 } };
        Trace run = Run(new Rig { Cylinders = [cylinder] }, Steady(25), 48);
        Assert.Equal(RunEnd.ReliefPressure, run.Result.End);
        Assert.Equal(EventKind.ReliefPressure, run.Events[^1].Kind);
        Assert.Equal(12e5, run.Last.CylinderPressure_Pa, 50.0);
        Assert.True(run.Result.Ledger.Closes);
    }

    [Fact]
    public void A_run_longer_than_its_weather_ends_with_it_and_says_so()
    {
        Trace run = Run(new Rig { Cylinders = [Bottle()] }, Steady(-5, 10), 12);
        Assert.Equal(RunEnd.WeatherEnded, run.Result.End);
        Assert.Equal(36_000, run.Result.Ended_s);
        Assert.Equal(EventKind.WeatherEnds, run.Events[^1].Kind);
        Assert.Equal(RunEnd.Complete, Run(new Rig { Cylinders = [Bottle()] }, Steady(-5, 10), 10).Result.End);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(10)]
    public void A_start_outside_the_weather_is_refused(double hours)
        => Assert.Throws<ArgumentException>(() => Run(new Rig { Cylinders = [Bottle()] }, Steady(-5, 10), 1, start: Start.AddHours(hours)));

    [Fact]
    public void A_furnace_without_coach_or_thermostat_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Run(Heated() with { Coach = null }, Steady(0), 1));
        Assert.Throws<ArgumentException>(() => Run(Heated() with { Thermostat = null }, Steady(0), 1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_step_that_is_not_above_zero_is_refused(double step_s)
        => Assert.Throws<ArgumentException>(() => Run(new Rig { Cylinders = [Bottle()] }, Steady(0), 1, step_s));

    [Fact]
    public void A_cancelled_run_stops()
        => Assert.Throws<OperationCanceledException>(() => new Simulation(Heated(), Steady(0), Settings(10)).Run(new Trace(), new CancellationToken(true)));

    // ---- time

    [Theory]
    [InlineData(0.1)]
    [InlineData(1234.567)]
    [InlineData(2777.7777777)]
    [InlineData(0.3000001)]
    public void A_start_between_the_seconds_of_the_weather_s_rows_makes_no_empty_steps(double late_s)
    {
        DateTimeOffset start = Start.AddTicks((long)(late_s * 1e7));
        using CancellationTokenSource enough = new(TimeSpan.FromSeconds(20));
        int steps = 0;
        Counting observer = new(s =>
        {
            Assert.True(s.To.Time_s > s.From.Time_s, $"An empty step at {s.To.Time_s:R}.");
            Assert.True(++steps < 200_000, "No end of steps.");
        });
        new Simulation(Heated() with { Thermostat = Holding(20, 16) }, Changing(h => -5 - h % 7, 101), Settings(100, start: start)).Run(observer, enough.Token);
    }

    private sealed class Counting(Action<StepRecord> seen) : IRunObserver
    {
        public void Stepped(StepRecord record) => seen(record);

        public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
        {
        }
    }

    [Fact]
    public void Events_of_long_steps_are_within_a_second_of_those_of_short_ones()
    {
        Rig rig = Bound(20_000) with { Cylinders = [Bottle("20 lb", 0.25).Fixed(3)], Coach = OneNode(160, 1.2e6) };
        Trace coarse = Run(rig, Steady(-18), 5), fine = Run(rig, Steady(-18), 5, step_s: 1);
        Assert.True(coarse.Events.Count > 5);
        Assert.Equal(fine.Events.Select(e => e.Kind), coarse.Events.Select(e => e.Kind));
        for (int i = 0; i < fine.Events.Count; i++)
            Assert.True(Math.Abs(fine.Events[i].Time_s - coarse.Events[i].Time_s) < 1, $"{fine.Events[i]} against {coarse.Events[i]}");
    }

    [Fact]
    public void Delivery_pressure_is_worked_out_for_those_who_read_it_and_is_no_number_for_others()
    {
        List<double> unread_Pa = [], read_Pa = [];
        new Simulation(Heated(), Steady(-10), Settings(2)).Run(new Counting(s => read_Pa.Add(s.To.DeliveryPressure_Pa)));
        new Simulation(Heated(), Steady(-10), Settings(2)).Run(new Careless(s => unread_Pa.Add(s.To.DeliveryPressure_Pa)));
        Assert.Equal(read_Pa.Count, unread_Pa.Count);
        Assert.All(read_Pa, pressure_Pa => Assert.InRange(pressure_Pa, 1000, 4000));
        Assert.All(unread_Pa, pressure_Pa => Assert.True(double.IsNaN(pressure_Pa)));
    }

    private sealed class Careless(Action<StepRecord> seen) : IRunObserver
    {
        public bool ReadsDelivery => false;

        public void Stepped(StepRecord record) => seen(record);

        public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
        {
        }
    }

    [Fact]
    public void Two_runs_are_equal_to_the_last_bit()
    {
        Trace a = Run(Heated(), Changing(h => -10 + 5 * Math.Sin(h)), 48), b = Run(Heated(), Changing(h => -10 + 5 * Math.Sin(h)), 48);
        Assert.Equal(a.Steps.Select(x => x.To), b.Steps.Select(x => x.To));
        Assert.Equal(a.Steps.Select(x => (x.Asked_W, x.Given_W, x.HeatIntoCylinder_W)), b.Steps.Select(x => (x.Asked_W, x.Given_W, x.HeatIntoCylinder_W)));
        Assert.True(a.Events.SequenceEqual(b.Events));
        Assert.Equal(a.Result, b.Result);
    }

    [Fact]
    public void The_step_loop_allocates_nothing()
    {
        // Short of gas, locked out and run dry on the way, so that every branch is walked; first twice to warm up. A collection
        // that another test sets off books the rest of this thread's allocation buffer, so the least of some runs counts.
        WeatherSeries weather = Changing(h => -15 + 6 * Math.Sin(h / 4), 120);
        Rig rig = Heated(30_000) with { Cylinders = [Bottle("20 lb", 0.6)], Appliances = [Draw(900, 0.3)] };
        Silent observer = new();
        for (int i = 0; i < 2; i++) new Simulation(rig, weather, Settings(80)).Run(observer);
        long least = long.MaxValue;
        for (int i = 0; i < 5 && least > 0; i++)
        {
            Simulation simulation = new(rig, weather, Settings(80));
            long before = GC.GetAllocatedBytesForCurrentThread();
            simulation.Run(observer);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.True(observer.Steps > 4_000 && observer.Lockouts > 5 && observer.Dry > 1);
        Assert.Equal(0, least);
    }

    private sealed class Silent : IRunObserver
    {
        public int Steps { get; private set; }

        public int Lockouts { get; private set; }

        public int Dry { get; private set; }

        public void Stepped(StepRecord record) => Steps++;

        public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
        {
            if (happened.Kind == EventKind.Lockout) Lockouts++;
            if (happened.Kind == EventKind.LiquidGone) Dry++;
        }
    }

    [Fact]
    public void Run_with_a_nearly_lag_free_sensor_needs_few_steps()
    {
        Rig rig = Heated() with { Thermostat = Holding(20) with { SensorLag_s = 0.001 } };
        Trace quick = Run(rig, Steady(-5), 6), none = Run(rig with { Thermostat = Holding(20) with { SensorLag_s = 0 } }, Steady(-5), 6);
        Assert.True(quick.Steps.Count < 3000);
        Assert.Equal(none.Events, quick.Events);
    }

    // ---- curves

    [Fact]
    public void Minute_means_add_up_to_what_left_the_cylinder()
    {
        Rig rig = Heated(30_000, 150) with { Appliances = [Draw(900, 0.3)] };
        RunSeries series = new(30 * 3600);
        new Simulation(rig, Changing(h => -12 + 4 * Math.Sin(h / 3)), Settings(30, step_s: 47)).Run(new SeriesRecorder(series));
        Assert.Equal(30 * 60 + 1, series.Count);
        double given_J = series.Given_W.Sum() * 60, used_J = (series.Propane_kg[0] - series.Propane_kg[^1]) * rig.Gas.HeatingValue_J_kg;
        Assert.Equal(1, given_J / used_J, 1e-9);
    }

    [Fact]
    public void Burner_shares_of_the_minutes_add_up_to_the_flame_s_time()
    {
        Rig rig = Heated();
        RunSeries series = new(10 * 3600);
        new Simulation(rig, Steady(-5), Settings(10)).Run(new SeriesRecorder(series));
        Trace run = Run(rig, Steady(-5), 10);
        Assert.Equal(run.Steps.Where(s => s.BurnerLit).Sum(s => s.To.Time_s - s.From.Time_s), series.Burner_frac.Sum() * 60, 1e-6);
        Assert.All(series.Burner_frac, f => Assert.InRange(f, 0, 1));
    }

    [Fact]
    public void A_sample_at_an_event_s_own_time_is_there()
    {
        // The draw opens on the minute: the sample there still holds the minute before, the next one the draw.
        Rig rig = new() { Cylinders = [Bottle()], Appliances = [Draw(5000, 0, new ClockWindow(17 * 3600, 18 * 3600))] };
        RunSeries series = new(4 * 3600);
        new Simulation(rig, Steady(0), Settings(4)).Run(new SeriesRecorder(series));
        Assert.Equal(241, series.Count);
        Assert.Equal(0, series.Given_W[60]);
        Assert.Equal(5000 * Btu_h, series.Given_W[61], 1e-6);
        Assert.Equal(5000 * Btu_h, series.Given_W[120], 1e-6);
        Assert.Equal(0, series.Given_W[121]);
    }

    [Fact]
    public void Curves_of_a_run_that_ends_early_hold_what_was_run()
    {
        RunSeries series = new(12 * 3600);
        new Simulation(new Rig { Cylinders = [Bottle()] }, Steady(-5, 10), Settings(12)).Run(new SeriesRecorder(series));
        Assert.Equal(601, series.Count);
    }
}
