using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>ISO 8601 instants with an offset, or without one where the scenario states it.</summary>
internal static class InstantText
{
    private static readonly string[] Formats =
    [
        "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd' 'HH:mm", "yyyy-MM-dd' 'HH:mm:ss",
    ];

    public const string Accepted = "accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z";

    /// <summary>What came of reading an instant.</summary>
    public enum Outcome
    {
        Read,
        Unreadable,
        WithoutOffset,
    }

    public static Outcome TryRead(string text, TimeSpan? offset, out DateTimeOffset instant)
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
        // The first and last day of the calendar have no room for every offset.
        if (local.Year is < 2 or > 9998)
            return Outcome.Unreadable;
        instant = new DateTimeOffset(midnight ? local.AddDays(1) : local, used);
        return Outcome.Read;
    }

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
