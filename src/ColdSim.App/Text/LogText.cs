using ColdSim.Files.Logs;
using ColdSim.Model;
using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Measurements;

namespace ColdSim.App.Text;

/// <summary>The log as text, beside what its answer says: what was used between the readings, and what the weather would have used.</summary>
internal static class LogText
{
    /// <summary>What goes below the answer, which has the readings already.</summary>
    public static IReadOnlyList<TextSection> Sections(LogPrediction log, MeasuredComparison measured, Scenario scenario, UnitStyle units, IReadOnlyList<string> cautions)
    {
        IReadOnlyList<LogLineReport> lines = LogReport.Of(log, scenario, []).Lines;
        List<TextSection> sections =
        [
            .. log.Rows.Any(r => r.Predicted is not null) ? [new TextSection("Predicted from the reading before", Predicted(lines, scenario, units))] : Array.Empty<TextSection>(),
            .. log.Days.Count == 0 ? Array.Empty<TextSection>() : [DailyUse(log, scenario, units)],
            .. measured.Rows.Count == 0 ? Array.Empty<TextSection>() : [MeasuredText.Section(measured, scenario, units)],
            new("How to read it", RunText.Points(
            [
                "each ± is one standard uncertainty; an error that two readings share, such as the tare's, is not in the use between them",
                .. log.Rows.Any(r => r.Row.Used is { } used && used < -2 * r.Row.UsedUncertainty!.Value)
                    ? (IEnumerable<string>)["a use clearly below zero is a filling that the log lacks (--filled), or a wrong reading"] : [],
            ])),
        ];
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    /// <summary>What a good entry means, such as "Tue 12 Jan 16:05, weight 69.0 lb: 40.0 lb of propane, give or take 0.5 lb".</summary>
    public static string Entry(LogEntry entry, Rig rig, UnitStyle units)
    {
        string read = $"{ClockText.DayClock(entry.Time)}, {(rig.Cylinders.Count > 1 && entry.Cylinder.Length > 0 ? $"{entry.Cylinder}, " : "")}{entry.Method} {entry.Reading}";
        if (MeasuredMethod.Of(entry.Method) is not null)
        {
            Measurement measured = MeasurementReader.Read(entry, rig).Measurement!;
            return $"{read}: give or take {MeasuredWords.Amount(measured.Quantity, measured.StandardError, units)}; 'coldsim log show' compares it with the run";
        }

        ContentsEstimate held = EntryReader.Read(entry, rig).Reading!.Contents(rig);
        return $"{read}: {units.Mass(held.Mass.Kilograms)} of propane, give or take {units.Mass(held.StandardUncertainty.Kilograms)}";
    }

    /// <summary>The readings, a row each.</summary>
    internal static IReadOnlyList<string> Table(IReadOnlyList<LogLineReport> lines, UnitStyle units)
        => new FigureTable(ReportTable.Log, units).Lines(LogFigures.Lines, lines);

    private static IReadOnlyList<string> Predicted(IReadOnlyList<LogLineReport> lines, Scenario scenario, UnitStyle units) =>
    [
        .. new FigureTable(ReportTable.LogPrediction, units).Lines(
            LogFigures.Lines, [.. lines.Where(l => l.Prediction.Predicted is not null)]),
        .. Wrap.Lines($"by the simulator, {Parameters(scenario)}; times: in standard errors of the difference"),
    ];

    /// <summary>Which parameters a prediction is made with.</summary>
    public static string Parameters(Scenario scenario) => scenario.Fit is null ? "with the coach as the scenario says" : "with the coach as [fit] has it";

    /// <summary>Daily use so far, in gas and money, beside what the weather would have predicted.</summary>
    public static TextSection DailyUse(LogPrediction log, Scenario scenario, UnitStyle units)
        => new("Day by day so far", [.. DailyTable(log, scenario, units), .. Wrap.Lines(Note(log, scenario, units))]);

    public static IReadOnlyList<string> DailyTable(LogPrediction log, Scenario scenario, UnitStyle units)
        => new FigureTable(ReportTable.DailyUse, units) { Context = FigureContext.Of(scenario), Gap = 2 }.Lines(
            LogFigures.Days, [.. LogDay.Of(log, scenario), LogDay.TotalOf(log, scenario)]);

    private static string Note(LogPrediction log, Scenario scenario, UnitStyle units)
    {
        double hours = log.Days.Sum(d => d.Covered.Hours);
        string day = hours < 1 ? "" : $"{units.Mass(log.Used.Kilograms * 24 / hours)} in 24 hours where the weather asks {units.Mass(log.Predicted.Kilograms * 24 / hours)}, {Parameters(scenario)}; ";
        string price = scenario.Prices.Gas is { Each: false } ? "" : "; no [gas] price, so no money";
        return $"{day}between two readings the use is shared out over the hours as the simulator has it{price}";
    }
}
