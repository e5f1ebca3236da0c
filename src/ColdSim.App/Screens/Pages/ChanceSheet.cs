using System.Globalization;
using ColdSim.App.Screens.Frame;
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

    // From this width on what matters stands beside the nights.
    private const int Beside = 120;
    private const int BesideColumn = 72;
    private const int MattersRows = 3;

    // Below this many rows the strips need the room of the sentence's end and of what matters.
    private const int Roomy = 20;

    /// <summary>What stands beside the title.</summary>
    public static string Which(ChanceReport chance)
        => (chance.IsPartial ? $"only {ChanceSentence.Count(chance.Done)} of {ChanceSentence.Count(chance.Asked)}" : ChanceSentence.Count(chance.Asked)) + " members";

    public static Sheet Draw(ChancePage page, ChanceReport chance, int width, int height)
    {
        Sheet sheet = new(width, height);
        PageParts.Head(sheet, page.Report.Scenario.Title, Which(chance));
        int top = PageParts.Paragraph(sheet, 1, ChanceSentence.Of(chance), height >= Roomy ? 4 : 2, Ink.Strong);
        IReadOnlyList<Strip> strips = Strips(page, chance, height);
        int each = StripRows(width, height, strips.Count), stripsTop = StripsTop(height, each, strips.Count);
        int end = each > 0 ? stripsTop - 1 : height - 1;
        int beside = width >= Beside ? Influences(sheet, ChanceTable.Influences(chance, gap: 1), BesideColumn, top, end - MattersRows) : top;
        top = Math.Max(beside, Nights(sheet, page, chance, top, end));
        Matters(sheet, chance, top, end);
        if (each > 0)
            Spread(sheet, page, chance, strips, stripsTop, each);
        PageParts.Foot(sheet, More(chance), "←→ 3 h", "↑↓ night", "l all as text");
        return sheet;
    }

    /// <summary>A click into the strips puts the time cursor there.</summary>
    public static PageMessage? Click(ChancePage page, int x, int y, int width, int height)
    {
        if (page.AsText || page.Chance.Value is not { } chance)
            return null;
        int count = Strips(page, chance, height).Count, each = StripRows(width, height, count), top = StripsTop(height, each, count);
        Place place = PlaceOf(width);
        int column = x - place.Left;
        return each > 0 && column >= 0 && column < place.Columns && y >= top && y <= top + count * each
            ? new PageMessage.PointAt(page.Span.MinuteOf(column, place.Columns)) : null;
    }

    private static string More(ChanceReport chance) => chance.IsPartial ? "Enter all members" : "Enter 4 x members";

    /// <summary>A low screen keeps the propane and lets the air go.</summary>
    private static IReadOnlyList<Strip> Strips(ChancePage page, ChanceReport chance, int height)
        => [.. ChanceStrips.Of(chance.Fan, page.Span.Length, page.Units).Take(height >= Roomy ? 2 : 1)];

    private static int StripRows(int width, int height, int strips)
    {
        int above = height >= Roomy ? 1 + 4 + HeadingRows + LeastNights + 2 : 1 + 2 + HeadingRows + 2;
        int each = strips == 0 ? 0 : (height - above - LegendClockAndReadings - 1) / strips;
        return each < LeastStrip - 1 || width < ScreenPlan.LeastWidth ? 0 : Math.Min(each, MostStrip);
    }

    /// <summary>They stand on the last rows, so that they stay in their place.</summary>
    private static int StripsTop(int height, int each, int strips) => height - LegendClockAndReadings - each * strips;

    private static Place PlaceOf(int width) => new(Place.LeftMargin, width - Place.LeftMargin - Place.RightMargin);

    private static int Nights(Sheet sheet, ChancePage page, ChanceReport chance, int top, int end)
    {
        IReadOnlyList<string> lines = ChanceTable.Nights(chance, page.Units);
        int count = lines.Count - HeadingRows, rows = Math.Min(count, Math.Max(1, end - top - HeadingRows - (end - top > HeadingRows + LeastNights ? 1 : 0)));
        for (int i = 0; i < HeadingRows && top + i < end; i++)
            sheet.Put(1, top + i, Fitting.Cut(lines[i], sheet.Width - 1));
        top += HeadingRows;
        int first = PageParts.FirstRow(page.Night, rows, count);
        for (int i = first; i < Math.Min(count, first + rows) && top < end; i++, top++)
            sheet.Put(0, top, Fitting.Cut((i == page.Night ? ">" : " ") + lines[HeadingRows + i], sheet.Width), i == page.Night ? Ink.Pointer : Ink.Plain);
        return top;
    }

    /// <summary>The sentence, and the table below it where it fits whole.</summary>
    private static void Matters(Sheet sheet, ChanceReport chance, int top, int end)
    {
        if (end <= top)
            return;
        top = PageParts.Paragraph(sheet, end - top > 2 ? top + 1 : top, $"What matters most: {Uncapital(ChanceSentence.Matters(chance))}", Math.Min(MattersRows - 1, end - top));
        if (sheet.Width < Beside && end - top > ChanceTable.Influences(chance).Count + 1)
            Influences(sheet, ChanceTable.Influences(chance), 1, top + 1, end);
    }

    /// <summary>The table of what is not known, and the row after it.</summary>
    private static int Influences(Sheet sheet, IReadOnlyList<string> table, int x, int top, int end)
    {
        foreach (string line in table.Take(Math.Max(0, end - top)))
            sheet.Put(x, top++, Fitting.Cut(line, sheet.Width - x));
        return top;
    }

    private static void Spread(Sheet sheet, ChancePage page, ChanceReport chance, IReadOnlyList<Strip> strips, int top, int each)
    {
        sheet.Put(0, top - 1, Fitting.Cut("⠒⠒⠒ half the members lie below   ⠡⠡⠡ eight in ten within", sheet.Width));
        Place place = PlaceOf(sheet.Width);
        NightSpan span = page.Span;
        foreach (Strip strip in strips)
        {
            StripDrawing.Draw(sheet, place, top, each, strip, span, page.Minute);
            top += each;
        }

        if (span.Length > LongHours * 60)
            DayRow.Draw(sheet, place, top, span, page.Minute, page.Report.Scenario.Start);
        else
            TimeRows.Clock(sheet, place, top, span, page.Minute, page.Report.Scenario.Start);
        sheet.Put(0, top + 1, Fitting.Join(Readings(page, chance), "  ", sheet.Width));
    }

    /// <summary>The numbers at the cursor: a tenth of the members have at most the first, half the second, nine tenths the third.</summary>
    private static IEnumerable<string> Readings(ChancePage page, ChanceReport chance)
    {
        UnitStyle u = page.Units;
        FanPoint? point = chance.Fan.LastOrDefault(p => p.Time_s <= page.Minute * 60.0);
        yield return page.Report.Scenario.Start.AddMinutes(page.Minute).ToString("ddd HH:mm", CultureInfo.InvariantCulture);
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
}
