using System.Text.Json;
using ColdSim.Planning.Nights;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>The 12 V side of a night as a part of the JSON of a run or a trip.</summary>
internal static class PowerJson
{
    public static void Night(Utf8JsonWriter json, NightPower? power)
    {
        if (power is null)
        {
            json.WriteNull("power");
            return;
        }

        json.WriteStartObject("power");
        json.WriteStartArray("drawn");
        foreach (NightDraw draw in power.Drawn)
        {
            json.WriteStartObject();
            json.WriteString("name", draw.Name);
            Number(json, "energy_wh", draw.Energy.WattHours);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Number(json, "solar_wh", power.Solar.WattHours);
        Number(json, "shore_wh", power.Shore.WattHours);
        Number(json, "generator_wh", power.Generator.WattHours);
        Number(json, "generator_time_s", power.GeneratorTime.Seconds);
        Number(json, "charge_low_frac", power.ChargeLow.DecimalFractions);
        Time(json, "charge_low_at", power.ChargeLowAt);
        Number(json, "charge_at_end_frac", power.ChargeAtEnd.DecimalFractions);
        Time(json, "flat_at", power.FlatAt);
        Number(json, "voltage_gone_s", power.VoltageGone.Seconds);
        Number(json, "too_cold_to_charge_s", power.TooCold.Seconds);
        json.WriteEndObject();
    }
}
