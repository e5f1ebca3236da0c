using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What happened and what stood then, a row each; burner cycles are only counted.</summary>
internal static class EventList
{
    private const int Longest = 40;

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units)
    {
        IReadOnlyList<EventRow> rows = EventRows.Of(report.Events, report.Scenario.Rig, units);
        List<string> lines = [];
        if (rows.Count == 0)
            lines.Add("Nothing out of the ordinary.");
        else
            lines.AddRange(Table([.. rows.Take(Longest)], units));
        if (rows.Count > Longest)
            lines.Add($"... and {rows.Count - Longest} more; --json has them all.");
        int starts = report.Nights.Sum(n => n.BurnerStarts);
        if (starts > 0)
        {
            double hours = report.Nights.Sum(n => n.BurnerTime.Hours);
            lines.Add($"The burner lights {starts} times, {UnitStyle.Number(hours, 1)} h in all; --json has every time.");
        }

        return lines;
    }

    private static IReadOnlyList<string> Table(IReadOnlyList<EventRow> rows, UnitStyle units)
    {
        bool coach = rows.Any(r => !double.IsNaN(r.Event.Inside_K));
        int decimals = units.IsUs ? 0 : 1;
        List<TextColumn> columns =
        [
            new(["When"], Left: true),
            new(["What"], Left: true),
            new(["Liquid", units.TemperatureUnit]),
            new(["Cylinder", units.PressureUnit]),
            new(["Left", units.MassUnit]),
        ];
        if (coach)
            columns.Add(new(["Inside", units.TemperatureUnit]));
        return TextTable.Lines(columns, [.. rows.Select(r => (IReadOnlyList<string>)[.. Cells(r)])]);

        IEnumerable<string> Cells(EventRow row)
        {
            ReportedEvent e = row.Event;
            yield return ClockText.DayClock(e.Time);
            yield return row.What;
            yield return UnitStyle.Number(units.TemperatureIn(e.Liquid_K), decimals);
            yield return double.IsNaN(e.CylinderPressure_Pa) ? "-" : UnitStyle.Number(units.PressureIn(e.CylinderPressure_Pa), units.IsUs ? 1 : 0);
            yield return units.MassNumber(e.Left_kg);
            if (coach)
                yield return double.IsNaN(e.Inside_K) ? "-" : UnitStyle.Number(units.TemperatureIn(e.Inside_K), decimals);
        }
    }
}
