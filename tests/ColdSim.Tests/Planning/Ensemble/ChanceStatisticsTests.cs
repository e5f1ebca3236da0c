using ColdSim.Planning.Ensemble;
using CsCheck;
using MathNet.Numerics.Statistics;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>What is made of the members' counts.</summary>
public class ChanceStatisticsTests
{
    // Wilson's interval at 95 %, from memory of its common examples.
    [Theory]
    [InlineData(0, 10, 0, 0.2775)]
    [InlineData(5, 10, 0.2366, 0.7634)]
    [InlineData(10, 10, 0.7225, 1)]
    public void The_interval_of_a_proportion_is_wilsons(int count, int of, double low, double high)
    {
        Assert.Equal(low, new Proportion(count, of).Low_frac, 4);
        Assert.Equal(high, new Proportion(count, of).High_frac, 4);
    }

    [Fact]
    public void An_interval_holds_its_chance_and_narrows_with_members()
        => Gen.Select(Gen.Int[0, 50], Gen.Int[50, 500]).Sample((count, of) =>
        {
            Proportion few = new(count, of), many = new(count * 10, of * 10);
            return few.Low_frac >= 0 && few.High_frac <= 1 && few.Low_frac <= few.Chance_frac && few.Chance_frac <= few.High_frac
                && many.High_frac - many.Low_frac < few.High_frac - few.Low_frac;
        });

    [Fact]
    public void Rank_correlation_is_independent_of_scale_shares_ranks_of_ties_and_is_undefined_for_a_constant()
    {
        double[] x = [1, 2, 3, 4, 5], far = [1, 10, 100, 1000, 10_000];
        Assert.Equal(1, Correlation.Spearman(x, far), 12);
        Assert.Equal(-1, Correlation.Spearman(x, [.. far.Reverse()]), 12);
        Assert.Equal(0.8, Correlation.Spearman(x, [1, 3, 2, 5, 4]), 12);

        // Ranks 1, 2.5, 2.5, 4, 5 about their mean of 3: 9.5 / sqrt(10 * 9.5).
        Assert.Equal(9.5 / Math.Sqrt(95), Correlation.Spearman(x, [1, 2, 2, 3, 4]), 12);
        Assert.Equal(double.NaN, Correlation.Spearman(x, [3, 3, 3, 3, 3]));
    }

    [Fact]
    public void A_percentile_is_a_value_that_is_there()
    {
        double[] ten = [.. Enumerable.Range(1, 10).Select(i => (double)i)];
        Assert.Equal(1, ChanceReport.Percentile(ten, 0.1));
        Assert.Equal(5, ChanceReport.Percentile(ten, 0.5));
        Assert.Equal(9, ChanceReport.Percentile(ten, 0.9));
    }
}
