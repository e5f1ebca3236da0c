using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Reads the time of a record as a column map says: from one column or several, by its format, its offset or the clock of a zone.</summary>
/// <param name="map">The map.</param>
/// <param name="offset">The offset of times that have none; null where none is stated.</param>
/// <param name="fields">The fields that are joined.</param>
internal sealed class MappedTime(ColumnMap map, TimeSpan? offset, int[] fields)
{
    private DateTimeOffset _last = DateTimeOffset.MinValue;

    /// <summary>The result of reading a time.</summary>
    public enum Outcome
    {
        Read,
        Unreadable,
        WithoutOffset,

        /// <summary>A time that clocks put forward leave out.</summary>
        LeftOut,
    }

    // Year, month and day at least: numbers in this order unless a format says otherwise.
    private bool IsParts => map.TimeFormat is null && fields.Length >= 3;

    /// <summary>The time as it is written.</summary>
    public string Text(RecordReader records)
    {
        if (fields.Length == 1)
            return records.Text(fields[0]);
        return fields.Length == 2 ? $"{records.Text(fields[0])} {records.Text(fields[1])}" : string.Join(' ', fields.Select(records.Text));
    }

    /// <summary>What is accepted, in words.</summary>
    public string Accepted => "accepted: " + (IsParts ? "whole numbers, from the year down" : map.TimeFormat is { } written ? Quote.Of(written) : "ISO 8601");

    public Outcome Read(RecordReader records, out DateTimeOffset time)
    {
        Outcome outcome = IsParts ? Parts(records, out time) : Whole(Text(records), out time);
        if (outcome == Outcome.Read)
            _last = time;
        return outcome;
    }

    private Outcome Parts(RecordReader records, out DateTimeOffset time)
    {
        time = default;
        Span<int> n = [1, 1, 1, 0, 0, 0];
        for (int i = 0; i < fields.Length; i++)
        {
            if (i >= n.Length || records.WholeNumber(fields[i]) is not { } number)
                return Outcome.Unreadable;
            n[i] = number;
        }

        bool isDay = n[0] is >= CalendarYears.First and <= CalendarYears.Last && n[1] is >= 1 and <= 12 && n[2] >= 1 && n[2] <= DateTime.DaysInMonth(n[0], n[1]);
        return isDay && n[3] is >= 0 and <= 24 && n[4] is >= 0 and <= 60 && n[5] is >= 0 and <= 60
            ? Local(new DateTime(n[0], n[1], n[2]).AddHours(n[3]).AddMinutes(n[4]).AddSeconds(n[5]), out time) : Outcome.Unreadable;
    }

    private Outcome Whole(string text, out DateTimeOffset time)
    {
        time = default;
        switch (map.TimeFormat)
        {
            case null:
                return Iso(text, out time);
            case "unix":
                if (!long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long seconds) || Math.Abs(seconds) >= 100_000_000_000)
                    return Outcome.Unreadable;
                DateTimeOffset utc = DateTimeOffset.FromUnixTimeSeconds(seconds);
                time = utc.ToOffset(offset ?? map.Zone?.GetUtcOffset(utc) ?? TimeSpan.Zero);
                return Outcome.Read;
        }

        string format = map.TimeFormat;

        // The end of a day may be written as its 24th hour.
        bool midnight = format.Contains("HH:mm", StringComparison.Ordinal) && text.Contains("24:00", StringComparison.Ordinal);
        if (midnight)
            text = text.Replace("24:00", "00:00", StringComparison.Ordinal);
        else if (midnight = format.EndsWith("HHmm", StringComparison.Ordinal) && text.EndsWith("2400", StringComparison.Ordinal))
            text = text[..^4] + "0000";
        int days = midnight ? 1 : 0;
        if (format.Contains('z', StringComparison.Ordinal) || format.Contains('K', StringComparison.Ordinal))
        {
            if (!DateTimeOffset.TryParseExact(text, format, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces | DateTimeStyles.AssumeUniversal, out time) || time.Year is < 2 or > 9998)
                return Outcome.Unreadable;
            time = time.AddDays(days);
            return Outcome.Read;
        }

        return DateTime.TryParseExact(text, format, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out DateTime local) && local.Year is >= 2 and <= 9998
            ? Local(local.AddDays(days), out time) : Outcome.Unreadable;
    }

    private Outcome Iso(string text, out DateTimeOffset time)
    {
        switch (InstantText.TryRead(text, null, out time))
        {
            case InstantText.Outcome.Read:
                return Outcome.Read;
            case InstantText.Outcome.WithoutOffset:
                return InstantText.TryRead(text, TimeSpan.Zero, out DateTimeOffset clock) == InstantText.Outcome.Read ? Local(clock.DateTime, out time) : Outcome.Unreadable;
            default:
                return Outcome.Unreadable;
        }
    }

    private Outcome Local(DateTime local, out DateTimeOffset time)
    {
        time = default;
        local = DateTime.SpecifyKind(local, DateTimeKind.Unspecified);
        if (map.Zone is { } zone)
            return InZone(zone, local, out time);
        if (offset is not { } stated)
            return Outcome.WithoutOffset;
        time = new DateTimeOffset(local, stated);
        return Outcome.Read;
    }

    // The hour that is there twice when clocks go back is summer time the first time, standard time after that.
    private Outcome InZone(TimeZoneInfo zone, DateTime local, out DateTimeOffset time)
    {
        time = default;
        if (zone.IsInvalidTime(local))
            return Outcome.LeftOut;
        if (!zone.IsAmbiguousTime(local))
        {
            time = new DateTimeOffset(local, zone.GetUtcOffset(local));
            return Outcome.Read;
        }

        TimeSpan[] offsets = zone.GetAmbiguousTimeOffsets(local);
        Array.Sort(offsets);
        time = new DateTimeOffset(local, offsets[^1]);
        if (time <= _last)
            time = new DateTimeOffset(local, offsets[0]);
        return Outcome.Read;
    }
}
