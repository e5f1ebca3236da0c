using System.Text.Json;
using ColdSim.Physics.Mixtures;
using ColdSim.Planning.Nights;
using UnitsNet;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>What the JSON of a run and of a trip say of a night alike.</summary>
internal static class NightJson
{
    public static void EachLeft(Utf8JsonWriter json, NightReport night)
    {
        Masses(json, "each_left_at_dawn_kg", night.EachLeftAtDawn);
        Masses(json, "each_left_at_end_kg", night.EachLeftAtEnd);
    }

    public static void FirstShort(Utf8JsonWriter json, NightReport night) => Time(json, "first_short", night.FirstShort);

    public static void Freezing(Utf8JsonWriter json, NightReport night) => Time(json, "freezing_at", night.FreezingAt);

    public static void Damp(Utf8JsonWriter json, NightReport night) => Number(json, "damp_time_s", night.DampTime.Seconds);

    public static void Blends(Utf8JsonWriter json, NightReport night)
    {
        json.WriteStartArray("blends");
        foreach (BlendReport blend in night.Blends)
            Blend(json, blend);
        json.WriteEndArray();
    }

    private static void Blend(Utf8JsonWriter json, BlendReport blend)
    {
        json.WriteStartObject();
        Parts(json, "start", blend.AtStart);
        Parts(json, "end", blend.AtEnd);
        Number(json, "left_kg", blend.Left.Kilograms);
        Number(json, "pressure_at_end_kpa_gauge", blend.PressureAtEnd.Kilopascals);
        Number(json, "left_behind_kg", blend.LeftBehind?.Kilograms);
        Number(json, "left_behind_at_c", blend.LeftBehindAt.DegreesCelsius);
        json.WriteEndObject();
    }

    public static void Parts(Utf8JsonWriter json, string name, in GasMasses parts)
    {
        json.WriteStartObject(name);
        Number(json, "propane", parts.Propane);
        Number(json, "n_butane", parts.NormalButane);
        Number(json, "isobutane", parts.Isobutane);
        json.WriteEndObject();
    }

    private static void Masses(Utf8JsonWriter json, string name, IReadOnlyList<Mass> masses)
    {
        json.WriteStartArray(name);
        foreach (Mass mass in masses)
            json.WriteNumberValue(Math.Round(mass.Kilograms, 6));
        json.WriteEndArray();
    }
}
