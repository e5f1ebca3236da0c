using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.Comparison>;
using Option = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.ComparedRow>;

namespace ColdSim.Planning.Compare;

/// <summary>What is reported of a comparison.</summary>
internal static class CompareFigures
{
    /// <summary>An option: its own figures, and all that is reported of a run.</summary>
    public static IReadOnlyList<Option> Options { get; } =
    [
        Option.Count("rank", r => r.Rank, "1 for the best; the same where the rule cannot tell them apart")
            .InTable(ReportTable.Compare, "", order: -2)
            .AlsoIn(ReportTable.CompareCosts)
            .AlsoIn(ReportTable.CompareOnScreen)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "rank", order: 0),
        Option.Text("name", r => r.Option.Name, "the option's name; `as it is` for the scenario without changes").InCsv(CsvTable.Compare, "option", order: 1),
        Option.Flag("as_it_is", r => r.Order == 0, "whether it is the scenario without changes"),
        Option.Texts("cylinders", r => FigureContext.Of(r.Option.Scenario).Cylinders, "its cylinders' names")
            .InCsv(CsvTable.Compare, "cylinders", value: r => string.Join(" + ", FigureContext.Of(r.Option.Scenario).Cylinders), order: 2),
        Option.Flag("on_ground", r => r.Option.IsOnGround, "whether its cylinder is an upright one of over 105 lb of water, too large to be carried"),
        Option.Flag("holds", r => r.Holds, "whether all nights hold and its cylinder did not end the run").InCsv(CsvTable.Compare, "holds", order: 3),
        Option.Word("end", r => r.End, ReportWords.Ends, "why its run ended").InCsv(CsvTable.Compare, "end", order: 5),
        .. RunFigures.Summaries.Select(OfOption),
        Option.Number("cost", r => r.Cost, "money paid at refills, and the gas that the cylinders hold less at the end than at the start at the price of `[gas]`; null where nothing has a price", canBeAbsent: true)
            .InTable(ReportTable.CompareCosts, "Cost|{currency}", Display.Money, shown: HasCost, order: 1)
            .InTable(ReportTable.CompareOnScreen, "Cost|{currency}", Display.Money, shown: HasCost, order: 8)
            .InTable(ReportTable.OptionsPage, "Cost|{currency}", Display.Money, shown: HasCost, order: 8)
            .InCsv(CsvTable.Compare, "cost", 2, order: 18),
        Option.Quantity("left_behind_kg", r => r.LeftBehind, MassUnit.Kilogram, "of a mixed gas, the liquid in all cylinders that would stay in them at the last night's coldest air; null for propane alone and where the regulator never passes what all appliances ask together", canBeAbsent: true)
            .InTable(ReportTable.CompareCosts, "Stays|behind|{unit}", shown: rows => rows.Any(r => r.LeftBehind is not null), order: 4)
            .InCsv(CsvTable.Compare, "left behind", 3, order: 24),
        Option.Texts("assumptions", r => r.Option.Scenario.Assumptions, "what was assumed because this option's scenario does not say it"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", c => c.Base.Title, "the scenario's title"),
        Document.Time("start", c => c.Base.Start, "when every run started"),
        Document.Text("rule", _ => Ranking.Rule, "the rule of the ranking, in words"),
        Document.Flag("any_holds", c => c.AnyHolds, "whether anything compared holds all nights"),
        Document.Rows("options", c => c.Rows, Options, "the scenario as it is and its options, the best first"),
        LogStartFigures.In<Comparison>(c => c.Base),
        Document.Texts("assumptions", c => c.Base.Assumptions, "what was assumed because the scenario as it is does not say it"),
    ];

    // Two columns need more of the option than its run: whether its cylinder ended the run, and whether its rig has water at all.
    private static Option OfOption(Figure<RunSummary> figure)
    {
        Option option = figure.From<ComparedRow>(r => r.Summary);
        return figure.Key switch
        {
            "verdict" => option
                .InTable(ReportTable.Compare, "", left: true, value: r => r.StoppedByCylinder ? "stops" : ReportWords.Verdicts[r.Summary.Verdict], order: 1)
                .AlsoIn(ReportTable.OptionsPage),
            "water_freezes_at" => option.InTable(ReportTable.CompareCosts, "Water|freezes", Display.DateClock, shown: HasWater, order: 7),
            _ => option,
        };
    }

    private static bool HasCost(IReadOnlyList<ComparedRow> rows) => rows.Any(r => r.Cost is not null);

    private static bool HasWater(IReadOnlyList<ComparedRow> rows) => rows.Any(r => r.Option.Scenario.Rig.Nodes().Any(n => n.Water_kg > 0));
}
