using System.Text.Json;
using ColdSim.Planning.Gauges;
using UnitsNet;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>Readings of a cylinder as JSON, for programs; docs/json.md describes every key.</summary>
public static class GaugeJson
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the answer.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(GaugeReport report, Stream output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            Cylinder(json, report.Question.Cylinder);
            Number(json, "liquid_temperature_c", report.Question.Temperature_K - Zero_K);
            Figures(json, "contents", report.Contents);
            Figures(json, "standard_uncertainty", report.Uncertainty);
            json.WriteStartArray("readings");
            for (int i = 0; i < report.Estimates.Count; i++)
                Reading(json, report.Estimates[i], report.Combined!.Weights[i]);
            json.WriteEndArray();
            Disagreement(json, report.Combined?.Disagreement);
            Pressure(json, report.Pressure);
            json.WriteStartArray("drift");
            if (report.Contents is { } contents)
            {
                foreach (ExpectedReading row in DriftTable.Of(
                    report.Question.Cylinder, contents.Mass, Enumerable.Range(-4, 9).Select(i => Temperature.FromDegreesCelsius(10 * i)), report.Question.Assumed_K))
                {
                    Drift(json, row);
                }
            }

            json.WriteEndArray();
            Texts(json, "assumptions", report.Assumptions);
            Texts(json, "cautions", report.Cautions);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    /// <summary>The word for a verdict on a pressure.</summary>
    internal static string Of(PressureVerdict verdict) => verdict switch
    {
        PressureVerdict.CannotTell => "cannot_tell",
        PressureVerdict.LiquidGone => "liquid_gone",
        PressureVerdict.LighterGasOrAir => "lighter_gas_or_air",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, null),
    };

    private static void Cylinder(Utf8JsonWriter json, GaugedCylinder cylinder)
    {
        json.WriteStartObject("cylinder");
        json.WriteString("name", cylinder.Name);
        json.WriteString("orientation", cylinder.Lies ? "horizontal" : "upright");
        Number(json, "water_capacity_l", 1000 * cylinder.Volume_m3);
        Number(json, "outside_diameter_m", cylinder.OutsideDiameter_m);
        Number(json, "legal_fill_kg", cylinder.LegalFill_kg);
        json.WriteEndObject();
    }

    private static void Figures(Utf8JsonWriter json, string key, ContentsFigures? figures)
    {
        if (figures is null)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        Number(json, "mass_kg", figures.Mass.Kilograms);
        Number(json, "volume_at_60f_l", figures.Volume.Liters);
        Number(json, "of_legal_fill", figures.OfLegalFill.DecimalFractions);
        Number(json, "heat_mj", figures.Energy.Megajoules);
        Number(json, "full_fire_s", figures.AtFullFire?.Seconds);
        json.WriteEndObject();
    }

    private static void Reading(Utf8JsonWriter json, ContentsEstimate estimate, double weight)
    {
        json.WriteStartObject();
        json.WriteString("reading", estimate.Reading);
        Number(json, "mass_kg", estimate.Mass.Kilograms);
        Number(json, "standard_uncertainty_kg", estimate.StandardUncertainty.Kilograms);
        Number(json, "weight", weight);
        json.WriteStartArray("errors");
        foreach (ErrorShare share in estimate.Shares)
        {
            json.WriteStartObject();
            json.WriteString("source", share.Input.Name);
            Number(json, "change_kg", share.Change_kg);
            json.WriteBoolean("shared", share.Input.Shared);
            json.WriteString("basis", share.Input.Basis);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Disagreement(Utf8JsonWriter json, Disagreement? disagreement)
    {
        if (disagreement is null)
        {
            json.WriteNull("disagreement");
            return;
        }

        json.WriteStartObject("disagreement");
        json.WriteString("more", disagreement.More);
        json.WriteString("less", disagreement.Less);
        Number(json, "gap_kg", disagreement.Gap.Kilograms);
        Number(json, "gap_in_uncertainties", disagreement.Times);
        json.WriteString("likeliest", disagreement.Cause.Name);
        Number(json, "likeliest_in_uncertainties", disagreement.CauseTimes);
        json.WriteEndObject();
    }

    private static void Pressure(Utf8JsonWriter json, PressureFinding? finding)
    {
        if (finding is null)
        {
            json.WriteNull("pressure");
            return;
        }

        json.WriteStartObject("pressure");
        json.WriteString("verdict", Of(finding.Verdict));
        Number(json, "reading_kpa_gauge", finding.Reading.Kilopascals);
        Number(json, "expected_low_kpa_gauge", finding.ExpectedLow?.Kilopascals);
        Number(json, "expected_high_kpa_gauge", finding.ExpectedHigh?.Kilopascals);
        Number(json, "boils_at_c", finding.LiquidTemperature?.DegreesCelsius);
        Number(json, "boils_with_ethane_at_c", finding.LiquidTemperatureWithEthane?.DegreesCelsius);
        json.WriteEndObject();
    }

    private static void Drift(Utf8JsonWriter json, ExpectedReading row)
    {
        json.WriteStartObject();
        Number(json, "temperature_c", row.Temperature.DegreesCelsius);
        Number(json, "liquid_of_volume", row.Liquid.DecimalFractions);
        Number(json, "level_m", row.Level.Meters);
        Number(json, "echo_us", row.Echo.Microseconds);
        Number(json, "uncorrected_echo_of_height", row.EchoShown.DecimalFractions);
        Number(json, "pressure_kpa", row.LiquidFull ? null : row.Pressure.Kilopascals);
        json.WriteBoolean("liquid_full", row.LiquidFull);
        json.WriteEndObject();
    }
}
