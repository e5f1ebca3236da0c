using ColdSim.Model;
using ColdSim.Physics.Units;
using ColdSim.Planning.Figures;
using UnitsNet;
using Group = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Measurements.MeasuredGroup>;
using Line = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Measurements.MeasuredLine>;

namespace ColdSim.Planning.Measurements;

/// <summary>What is reported of measured values beside computed ones.</summary>
internal static class MeasuredFigures
{
    private const string InUnit = "in that unit";

    /// <summary>The quantities, with the word for a table.</summary>
    public static WordTable<MeasuredQuantity> Quantities { get; } = new WordTable<MeasuredQuantity>()
        .With(MeasuredQuantity.Pressure, "pressure")
        .With(MeasuredQuantity.Liquid, "liquid")
        .With(MeasuredQuantity.Wall, "wall")
        .With(MeasuredQuantity.Inside, "inside")
        .With(MeasuredQuantity.Voltage, "voltage");

    /// <summary>The causes.</summary>
    public static WordTable<MeasuredCause> Causes { get; } = new WordTable<MeasuredCause>()
        .With(MeasuredCause.Coach, "coach")
        .With(MeasuredCause.Cylinder, "cylinder")
        .With(MeasuredCause.Battery, "battery");

    /// <summary>Why a value is not compared.</summary>
    public static WordTable<NotCompared> Reasons { get; } = new WordTable<NotCompared>()
        .With(NotCompared.No, "no", "")
        .With(NotCompared.NotRun, "not_run", "not run")
        .With(NotCompared.WithoutCoach, "without_coach", "no coach")
        .With(NotCompared.WithoutBattery, "without_battery", "no battery")
        .With(NotCompared.NotAtRest, "not_at_rest", "not at rest")
        .With(NotCompared.Chemistry, "chemistry", "not flooded");

    /// <summary>What a group says.</summary>
    public static WordTable<MeasuredFinding> Findings { get; } = new WordTable<MeasuredFinding>()
        .With(MeasuredFinding.Agrees, "agrees")
        .With(MeasuredFinding.Higher, "higher")
        .With(MeasuredFinding.Lower, "lower");

    /// <summary>How the air was kept.</summary>
    public static WordTable<InsideState> InsideStates { get; } = new WordTable<InsideState>()
        .With(InsideState.None, "none")
        .With(InsideState.Held, "held")
        .With(InsideState.Free, "free");

    /// <summary>A value.</summary>
    public static IReadOnlyList<Line> Lines { get; } =
    [
        Line.Count("line", l => l.Row.Measurement.Line, "its line in the log").InTable(ReportTable.Measured, "line"),
        Line.Time("time", l => l.Row.Measurement.Time, "when it was measured")
            .InTable(ReportTable.Measured, "measured", Display.DayClock, left: true, value: l => l.LocalTime),
        Line.Word("quantity", l => l.Row.Measurement.Quantity, Quantities, "what was measured")
            .InTable(ReportTable.Measured, "what", left: true, value: l => l.What),
        Line.Word("cause", l => l.Row.Cause, Causes, "the part of the rig that it speaks of"),
        Line.Text("cylinder", l => l.Cylinder, "which cylinder; null where it is none's", canBeAbsent: true),
        Line.Text("unit", l => UnitOf(l.Row.Measurement.Quantity), "the unit of the four numbers below: `c`, `gauge_kpa` or `v`; a difference in `c` is in kelvins"),
        Line.Number("measured", l => InDocument(l.Row.Measurement.Quantity, l.Row.Measurement.Value), InUnit)
            .InTable(ReportTable.Measured, "value", Display.WithUnit, value: l => ValueOf(l.Row.Measurement.Quantity, l.Row.Measurement.Value)),
        Line.Number("computed", l => InDocument(l.Row.Measurement.Quantity, l.Row.Computed?.Value),
                "what the run has, as the mean of the half hour around; null where it is not compared", canBeAbsent: true)
            .InTable(ReportTable.Measured, "computed", Display.WithUnit, value: l => ValueOf(l.Row.Measurement.Quantity, l.Row.Computed?.Value)),
        Line.Number("difference", l => DifferenceInDocument(l.Row.Measurement.Quantity, l.Row.Difference), "measured less computed; null likewise", canBeAbsent: true)
            .InTable(ReportTable.Measured, "off", value: l => DifferenceOf(l.Row.Measurement.Quantity, l.Row.Difference)),
        Line.Number("standard_error", l => DifferenceInDocument(l.Row.Measurement.Quantity, l.Row.StandardError),
                "of the difference: the measured value's and the run's scatter in that half hour; null likewise", canBeAbsent: true)
            .InTable(ReportTable.Measured, "±", value: l => DifferenceOf(l.Row.Measurement.Quantity, l.Row.StandardError)),
        Line.Number("off_standard_errors", l => l.Row.Times, "the difference in its standard errors; null likewise", canBeAbsent: true)
            .InTable(ReportTable.Measured, "times", Display.OneDecimal),
        Line.Word("not_compared", l => l.Row.Why, Reasons, "why it is not compared"),
        Line.Text("note", l => l.Row.Measurement.Note, "the person's words"),
    ];

    /// <summary>The values of one quantity together.</summary>
    public static IReadOnlyList<Group> Groups { get; } =
    [
        Group.Word("cause", g => g.Cause, Causes, "the part of the rig that they speak of"),
        Group.Word("quantity", g => g.Quantity, Quantities, "what was measured"),
        Group.Word("inside", g => g.Inside, InsideStates, "of the air inside: whether the computed furnace held it at its set point, or it was free to fall"),
        Group.Count("count", g => g.Count, "how many values"),
        Group.Text("unit", g => UnitOf(g.Quantity), "the unit of the three numbers below, as above"),
        Group.Number("mean_difference", g => DifferenceInDocument(g.Quantity, g.Mean), "mean of measured less computed"),
        Group.Number("scatter", g => DifferenceInDocument(g.Quantity, g.Scatter), "standard deviation of the differences about it; 0 of one value"),
        Group.Number("standard_error", g => DifferenceInDocument(g.Quantity, g.StandardError),
            "of the mean: one instrument's own error does not shrink with the number of its values"),
        Group.Word("finding", g => g.Finding, Findings, "whether the mean lies beyond two of its standard errors"),
    ];

    /// <summary>The two figures of a document that has them: the values, and what they come to.</summary>
    /// <param name="measured">The document's comparison.</param>
    /// <param name="scenario">The document's scenario.</param>
    /// <typeparam name="T">The document.</typeparam>
    public static IReadOnlyList<Figure<T>> In<T>(Func<T, MeasuredComparison> measured, Func<T, Scenario> scenario) =>
    [
        Figure<T>.Rows("measured", d => MeasuredLine.Of(measured(d), scenario(d)), Lines,
            "what was measured beside contents, from the log, beside what was computed, in order of time"),
        Figure<T>.Rows("measured_by_cause", d => measured(d).Groups, Groups, "what the compared values come to"),
    ];

    /// <summary>A value of a quantity; null for none.</summary>
    public static IQuantity? ValueOf(MeasuredQuantity quantity, double? value) => quantity switch
    {
        MeasuredQuantity.Pressure => SiQuantity.Pressure(value),
        MeasuredQuantity.Voltage => value is { } volts ? ElectricPotential.FromVolts(volts) : null,
        _ => SiQuantity.Temperature(value),
    };

    /// <summary>A difference of two values of a quantity; null for none.</summary>
    public static IQuantity? DifferenceOf(MeasuredQuantity quantity, double? difference) => quantity switch
    {
        MeasuredQuantity.Pressure => SiQuantity.Pressure(difference),
        MeasuredQuantity.Voltage => difference is { } volts ? ElectricPotential.FromVolts(volts) : null,
        _ => difference is { } kelvins ? TemperatureDelta.FromKelvins(kelvins) : null,
    };

    private static string UnitOf(MeasuredQuantity quantity) => quantity switch
    {
        MeasuredQuantity.Pressure => "gauge_kpa",
        MeasuredQuantity.Voltage => "v",
        _ => "c",
    };

    private static double? InDocument(MeasuredQuantity quantity, double? value) => quantity switch
    {
        MeasuredQuantity.Pressure => value / 1000,
        MeasuredQuantity.Voltage => value,
        _ => value - ConversionFactors.ZeroCelsius_K,
    };

    private static double? DifferenceInDocument(MeasuredQuantity quantity, double? difference) => quantity == MeasuredQuantity.Pressure ? difference / 1000 : difference;
}

/// <summary>A measured value with what it needs of its scenario to be reported.</summary>
/// <param name="Row">The value beside the run.</param>
/// <param name="Rig">Where it was measured.</param>
/// <param name="Offset">The scenario's clock.</param>
internal sealed record MeasuredLine(MeasuredRow Row, Rig Rig, TimeSpan Offset)
{
    /// <summary>The cylinder's name; null where it is none's.</summary>
    public string? Cylinder => Row.Cylinder;

    /// <summary>What was measured, with the cylinder where there are several.</summary>
    public string What => Cylinder is { } cylinder && Rig.Cylinders.Count > 1
        ? $"{MeasuredFigures.Quantities[Row.Measurement.Quantity].Text}, {cylinder}" : MeasuredFigures.Quantities[Row.Measurement.Quantity].Text;

    /// <summary>When it was measured, by the scenario's clock.</summary>
    public DateTimeOffset LocalTime => Row.Measurement.Time.ToOffset(Offset);

    /// <summary>The lines of a comparison.</summary>
    /// <param name="measured">The comparison.</param>
    /// <param name="scenario">Its scenario.</param>
    public static IReadOnlyList<MeasuredLine> Of(MeasuredComparison measured, Scenario scenario)
        => [.. measured.Rows.Select(r => new MeasuredLine(r, scenario.Rig, scenario.Start.Offset))];
}
