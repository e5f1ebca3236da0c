using ColdSim.Model.Weather;

namespace ColdSim.Planning.Ensemble;

/// <summary>The days that are run in every year of a record.</summary>
/// <param name="Start">When the run starts; its day, clock and offset are used in every year.</param>
/// <param name="Duration">How long the run is; above zero.</param>
public sealed record RecordDays(DateTimeOffset Start, TimeSpan Duration);

/// <summary>A year of a record in which the run's days are covered.</summary>
/// <param name="Year">The calendar year of the start.</param>
/// <param name="Start">When a run starts in it.</param>
/// <param name="First">Which of the <see cref="RecordYears.Rows"/> is the first that it needs, from 0.</param>
/// <param name="Count">How many rows it needs.</param>
public sealed record RecordYear(int Year, DateTimeOffset Start, int First, int Count);

/// <summary>Why a year of a record cannot be run.</summary>
public enum WhyLeftOut
{
    /// <summary>A gap of over 3 h in its days.</summary>
    Gap,

    /// <summary>The record begins in its days.</summary>
    Begins,

    /// <summary>The record ends in its days.</summary>
    Ends,
}

/// <summary>A year of a record that cannot be run, though the record reaches into its days or over them.</summary>
/// <param name="Year">The calendar year of the start.</param>
/// <param name="Why">What is wrong with its days; the first thing where there are several.</param>
public sealed record YearLeftOut(int Year, WhyLeftOut Why);

/// <summary>What the runs of all years need of a record.</summary>
/// <param name="Years">The years that can be run, in order.</param>
/// <param name="Rows">Their rows, in order of time; a row that two years need is there once.</param>
/// <param name="LeftOut">The years that cannot, in order.</param>
public sealed record RecordYears(IReadOnlyList<RecordYear> Years, IReadOnlyList<WeatherRow> Rows, IReadOnlyList<YearLeftOut> LeftOut)
{
    /// <summary>Whether its months were picked from several years for being usual, so that it is no year that was.</summary>
    public bool IsTypicalYear { get; init; }
}

/// <summary>The same days of every year in a record.</summary>
internal sealed class YearMembers(Scenario scenario, int nights, RecordYears record) : IMemberMaker
{
    /// <inheritdoc/>
    public Scenario Of(int member, Span<double> drawn)
    {
        RecordYear year = record.Years[member];
        List<WeatherRow> rows = new(year.Count);
        for (int i = 0; i < year.Count; i++) rows.Add(record.Rows[year.First + i]);
        return scenario with
        {
            Start = year.Start,
            Nights = nights,
            HeatStops = scenario.HeatStops + (year.Start - scenario.Start),
            Weather = new WeatherSeries(rows, scenario.WeatherDefaults, scenario.Rig.Site),
        };
    }
}
