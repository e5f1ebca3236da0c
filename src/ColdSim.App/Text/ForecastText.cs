using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What the log's latest reading and the fit make of the days ahead.</summary>
internal static class ForecastText
{
    public static TextSection Section(Forecast forecast, ForecastStart start, RunReport report, UnitStyle units)
        => new("From the log's latest reading", [.. Lines(forecast, start, report, units)]);

    private static IEnumerable<string> Lines(Forecast forecast, ForecastStart start, RunReport report, UnitStyle units)
    {
        string fit = report.Scenario.Fit is null ? "the scenario has no [fit], so the coach's doubt is left out" : "the fit's doubt is in it";
        IEnumerable<string> sentences =
        [
            $"Started from the reading in line {forecast.From.Line} of the log, {RunOn(report.Scenario)}{ClockText.DayClock(report.Scenario.Start)}, with {units.Mass(report.Summary.LeftAtStart.Kilograms)}. "
                + $"{Forecast.Members} runs (Latin hypercube, fixed seed); {fit}; the weather is used as written.",
            .. LogStartLine.Cylinders(report.Scenario.StartedFrom!, units),
            forecast.DryMembers == 0 ? "Dry: in none of them."
                : $"Dry: in {forecast.DryMembers} of {Forecast.Members}; {At(forecast.Dry.Median)}, four times in five between {At(forecast.Dry.Low)} and {At(forecast.Dry.High)}.",
        ];
        foreach (string line in sentences.SelectMany(s => Wrap.Lines(s)))
            yield return line;
        for (int i = 0; i < Math.Min(forecast.LeftAtDawn.Count, report.Nights.Count); i++)
        {
            if (forecast.LeftAtDawn[i] is { } left)
                yield return $"Left at dawn after {ClockText.NightShort(report.Nights[i])}: {units.Mass(left.Median.Kilograms)} ({units.MassNumber(left.Low.Kilograms)} to {units.MassNumber(left.High.Kilograms)})";
        }
    }

    private static string RunOn(Scenario scenario)
        => scenario.StartedFrom is { Simulated: true } from ? $"{ClockText.DayClock(from.Read)}, and run on from it to " : "";

    private static string At(DateTimeOffset? time) => time is { } t ? ClockText.DayClock(t) : "past the end";
}
