using ColdSim.Model;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>An event as it is listed, and what it and its repeats amount to.</summary>
internal sealed record EventRow(ReportedEvent Event, string What);

/// <summary>Folds repeats together, as their kind says, so that a night in trouble still fits a screen.</summary>
internal sealed class EventRows
{
    private readonly List<EventRow> _rows = [];
    private readonly Rig _rig;
    private readonly UnitStyle _units;

    private EventRows(Rig rig, UnitStyle units) => (_rig, _units) = (rig, units);

    public static IReadOnlyList<EventRow> Of(RunReport report, UnitStyle units)
    {
        EventRows all = new(report.Scenario.Rig, units);
        foreach (IGrouping<int, ReportedEvent> night in report.Events.Where(e => FoldOf(e) != EventFold.OnlyCounted).GroupBy(e => Night(e, report.Nights)))
            all.Add([.. night]);
        return all._rows;
    }

    private static EventFold FoldOf(ReportedEvent e) => EventKinds.Of(e.Kind).Fold;

    // Place of the night in which it happens.
    private static int Night(ReportedEvent e, IReadOnlyList<NightReport> nights)
    {
        int night = nights.Count - 1;
        while (night > 0 && e.Time < nights[night].From)
            night--;
        return night;
    }

    private void Add(ReportedEvent[] night)
    {
        bool Repeated(ReportedEvent e) => FoldOf(e) == EventFold.OnceANight && !ReferenceEquals(e, Array.Find(night, o => o.Kind == e.Kind));
        LockoutCycles cycles = LockoutCycles.Fold([.. night.Where(e => !Repeated(e))]);
        ReportedEvent[] kept = cycles.Kept;
        for (int i = 0; i < kept.Length;)
        {
            i = FoldOf(kept[i]) switch
            {
                EventFold.Spells => Spells(kept, i),
                EventFold.InRows => InRows(kept, i),
                EventFold.Turns => Turns(kept, i),
                EventFold.OnceANight => One(kept, i, Words(kept[i]) + Times(night.Count(e => e.Kind == kept[i].Kind))),
                _ => One(kept, i, i == cycles.MoreLockoutsAt ? $"furnace locks out {cycles.MoreLockouts} times more" : Words(kept[i])),
            };
        }
    }

    private static string Times(int times) => times > 1 ? $", {times} times in the night" : "";

    private int One(ReportedEvent[] kept, int i, string what)
    {
        _rows.Add(new(kept[i], what));
        return i + 1;
    }

    /// <summary>Takes all of one kind that follow each other with nothing else between.</summary>
    private int InRows(ReportedEvent[] kept, int i)
    {
        int end = i;
        while (end < kept.Length && kept[end].Kind == kept[i].Kind)
            end++;
        _rows.Add(new(kept[i], Words(kept[i]) + (end - i == 1 ? "" : $", {end - i} tries")));
        return end;
    }

    /// <summary>Takes every start of the reserve side and return that follow each other with nothing else between.</summary>
    private int Turns(ReportedEvent[] kept, int i)
    {
        int end = i, times = 0;
        while (end < kept.Length && kept[end].Kind is ReportedKind.ReserveFeeds or ReportedKind.ServiceAlone)
        {
            if (kept[end].Kind == ReportedKind.ReserveFeeds)
                times++;
            end++;
        }

        _rows.Add(new(kept[i], Words(kept[i]) + (times == 1 ? "" : $", {times} times until {ClockText.Clock(kept[end - 1].Time)}")));
        return end;
    }

    /// <summary>Takes every begin and end that follow each other with nothing else between.</summary>
    private int Spells(ReportedEvent[] kept, int i)
    {
        int end = i, times = 0;
        TimeSpan total = TimeSpan.Zero;
        while (end + 1 < kept.Length && kept[end].Kind == ReportedKind.ShortBegins && EventKinds.EndsShortage(kept[end + 1].Kind))
        {
            total += kept[end + 1].Time - kept[end].Time;
            times++;
            end += 2;
        }

        if (times == 0)
            return One(kept, i, Words(kept[i]));
        string length = ClockText.Span(Duration.FromSeconds(total.TotalSeconds));
        _rows.Add(new(kept[i], times == 1 ? $"gas is short for {length}" : $"gas is short {times} times, {length}"));
        return end;
    }

    private string Words(ReportedEvent e)
    {
        EventKindWords kind = EventKinds.Of(e.Kind);
        string text = _rig.Cylinders.Count > 1 ? kind.TextOfSeveral ?? kind.Text : kind.Text;
        text = _units.InOwn(text);
        return text.Contains('{', StringComparison.Ordinal)
            ? text.Replace("{name}", _rig.NameOf(Math.Min(e.Cylinder, _rig.Cylinders.Count - 1)), StringComparison.Ordinal)
                .Replace("{left}", _units.Mass(e.Value), StringComparison.Ordinal)
                .Replace("{node}", e.Node, StringComparison.Ordinal)
            : text;
    }
}
