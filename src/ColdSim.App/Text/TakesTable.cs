using System.Globalization;
using ColdSim.Model;
using ColdSim.Planning.Compare;

namespace ColdSim.App.Text;

/// <summary>What the options cost in money, electricity and walks, what a mixed gas leaves behind, and how battery and water fare; only what some of them has.</summary>
internal static class TakesTable
{
    private const int WidestName = 40;
    private const int NarrowestName = 8;

    private sealed record Column(bool Shown, TextColumn Heading, Func<ComparedRow, string> Cell);

    /// <summary>The table with a blank line under it; nothing where there is nothing to say.</summary>
    public static IReadOnlyList<string> Lines(Comparison comparison, UnitStyle units)
    {
        Column[] columns = [.. Columns(comparison, units).Where(c => c.Shown)];
        if (columns.Length == 0)
            return [];
        List<string> rules = [];
        if (comparison.Rows.Any(r => r.Cost is not null))
            rules.Add("Cost: paid at refills, and the gas that the cylinders hold less at the end than at the start, at the price of [gas].");
        if (comparison.Rows.Any(r => r.LeftBehind is not null))
            rules.Add("Stays behind: of what is left of a mixed gas, the liquid that at the last night's coldest air cannot feed every appliance in full.");

        // The name takes what the numbers leave.
        int width = WidestName;
        IReadOnlyList<string> lines = Table(comparison, units, columns, width);
        while (width > NarrowestName && lines.Max(l => l.Length) > Wrap.Columns)
            lines = Table(comparison, units, columns, --width);
        return [.. lines, .. rules.SelectMany(r => Wrap.Lines(r)), ""];
    }

    private static IEnumerable<Column> Columns(Comparison comparison, UnitStyle units)
    {
        IReadOnlyList<ComparedRow> rows = comparison.Rows;
        bool battery = rows.Any(r => r.Summary.ChargeLow is not null);
        bool water = rows.Any(r => HasWater(r.Option.Scenario.Rig));
        yield return new(rows.Any(r => r.Cost is not null), new(["Cost", comparison.Base.Prices.Currency]),
            r => r.Cost is { } cost ? UnitStyle.Number(cost, 2) : "-");
        yield return new(rows.Any(r => r.Summary.BlanketEnergy.Joules > 0), new(["Blankets", "Wh"]),
            r => UnitStyle.Number(r.Summary.BlanketEnergy.WattHours, 0));
        yield return new(rows.Any(r => r.Summary.CylinderChanges > 0), new(["Walks"]), r => UnitStyle.Number(r.Summary.CylinderChanges, 0));
        yield return new(rows.Any(r => r.LeftBehind is not null), new(["Stays", "behind", units.MassUnit]),
            r => r.LeftBehind is { } behind ? units.MassNumber(behind.Kilograms) : "-");
        yield return new(battery, new(["Charge", "low", "%"]), r => r.Summary.ChargeLow is { } low ? UnitStyle.Number(low.Percent, 0) : "-");
        yield return new(battery, new(["No 12 V", "h:mm"]),
            r => r.Summary.VoltageGone.Seconds > 0 ? ClockText.SpanShort(r.Summary.VoltageGone) : "-");
        yield return new(water, new(["Water", "freezes"]),
            r => r.Summary.WaterFreezesAt is { } at ? at.ToString("d MMM HH:mm", CultureInfo.InvariantCulture) : "-");
        yield return new(battery, new(["Out", "first"], Left: true), r => PowerTable.Word(r.Summary.FirstOut));
    }

    private static IReadOnlyList<string> Table(Comparison comparison, UnitStyle units, Column[] columns, int width) => TextTable.Lines(
        [new([""]), new(["Option"], Left: true), new(["Gas", "used", units.MassUnit]), .. columns.Select(c => c.Heading)],
        [.. comparison.Rows.Select(r => (IReadOnlyList<string>)
        [
            UnitStyle.Number(r.Rank, 0),
            r.Option.Name.Length > width ? r.Option.Name[..(width - 3)] + "..." : r.Option.Name,
            units.MassNumber(r.Summary.GasUsed.Kilograms),
            .. columns.Select(c => c.Cell(r)),
        ])]);

    private static bool HasWater(Rig rig) => rig.Nodes().Any(n => n.Water_kg > 0);
}
