using System.Globalization;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Drawing;

/// <summary>A range of the minutes of a run, such as those of one night, from <see cref="From"/> to just before <see cref="To"/>.</summary>
internal readonly record struct MinuteRange(int From, int To)
{
    public int Length => To - From;

    public static MinuteRange Of(RunReport report, int night)
    {
        NightReport of = report.Nights[night];
        int count = Math.Max(1, report.Series.Count);
        int from = Math.Clamp(MinuteAt(report, of.From), 0, count - 1);
        return new(from, Math.Clamp(MinuteAt(report, of.To), from + 1, count));
    }

    /// <summary>The sample that first shows what happened at an instant.</summary>
    public static int MinuteAt(RunReport report, DateTimeOffset time)
        => (int)Math.Ceiling((time - report.Scenario.Start).TotalMinutes - 1e-9);

    public int Clamp(int minute) => Math.Clamp(minute, From, To - 1);

    /// <summary>The column of a plot this many columns wide.</summary>
    public int Column(int minute, int columns) => (int)((long)(minute - From) * columns / Length);

    /// <summary>The minutes of a column of a plot; one at least.</summary>
    public MinuteRange Part(int column, int columns)
    {
        int from = From + (int)((long)column * Length / columns);
        return new(from, Math.Max(from + 1, From + (int)((long)(column + 1) * Length / columns)));
    }

    /// <summary>The mean of the samples of these minutes; NaN where there are none.</summary>
    public double Mean(double[] samples)
    {
        double sum = 0;
        int count = 0;
        for (int i = From; i < Math.Min(To, samples.Length); i++)
        {
            sum += samples[i];
            count++;
        }

        return count == 0 ? double.NaN : sum / count;
    }

    /// <summary>The middle minute of a column.</summary>
    public int MinuteOf(int column, int columns) => Clamp(From + (int)((column + 0.5) * Length / columns));
}

/// <summary>The columns of the common time axis, between labels on its left and right.</summary>
/// <param name="Left">First column of the plots.</param>
/// <param name="Columns">How many there are.</param>
internal readonly record struct PlotArea(int Left, int Columns)
{
    /// <summary>Columns for "160,000" and the axis.</summary>
    public const int LeftMargin = 9;

    /// <summary>Columns for a blank, a key of a stroke and "pressure".</summary>
    public const int RightMargin = 14;

    // For a name alone.
    private const int NarrowMargin = 10;

    /// <summary>First column after the plots.</summary>
    public int Right => Left + Columns;

    /// <summary>The area on a page of a width, with room for longer names.</summary>
    public static PlotArea Across(int width, int rightMargin) => new(LeftMargin, Math.Max(0, width - LeftMargin - rightMargin));

    /// <summary>The area on a page of a width.</summary>
    public static PlotArea Across(int width)
        => new(LeftMargin, Math.Max(0, width - LeftMargin - (width < Sheet.MinWidth ? NarrowMargin : RightMargin)));
}

/// <summary>The row of times below curves that share a time axis.</summary>
internal static class TimeAxis
{
    /// <summary>Draws full hours, and over them the cursor's time.</summary>
    public static void DrawHours(Sheet sheet, PlotArea plot, int y, MinuteRange span, int minute, DateTimeOffset start)
    {
        sheet.PutBefore(plot.Left - 1, y, "clock");
        int every = HoursBetween(span, plot.Columns);
        int at = Math.Max(plot.Left, Math.Min(plot.Left + span.Column(minute, plot.Columns) - 2, plot.Right - 5));
        int end = plot.Left - 1;
        for (int m = span.From; m < span.To; m++)
        {
            DateTimeOffset time = start.AddMinutes(m);
            int x = plot.Left + span.Column(m, plot.Columns);
            bool underCursor = x + 2 >= at && x <= at + 5;
            if (time.Minute != 0 || time.Hour % every != 0 || x <= end || x + 2 > plot.Right || underCursor)
                continue;
            sheet.Put(x, y, time.ToString("HH", CultureInfo.InvariantCulture));
            end = x + 2;
        }

        sheet.Put(at, y, ClockText.Clock(start.AddMinutes(minute)), CellStyle.Pointer);
    }

    /// <summary>Draws the date at each midnight, and over it the cursor's time.</summary>
    public static void DrawDays(Sheet sheet, PlotArea plot, int y, MinuteRange span, int minute, DateTimeOffset start)
    {
        sheet.PutBefore(plot.Left - 1, y, "days");
        string pointed = ClockText.ShortDayClock(start.AddMinutes(minute));
        int at = Math.Max(plot.Left, Math.Min(plot.Left + span.Column(minute, plot.Columns) - pointed.Length / 2, plot.Right - pointed.Length));
        int end = plot.Left - 1, first = (int)(start.Date.AddDays(1) - start.DateTime).TotalMinutes;
        for (int m = first; m < span.To; m += 24 * 60)
        {
            string label = start.AddMinutes(m).ToString("ddd d", CultureInfo.InvariantCulture);
            int x = plot.Left + span.Column(m, plot.Columns);
            if (m < span.From || x <= end || x + label.Length > plot.Right || x + label.Length >= at && x <= at + pointed.Length)
                continue;
            sheet.Put(x, y, label);
            end = x + label.Length;
        }

        sheet.Put(at, y, pointed, CellStyle.Pointer);
    }

    private static int HoursBetween(MinuteRange span, int columns)
        => ((int[])[1, 2, 3, 4, 6]).FirstOrDefault(h => h * 60.0 * columns / span.Length >= 4, 12);
}
