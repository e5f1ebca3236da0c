using ColdSim.Physics.Units;
using ColdSim.Planning.Figures;
using UnitsNet;
using UnitsNet.Units;
using Contents = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.ContentsFigures>;
using Cylinder = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.GaugedCylinder>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.GaugeReport>;
using Drift = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.ExpectedReading>;
using Finding = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.PressureFinding>;
using Gap = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.Disagreement>;
using LiquidOf = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.LiquidTemperature>;
using Next = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.NextReading>;
using Reading = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.WeighedEstimate>;
using Source = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Gauges.ErrorSource>;

namespace ColdSim.Planning.Gauges;

/// <summary>What is reported of readings of a cylinder.</summary>
internal static class GaugeFigures
{
    /// <summary>The words for what a pressure says.</summary>
    public static WordTable<PressureVerdict> PressureVerdicts { get; } = new WordTable<PressureVerdict>()
        .With(PressureVerdict.CannotTell, "cannot_tell")
        .With(PressureVerdict.LiquidGone, "liquid_gone")
        .With(PressureVerdict.LighterGasOrAir, "lighter_gas_or_air");

    /// <summary>The words for what the liquid's temperature is known from.</summary>
    public static WordTable<TemperatureSource> TemperatureSources { get; } = new WordTable<TemperatureSource>()
        .With(TemperatureSource.Thermometer, "thermometer")
        .With(TemperatureSource.Pressure, "pressure")
        .With(TemperatureSource.Both, "both")
        .With(TemperatureSource.PressureTooLow, "pressure_too_low")
        .With(TemperatureSource.PressureTooHigh, "pressure_too_high");

    /// <summary>The words for why a reading is the one to repeat.</summary>
    public static WordTable<RepeatReason> RepeatReasons { get; } = new WordTable<RepeatReason>()
        .With(RepeatReason.Outlier, "outlier")
        .With(RepeatReason.Narrows, "narrows")
        .With(RepeatReason.SharedError, "shared_error");

    private static IReadOnlyList<Cylinder> Cylinders { get; } =
    [
        Cylinder.Text("name", c => c.Name, "its size, or `own`"),
        Cylinder.Text("orientation", c => c.Lies ? "horizontal" : "upright", "`upright`, `horizontal`"),
        Cylinder.Number("water_capacity_l", c => 1000 * c.Volume_m3, "inside volume"),
        Cylinder.Number("outside_diameter_m", c => c.OutsideDiameter_m, "outside diameter"),
        Cylinder.Number("legal_fill_kg", c => c.LegalFill_kg, "42 % of the water capacity by mass"),
    ];

    private static IReadOnlyList<Contents> ContentsOf { get; } =
    [
        Contents.Quantity("mass_kg", c => c.Mass, MassUnit.Kilogram, "liquid and vapour"),
        Contents.Quantity("volume_at_60f_l", c => c.Volume, VolumeUnit.Liter, "as liquid at 60 °F"),
        Contents.Quantity("of_legal_fill", c => c.OfLegalFill, RatioUnit.DecimalFraction, "part of the legal fill"),
        Contents.Quantity("heat_mj", c => c.Energy, EnergyUnit.Megajoule, "gross heat"),
        Contents.Quantity("full_fire_s", c => c.AtFullFire, DurationUnit.Second, "furnace at full fire", canBeAbsent: true),
    ];

    /// <summary>A share of a reading's uncertainty.</summary>
    public static IReadOnlyList<Source> Errors { get; } =
    [
        Source.Text("source", e => e.Share.Input.Name, "the input").InTable(ReportTable.GaugeErrors, "stated error of", left: true).InTable(ReportTable.GaugeErrors, "±", value: e => e.Share.Input, order: 1),
        Source.Quantity("change_kg", e => SiQuantity.Mass(e.Share.Change_kg), MassUnit.Kilogram, "change of mass for one standard uncertainty upwards")
            .InTable(ReportTable.GaugeErrors, "makes, {unit}", Display.FineMass, value: e => SiQuantity.Mass(Math.Abs(e.Share.Change_kg)), order: 2),
        Source.Flag("shared", e => e.Share.Input.Shared, "whether every reading has the same error of it"),
        Source.Text("basis", e => e.Share.Input.Basis, "where the stated error comes from").InTable(ReportTable.GaugeErrors, "basis", left: true, order: 3),
    ];

    /// <summary>A reading.</summary>
    public static IReadOnlyList<Reading> Readings { get; } =
    [
        Reading.Text("reading", r => r.Estimate.Reading, "its name, such as `weight 2`").InTable(ReportTable.Gauges, "reading", left: true),
        Reading.Quantity("mass_kg", r => r.Estimate.Mass, MassUnit.Kilogram, "what it means alone").InTable(ReportTable.Gauges, "mass, {unit}", Display.FineMass),
        Reading.Quantity("standard_uncertainty_kg", r => r.Estimate.StandardUncertainty, MassUnit.Kilogram, "of that").InTable(ReportTable.Gauges, "±", Display.FineMass),
        Reading.Number("weight", r => r.Weight, "what it counts; together 1").InTable(ReportTable.Gauges, "counts, %", value: r => 100 * r.Weight),
        Reading.Quantity("repeated_uncertainty_kg", r => r.Repeated, MassUnit.Kilogram, "standard uncertainty of all together if it is read once more", canBeAbsent: true)
            .InTable(ReportTable.Gauges, "± if read|once more", Display.FineMass, shown: rows => rows.Any(r => r.Repeated is not null)),
        Reading.Number("from_others_in_uncertainties", r => r.FromOthers, "how far it is from all others together, signed, in standard uncertainties of that difference", canBeAbsent: true),
        Reading.Rows("errors", r => r.Estimate.Shares.Select(s => new ErrorSource(s)), Errors, "where the uncertainty comes from")
            .InTable(ReportTable.Gauges, "most of it from", left: true, value: r => r.Estimate.Shares.MaxBy(s => Math.Abs(s.Change_kg)).Input.Name),
    ];

    private static IReadOnlyList<Gap> Disagreements { get; } =
    [
        Gap.Text("more", d => d.More, "the one that means more"),
        Gap.Text("less", d => d.Less, "the one that means less"),
        Gap.Quantity("gap_kg", d => d.Gap, MassUnit.Kilogram, "by how much"),
        Gap.Number("gap_in_uncertainties", d => d.Times, "in standard uncertainties of the difference"),
        Gap.Text("likeliest", d => d.Cause.Name, "the input that explains it with the least error of its own"),
        Gap.Number("likeliest_in_uncertainties", d => d.CauseTimes, "how much of it, signed"),
    ];

    private static IReadOnlyList<LiquidOf> Liquids { get; } =
    [
        LiquidOf.Quantity("temperature_c", l => SiQuantity.Temperature(l.Temperature_K), TemperatureUnit.DegreeCelsius, "the temperature that the level readings use"),
        LiquidOf.Number("standard_uncertainty_k", l => l.Error_K, "of that"),
        LiquidOf.Word("known_from", l => l.Source, TemperatureSources, "what it is known from; with the last two the thermometer alone, which the pressure contradicts"),
        LiquidOf.Quantity("by_thermometer_c", l => SiQuantity.Temperature(l.ByThermometer_K), TemperatureUnit.DegreeCelsius, "the thermometer alone", canBeAbsent: true),
        LiquidOf.Quantity("by_pressure_c", l => SiQuantity.Temperature(l.ByPressure?.Temperature_K), TemperatureUnit.DegreeCelsius, "the pressure alone, for pure propane", canBeAbsent: true),
        LiquidOf.Number("by_pressure_standard_uncertainty_k", l => l.ByPressure?.Error_K, "of that, with the grade", canBeAbsent: true),
        LiquidOf.Number("difference_in_uncertainties", l => l.Difference, "pressure's less thermometer's, in standard uncertainties of the difference", canBeAbsent: true),
    ];

    private static IReadOnlyList<Next> Nexts { get; } =
    [
        Next.Text("reading", n => n.Repetition.Reason == RepeatReason.SharedError ? null : n.Reading.Reading, "the one to repeat; null where no repetition gains a twentieth", canBeAbsent: true),
        Next.Word("reason", n => n.Repetition.Reason, RepeatReasons, "why"),
        Next.Text("shared_error", n => n.Repetition.Shared?.Name, "the error shared by readings that makes most of the uncertainty", canBeAbsent: true),
    ];

    private static IReadOnlyList<Finding> Findings { get; } =
    [
        Finding.Word("verdict", f => f.Verdict, PressureVerdicts, "what it says"),
        Finding.Quantity("reading_kpa_gauge", f => f.Reading, PressureUnit.Kilopascal, "the reading"),
        Finding.Quantity("expected_low_kpa_gauge", f => f.ExpectedLow, PressureUnit.Kilopascal, "least that liquid of the stated temperature may have", canBeAbsent: true),
        Finding.Quantity("expected_high_kpa_gauge", f => f.ExpectedHigh, PressureUnit.Kilopascal, "most", canBeAbsent: true),
        Finding.Quantity("boils_at_c", f => f.LiquidTemperature, TemperatureUnit.DegreeCelsius, "temperature of pure liquid at that pressure", canBeAbsent: true),
        Finding.Quantity("boils_with_ethane_at_c", f => f.LiquidTemperatureWithEthane, TemperatureUnit.DegreeCelsius, "the same with 3 % ethane", canBeAbsent: true),
    ];

    /// <summary>What a mass shows at one temperature.</summary>
    public static IReadOnlyList<Drift> Drifts { get; } =
    [
        Drift.Quantity("temperature_c", r => r.Temperature, TemperatureUnit.DegreeCelsius, "the temperature").InTable(ReportTable.Drift, "|{unit}", Display.WholeDegrees),
        Drift.Quantity("liquid_of_volume", r => r.Liquid, RatioUnit.DecimalFraction, "what a float shows")
            .InTable(ReportTable.Drift, "liquid,|% of volume", Display.FinePercent, value: r => r.LiquidFull ? "full" : r.Liquid),
        Drift.Quantity("level_m", r => r.Level, LengthUnit.Meter, "level inside").InTable(ReportTable.Drift, "level|inside, {unit}"),
        Drift.Quantity("echo_us", r => r.Echo, DurationUnit.Microsecond, "time of flight from the lowest point and back")
            .InTable(ReportTable.Drift, "echo,|µs", Display.Microseconds),
        Drift.Quantity("uncorrected_echo_of_height", r => r.EchoShown, RatioUnit.DecimalFraction, "what a sensor shows that reckons with one temperature")
            .InTable(ReportTable.Drift, "uncorrected echo,|% of height", Display.FinePercent),
        Drift.Quantity("pressure_kpa", r => r.LiquidFull ? null : r.Pressure, PressureUnit.Kilopascal, "absolute", canBeAbsent: true)
            .InTable(ReportTable.Drift, "pressure,|{unit} gauge", value: r => r.LiquidFull ? null : SiQuantity.Pressure(r.Pressure.Pascals - ConversionFactors.StandardAtmosphere_Pa)),
        Drift.Flag("liquid_full", r => r.LiquidFull, "whether the liquid would fill it"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Group("cylinder", r => r.Question.Cylinder, Cylinders, "what was read"),
        Document.Quantity("liquid_temperature_c", r => SiQuantity.Temperature(r.Question.Temperature_K), TemperatureUnit.DegreeCelsius, "as stated, or with a pressure as that puts it", canBeAbsent: true),
        Document.Group("liquid", r => r.Question.Liquid, Liquids, "what a pressure beside other readings says about the liquid's temperature", canBeAbsent: true),
        Document.Group("contents", r => r.Contents, ContentsOf, "all readings together; null where a pressure cannot say", canBeAbsent: true),
        Document.Group("standard_uncertainty", r => r.Uncertainty, ContentsOf, "of each of these", canBeAbsent: true),
        Document.Rows("readings", WeighedEstimate.Of, Readings, "reading by reading"),
        Document.Group("disagreement", r => r.Combined?.Disagreement, Disagreements, "the two readings furthest beyond their errors", canBeAbsent: true),
        Document.Group("repeat", NextReading.Of, Nexts, "which reading to repeat; null for one alone", canBeAbsent: true),
        Document.Group("pressure", r => r.Pressure, Findings, "what a pressure says", canBeAbsent: true),
        Document.Rows("drift", Expected, Drifts, "the same mass from -40 to 40 °C"),
        Document.Texts("assumptions", r => r.Assumptions, "what was assumed"),
        Document.Texts("cautions", r => r.Cautions, "what the methods mislead by"),
    ];

    private static IEnumerable<ExpectedReading> Expected(GaugeReport report) => report.Contents is not { } contents ? []
        : DriftTable.Of(
            report.Question.Cylinder, contents.Mass, Enumerable.Range(-4, 9).Select(i => Temperature.FromDegreesCelsius(10 * i)), report.Question.Assumed_K);
}

/// <summary>A reading with what it counts among all.</summary>
/// <param name="Estimate">What it means alone.</param>
/// <param name="Weight">What it counts; together 1.</param>
internal sealed record WeighedEstimate(ContentsEstimate Estimate, double Weight)
{
    /// <summary>Standard uncertainty of all together if it is read once more; null for one reading alone.</summary>
    public Mass? Repeated { get; private init; }

    /// <summary>How far it is from all others together, signed, in standard uncertainties of that difference; null for one reading alone.</summary>
    public double? FromOthers { get; private init; }

    /// <summary>All of a report.</summary>
    public static IEnumerable<WeighedEstimate> Of(GaugeReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        Repetition? repetition = report.Combined?.Repetition;
        return report.Estimates.Select((e, i) => new WeighedEstimate(e, report.Combined!.Weights[i])
        {
            Repeated = repetition is null ? null : Mass.FromKilograms(repetition.Repeated_kg[i]),
            FromOthers = repetition?.FromOthers[i],
        });
    }
}

/// <summary>The reading to repeat as a row of figures.</summary>
internal sealed record NextReading(Repetition Repetition, ContentsEstimate Reading)
{
    /// <summary>That of a report; null where there is one reading or none.</summary>
    public static NextReading? Of(GaugeReport report)
        => report.Combined?.Repetition is { } repetition ? new(repetition, report.Estimates[repetition.Reading]) : null;
}

/// <summary>A share of an estimate's uncertainty as a row of figures.</summary>
internal sealed record ErrorSource(ErrorShare Share);
