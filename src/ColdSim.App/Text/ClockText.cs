using System.Globalization;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Days, clock times and spans in words; a night is named after its evening.</summary>
/// <remarks>Nothing else in the program writes a clock time for a person. Instants are rounded to the nearest minute, as spans are.</remarks>
internal static class ClockText
{
    private static readonly CultureInfo Words = CultureInfo.InvariantCulture;

    /// <summary>Such as "Thursday night, 14 to 15 January".</summary>
    public static string NightName(NightReport night)
    {
        DateOnly evening = night.Evening, morning = evening.AddDays(1);
        string from = evening.Year != morning.Year ? evening.ToString("d MMMM yyyy", Words)
            : evening.Month != morning.Month ? evening.ToString("d MMMM", Words)
            : evening.ToString("%d", Words);
        string to = morning.ToString(evening.Year != morning.Year ? "d MMMM yyyy" : "d MMMM", Words);
        return $"{evening.ToString("dddd", Words)} night, {from} to {to}";
    }

    /// <summary>Such as "Thu 14 Jan".</summary>
    public static string NightShort(NightReport night) => night.Evening.ToString("ddd dd MMM", Words);

    /// <summary>Such as "03:12".</summary>
    public static string Clock(DateTimeOffset time) => Text(time, "HH:mm");

    /// <summary>The same of a time of day.</summary>
    public static string Clock(TimeOnly time) => time.ToString("HH:mm", Words);

    /// <summary>Such as "Fri 5 Jan 03:12".</summary>
    public static string WeekdayDateClock(DateTimeOffset time) => Text(time, "ddd d MMM HH:mm");

    /// <summary>Such as "5 Jan 03:12".</summary>
    public static string DateClock(DateTimeOffset time) => Text(time, "d MMM HH:mm");

    /// <summary>Such as "2027-01-15 03:12".</summary>
    public static string NumberedDateClock(DateTimeOffset time) => Text(time, "yyyy-MM-dd HH:mm");

    /// <summary>Such as "Fri 2027-01-15 03:12 -07:00".</summary>
    public static string WithOffset(DateTimeOffset time) => Text(time, "ddd yyyy-MM-dd HH:mm zzz");

    /// <summary>As it can be typed: "2027-01-15T03:12".</summary>
    public static string Typed(DateTimeOffset time) => Text(time, "yyyy-MM-dd'T'HH:mm");

    /// <summary>Such as "Fri 15 Jan 03:12".</summary>
    public static string DayClock(DateTimeOffset time) => Text(time, "ddd dd MMM HH:mm");

    /// <summary>Such as "Fri 03:12", where the days are few.</summary>
    public static string ShortDayClock(DateTimeOffset time) => Text(time, "ddd HH:mm");

    /// <summary>Such as "Fri 15 Jan 2027 03:12", where the year is in question.</summary>
    public static string DayOfYear(DateTimeOffset time) => Text(time, "ddd d MMM yyyy HH:mm");

    /// <summary>Such as "Thursday 14 January 2027, 16:00 (UTC-07:00)".</summary>
    public static string Start(DateTimeOffset time) => Text(time, "dddd d MMMM yyyy, HH:mm '(UTC'zzz')'");

    /// <summary>Such as "2 h 5 min", "28 min" or "40 s".</summary>
    public static string Span(Duration span)
    {
        if (span.Seconds < 59.5)
            return $"{UnitStyle.Number(span.Seconds, 0)} s";
        int minutes = (int)Math.Round(span.Minutes);
        int hours = minutes / 60;
        minutes %= 60;
        return hours == 0 ? $"{minutes} min" : minutes == 0 ? $"{hours} h" : $"{hours} h {minutes} min";
    }

    /// <summary>Such as "2:05"; "&lt;0:01" below half a minute.</summary>
    public static string SpanShort(Duration span)
    {
        int minutes = (int)Math.Round(span.Minutes);
        return minutes == 0 && span.Seconds > 0 ? "<0:01" : $"{minutes / 60}:{minutes % 60:00}";
    }

    private static string Text(DateTimeOffset time, string format) => Rounded(time).ToString(format, Words);

    private static DateTimeOffset Rounded(DateTimeOffset time)
    {
        long past = time.Ticks % TimeSpan.TicksPerMinute;
        return time.AddTicks(past < TimeSpan.TicksPerMinute / 2 ? -past : TimeSpan.TicksPerMinute - past);
    }
}
