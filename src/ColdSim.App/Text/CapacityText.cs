using ColdSim.Planning.Capacity;

namespace ColdSim.App.Text;

/// <summary>Capacities as text: tables of how much, of the liquid and of what is left at the end, and what they mean.</summary>
internal static class CapacityText
{
    /// <summary>Everything below the answer.</summary>
    public static IReadOnlyList<TextSection> Sections(CapacityTable table, UnitStyle units, IReadOnlyList<string> cautions) =>
    [
        new($"{units.PowerUnit} if the regulator gives nothing below {units.Pressure(table.MinimumInlet_Pa)}", Lines(table, units, c => CapacityWords.Number(c.AboveMinimumInlet_W, units) + " ")),
        new($"Liquid at the end, {units.TemperatureUnit}", Lines(table, units, c => double.IsNaN(c.Liquid_K) ? "-" : UnitStyle.Number(units.TemperatureIn(c.Liquid_K), 0))),
        new($"Left at the end, {units.MassUnit}", Lines(table, units, c => double.IsNaN(c.Left_kg) ? "-" : UnitStyle.Number(units.MassIn(c.Left_kg), 1))),
        new("What it means", [.. Meaning(table, units).SelectMany(m => Wrap.Lines(m, rest: "  "))]),
        new("Assumed", RunText.Points(table.Question.Assumptions(), units)),
        new("Cautions", RunText.Points(cautions, units)),
    ];

    /// <summary>A row an air temperature; a column a fill, or a time where there are several.</summary>
    public static IReadOnlyList<string> Lines(CapacityTable table, UnitStyle units, Func<CapacityCell, string> cell)
    {
        CapacityQuestion q = table.Question;
        bool byTime = q.Times.Count > 1;
        List<TextColumn> columns = [new(["Air", units.TemperatureUnit])];
        columns.AddRange(byTime
            ? q.Times.Select(t => new TextColumn([CapacityWords.Heading(t) + " "]))
            : q.Fills_frac.Select(f => new TextColumn([Fill(f) + " ", $"{UnitStyle.Number(units.MassIn(f * q.Cylinder.LegalFill_kg), 1)} {units.MassUnit} "])));
        List<IReadOnlyList<string>> rows = [];
        for (int low = 0; low < q.Lows_K.Count; low++)
        {
            List<string> row = [Degrees(q.Lows_K[low], units)];
            for (int i = 0; i < columns.Count - 1; i++)
                row.Add(cell(byTime ? table.At(i, low, 0) : table.At(0, low, i)));
            rows.Add(row);
        }

        IReadOnlyList<string> apart = TextTable.Lines(columns, rows, gap: 2);
        return apart.Max(l => l.Length) <= Wrap.Columns ? apart : TextTable.Lines(columns, rows);
    }

    private static string Fill(double fill_frac) => fill_frac >= 1 ? "full" : LimitWords.Percent(fill_frac);

    private static string Degrees(double t_K, UnitStyle units) => UnitStyle.Number(units.TemperatureIn(t_K), 0);

    private static IEnumerable<string> Meaning(CapacityTable table, UnitStyle units)
    {
        IReadOnlyList<CapacityTime> times = table.Question.Times;
        if (times.Any(t => t.Kind != CapacityTimeKind.WithoutEnd))
        {
            yield return "Each draw was run for its time and is fed in full to the end, where the pressure is just enough for the regulator to pass it; one 1 % greater is "
                + "not. The contents fall, frost grows, and the liquid cools from the air's temperature.";
        }

        if (times.Any(t => t.Kind == CapacityTimeKind.Span))
            yield return "For a span, air stays at the stated temperature.";
        if (times.Any(t => t.Kind == CapacityTimeKind.Night))
        {
            yield return $"For the night, from 16:00 to 07:00, the air falls from {units.WholeDifference(Planning.Quick.QuickNight.Swing_K)} above the stated low at 15:00 to the low at "
                + "07:00; the cylinder starts as cold as the air at 16:00.";
        }

        if (times.Any(t => t.Kind == CapacityTimeKind.WithoutEnd))
            yield return "Without end, the heat that flows in balances the draw while the fill stays as it is, in dry air and without frost.";
        yield return "Below its minimum inlet a regulator may give as long as its springs let it, which its plate does not promise; the second table leaves that out.";
        yield return "Compare it with what your burners take on average over that time. A burner that cycles needs its whole flow while it burns, so it is short a little sooner than "
            + "a steady draw.";
    }
}
