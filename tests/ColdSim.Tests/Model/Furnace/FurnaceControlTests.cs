using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Site;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Furnace;

public class FurnaceControlTests
{
    private const double Good_Pa = 11 * WaterColumn_Pa, Weak_Pa = 7 * WaterColumn_Pa, Low_Pa = 5 * WaterColumn_Pa;

    private static readonly FurnaceSpecification Plate = Plated();

    private sealed class Nobody : ILockoutReset
    {
        public double At_s(double lockedAt_s) => double.PositiveInfinity;
    }

    private sealed class After(double wait_s) : ILockoutReset
    {
        public double At_s(double lockedAt_s) => lockedAt_s + wait_s;
    }

    // Steps the board through time, second by second, and writes down what it did.
    private sealed class Board(FurnaceSpecification plate, ILockoutReset? reset = null)
    {
        public FurnaceControl Control { get; } = new(plate);

        public List<(double Time_s, FurnaceChange Change)> Did { get; } = [];

        public double Now_s { get; private set; } = -1;

        public Board Until(double end_s, bool calls, double delivery_Pa)
        {
            while (Now_s < end_s)
            {
                Now_s++;
                FurnaceChange change;
                while ((change = Control.Update(calls, delivery_Pa, Now_s, reset ?? new Nobody())) != FurnaceChange.None)
                {
                    if (change != FurnaceChange.Moved) Did.Add((Now_s, change));
                }
            }

            return this;
        }

        public string Story => string.Join(" ", Did.Select(d => $"{d.Time_s}:{d.Change}"));
    }

    [Fact]
    public void Furnace_purges_before_and_after_the_flame()
    {
        Board board = new Board(Plate).Until(16, true, Good_Pa);
        Assert.Equal(FurnacePhase.PrePurge, board.Control.Phase);
        Assert.True(board.Control.FanRuns && !board.Control.ValveOpen);
        board.Until(400, true, Good_Pa).Until(489, false, Good_Pa);
        Assert.Equal("17:Lit 401:Out", board.Story);
        Assert.True(board.Control.FanRuns && board.Control.Phase == FurnacePhase.PostPurge);
        board.Until(491, false, Good_Pa);
        Assert.False(board.Control.FanRuns);
    }

    [Fact]
    public void Three_tries_without_pressure_lock_it_out()
    {
        // 17 s purge, 7 s try, then twice 15 s purge and 7 s try.
        Board board = new Board(Plate).Until(100, true, Low_Pa);
        Assert.Equal("24:IgnitionFailed 46:IgnitionFailed 68:IgnitionFailed 68:LockedOut", board.Story);
        Assert.True(board.Control is { Phase: FurnacePhase.Lockout, ValveOpen: false, FanRuns: false, WantsGas: true });
    }

    [Fact]
    public void Furnace_does_not_light_between_drop_out_and_ignition_pressure()
        => Assert.DoesNotContain(new Board(Plate).Until(100, true, Weak_Pa).Did, d => d.Change == FurnaceChange.Lit);

    [Fact]
    public void A_burning_flame_lives_on_between_drop_out_and_ignition_pressure()
        => Assert.Equal("17:Lit", new Board(Plate).Until(60, true, Good_Pa).Until(5000, true, Weak_Pa).Story);

    [Fact]
    public void A_locked_out_furnace_tries_again_after_an_hour()
    {
        Board board = new Board(Plate).Until(68 + 3599, true, Good_Pa - 5 * WaterColumn_Pa);
        Assert.Equal(FurnacePhase.Lockout, board.Control.Phase);
        board.Until(68 + 3600 + 17, true, Good_Pa);
        Assert.EndsWith("3668:Retries 3685:Lit", board.Story, StringComparison.Ordinal);
    }

    [Fact]
    public void Person_awake_resets_the_furnace_sooner_and_the_reset_is_reported()
        => Assert.EndsWith("968:Reset 985:Lit",
            new Board(Plate, new After(900)).Until(500, true, Low_Pa).Until(1000, true, Good_Pa).Story, StringComparison.Ordinal);

    [Fact]
    public void A_reset_later_than_the_hour_is_no_reset()
        => Assert.Contains("3668:Retries",
            new Board(Plate, new After(7200)).Until(500, true, Low_Pa).Until(4000, true, Good_Pa).Story, StringComparison.Ordinal);

    [Fact]
    public void Tries_count_from_the_start_of_a_call()
    {
        // Two failures, the call ends, a new call has three tries again.
        Board board = new Board(Plate).Until(50, true, Low_Pa).Until(60, false, Low_Pa).Until(300, true, Low_Pa);
        Assert.Equal("24:IgnitionFailed 46:IgnitionFailed 85:IgnitionFailed 107:IgnitionFailed 129:IgnitionFailed 129:LockedOut", board.Story);
    }

    [Fact]
    public void Flames_lost_early_use_up_the_tries()
    {
        Board board = new(Plate);
        for (int i = 0; i < 3; i++) board.Until(board.Now_s + 60, true, Good_Pa).Until(board.Now_s + 2, true, Low_Pa);
        Assert.Equal([FurnaceChange.Lit, FurnaceChange.FlameLost, FurnaceChange.Lit, FurnaceChange.FlameLost, FurnaceChange.Lit, FurnaceChange.FlameLost, FurnaceChange.LockedOut],
            board.Did.Select(d => d.Change));
    }

    [Theory]
    [InlineData(599, FurnaceChange.LockedOut)]
    [InlineData(600, FurnaceChange.FlameLost)]
    public void Ten_minutes_of_flame_reset_the_count_of_tries(double lit_s, FurnaceChange then)
    {
        Board board = new Board(Plate).Until(50, true, Low_Pa);
        board.Until(61, true, Good_Pa).Until(60 + lit_s, true, Good_Pa).Until(61 + lit_s, true, Low_Pa);
        Assert.Equal((61, FurnaceChange.Lit), board.Did[2]);
        Assert.Equal((61 + lit_s, then), board.Did[^1]);
    }

    [Fact]
    public void A_call_during_the_fan_s_after_run_purges_again_before_it_lights()
        => Assert.Equal("17:Lit 101:Out 138:Lit",
            new Board(Plate).Until(100, true, Good_Pa).Until(120, false, Good_Pa).Until(140, true, Good_Pa).Story);

    [Fact]
    public void Call_that_ends_during_a_wait_for_gas_ends_the_demand()
    {
        Board board = new Board(Plate).Until(30, true, Low_Pa);
        Assert.True(board.Control.WantsGas);
        Assert.False(board.Until(31, false, Low_Pa).Control.WantsGas);
    }

    [Fact]
    public void Board_keeps_its_rules_in_random_sequences()
    {
        Gen<(bool Calls, double Delivery_Pa, int Wait_s)> move =
            Gen.Select(Gen.Frequency((3, Gen.Const(true)), (1, Gen.Const(false))), Gen.Double[0, 14 * WaterColumn_Pa], Gen.Int[1, 900]);
        Gen.Select(move.Array[1, 40], Gen.Double[0, 6000]).Sample((moves, resetAfter_s) =>
        {
            FurnaceControl control = new(Plate);
            After reset = new(resetAfter_s);
            double lockedAt_s = double.NaN, now_s = 0;
            int triesSinceCall = 0;
            foreach ((bool calls, double delivery_Pa, int wait_s) in moves)
            {
                for (int i = 0; i < wait_s; i++, now_s++)
                {
                    for (int n = 0; n < 50; n++)
                    {
                        FurnacePhase before = control.Phase;
                        FurnaceChange change = control.Update(calls, delivery_Pa, now_s, reset);
                        if (before == FurnacePhase.Lockout && control.Phase != FurnacePhase.Lockout && calls)
                        {
                            bool byHand = change == FurnaceChange.Reset;
                            Assert.True(now_s - lockedAt_s >= (byHand ? Math.Min(resetAfter_s, 3600) : 3600) - 1e-9);
                            Assert.True(change is FurnaceChange.Reset or FurnaceChange.Retries);
                        }

                        if (control.Phase == FurnacePhase.PrePurge && before != FurnacePhase.PrePurge) triesSinceCall = 0;
                        if (control.Phase == FurnacePhase.Trial && before != FurnacePhase.Trial) triesSinceCall++;
                        if (change == FurnaceChange.Lit) Assert.True(delivery_Pa >= Plate.IgnitionPressure_Pa && calls);
                        if (change == FurnaceChange.LockedOut) lockedAt_s = now_s;
                        if (change == FurnaceChange.LockedOut) Assert.Equal(FurnacePhase.Lockout, before);
                        if (change == FurnaceChange.FlameLost)
                            Assert.True(delivery_Pa < Plate.DropOutPressure_Pa);
                        if (change == FurnaceChange.None) break;
                        Assert.True(n < 49, "The board never settles.");
                    }

                    Assert.Equal(control.Phase is FurnacePhase.Trial or FurnacePhase.Lit, control.ValveOpen);
                    Assert.Equal(control.Phase == FurnacePhase.Lit, control.IsLit);
                    if (!calls) Assert.False(control.ValveOpen || control.Phase == FurnacePhase.Lockout);
                    if (control.IsLit) Assert.True(delivery_Pa >= Plate.DropOutPressure_Pa && !control.WantsGas);
                    if (control.ValveOpen) Assert.True(control.FanRuns);
                    Assert.True(control.PhaseEnds_s > now_s);
                }
            }
        }, iter: 60);
    }

    // ---- who resets it, and when

    private static double ResetAt_s(double lockedAtClock_h, params ClockWindow[] awake)
    {
        DateTimeOffset midnight = new(2027, 1, 12, 0, 0, 0, TimeSpan.FromHours(-7));
        HysteresisComparator warm = new(280, 280);
        warm.Begin(290);
        return new Occupants(new Occupancy { AwakeHours = awake, ResetAfter_s = 900 }, new RunClock(midnight, []), warm).At_s(lockedAtClock_h * 3600) / 3600;
    }

    private static readonly ClockWindow Day = new(6.5 * 3600, 22.5 * 3600);

    [Fact]
    public void Person_awake_notices_after_a_quarter_of_an_hour() => Assert.Equal(18.25, ResetAt_s(18, Day), 1e-9);

    [Fact]
    public void Person_asleep_notices_on_getting_up() => Assert.Equal(6.5, ResetAt_s(3, Day), 1e-9);

    [Fact]
    public void Person_who_falls_asleep_meanwhile_notices_next_morning() => Assert.Equal(24 + 6.5, ResetAt_s(22.4, Day), 1e-9);

    [Fact]
    public void First_person_to_get_up_resets_the_furnace()
        => Assert.Equal(5, ResetAt_s(1, new ClockWindow(7 * 3600, 22 * 3600), new ClockWindow(5 * 3600, 6 * 3600)), 1e-9);

    [Fact]
    public void No_reset_without_anybody_awake() => Assert.Equal(double.PositiveInfinity, ResetAt_s(3));

    [Fact]
    public void Awake_over_midnight_counts_after_midnight_too()
        => Assert.Equal(25.25, ResetAt_s(25, new ClockWindow(20 * 3600, 2 * 3600)), 1e-9);
}
