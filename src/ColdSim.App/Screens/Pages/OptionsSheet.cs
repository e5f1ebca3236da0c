using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Draws the options page: the sentence, the ranked rows, the curves of two of them.</summary>
internal static class OptionsSheet
{
    private const int HeadingRows = 3;
    private const int LeastRows = 4;
    private const int Strips = 3;
    private const int LegendClockAndReadings = 3;

    public static Sheet Draw(OptionsPage page, Comparison comparison, int width, int height)
    {
        Sheet sheet = new(width, height);
        NightReport night = page.Report.Nights[page.Night];
        PageElements.Head(sheet, page.Report.Scenario.Title, $"curves: night {page.Night + 1} of {page.Report.Nights.Count}, {ClockText.NightShort(night)}");
        int sentence = height >= 30 ? 3 : 2;
        int top = PageElements.Paragraph(sheet, 1, CompareSentence.Of(comparison, page.Units), sentence, CellStyle.Strong);
        IReadOnlyList<string> lines = Table(page, comparison);
        for (int i = 0; i < HeadingRows; i++)
            sheet.Put(0, top + i, CellText.Cut(lines[i], width));
        top += HeadingRows;
        int stripRows = StripRows(width, height, comparison);
        int rows = Math.Min(comparison.Rows.Count, height - top - 1 - (stripRows > 0 ? Strips * stripRows + LegendClockAndReadings : 0));
        int first = PageElements.FirstRow(page.Row, rows, comparison.Rows.Count);
        for (int i = first; i < Math.Min(comparison.Rows.Count, first + rows); i++)
            sheet.Put(0, top + i - first, CellText.Cut((i == page.Row ? ">" : " ") + lines[HeadingRows + i][1..], width), i == page.Row ? CellStyle.Pointer : CellStyle.Plain);
        if (stripRows > 0)
            Over(sheet, page, comparison, StripsTop(height, stripRows) - 1, stripRows);
        string more = rows < comparison.Rows.Count ? $"{page.Row + 1} of {comparison.Rows.Count}" : "";
        PageElements.Foot(sheet, more, page.Keys);
        return sheet;
    }

    /// <summary>A click on the curves moves the time cursor.</summary>
    public static PageMessage? Click(OptionsPage page, int x, int y, int width, int height)
    {
        if (page.AsText || page.Ranked.Value is not { } comparison || StripRows(width, height, comparison) is 0)
            return null;
        PlotArea plot = PlotArea.Across(width);
        int column = x - plot.Left, rows = StripRows(width, height, comparison), top = StripsTop(height, rows);
        return column >= 0 && column < plot.Columns && y >= top && y <= top + Strips * rows ? new PageMessage.PointAt(page.Span.MinuteOf(column, plot.Columns)) : null;
    }

    /// <summary>Rows of each strip: what the table leaves; 0 where that is too little to show a curve.</summary>
    private static int StripRows(int width, int height, Comparison comparison)
    {
        int room = height - 1 - (height >= 30 ? 3 : 2) - HeadingRows - 1 - LegendClockAndReadings;
        int each = (room - Math.Min(comparison.Rows.Count, Math.Max(LeastRows, room / 3))) / Strips;
        return each < 2 || width < Sheet.MinWidth ? 0 : each;
    }

    /// <summary>The strips take the last rows, so that they do not move.</summary>
    private static int StripsTop(int height, int stripRows) => height - LegendClockAndReadings - Strips * stripRows;

    private static void Over(Sheet sheet, OptionsPage page, Comparison comparison, int top, int rows)
    {
        sheet.Put(0, top, CellText.Cut(Legend(page, comparison), sheet.Width));
        if (page.Marked.Count == 0)
        {
            sheet.Put(0, top + 2, "Space marks an option; two marked ones are drawn together here.");
            return;
        }

        OptionCurves? a = page.CurvesOf(0), b = page.CurvesOf(1);
        if (a is null && b is null)
            return;
        int samples = page.Report.Series.Outside_K.Length;
        PlotArea plot = PlotArea.Across(sheet.Width);
        MinuteRange span = page.Span;
        int y = top + 1;
        a = (a ?? new(-1, [], [], [])).Of(samples);
        foreach (Strip strip in OptionCurves.Strips(a, b?.Of(samples), page.Units))
        {
            StripDrawing.Draw(sheet, plot, y, rows, strip, span, page.Minute);
            y += rows;
        }

        TimeAxis.DrawHours(sheet, plot, y, span, page.Minute, page.Report.Scenario.Start);
        sheet.Put(0, y + 1, CellText.Cut(Readings(page, a, b), sheet.Width));
    }

    private static string Legend(OptionsPage page, Comparison comparison)
    {
        string Of(int place, string key)
        {
            if (place >= page.Marked.Count)
                return "";
            string name = CellText.SingleWidth(comparison.Rows.First(r => r.Order == page.Marked[place]).Option.Name);
            string state = page.CurvesOf(place) is not null ? "" : page.NextCurves is { Status.Length: > 0 } stopped ? $" ({stopped.Status})" : " (being run)";
            return $"{"AB"[place]} {key} {name}{state}";
        }

        return string.Join("   ", new[] { Of(0, "⠒⠒⠒"), Of(1, "⠒ ⠒") }.Where(s => s.Length > 0));
    }

    private static string Readings(OptionsPage page, OptionCurves a, OptionCurves? b)
    {
        UnitStyle u = page.Units;
        int i = page.Minute;
        string Pair(string name, Func<OptionCurves, double[]> curve, Func<double, string> say)
        {
            string One(OptionCurves c) => i < curve(c).Length && double.IsFinite(curve(c)[i]) ? say(curve(c)[i]) : "none";
            return b is null ? $"{name} A {One(a)}" : $"{name} A {One(a).Split(' ')[0]} B {One(b)}";
        }

        string time = ClockText.ShortDayClock(page.Report.Scenario.Start.AddMinutes(i));
        return $"{time}  {Pair("inside", c => c.Inside_K, u.Temperature)}  {Pair("liquid", c => c.Liquid_K, u.Temperature)}  {Pair("left", c => c.Left_kg, u.Mass)}";
    }

    private static IReadOnlyList<string> Table(OptionsPage page, Comparison comparison)
    {
        FigureTable table = new(ReportTable.OptionsPage, page.Units) { Context = FigureContext.Of(comparison.Base) };
        return TextTable.Fit(40, 8, widest => table.Lines(
            CompareFigures.Options, comparison.Rows,
            new(new([" "], Left: true), -4, (_, _) => " "),
            new(new([""], Left: true), -3, (r, _) => page.Letter(r.Order).ToString()),
            new(new(["Option"], Left: true), -1, (r, _) => CellText.Cut(
                CellText.SingleWidth(r.Order == 0 ? $"{r.Option.Name}, {CylinderWords.Names(r.Option.Scenario.Rig)}" : r.Option.Name), widest))));
    }
}
