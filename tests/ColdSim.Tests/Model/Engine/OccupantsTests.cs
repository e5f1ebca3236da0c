using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class OccupantsTests
{
    // Liquid too cold to give any pressure: the furnace is never lit.
    private static Rig Starved(Occupancy occupancy, double inside_C = 20) => Heated() with
    {
        Cylinders = [Bottle() with { InitialTemperature_K = 225 }],
        Coach = TwoNodes() with { InitialTemperature_K = inside_C + Zero_K },
        Occupancy = occupancy,
    };

    private static readonly ClockWindow AllDay = new(7 * 3600, 6 * 3600), ToEarlyEvening = new(7 * 3600, 16.1 * 3600);

    private static Occupancy Up(ClockWindow awake, double wakesBelow_C = -60, int resets = 3)
        => new() { AwakeHours = [awake], WakesBelow_K = wakesBelow_C + Zero_K, ResetsInVain = resets };

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void Somebody_resets_so_often_in_vain_and_then_not_until_they_get_up_again(int resets)
    {
        Trace run = Run(Starved(Up(AllDay, resets: resets)), Steady(-50), 14.9);
        Assert.Equal(resets, run.Times_s(EventKind.LockoutReset).Length);
        Assert.Equal(resets > 0, run.Has(EventKind.ResetsGivenUp));

        // At seven the next morning, 15 h after the start, they try again.
        Assert.Equal(resets, Run(Starved(Up(AllDay, resets: resets)), Steady(-50), 15.2).Times_s(EventKind.LockoutReset).Count(t => t < 15 * 3600 - 1));
    }

    [Fact]
    public void Whoever_gave_up_tries_again_on_getting_up()
    {
        // The board's own tries are an hour and more apart, so that it is locked out at seven.
        Rig rig = Starved(Up(AllDay)) with { Furnace = Plated() with { Lockout_s = 86_400 } };
        double[] resets_s = Run(rig, Steady(-50), 18).Times_s(EventKind.LockoutReset);
        Assert.Equal(15 * 3600, resets_s[3], 1e-6);
        Assert.Equal(6, resets_s.Length);
    }

    [Fact]
    public void A_cylinder_changed_is_worth_a_reset_again()
    {
        Rig rig = Starved(Up(AllDay)) with
        {
            Cylinders = [Bottle() with { InitialTemperature_K = 225 }, BigTank().Fixed(1)],
            Arrangement = new OneAtATime { NoticedAfter_s = 4 * 3600 },
        };
        Trace run = Run(rig, Steady(-50), 6);
        double given_s = run.First_s(EventKind.ResetsGivenUp), changed_s = run.First_s(EventKind.CylinderChanged);
        Assert.True(given_s < changed_s);
        Assert.Contains(run.Events, e => e.Kind == EventKind.BurnerOn && e.Time_s > changed_s && e.Time_s < changed_s + 1000);
    }

    [Fact]
    public void The_cold_wakes_somebody_who_then_resets_the_furnace()
    {
        Trace run = Run(Starved(Up(ToEarlyEvening, wakesBelow_C: 7)) with { Furnace = Plated() with { Lockout_s = 86_400 } }, Steady(-50), 12);
        double woken_s = run.First_s(EventKind.WokenByCold);
        Assert.Equal(7 + Zero_K, run.Snapshots[run.Events.FindIndex(e => e.Kind == EventKind.WokenByCold)].Inside_K, 1e-3);
        Assert.Contains(run.Times_s(EventKind.LockoutReset), t => Math.Abs(t - (woken_s + 900)) < 1e-6);
    }

    [Fact]
    public void The_cold_wakes_nobody_who_is_up()
        => Assert.False(Run(Starved(Up(AllDay, wakesBelow_C: 7)), Steady(-50), 8).Has(EventKind.WokenByCold));

    [Fact]
    public void Nobody_wakes_where_it_stays_warm_enough()
        => Assert.False(Run(Heated() with { Cylinders = [BigTank()], Occupancy = Up(ToEarlyEvening, wakesBelow_C: 7) }, Steady(-10), 12).Has(EventKind.WokenByCold));

    [Theory]
    [InlineData(-60, false)]
    [InlineData(7, true)]
    public void Whoever_the_cold_wakes_changes_the_cylinder_in_hours_in_which_nobody_gets_up(double wakesBelow_C, bool changed)
    {
        Rig rig = Starved(Up(ToEarlyEvening, wakesBelow_C)) with
        {
            Cylinders = [Bottle() with { InitialTemperature_K = 225 }, BigTank().Fixed(1)],
            Arrangement = new OneAtATime { NoticedAfter_s = 0, NobodyGetsUp = [new ClockWindow(16 * 3600, 8 * 3600)] },
        };
        Trace run = Run(rig, Steady(-50), 10);
        Assert.Equal(changed, run.Has(EventKind.CylinderChanged));
        if (changed) Assert.Equal(run.First_s(EventKind.WokenByCold) + 900, run.First_s(EventKind.CylinderChanged), 1e-6);
    }
}
