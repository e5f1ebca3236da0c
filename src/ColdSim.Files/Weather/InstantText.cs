using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>ISO 8601 instants with an offset, or without one where the scenario states it; and offsets from UTC.</summary>
internal static class InstantText
{
    private static readonly string[] Formats =
    [
        "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd' 'HH:mm", "yyyy-MM-dd' 'HH:mm:ss",
    ];

    public const string Accepted = "accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z";

    /// <summary>The result of reading an instant.</summary>
    public enum Outcome
    {
        Read,
        Unreadable,
        WithoutOffset,
    }

    public static Outcome TryRead(string text, TimeSpan? offset, out DateTimeOffset instant)
        => TryPlain(text, offset, out instant) ? Outcome.Read : TryAny(text, offset, out instant);

    // The usual form, digit by digit: a long weather file is mostly times. Any other form is left to TryAny, which reads the usual form the same.
    private static bool TryPlain(ReadOnlySpan<char> text, TimeSpan? offset, out DateTimeOffset instant)
    {
        instant = default;
        if (text.Length < 16 || text[4] != '-' || text[7] != '-' || text[10] is not ('T' or ' ') || text[13] != ':')
            return false;
        int year = 100 * Two(text, 0) + Two(text, 2), month = Two(text, 5), day = Two(text, 8), hour = Two(text, 11), minute = Two(text, 14), second = 0;
        ReadOnlySpan<char> rest = text[16..];
        if (rest.Length >= 3 && rest[0] == ':')
        {
            second = Two(rest, 1);
            rest = rest[3..];
        }

        if (year is < CalendarYears.First or > CalendarYears.Last || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month))
            return false;
        if (hour is < 0 or > 23 || minute is < 0 or > 59 || second is < 0 or > 59)
            return false;
        TimeSpan used;
        if (rest is "Z")
        {
            used = TimeSpan.Zero;
        }
        else if (rest.Length == 6 && rest[0] is ('+' or '-') && rest[3] == ':')
        {
            int hours = Two(rest, 1), minutes = Two(rest, 4), size = 60 * hours + minutes;
            if (hours < 0 || minutes is < 0 or > 59 || size > 14 * 60)
                return false;
            used = TimeSpan.FromMinutes(rest[0] == '-' ? -size : size);
        }
        else if (rest.Length == 0 && offset is { } stated)
        {
            used = stated;
        }
        else
        {
            return false;
        }

        instant = new DateTimeOffset(new DateTime(year, month, day, hour, minute, second), used);
        return true;
    }

    // Two digits; where they are not digits, a value so negative that no sum with it is in range.
    private static int Two(ReadOnlySpan<char> text, int at)
        => char.IsAsciiDigit(text[at]) && char.IsAsciiDigit(text[at + 1]) ? 10 * (text[at] - '0') + (text[at + 1] - '0') : -1_000_000;

    /// <summary>Every form that is accepted.</summary>
    public static Outcome TryAny(string text, TimeSpan? offset, out DateTimeOffset instant)
    {
        instant = default;
        text = text.Trim();
        string clock = text;
        TimeSpan? own = null;
        if (text.EndsWith('Z'))
        {
            own = TimeSpan.Zero;
            clock = text[..^1];
        }
        else if (text.Length > 10 && text.LastIndexOfAny(['+', '-', '−']) is int sign and > 10)
        {
            if (!TryOffset(text[sign..], out TimeSpan written))
                return Outcome.Unreadable;
            own = written;
            clock = text[..sign];
        }
        // The end of a day may be written as its 24th hour.
        bool midnight = clock.Length >= 16 && clock.AsSpan(11, 5) is "24:00" && clock.AsSpan(16) is "" or ":00";
        if (midnight)
            clock = $"{clock[..11]}00:00";
        if (!DateTime.TryParseExact(clock, Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local))
            return Outcome.Unreadable;
        if ((own ?? offset) is not { } used)
            return Outcome.WithoutOffset;
        // The first and last years of the calendar have no room for every offset and every trip.
        if (local.Year is < CalendarYears.First or > CalendarYears.Last)
            return Outcome.Unreadable;
        instant = new DateTimeOffset(midnight ? local.AddDays(1) : local, used);
        return Outcome.Read;
    }

    /// <summary>An instant as it is written in our own files and messages, such as "2025-01-14T17:00-07:00".</summary>
    public static string Of(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture);

    /// <summary>An offset from UTC, such as "-07:00" or "+00:00".</summary>
    public static string OfOffset(TimeSpan offset) => (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString("hh\\:mm", CultureInfo.InvariantCulture);

    /// <summary>An offset written as hours, such as -6.0 or 5.75; null where it is out of range.</summary>
    public static TimeSpan? OffsetFromHours(double hours) => Math.Abs(hours) <= 14 ? TimeSpan.FromMinutes(Math.Round(hours * 60)) : null;

    /// <summary>Reads "-07:00", "+0530", "-7" or "Z".</summary>
    public static bool TryOffset(string text, out TimeSpan offset)
    {
        offset = TimeSpan.Zero;
        text = text.Trim().Replace('−', '-');
        if (text == "Z")
            return true;
        if (text.Length < 2 || text[0] is not ('+' or '-'))
            return false;
        string[] formats = ["hh\\:mm", "hhmm", "hh", "%h"];
        if (!TimeSpan.TryParseExact(text[1..], formats, CultureInfo.InvariantCulture, out TimeSpan size) || size > TimeSpan.FromHours(14))
            return false;
        offset = text[0] == '-' ? -size : size;
        return true;
    }
}
