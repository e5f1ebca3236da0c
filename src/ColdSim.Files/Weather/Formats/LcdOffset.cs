using System.Globalization;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Files.Weather.Formats;

/// <summary>
/// The offset from UTC of Local Climatological Data, which does not state it: from the sunrise and sunset of its daily rows, whose middle is the sun's noon, or
/// from a report whose text has its time in UTC beside the local one of its row.
/// </summary>
internal static class LcdOffset
{
    // Sunrise and sunset are to the minute; an offset that is farther from a half hour is no offset.
    private const double Slack_h = 0.1;

    /// <summary>The offset and how it is known; null where the beginning of the file has neither.</summary>
    public static (TimeSpan Offset, string By)? Of(WeatherInput input, char separator, double? longitude_deg)
    {
        string[] headings = [];
        int date = -1, sunrise = -1, sunset = -1, text = -1;
        TimeSpan? byReport = null;
        foreach (string line in input.Lines())
        {
            string[] fields = HeadingSearch.Split(line, separator);
            if (headings.Length == 0)
            {
                headings = fields;
                date = RecordReader.IndexOf(fields, "DATE");
                sunrise = RecordReader.IndexOf(fields, "Sunrise", "DAILYSunrise");
                sunset = RecordReader.IndexOf(fields, "Sunset", "DAILYSunset");
                text = RecordReader.IndexOf(fields, "REM");
                continue;
            }

            string Field(int at) => at >= 0 && at < fields.Length ? fields[at] : "";
            if (!DateTime.TryParse(Field(date), CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local) || local.Year is < 2 or > 9998)
                continue;
            if (longitude_deg is { } east && Hours(Field(sunrise)) is { } rises && Hours(Field(sunset)) is { } sets && rises < sets && BySun(local, rises, sets, east) is { } offset)
                return (offset, "its sunrise and sunset");
            byReport ??= ByReport(local, Field(text));
        }

        return byReport is { } known ? (known, "the UTC in its reports") : null;
    }

    // Noon by the sun is at 12:00 less the equation of time and the longitude's part of the offset.
    private static TimeSpan? BySun(DateTime day, double rises_h, double sets_h, double east_deg)
    {
        double equation_min = SunPosition.EquationOfTime_min(SunPosition.FractionalYear_rad(day.DayOfYear, DateTime.IsLeapYear(day.Year) ? 366 : 365, 12));
        double offset_h = ((rises_h + sets_h) / 2) - 12 + (equation_min / 60) + (east_deg / 15), near_h = Math.Round(offset_h * 2) / 2;
        return Math.Abs(offset_h - near_h) <= Slack_h ? InstantText.OffsetFromHours(near_h) : null;
    }

    // METAR KLNK 261854Z in a row of 12:54.
    private static TimeSpan? ByReport(DateTime local, string report)
    {
        foreach (string kind in (string[])["METAR ", "SPECI "])
        {
            int at = report.IndexOf(kind, StringComparison.Ordinal);
            string[] words = at < 0 ? [] : report[(at + kind.Length)..].Split(' ', 3, StringSplitOptions.RemoveEmptyEntries);
            if (words.Length < 2 || words[1] is not { Length: 7 } stamp || stamp[6] != 'Z' || !int.TryParse(stamp.AsSpan(2, 2), NumberStyles.None, CultureInfo.InvariantCulture, out int hour)
                || !int.TryParse(stamp.AsSpan(4, 2), NumberStyles.None, CultureInfo.InvariantCulture, out int minute))
            {
                continue;
            }

            int ahead = (int)local.TimeOfDay.TotalMinutes - ((hour * 60) + minute);
            ahead = ahead > 14 * 60 ? ahead - 1440 : ahead <= -12 * 60 ? ahead + 1440 : ahead;
            return ahead % 30 == 0 ? TimeSpan.FromMinutes(ahead) : null;
        }

        return null;
    }

    // 0751 or 751.
    private static double? Hours(string text)
        => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int clock) && clock is > 0 and < 2400 && clock % 100 < 60 ? (clock / 100) + (clock % 100 / 60.0) : null;
}
