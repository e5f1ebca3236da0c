using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>The options, the best first, within 80 columns.</summary>
internal static class CompareTable
{
    private const int WidestName = 26;
    private const int NarrowestName = 8;

    public static IReadOnlyList<string> Lines(Comparison comparison, UnitStyle units)
    {
        // The name takes what the numbers leave.
        for (int width = WidestName; ; width--)
        {
            IReadOnlyList<string> lines = Lines(comparison, units, width);
            if (width == NarrowestName || lines.Max(l => l.Length) <= Wrap.Columns)
                return lines;
        }
    }

    private static IReadOnlyList<string> Lines(Comparison comparison, UnitStyle units, int width) => TextTable.Lines(
        [
            new([""]),
            new(["Option"], Left: true),
            new(["Held"]),
            new([""], Left: true),
            new(["Short", "first"]),
            new(["Short", "h:mm"]),
            new(["Dry", "at"]),
            new(["In", "low", units.TemperatureUnit]),
            new(["Gas", "used", units.MassUnit]),
            new(["Left", "end", units.MassUnit]),
        ],
        [.. comparison.Rows.SelectMany(r => Row(r, units, width))]);

    private static IEnumerable<IReadOnlyList<string>> Row(ComparedRow row, UnitStyle units, int width)
    {
        RunSummary summary = row.Summary;
        IReadOnlyList<string> name = [.. Wrap.Lines(Name(row), width).SelectMany(l => l.Chunk(width)).Select(c => new string(c))];
        yield return
        [
            UnitStyle.Number(row.Rank, 0),
            name[0],
            $"{summary.NightsHeld}/{summary.Nights}",
            Word(row),
            summary.FirstFailure is { } first ? When(first) : "-",
            summary.UnservedTime.Seconds > 0 ? ClockText.SpanShort(summary.UnservedTime) : "-",
            summary.DryAt is { } dry ? When(dry) : "-",
            summary.InsideLow is { } low ? units.TemperatureNumber(low.Kelvins) : "-",
            units.MassNumber(summary.GasUsed.Kilograms),
            units.MassNumber(summary.LeftAtEnd.Kilograms),
        ];
        foreach (string more in name.Skip(1))
            yield return ["", more, "", "", "", "", "", "", "", ""];
    }

    private static string Name(ComparedRow row)
    {
        string name = row.Order == 0 ? $"{row.Option.Name}, {CylinderWords.Names(row.Option.Scenario.Rig)}" : row.Option.Name;
        return row.Option.IsOnGround ? name + " (on the ground)" : name;
    }

    private static string Word(ComparedRow row) => row.StoppedByCylinder ? "stops" : VerdictWord.Of(row.Summary.Verdict);

    // Without the year and the weekday, which would cost the columns.
    private static string When(DateTimeOffset time) => time.ToString("d MMM HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
