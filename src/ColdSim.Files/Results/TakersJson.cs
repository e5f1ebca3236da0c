using System.Text.Json;
using ColdSim.Planning.Nights;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>Who drew what gas, and how the water fared, as parts of the JSON of a run or a trip.</summary>
internal static class TakersJson
{
    public static void Gas(Utf8JsonWriter json, IReadOnlyList<ApplianceGas> gas)
    {
        json.WriteStartArray("gas_by_appliance");
        foreach (ApplianceGas one in gas)
        {
            json.WriteStartObject();
            json.WriteString("name", one.Name);
            Number(json, "gas_kg", one.Gas.Kilograms);
            Number(json, "share", one.Share.DecimalFractions);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    public static void Water(Utf8JsonWriter json, NightReport night)
    {
        json.WriteBoolean("water_alert", night.WaterAlert);
        json.WriteStartArray("water");
        foreach (WaterReport water in night.Water)
        {
            json.WriteStartObject();
            json.WriteString("name", water.Name);
            json.WriteBoolean("holds_water", water.HoldsWater);
            json.WriteBoolean("heated", water.Heated);
            Number(json, "lowest_c", water.Lowest.DegreesCelsius);
            Number(json, "most_ice", water.MostIce.DecimalFractions);
            Time(json, "freezes_at", water.FreezesAt);
            Time(json, "solid_at", water.SolidAt);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
