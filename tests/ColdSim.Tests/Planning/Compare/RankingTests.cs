using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using Xunit;
using static ColdSim.Tests.Planning.Compare.HandRows;

namespace ColdSim.Tests.Planning.Compare;

public class RankingTests
{
    private static Harm Of(double freezing_h = 0, double lowest_C = 20, double noHeat_h = 0, double cold_Kh = 0, double short_min = 0)
        => new(freezing_h, lowest_C + 273.15, noHeat_h, cold_Kh, short_min);

    [Fact]
    public void Each_step_of_the_rule_decides_only_where_those_before_it_tie()
    {
        ComparedRow[] inOrder =
        [
            Row("holds, gas for another night", 9, gas_kg: 7, cost: 90),
            Row("holds, cheap", 8, gas_kg: 10, cost: 10, walks: 5),
            Row("holds, dear, no walk", 7, gas_kg: 10, cost: 20),
            Row("holds, dear, one walk", 6, gas_kg: 10, cost: 20, walks: 1),
            Row("holds, dear, one walk, thirsty", 5, gas_kg: 10.2, cost: 20, walks: 1),
            Row("as little harm, but does not hold", 4, Verdict.WaterFreezes, gas_kg: 10),
            Row("twenty minutes short", 3, Verdict.GasShort, harm: Of(short_min: 20)),
            Row("cold", 2, Verdict.FurnaceTooSmall, harm: Of(cold_Kh: 5)),
            Row("three hours without heat", 1, Verdict.BatteryFlat, harm: Of(noHeat_h: 3, cold_Kh: 1)),
            Row("two hours freezing", 11, Verdict.GasGone, harm: Of(2, -3)),
            Row("two hours freezing, colder", 12, Verdict.GasGone, harm: Of(2, -6)),
            Row("stopped by its cylinder", 0, end: RunEnd.ReliefPressure, gas_kg: 0),
        ];
        IReadOnlyList<ComparedRow> ranked = Ranking.Ordered(inOrder.OrderBy(r => r.Order));
        Assert.Equal(inOrder.Select(r => r.Option.Name), ranked.Select(r => r.Option.Name));
        Assert.Equal(Enumerable.Range(1, 12), ranked.Select(r => r.Rank));
        Assert.Equal(
            [
                Criterion.Margin, Criterion.Cost, Criterion.Work, Criterion.Gas, Criterion.Holds, Criterion.ShortMinutes, Criterion.ColdKelvinHours,
                Criterion.NoHeatHours, Criterion.FreezingHours, Criterion.Lowest, Criterion.StoppedByCylinder,
            ],
            ranked.Zip(ranked.Skip(1), Ranking.Between));
    }

    [Fact]
    public void A_night_at_20_F_inside_never_ranks_above_one_at_40_F_because_of_fewer_minutes_short()
    {
        ComparedRow cold = Row("cold", 0, Verdict.BatteryFlat, inside_C: -6.7, harm: Of(4, -6.7, 6, 90, 10));
        ComparedRow warm = Row("warm", 1, Verdict.GasShort, inside_C: 4.4, harm: Of(0, 4.4, 2, 30, 400));
        Assert.Equal(["warm", "cold"], Ranking.Ordered([cold, warm]).Select(r => r.Option.Name));
    }

    [Fact]
    public void Differences_too_small_to_know_tie_and_keep_the_order_of_the_file()
    {
        IReadOnlyList<ComparedRow> ranked = Ranking.Ordered(
        [
            Row("third", 2, harm: Of(0.04, 20, 0.01, 0.4, 0.4), gas_kg: 9.001),
            Row("second", 1, harm: Of(0.02, 19, 0.04, 0.1, 0.2), gas_kg: 9.002),
            Row("last", 3, harm: Of(0.06, 20), gas_kg: 9.002),
            Row("first", 0, gas_kg: 8.999),
        ]);
        Assert.Equal(["first", "second", "third", "last"], ranked.Select(r => r.Option.Name));
        Assert.Equal([1, 1, 1, 4], ranked.Select(r => r.Rank));
    }

    [Fact]
    public void A_run_that_its_cylinder_stopped_does_not_hold()
        => Assert.False(HandRows.Of(Row("a", 0, end: RunEnd.LiquidFull)).AnyHolds);
}
