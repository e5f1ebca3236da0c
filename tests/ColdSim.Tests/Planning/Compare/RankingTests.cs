using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;
using Xunit;
using static ColdSim.Tests.Planning.Compare.HandRows;

namespace ColdSim.Tests.Planning.Compare;

public class RankingTests
{
    [Fact]
    public void Each_step_of_the_rule_decides_only_where_those_before_it_tie()
    {
        ComparedRow[] inOrder =
        [
            Row("holds, warm, thrifty", 5, inside_C: 15, gas_kg: 8),
            Row("holds, warm, thirsty", 4, inside_C: 15, gas_kg: 9),
            Row("holds, cool, thrifty", 3, inside_C: 12, gas_kg: 5),
            Row("holds with two minutes short", 2, short_min: 2, inside_C: 18, gas_kg: 4),
            Row("an hour short", 9, Verdict.RunsShort, 60, 20, inside_C: 1),
            Row("as long, but later", 8, Verdict.RunsShort, 90, 40, inside_C: 2),
            Row("as late, but warmer", 7, Verdict.RunsDry, 90, 30, 41, inside_C: 6),
            Row("as warm, less gas", 6, Verdict.RunsShort, 90, 30, inside_C: 5, gas_kg: 6),
            Row("the rest", 1, Verdict.RunsShort, 90, 30, inside_C: 5, gas_kg: 7),
            Row("stopped by its cylinder", 0, end: RunEnd.ReliefPressure, gas_kg: 0),
        ];
        IReadOnlyList<ComparedRow> ranked = Ranking.Ordered(inOrder.OrderBy(r => r.Order));
        Assert.Equal(inOrder.Select(r => r.Option.Name), ranked.Select(r => r.Option.Name));
        Assert.Equal(Enumerable.Range(1, 10), ranked.Select(r => r.Rank));
        Assert.Equal(
            [
                Criterion.Gas, Criterion.InsideLow, Criterion.ShortTime, Criterion.Holds, Criterion.ShortTime,
                Criterion.FirstShort, Criterion.InsideLow, Criterion.Gas, Criterion.Holds,
            ],
            ranked.Zip(ranked.Skip(1), Ranking.Between));
    }

    [Fact]
    public void Differences_below_a_minute_a_tenth_and_ten_grams_tie_and_keep_the_file_s_order()
    {
        IReadOnlyList<ComparedRow> ranked = Ranking.Ordered(
        [
            Row("third", 3, short_min: 1.1, inside_C: 14.04, gas_kg: 9.001),
            Row("second", 2, short_min: 1.2, inside_C: 14.01, gas_kg: 9.002),
            Row("last", 1, short_min: 1.2, inside_C: 13.9, gas_kg: 9.002),
            Row("first", 0, short_min: 0.9, inside_C: 13.98, gas_kg: 8.999),
        ]);
        Assert.Equal(["first", "second", "third", "last"], ranked.Select(r => r.Option.Name));
        Assert.Equal([1, 1, 1, 4], ranked.Select(r => r.Rank));
    }

    [Fact]
    public void Rank_without_a_coach_is_by_gas_used()
        => Assert.Equal(["b", "a"], Ranking.Ordered([Row("a", 0, inside_C: null), Row("b", inside_C: null, gas_kg: 8)]).Select(r => r.Option.Name));

    [Fact]
    public void A_run_that_its_cylinder_stopped_does_not_hold()
        => Assert.False(HandRows.Of(Row("a", 0, end: RunEnd.LiquidFull)).AnyHolds);
}
