using System.Text.Json;
using ColdSim.Planning.Freezing;
using UnitsNet;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>Times to freezing as JSON, for programs; docs/json.md describes every key.</summary>
public static class FreezeJson
{
    /// <summary>Writes them.</summary>
    /// <param name="outlook">What they say.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(FreezeOutlook outlook, Stream output)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", outlook.Scenario.Title);
            json.WriteStartArray("stops");
            foreach (HeatStop stop in outlook.Stops)
            {
                json.WriteStartObject();
                Keys(json, stop);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Texts(json, "assumptions", outlook.Scenario.Assumptions);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    /// <summary>Writes one stop under a key; null where there is none.</summary>
    internal static void Stop(Utf8JsonWriter json, string key, HeatStop? stop)
    {
        if (stop is null)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        Keys(json, stop);
        json.WriteEndObject();
    }

    private static void Keys(Utf8JsonWriter json, HeatStop stop)
    {
        Time(json, "at", stop.At);
        Number(json, "outside_c", stop.Outside.DegreesCelsius);
        Number(json, "inside_c", stop.Inside?.DegreesCelsius);
        Span(json, "fifty_fahrenheit_after_s", stop.FiftyAfter);
        Span(json, "freezing_after_s", stop.FreezingAfter);
        json.WriteStartArray("water");
        foreach (WaterAfter water in stop.Water)
        {
            json.WriteStartObject();
            json.WriteString("name", water.Name);
            Span(json, "begins_after_s", water.BeginsAfter);
            Span(json, "solid_after_s", water.SolidAfter);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Number(json, "watched_s", stop.Watched.Seconds);
    }

    private static void Span(Utf8JsonWriter json, string key, Duration? span) => Number(json, key, span?.Seconds);
}
