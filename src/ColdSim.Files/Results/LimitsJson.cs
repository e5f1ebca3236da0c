using System.Text.Json;
using ColdSim.Model;
using ColdSim.Planning.Limits;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A limits chart as JSON, for programs; docs/json.md describes every key.</summary>
public static class LimitsJson
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the chart.</summary>
    /// <param name="chart">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(LimitChart chart, Stream output)
    {
        ArgumentNullException.ThrowIfNull(chart);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", chart.Scenario.Title);
            Number(json, "warmest_c", chart.Axis.Warmest_K - Zero_K);
            Number(json, "coldest_c", chart.Axis.Coldest_K - Zero_K);
            Number(json, "tolerance_k", chart.Axis.Step_K);
            Night(json, chart.Night);
            json.WriteStartArray("set_ups");
            foreach (LimitColumn column in chart.Columns)
                Column(json, column);
            json.WriteEndArray();
            Texts(json, "assumptions", chart.Scenario.Assumptions);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    private static void Night(Utf8JsonWriter json, StandardNight night)
    {
        json.WriteStartObject("night");
        Time(json, "from", night.From);
        Time(json, "to", night.To);
        Number(json, "swing_k", StandardNight.Swing_K);
        Number(json, "wind_m_s", night.Air.Wind_m_s);
        Number(json, "humidity", night.Air.RelativeHumidity_frac);
        Number(json, "cloud", night.Air.Cloud_frac);
        json.WriteEndObject();
    }

    private static void Column(Utf8JsonWriter json, LimitColumn column)
    {
        json.WriteStartObject();
        json.WriteString("set_up", WireNames.Of(column.SetUp.Kind));
        json.WriteBoolean("as_it_is", column.SetUp.AsItIs);
        json.WriteStartArray("cylinders");
        Rig rig = column.SetUp.Rig;
        for (int i = 0; i < rig.Cylinders.Count; i++)
            json.WriteStringValue(rig.NameOf(i));
        json.WriteEndArray();
        Number(json, "blanket_w", column.SetUp.Blanket?.Power_W);
        json.WriteBoolean("blanket_powered", column.SetUp.Powered);
        json.WriteStartArray("cells");
        foreach (LimitCell cell in column.Cells)
            Cell(json, cell);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Cell(Utf8JsonWriter json, LimitCell cell)
    {
        json.WriteStartObject();
        Number(json, "fill", cell.Fill_frac);
        Number(json, "contents_kg", cell.Contents_kg);
        json.WriteString("kind", WireNames.Of(cell.Kind));
        Number(json, "limit_c", cell.Low_K - Zero_K);
        json.WriteBoolean("emptied_one_step_colder", cell.Emptied);
        json.WriteBoolean("furnace_too_small", cell.FurnaceTooSmall);
        Number(json, "inside_low_c", cell.InsideLow_K - Zero_K);
        Number(json, "gas_used_kg", cell.Used_kg);
        Number(json, "blanket_energy_wh", cell.Blanket_J / 3600);
        json.WriteEndObject();
    }
}
