using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What is said of a night whose battery is flat before gas is short: when, how much gas is left, and how cold it gets.</summary>
internal static class FlatSentence
{
    private static readonly TimeSpan Same = TimeSpan.FromMinutes(1);

    public static string Predicate(NightReport night, RunReport run, UnitStyle units)
    {
        NightPower power = night.Power!;
        DateTimeOffset at = power.FlatAt!.Value;
        string begins = at - night.From < Same ? "is without voltage from its start" : $"has its battery flat at {ClockText.Clock(at)}";
        string gas = $"with {NightSentence.Mass(power.GasLeftAtFlat!.Value, units)} of {GasWord.Of(run.Scenario.Rig)} left";
        string stops = run.Scenario.Rig.Furnace is null ? "what draws on it stands still" : "the furnace's board is dead";
        List<string> then = [$"{stops} for {ClockText.Span(power.VoltageGone)} in all", .. FailingSentence.Inside(night, units), .. GasToo(night)];
        return $"{begins} {gas}: {(then.Count == 1 ? then[0] : string.Join(", ", then.Take(then.Count - 1)) + ", and " + then[^1])}";
    }

    private static IEnumerable<string> GasToo(NightReport night)
    {
        if (night.DryAt is { } dry)
            yield return $"the cylinder is dry at {ClockText.Clock(dry)} as well";
        else if (night.ShortTime.Minutes >= 1)
            yield return $"gas is short for {ClockText.Span(night.ShortTime)} as well";
    }
}
