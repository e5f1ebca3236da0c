using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What is said of a night that runs short or dry: what fails, when, with how much left, and how cold it gets.</summary>
internal static class FailingSentence
{
    private static readonly TimeSpan Same = TimeSpan.FromMinutes(1);

    public static string Predicate(NightReport night, RunReport run, UnitStyle units)
    {
        List<string> then = [.. Starves(night, run), .. Lockouts(night), .. Inside(night, units), .. ShortTime(night)];
        string after = then.Count switch
        {
            0 => NightSentence.Left(night, run, units),
            1 => then[0],
            _ => string.Join(", ", then.Take(then.Count - 1)) + ", and " + then[^1],
        };
        return $"{What(night, run, units)}: {Cause(night, units)}{after}";
    }

    private static string What(NightReport night, RunReport run, UnitStyle units)
    {
        string left = night.LeftAtFirstShort is { } kg ? $" with {NightSentence.Mass(kg, units)}" : "";
        if (night.Verdict == Verdict.RunsShort)
        {
            return night.FirstShort is not { } at ? "runs short"
                : at - night.From < Same ? $"is short from its start at {ClockText.Clock(at)}{StillIn(left, run)}"
                : $"runs short at {ClockText.Clock(at)}{StillIn(left, run)}";
        }

        if (night.DryAt is not { } dry || dry - night.From < Same)
            return "is dry from its start";
        if (night.FirstShort is not { } first || dry - first <= Same)
            return $"runs dry at {ClockText.Clock(dry)}";
        string begins = first - night.From < Same ? "is short from its start" : "runs short";
        return $"{begins} at {ClockText.Clock(first)}{(left == "" ? "" : left + " left")} and dry at {ClockText.Clock(dry)}";
    }

    private static string StillIn(string left, RunReport run) => left == "" ? "" : $"{left} of {run.Scenario.Rig.Gas.Name} still in the cylinder";

    private static string Cause(NightReport night, UnitStyle units)
    {
        string? tooLittle = night is { LiquidAtFirstShort: { } liquid, CylinderPressureAtFirstShort: { } pressure }
            ? $"the liquid is at {NightSentence.Temperature(liquid, units)} and gives {units.Pressure(pressure.Pascals)}, too little for what is asked"
            : null;
        if (night.Verdict == Verdict.RunsShort)
            return tooLittle is null ? "" : tooLittle + "; ";

        string? gone = night.LiquidGoneAt is { } at ? ClockText.Clock(at) : null;
        bool shortFirst = night.FirstShort < night.DryAt - Same;
        return tooLittle is not null && shortFirst ? $"{tooLittle}{(gone is null ? "" : $", and the last of it boils off at {gone}")}; "
            : gone is not null ? $"the last liquid boils off at {gone}; "
            : "no liquid is left; ";
    }

    private static IEnumerable<string> Starves(NightReport night, RunReport run)
    {
        if (WhoDrew.Applies(run) && night.FirstToStarve is { } first)
            yield return $"the {first} needs the most pressure of those that go short";
    }

    private static IEnumerable<string> Lockouts(NightReport night)
    {
        if (night.FirstLockout is not { } first)
            yield break;
        yield return $"the furnace locks out at {ClockText.Clock(first)}" + (night.Lockouts switch
        {
            1 => "",
            2 => " and once more",
            _ => $" and {night.Lockouts - 1} times more",
        });
    }

    public static IEnumerable<string> Inside(NightReport night, UnitStyle units)
    {
        if (night.InsideLow is not { } low || night.InsideLowAt is not { } at)
            yield break;
        string lowest = $"{NightSentence.Temperature(low, units)} at {ClockText.Clock(at)}";
        yield return night.FreezingAt is not { } freezing ? $"inside falls to {lowest}"
            : freezing - night.From < Same ? $"inside is freezing from its start and falls to {lowest}"
            : $"inside falls to freezing at {ClockText.Clock(freezing)} and to {lowest}";
    }

    private static IEnumerable<string> ShortTime(NightReport night)
    {
        if (night.ShortTime.Seconds > 0)
            yield return $"gas is short for {ClockText.Span(night.ShortTime)} in all";
    }
}
