using ColdSim.App.Text.Markup;
using ColdSim.App.Text.Pictures;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.App.Reports;

/// <summary>Thinned curves keep their ends and extremes and stay close; markup keeps what came from files as text.</summary>
public class ThinningTests
{
    private static readonly Gen<PicturePoint[]> Curves = Gen.Double[-50, 1050].Array[2, 300].Select(ys => ys.Select((y, x) => new PicturePoint(x, y)).ToArray());

    [Fact]
    public void Ends_and_extremes_stay() => Curves.Sample(points =>
    {
        IReadOnlyList<PicturePoint> kept = Thinning.Of(points, 40, 12);
        Assert.Equal(points[0], kept[0]);
        Assert.Equal(points[^1], kept[^1]);
        Assert.Equal(points.Min(p => p.Y), kept.Min(p => p.Y));
        Assert.Equal(points.Max(p => p.Y), kept.Max(p => p.Y));
        Assert.True(kept.Count <= Math.Max(12, 4) || points.Length <= 2);
    });

    [Fact]
    public void What_is_left_out_lies_within_the_tolerance() => Curves.Sample(points =>
    {
        const double tolerance = 60;
        IReadOnlyList<PicturePoint> kept = Thinning.Of(points, tolerance, int.MaxValue);
        for (int i = 1; i < kept.Count; i++)
        {
            (PicturePoint a, PicturePoint b) = (kept[i - 1], kept[i]);
            Assert.All(points.Where(p => p.X > a.X && p.X < b.X), p => Assert.InRange(Math.Abs(p.Y - a.Y - (b.Y - a.Y) * (p.X - a.X) / (b.X - a.X)), 0, tolerance));
        }
    });

    [Fact]
    public void A_straight_line_needs_two_points()
        => Assert.Equal(2, Thinning.Of([.. Enumerable.Range(0, 1440).Select(x => new PicturePoint(x, 2 * x))], 3, 400).Count);

    [Fact]
    public void What_came_from_a_file_is_no_markup()
    {
        MarkupWriter to = new();
        to.Start("p").With("title", "\"><script>x</script>").Text("</p><script>alert(1)</script>&\u202e").End();
        Assert.Equal("<p title=\"&quot;&gt;&lt;script&gt;x&lt;/script&gt;\">&lt;/p&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;U+202E</p>", to.ToString());
    }
}
