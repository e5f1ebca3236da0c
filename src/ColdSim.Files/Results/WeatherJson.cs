using System.Text.Json;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A weather file at a glance as JSON, for programs; docs/json.md describes every key.</summary>
public static class WeatherJson
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the answer.</summary>
    /// <param name="answer">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(WeatherFileReport answer, Stream output)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("file", answer.File);
            json.WriteString("format", answer.Weather.Format.Name());
            json.WriteString("times", answer.Weather.Clock);
            Station(json, answer.Weather.Station);
            Digest(json, answer.Digest);
            json.WriteNumber("gaps_in_all", answer.Weather.AllGaps);
            json.WriteStartArray("gaps");
            foreach (WeatherGap gap in answer.Weather.Gaps)
            {
                json.WriteStartObject();
                Time(json, "from", gap.From);
                Time(json, "to", gap.To);
                json.WriteString("bridged_by", "straight_line");
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Night(json, answer.Night);
            Texts(json, "notes", answer.Notes);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    private static void Station(Utf8JsonWriter json, WeatherStation station)
    {
        json.WriteStartObject("station");
        json.WriteString("id", station.Id);
        json.WriteString("name", station.Name);
        Number(json, "latitude_deg", station.Latitude_deg);
        Number(json, "longitude_deg", station.Longitude_deg);
        Number(json, "elevation_m", station.Elevation_m);
        json.WriteEndObject();
    }

    private static void Digest(Utf8JsonWriter json, WeatherDigest digest)
    {
        Time(json, "from", digest.From);
        Time(json, "to", digest.To);
        json.WriteNumber("rows", digest.Rows);
        Number(json, "mean_c", digest.Mean_K - Zero_K);
        Number(json, "high_c", digest.High_K - Zero_K);
        json.WriteStartArray("coldest");
        foreach (WeatherRow row in digest.Coldest)
        {
            json.WriteStartObject();
            Time(json, "time", row.Time);
            Number(json, "air_c", row.Air_K - Zero_K);
            Number(json, "wind_m_s", row.Wind_m_s);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("below");
        Number(json, "threshold_c", digest.Below_K - Zero_K);
        Number(json, "hours", digest.HoursBelow);
        Number(json, "degree_hours_kh", digest.DegreeHours_Kh);
        Time(json, "longest_from", digest.LongestRun?.From);
        Time(json, "longest_to", digest.LongestRun?.To);
        Number(json, "longest_low_c", digest.LongestRun?.Low_K - Zero_K);
        json.WriteEndObject();
    }

    private static void Night(Utf8JsonWriter json, DesignNight? picked)
    {
        if (picked is null)
        {
            json.WriteNull("night");
            return;
        }

        json.WriteStartObject("night");
        json.WriteString("rule", picked.Rule);
        json.WriteNumber("rank", picked.Rank);
        json.WriteNumber("of", picked.Of);
        Time(json, "night_from", picked.Night.From);
        Time(json, "night_to", picked.Night.To);
        Number(json, "night_mean_c", picked.Night.Mean_K - Zero_K);
        Number(json, "night_low_c", picked.Night.Low_K - Zero_K);
        Time(json, "night_low_at", picked.Night.LowAt);
        json.WriteEndObject();
    }
}
