using ColdSim.Model;
using ColdSim.Model.Arrangement;

namespace ColdSim.Planning.Logs;

/// <summary>Which of several cylinders fed between two instants of a log at which something was read.</summary>
/// <param name="From">Start.</param>
/// <param name="To">End.</param>
/// <param name="First">Place of the cylinder in use at the start.</param>
/// <param name="Last">Place of the one in use at the end; another one where it was changed in between.</param>
/// <param name="Other">
/// Place of a cylinder that may have given part of the gas, so that only what both gave together is known; null where one cylinder gave it all.
/// </param>
/// <param name="RanDry">Whether the first one was empty when the other took over.</param>
internal sealed record FeedGap(DateTimeOffset From, DateTimeOffset To, int First, int Last, int? Other, bool RanDry);

/// <summary>Which of several cylinders fed when, as a log and the simulator's use between its readings have it.</summary>
/// <remarks>The log does not say it: it is the most likely of all sequences, see <see cref="FeedTracker"/>.</remarks>
internal sealed record FeedHistory
{
    /// <summary>Instants at which something was read, in order.</summary>
    public required IReadOnlyList<DateTimeOffset> Instants { get; init; }

    /// <summary>What fed between them, one fewer.</summary>
    public required IReadOnlyList<FeedGap> Gaps { get; init; }

    /// <summary>What each cylinder held just after each instant, a row for each instant. [kg]</summary>
    public required IReadOnlyList<double[]> Held_kg { get; init; }

    /// <summary>What the rig used between the instants by the simulator, from which this was found; empty where it was not. [kg]</summary>
    public IReadOnlyList<double> Use_kg { get; init; } = [];

    /// <summary>Standard uncertainty of what each holds after the last instant. [kg]</summary>
    public required IReadOnlyList<double> Uncertainty_kg { get; init; }

    /// <summary>Probability of each cylinder to be the one in use after the last instant.</summary>
    public required IReadOnlyList<double> InUse_frac { get; init; }

    /// <summary>Whether all cylinders feed at once, so that none is the one in use.</summary>
    public required bool Together { get; init; }

    /// <summary>Place of the cylinder that is most probably in use after the last instant.</summary>
    public int InUse
    {
        get
        {
            int best = 0;
            for (int i = 1; i < InUse_frac.Count; i++)
            {
                if (InUse_frac[i] > InUse_frac[best])
                    best = i;
            }

            return best;
        }
    }

    /// <summary>Instants at which something was read.</summary>
    /// <param name="log">The log.</param>
    public static IReadOnlyList<DateTimeOffset> InstantsOf(UseLog log) => [.. log.Rows.Select(r => r.Reading.Time).Distinct().Order()];

    /// <summary>A history in which no cylinder is ever short, to learn from it what the rig uses.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="log">Its log, with at least one row.</param>
    public static FeedHistory Plenty(Rig rig, UseLog log)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(log);
        IReadOnlyList<DateTimeOffset> instants = InstantsOf(log);
        double[] full_kg = [.. rig.Cylinders.Select(c => c.LegalFill_kg)];
        return new()
        {
            Instants = instants,
            Gaps = [.. instants.Skip(1).Select((to, g) => new FeedGap(instants[g], to, 0, 0, null, false))],
            Held_kg = [.. instants.Select(_ => full_kg)],
            Uncertainty_kg = [.. rig.Cylinders.Select(_ => 0.0)],
            InUse_frac = [.. rig.Cylinders.Select((_, i) => i == 0 ? 1.0 : 0)],
            Together = rig.Arrangement is OpenTogether,
        };
    }

    /// <summary>Whether another history has the same cylinders in use.</summary>
    /// <param name="other">The other.</param>
    public bool FeedsAs(FeedHistory other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Gaps.SequenceEqual(other.Gaps);
    }
}
