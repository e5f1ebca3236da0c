using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using ColdSim.Planning.Logs;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A log as JSON, for programs; docs/json.md describes every key.</summary>
public static class LogJson
{
    /// <summary>Writes the log.</summary>
    /// <param name="log">The readings.</param>
    /// <param name="damaged">The lines that were left out.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(UseLog log, IReadOnlyList<FileProblem> damaged, Stream output)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(damaged);
        ArgumentNullException.ThrowIfNull(output);
        JsonWriterOptions options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };
        using (Utf8JsonWriter json = new(output, options))
        {
            json.WriteStartObject();
            json.WriteStartArray("readings");
            foreach (LogRow row in log.Rows)
            {
                json.WriteStartObject();
                json.WriteNumber("line", row.Reading.Line);
                Time(json, "time", row.Reading.Time);
                json.WriteString("method", row.Reading.Reading.Name);
                Number(json, "mass_kg", row.Contents.Mass.Kilograms);
                Number(json, "standard_uncertainty_kg", row.Contents.StandardUncertainty.Kilograms);
                Number(json, "used_kg", row.Used?.Kilograms);
                Number(json, "used_standard_uncertainty_kg", row.UsedUncertainty?.Kilograms);
                json.WriteBoolean("filled", row.Reading.Filled);
                json.WriteString("note", row.Reading.Note);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Texts(json, "left_out", [.. damaged.Select(d => d.ToString())]);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }
}
