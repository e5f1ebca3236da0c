using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Measurements;

namespace ColdSim.App.Text;

/// <summary>Measured values beside computed ones: a table with a mark for each difference, and what they come to.</summary>
internal static class MeasuredText
{
    /// <summary>The title of the part.</summary>
    public const string Title = "Measured beside computed";

    // After every column of the figures.
    private const int LastColumn = 100;

    /// <summary>The part of what is printed.</summary>
    public static TextSection Section(MeasuredComparison measured, Scenario scenario, UnitStyle units) => new(
        Title,
        [
            .. Table(measured, scenario, units),
            .. RunText.Points([.. measured.Groups.Select(g => MeasuredWords.Sentence(g, units)), .. Notes(measured)]),
        ]);

    /// <summary>The table.</summary>
    public static IReadOnlyList<string> Table(MeasuredComparison measured, Scenario scenario, UnitStyle units)
    {
        IReadOnlyList<MeasuredLine> lines = MeasuredLine.Of(measured, scenario);
        return new FigureTable(ReportTable.Measured, units).Lines(MeasuredFigures.Lines, lines, Mark(scenario));
    }

    /// <summary>The same before it is set into lines.</summary>
    public static TextGrid Grid(MeasuredComparison measured, Scenario scenario, UnitStyle units)
        => new FigureTable(ReportTable.Measured, units).Grid(MeasuredFigures.Lines, MeasuredLine.Of(measured, scenario), Mark(scenario));

    /// <summary>What is said of the table itself.</summary>
    public static IEnumerable<string> Notes(MeasuredComparison measured)
    {
        if (measured.Groups.Count > 0)
            yield return "off: read less computed; ± is its standard error, which the model's own errors are not part of; times: off in that error";
        if (measured.Rows.Any(r => r.Why == NotCompared.NotAtRest))
            yield return "a voltage while something is drawn or charged is not compared: the model has charge, and no voltage curve under load; --rested where nothing was for hours";
        if (measured.Rows.Any(r => r.Why == NotCompared.Chemistry))
            yield return "a voltage is compared for flooded lead-acid batteries only: for others no published voltage by charge holds";
        if (measured.Rows.Any(r => r.Why == NotCompared.NotRun))
            yield return "not run: outside the weather, or before the start and the first reading of contents";
    }

    // With several cylinders their names take the strip's room.
    private static FigureTable.Cells<MeasuredLine> Mark(Scenario scenario)
    {
        bool strip = scenario.Rig.Cylinders.Count == 1;
        return new(
            new TextColumn(strip ? ["times", ResidualStrip.Heading] : [""], Left: true), LastColumn,
            (line, _) => line.Row.Why != NotCompared.No ? MeasuredFigures.Reasons[line.Row.Why].Text : strip ? ResidualStrip.Of(line.Row.Times) : "");
    }
}
