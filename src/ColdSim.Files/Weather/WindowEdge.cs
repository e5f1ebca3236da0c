using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>An end of the requested window: an instant, or a time on the file's own clock.</summary>
/// <param name="Clock">Date and time of day.</param>
/// <param name="Offset">Its offset from UTC; null for the file's own clock.</param>
public readonly record struct WindowEdge(DateTime Clock, TimeSpan? Offset)
{
    /// <summary>Reads <c>2025-01-14</c>, <c>2025-01-14T16:00</c> or an instant with offset; null for anything else.</summary>
    /// <param name="text">As written.</param>
    /// <param name="endOfDay">Whether a date alone means its end.</param>
    public static WindowEdge? Read(string text, bool endOfDay)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (DateTime.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime day) && day.Year is >= CalendarYears.First and <= CalendarYears.Last)
            return new WindowEdge(endOfDay ? day.AddDays(1) : day, null);
        if (InstantText.TryRead(text, null, out DateTimeOffset instant) == InstantText.Outcome.Read)
            return new WindowEdge(instant.DateTime, instant.Offset);
        return InstantText.TryRead(text, TimeSpan.Zero, out DateTimeOffset local) == InstantText.Outcome.Read ? new WindowEdge(local.DateTime, null) : null;
    }

    /// <summary>Whether a window from this edge to another would be empty; false where that depends on the file's own clock.</summary>
    public bool IsNotBefore(WindowEdge other) => (Offset, other.Offset) switch
    {
        ({ } own, { } its) => new DateTimeOffset(Clock, own) >= new DateTimeOffset(other.Clock, its),
        (null, null) => Clock >= other.Clock,

        // No two clocks on earth are further apart.
        _ => Clock - other.Clock > TimeSpan.FromHours(26),
    };

    /// <summary>Negative if the edge is before an instant, positive if it is after it.</summary>
    public int CompareTo(DateTimeOffset time) => Offset is { } offset ? new DateTimeOffset(Clock, offset).CompareTo(time) : Clock.CompareTo(time.DateTime);
}
