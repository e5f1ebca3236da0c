using System.Globalization;
using ColdSim.App.Text.Markup;

namespace ColdSim.App.Text.Pictures;

/// <summary>The time axis: a line an hour and a label every three, or where a picture is long a line and a label a day.</summary>
/// <param name="start">The clock at minute 0.</param>
/// <param name="minutes">How long the axis is.</param>
internal sealed class TimeTicks(DateTimeOffset start, double minutes)
{
    private const double LongDays = 2.5, MostDayLabels = 8;

    public void Draw(MarkupWriter to, PictureFrame frame, IEnumerable<int> plots, int labels)
    {
        int[] tops = [.. plots];
        bool long_ = minutes > LongDays * 24 * 60;
        int hours = long_ ? 24 : 1, days = Math.Max(1, (int)Math.Ceiling(minutes / (24 * 60) / MostDayLabels)), count = 0;
        for (DateTimeOffset at = First(hours); (at - start).TotalMinutes <= minutes; at = at.AddHours(hours), count++)
        {
            double part = (at - start).TotalMinutes / minutes;
            bool labelled = long_ ? count % days == 0 : at.Hour % 3 == 0;
            Lines(to, frame.Along(part), tops, at.Hour == 0 && !long_ ? "grid day" : labelled ? "grid three" : "grid");
            if (labelled)
                Label(to, frame.Along(part), labels, at, long_);
        }

        to.Line();
    }

    private static void Lines(MarkupWriter to, string x, int[] tops, string style)
    {
        foreach (int top in tops)
            to.Start("line", style).With("x1", x).With("x2", x).With("y1", top).With("y2", top + StripDrawing.Plot).Empty();
    }

    // Labels between those of a quarter of a day are left out where a page is narrow.
    private static void Label(MarkupWriter to, string x, int y, DateTimeOffset at, bool day)
        => to.Start("text", day || at.Hour % 6 == 0 ? "clock" : "clock odd").With("x", x).With("y", y)
            .Text(day ? at.ToString("d MMM", CultureInfo.InvariantCulture) : ClockText.Clock(at)).End();

    private DateTimeOffset First(int hours)
    {
        DateTimeOffset midnight = new(start.Date, start.Offset);
        double past = (start - midnight).TotalHours;
        return midnight.AddHours(Math.Ceiling(past / hours - 1e-9) * hours);
    }
}
