using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Freezing;

public class StorageRangeTests
{
    private const double Outside_C = -10;

    private static CoolDown Stop(CoachSpecification coach)
        => CoolDownRun.At(Scenario(Heated() with { Cylinders = [BigTank()], Coach = coach }, Changing(_ => Outside_C, 120), 2), Start.AddHours(11));

    [Fact]
    public void One_node_of_half_and_of_twice_the_storage_cools_in_that_part_of_the_time()
    {
        CoolDown stop = Stop(OneNode(100, 3.6e6));
        Assert.Equal(stop.FreezingAfter!.Value.Seconds / Math.Sqrt(2), stop.FreezingEarliest!.Value.Seconds, 5.0);
        Assert.Equal(stop.FreezingAfter.Value.Seconds * Math.Sqrt(2), stop.FreezingLatest!.Value.Seconds, 5.0);
        Assert.Equal(2, stop.FiftyLatest!.Value.Seconds / stop.FiftyEarliest!.Value.Seconds, 0.01);
    }

    [Fact]
    public void Two_nodes_have_their_own_time_within_the_range()
    {
        CoolDown stop = Stop(TwoNodes());
        Assert.InRange(stop.FiftyAfter!.Value, stop.FiftyEarliest!.Value, stop.FiftyLatest!.Value);
        Assert.InRange(stop.FreezingAfter!.Value, stop.FreezingEarliest!.Value, stop.FreezingLatest!.Value);
        Assert.True(stop.FreezingLatest.Value.Seconds > 1.3 * stop.FreezingEarliest.Value.Seconds);
    }

    [Fact]
    public void Freezing_that_only_a_light_coach_reaches_has_no_latest_time()
    {
        Rig rig = Heated() with { Cylinders = [BigTank()], Coach = OneNode(100, 3.6e6) };
        CoolDown all = CoolDownRun.At(Scenario(rig, Changing(_ => Outside_C, 120), 2), Start.AddHours(11));
        double until_h = 11 + 0.5 * (all.FreezingEarliest!.Value.Hours + all.FreezingAfter!.Value.Hours);
        CoolDown cut = CoolDownRun.At(Scenario(rig, Changing(_ => Outside_C, until_h, until_h / 8), 2), Start.AddHours(11));
        Assert.NotNull(cut.FreezingEarliest);
        Assert.Null(cut.FreezingLatest);
    }

    // A bottle that gives out early in a cold night.
    private static readonly Lazy<RunReport> Failed = new(() => ColdSim.Tests.Model.Rigs.Nights(
        Heated() with { Cylinders = [Bottle("20 lb", 0.08)] }, Steady(-15), 1));

    [Fact]
    public void After_a_failure_the_run_s_own_time_lies_in_the_range()
    {
        CoolDown after = AfterFailure.Of(Failed.Value)!;
        Assert.True(after.FreezingEarliest < after.FreezingAfter && after.FreezingAfter < after.FreezingLatest);
        Assert.True(after.FiftyEarliest < after.FiftyAfter && after.FiftyAfter < after.FiftyLatest);
    }

    [Fact]
    public void A_coach_that_stores_the_same_goes_along_the_run_s_own_curve()
    {
        RunReport run = Failed.Value;
        CoolDown after = AfterFailure.Of(run)!;
        int from = (int)Math.Round((after.At - run.Scenario.Start).TotalSeconds / 60);
        OtherStorage same = new(run.Series, run.Scenario.Rig.Coach!, run.Scenario.Weather.First(), 0, from);
        Assert.Equal(after.FreezingAfter!.Value.Seconds, same.Until_s((1, 1), 273.15, run.Series.Count - 1), 60.0);
    }

    // The finished run with its heat, against running the other coach itself: the furnace is out in both.
    [Fact]
    public void Another_coach_s_time_after_a_failure_is_that_of_running_it()
    {
        CoachSpecification coach = TwoNodes();
        Scenario scenario = Scenario(Heated() with { Cylinders = [BigTank()], Coach = coach }, Changing(_ => -15, 120), 1) with { HeatStops = Start.AddHours(8) };
        RunReport run = NightRun.Of(scenario);
        OtherStorage other = new(run.Series, coach, run.Scenario.Weather.First(), 0, 8 * 60);
        CoolDown whole = CoolDownRun.At(scenario, Start.AddHours(8));
        double[] until_s = [.. StorageUncertainty.Corners.Select(c => other.Until_s(c, 273.15, run.Series.Count - 1))];
        Assert.Equal(whole.FreezingEarliest!.Value.Seconds, until_s.Min(), 120.0);
        Assert.Equal(whole.FreezingLatest!.Value.Seconds, until_s.Max(), 120.0);
    }
}
