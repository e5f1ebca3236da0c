using ColdSim.Planning.Harms;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Harms;

public class HarmOrderTests
{
    // Values that often fall together once they are rounded.
    private static readonly Gen<Harm> Harms = Gen.Select(
        Gen.Double[0, 0.4], Gen.Double[270, 276], Gen.Double[0, 0.4], Gen.Double[0, 3], Gen.Double[0, 3],
        (freezing, lowest, noHeat, cold, minutes) => new Harm(freezing, lowest, noHeat, cold, minutes));

    [Fact]
    public void The_order_is_antisymmetric_and_names_the_same_term_both_ways()
        => Gen.Select(Harms, Harms).Sample((a, b) =>
        {
            (HarmTerm term, int sign) = HarmOrder.Decide(a, b);
            return HarmOrder.Decide(b, a) == (term, -sign) && (sign == 0) == (term == HarmTerm.None);
        });

    [Fact]
    public void The_order_is_transitive()
        => Gen.Select(Harms, Harms, Harms).Sample((a, b, c) =>
        {
            Harm[] sorted = [a, b, c];
            Array.Sort(sorted, HarmOrder.Only);
            return HarmOrder.Only.Compare(sorted[0], sorted[1]) <= 0 && HarmOrder.Only.Compare(sorted[1], sorted[2]) <= 0
                && HarmOrder.Only.Compare(sorted[0], sorted[2]) <= 0;
        });

    [Fact]
    public void What_is_the_same_for_the_order_is_the_same_against_all_others()
        => Gen.Select(Harms, Harms, Harms).Sample((a, b, c) =>
            HarmOrder.Only.Compare(a, b) != 0 || HarmOrder.Only.Compare(a, c) == HarmOrder.Only.Compare(b, c));

    [Theory]
    [InlineData(HarmTerm.None, 0.04, 273.1, 0.04, 0.4, 0.4)]
    [InlineData(HarmTerm.FreezingHours, 0.06, 300, 0, 0, 0)]
    [InlineData(HarmTerm.Lowest, 0, 272.6, 5, 5, 5)]
    [InlineData(HarmTerm.NoHeatHours, 0, 273.15, 0.06, 5, 5)]
    [InlineData(HarmTerm.ColdKelvinHours, 0, 280, 0, 0.6, 5)]
    [InlineData(HarmTerm.ShortMinutes, 0, 280, 0, 0, 0.6)]
    public void The_first_term_that_differs_after_rounding_decides(
        HarmTerm term, double freezing_h, double lowest_K, double noHeat_h, double cold, double short_min)
    {
        (HarmTerm Term, int Sign) found = HarmOrder.Decide(new Harm(freezing_h, lowest_K, noHeat_h, cold, short_min), Harm.None);
        Assert.Equal((term, term == HarmTerm.None ? 0 : 1), found);
    }

    [Fact]
    public void How_warm_it_stays_above_freezing_is_no_harm()
        => Assert.Equal(0, HarmOrder.Only.Compare(new Harm(0, 280, 0, 0, 0), new Harm(0, 295, 0, 0, 0)));

    [Fact]
    public void Two_nights_together_are_the_sum_of_their_hours_and_the_lower_of_their_lowest()
        => Assert.Equal(new Harm(3, 260, 5, 7, 9), new Harm(1, 260, 2, 3, 4) + new Harm(2, 270, 3, 4, 5));
}
