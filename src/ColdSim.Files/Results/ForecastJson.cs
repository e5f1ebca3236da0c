using System.Text.Json;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using UnitsNet;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>The spans of a run from the log's latest reading, as a part of the run's document.</summary>
internal static class ForecastJson
{
    public static void Write(Utf8JsonWriter json, RunReport report, Forecast? forecast, LogPrediction? prediction)
    {
        if (forecast is null || prediction is null)
        {
            json.WriteNull("forecast");
            return;
        }

        json.WriteStartObject("forecast");
        json.WriteNumber("from_line", forecast.From.Line);
        Time(json, "from", forecast.From.Time.ToOffset(report.Scenario.Start.Offset));
        json.WriteBoolean("fitted", report.Scenario.Fit is not null);
        json.WriteNumber("members", Forecast.Members);
        json.WriteNumber("dry_members", forecast.DryMembers);
        json.WriteStartObject("dry");
        Time(json, "low", forecast.Dry.Low);
        Time(json, "median", forecast.Dry.Median);
        Time(json, "high", forecast.Dry.High);
        json.WriteEndObject();
        json.WriteStartArray("left_at_dawn_kg");
        for (int i = 0; i < Math.Min(forecast.LeftAtDawn.Count, report.Nights.Count); i++)
        {
            if (forecast.LeftAtDawn[i] is not { } left)
                continue;
            json.WriteStartObject();
            json.WriteNumber("night", report.Nights[i].Number);
            Span(json, left);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FigureJson.WriteRows(json, "days", LogFigures.Days, LogDay.Of(prediction, report.Scenario));
        json.WriteEndObject();
    }

    private static void Span(Utf8JsonWriter json, Spread<Mass> left)
    {
        Number(json, "low", left.Low.Kilograms);
        Number(json, "median", left.Median.Kilograms);
        Number(json, "high", left.High.Kilograms);
    }
}
