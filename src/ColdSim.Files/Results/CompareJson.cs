using System.Text.Json;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A comparison as JSON, for programs; docs/json.md describes every key.</summary>
public static class CompareJson
{
    /// <summary>Writes the comparison.</summary>
    /// <param name="comparison">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(Comparison comparison, Stream output)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", comparison.Base.Title);
            Time(json, "start", comparison.Base.Start);
            json.WriteString("rule", Ranking.Rule);
            json.WriteBoolean("any_holds", comparison.AnyHolds);
            json.WriteStartArray("options");
            foreach (ComparedRow row in comparison.Rows)
                Row(json, row);
            json.WriteEndArray();
            Texts(json, "assumptions", comparison.Base.Assumptions);
            json.WriteEndObject();
        }
        output.WriteByte((byte)'\n');
    }

    private static void Row(Utf8JsonWriter json, ComparedRow row)
    {
        RunSummary summary = row.Summary;
        json.WriteStartObject();
        json.WriteNumber("rank", row.Rank);
        json.WriteString("name", row.Option.Name);
        json.WriteBoolean("as_it_is", row.Order == 0);
        json.WriteStartArray("cylinders");
        for (int i = 0; i < row.Option.Scenario.Rig.Cylinders.Count; i++)
            json.WriteStringValue(row.Option.Scenario.Rig.NameOf(i));
        json.WriteEndArray();
        json.WriteBoolean("stands_on_ground", row.Option.IsOnGround);
        json.WriteBoolean("holds", row.Holds);
        json.WriteString("verdict", WireNames.Of(summary.Verdict));
        json.WriteString("end", WireNames.Of(row.End));
        json.WriteNumber("nights", summary.Nights);
        json.WriteNumber("nights_held", summary.NightsHeld);
        Time(json, "first_short", summary.FirstShort);
        Number(json, "short_time_s", summary.ShortTime.Seconds);
        Time(json, "dry_at", summary.DryAt);
        json.WriteString("first_out", WireNames.Of(summary.FirstOut));
        Time(json, "flat_at", summary.FlatAt);
        Number(json, "voltage_gone_s", summary.VoltageGone.Seconds);
        Number(json, "charge_low_frac", summary.ChargeLow?.DecimalFractions);
        Number(json, "inside_low_c", summary.InsideLow?.DegreesCelsius);
        Time(json, "water_freezes_at", summary.WaterFreezesAt);
        Number(json, "gas_used_kg", summary.GasUsed.Kilograms);
        Number(json, "gas_heat_mj", summary.GasHeat.Megajoules);
        Number(json, "left_at_start_kg", summary.LeftAtStart.Kilograms);
        Number(json, "left_at_end_kg", summary.LeftAtEnd.Kilograms);
        json.WriteNumber("cylinder_changes", summary.CylinderChanges);
        Number(json, "blanket_energy_wh", summary.BlanketEnergy.WattHours);
        Number(json, "cost", row.Cost);
        Number(json, "outside_low_c", summary.OutsideLow.DegreesCelsius);
        Texts(json, "assumptions", row.Option.Scenario.Assumptions);
        json.WriteEndObject();
    }
}
