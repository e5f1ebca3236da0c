using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Arrangement;

public class CylinderChangeTests
{
    private static Rig Two(OneAtATime by, double left = 0.08) => new()
    {
        Cylinders = [Bottle("20 lb", left), Bottle("20 lb", 0.9)],
        Arrangement = by,
        Appliances = [Draw(9000)],
    };

    [Fact]
    public void Somebody_changes_half_an_hour_after_gas_runs_short()
    {
        Trace run = Run(Two(new OneAtATime()), Steady(-10), 12);
        double short_s = run.First_s(EventKind.ShortBegins);
        SimulationEvent change = run.Events.Single(e => e.Kind == EventKind.CylinderChanged);
        Assert.Equal(short_s + 1800, change.Time_s, 1e-6);
        Assert.Equal(1, change.Cylinder);
        Assert.Equal(change.Time_s, run.First_s(EventKind.ShortEnds), 61.0);
        Assert.Equal(1, run.Last.InUse);
    }

    [Fact]
    public void Nobody_gets_up_in_the_stated_hours()
    {
        // Starts at 16:00; short in the evening, changed at six.
        OneAtATime by = new() { NobodyGetsUp = [new ClockWindow(17 * 3600, 2 * 3600), new ClockWindow(2 * 3600, 6 * 3600)] };
        Trace run = Run(Two(by), Steady(-10), 20);
        Assert.InRange(run.First_s(EventKind.ShortBegins), 3600, 10 * 3600);
        Assert.Equal(14 * 3600, run.First_s(EventKind.CylinderChanged), 1e-6);
    }

    [Fact]
    public void Nobody_changes_again_within_the_stated_time()
    {
        Rig rig = Two(new OneAtATime { NoticedAfter_s = 300, BetweenWalks_s = 7200 }, 0.5) with { Appliances = [Draw(60_000)] };
        Trace run = Run(rig, Steady(-30), 12);
        double[] walks = run.Times_s(EventKind.CylinderChanged);
        Assert.True(walks.Length >= 2);
        Assert.All(walks.Skip(1).Zip(walks), p => Assert.True(p.First - p.Second >= 7200 - 1e-6));
    }

    [Fact]
    public void A_shut_cylinder_keeps_its_gas_and_takes_the_air_s_temperature()
    {
        Trace run = Run(Two(new OneAtATime(), 0.9), Changing(h => h < 1 ? -5 : -20, spacing_h: 0.5), 30);
        Assert.Equal(Bottle("20 lb", 0.9).Contents_kg, run.Last.Cylinders[1].Propane_kg, 1e-12);
        Assert.Equal(253.15, run.Last.Cylinders[1].Liquid_K, 1.5);
    }

    [Fact]
    public void No_change_by_hand_where_no_cylinder_has_liquid()
    {
        Rig rig = Two(new OneAtATime(), 0.05) with { Cylinders = [Bottle("20 lb", 0.05), Bottle("20 lb", 0.9) with { Contents_kg = 0.02 }] };
        Trace run = Run(rig, Steady(-10), 12);
        Assert.False(run.Has(EventKind.CylinderChanged));
        Assert.True(run.Result.Ledger.Closes);
    }

    [Fact]
    public void A_run_goes_on_where_another_ended()
    {
        Rig rig = Two(new OneAtATime()) with { Coach = OneNode(0.01) };
        Simulation first = new(rig, Steady(-10), Settings(6));
        first.Run(new Trace());
        RigState half = first.State();
        Trace rest = new();
        new Simulation(rig, Steady(-10), Settings(6, start: Start.AddHours(6)) with { From = half }).Run(rest);
        Trace whole = Run(rig, Steady(-10), 12);
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(whole.Last.Cylinders[i].Propane_kg, rest.Last.Cylinders[i].Propane_kg, 1e-3);
            Assert.Equal(whole.Last.Cylinders[i].Liquid_K, rest.Last.Cylinders[i].Liquid_K, 0.05);
        }
    }

    // Notice at once and no wait between: the minute that a change takes keeps time going, and every step has a length.
    [Fact]
    public void Somebody_who_notices_at_once_still_takes_a_minute_for_each_change()
    {
        CylinderSpecification cold = Bottle("5 lb", 0.9) with { InitialTemperature_K = 236 };
        Rig rig = new() { Cylinders = [cold, cold], Arrangement = new OneAtATime { NoticedAfter_s = 0, BetweenWalks_s = 0 }, Appliances = [Draw(200_000)] };
        Trace run = Run(rig, Steady(-37), 1);
        double[] changes = run.Times_s(EventKind.CylinderChanged);
        Assert.InRange(changes.Length, 2, 61);
        Assert.All(changes.Zip(changes.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 60 - 1e-6));
        Assert.All(run.Steps, s => Assert.True(double.IsFinite(s.Given_W) && s.To.Time_s > s.From.Time_s));
    }

    [Fact]
    public void Nobody_looks_without_end_for_a_cylinder_that_is_not_there()
    {
        Rig rig = Two(new OneAtATime { NoticedAfter_s = 0, BetweenWalks_s = 0 }) with { Cylinders = [Bottle("20 lb", 0), Bottle("20 lb", 0)], Appliances = [Draw(20_000)] };
        using CancellationTokenSource within = new(TimeSpan.FromSeconds(20));
        Trace trace = new();
        SimulationResult result = new Simulation(rig, Steady(-20), Settings(4)).Run(trace, within.Token);
        Assert.Equal(RunEnd.Complete, result.End);
        Assert.False(trace.Has(EventKind.CylinderChanged));
    }
}
