using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What is left once the furnace stops, in one sentence.</summary>
internal static class FreezeSentence
{
    /// <summary>Such as "If the furnace stops on Fri 15 Jan 03:00, inside is at 50 °F after 1 h 20 min, …".</summary>
    public static string If(CoolDown stop, UnitStyle units) => $"If the furnace stops on {ClockText.DayClock(stop.At)}, {Then(stop, units)}";

    /// <summary>The same for a run in which it does stop.</summary>
    public static string After(CoolDown stop, UnitStyle units) => $"The furnace stops on {ClockText.DayClock(stop.At)} and stays out: {Then(stop, units)}";

    /// <summary>The same from the first time without enough gas or voltage on, such as "From Thu 14 Jan 03:19 on: inside is …".</summary>
    public static string From(CoolDown failure, UnitStyle units) => $"From {ClockText.DayClock(failure.At)} on, {Then(failure, units)}";

    private static string Then(CoolDown stop, UnitStyle units)
    {
        List<string> parts = [];
        if (stop.Inside is not null)
            parts.Add($"{Inside(stop, units)}");
        parts.AddRange(stop.Water.Where(w => w.BeginsAfter is not null).OrderBy(w => w.BeginsAfter!.Value.Seconds).Select(Water));
        string[] safe = [.. stop.Water.Where(w => w.BeginsAfter is null).Select(w => w.Name)];
        if (safe.Length > 0)
            parts.Add($"{string.Join(", ", safe)} {(safe.Length == 1 ? "does" : "do")} not freeze within {Days(stop.Watched)}");
        return parts.Count == 0 ? $"nothing freezes within {Days(stop.Watched)}." : string.Join("; ", parts) + ".";
    }

    private static string Inside(CoolDown stop, UnitStyle units)
        => (stop.FiftyAfter, stop.FreezingAfter) switch
        {
            (_, { Seconds: <= 0 }) => "inside is below freezing already",
            ({ Seconds: <= 0 }, null) => $"inside is at {units.Temperature(CoolDown.Fifty_K)} or below already and does not reach freezing within {Days(stop.Watched)}",
            ({ Seconds: <= 0 }, { } freezing) => $"inside is at {units.Temperature(CoolDown.Fifty_K)} or below already and at freezing after {ClockText.Span(freezing)}",
            (null, _) => $"inside stays above {units.Temperature(CoolDown.Fifty_K)} for all of {Days(stop.Watched)}",
            ({ } fifty, null) => $"inside is at {units.Temperature(CoolDown.Fifty_K)} after {ClockText.Span(fifty)} and does not reach freezing within {Days(stop.Watched)}",
            ({ } fifty, { } freezing) => $"inside is at {units.Temperature(CoolDown.Fifty_K)} after {ClockText.Span(fifty)} and at freezing after {ClockText.Span(freezing)}",
        };

    private static string Water(WaterAfter water)
        => water.SolidAfter is { Seconds: <= 0 } ? $"{water.Name} is all ice already"
            : water.BeginsAfter!.Value.Seconds <= 0
            ? $"{water.Name} is freezing already{Solid(water)}"
            : $"{water.Name} begins to freeze after {ClockText.Span(water.BeginsAfter.Value)}{Solid(water)}";

    private static string Solid(WaterAfter water) => water.SolidAfter is { } solid ? $" and is all ice after {ClockText.Span(solid)}" : "";

    private static string Days(Duration span)
        => span.Days >= 2 ? $"{UnitStyle.Number(span.Days, 0)} days" : ClockText.Span(Duration.FromHours(Math.Round(span.Hours)));
}
