using System.Globalization;
using System.Text.Json;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Logs;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A log as JSON, for programs; docs/json.md describes every key.</summary>
public static class LogJson
{
    /// <summary>Writes the log.</summary>
    /// <param name="prediction">The readings beside the simulator.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="damaged">The lines that were left out.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(LogPrediction prediction, Scenario scenario, IReadOnlyList<FileProblem> damaged, Stream output)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(damaged);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteStartArray("readings");
            foreach (PredictedRow predicted in prediction.Rows)
            {
                LogRow row = predicted.Row;
                json.WriteStartObject();
                json.WriteNumber("line", row.Reading.Line);
                Time(json, "time", row.Reading.Time);
                json.WriteString("cylinder", LogCylinders.NameOf(scenario.Rig, row.Reading.Cylinder));
                json.WriteString("method", row.Reading.Reading.Name);
                Number(json, "mass_kg", row.Contents.Mass.Kilograms);
                Number(json, "standard_uncertainty_kg", row.Contents.StandardUncertainty.Kilograms);
                Number(json, "used_kg", row.Used?.Kilograms);
                Number(json, "used_standard_uncertainty_kg", row.UsedUncertainty?.Kilograms);
                Number(json, "predicted_kg", predicted.Predicted?.Kilograms);
                Number(json, "off_standard_errors", predicted.Times);
                json.WriteBoolean("filled", row.Reading.Filled);
                json.WriteString("note", row.Reading.Note);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Days(json, prediction, scenario);
            Texts(json, "left_out", [.. damaged.Select(d => d.ToString())]);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    /// <summary>Day by day what was used, beside the simulator.</summary>
    internal static void Days(Utf8JsonWriter json, LogPrediction prediction, Scenario scenario)
    {
        json.WriteStartArray("days");
        foreach (UseOfDay day in prediction.Days)
        {
            json.WriteStartObject();
            json.WriteString("day", day.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            Number(json, "covered_h", day.Covered.Hours);
            Number(json, "used_kg", day.Used.Kilograms);
            Number(json, "used_standard_uncertainty_kg", day.UsedUncertainty.Kilograms);
            Number(json, "predicted_kg", day.Predicted.Kilograms);
            Number(json, "money", scenario.Prices.Gas is { Each: false } price ? price.Of(day.Used.Kilograms) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
