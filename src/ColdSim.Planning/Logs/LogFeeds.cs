using ColdSim.Model;

namespace ColdSim.Planning.Logs;

/// <summary>Which of several cylinders fed through a log, found with what the simulator uses between its readings.</summary>
internal static class LogFeeds
{
    // How well the use is known with a fit and without one; both as docs/log-and-fit.md has them.
    private const double UseFitted_frac = 0.1;
    private const double UseUnfitted_frac = 0.35;

    /// <summary>The history up to the latest reading.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="log">Its log.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <returns>
    /// Null for one cylinder, on a trip, where everything was read at once, and where the weather does not reach over the latest readings of all cylinders that were read.
    /// </returns>
    public static FeedHistory? Of(Scenario scenario, UseLog log, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        Rig rig = scenario.Rig;
        LogReading[] within = [.. log.Rows.Select(r => r.Reading).Where(r => r.Time >= scenario.Weather.First && r.Time <= scenario.Weather.Last)];
        bool all = Enumerable.Range(0, rig.Cylinders.Count).All(i => log.LatestOf(i) is not { } latest || within.Contains(latest.Reading));
        if (rig.Cylinders.Count == 1 || scenario.Legs.Count > 0 || within.Length == 0 || !all)
            return null;
        UseLog part = UseLog.Of(within, rig);
        IReadOnlyList<DateTimeOffset> instants = FeedHistory.InstantsOf(part);
        if (instants.Count < 2)
            return null;
        double[] use_kg = new double[instants.Count - 1];
        LogReplay replay = new(scenario);
        for (int g = 0; g < use_kg.Length; g++)
        {
            for (int i = 0; i < rig.Cylinders.Count; i++)
                replay.Set(i, rig.Cylinders[i].LegalFill_kg);
            if (replay.Run(instants[g], instants[g + 1], cancel).Used_kg is not { } used_kg)
                return null;
            use_kg[g] = used_kg.Sum();
        }

        return FeedTracker.Of(rig, part, use_kg, scenario.Fit is null ? UseUnfitted_frac : UseFitted_frac);
    }
}
