using System.Text.Json;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A trip as JSON, for programs; docs/json.md describes every key.</summary>
public static class TripJson
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the trip.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(TripReport report, Stream output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            json.WriteString("title", report.Run.Scenario.Title);
            Time(json, "start", report.Run.Scenario.Start);
            json.WriteString("end", WireNames.Of(report.Run.End));
            json.WriteStartArray("cylinders");
            for (int i = 0; i < report.Run.Scenario.Rig.Cylinders.Count; i++)
                json.WriteStringValue(report.Run.Scenario.Rig.NameOf(i));
            json.WriteEndArray();
            json.WriteStartArray("stops");
            foreach (TripStop stop in report.Trip.Stops)
                Stop(json, stop);
            json.WriteEndArray();
            json.WriteStartArray("nights");
            foreach (TripNight night in report.Nights)
                Night(json, night);
            json.WriteEndArray();
            json.WriteStartArray("refills");
            foreach (TripRefill refill in report.Refills)
                Refill(json, refill);
            json.WriteEndArray();
            Totals(json, report);
            Texts(json, "assumptions", report.Run.Scenario.Assumptions);
            json.WriteEndObject();
        }
        output.WriteByte((byte)'\n');
    }

    /// <summary>The word for what is done.</summary>
    public static string Of(RefillKind kind) => kind switch
    {
        RefillKind.Fill => "fill",
        RefillKind.Exchange => "exchange",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    /// <summary>The word for what ended a filling.</summary>
    public static string Of(FillingEnd end) => end switch
    {
        FillingEnd.Amount => "amount",
        FillingEnd.Volume => "volume",
        FillingEnd.Weight => "weight",
        FillingEnd.Full => "full_before",
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, null),
    };

    /// <summary>The word for how long a refill can wait.</summary>
    public static string Of(WaitKind kind) => kind switch
    {
        WaitKind.NotNeeded => "not_needed",
        WaitKind.CanWait => "can_wait",
        WaitKind.CannotWait => "cannot_wait",
        WaitKind.NoLaterDay => "no_later_day",
        WaitKind.Refused => "refused",
        WaitKind.NotKnown => "not_known",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    private static void Stop(Utf8JsonWriter json, TripStop stop)
    {
        json.WriteStartObject();
        json.WriteString("name", stop.Name);
        Time(json, "from", stop.From);
        Time(json, "to", stop.To);
        Number(json, "elevation_m", stop.Site.Elevation_m);
        json.WriteBoolean("hookup", stop.Site.Hookup);
        json.WriteEndObject();
    }

    private static void Night(Utf8JsonWriter json, TripNight trip)
    {
        NightReport night = trip.Night;
        json.WriteStartObject();
        json.WriteNumber("number", night.Number);
        Time(json, "from", night.From);
        Time(json, "to", night.To);
        if (trip.Stop is { } stop)
            json.WriteNumber("stop", stop + 1);
        else
            json.WriteNull("stop");
        json.WriteString("verdict", WireNames.Of(night.Verdict));
        Number(json, "outside_low_c", night.OutsideLow.DegreesCelsius);
        Number(json, "inside_low_c", night.InsideLow?.DegreesCelsius);
        Number(json, "gas_used_kg", night.GasUsed.Kilograms);
        TakersJson.Gas(json, night.GasByAppliance);
        NightJson.EachLeft(json, night);
        Number(json, "margin_w", trip.Margin is { } margin ? (double)margin.Surplus.Watts : null);
        Time(json, "margin_at", trip.Margin?.At);
        json.WriteNumber("cylinder_changes", night.CylinderChanges);
        json.WriteNumber("reserve_starts", night.ReserveStarts);
        Number(json, "blanket_energy_wh", night.BlanketEnergy.WattHours);
        json.WriteStartArray("refills");
        foreach (int refill in trip.Refills)
            json.WriteNumberValue(refill + 1);
        json.WriteEndArray();
        NightJson.FirstShort(json, night);
        NightJson.Freezing(json, night);
        TakersJson.Water(json, night);
        NightJson.Blends(json, night);
        NightJson.Damp(json, night);
        json.WriteString("first_out", WireNames.Of(night.FirstOut));
        PowerJson.Night(json, night.Power);
        json.WriteEndObject();
    }

    private static void Refill(Utf8JsonWriter json, TripRefill trip)
    {
        RefillOutcome? outcome = trip.Outcome;
        FilledCylinder? after = outcome?.After;
        json.WriteStartObject();
        Time(json, "at", trip.Refill.At);
        json.WriteString("station", trip.Refill.Station);
        json.WriteNumber("cylinder", trip.Refill.Cylinder + 1);
        json.WriteString("kind", Of(trip.Refill.Kind));
        json.WriteBoolean("refused", outcome?.Refused ?? false);
        Number(json, "before_kg", outcome?.Before.Propane_kg);
        Number(json, "after_kg", after?.Propane_kg);
        Number(json, "bought_kg", outcome?.Bought_kg);
        Number(json, "left_behind_kg", outcome?.LeftBehind_kg);
        json.WriteString("stopped_by", after is { } filled ? Of(filled.End) : null);
        Number(json, "liquid_of_volume", after?.Liquid_frac);
        Number(json, "liquid_temperature_c", after?.Liquid_K - Zero_K);
        Number(json, "over_weight_kg", after?.OverWeight_kg);
        Number(json, "liquid_full_at_c", after?.LiquidFull_K - Zero_K);
        Number(json, "carried_kg", trip.Carried?.Kilograms);
        json.WriteBoolean("too_heavy", trip.TooHeavy);
        Number(json, "paid", outcome?.Paid);
        json.WriteString("wait", Of(trip.Wait.Kind));
        Time(json, "latest", trip.Wait.Latest);
        Time(json, "too_late", trip.Wait.Next);
        Time(json, "worse_night", trip.Wait.Worse?.From);
        json.WriteString("worse_verdict", trip.Wait.Worse is { } worse ? WireNames.Of(worse.Verdict) : null);
        json.WriteEndObject();
    }

    private static void Totals(Utf8JsonWriter json, TripReport report)
    {
        RunSummary summary = report.Run.Summary;
        json.WriteStartObject("totals");
        json.WriteString("verdict", WireNames.Of(summary.Verdict));
        json.WriteNumber("nights", summary.Nights);
        json.WriteNumber("nights_held", summary.NightsHeld);
        Number(json, "left_at_start_kg", summary.LeftAtStart.Kilograms);
        Number(json, "bought_kg", report.Bought.Kilograms);
        Number(json, "left_behind_kg", report.LeftBehind.Kilograms);
        Number(json, "gas_used_kg", summary.GasUsed.Kilograms);
        TakersJson.Gas(json, summary.GasByAppliance);
        Number(json, "left_at_end_kg", summary.LeftAtEnd.Kilograms);
        Number(json, "blanket_energy_wh", summary.BlanketEnergy.WattHours);
        json.WriteNumber("cylinder_changes", summary.CylinderChanges);
        json.WriteString("currency", report.Run.Scenario.Prices.Currency);
        Number(json, "paid", report.Money.Paid);
        Number(json, "from_stock", report.Money.FromStock);
        Number(json, "cost", report.Money.Cost);
        Number(json, "carries_kg", report.Trip.Carries_kg);
        json.WriteBoolean("ledger_closes", report.Run.Ledger.Closes);
        json.WriteEndObject();
    }
}
