using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>Dates, and dates with their time.</summary>
internal static class DateText
{
    /// <summary>A date alone; null where it is absent or faulty.</summary>
    public static DateOnly? Get(this SectionReader section, DateKey key)
    {
        const string accepted = "accepted: a date, without quotes, such as 2031-06-30";
        switch (section.Value(key))
        {
            case null: return null;
            case TomlDateOrTime { HasDate: true, HasTime: false } date: return DateOnly.FromDateTime(date.Value.DateTime);
            case { } other:
                section.Reading.Report(other.Place, $"'{key.Name}' is {other.Kind}", accepted);
                return null;
        }
    }

    /// <summary>A date and time in an offset that holds where none is written; null where it is absent or faulty.</summary>
    /// <param name="section">The table.</param>
    /// <param name="key">The key.</param>
    /// <param name="offset">The offset of times that are written without one, and of what is returned.</param>
    /// <param name="clock">The time of day added to a date without one; null where a date alone is not enough.</param>
    public static DateTimeOffset? Get(this SectionReader section, DateTimeKey key, TimeSpan offset, TimeOnly? clock = null)
    {
        const string accepted = "accepted: a date and time, without quotes, such as 2027-01-14T16:00:00";
        switch (section.Value(key))
        {
            case null: return null;
            case TomlDateOrTime { HasDate: true, HasTime: true, HasOffset: true } instant: return instant.Value.ToOffset(offset);
            case TomlDateOrTime { HasDate: true, HasTime: true } local: return new DateTimeOffset(local.Value.DateTime, offset);
            case TomlDateOrTime { HasDate: true } day when clock is { } time: return new DateTimeOffset(DateOnly.FromDateTime(day.Value.DateTime).ToDateTime(time), offset);
            case { } other:
                section.Reading.Report(other.Place, $"'{key.Name}' is {other.Kind}", accepted);
                return null;
        }
    }
}
