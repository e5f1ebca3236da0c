using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Harms;

public class ShortageKindTests
{
    // A small cylinder in deep cold: it chills, the board locks out, and the liquid warms again while it waits.
    private static Rig Chilled => Heated(30_000, 130) with { Cylinders = [Bottle("20 lb", 0.9)] };

    private static NightReport Night(Rig rig, double air_C) => Rigs.Nights(rig, Steady(air_C, 30), 1).Nights[0];

    private static void PartsAddUp(NightReport night)
        => Assert.Equal(night.ShortTime.Seconds, night.NoFlameTime.Seconds + night.WeakFlameTime.Seconds + night.LockedOutTime.Seconds, 1e-6);

    [Fact]
    public void No_flame_a_weak_flame_and_a_lockout_with_gas_there_add_up_to_the_shortage()
    {
        NightReport night = Night(Chilled, -28);
        PartsAddUp(night);
        Assert.True(night.LockedOutTime.Minutes > 10);
        Assert.True(night.WeakFlameTime.Minutes > 1);
    }

    // Before, the end of a step decided over the whole of it.
    [Fact]
    public void Gas_is_there_again_after_as_long_a_wait_by_steps_of_ten_seconds_as_of_ten_minutes()
    {
        NightReport fine = NightRun.Of(Rigs.Scenario(Chilled, Steady(-28, 30), 1) with { Step_s = 10 }).Nights[0], coarse = Night(Chilled, -28);
        Assert.True(fine.NoFlameTime.Minutes > 10);
        Assert.Equal(fine.NoFlameTime.Seconds, coarse.NoFlameTime.Seconds, 0.02 * fine.NoFlameTime.Seconds);
        Assert.Equal(fine.LockedOutTime.Seconds, coarse.LockedOutTime.Seconds, 0.02 * fine.LockedOutTime.Seconds);
    }

    [Theory]
    [InlineData(-10, 30, 0.75)]
    [InlineData(30, -10, 0.75)]
    [InlineData(10, -30, 0.25)]
    [InlineData(-10, -1, 0)]
    [InlineData(0, 5, 1)]
    public void A_locked_out_furnace_would_light_in_the_part_of_a_step_in_which_its_pressure_would_do(double before_Pa, double after_Pa, double expected_frac)
        => Assert.Equal(expected_frac, IgnitionOutlook.WouldLight_frac(before_Pa, after_Pa), 1e-12);

    // The board's own account of a lockout that it leaves by lighting at once is the other way to know that there was gas.
    [Fact]
    public void A_lockout_that_ends_in_a_flame_at_the_first_try_had_gas_before()
    {
        Trace run = Run(Chilled, Steady(-28, 30), 16);
        double[] lit_s = run.Times_s(EventKind.BurnerOn), retried_s = run.Times_s(EventKind.LockoutRetry);
        double ended_s = retried_s.First(t => lit_s.Any(l => l > t && l < t + 30));
        StepRecord before = run.Steps.Last(s => s.To.Time_s <= ended_s);
        Assert.True(before.WouldLight_frac > 0 && before.Furnace == FurnacePhase.Lockout);
        Assert.Contains(run.Steps, s => s.Furnace == FurnacePhase.Lockout && s.WouldLight_frac == 0);
    }

    [Fact]
    public void Liquid_too_cold_for_any_pressure_leaves_no_flame_and_no_gas_in_a_lockout()
    {
        NightReport night = Night(Heated() with { Cylinders = [Bottle() with { InitialTemperature_K = 225 }] }, -50);
        Assert.True(night.ShortTime.Hours > 10);
        Assert.Equal(night.ShortTime.Seconds, night.NoFlameTime.Seconds, 1e-6);
    }

    [Fact]
    public void A_burner_that_gets_too_little_has_a_weak_flame()
    {
        NightReport night = Night(new Rig { Cylinders = [Bottle("20 lb", 0.5)], Appliances = [Draw(40_000) with { MinimumPressure_Pa = 1 }] }, -35);
        PartsAddUp(night);
        Assert.True(night.WeakFlameTime.Seconds > 0.9 * night.ShortTime.Seconds && night.ShortTime.Hours > 1);
    }
}
