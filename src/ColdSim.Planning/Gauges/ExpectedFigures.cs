using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Cylinder = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.ExpectedCylinder>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.ExpectedReadings>;
using Instrument = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.InstrumentReadings>;

namespace ColdSim.Planning.Gauges;

/// <summary>What is reported of a cylinder's instruments at an instant of a run.</summary>
/// <remarks>The table is turned: it has a row for each figure and a column for each state.</remarks>
internal static class ExpectedFigures
{
    /// <summary>The instruments, what a person is likeliest to have first.</summary>
    public static IReadOnlyList<Instrument> Instruments { get; } =
    [
        Instrument.Quantity("scale_kg", r => r.Scale, MassUnit.Kilogram, "a scale under the cylinder: tare, gas and frost")
            .InTable(ReportTable.Expected, "scale, cylinder and all, {unit}"),
        Instrument.Quantity("level_of_height", r => r.OfHeight, RatioUnit.DecimalFraction,
            "liquid, part of the height inside: a strip or sight")
            .InTable(ReportTable.Expected, "level, % of the height"),
        Instrument.Quantity("liquid_of_volume", r => r.OfVolume, RatioUnit.DecimalFraction,
            "liquid, part of the volume inside: a float or dial")
            .InTable(ReportTable.Expected, "float or dial, % of the volume", value: r => r.IsLiquidFull ? "full" : r.OfVolume),
        Instrument.Quantity("line_m", r => r.Line, LengthUnit.Meter, "the line that hot water shows, above the lowest point of the body")
            .InTable(ReportTable.Expected, "line by hot water, {unit}", Display.OneDecimal),
        Instrument.Quantity("frost_line_m", r => r.FrostLine, LengthUnit.Meter,
            "the frost's edge, above the same point; null without frost", canBeAbsent: true)
            .InTable(ReportTable.Expected, "frost's edge, {unit}", Display.OneDecimal),
        Instrument.Quantity("pressure_kpa_gauge", r => r.IsLiquidFull ? null : r.Gauge, PressureUnit.Kilopascal,
            "a gauge at the cylinder", canBeAbsent: true)
            .InTable(ReportTable.Expected, "pressure, {unit}", Display.GaugePressure),
        Instrument.Quantity("liquid_c", r => r.Liquid, TemperatureUnit.DegreeCelsius, "the liquid")
            .InTable(ReportTable.Expected, "liquid, {unit}", Display.WholeDegrees),
        Instrument.Quantity("wall_below_c", r => r.WallBelow, TemperatureUnit.DegreeCelsius,
            "the steel below the level; null where it is not known", canBeAbsent: true)
            .InTable(ReportTable.Expected, "wall below the level, {unit}", Display.WholeDegrees),
        Instrument.Quantity("wall_above_c", r => r.WallAbove, TemperatureUnit.DegreeCelsius,
            "the steel above the level, its mean, or under a blanket its hottest place; null where it is not known", canBeAbsent: true)
            .InTable(ReportTable.Expected, "wall above the level, {unit}", Display.WholeDegrees),
        Instrument.Quantity("uncorrected_echo_of_height", r => r.EchoOfHeight, RatioUnit.DecimalFraction,
            "an echo sensor that assumes one temperature, part of the height inside; null for a mixed gas", canBeAbsent: true)
            .InTable(ReportTable.Expected, "echo made for {assumed}, % of height"),
        Instrument.Quantity("level_m", r => r.Level, LengthUnit.Meter,
            "from the lowest point inside to the liquid's surface: an echo's distance")
            .InTable(ReportTable.Expected, "echo's distance, {unit}", Display.OneDecimal),
        Instrument.Quantity("echo_us", r => r.EchoTime, DurationUnit.Microsecond,
            "an echo's time there and back; null for a mixed gas", canBeAbsent: true)
            .InTable(ReportTable.Expected, "echo's time, µs", Display.Microseconds),
        Instrument.Quantity("uncorrected_echo_m", r => r.EchoHeight, LengthUnit.Meter, "the echo sensor's height", canBeAbsent: true)
            .InTable(ReportTable.Expected, "that sensor, as a height, {unit}", Display.OneDecimal),
        Instrument.Quantity("uncorrected_echo_of_volume", r => r.EchoOfVolume, RatioUnit.DecimalFraction,
            "the echo sensor's part of the volume inside; null where it shows more than the height", canBeAbsent: true)
            .InTable(ReportTable.Expected, "that sensor, % of the volume"),
        Instrument.Quantity("uncorrected_echo_of_full", r => r.EchoOfFull, RatioUnit.DecimalFraction,
            "the echo sensor's part of a full cylinder's level, which is 80 % of the volume", canBeAbsent: true)
            .InTable(ReportTable.Expected, "that sensor, % of full"),
        Instrument.Quantity("gas_kg", r => r.Gas, MassUnit.Kilogram, "gas in it, liquid and vapour")
            .InTable(ReportTable.Expected, "gas in it, {unit}"),
        Instrument.Quantity("of_legal_fill", r => r.OfLegalFill, RatioUnit.DecimalFraction, "that as part of the legal fill")
            .InTable(ReportTable.Expected, "that, % of the legal fill"),
        Instrument.Quantity("frost_kg", r => r.Frost, MassUnit.Kilogram, "frost on the wetted wall, which a scale weighs as gas")
            .InTable(ReportTable.Expected, "frost on it, {unit}", Display.FineMass),
        Instrument.Flag("has_liquid", r => r.HasLiquid, "whether there is liquid"),
        Instrument.Flag("liquid_full", r => r.IsLiquidFull, "whether the liquid would fill it"),
    ];

    private static IReadOnlyList<Cylinder> Cylinders { get; } =
    [
        Cylinder.Text("name", c => c.Name, "what it is called"),
        Cylinder.Flag("in_use", c => c.InUse, "whether gas is drawn from it"),
        Cylinder.Quantity("tare_kg", c => c.Tare, MassUnit.Kilogram, "its empty mass"),
        Cylinder.Flag("usual_tare", c => c.HasUsualTare, "whether that is what is usual for its size; the stamp decides"),
        Cylinder.Group("then", c => c.Then, Instruments, "what its instruments show at that time"),
        Cylinder.Group("warmed", c => c.Warmed, Instruments, "what the same gas shows as warm as the air outside at that time"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", e => e.Run.Scenario.Title, "the scenario's title"),
        Document.Time("at", e => e.At, "the time, to a minute"),
        Document.Quantity("outside_c", e => e.Outside, TemperatureUnit.DegreeCelsius, "outside air then"),
        Document.Quantity("delivery_pressure_kpa_gauge", e => e.Delivery, PressureUnit.Kilopascal, "pressure at the appliances"),
        Document.Quantity("echo_assumes_c", e => SiQuantity.Temperature(e.Assumed_K), TemperatureUnit.DegreeCelsius,
            "the liquid temperature that the echo sensor assumes"),
        Document.Rows("cylinders", e => e.Cylinders, Cylinders, "one for each cylinder, in order"),
        Document.Text("chosen", e => e.Chosen.Name, "the cylinder that was named, or the one in use"),
        LogStartFigures.In<ExpectedReadings>(e => e.Run.Scenario),
        Document.Texts("assumptions", e => e.Run.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];
}
