using ColdSim.App.Text;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class ValueAxisTests
{
    private const double Hairline = 1e-6;

    private static readonly Gen<(double Low, double High, int Most)> Ranges =
        Gen.Select(Gen.Double[-1e3, 1e3], Gen.Double[-1.5, 6], Gen.Int[0, 12]).Select((low, lead, most) => (low, low + Math.Pow(10, lead), most));

    [Fact]
    public void Ticks_are_round_rising_inside_the_axis_and_two_to_seven()
        => Ranges.Sample(range =>
        {
            ValueAxis axis = ValueAxis.Around(range.Low, range.High, "x");
            IReadOnlyList<double> ticks = axis.Ticks(range.Most);
            double gap = ticks[1] - ticks[0];
            Assert.InRange(ticks.Count, 2, ValueAxis.MostTicks);
            Assert.InRange(ticks.Count, 2, Math.Max(2, range.Most));
            Assert.All(ticks, t => Assert.InRange(t, axis.Low - gap * Hairline, axis.High + gap * Hairline));
            Assert.All(ticks.Zip(ticks.Skip(1)), pair => Assert.Equal(gap, pair.Second - pair.First, gap * Hairline));
            Assert.All(ticks, t => Assert.True(IsRound(t, (range.High - range.Low) / 20), $"{t} of {axis}"));
        });

    [Fact]
    public void Axes_hold_their_range_and_little_more()
        => Ranges.Sample(range =>
        {
            ValueAxis axis = ValueAxis.Around(range.Low, range.High, "x");
            double span = range.High - range.Low;
            Assert.InRange(range.Low - axis.Low, -span * Hairline, span / 3);
            Assert.InRange(axis.High - range.High, -span * Hairline, span / 3);
        });

    [Theory]
    [InlineData(-20, 80, 6, new double[] { -20, 0, 20, 40, 60, 80 })]
    [InlineData(-20, 80, 3, new double[] { 0, 50 })]
    [InlineData(0, 30_000, 4, new double[] { 0, 10_000, 20_000, 30_000 })]
    [InlineData(-25, 25, 2, new double[] { -25, 25 })]
    public void Fewer_ticks_are_wider_apart(double low, double high, int most, double[] ticks)
        => Assert.Equal(ticks, new ValueAxis(low, high, "x").Ticks(most));

    [Fact]
    public void A_value_is_in_the_row_of_its_dot()
    {
        ValueAxis axis = new(0, 30, "x");
        Assert.Equal([3, 2, 1, 0], ((double[])[0, 10, 20, 30]).Select(v => axis.Row(v, 4)));
    }

    // A multiple of a power of ten at least as large as a small part of the range.
    private static bool IsRound(double value, double least)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return Math.Abs(value / unit - Math.Round(value / unit)) < Hairline * Math.Max(1, Math.Abs(value / unit));
    }
}
