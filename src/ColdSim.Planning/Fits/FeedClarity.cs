using ColdSim.Model;
using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Fits;

/// <summary>At which times a run through a log of several cylinders has the liquid of one of them as it was.</summary>
/// <remarks>
/// A cylinder that feeds is colder than one that does not, and its liquid needs hours to follow. So for the <see cref="Settles"/> before a
/// value it must be known from the log whether the cylinder fed, and with how much in it. The times are our choice, no source.
/// </remarks>
/// <param name="rig">The rig.</param>
/// <param name="log">Its log, with at least one row.</param>
/// <param name="feeds">Which of its cylinders fed when.</param>
internal sealed class FeedClarity(Rig rig, UseLog log, FeedHistory feeds)
{
    // A run may have so much more in the cylinder in use than it held, in legal fillings: its wet wall is then little larger.
    private const double Raised_frac = 0.05;

    /// <summary>After this time a liquid is as cold as its draw and the weather make it, however cold it was before.</summary>
    /// <remarks>Nearly two time constants of a full 100 lb cylinder at 8 W/(m² K), worked out by hand; a smaller one follows sooner.</remarks>
    public static readonly TimeSpan Settles = TimeSpan.FromHours(6);

    private readonly bool[][] _clear =
    [
        .. feeds.Gaps.Select((_, g) => rig.Cylinders.Select((_, c) => IsClear(rig, log, feeds, g, c)).ToArray()),
    ];

    /// <summary>Whether the time lies between the log's first and last reading.</summary>
    /// <param name="time">The time.</param>
    public bool Spans(DateTimeOffset time) => time >= feeds.Instants[0] && time <= feeds.Instants[^1];

    /// <summary>Whether the run's liquid in a cylinder is to be compared with what was measured.</summary>
    /// <param name="cylinder">Its place in the scenario.</param>
    /// <param name="time">When.</param>
    public bool IsClear(int cylinder, DateTimeOffset time)
    {
        DateTimeOffset from = time - Settles;
        if (from < feeds.Instants[0] || time > feeds.Instants[^1])
            return false;
        for (int g = 0; g < feeds.Gaps.Count; g++)
        {
            if (feeds.Gaps[g].From < time && feeds.Gaps[g].To > from && !_clear[g][cylinder])
                return false;
        }

        return true;
    }

    private static bool IsClear(Rig rig, UseLog log, FeedHistory feeds, int g, int cylinder)
        => !MayHaveShared(feeds, g, cylinder) && !WasRaised(rig, feeds, g, cylinder) && !MayHaveBeenFilled(log, feeds.Gaps[g], cylinder);

    // One of two that gave gas one after the other, or of which the log does not say which one gave it.
    private static bool MayHaveShared(FeedHistory feeds, int g, int cylinder)
    {
        FeedGap gap = feeds.Gaps[g];
        return !feeds.Together && gap.Other is { } other && (cylinder == gap.First || cylinder == gap.Last || cylinder == other);
    }

    private static bool WasRaised(Rig rig, FeedHistory feeds, int g, int cylinder)
    {
        double more_kg = FeedContents.Of(rig, feeds, g, feeds.Gaps[g].First)[cylinder] - feeds.Held_kg[g][cylinder];
        return more_kg > Raised_frac * rig.Cylinders[cylinder].LegalFill_kg;
    }

    // Between its last reading before a filling and its first after it.
    private static bool MayHaveBeenFilled(UseLog log, FeedGap gap, int cylinder)
        => log.Rows.FirstOrDefault(r => r.Reading.Cylinder == cylinder && r.Reading.Time >= gap.To) is { Reading.Filled: true };
}
