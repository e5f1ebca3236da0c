using ColdSim.Planning.Compare;

namespace ColdSim.App.Text;

/// <summary>What the options cost in money, electricity and walks; only what some of them has.</summary>
internal static class TakesTable
{
    private const int WidestName = 40;

    /// <summary>The table with a blank line under it; nothing where there is nothing to say.</summary>
    public static IReadOnlyList<string> Lines(Comparison comparison, UnitStyle units)
    {
        bool money = comparison.Rows.Any(r => r.Cost is not null);
        bool power = comparison.Rows.Any(r => r.Summary.BlanketEnergy.Joules > 0);
        bool walks = comparison.Rows.Any(r => r.Summary.Walks > 0);
        if (!money && !power && !walks)
            return [];
        List<TextColumn> columns = [new([""]), new(["Option"], Left: true), new(["Gas", "used", units.MassUnit])];
        if (money)
            columns.Add(new(["Cost", comparison.Base.Prices.Currency]));
        if (power)
            columns.Add(new(["Blankets", "Wh"]));
        if (walks)
            columns.Add(new(["Walks"]));
        List<IReadOnlyList<string>> rows = [];
        foreach (ComparedRow row in comparison.Rows)
        {
            string name = row.Option.Name;
            List<string> cells =
            [
                UnitStyle.Number(row.Rank, 0),
                name.Length > WidestName ? name[..(WidestName - 3)] + "..." : name,
                UnitStyle.Number(units.MassIn(row.Summary.GasUsed.Kilograms), units.IsUs ? 1 : 2),
            ];
            if (money)
                cells.Add(row.Cost is { } cost ? UnitStyle.Number(cost, 2) : "-");
            if (power)
                cells.Add(UnitStyle.Number(row.Summary.BlanketEnergy.WattHours, 0));
            if (walks)
                cells.Add(UnitStyle.Number(row.Summary.Walks, 0));
            rows.Add(cells);
        }

        string rule = money ? "Cost: paid at refills, and the gas that the cylinders hold less at the end than at the start, at the price of [gas]." : "";
        return [.. TextTable.Lines(columns, rows), .. rule.Length > 0 ? Wrap.Lines(rule) : [], ""];
    }
}
