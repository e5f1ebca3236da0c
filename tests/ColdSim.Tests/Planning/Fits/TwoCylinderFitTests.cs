using ColdSim.Planning;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Logs;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Tests.Planning.Fits;

public class TwoCylinderFitTests(ITestOutputHelper output)
{
    private const int Logs = 12;
    private const int FirstSeed = 300;

    [Fact]
    [Trait("Category", "Slow")]
    public void Heat_loss_of_two_cylinder_rigs_is_found_within_three_standard_uncertainties()
    {
        int inside = 0;
        for (int seed = FirstSeed; seed < FirstSeed + Logs; seed++)
        {
            TwoCylinderLog log = TwoCylinderLog.Of(seed);
            FitEstimate heat = Fit(log).Estimates.First(e => e.Kind == FitKind.HeatLoss);
            double width = Math.Log(heat.High / heat.Low), times = Math.Log(heat.Value / log.Truth.HeatLoss) / (width / 2 / 1.2816);
            output.WriteLine($"{seed}: {times:0.0}, width {width:0.00}");
            Assert.InRange(times, -3, 3);

            // Half of what is known before any reading.
            Assert.True(width < 0.5 * 2 * 1.2816 * 0.3, $"{seed}: {width}");
            inside += log.Truth.HeatLoss >= heat.Low && log.Truth.HeatLoss <= heat.High ? 1 : 0;
        }

        Assert.True(inside >= Logs / 2, $"{inside} of {Logs}");
    }

    [Fact]
    public void A_fit_says_which_cylinder_fed_and_finds_the_heat_loss()
    {
        TwoCylinderLog log = TwoCylinderLog.Of(FirstSeed, TwoCylinders.Changeover, 6);
        FitReport fit = Fit(log);
        Assert.Equal(fit.From, fit.Feeds[0].From);
        Assert.Equal(fit.To, fit.Feeds[^1].To);
        Assert.Equal(fit.Feeds.Skip(1).Select(f => f.From), fit.Feeds.SkipLast(1).Select(f => f.To));
        FitEstimate heat = fit.Estimates.First(e => e.Kind == FitKind.HeatLoss);
        Assert.True(heat.IsIdentified);
        Assert.All(fit.Residuals, r => Assert.Contains(r.OneOf, (string[])["left", "right"]));
    }

    [Fact]
    public void Both_weighed_at_once_are_compared_by_their_sum_where_it_is_not_known_who_fed()
    {
        TwoCylinderLog log = TwoCylinderLog.Of(FirstSeed, TwoCylinders.ByHand, 2);
        UseLog use = UseLog.Of(log.Readings, log.Scenario.Rig);
        FeedHistory plenty = FeedHistory.Plenty(log.Scenario.Rig, use);
        FeedHistory unknown = plenty with { Gaps = [.. plenty.Gaps.Select(g => g with { Other = 1 })] };
        FitProblem problem = FitProblem.Of(log.Scenario, use, unknown);
        FitPrediction predicted = new FitRun(problem).At(FittedFactors.None);
        var covariance = problem.Covariance(predicted);
        (int Left, int Right)[] pairs =
        [
            .. Enumerable.Range(1, use.Rows.Count - 1)
                .Where(i => use.Rows[i].Reading.Time == use.Rows[i - 1].Reading.Time && use.Rows[i].Reading.Time > use.Rows[0].Reading.Time)
                .Select(i => (i - 1, i)),
        ];
        foreach ((int left, int right) in pairs)
        {
            // Beside the two unknown starts, which they keep.
            double each = covariance[left, left] - 400, sum = covariance[left, left] + covariance[right, right] + 2 * covariance[left, right] - 800;
            Assert.True(sum < 0.5 * each, $"{sum} kg² of the sum, {each} kg² of one");
        }

        Assert.NotEmpty(pairs);
    }

    private static FitReport Fit(TwoCylinderLog log)
        => CoachFit.Of(log.Scenario, [.. LogConsistency.Of(log.Readings, log.Scenario).Kept.Rows.Select(r => r.Reading)]);
}
