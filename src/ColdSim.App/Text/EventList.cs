using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What happened and the state at that instant, a row each; burner cycles are only counted.</summary>
internal static class EventList
{
    private const int Longest = 40;
    private const int Narrowest = 12;

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units)
    {
        IReadOnlyList<EventRow> rows = EventRows.Of(report, units);
        List<string> lines = [];
        if (rows.Count == 0)
            lines.Add("Nothing unusual happens.");
        else
            lines.AddRange(Table([.. rows.Take(Longest)], units));
        if (rows.Count > Longest)
            lines.Add($"... and {rows.Count - Longest} more; --json has them all.");
        int starts = report.Nights.Sum(n => n.BurnerStarts);
        if (starts > 0)
        {
            double hours = report.Nights.Sum(n => n.BurnerTime.Hours);
            lines.Add($"The burner lights {(starts == 1 ? "once" : $"{starts} times")}, {UnitStyle.Number(hours, 1)} h in all; --json has every time.");
        }

        return lines;
    }

    // What happened goes on in the next line where a long name in it would make the table wider than the terminal.
    private static IReadOnlyList<string> Table(IReadOnlyList<EventRow> rows, UnitStyle units) => TextTable.Fit(rows.Max(r => r.What.Length), Narrowest, width =>
        new FigureTable(ReportTable.Events, units).Lines(
            EventFigures.All, [.. rows.Select(r => r.Event)],
            new FigureTable.Cells<ReportedEvent>(new(["What"], Left: true), -1, (_, place) => string.Join('\n', Wrap.Lines(rows[place].What, width)))));
}
