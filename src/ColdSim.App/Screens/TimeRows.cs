using System.Globalization;
using ColdSim.App.Text;
using ColdSim.Model.Engine;

namespace ColdSim.App.Screens;

/// <summary>The rows of one line each on the time axis: the burner, the events, the clock.</summary>
internal static class TimeRows
{
    /// <summary>How much of each column's time the burner is lit: a blank for never, # for always.</summary>
    public static void Burner(Sheet sheet, Place place, int y, NightView view)
    {
        NightSpan span = view.Span;
        RunSeries series = view.Report.Series;
        sheet.PutBefore(place.Left - 1, y, "burner lit");
        if (view.Report.Scenario.Rig.Furnace is null)
        {
            sheet.Put(place.Left, y, "no furnace");
            return;
        }

        for (int x = 0; x < place.Columns; x++)
        {
            int from = span.From + x * span.Length / place.Columns;
            int to = Math.Max(from + 1, span.From + (x + 1) * span.Length / place.Columns);
            sheet.Put(place.Left + x, y, Density(series.Burner_frac.AsSpan(from..to)));
        }

        Pointer(sheet, place, y, view);
        sheet.Put(place.Right + 2, y, $"{UnitStyle.Number(view.Told.BurnerTime.Hours, 1)} h");
    }

    /// <summary>A letter at each marked event, the graver where two fall on one column.</summary>
    public static void Events(Sheet sheet, Place place, int y, NightView view)
    {
        sheet.PutBefore(place.Left - 1, y, "events");
        Pointer(sheet, place, y, view);
        int at = view.Span.Column(view.Minute, place.Columns);
        foreach (EventMark mark in view.Marks.OrderBy(m => m.Words.Rank))
        {
            int x = view.Span.Column(mark.Minute, place.Columns);
            sheet.Put(place.Left + x, y, mark.Words.Letter, x == at ? Ink.Pointer : Ink.Strong);
        }
    }

    /// <summary>Full hours where they fall, and over them the cursor's time.</summary>
    public static void Clock(Sheet sheet, Place place, int y, NightView view)
        => Clock(sheet, place, y, view.Span, view.Minute, view.Report.Scenario.Start);

    /// <summary>The same for a span of minutes after a start.</summary>
    public static void Clock(Sheet sheet, Place place, int y, NightSpan span, int minute, DateTimeOffset start)
    {
        sheet.PutBefore(place.Left - 1, y, "clock, hours");
        int every = HoursBetween(span, place.Columns);
        int at = Math.Max(place.Left, Math.Min(place.Left + span.Column(minute, place.Columns) - 2, place.Right - 5));
        int end = place.Left - 1;
        for (int m = span.From; m < span.To; m++)
        {
            DateTimeOffset time = start.AddMinutes(m);
            int x = place.Left + span.Column(m, place.Columns);
            bool underCursor = x + 2 >= at && x <= at + 5;
            if (time.Minute != 0 || time.Hour % every != 0 || x <= end || x + 2 > place.Right || underCursor)
                continue;
            sheet.Put(x, y, time.ToString("HH", CultureInfo.InvariantCulture));
            end = x + 2;
        }

        sheet.Put(at, y, start.AddMinutes(minute).ToString("HH:mm", CultureInfo.InvariantCulture), Ink.Pointer);
    }

    private static int HoursBetween(NightSpan span, int columns)
        => ((int[])[1, 2, 3, 4, 6]).FirstOrDefault(h => h * 60.0 * columns / span.Length >= 4, 12);

    private static void Pointer(Sheet sheet, Place place, int y, NightView view)
    {
        int x = place.Left + view.Span.Column(view.Minute, place.Columns);
        if (sheet[x, y].Glyph == ' ')
            sheet.Put(x, y, '┊');
        else
            sheet.Put(x, y, sheet[x, y].Glyph, Ink.Pointer);
    }

    private static char Density(ReadOnlySpan<double> lit)
    {
        double sum = 0;
        foreach (double part in lit)
            sum += part;
        return (sum / lit.Length) switch
        {
            >= 0.95 => '#',
            >= 0.6 => '+',
            >= 0.3 => '-',
            > 0 => '.',
            _ => ' ',
        };
    }
}
