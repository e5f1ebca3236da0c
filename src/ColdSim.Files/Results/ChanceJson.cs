using System.Text.Json;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Forecasts;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A chance of holding as JSON, for programs; docs/json.md describes every key.</summary>
public static class ChanceJson
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the chance.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(ChanceReport report, Stream output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", report.Scenario.Title);
            Time(json, "start", report.Scenario.Start);
            json.WriteNumber("members_asked", report.Asked);
            json.WriteNumber("members", report.Done);
            Number(json, "seed", report.Seed);
            json.WriteStartArray("years");
            foreach (int year in report.Years)
                json.WriteNumberValue(year);
            json.WriteEndArray();
            LeftOut(json, report.YearsLeftOut);
            Number(json, "wanted", report.Scenario.WantedChance_frac);
            json.WriteString("verdict_without_errors", WireNames.Of(report.Plain.Summary.Verdict));
            Chance(json, "all_nights", report.AllNights);
            Chance(json, "runs_dry", report.RunsDry);
            Time(json, "dry_p10", report.Dry.Low);
            Time(json, "dry_p50", report.Dry.Median);
            Time(json, "dry_p90", report.Dry.High);
            Nights(json, report);
            Influences(json, report);
            Options(json, report);
            Errors(json, report.Scenario.Errors);
            Fan(json, report);
            Texts(json, "assumptions", report.Scenario.Assumptions);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    /// <summary>The words for what is not known; a promise, as all words here.</summary>
    internal static string Word(Uncertainty of) => of switch
    {
        Uncertainty.Temperature => "temperature",
        Uncertainty.Wind => "wind",
        Uncertainty.HeatLoss => "heat_loss",
        Uncertainty.Infiltration => "infiltration",
        Uncertainty.Contents => "contents",
        Uncertainty.SetPoint => "set_point",
        Uncertainty.DoorOpenings => "door_openings",
        _ => throw new ArgumentOutOfRangeException(nameof(of), of, null),
    };

    /// <summary>The words for why a year is left out.</summary>
    internal static string Word(WhyLeftOut why) => why switch
    {
        WhyLeftOut.Gap => "gap",
        WhyLeftOut.Begins => "record_begins",
        WhyLeftOut.Ends => "record_ends",
        _ => throw new ArgumentOutOfRangeException(nameof(why), why, null),
    };

    private static void LeftOut(Utf8JsonWriter json, IReadOnlyList<YearLeftOut> years)
    {
        json.WriteStartArray("years_left_out");
        foreach (YearLeftOut year in years)
        {
            json.WriteStartObject();
            json.WriteNumber("year", year.Year);
            json.WriteString("why", Word(year.Why));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Chance(Utf8JsonWriter json, string key, Proportion chance)
    {
        json.WriteStartObject(key);
        Figures(json, chance);
        json.WriteEndObject();
    }

    private static void Figures(Utf8JsonWriter json, Proportion chance)
    {
        json.WriteNumber("count", chance.Count);
        Number(json, "chance", chance.Chance_frac);
        Number(json, "low", chance.Low_frac);
        Number(json, "high", chance.High_frac);
    }

    private static void Nights(Utf8JsonWriter json, ChanceReport report)
    {
        json.WriteStartArray("nights");
        foreach (NightChance night in report.Nights)
        {
            json.WriteStartObject();
            json.WriteNumber("number", night.Night.Number);
            Time(json, "from", night.Night.From);
            Time(json, "to", night.Night.To);
            Figures(json, night.Holds);
            Spread(json, "left_at_dawn", "kg", night.LeftAtDawn_kg, 0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Influences(Utf8JsonWriter json, ChanceReport report)
    {
        json.WriteStartArray("influences");
        foreach (Influence influence in report.Influences)
        {
            json.WriteStartObject();
            json.WriteString("of", Word(influence.Of));
            Number(json, "rank_correlation", influence.Correlation);
            Number(json, "share", influence.Share_frac);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Options(Utf8JsonWriter json, ChanceReport report)
    {
        json.WriteStartArray("options");
        foreach (OptionChance option in report.Options)
        {
            json.WriteStartObject();
            json.WriteString("name", option.Option.Name);
            Figures(json, option.AllNights);
            Number(json, "cost", option.Cost);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("cheapest_as_wanted", report.Cheapest?.Option.Name);
    }

    private static void Errors(Utf8JsonWriter json, ErrorSizes errors)
    {
        json.WriteStartArray("errors");
        Error("temperature_error_k", errors.Temperature);
        Error("temperature_growth_k", errors.TemperatureGrowth);
        Error("correlation_time_s", errors.CorrelationTime);
        Error("tail", errors.Tail);
        Error("wind_error", errors.Wind);
        Error("heat_loss_error", errors.HeatLoss);
        Error("infiltration_error", errors.Infiltration);
        Error("reading_error_kg", errors.Reading);
        Error("set_point_error_k", errors.SetPoint);
        Error("door_openings", errors.DoorOpenings);
        json.WriteEndArray();

        void Error(string key, ErrorSize size)
        {
            json.WriteStartObject();
            json.WriteString("key", key);
            Number(json, "value", size.Value);
            json.WriteString("source", size.Source);
            json.WriteEndObject();
        }
    }

    private static void Fan(Utf8JsonWriter json, ChanceReport report)
    {
        json.WriteStartArray("fan");
        foreach (FanPoint point in report.Fan)
        {
            json.WriteStartObject();
            Time(json, "time", report.Scenario.Start.AddSeconds(point.Time_s));
            Spread(json, "inside", "c", point.Inside_K, Zero_K);
            Spread(json, "left", "kg", point.Left_kg, 0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Spread(Utf8JsonWriter json, string what, string unit, Spread<double>? spread, double zero)
    {
        Number(json, $"{what}_p10_{unit}", spread?.Low - zero);
        Number(json, $"{what}_p50_{unit}", spread?.Median - zero);
        Number(json, $"{what}_p90_{unit}", spread?.High - zero);
    }
}
