using ColdSim.Planning.Limits;

namespace ColdSim.App.Text;

/// <summary>The limits as a table: a row a fill, and perhaps one of what is in the cylinders now; a column a set-up.</summary>
internal static class LimitTable
{
    public static IReadOnlyList<string> Lines(LimitChart chart, UnitStyle units, bool withNow = true)
    {
        TextGrid grid = Grid(chart, units, withNow);
        return TextTable.Lines(grid.Columns, grid.Rows, gap: 2);
    }

    /// <summary>The same before it is set into lines.</summary>
    public static TextGrid Grid(LimitChart chart, UnitStyle units, bool withNow = true)
    {
        List<TextColumn> columns = [new(["Fill", "of legal"]), new(["In each", "cylinder", units.MassUnit])];
        columns.AddRange(chart.Columns.Select(c => new TextColumn([.. LimitWords.Heading(c.RigVariant.Kind, chart.Scenario.Rig).Select(h => h + " "), units.TemperatureUnit + " "])));
        List<IReadOnlyList<string>> rows = [];
        if (withNow)
        {
            rows.Add(
            [
                "as it is",
                string.Join("+", chart.Scenario.Rig.Cylinders.Select(c => Mass(c.Contents_kg, units))),
                .. chart.Columns.Select(c => LimitWords.Cell(c.Now, chart, units)),
            ]);
        }

        for (int i = 0; i < chart.Fills.Count; i++)
        {
            int row = i;
            rows.Add(
            [
                LimitWords.Percent(chart.Fills[i]),
                string.Join("+", chart.Scenario.Rig.Cylinders.Select(c => Mass(c.LegalFill_kg * chart.Fills[row], units)).Distinct()),
                .. chart.Columns.Select(c => LimitWords.Cell(c.Cells[row], chart, units)),
            ]);
        }

        return new(columns, rows);
    }

    private static string Mass(double kg, UnitStyle units) => UnitStyle.Number(units.MassIn(kg), 1);
}
