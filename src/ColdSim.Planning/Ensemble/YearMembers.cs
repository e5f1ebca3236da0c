using ColdSim.Model.Weather;

namespace ColdSim.Planning.Ensemble;

/// <summary>The same days of every year in a record.</summary>
internal sealed class YearMembers(Scenario scenario, int nights, IReadOnlyList<WeatherRow> record, IReadOnlyList<RecordYear> years) : IMemberMaker
{
    /// <inheritdoc/>
    public Scenario Of(int member, Span<double> drawn)
    {
        RecordYear year = years[member];
        List<WeatherRow> rows = new(year.Count);
        for (int i = 0; i < year.Count; i++) rows.Add(record[year.First + i]);
        return scenario with
        {
            Start = year.Start,
            Nights = nights,
            Weather = new WeatherSeries(rows, scenario.StandIns, scenario.Rig.Site),
        };
    }
}

/// <summary>A year of a record in which the run's days are covered.</summary>
/// <param name="Year">The calendar year of the start.</param>
/// <param name="Start">When a run starts in it.</param>
/// <param name="First">The first row that it needs.</param>
/// <param name="Count">How many rows it needs.</param>
public sealed record RecordYear(int Year, DateTimeOffset Start, int First, int Count)
{
    // What a reader bridges unasked; a year with a longer gap in these days is left out.
    private static readonly TimeSpan LongestGap = TimeSpan.FromHours(3);

    /// <summary>The years that can be run, in order.</summary>
    /// <param name="record">Rows in order of time.</param>
    /// <param name="start">When the run starts; its day, clock and offset are taken for every year.</param>
    /// <param name="duration">How long it is.</param>
    public static IReadOnlyList<RecordYear> Of(IReadOnlyList<WeatherRow> record, DateTimeOffset start, TimeSpan duration)
    {
        ArgumentNullException.ThrowIfNull(record);
        List<RecordYear> years = [];
        if (record.Count < 2) return years;
        int row = 0;
        for (int year = record[0].Time.Year - 1; year <= record[^1].Time.Year; year++)
        {
            if (year < 1 || start.Day > DateTime.DaysInMonth(year, start.Month)) continue;
            DateTimeOffset from = new(year, start.Month, start.Day, start.Hour, start.Minute, start.Second, start.Offset);
            DateTimeOffset to = from + duration;
            while (row < record.Count - 1 && record[row + 1].Time <= from) row++;
            if (record[row].Time > from) continue;
            int last = row;
            while (last < record.Count - 1 && record[last].Time < to && record[last + 1].Time - record[last].Time <= LongestGap) last++;
            if (record[last].Time >= to) years.Add(new RecordYear(year, from, row, last - row + 1));
        }

        return years;
    }
}
