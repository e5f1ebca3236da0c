using System.Globalization;
using System.Text;
using ColdSim.App.Text.Markup;

namespace ColdSim.App.Text.Pictures;

/// <summary>Draws one strip: its legend, its axes, its areas and curves.</summary>
/// <remarks>
/// Curves are drawn into a box of their own that is stretched to the width there is, in whole minutes and thousandths of the axis, so that a page
/// needs no script to be as wide as a phone or a desk, and a script can read values off the same points.
/// </remarks>
internal static class StripDrawing
{
    /// <summary>From a strip's top to its plot: the legend. [px]</summary>
    public const int AbovePlot = 22;

    /// <summary>From the plot's foot to the next strip's top. [px]</summary>
    public const int BelowPlot = 14;

    /// <summary>The height of a plot. [px]</summary>
    public const int Plot = StripPicture.Pitch - AbovePlot - BelowPlot;
    private const double Whole = 1000, Tolerance = 3;
    private const int MarkRadius = 3;

    public static void Draw(MarkupWriter to, PictureFrame frame, PictureStrip strip, int top, double minutes, int most)
    {
        int plot = top + AbovePlot;
        Legend(to, strip, top + 14);
        to.Start("rect", "frame").With("x", 0).With("y", plot).With("width", frame.Along(1)).With("height", Plot).Empty();
        Axis(to, frame, strip.Axis, plot, right: false);
        if (strip.RightAxis is { } axis)
            Axis(to, frame, axis, plot, right: true);
        foreach (PictureLevel level in strip.Levels)
            Level(to, frame, strip.Axis, level, plot);
        to.Start("svg", "plot").With("x", 0).With("y", plot).With("width", frame.Along(1)).With("height", Plot)
            .With("viewBox", $"0 0 {MarkupWriter.Number(minutes)} {Whole}").With("preserveAspectRatio", "none");
        foreach (PictureArea area in strip.Areas)
            Area(to, strip.Axis, area, most);
        foreach (PictureSpan span in strip.Spans)
            Span(to, span);
        for (int i = 0; i < strip.Curves.Count; i++)
            Curve(to, strip, strip.Curves[i], i, most);
        to.End().Line();
        foreach (PictureReadings readings in strip.Readings)
            Readings(to, frame, readings, readings.OnRight ? strip.RightAxis! : strip.Axis, plot, minutes);
    }

    // Outside the stretched box, so that a circle stays one.
    private static void Readings(MarkupWriter to, PictureFrame frame, PictureReadings readings, ValueAxis axis, int plot, double minutes)
    {
        foreach (PicturePoint point in readings.Points)
        {
            string x = frame.Along(point.X / minutes);
            double y = Math.Round(plot + Math.Clamp(Up(axis, point.Y), 0, Whole) / Whole * Plot, 1);
            if (readings.OnRight)
                to.Start("rect", "read").With("x", x).With("y", y).With("width", 2 * MarkRadius).With("height", 2 * MarkRadius).With("transform", $"translate(-{MarkRadius},-{MarkRadius})").Empty();
            else
                to.Start("circle", "read").With("cx", x).With("cy", y).With("r", MarkRadius).Empty();
        }

        to.Line();
    }

    private static void Span(MarkupWriter to, PictureSpan span) => to.Start("rect", "short")
        .With("x", Math.Round(span.From)).With("y", Whole * 0.93)
        .With("width", Math.Max(1, Math.Round(span.To - span.From))).With("height", Whole * 0.07).Empty();

    /// <summary>The sign of a stroke, for legends.</summary>
    public static string Key(PictureStroke stroke) => stroke switch
    {
        PictureStroke.Line => "━",
        PictureStroke.Dashes => "╍",
        _ => "┈",
    };

    private static void Legend(MarkupWriter to, PictureStrip strip, int y)
    {
        to.Start("text", "legend").With("x", -PictureFrame.Left + 2).With("y", y);
        bool two = strip.RightAxis is not null;
        to.Start("tspan", "name").Text(two ? strip.Name : $"{strip.Name}, {strip.Axis.Unit}").End();
        for (int i = 0; i < strip.Curves.Count; i++)
        {
            PictureCurve curve = strip.Curves[i];
            string unit = !two ? "" : curve.OnRight ? $", {strip.RightAxis!.Unit} (right)" : $", {strip.Axis.Unit}";
            to.Text("  ").Start("tspan", $"k{i}").With("dx", 5).Text(Key(curve.Stroke)).End().Text($" {curve.Name}{unit}");
        }

        foreach (PictureArea area in strip.Areas.Where(a => a.Name.Length > 0))
            to.Text("  ").Start("tspan", area.IsHarm ? "kharm" : "kband").With("dx", 5).Text("▨").End().Text($" {area.Name}");
        foreach (PictureReadings readings in strip.Readings)
            to.Text("  ").Start("tspan", "kread").With("dx", 5).Text(readings.OnRight ? "□" : "○").End().Text($" {readings.Name}");
        if (strip.Spans.Count > 0)
            to.Text("  ").Start("tspan", "kshort").With("dx", 5).Text("▃").End().Text($" {strip.SpanName}");
        to.End().Line();
    }

    private static void Axis(MarkupWriter to, PictureFrame frame, ValueAxis axis, int plot, bool right)
    {
        foreach (double tick in axis.Ticks(ValueAxis.MostTicks))
        {
            double y = Math.Round(plot + Up(axis, tick) / Whole * Plot, 1);
            if (!right)
                to.Start("line", "grid").With("x1", 0).With("x2", frame.Along(1)).With("y1", y).With("y2", y).Empty();
            to.Start("text", right ? "scale right" : "scale").With("x", right ? frame.Along(1) : "0")
                .With("dx", right ? 5 : -5).With("y", y + 3.5);
            to.Text(ValueAxis.Label(tick)).End();
        }
    }

    private static void Level(MarkupWriter to, PictureFrame frame, ValueAxis axis, PictureLevel level, int plot)
    {
        if (level.Value < axis.Low || level.Value > axis.High)
            return;
        double y = Math.Round(plot + Up(axis, level.Value) / Whole * Plot, 1);
        to.Start("line", "level").With("x1", 0).With("x2", frame.Along(1)).With("y1", y).With("y2", y).Empty();
        to.Start("text", "words").With("x", 0).With("dx", 4).With("y", y - 3).Text(level.Words).End();
    }

    private static void Curve(MarkupWriter to, PictureStrip strip, PictureCurve curve, int place, int most)
    {
        ValueAxis axis = curve.OnRight ? strip.RightAxis! : strip.Axis;
        StringBuilder path = new();
        foreach (IReadOnlyList<PicturePoint> part in Parts(curve.Points, axis))
            Append(path, Thinning.Of(part, Tolerance, most), begin: 'M');
        to.Start("path", $"c{place} {(curve.Stroke switch { PictureStroke.Line => "line", PictureStroke.Dashes => "dashes", _ => "dots" })}")
            .With("d", path.ToString()).With("data-name", curve.Name).With("data-unit", axis.Unit).With("data-digits", curve.Decimals)
            .With("data-low", axis.Low).With("data-high", axis.High).Empty();
    }

    private static void Area(MarkupWriter to, ValueAxis axis, PictureArea area, int most)
    {
        IReadOnlyList<PicturePoint> upper = Thinning.Of(Scaled(area.Upper, axis), Tolerance, most);
        IReadOnlyList<PicturePoint> lower = Thinning.Of(Scaled(area.Lower, axis), Tolerance, most);
        StringBuilder path = new();
        Append(path, [.. upper, .. lower.Reverse()], begin: 'M');
        to.Start("path", area.IsHarm ? "harm" : "band").With("d", path.Append('z').ToString()).Empty();
    }

    // What is not finite parts a curve.
    private static IEnumerable<IReadOnlyList<PicturePoint>> Parts(IReadOnlyList<PicturePoint> points, ValueAxis axis)
    {
        List<PicturePoint> part = [];
        foreach (PicturePoint point in points)
        {
            if (double.IsFinite(point.Y))
            {
                part.Add(new(point.X, Up(axis, point.Y)));
            }
            else if (part.Count > 0)
            {
                yield return part;
                part = [];
            }
        }

        if (part.Count > 0)
            yield return part;
    }

    private static PicturePoint[] Scaled(IReadOnlyList<PicturePoint> points, ValueAxis axis)
        => [.. points.Select(p => new PicturePoint(p.X, Up(axis, p.Y)))];

    private static double Up(ValueAxis axis, double value) => (axis.High - value) / (axis.High - axis.Low) * Whole;

    // The first point as it is, the others as steps from the one before, which is a third shorter.
    private static void Append(StringBuilder path, IReadOnlyList<PicturePoint> points, char begin)
    {
        (long X, long Y) last = default;
        for (int i = 0; i < points.Count; i++)
        {
            (long X, long Y) at = ((long)Math.Round(points[i].X), (long)Math.Round(Math.Clamp(points[i].Y, -4 * Whole, 5 * Whole)));
            if (i == 0)
                path.Append(CultureInfo.InvariantCulture, $"{begin}{at.X} {at.Y}");
            else
                path.Append(i == 1 ? "l" : at.X < last.X ? "" : " ").Append(at.X - last.X).Append(at.Y < last.Y ? "" : " ").Append(at.Y - last.Y);
            last = at;
        }

        if (points.Count == 1)
            path.Append("h1");
    }
}
