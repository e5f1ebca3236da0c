using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Explain;

/// <summary>The limits on the gas that a cylinder can deliver.</summary>
public enum Limit
{
    /// <summary>Too little heat comes into the liquid.</summary>
    HeatIntoLiquid,

    /// <summary>The liquid wets too little of the wall.</summary>
    LittleLiquid,

    /// <summary>Regulator or connection pass too little.</summary>
    Regulator,

    /// <summary>Several appliances ask at once.</summary>
    Appliances,

    /// <summary>The air's pressure at this height.</summary>
    Altitude,

    /// <summary>There is too little propane, until none is left.</summary>
    LiquidGone,
}

/// <summary>What easing one limit does.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Applies">Whether the rig has such a limit at all.</param>
/// <param name="FirstShort">The first shortage then; null where it is gone.</param>
/// <param name="Delay_s">How much later that is; infinite where it is gone, negative where it comes earlier. [s]</param>
/// <param name="GoneAt_frac">Where it is gone, the least easing, in whole hundredths, with which it is; else null.</param>
/// <param name="DelayBefore_s">Where it is gone, the delay with a hundredth less easing than that. [s]</param>
public sealed record LimitSensitivity(
    Limit Limit, bool Applies, DateTimeOffset? FirstShort, double Delay_s, double? GoneAt_frac = null, double DelayBefore_s = 0);

/// <summary>Which limit binds: the one whose easing by a tenth delays the first shortage most, each tried by a run of its own.</summary>
/// <param name="Binds">The limit; null where none delays it by a minute, however far within <see cref="MostEasing_frac"/> it is eased.</param>
/// <param name="Ties">Others that do just as much.</param>
/// <param name="Part_frac">By how much each was eased.</param>
/// <param name="Eased">All limits in their order.</param>
/// <remarks>
/// A shortage that is gone counts as the longest delay; of several limits with which it is gone, the one binds that needs the least
/// easing for it, in whole hundredths, then the one that had delayed it most with a hundredth less. Delays are compared to the minute.
/// Where a tenth delays nothing the fraction is doubled for all limits.
/// </remarks>
public sealed record BindingLimit(Limit? Binds, IReadOnlyList<Limit> Ties, double Part_frac, IReadOnlyList<LimitSensitivity> Eased)
{
    /// <summary>The easing that is tried first.</summary>
    public const double FirstEasing_frac = 0.1;

    /// <summary>The most that is tried.</summary>
    public const double MostEasing_frac = 0.4;

    private const double Noticed_s = 60;
    private const double Hundredth = 0.01;

    /// <summary>Finds the limit whose easing delays the shortage most.</summary>
    /// <param name="scenario">A scenario that runs short.</param>
    /// <param name="firstShort">When it first does.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    public static BindingLimit Of(
        Scenario scenario, DateTimeOffset firstShort, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        for (double part_frac = FirstEasing_frac; ; part_frac *= 2)
        {
            double part = part_frac;
            LimitSensitivity[] eased = ParallelMap.Of(
                Relaxation.All.Count, i => Ease(Relaxation.All[i], scenario, firstShort, part, finished, cancel), workers, cancel);
            IGrouping<(double, double, double), LimitSensitivity> most = eased.Where(e => e.Applies).GroupBy(Worth).MaxBy(g => g.Key)!;
            if (most.First().Delay_s >= Noticed_s)
                return new BindingLimit(most.First().Limit, [.. most.Skip(1).Select(e => e.Limit)], part, eased);
            if (2 * part_frac > MostEasing_frac + Hundredth / 2)
                return new BindingLimit(null, [], part, eased);
        }
    }

    // Greater is better: gone with less easing, then later.
    private static (double, double, double) Worth(LimitSensitivity e) => e.GoneAt_frac is { } part
        ? (1, -Math.Round(part / Hundredth), Math.Round(e.DelayBefore_s / Noticed_s))
        : (0, Math.Round(e.Delay_s / Noticed_s), 0);

    private static LimitSensitivity Ease(
        Relaxation relaxation, Scenario scenario, DateTimeOffset firstShort, double part_frac, Action? finished, CancellationToken cancel)
    {
        // By whole hundredths: the search comes back to the one before that with which it is gone.
        Dictionary<double, (double Delay_s, DateTimeOffset? Then)> known = [];
        double Delay_s(double by_frac, out DateTimeOffset? then)
        {
            double hundredths = Math.Round(by_frac / Hundredth);
            if (!known.TryGetValue(hundredths, out (double Delay_s, DateTimeOffset? Then) delay)) known[hundredths] = delay = Eased(by_frac);
            then = delay.Then;
            return delay.Delay_s;
        }

        (double Delay_s, DateTimeOffset? Then) Eased(double by_frac)
        {
            double best_s = double.NegativeInfinity;
            DateTimeOffset? then = null;
            foreach (Scenario eased in relaxation.Eased(scenario, by_frac))
            {
                TrialOutcome run = TrialOutcome.Of(eased, cancel);
                finished?.Invoke();
                double delay_s = run.IsCutShort ? double.NegativeInfinity
                    : run.SupplyFails is { } at ? (at - firstShort).TotalSeconds
                    : double.PositiveInfinity;
                if (delay_s <= best_s) continue;
                (best_s, then) = (delay_s, run.SupplyFails);
            }

            return (best_s, then);
        }

        if (relaxation.Eased(scenario, part_frac).Count == 0)
            return new LimitSensitivity(relaxation.Limit, false, firstShort, 0);
        double delay_s = Delay_s(part_frac, out DateTimeOffset? first);
        if (double.IsNegativeInfinity(delay_s))
            return new LimitSensitivity(relaxation.Limit, true, null, delay_s);
        if (!double.IsPositiveInfinity(delay_s))
            return new LimitSensitivity(relaxation.Limit, true, first, delay_s);

        double gone_frac = SmallestThatHolds.Find(
            0, part_frac, Hundredth, by => by > 0 && double.IsPositiveInfinity(Delay_s(by, out _)))!.Value;
        double before_s = gone_frac > 1.5 * Hundredth ? Delay_s(gone_frac - Hundredth, out _) : 0;
        return new LimitSensitivity(relaxation.Limit, true, null, delay_s, gone_frac, before_s);
    }
}
