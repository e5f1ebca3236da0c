using ColdSim.Planning.Nights;

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
            parts.Add($"{string.Join(", ", safe)} {(safe.Length == 1 ? "does" : "do")} not freeze within {RoughSpan.Of(stop.Watched)}");
        return parts.Count == 0 ? $"nothing freezes within {RoughSpan.Of(stop.Watched)}." : string.Join("; ", parts) + ".";
    }

    /// <summary>What becomes of the air inside, such as "inside is at 50 °F after 5 min and at freezing after 45 min".</summary>
    internal static string Inside(CoolDown stop, UnitStyle units)
        => (stop.FiftyAfter, stop.FreezingAfter) switch
        {
            (_, { Seconds: <= 0 }) => "inside is below freezing already",
            ({ Seconds: <= 0 }, null) => $"inside is at {units.WholeTemperature(CoolDown.Fifty_K)} or below already and does not reach freezing within {RoughSpan.Of(stop.Watched)}",
            ({ Seconds: <= 0 }, { } freezing) => $"inside is at {units.WholeTemperature(CoolDown.Fifty_K)} or below already and at freezing after {RoughSpan.Of(freezing)}",
            (null, _) => $"inside stays above {units.WholeTemperature(CoolDown.Fifty_K)} for all of {RoughSpan.Of(stop.Watched)}",
            ({ } fifty, null) => $"inside is at {units.WholeTemperature(CoolDown.Fifty_K)} after {RoughSpan.Of(fifty)} and does not reach freezing within {RoughSpan.Of(stop.Watched)}",
            ({ } fifty, { } freezing) => $"inside is at {units.WholeTemperature(CoolDown.Fifty_K)} after {RoughSpan.Of(fifty)} and at freezing after {RoughSpan.Of(freezing)}",
        };

    private static string Water(WaterAfter water)
        => water.SolidAfter is { Seconds: <= 0 } ? $"{water.Name} is all ice already"
            : water.BeginsAfter!.Value.Seconds <= 0
            ? $"{water.Name} is freezing already{Solid(water)}"
            : $"{water.Name} begins to freeze after {RoughSpan.Of(water.BeginsAfter.Value)}{Solid(water)}";

    private static string Solid(WaterAfter water) => water.SolidAfter is { } solid ? $" and is all ice after {RoughSpan.Of(solid)}" : "";
}
