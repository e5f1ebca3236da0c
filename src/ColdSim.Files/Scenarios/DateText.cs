using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>Dates, and dates with their time.</summary>
internal static class DateText
{
    /// <summary>A date alone; null where it is absent or faulty.</summary>
    public static DateOnly? Date(this SectionReader section, string key)
    {
        const string accepted = "accepted: a date, without quotes, such as 2031-06-30";
        switch (section.Value(key))
        {
            case null: return null;
            case TomlMoment { Date: true, Time: false } moment: return DateOnly.FromDateTime(moment.Value.DateTime);
            case { } other:
                section.Reading.Report(other.Place, $"'{key}' is {other.Kind}", accepted);
                return null;
        }
    }

    /// <summary>A date and time in an offset that holds where none is written; null where it is absent or faulty.</summary>
    /// <param name="section">The table.</param>
    /// <param name="key">The key.</param>
    /// <param name="offset">The offset of times that are written without one, and of what is returned.</param>
    /// <param name="clock">The time of day that a date alone is taken with; null where a date alone is not enough.</param>
    public static DateTimeOffset? Moment(this SectionReader section, string key, TimeSpan offset, TimeOnly? clock = null)
    {
        const string accepted = "accepted: a date and time, without quotes, such as 2027-01-14T16:00:00";
        switch (section.Value(key))
        {
            case null: return null;
            case TomlMoment { Date: true, Value.Year: <= 1 or >= 9999 } far:
                section.Reading.Report(far.Place, $"'{key}' lies too far away", accepted);
                return null;
            case TomlMoment { Date: true, Time: true, Offset: true } moment: return moment.Value.ToOffset(offset);
            case TomlMoment { Date: true, Time: true } local: return new DateTimeOffset(local.Value.DateTime, offset);
            case TomlMoment { Date: true } day when clock is { } time: return new DateTimeOffset(DateOnly.FromDateTime(day.Value.DateTime).ToDateTime(time), offset);
            case { } other:
                section.Reading.Report(other.Place, $"'{key}' is {other.Kind}", accepted);
                return null;
        }
    }
}
