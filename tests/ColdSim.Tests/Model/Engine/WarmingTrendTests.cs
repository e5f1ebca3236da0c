using ColdSim.Model.Engine;
using Xunit;

namespace ColdSim.Tests.Model.Engine;

public class WarmingTrendTests
{
    // Began 600 s ago at 250 K and is at 249 now: by the mean 248.5 in 300 s, where the present rate alone would make 246 of it.
    private static WarmingTrend Cooling()
    {
        WarmingTrend trend = new(1);
        trend.Begin(1000, [250]);
        return trend;
    }

    [Fact]
    public void Far_ahead_the_mean_rate_counts_alone() => Assert.Equal(248.5, Cooling().Ahead_K(0, 1600, 249, 246, 300), 1e-9);

    [Fact]
    public void Near_ahead_the_present_rate_counts() => Assert.Equal(248.97, Cooling().Ahead_K(0, 1600, 249, 248.97, 3), 0.001);

    [Fact]
    public void In_between_they_are_mixed() => Assert.Equal(0.5 * 248.75 + 0.5 * 247.5, Cooling().Ahead_K(0, 1600, 249, 247.5, 150), 1e-9);

    [Fact]
    public void A_trend_of_longer_ago_than_twenty_minutes_or_of_no_time_counts_for_nothing()
    {
        Assert.Equal(246, Cooling().Ahead_K(0, 2201, 249, 246, 300));
        Assert.Equal(246, Cooling().Ahead_K(0, 1000, 249, 246, 300));
        Assert.Equal(246, new WarmingTrend(1).Ahead_K(0, 1000, 249, 246, 300));
    }

    [Fact]
    public void No_trend_goes_further_than_five_kelvins() => Assert.Equal(244, Cooling().Ahead_K(0, 1001, 249, 246, 300));
}
