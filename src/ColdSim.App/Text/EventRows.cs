using ColdSim.Model;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>An event as it is listed: where it stands, and what it and its repeats amount to.</summary>
internal sealed record EventRow(ReportedEvent Event, string What);

/// <summary>Folds repeats together, so that a night in trouble still fits a screen.</summary>
internal static class EventRows
{
    public static IReadOnlyList<EventRow> Of(IReadOnlyList<ReportedEvent> events, Rig rig, UnitStyle units)
    {
        List<EventRow> rows = [];
        IEnumerable<ReportedEvent> told = events.Where(e => e.Kind is not (ReportedKind.BurnerOn or ReportedKind.BurnerOff));
        foreach (IGrouping<DateOnly, ReportedEvent> night in told.GroupBy(Night))
        {
            // Damp comes and goes with every cycle of the burner: told once a night.
            ReportedEvent[] damp = [.. night.Where(e => e.Kind == ReportedKind.DampSettles)];
            AddNight(LockoutCycles.Fold([.. night.Where(e => e.Kind != ReportedKind.DampSettles || ReferenceEquals(e, damp[0]))]), rows,
                new CylinderEventWords(rig, units), damp.Length);
        }

        return rows;
    }

    private static DateOnly Night(ReportedEvent e) => DateOnly.FromDateTime((e.Time - NightCriteria.NightBoundary.ToTimeSpan()).DateTime);

    private static void AddNight(LockoutCycles night, List<EventRow> rows, CylinderEventWords words, int damp)
    {
        ReportedEvent[] told = night.Told;
        for (int i = 0; i < told.Length;)
        {
            i = told[i].Kind switch
            {
                ReportedKind.ShortBegins => Shorts(told, i, rows),
                ReportedKind.IgnitionFailed => Failures(told, i, rows),
                ReportedKind.ReserveFeeds => Reserves(told, i, rows, words),
                ReportedKind.DampSettles => Damp(told, i, rows, damp),
                _ => Single(told, i, rows, night, words),
            };
        }
    }

    private static int Single(ReportedEvent[] told, int i, List<EventRow> rows, LockoutCycles night, CylinderEventWords words)
    {
        rows.Add(new(told[i], i == night.MoreLockoutsAt ? $"furnace locks out {night.MoreLockouts} times more" : words.Of(told[i]) ?? WaterWords(told[i]) ?? Words(told[i].Kind)));
        return i + 1;
    }

    private static int Damp(ReportedEvent[] told, int i, List<EventRow> rows, int times)
    {
        rows.Add(new(told[i], "damp settles on the coldest surface" + (times > 1 ? $", {times} times in the night" : "")));
        return i + 1;
    }

    private static int Failures(ReportedEvent[] told, int i, List<EventRow> rows)
    {
        int end = i;
        while (end < told.Length && told[end].Kind == ReportedKind.IgnitionFailed)
            end++;
        rows.Add(new(told[i], end - i == 1 ? "ignition fails" : $"ignition fails, {end - i} tries"));
        return end;
    }

    /// <summary>Takes every start of the reserve side and return that follow each other with nothing else between.</summary>
    private static int Reserves(ReportedEvent[] told, int i, List<EventRow> rows, CylinderEventWords words)
    {
        int end = i, times = 0;
        while (end < told.Length && told[end].Kind is ReportedKind.ReserveFeeds or ReportedKind.ServiceAlone)
        {
            if (told[end].Kind == ReportedKind.ReserveFeeds)
                times++;
            end++;
        }

        string until = times == 1 ? "" : $", {times} times until {ClockText.Clock(told[end - 1].Time)}";
        rows.Add(new(told[i], words.Of(told[i]) + until));
        return end;
    }

    /// <summary>Takes every begin and end that follow each other with nothing else between.</summary>
    private static int Shorts(ReportedEvent[] told, int i, List<EventRow> rows)
    {
        int end = i, times = 0;
        TimeSpan total = TimeSpan.Zero;
        while (end + 1 < told.Length && told[end].Kind == ReportedKind.ShortBegins && told[end + 1].Kind == ReportedKind.ShortEnds)
        {
            total += told[end + 1].Time - told[end].Time;
            times++;
            end += 2;
        }

        if (times == 0)
        {
            rows.Add(new(told[i], "gas runs short"));
            return i + 1;
        }

        rows.Add(new(told[i], times == 1
            ? $"gas is short for {Span(total)}"
            : $"gas is short {times} times, {Span(total)}"));
        return end;
    }

    private static string Span(TimeSpan span) => ClockText.Span(Duration.FromSeconds(span.TotalSeconds));

    private static string? WaterWords(ReportedEvent e) => e.Kind switch
    {
        ReportedKind.WaterFreezes => $"{e.Node}: water begins to freeze",
        ReportedKind.WaterSolid => $"{e.Node}: water is all ice",
        ReportedKind.WaterThawed => $"{e.Node}: the last ice has thawed",
        _ => null,
    };

    private static string Words(ReportedKind kind) => kind switch
    {
        ReportedKind.ShortEnds => "gas is enough again",
        ReportedKind.FlameLost => "flame lost",
        ReportedKind.Lockout => "furnace locks out",
        ReportedKind.LockoutRetry => "furnace tries again",
        ReportedKind.LockoutReset => "furnace reset by hand",
        ReportedKind.LiquidGone => "last liquid boils off",
        ReportedKind.Dry => "cylinder dry",
        ReportedKind.InsideFreezing => "inside falls to freezing",
        ReportedKind.InsideThawed => "inside above freezing",
        ReportedKind.LiquidFull => "liquid fills the cylinder",
        ReportedKind.ReliefPressure => "relief valve would open",
        ReportedKind.WeatherEnds => "weather ends",
        ReportedKind.ServiceAlone => "service side alone again",
        ReportedKind.VoltageGone => "battery flat, voltage gone",
        ReportedKind.VoltageBack => "voltage is back",
        ReportedKind.GeneratorStarts => "generator starts",
        ReportedKind.GeneratorStops => "generator stops",
        ReportedKind.GeneratorStarved => "generator dies for want of gas",
        _ => kind.ToString(),
    };
}
