using ColdSim.App.Text.Answers;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What is left once the furnace stops, in one sentence.</summary>
internal static class FreezeSentence
{
    private const double NearlyOne_min = 15, Day_h = 20;

    /// <summary>Such as "If the furnace stops on Fri 15 Jan 03:00, inside drops to 50 °F about 03:35 and freezes …".</summary>
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

    /// <summary>What becomes of the air inside, such as "inside drops to 50 °F about 03:35 and freezes between 05:00 and 06:15".</summary>
    internal static string Inside(CoolDown stop, UnitStyle units)
    {
        string fifty = units.WholeTemperature(CoolDown.Fifty_K), within = RoughSpan.Of(stop.Watched);
        if (stop.FreezingAfter is { Seconds: <= 0 })
            return "inside is below freezing already";
        bool cold = stop.FiftyAfter is { Seconds: <= 0 };
        if (!cold && stop.FiftyAfter is null)
            return $"inside stays above {fifty} for all of {within}";
        string first = cold ? $"inside is at {fifty} or below already" : $"inside drops to {fifty} {When(stop, stop.FiftyAfter!.Value, stop.FiftyEarliest, stop.FiftyLatest)}";
        return stop.FreezingAfter is { } freezing
            ? $"{first} and freezes {When(stop, freezing, stop.FreezingEarliest, stop.FreezingLatest)}"
            : stop.FreezingEarliest is { } soonest ? $"{first} and may freeze from {At(stop, soonest)} on" : $"{first} and does not freeze within {within}";
    }

    // The range in which it happens, to five minutes; one time where the range is no wider than it is known anyway.
    private static string When(CoolDown stop, Duration own, Duration? earliest, Duration? latest)
    {
        Duration from = earliest ?? own;
        if (latest is not { } to)
            return earliest is null ? $"about {At(stop, own)}" : $"from {At(stop, from)} on, or not at all";
        return to.Minutes - from.Minutes <= NearlyOne_min ? $"about {At(stop, own)}" : $"between {At(stop, from)} and {At(stop, to)}";
    }

    private static string At(CoolDown stop, Duration after)
    {
        DateTimeOffset time = NightOutcome.Rounded(stop.At.AddSeconds(after.Seconds));
        return after.Hours < Day_h ? ClockText.Clock(time) : ClockText.ShortDayClock(time);
    }

    private static string Water(WaterAfter water)
        => water.SolidAfter is { Seconds: <= 0 } ? $"{water.Name} is all ice already"
            : water.BeginsAfter!.Value.Seconds <= 0
            ? $"{water.Name} is freezing already{Solid(water)}"
            : $"{water.Name} begins to freeze after {RoughSpan.Of(water.BeginsAfter.Value)}{Solid(water)}";

    private static string Solid(WaterAfter water) => water.SolidAfter is { } solid ? $" and is all ice after {RoughSpan.Of(solid)}" : "";
}
