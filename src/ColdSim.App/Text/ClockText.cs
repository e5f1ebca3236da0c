using System.Globalization;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Days, clock times and spans in words; a night is named after its evening.</summary>
internal static class ClockText
{
    private static readonly CultureInfo Words = CultureInfo.InvariantCulture;

    /// <summary>The calendar day on whose evening the night begins.</summary>
    public static DateOnly Evening(NightReport night)
        => DateOnly.FromDateTime((night.From - NightCriteria.NightBoundary.ToTimeSpan()).DateTime);

    /// <summary>Such as "Thursday night, 14 to 15 January".</summary>
    public static string NightName(NightReport night)
    {
        DateOnly evening = Evening(night), morning = evening.AddDays(1);
        string from = evening.Year != morning.Year ? evening.ToString("d MMMM yyyy", Words)
            : evening.Month != morning.Month ? evening.ToString("d MMMM", Words)
            : evening.ToString("%d", Words);
        string to = morning.ToString(evening.Year != morning.Year ? "d MMMM yyyy" : "d MMMM", Words);
        return $"{evening.ToString("dddd", Words)} night, {from} to {to}";
    }

    /// <summary>Such as "Thu 14 Jan".</summary>
    public static string NightShort(NightReport night) => Evening(night).ToString("ddd dd MMM", Words);

    /// <summary>Such as "03:12".</summary>
    public static string Clock(DateTimeOffset time) => time.ToString("HH:mm", Words);

    /// <summary>Such as "Fri 15 Jan 03:12".</summary>
    public static string DayClock(DateTimeOffset time) => time.ToString("ddd dd MMM HH:mm", Words);

    /// <summary>Such as "Fri 03:12", where the days are few.</summary>
    public static string ShortDayClock(DateTimeOffset time) => time.ToString("ddd HH:mm", Words);

    /// <summary>Such as "Fri 15 Jan 2027 03:12", where the year is in question.</summary>
    public static string DayOfYear(DateTimeOffset time) => time.ToString("ddd d MMM yyyy HH:mm", Words);

    /// <summary>Such as "Thursday 14 January 2027, 16:00 (UTC-07:00)".</summary>
    public static string Start(DateTimeOffset time) => time.ToString("dddd d MMMM yyyy, HH:mm '(UTC'zzz')'", Words);

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
}
