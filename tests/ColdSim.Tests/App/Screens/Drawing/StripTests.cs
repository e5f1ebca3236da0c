using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Screens.Drawing;

public class StripTests
{
    private static readonly double[] Ramp = [0, 1, 2, 3];
    private static readonly double[] Flat = [.. Enumerable.Repeat(7.0, 16)];

    private static string Drawn(double[] samples, ValueAxis axis, Stroke stroke, int cells, int rows)
    {
        DotGrid grid = new(cells, rows);
        Curve curve = new("a", samples, v => v, axis, stroke, CellStyle.Inside) { Lower = stroke == Stroke.Band ? new double[samples.Length] : null };
        StrokeDrawing.DrawCurve(grid, curve.Columns(new MinuteRange(0, samples.Length), grid.Columns), axis, stroke);
        return string.Join('\n', Enumerable.Range(0, rows).Select(r => string.Concat(Enumerable.Range(0, cells).Select(c => grid.Glyph(c, r)))));
    }

    [Fact]
    public void A_ramp_of_four_values_climbs_one_dot_a_column()
        => Assert.Equal("⡠⠊", Drawn(Ramp, new(0, 3, ""), Stroke.Line, 2, 1));

    [Fact]
    public void A_jump_is_joined()
        => Assert.Equal("⠀⡏\n⣀⠇", Drawn([0, 0, 7, 7], new(0, 7, ""), Stroke.Line, 2, 2));

    [Fact]
    public void Values_that_are_not_there_leave_a_gap()
        => Assert.Equal("⠤⠀⠤", Drawn([1, 1, double.NaN, double.NaN, 1, 1], new(0, 3, ""), Stroke.Line, 3, 1));

    [Fact]
    public void Values_off_the_axis_draw_nothing()
        => Assert.Equal("⠀⠀", Drawn([9, 9, -9, -9], new(0, 3, ""), Stroke.Dashes, 2, 1));

    [Fact]
    public void The_strokes_differ_without_colour()
    {
        string[] drawn = [.. Enum.GetValues<Stroke>().Select(s => Drawn(Flat, new(0, 14, ""), s, 8, 2))];
        Assert.Equal(Enum.GetValues<Stroke>().Length, drawn.Distinct().Count());
    }

    [Fact]
    public void A_column_spans_the_lowest_and_highest_of_its_minutes()
    {
        Extent[] columns = new Curve("a", [1, 5, 3, 4], v => v * 2, new(0, 1, ""), Stroke.Line, CellStyle.Inside).Columns(new(0, 4), 2);
        Assert.Equal([new Extent(2, 10), new Extent(6, 8)], columns);
    }

    [Fact]
    public void A_night_shorter_than_its_columns_still_fills_them()
        => Assert.All(new Curve("a", [1, 2, 3], v => v, new(0, 1, ""), Stroke.Line, CellStyle.Inside).Columns(new(0, 3), 100), e => Assert.False(e.IsNone));

    [Theory]
    [InlineData(-14, 68, "-20", "80")]
    [InlineData(0, 19.8, "0", "20")]
    [InlineData(0, 30_000, "0", "30,000")]
    [InlineData(3, 3, "3", "4")]
    [InlineData(double.NaN, double.NaN, "0", "1")]
    [InlineData(0, 0, "0", "1")]
    public void Axes_end_on_round_numbers_around_the_range(double low, double high, string bottom, string top)
    {
        ValueAxis axis = ValueAxis.Around(low, high, "x");
        Assert.Equal((bottom + " x", top + " x"), (axis.LowLabel, axis.HighLabel));
    }
}
