using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Tests.Planning.Fits;
using Xunit;

namespace ColdSim.Tests.Planning.Logs;

/// <summary>Which of two cylinders fed, of readings made by hand with 3 kg used in each half of a day.</summary>
public class FeedTrackerTests
{
    private const double Use_kg = 3;

    private static Rig Rig(CylinderArrangement arrangement) => new()
    {
        Cylinders = [InventedCoach.Cylinder("40 lb") with { Label = "left" }, InventedCoach.Cylinder("40 lb") with { Label = "right" }],
        Arrangement = arrangement,
    };

    // Every half day; NaN where it was not weighed.
    private static FeedHistory Of(CylinderArrangement arrangement, params (double Left_kg, double Right_kg)[] weighed)
    {
        List<LogReading> readings = [];
        for (int k = 0; k < weighed.Length; k++)
        {
            foreach ((int cylinder, double kg) in (ReadOnlySpan<(int, double)>)[(0, weighed[k].Left_kg), (1, weighed[k].Right_kg)])
            {
                if (double.IsNaN(kg))
                    continue;
                readings.Add(new()
                {
                    Line = readings.Count + 2,
                    Cylinder = cylinder,
                    Time = InventedCoach.Start.AddHours(12 * k),
                    Reading = new WeightReading { Name = "weight", Scale_kg = kg + 13, Tare_kg = 13 },
                });
            }
        }

        Rig rig = Rig(arrangement);
        return FeedTracker.Of(rig, UseLog.Of(readings, rig), [.. Enumerable.Repeat(Use_kg, weighed.Length - 1)], 0.1);
    }

    [Fact]
    public void Cylinder_that_gets_lighter_fed()
    {
        FeedHistory left = Of(new OneAtATime(), (15, 16), (12, 16), (9, 16)), right = Of(new OneAtATime(), (15, 16), (15, 13), (15, 10));
        Assert.All(left.Gaps, g => Assert.Equal((0, 0, (int?)null), (g.First, g.Last, g.Other)));
        Assert.All(right.Gaps, g => Assert.Equal((1, 1, (int?)null), (g.First, g.Last, g.Other)));
        Assert.Equal((0, 1), (left.InUse, right.InUse));
        Assert.True(left.InUse_frac[0] > 0.95 && right.InUse_frac[1] > 0.95);
    }

    [Fact]
    public void Cylinder_that_was_not_read_holds_what_it_must_have_given_less()
    {
        // The right one stays at 16 kg while 9 kg are used: the left one gave them.
        FeedHistory feeds = Of(new OneAtATime(), (15, 16), (double.NaN, 16), (double.NaN, 16), (double.NaN, 16));
        Assert.Equal(0, feeds.InUse);
        Assert.InRange(feeds.Held_kg[^1][0], 15 - 9 - 1.2, 15 - 9 + 1.2);
        Assert.InRange(feeds.Uncertainty_kg[0], 0.2, 2);
        Assert.InRange(feeds.Held_kg[^1][1], 15.7, 16.3);
    }

    [Fact]
    public void Changeover_goes_on_with_the_full_side_once_the_other_is_empty()
    {
        FeedHistory feeds = Of(new AutomaticChangeover(), (7, 16), (4, 16), (1, 16), (double.NaN, 14), (double.NaN, 11));
        Assert.Equal(1, feeds.InUse);
        Assert.Equal((0, 1), (feeds.Gaps[2].First, feeds.Gaps[2].Last));
        Assert.True(feeds.Held_kg[^1][0] < 1);
    }

    [Fact]
    public void Change_between_two_readings_leaves_only_the_sum()
    {
        FeedGap changed = Of(new OneAtATime(), (15, 16), (12, 16), (10.5, 14.5), (10.5, 11.5)).Gaps[1];
        Assert.Equal((0, 1, (int?)1, false), (changed.First, changed.Last, changed.Other, changed.RanDry));
    }

    [Fact]
    public void Cylinders_open_together_share_the_use()
    {
        FeedHistory feeds = Of(new OpenTogether(), (15, 15), (double.NaN, 13.5), (double.NaN, 12));
        Assert.True(feeds.Together);
        Assert.InRange(feeds.Held_kg[^1][0], 11, 13);
    }

    [Fact]
    public void One_wrong_reading_does_not_change_who_fed()
        => Assert.All(Of(new OneAtATime(), (15, 16), (12, 16), (9, 10), (6, 16), (3, 16)).Gaps, g => Assert.Equal((0, 0), (g.First, g.Last)));
}
