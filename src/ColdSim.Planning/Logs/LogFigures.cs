using ColdSim.Model;
using ColdSim.Planning.Figures;
using UnitsNet;
using UnitsNet.Units;
using Day = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Logs.LogDay>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Logs.LogReport>;
using Line = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Logs.LogLineReport>;

namespace ColdSim.Planning.Logs;

/// <summary>What is reported of a log.</summary>
internal static class LogFigures
{
    /// <summary>A day's use, beside the simulator.</summary>
    public static IReadOnlyList<Day> Days { get; } =
    [
        Day.Day("day", d => d.Use.Day, "the day, such as `2027-01-13`").InTable(ReportTable.DailyUse, "day", left: true, value: d => d.IsTotal ? "in all" : d.Use.Day),
        Day.Quantity("covered_h", d => d.Use.Covered, DurationUnit.Hour, "hours of it between readings").InTable(ReportTable.DailyUse, "hours|read", Display.Hours),
        Day.Quantity("used_kg", d => d.Use.Used, MassUnit.Kilogram, "gas used in them").InTable(ReportTable.DailyUse, "used|{unit}", Display.FineMass),
        Day.Quantity("used_standard_uncertainty_kg", d => d.Use.UsedUncertainty, MassUnit.Kilogram, "its standard uncertainty")
            .InTable(ReportTable.DailyUse, "±", Display.FineMass, value: d => d.IsTotal ? "" : d.Use.UsedUncertainty),
        Day.Quantity("predicted_kg", d => d.Use.Predicted, MassUnit.Kilogram, "what the simulator used in the same hours")
            .InTable(ReportTable.DailyUse, "weather|says|{unit}", Display.FineMass)
            .InTable(ReportTable.DailyUse, "used|of that|%", value: d => d.Use.Predicted.Kilograms < 0.01 ? null : 100 * (d.Use.Used / d.Use.Predicted)),
        Day.Number("money", d => d.Money, "what the gas used costs; null without a price by mass", canBeAbsent: true)
            .InTable(ReportTable.DailyUse, "costs|{currency}", Display.Money, shown: days => days.Any(d => d.Money is not null)),
    ];

    /// <summary>A line of the log.</summary>
    public static IReadOnlyList<Line> Lines { get; } =
    [
        Line.Count("line", l => l.Row.Reading.Line, "its line in the log").InTable(ReportTable.Log, "line").InTable(ReportTable.LogPrediction, "line"),
        Line.Time("time", l => l.Row.Reading.Time, "when it was read")
            .InTable(ReportTable.Log, "read", Display.DayClock, left: true, value: l => l.LocalTime)
            .InTable(ReportTable.LogPrediction, "read", Display.DayClock, left: true, value: l => l.LocalTime),
        Line.Text("cylinder", l => l.Cylinder, "which cylinder").InTable(ReportTable.Log, "cylinder", left: true, value: l => l.OneOf, shown: rows => rows.Any(l => l.OneOf is not null)),
        Line.Text("method", l => l.Row.Reading.Reading.Name, "how").InTable(ReportTable.Log, "method", left: true),
        Line.Quantity("mass_kg", l => l.Row.Contents.Mass, MassUnit.Kilogram, "what it means")
            .InTable(ReportTable.Log, "holds|{unit}", Display.FineMass)
            .InTable(ReportTable.LogPrediction, "holds|{unit}", Display.FineMass),
        Line.Quantity("standard_uncertainty_kg", l => l.Row.Contents.StandardUncertainty, MassUnit.Kilogram, "of that").InTable(ReportTable.Log, "±", Display.FineMass),
        Line.Quantity("used_kg", l => l.Row.Used, MassUnit.Kilogram, "since the reading before; null for the first and after a filling", canBeAbsent: true)
            .InTable(ReportTable.Log, "used|{unit}", Display.FineMass),
        Line.Quantity("used_standard_uncertainty_kg", l => l.Row.UsedUncertainty, MassUnit.Kilogram, "of that; an error that both readings share is not in it", canBeAbsent: true)
            .InTable(ReportTable.Log, "±", Display.FineMass)
            .InTable(ReportTable.Log, "per day|{unit}", Display.FineMass, value: l => l.UsedPerDay),
        Line.Quantity("predicted_kg", l => l.Prediction.Predicted, MassUnit.Kilogram, "what the simulator, started from the reading before, has left; null for the first, after a filling and outside the weather", canBeAbsent: true)
            .InTable(ReportTable.LogPrediction, "predicted|{unit}", Display.FineMass)
            .InTable(ReportTable.LogPrediction, "off|{unit}", Display.FineMass, value: l => l.Prediction.Off),
        Line.Number("off_standard_errors", l => l.Prediction.Times, "the reading less that, in standard errors of the difference", canBeAbsent: true)
            .InTable(ReportTable.LogPrediction, "times", Display.OneDecimal)
            .InTable(ReportTable.LogPrediction, "", left: true, value: l => MarkOf(l)),
        Line.Flag("filled", l => l.Row.Reading.Filled, "filled or changed since the reading before")
            .InTable(ReportTable.Log, "", left: true, value: l => l.Row.Reading.FillingNoticed ? "filled?" : l.Row.Reading.Filled ? "filled" : ""),
        Line.Flag("filling_noticed", l => l.Row.Reading.FillingNoticed, "whether the log does not say that it was filled, and the readings after it do"),
        Line.Text("note", l => l.Row.Reading.Note, "the person's words"),
    ];

    /// <summary>The words beside a reading.</summary>
    public static WordTable<ReadingMark> Marks { get; } = new WordTable<ReadingMark>()
        .With(ReadingMark.None, "none", "")
        .With(ReadingMark.Far, "far", "far off")
        .With(ReadingMark.LooksWrong, "looks_wrong", "looks wrong")
        .With(ReadingMark.AfterWrong, "after_wrong", "after a wrong one");

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Rows("readings", l => l.Lines, Lines, "in order of time"),
        Document.Rows("days", l => l.Days, Days, "daily use, as far as readings cover it"),
        Document.Texts("left_out", l => l.LeftOut, "lines that are left out, each with its place and why: damaged ones (with `--skip-damaged`), and readings that cannot be right beside the others"),
    ];

    private static Word MarkOf(LogLineReport line) => Marks[line.Prediction.Mark];
}

/// <summary>A day's use with its price.</summary>
/// <param name="Use">The use.</param>
/// <param name="Money">What it costs; null without a price by mass.</param>
internal sealed record LogDay(UseOfDay Use, double? Money)
{
    /// <summary>Whether it is all days together, which have no date and no uncertainty here.</summary>
    public bool IsTotal { get; private init; }

    /// <summary>The days of a log.</summary>
    public static IEnumerable<LogDay> Of(LogPrediction log, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(scenario);
        return log.Days.Select(d => new LogDay(d, CostOf(d.Used, scenario)));
    }

    /// <summary>All days of a log together.</summary>
    public static LogDay TotalOf(LogPrediction log, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(scenario);
        return new(new(default, Duration.FromHours(log.Days.Sum(d => d.Covered.Hours)), log.Used, Mass.Zero, log.Predicted), CostOf(log.Used, scenario)) { IsTotal = true };
    }

    private static double? CostOf(Mass used, Scenario scenario) => scenario.Prices.Gas is { Each: false } price ? price.Of(used.Kilograms) : null;
}

/// <summary>A line of a log with what it needs of its scenario.</summary>
/// <param name="Prediction">The reading, and what the simulator says of it.</param>
/// <param name="Before">The cylinder's reading before; null for its first.</param>
/// <param name="Rig">Whose cylinders.</param>
/// <param name="Offset">The scenario's clock.</param>
internal sealed record LogLineReport(PredictedRow Prediction, LogRow? Before, Rig Rig, TimeSpan Offset)
{
    /// <summary>The reading and what it means.</summary>
    public LogRow Row => Prediction.Row;

    /// <summary>The cylinder's name in the log.</summary>
    public string Cylinder => Rig.Cylinders.Count == 1 ? Rig.Cylinders[0].Name : Rig.NameOf(Row.Reading.Cylinder);

    /// <summary>Its name where there are several; else null.</summary>
    public string? OneOf => Rig.Cylinders.Count > 1 ? Rig.NameOf(Row.Reading.Cylinder) : null;

    /// <summary>When it was read, by the scenario's clock.</summary>
    public DateTimeOffset LocalTime => Row.Reading.Time.ToOffset(Offset);

    /// <summary>Use a day since the reading before; null for the first and within an hour.</summary>
    public Mass? UsedPerDay => Before is { } before && Row.Used is { } used && (Row.Reading.Time - before.Reading.Time).TotalDays is var days && days > 1.0 / 24 ? used / days : null;
}

/// <summary>A log beside the simulator.</summary>
internal sealed record LogReport
{
    /// <summary>Its lines, in order of time.</summary>
    public required IReadOnlyList<LogLineReport> Lines { get; init; }

    /// <summary>Use by day.</summary>
    public required IReadOnlyList<LogDay> Days { get; init; }

    /// <summary>Lines that were left out, each with its place and why.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>Of a prediction.</summary>
    /// <param name="log">The readings beside the simulator.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="leftOut">Lines that were left out, each with its place and why.</param>
    public static LogReport Of(LogPrediction log, Scenario scenario, IReadOnlyList<string> leftOut)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(scenario);
        return new()
        {
            Lines =
            [
                .. log.Rows.Select((r, i) => new LogLineReport(
                    r, log.Rows.Take(i).LastOrDefault(b => b.Row.Reading.Cylinder == r.Row.Reading.Cylinder)?.Row, scenario.Rig, scenario.Start.Offset)),
            ],
            Days = [.. LogDay.Of(log, scenario)],
            LeftOut = leftOut,
        };
    }
}
