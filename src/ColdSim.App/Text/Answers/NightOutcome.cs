using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text.Answers;

/// <summary>How a night went, in the few words that every answer uses for it.</summary>
internal static class NightOutcome
{
    private static readonly TimeSpan Same = TimeSpan.FromMinutes(1);

    /// <summary>What fails in a night that does not hold, such as "gas is short from 03:19"; with the gas that is left then.</summary>
    public static string Failure(NightReport night, RunReport run, UnitStyle units)
    {
        string left = Left(night, run, units), from = From(night.FirstFailure, night);
        return night.Verdict switch
        {
            Verdict.GasGone when night.FirstShort is { } first && night.DryAt is { } dry && dry - first > Same
                => $"gas is short {From(first, night)}{left}, and out at {ClockText.Clock(dry)}",
            Verdict.WaterFreezes => FrozenFirst(night) is { } water ? $"water in {water} freezes {from}" : $"water is frozen {from}",
            _ => $"{VerdictWords.State(night.Verdict)} {from}{left}{(night.Verdict == Verdict.GasShort && night.DryAt is { } gone ? $", and out at {ClockText.Clock(gone)}" : "")}",
        };
    }

    /// <summary>How a night went in two or three words for a table, such as "FAILS: gas short 03:19".</summary>
    public static string Short(NightReport night) => night.Verdict == Verdict.Holds ? "holds" : $"FAILS: {ShortFailure(night)}";

    /// <summary>What fails in two or three words, such as "gas short 03:19".</summary>
    public static string ShortFailure(NightReport night) => $"{VerdictWords.Short(night.Verdict)}{At(night.FirstFailure)}";

    /// <summary>What else fails in a night that fails, a sentence; empty where nothing does.</summary>
    public static string Also(NightReport night)
    {
        if (night.Verdict != Verdict.BatteryFlat && night.Power is { FlatAt: { } flat, VoltageGone: { Minutes: >= 1 } gone })
            return $"The battery is flat as well, from {ClockText.Clock(flat)}, for {ClockText.Span(gone)} in all.";
        return night.Verdict is not (Verdict.GasShort or Verdict.GasGone) && night.ShortTime.Minutes >= 1 && night.FirstShort is { } first
            ? $"Gas is short as well, from {ClockText.Clock(first)}, for {ClockText.Span(night.ShortTime)} in all." : "";
    }

    private static string? FrozenFirst(NightReport night)
        => night.Water.Where(w => w.HoldsWater && w.FreezesAt is not null).MinBy(w => w.FreezesAt)?.Name;

    /// <summary>How cold it gets inside in a night that fails, a sentence; empty without a coach.</summary>
    public static string Inside(NightReport night, UnitStyle units)
    {
        if (night.InsideLow is not { } low || night.InsideLowAt is not { } at)
            return "";
        if (night.FirstFailure is { } fails && at < fails && night.FreezingAt is null)
            return $"Inside stays at {units.WholeTemperature(low.Kelvins)} or above.";
        string lowest = $"{units.WholeTemperature(low.Kelvins)} about {ClockText.Clock(Rounded(at))}";
        return night.FreezingAt is not { } freezing ? $"Inside falls to {lowest}."
            : freezing - night.From < Same ? $"Inside is below freezing from the start and falls to {lowest}."
            : low.Kelvins > CoolDown.Freezing_K - 0.5 ? $"Inside falls to freezing about {ClockText.Clock(Rounded(freezing))}."
            : $"Inside falls below freezing about {ClockText.Clock(Rounded(freezing))} and to {lowest}.";
    }

    /// <summary>Water that begins to freeze in a night, a sentence; empty where none does.</summary>
    public static string Water(NightReport night)
    {
        if (night.Verdict == Verdict.WaterFreezes)
            return "";
        string[] frozen = [.. night.Water.Where(w => w.HoldsWater && w.FreezesAt is not null).OrderBy(w => w.FreezesAt)
            .Select(w => $"{w.Name} about {ClockText.Clock(Rounded(w.FreezesAt!.Value))}")];
        return frozen.Length == 0 ? "" : $"Water begins to freeze: {string.Join(", ", frozen)}.";
    }

    /// <summary>To five minutes, as finely as a time hours ahead is known.</summary>
    public static DateTimeOffset Rounded(DateTimeOffset time)
    {
        TimeSpan five = TimeSpan.FromMinutes(5);
        return new(time.Ticks - time.Ticks % five.Ticks + (time.Ticks % five.Ticks * 2 >= five.Ticks ? five.Ticks : 0), time.Offset);
    }

    private static string From(DateTimeOffset? time, NightReport night)
        => time is not { } at || at - night.From < Same ? "from the start" : $"from {ClockText.Clock(at)}";

    private static string At(DateTimeOffset? time) => time is { } at ? $" {ClockText.Clock(at)}" : "";

    private static string Left(NightReport night, RunReport run, UnitStyle units)
    {
        Mass? left = night.Verdict switch
        {
            Verdict.BatteryFlat => night.Power?.GasLeftAtFlat,
            Verdict.GasShort or Verdict.GasGone => night.LeftAtFirstShort,
            _ => null,
        };
        string of = night.Verdict == Verdict.BatteryFlat ? $" of {CylinderWords.Gas(run.Scenario.Rig)}" : "";
        return left is { } mass ? $", {units.RoundMass(mass.Kilograms)}{of} left" : "";
    }
}
