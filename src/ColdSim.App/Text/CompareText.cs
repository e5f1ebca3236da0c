using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;

namespace ColdSim.App.Text;

/// <summary>A comparison as text: which is best and why, the table, the rule, what it rests on.</summary>
internal static class CompareText
{
    private const int NarrowestName = 8;
    private const int RankAndGas = 2;

    /// <param name="comparison">What was run.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="cautions">Under the answer.</param>
    /// <param name="swept">Whether the options are cylinders of several sizes, filled to the same part.</param>
    public static IReadOnlyList<TextSection> Sections(
        Comparison comparison, UnitStyle units, IReadOnlyList<string> cautions, bool swept)
    {
        Scenario scenario = comparison.Base;
        List<string> under = [.. Wrap.Lines($"Ranked: {Ranking.Rule}.")];
        if (swept)
            under.AddRange(Wrap.Lines(Filled(scenario)));
        if (comparison.Rows.Any(r => r.StoppedByCylinder))
            under.AddRange(Wrap.Lines("\"Stops\": its cylinder ends the run early, full of liquid or at its relief pressure, a danger in itself; it comes last."));
        if (comparison.Rows.Any(r => r.Option.IsOnGround))
            under.AddRange(Wrap.Lines(BoardRule.OnTheGround(scenario, units)));
        List<TextSection> sections =
        [
            new(scenario.Title, [.. Wrap.Lines(Setting(comparison)), "", .. Wrap.Lines(CompareSentence.Of(comparison, units), rest: "  ")]),
            new("The options side by side", [.. Options(comparison, units), "", .. Costs(comparison, units), .. under]),
        ];
        if (scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(scenario.Assumptions, units)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    /// <summary>What the options cost in money, electricity and walks, what a mixed gas leaves behind, and how battery and water fare; only what some of them has.</summary>
    /// <returns>The table with a blank line under it; nothing where there is nothing to say.</returns>
    internal static IReadOnlyList<string> Costs(Comparison comparison, UnitStyle units)
    {
        FigureTable table = new(ReportTable.CompareCosts, units) { Context = FigureContext.Of(comparison.Base) };
        if (table.Columns(CompareFigures.Options, comparison.Rows).Count() == RankAndGas)
            return [];
        List<string> rules = [];
        if (comparison.Rows.Any(r => r.Cost is not null))
            rules.Add("Cost: paid at refills, and the gas that the cylinders hold less at the end than at the start, at the price of [gas].");
        if (comparison.Rows.Any(r => r.LeftBehind is not null))
            rules.Add("Stays behind: of what is left of a mixed gas, the liquid that at the last night's coldest air cannot feed every appliance in full.");
        IReadOnlyList<string> lines = TextTable.Fit(40, NarrowestName, width => table.Lines(
            CompareFigures.Options, comparison.Rows,
            new FigureTable.Cells<ComparedRow>(new(["Option"], Left: true), -1, (r, _) => r.Option.Name.Length > width ? r.Option.Name[..(width - 3)] + "..." : r.Option.Name)));
        return [.. lines, .. rules.SelectMany(r => Wrap.Lines(r)), ""];
    }

    private static IReadOnlyList<string> Options(Comparison comparison, UnitStyle units) => TextTable.Fit(26, NarrowestName, width => new FigureTable(ReportTable.Compare, units).Lines(
        CompareFigures.Options, comparison.Rows,
        new FigureTable.Cells<ComparedRow>(new(["Option"], Left: true), -1, (r, _) => string.Join('\n', Wrap.Lines(Name(r), width).SelectMany(l => l.Chunk(width)).Select(c => new string(c))))));

    /// <summary>An option's name; the rig as it is with its cylinders.</summary>
    public static string Name(ComparedRow row)
    {
        string name = row.Order == 0 ? $"{row.Option.Name}, {CylinderWords.Names(row.Option.Scenario.Rig)}" : row.Option.Name;
        return row.Option.IsOnGround ? name + " (on the ground)" : name;
    }

    private static string Setting(Comparison comparison)
    {
        int nights = comparison.Rows.Max(r => r.Summary.Nights), options = comparison.Rows.Count - 1;
        return $"The rig as it is and {(options == 1 ? "1 option" : $"{options} options")}, {(nights == 1 ? "1 night" : $"{nights} nights")} from "
            + $"{ClockText.Start(comparison.Base.Start)}.";
    }

    private static string Filled(Scenario scenario)
        => scenario.Rig.Cylinders.Count > 1
            ? "Every cylinder becomes one of the size, as full by part of its legal filling as the one in its place."
            : $"Every size is as full as the cylinder as it is: {UnitStyle.Number(SizeSweep.Fill_frac(scenario.Rig.Cylinders[0]) * 100, 0)} % of its legal filling.";
}
