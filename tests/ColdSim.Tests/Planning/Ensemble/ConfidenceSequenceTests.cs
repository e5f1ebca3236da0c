using ColdSim.Planning.Ensemble;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>Bounds that hold at every look, on invented members: a thousand repeats of each chance.</summary>
public class ConfidenceSequenceTests
{
    private const int Repeats = 1000;
    private const int Looks = 2000;

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.97)]
    [InlineData(0.99)]
    public void Bounds_hold_at_all_looks_at_once_in_95_of_100_repeats(double chance_frac)
    {
        int always = 0;
        for (int repeat = 0; repeat < Repeats; repeat++)
        {
            int look = 1, count = 0;
            for (; look <= Looks && (look == 1 || new ConfidenceSequence(count, look - 1).Place(chance_frac) == 0); look++) count += Holds(repeat, look, chance_frac);
            if (look > Looks) always++;
        }

        Assert.InRange(always, 0.95 * Repeats, Repeats);
    }

    // Which is why they are not the brackets of the chance.
    [Fact]
    public void Intervals_for_one_look_fail_at_some_look_in_a_quarter_of_the_repeats()
    {
        int always = 0;
        for (int repeat = 0; repeat < Repeats; repeat++)
        {
            int look = 1, count = 0;
            for (bool within = true; look <= Looks && within; look++)
            {
                count += Holds(repeat, look, 0.9);
                Proportion proportion = new(count, look);
                within = proportion.Low_frac <= 0.9 && 0.9 <= proportion.High_frac;
            }

            if (look > Looks) always++;
        }

        Assert.InRange(always, 0, 0.75 * Repeats);
    }

    [Theory]
    [InlineData(0.85, ChanceSide.Below)]
    [InlineData(0.94, ChanceSide.Above)]
    public void A_settled_side_is_right_in_95_of_100_repeats(double chance_frac, ChanceSide right)
    {
        int correct = 0, within = 0;
        for (int repeat = 0; repeat < Repeats; repeat++)
        {
            SequentialDecision decision = Settled(repeat, chance_frac, 0.9);
            if (decision.Side == right) correct++;
            if (decision.Low_frac <= chance_frac && chance_frac <= decision.High_frac) within++;
        }

        Assert.InRange(correct, 0.95 * Repeats, Repeats);
        Assert.InRange(within, 0.95 * Repeats, Repeats);
    }

    // The ratio of none in 40 at a chance p is (1/41) / (1 - p)^40, and 20 at the upper end.
    [Fact]
    public void Ends_of_none_and_of_all_are_those_of_the_closed_form()
    {
        double end_frac = 1 - Math.Pow(20 * 41, -1.0 / 40);
        ConfidenceSequence none = new(0, 40), all = new(40, 40);
        Assert.Equal((0, 1), (none.Low_frac, all.High_frac));
        Assert.Equal(end_frac, none.High_frac, 12);
        Assert.Equal(1 - end_frac, all.Low_frac, 12);
    }

    [Theory]
    [InlineData(7, 40)]
    [InlineData(1900, 2000)]
    public void A_chance_is_placed_by_the_ends(int count, int of)
    {
        ConfidenceSequence sequence = new(count, of);
        Assert.InRange((double)count / of, sequence.Low_frac, sequence.High_frac);
        Assert.Equal((-1, 0), (sequence.Place(sequence.Low_frac - 1e-9), sequence.Place(sequence.Low_frac + 1e-9)));
        Assert.Equal((1, 0), (sequence.Place(sequence.High_frac + 1e-9), sequence.Place(sequence.High_frac - 1e-9)));
    }

    [Theory]
    [InlineData(40, 60)]
    [InlineData(380, 400)]
    [InlineData(400, 440)]
    [InlineData(1000, 1100)]
    public void The_next_look_is_twenty_members_on_or_a_tenth_more(int look, int next) => Assert.Equal(next, SequentialDecision.NextLook(look));

    private static SequentialDecision Settled(int repeat, double chance_frac, double wanted_frac)
    {
        int count = 0, members = 0;
        for (int look = SequentialDecision.FirstLook; ; look = SequentialDecision.NextLook(look))
        {
            while (members < look) count += Holds(repeat, ++members, chance_frac);
            SequentialDecision decision = SequentialDecision.Of(count, members, wanted_frac, ChanceRun.MostUntilSettled);
            if (decision.Side != ChanceSide.Open || members >= ChanceRun.MostUntilSettled) return decision;
        }
    }

    private static int Holds(int repeat, int member, double chance_frac)
        => CounterRandom.Of(repeat, member).Uniform(CounterRandom.Purpose.Contents) < chance_frac ? 1 : 0;
}
