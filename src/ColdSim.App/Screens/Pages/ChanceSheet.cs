using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Forecasts;

namespace ColdSim.App.Screens.Pages;

/// <summary>Draws the chance page: the sentence, the nights, what matters most, and the members' spread over time.</summary>
internal static class ChanceSheet
{
    private const int HeadingRows = 3;
    private const int LeastNights = 3;
    private const int LeastStrip = 3;
    private const int MostStrip = 12;
    private const int LegendClockAndReadings = 3;
    private const int LongHours = 48;
    private const double Minute_s = 60;

    // From this width on, what matters most is beside the nights.
    private const int Beside = 120;
    private const int BesideColumn = 72;
    private const int MattersRows = 3;

    // With fewer rows the sentence is cut and what matters most is left out, so that the strips fit.
    private const int Roomy = 20;

    /// <summary>The words on the right of the head.</summary>
    public static string Which(ChanceReport chance)
        => (chance.IsPartial ? $"only {ChanceSentence.Count(chance.Done)} of {ChanceSentence.Count(chance.Asked)}" : ChanceSentence.Count(chance.Asked)) + " members";

    public static Sheet Draw(ChancePage page, ChanceReport chance, int width, int height)
    {
        Sheet sheet = new(width, height);
        PageElements.Head(sheet, page.Report.Scenario.Title, Which(chance));
        int top = PageElements.Paragraph(sheet, 1, ChanceSentence.Of(chance), height >= Roomy ? 4 : 2, CellStyle.Strong);
        IReadOnlyList<Strip> strips = Strips(page, chance, height);
        int each = StripRows(width, height, strips.Count), stripsTop = StripsTop(height, each, strips.Count);
        int end = each > 0 ? stripsTop - 1 : height - 1;
        int beside = width >= Beside ? Influences(sheet, ChanceTable.Influences(chance, gap: 1), BesideColumn, top, end - MattersRows) : top;
        top = Math.Max(beside, Nights(sheet, page, chance, top, end));
        Matters(sheet, chance, top, end);
        if (each > 0)
            Spread(sheet, page, chance, strips, stripsTop, each);
        PageElements.Foot(sheet, "", page.Keys);
        return sheet;
    }

    /// <summary>A click on the strips moves the time cursor.</summary>
    public static PageMessage? Click(ChancePage page, int x, int y, int width, int height)
    {
        if (page.AsText || page.Chance.Value is not { } chance)
            return null;
        int count = Strips(page, chance, height).Count, each = StripRows(width, height, count), top = StripsTop(height, each, count);
        PlotArea plot = PlotArea.Across(width);
        int column = x - plot.Left;
        return each > 0 && column >= 0 && column < plot.Columns && y >= top && y <= top + count * each
            ? new PageMessage.PointAt(page.Span.MinuteOf(column, plot.Columns)) : null;
    }

    /// <summary>A low screen shows only the propane.</summary>
    private static IReadOnlyList<Strip> Strips(ChancePage page, ChanceReport chance, int height)
        => [.. FanStrips(chance.Fan, page.Span.Length, page.Units).Take(height >= Roomy ? 2 : 1)];

    private static int StripRows(int width, int height, int strips)
    {
        int above = height >= Roomy ? 1 + 4 + HeadingRows + LeastNights + 2 : 1 + 2 + HeadingRows + 2;
        int each = strips == 0 ? 0 : (height - above - LegendClockAndReadings - 1) / strips;
        return each < LeastStrip - 1 || width < Sheet.MinWidth ? 0 : Math.Min(each, MostStrip);
    }

    /// <summary>The strips take the last rows, so that they do not move.</summary>
    private static int StripsTop(int height, int each, int strips) => height - LegendClockAndReadings - each * strips;

    private static int Nights(Sheet sheet, ChancePage page, ChanceReport chance, int top, int end)
    {
        IReadOnlyList<string> lines = ChanceTable.Nights(chance, page.Units);
        int count = lines.Count - HeadingRows, rows = Math.Min(count, Math.Max(1, end - top - HeadingRows - (end - top > HeadingRows + LeastNights ? 1 : 0)));
        for (int i = 0; i < HeadingRows && top + i < end; i++)
            sheet.Put(1, top + i, CellText.Cut(lines[i], sheet.Width - 1));
        top += HeadingRows;
        int first = PageElements.FirstRow(page.Night, rows, count);
        for (int i = first; i < Math.Min(count, first + rows) && top < end; i++, top++)
            sheet.Put(0, top, CellText.Cut((i == page.Night ? ">" : " ") + lines[HeadingRows + i], sheet.Width), i == page.Night ? CellStyle.Pointer : CellStyle.Plain);
        return top;
    }

    /// <summary>Draws the sentence on what matters most, and the table below it where it fits whole.</summary>
    private static void Matters(Sheet sheet, ChanceReport chance, int top, int end)
    {
        if (end <= top)
            return;
        top = PageElements.Paragraph(sheet, end - top > 2 ? top + 1 : top, $"What matters most: {Uncapital(ChanceSentence.Matters(chance))}", Math.Min(MattersRows - 1, end - top));
        if (sheet.Width < Beside && end - top > ChanceTable.Influences(chance).Count + 1)
            Influences(sheet, ChanceTable.Influences(chance), 1, top + 1, end);
    }

    /// <summary>Draws the table of what is not known; returns the row after it.</summary>
    private static int Influences(Sheet sheet, IReadOnlyList<string> table, int x, int top, int end)
    {
        foreach (string line in table.Take(Math.Max(0, end - top)))
            sheet.Put(x, top++, CellText.Cut(line, sheet.Width - x));
        return top;
    }

    private static void Spread(Sheet sheet, ChancePage page, ChanceReport chance, IReadOnlyList<Strip> strips, int top, int each)
    {
        sheet.Put(0, top - 1, CellText.Cut("⠒⠒⠒ half the members lie below   ⠡⠡⠡ eight in ten within", sheet.Width));
        PlotArea plot = PlotArea.Across(sheet.Width);
        MinuteRange span = page.Span;
        foreach (Strip strip in strips)
        {
            StripDrawing.Draw(sheet, plot, top, each, strip, span, page.Minute);
            top += each;
        }

        if (span.Length > LongHours * 60)
            TimeAxis.DrawDays(sheet, plot, top, span, page.Minute, page.Report.Scenario.Start);
        else
            TimeAxis.DrawHours(sheet, plot, top, span, page.Minute, page.Report.Scenario.Start);
        sheet.Put(0, top + 1, CellText.Join(Readings(page, chance), "  ", sheet.Width));
    }

    /// <summary>The numbers at the cursor: a tenth of the members have at most the first, half the second, nine tenths the third.</summary>
    private static IEnumerable<string> Readings(ChancePage page, ChanceReport chance)
    {
        UnitStyle u = page.Units;
        FanPoint? point = chance.Fan.LastOrDefault(p => p.Time_s <= page.Minute * Minute_s);
        yield return ClockText.ShortDayClock(page.Report.Scenario.Start.AddMinutes(page.Minute));
        if (point is null)
            yield break;
        yield return $"left {Three(point.Left_kg, u.Mass)}";
        if (point.Inside_K is { } inside)
            yield return $"inside {Three(inside, u.Temperature)}";
        yield return "(a tenth, half, nine tenths)";
    }

    private static string Three(Spread<double> spread, Func<double, string> say)
        => $"{say(spread.Low).Split(' ')[0]} / {say(spread.Median).Split(' ')[0]} / {say(spread.High)}";

    private static string Uncapital(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    /// <summary>The spread of the members over the run, the middle one as a line and eight in ten as a band of speckles: propane left, and inside air where the run has a coach.</summary>
    private static List<Strip> FanStrips(IReadOnlyList<FanPoint> fan, int samples, UnitStyle units)
    {
        List<Strip> strips = [Over("gas left", fan, p => p.Left_kg, samples, units.MassIn, units.MassUnit, 0, CellStyle.GasLeft)];
        if (fan.Any(p => p.Inside_K is not null))
            strips.Add(Over("inside", fan, p => p.Inside_K, samples, units.TemperatureIn, units.TemperatureUnit, null, CellStyle.Inside));
        return strips;
    }

    private static Strip Over(
        string name, IReadOnlyList<FanPoint> fan, Func<FanPoint, Spread<double>?> of, int samples, Func<double, double> read, string unit, double? least, CellStyle style)
    {
        double[] low = FanEdge(fan, p => of(p)?.Low, samples), high = FanEdge(fan, p => of(p)?.High, samples);
        Extent all = Curve.Over(low, read, 0, samples), top = Curve.Over(high, read, 0, samples);
        ValueAxis axis = ValueAxis.Around(least ?? all.Low, top.High, unit);
        return new(
            new("8 in 10", high, read, axis, Stroke.Band, style) { Lower = low },
            new(name, FanEdge(fan, p => of(p)?.Median, samples), read, axis, Stroke.Line, style));
    }

    /// <summary>One edge of a fan as samples a minute, with straight lines between its points; NaN where the fan has nothing.</summary>
    internal static double[] FanEdge(IReadOnlyList<FanPoint> fan, Func<FanPoint, double?> edge, int samples)
    {
        double[] curve = new double[samples];
        Array.Fill(curve, double.NaN);
        for (int i = 0; i < fan.Count; i++)
        {
            double from = edge(fan[i]) ?? double.NaN, to = i + 1 < fan.Count ? edge(fan[i + 1]) ?? double.NaN : from;
            double apart_s = i + 1 < fan.Count ? fan[i + 1].Time_s - fan[i].Time_s : Minute_s;
            for (int m = (int)Math.Ceiling(fan[i].Time_s / Minute_s - 1e-9); m < samples && m * Minute_s < fan[i].Time_s + apart_s - 1e-9; m++)
            {
                double part = (m * Minute_s - fan[i].Time_s) / apart_s;
                curve[m] = double.IsNaN(to) ? from : from + part * (to - from);
            }
        }

        return curve;
    }
}
