using ColdSim.Planning.Capacity;

namespace ColdSim.App.Text.Answers;

/// <summary>Capacities of a cylinder as an answer: one of them as a sentence, the table, and what moves it.</summary>
internal static class CapacityAnswer
{
    // The row and the column of which the sentence speaks: about 0 °F, less than half full, four hours.
    private const double Told_K = 255.4, Told_frac = 0.4, Told_s = 4 * 3600;

    /// <summary>The answer.</summary>
    public static Answer Of(CapacityTable table, UnitStyle units)
    {
        string verdict = Verdict(table, units);
        return new()
        {
            Brief = OneLine.Of(Verdict(table, units, besides: false)),
            Verdict = verdict,
            Consequences = [.. units.InOwn(
            [
                .. BelowMinimum(table, units),
                "Compare it with what your burners take on average: 30,000 BTU/h (9 kW) that burn half the time take half of that.",
                "More wind at the cylinder gives more; frost, snow and a cover give less.",
            ])],
            Table = Table(table, units),
            Caution = CautionLine.Estimate,
        };
    }

    private static (int Time, int Low, int Fill) Told(CapacityQuestion q)
        => (Nearest([.. q.Times.Select(t => t.Time_s)], Told_s), Nearest(q.Lows_K, Told_K), Nearest(q.Fills_frac, Told_frac));

    // How much of the answer depends on gas below what the regulator's plate promises.
    private static IEnumerable<string> BelowMinimum(CapacityTable table, UnitStyle units)
    {
        (int time, int low, int fill) = Told(table.Question);
        CapacityCell cell = table.At(time, low, fill);
        if (cell.AboveMinimumInlet_W < (1 - 2 * LastingDraw.Tolerance_frac) * cell.Draw_W)
            yield return $"If the regulator gives nothing below {units.Pressure(table.MinimumInlet_Pa)}, its minimum inlet: "
                + $"{(cell.AboveMinimumInlet_W > 0 ? CapacityWords.Number(cell.AboveMinimumInlet_W, units) : "nothing")}.";
    }

    private static string Verdict(CapacityTable table, UnitStyle units, bool besides = true)
    {
        CapacityQuestion q = table.Question;
        (int time, int low, int fill) = Told(q);
        CapacityCell cell = table.At(time, low, fill);
        string at = $"At {units.WholeTemperature(cell.Low_K)} {(q.Cylinder.Name.StartsWith("11", StringComparison.Ordinal) ? "an" : "a")} {q.Cylinder.Name} cylinder {CapacityWords.Filled(cell.Fill_frac)}";
        if (cell.Draw_W <= 0)
            return $"{at} gives nothing {CapacityWords.For(cell.Time)}.";
        string gives = $"{at} gives {CapacityWords.Power(cell.Draw_W, units)} {CapacityWords.For(cell.Time)}";
        if (!besides)
            return $"{gives}.";
        if (q.Times.Count > 1 && time < q.Times.Count - 1)
            return $"{gives}, {CapacityWords.Number(table.At(q.Times.Count - 1, low, fill).Draw_W, units)} {CapacityWords.For(q.Times[^1])}.";
        return q.Fills_frac.Count > 1 && fill > 0
            ? $"{gives}; {CapacityWords.Filled(q.Fills_frac[0])}, {CapacityWords.Number(table.At(time, low, 0).Draw_W, units)}."
            : $"{gives}.";
    }

    private static int Nearest(IReadOnlyList<double> values, double to)
    {
        int nearest = 0;
        for (int i = 1; i < values.Count; i++)
        {
            if (Math.Abs(values[i] - to) < Math.Abs(values[nearest] - to))
                nearest = i;
        }

        return nearest;
    }

    private static AnswerTable Table(CapacityTable table, UnitStyle units)
    {
        CapacityQuestion q = table.Question;
        IReadOnlyList<string> lines = CapacityText.Lines(table, units, c => CapacityWords.Cell(c, units));
        int head = lines.Count - q.Lows_K.Count;
        string what = q.Times.Count > 1 ? $"{CapacityWords.Filled(q.Fills_frac[0])}, by air and time" : $"{CapacityWords.For(q.Times[0])}, by air and fill";
        return new(
            [.. lines.Take(head)],
            [.. lines.Skip(head).Select((line, i) => new AnswerRow(line, -Math.Abs(q.Lows_K[i] - Told_K)))],
            hidden => $"{hidden.Count} more with --full.")
        {
            Title = string.Join(' ', CapacityWords.Signs(table).Prepend($"{units.PowerUnit} {what}.")),
        };
    }
}
