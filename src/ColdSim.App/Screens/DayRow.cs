using System.Globalization;

namespace ColdSim.App.Screens;

/// <summary>The row below curves of several days: each midnight's date, and over it the cursor's time.</summary>
internal static class DayRow
{
    private const string Day = "ddd d";
    private const string AtCursor = "ddd HH:mm";

    public static void Draw(Sheet sheet, Place place, int y, NightSpan span, int minute, DateTimeOffset start)
    {
        sheet.PutBefore(place.Left - 1, y, "midnights");
        string pointed = start.AddMinutes(minute).ToString(AtCursor, CultureInfo.InvariantCulture);
        int at = Math.Max(place.Left, Math.Min(place.Left + span.Column(minute, place.Columns) - pointed.Length / 2, place.Right - pointed.Length));
        int end = place.Left - 1, first = (int)(start.Date.AddDays(1) - start.DateTime).TotalMinutes;
        for (int m = first; m < span.To; m += 24 * 60)
        {
            string label = start.AddMinutes(m).ToString(Day, CultureInfo.InvariantCulture);
            int x = place.Left + span.Column(m, place.Columns);
            if (m < span.From || x <= end || x + label.Length > place.Right || x + label.Length >= at && x <= at + pointed.Length)
                continue;
            sheet.Put(x, y, label);
            end = x + label.Length;
        }

        sheet.Put(at, y, pointed, Ink.Pointer);
    }
}
