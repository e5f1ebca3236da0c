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
        string left = Left(night, run, units);
        return night.Verdict switch
        {
            Verdict.RunsFlat => $"the battery is flat {From(night.Power?.FlatAt, night)}{left}",
            Verdict.RunsDry when night.FirstShort is { } first && night.DryAt is { } dry && dry - first > Same
                => $"gas is short {From(first, night)}{left}, and out at {ClockText.Clock(dry)}",
            Verdict.RunsDry => $"the gas is out {From(night.DryAt, night)}",
            _ => $"gas is short {From(night.FirstShort, night)}{left}",
        };
    }

    /// <summary>How a night went in two or three words for a table, such as "FAILS: gas short 03:19".</summary>
    public static string Short(NightReport night) => night.Verdict == Verdict.Holds ? "holds" : $"FAILS: {ShortFailure(night)}";

    /// <summary>What fails in two or three words, such as "gas short 03:19".</summary>
    public static string ShortFailure(NightReport night) => night.Verdict switch
    {
        Verdict.RunsFlat => $"battery flat{At(night.Power?.FlatAt)}",
        Verdict.RunsDry when night.FirstShort is { } first && night.DryAt is { } dry && dry - first > Same => $"gas short{At(first)}, out{At(dry)}",
        Verdict.RunsDry => $"gas out{At(night.DryAt)}",
        _ => $"gas short{At(night.FirstShort)}",
    };

    /// <summary>The instant of the failure, where one is known.</summary>
    public static DateTimeOffset? FailsAt(NightReport night) => night.Verdict switch
    {
        Verdict.Holds => null,
        Verdict.RunsFlat => night.Power?.FlatAt,
        _ => night.FirstShort ?? night.DryAt,
    };

    /// <summary>How cold it gets inside in a night that fails, a sentence; empty without a coach.</summary>
    public static string Inside(NightReport night, UnitStyle units)
    {
        if (night.InsideLow is not { } low || night.InsideLowAt is not { } at)
            return "";
        if (FailsAt(night) is { } fails && at < fails && night.FreezingAt is null)
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
        Mass? left = night.Verdict == Verdict.RunsFlat ? night.Power?.GasLeftAtFlat : night.LeftAtFirstShort;
        string of = night.Verdict == Verdict.RunsFlat ? $" of {CylinderWords.Gas(run.Scenario.Rig)}" : "";
        return left is { } mass ? $", {units.RoundMass(mass.Kilograms)}{of} left" : "";
    }
}
