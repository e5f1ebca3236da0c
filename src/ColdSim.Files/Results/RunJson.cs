using System.Text.Json;
using ColdSim.Model.Engine;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using UnitsNet;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A run as JSON, for programs; docs/json.md describes every key.</summary>
/// <remarks>Numbers carry their unit in the key; times are ISO 8601 with offset; what does not apply is null.</remarks>
public static class RunJson
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the run.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(RunReport report, Stream output) => Write(report, null, null, output);

    /// <summary>Writes the run with what the log makes of it.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="forecast">The spans of a run from the log's latest reading, or null.</param>
    /// <param name="prediction">The log beside the simulator, or null.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(RunReport report, Forecast? forecast, LogPrediction? prediction, Stream output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", report.Scenario.Title);
            Time(json, "start", report.Scenario.Start);
            json.WriteString("end", WireNames.Of(report.End));
            FigureJson.WriteRow(json, "furnace_stops", FreezeFigures.Stops, report.HeatStop);
            FigureJson.WriteRow(json, "after_failure", FreezeFigures.Stops, AfterFailure.Of(report));
            Summary(json, report.Summary);
            json.WriteStartArray("cylinders");
            for (int i = 0; i < report.Scenario.Rig.Cylinders.Count; i++)
                json.WriteStringValue(report.Scenario.Rig.NameOf(i));
            json.WriteEndArray();
            json.WriteString("gas", report.Scenario.Rig.Gas.Name);
            json.WriteStartArray("nights");
            foreach (NightReport night in report.Nights)
                Night(json, night);
            json.WriteEndArray();
            json.WriteStartArray("events");
            foreach (ReportedEvent reported in report.Events)
                Event(json, reported);
            json.WriteEndArray();
            Ledger(json, report.Ledger);
            ForecastJson.Write(json, report, forecast, prediction);
            Texts(json, "assumptions", report.Scenario.Assumptions);
            json.WriteEndObject();
        }
        output.WriteByte((byte)'\n');
    }

    private static void Summary(Utf8JsonWriter json, RunSummary summary)
    {
        json.WriteStartObject("summary");
        json.WriteString("verdict", WireNames.Of(summary.Verdict));
        json.WriteNumber("nights", summary.Nights);
        json.WriteNumber("nights_held", summary.NightsHeld);
        Time(json, "first_short", summary.FirstShort);
        Time(json, "dry_at", summary.DryAt);
        Number(json, "gas_used_kg", summary.GasUsed.Kilograms);
        Number(json, "gas_heat_mj", summary.GasHeat.Megajoules);
        TakersJson.Gas(json, summary.GasByAppliance);
        Number(json, "left_at_start_kg", summary.LeftAtStart.Kilograms);
        Number(json, "left_at_end_kg", summary.LeftAtEnd.Kilograms);
        json.WriteNumber("cylinder_changes", summary.CylinderChanges);
        Number(json, "blanket_energy_wh", summary.BlanketEnergy.WattHours);
        Number(json, "outside_low_c", summary.OutsideLow.DegreesCelsius);
        Number(json, "inside_low_c", summary.InsideLow?.DegreesCelsius);
        Number(json, "short_time_s", summary.ShortTime.Seconds);
        json.WriteString("first_out", WireNames.Of(summary.FirstOut));
        Time(json, "flat_at", summary.FlatAt);
        Number(json, "voltage_gone_s", summary.VoltageGone.Seconds);
        json.WriteEndObject();
    }

    private static void Night(Utf8JsonWriter json, NightReport night)
    {
        json.WriteStartObject();
        json.WriteNumber("number", night.Number);
        Time(json, "from", night.From);
        Time(json, "to", night.To);
        json.WriteString("verdict", WireNames.Of(night.Verdict));
        Number(json, "outside_low_c", night.OutsideLow.DegreesCelsius);
        Number(json, "inside_low_c", night.InsideLow?.DegreesCelsius);
        Time(json, "inside_low_at", night.InsideLowAt);
        Number(json, "burner_time_s", night.BurnerTime.Seconds);
        json.WriteNumber("burner_starts", night.BurnerStarts);
        Number(json, "gas_used_kg", night.GasUsed.Kilograms);
        Number(json, "gas_heat_mj", night.GasHeat.Megajoules);
        TakersJson.Gas(json, night.GasByAppliance);
        Number(json, "left_at_dawn_kg", night.LeftAtDawn?.Kilograms);
        Number(json, "left_at_end_kg", night.LeftAtEnd.Kilograms);
        NightJson.EachLeft(json, night);
        json.WriteNumber("cylinder_changes", night.CylinderChanges);
        json.WriteNumber("reserve_starts", night.ReserveStarts);
        Number(json, "blanket_energy_wh", night.BlanketEnergy.WattHours);
        Number(json, "other_heat_wh", night.OtherHeat.WattHours);
        Number(json, "cylinder_temperature_max_c", night.HottestCylinder.DegreesCelsius);
        Number(json, "pressure_min_kpa_gauge", night.CylinderPressureLow.Kilopascals);
        Number(json, "liquid_temperature_min_c", night.LiquidLow.DegreesCelsius);
        Number(json, "delivery_pressure_min_kpa_gauge", night.DeliveryPressureLow?.Kilopascals);
        NightJson.FirstShort(json, night);
        Number(json, "short_time_s", night.ShortTime.Seconds);
        json.WriteString("first_to_starve", night.FirstToStarve);
        Number(json, "left_at_first_short_kg", night.LeftAtFirstShort?.Kilograms);
        Time(json, "dry_at", night.DryAt);
        Number(json, "below_set_point_k", night.BelowSetPoint.Kelvins);
        NightJson.Freezing(json, night);
        TakersJson.Water(json, night);
        Number(json, "steady_supply_at_low_w", Watts(night.SteadySupplyAtLow));
        Number(json, "allowed_liquid_temperature_c", night.AllowedLiquid?.DegreesCelsius);
        Number(json, "demand_at_low_w", Watts(night.DemandAtLow));
        NightJson.Blends(json, night);
        NightJson.Damp(json, night);
        json.WriteString("first_out", WireNames.Of(night.FirstOut));
        PowerJson.Night(json, night.Power);
        json.WriteEndObject();
    }

    private static void Event(Utf8JsonWriter json, ReportedEvent reported)
    {
        json.WriteStartObject();
        Time(json, "time", reported.Time);
        json.WriteString("kind", WireNames.Of(reported.Kind));
        Number(json, "inside_c", reported.Inside_K - Zero_K);
        Number(json, "liquid_temperature_c", reported.Liquid_K - Zero_K);
        Number(json, "pressure_kpa_gauge", reported.CylinderPressure_Pa / 1000);
        Number(json, "left_kg", reported.Left_kg);
        json.WriteNumber("cylinder", reported.Cylinder + 1);
        json.WriteString("node", reported.Node);
        json.WriteEndObject();
    }

    private static void Ledger(Utf8JsonWriter json, LedgerBalance ledger)
    {
        json.WriteStartObject("ledger");
        json.WriteBoolean("closes", ledger.Closes);
        Exact(json, "energy_residual", ledger.WorstEnergy_frac);
        Exact(json, "mass_residual", ledger.Mass_frac);
        Exact(json, "cylinder_energy_residual", ledger.CylinderEnergy_frac);
        Exact(json, "coach_energy_residual", ledger.CoachEnergy_frac);
        Exact(json, "fuel_energy_residual", ledger.FuelEnergy_frac);
        Exact(json, "cylinder_energy_j", ledger.CylinderEnergy_J);
        Exact(json, "coach_energy_j", ledger.CoachEnergy_J);
        Exact(json, "fuel_energy_j", ledger.FuelEnergy_J);
        Exact(json, "mass_kg", ledger.Mass_kg);
        Exact(json, "electric_energy_residual", ledger.Electric_frac);
        Exact(json, "electric_energy_j", ledger.Electric_J);
        json.WriteEndObject();
    }

    private static double Watts(Power power) => (double)power.Watts;
}
