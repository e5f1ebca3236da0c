using ColdSim.Model.Weather;

namespace ColdSim.Planning.Ensemble;

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
            Weather = new WeatherSeries(rows, scenario.StandIns, scenario.Rig.Site),
        };
    }
}
