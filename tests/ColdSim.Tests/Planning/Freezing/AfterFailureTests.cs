using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using UnitsNet;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Freezing;

public class AfterFailureTests
{
    // A bottle that gives out early in a cold night.
    private static readonly Lazy<RunReport> Failed = new(() => ColdSim.Tests.Model.Rigs.Nights(
        Heated() with { Cylinders = [Bottle("20 lb", 0.08)] }, Steady(-15), 1));

    [Fact]
    public void Run_that_holds_has_no_cooling_after_a_failure()
        => Assert.Null(AfterFailure.Of(ColdSim.Tests.Model.Rigs.Nights(Heated(), Steady(-2), 1)));

    [Fact]
    public void Times_to_fifty_and_to_freezing_match_the_inside_curve()
    {
        CoolDown after = AfterFailure.Of(Failed.Value)!;
        Assert.Equal(Failed.Value.Summary.FirstShort, after.At);
        Assert.True(after.FiftyAfter < after.FreezingAfter && after.FreezingAfter < after.Watched);
        Assert.Equal(283.15, Inside_K(after.At, after.FiftyAfter!.Value), 0.05);
        Assert.Equal(273.15, Inside_K(after.At, after.FreezingAfter!.Value), 0.05);
        NightReport night = Failed.Value.Nights[0];
        Assert.Equal((night.FreezingAt!.Value - after.At).TotalSeconds, after.FreezingAfter.Value.Seconds, 60.0);
    }

    [Fact]
    public void Passings_before_the_failure_are_not_counted()
    {
        RunReport run = Failed.Value;
        DateTimeOffset late = run.Nights[0].FreezingAt!.Value.AddHours(1);
        CoolDown after = AfterFailure.Of(run with { Summary = run.Summary with { FirstFailure = late } })!;
        Assert.Equal(Duration.Zero, after.FiftyAfter);
        Assert.Equal(Duration.Zero, after.FreezingAfter);
    }

    private static double Inside_K(DateTimeOffset at, Duration after)
    {
        RunSeries series = Failed.Value.Series;
        double place = ((at - Failed.Value.Scenario.Start).TotalSeconds + after.Seconds) / RunSeries.Spacing_s;
        int i = (int)place;
        return series.Inside_K[i] + (place - i) * (series.Inside_K[i + 1] - series.Inside_K[i]);
    }
}
