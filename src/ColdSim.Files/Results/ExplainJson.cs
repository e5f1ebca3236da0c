using System.Text.Json;
using ColdSim.Planning.Explain;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>An explanation as JSON, for programs; docs/json.md describes every key.</summary>
public static class ExplainJson
{
    private const double Zero_K = 273.15;
    private const double WattHour_J = 3600;

    /// <summary>Writes the explanation.</summary>
    /// <param name="explanation">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(Explanation explanation, Stream output)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", explanation.Report.Scenario.Title);
            json.WriteString("verdict", WireNames.Of(explanation.Report.Summary.Verdict));
            json.WriteBoolean("at_time", explanation.AtTime);
            Time(json, "shortage", explanation.Shortage);
            Time(json, "flat_at", explanation.Flat?.Power?.FlatAt);
            if (explanation.Night > 0)
                json.WriteNumber("night", explanation.Night);
            else
                json.WriteNull("night");
            Binding(json, explanation.Limit);
            Chain(json, explanation.Chain);
            json.WriteStartArray("remedies");
            foreach (Remedy remedy in explanation.Remedies)
                Remedied(json, remedy);
            json.WriteEndArray();
            json.WriteStartArray("look_alikes");
            foreach (LookAlike look in LookAlikes.All)
                Alike(json, look);
            json.WriteEndArray();
            Texts(json, "assumptions", explanation.Report.Scenario.Assumptions);
            json.WriteEndObject();
        }
        output.WriteByte((byte)'\n');
    }

    /// <summary>The word for a limit.</summary>
    public static string Word(Limit limit) => limit switch
    {
        Limit.HeatIntoLiquid => "heat_into_liquid",
        Limit.LittleLiquid => "little_liquid",
        Limit.Regulator => "regulator",
        Limit.Appliances => "appliances",
        Limit.Altitude => "altitude",
        Limit.LiquidGone => "liquid_gone",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
    };

    /// <summary>The word for a remedy.</summary>
    public static string Word(RemedyKind kind) => kind switch
    {
        RemedyKind.Blanket => "blanket",
        RemedyKind.Fill => "fill",
        RemedyKind.PurePropane => "pure_propane",
        RemedyKind.Size => "size",
        RemedyKind.SecondOpen => "second_open",
        RemedyKind.SecondChangeover => "second_changeover",
        RemedyKind.NightSetPoint => "night_set_point",
        RemedyKind.ApplianceOff => "appliance_off",
        RemedyKind.Regulator => "regulator",
        RemedyKind.Battery => "battery",
        RemedyKind.PanelsClear => "panels_clear",
        RemedyKind.MorePanels => "more_panels",
        RemedyKind.LoadOff => "load_off",
        RemedyKind.ShorePower => "shore_power",
        RemedyKind.Generator => "generator",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    private static void Binding(Utf8JsonWriter json, BindingLimit? limit)
    {
        if (limit is null)
        {
            json.WriteNull("limit");
            return;
        }

        json.WriteStartObject("limit");
        if (limit.Binds is { } binds)
            json.WriteString("binds", Word(binds));
        else
            json.WriteNull("binds");
        Texts(json, "ties", [.. limit.Ties.Select(Word)]);
        Number(json, "eased_by", limit.Part_frac);
        json.WriteStartArray("eased");
        foreach (LimitSensitivity eased in limit.Eased)
        {
            json.WriteStartObject();
            json.WriteString("limit", Word(eased.Limit));
            json.WriteBoolean("applies", eased.Applies);
            Time(json, "first_short", eased.FirstShort);
            json.WriteBoolean("gone", eased.GoneAt_frac is not null);
            Number(json, "delay_s", eased.Delay_s);
            Number(json, "gone_at", eased.GoneAt_frac);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Chain(Utf8JsonWriter json, ChainOfCause chain)
    {
        json.WriteStartObject("chain");
        Time(json, "from", chain.From);
        Time(json, "to", chain.To);
        json.WriteString("cylinder", chain.Cylinder);
        Number(json, "burner_time_s", chain.Burner_s);
        Number(json, "gas_given_kg", chain.Given_kg);
        Number(json, "evaporation_kj", chain.Evaporation_J / 1000);
        Number(json, "surroundings_kj", chain.Surroundings_J / 1000);
        Number(json, "sun_kj", chain.Sun_J / 1000);
        Number(json, "blanket_kj", chain.Blanket_J / 1000);
        Number(json, "wetted_wall_m2", chain.WettedWall_m2);
        Number(json, "whole_wall_m2", chain.WholeWall_m2);
        json.WriteBoolean("has_liquid", chain.HasLiquid);
        Number(json, "left_kg", chain.Left_kg);
        Number(json, "liquid_from_c", chain.LiquidFrom_K - Zero_K);
        Number(json, "liquid_to_c", chain.LiquidTo_K - Zero_K);
        Number(json, "outside_c", chain.Outside_K - Zero_K);
        Number(json, "inside_c", chain.Inside_K - Zero_K);
        Number(json, "pressure_kpa_gauge", chain.Pressure_Pa / 1000);
        Number(json, "regulator_could_pass_w", chain.CanGive_W);
        Number(json, "asked_w", chain.Asked_W);
        if (chain.Liquid is { } liquid)
            NightJson.Parts(json, "liquid", liquid);
        else
            json.WriteNull("liquid");
        Number(json, "left_behind_kg", chain.Blend?.LeftBehind?.Kilograms);
        Number(json, "left_behind_at_c", chain.Blend?.LeftBehindAt.DegreesCelsius);
        json.WriteEndObject();
    }

    private static void Remedied(Utf8JsonWriter json, Remedy remedy)
    {
        json.WriteStartObject();
        json.WriteString("remedy", Word(remedy.Kind));
        json.WriteString("name", remedy.Name);
        json.WriteBoolean("within_reach", remedy.Value is not null);
        Number(json, "least", Wire(remedy.Kind, remedy.Value));
        Number(json, "tolerance", remedy.Kind == RemedyKind.Battery ? remedy.Tolerance / WattHour_J : remedy.Tolerance);
        Number(json, "reach", Wire(remedy.Kind, remedy.Reach));
        json.WriteBoolean("holds_all_nights", remedy.HoldsAllNights);
        json.WriteBoolean("stands_on_ground", remedy.IsOnGround);
        Number(json, "contents_kg", remedy.Value is null ? null : remedy.Contents_kg);
        Number(json, "electricity_wh", remedy.Value is null ? null : remedy.Electricity_J / WattHour_J);
        json.WriteEndObject();
    }

    private static double? Wire(RemedyKind kind, double? value) => kind switch
    {
        RemedyKind.NightSetPoint => value - Zero_K,
        RemedyKind.Battery => value / WattHour_J,
        _ => value,
    };

    private static void Alike(Utf8JsonWriter json, LookAlike look)
    {
        json.WriteStartObject();
        json.WriteString("trouble", look.Trouble);
        json.WriteString("signs", look.Signs);
        json.WriteString("source", look.Source);
        json.WriteEndObject();
    }
}
