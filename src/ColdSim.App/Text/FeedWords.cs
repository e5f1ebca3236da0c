using ColdSim.Model;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Logs;
using static ColdSim.App.Text.UnitStyle;

namespace ColdSim.App.Text;

/// <summary>Which of several cylinders fed, and which was filled without a note, in words.</summary>
internal static class FeedWords
{
    /// <summary>A line for each time in which another one fed.</summary>
    public static IEnumerable<string> Of(FitReport fit) => fit.Feeds.Select(f => Of(f, fit));

    /// <summary>What is assumed where it is not known who fed.</summary>
    public static string Assumed(FitReport fit) => fit.Feeds.Any(f => f.Cylinder is null)
        ? $"each cylinder's part of the gas, all of them open: within {Number(100 * FeedTracker.Share_frac, 0)} % of what all gave"
        : "which cylinder fed: the most likely by the readings; where two may have, only what both gave together is compared";

    /// <summary>Fillings that nobody noted, a sentence each.</summary>
    /// <param name="log">The log.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="offset">The scenario's clock.</param>
    public static IEnumerable<string> Noticed(UseLog log, Rig rig, TimeSpan offset)
    {
        foreach (LogRow row in log.Rows.Where(r => r.Reading.FillingNoticed))
        {
            LogRow? before = log.Rows.TakeWhile(r => r != row).LastOrDefault(r => r.Reading.Cylinder == row.Reading.Cylinder);
            string between = before is null ? "" : $"between {Clock(before.Reading.Time, offset)} and ";
            yield return $"{Cylinder(rig, row.Reading.Cylinder)} was filled or changed {between}{Clock(row.Reading.Time, offset)}; the log does not say so (line {row.Reading.Line}).";
        }
    }

    private static string Cylinder(Rig rig, int place) => rig.Cylinders.Count == 1 ? "The cylinder" : $"The cylinder '{rig.NameOf(place)}'";

    private static string Of(FeedSpan span, FitReport fit)
    {
        Rig rig = fit.Scenario.Rig;
        string time = $"{Clock(span.From, fit.Scenario.Start.Offset)} to {Clock(span.To, fit.Scenario.Start.Offset)}";
        return span.Cylinder is not { } cylinder ? $"{time}: all together"
            : span.Other is { } other ? $"{time}: {rig.NameOf(cylinder)} or {rig.NameOf(other)}, or one after the other"
            : $"{time}: {rig.NameOf(cylinder)}";
    }

    private static string Clock(DateTimeOffset time, TimeSpan offset) => ClockText.DayClock(time.ToOffset(offset));
}
