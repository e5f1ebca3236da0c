using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using ColdSim.Model.Weather;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Freezing;

/// <summary>What followed, and how soon, when gas first ran short or the voltage was first gone: in the run itself, to the end of that night.</summary>
internal static class AfterFailure
{
    /// <summary>The spans from the first failure on.</summary>
    /// <param name="report">The run.</param>
    /// <returns>Null where every night holds, without a coach, or where the furnace is made to stop: that has an answer of its own.</returns>
    public static CoolDown? Of(RunReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.CoolDown is not null || report.Scenario.Rig.Coach is null || report.Summary.FirstFailure is not { } at) return null;
        NightReport? night = report.Nights.FirstOrDefault(n => at < n.To);
        if (night is null) return null;
        double at_s = (at - report.Scenario.Start).TotalSeconds, to_s = (night.To - report.Scenario.Start).TotalSeconds;
        RunSeries series = report.Series;
        if (series.Count == 0) return null;
        int here = Math.Clamp((int)Math.Round(at_s / RunSeries.Spacing_s), 0, series.Count - 1);
        CoolDown own = new()
        {
            At = at,
            Outside = Temperature.FromKelvins(series.Outside_K[here]),
            Inside = double.IsFinite(series.Inside_K[here]) ? Temperature.FromKelvins(series.Inside_K[here]) : null,
            FiftyAfter = After(series, at_s, to_s, CoolDown.Fifty_K),
            FreezingAfter = After(series, at_s, to_s, CoolDown.Freezing_K),
            Water = Water(report, at, night.To),
            Watched = Duration.FromSeconds(to_s - at_s),
        };
        return Over(own, report, at, here, Math.Min(series.Count - 1, (int)(to_s / RunSeries.Spacing_s)));
    }

    private static CoolDown Over(CoolDown own, RunReport report, DateTimeOffset at, int from, int last)
    {
        Leg? leg = NightRun.LegsOf(report.Scenario).FirstOrDefault(l => at >= l.From && at < l.To);
        if (leg is null || own.Inside is null) return own;
        int row = 0;
        WeatherSample weather = leg.Weather.At((at - leg.Weather.First).TotalSeconds, ref row);
        OtherStorage other = new(report.Series, report.Scenario.Rig.Coach!, weather, at.TimeOfDay.TotalSeconds, from);
        return own.Over(
            [.. StorageUncertainty.Corners.Select(c => other.Until_s(c, CoolDown.Fifty_K, last))],
            [.. StorageUncertainty.Corners.Select(c => other.Until_s(c, CoolDown.Freezing_K, last))]);
    }

    // The first minute at which inside is no warmer, and the part of the minute before it.
    private static Duration? After(RunSeries series, double at_s, double to_s, double level_K)
    {
        int first = (int)Math.Floor(at_s / RunSeries.Spacing_s), last = Math.Min(series.Count - 1, (int)(to_s / RunSeries.Spacing_s));
        for (int i = first; i <= last; i++)
        {
            if (!(series.Inside_K[i] <= level_K)) continue;
            if (i == first) return Duration.Zero;
            double above_K = series.Inside_K[i - 1] - level_K, fell_K = series.Inside_K[i - 1] - series.Inside_K[i];
            double time_s = (i - 1 + above_K / fell_K) * RunSeries.Spacing_s;
            return Duration.FromSeconds(Math.Max(0, time_s - at_s));
        }

        return null;
    }

    private static IReadOnlyList<WaterAfter> Water(RunReport report, DateTimeOffset at, DateTimeOffset to)
    {
        Rig rig = report.Scenario.Rig;
        return [.. rig.Water.Where(w => w.Water_kg > 0).Select(w => new WaterAfter(w.Name, First(w, ReportedKind.WaterFreezes), First(w, ReportedKind.WaterSolid)))];

        // What began before and never thawed is ice by then.
        Duration? First(ThermalNode node, ReportedKind kind)
        {
            ReportedEvent[] of = [.. report.Events.Where(e => e.Node == node.Name && e.Time < to)];
            bool already = of.LastOrDefault(e => e.Time < at && (e.Kind == kind || e.Kind == ReportedKind.WaterThawed))?.Kind == kind;
            if (already) return Duration.Zero;
            return of.FirstOrDefault(e => e.Time >= at && e.Kind == kind) is { } then ? Duration.FromSeconds((then.Time - at).TotalSeconds) : null;
        }
    }
}
