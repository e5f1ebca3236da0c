using ColdSim.Planning.Figures;
using UnitsNet;
using UnitsNet.Units;
using Asked = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Diagnosis.DiagnosisQuestion>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Diagnosis.DiagnosisReport>;
using Ranked = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Diagnosis.RankedCause>;
using State = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Diagnosis.CylinderState>;
using Test = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Diagnosis.NextTest>;
using Weighed = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Diagnosis.Evidence>;

namespace ColdSim.Planning.Diagnosis;

/// <summary>What is reported of a diagnosis.</summary>
internal static class DiagnosisFigures
{
    // Nothing that people see and a table of judgement is surer than this.
    private const int MostOdds = 50;

    private const int MostNames = 2;

    /// <summary>The words for causes.</summary>
    public static WordTable<Cause> Causes { get; } = new WordTable<Cause>()
        .With(Cause.TooCold, "too_cold", "cylinder too cold")
        .With(Cause.Empty, "empty", "cylinder empty")
        .With(Cause.ButaneLeft, "butane_left", "butane left")
        .With(Cause.Overfilled, "overfilled", "cylinder overfilled")
        .With(Cause.ExcessFlow, "excess_flow", "excess flow tripped")
        .With(Cause.RegulatorIce, "regulator_ice", "ice in the regulator")
        .With(Cause.RegulatorTooSmall, "regulator_small", "regulator too small")
        .With(Cause.AirInLine, "air_in_line", "air in the line")
        .With(Cause.LowVoltage, "low_voltage", "low voltage")
        .With(Cause.Airflow, "airflow", "sail switch, airflow")
        .With(Cause.BlockedVent, "vent_blocked", "vent or intake blocked")
        .With(Cause.Lockout, "lockout", "waiting in lockout")
        .With(Cause.Altitude, "altitude", "altitude")
        .With(Cause.Other, "other", "none of these");

    /// <summary>The words for the cylinder's states.</summary>
    public static WordTable<CylinderFault> Faults { get; } = new WordTable<CylinderFault>()
        .With(CylinderFault.None, "sound", "sound")
        .With(CylinderFault.TooCold, "too_cold", "too cold")
        .With(CylinderFault.Empty, "empty")
        .With(CylinderFault.ButaneLeft, "butane_left", "butane left")
        .With(CylinderFault.Overfilled, "overfilled");

    /// <summary>The words for signs, which are those of the options.</summary>
    public static WordTable<Sign> Signs { get; } = new WordTable<Sign>()
        .With(Sign.Stove, "stove").With(Sign.Fan, "fan").With(Sign.Furnace, "furnace").With(Sign.Volts, "volts")
        .With(Sign.Regulator, "regulator").With(Sign.OpenedFast, "opened-fast").With(Sign.Swapped, "swapped").With(Sign.Filled, "filled")
        .With(Sign.Vents, "vents").With(Sign.Return, "return").With(Sign.Load, "load").With(Sign.ByDay, "by-day")
        .With(Sign.Reopened, "reopened").With(Sign.Reset, "reset").With(Sign.Gas, "gas").With(Sign.Elevation, "elevation");

    /// <summary>The words for readings.</summary>
    public static WordTable<Reading> Readings { get; } = new WordTable<Reading>()
        .With(Reading.Left, "left").With(Reading.Pressure, "pressure").With(Reading.Wall, "wall").With(Reading.FrostLine, "frost-line");

    /// <summary>The words for how a wall feels, which are those of the option.</summary>
    public static WordTable<WallFeel> WallFeels { get; } = new WordTable<WallFeel>()
        .With(WallFeel.Same, "same").With(WallFeel.Colder, "colder").With(WallFeel.MuchColder, "much-colder");

    /// <summary>The words for emergencies.</summary>
    public static WordTable<Emergency> Emergencies { get; } = new WordTable<Emergency>()
        .With(Emergency.None, "none").With(Emergency.GasSmell, "gas_smell").With(Emergency.CarbonMonoxide, "carbon_monoxide");

    private static IReadOnlyList<Asked> ReadingFigures { get; } =
    [
        Asked.Quantity("air_c", q => q.Readings.Air_K is { } air_K ? SiQuantity.Temperature(air_K) : null, TemperatureUnit.DegreeCelsius,
            "outside air", canBeAbsent: true),
        Asked.Quantity("left_frac", q => q.Readings.Left_frac is { } left ? SiQuantity.Ratio(left) : null, RatioUnit.DecimalFraction,
            "what is left, part of the legal filling; given so, or worked out from a mass or a scale", canBeAbsent: true),
        Asked.Quantity("scale_kg", q => q.Readings.Scale_kg is { } scale_kg ? SiQuantity.Mass(scale_kg) : null, MassUnit.Kilogram,
            "what the scale showed, cylinder and all", canBeAbsent: true),
        Asked.Quantity("tare_kg", q => q.Readings.Tare_kg is { } tare_kg ? SiQuantity.Mass(tare_kg) : null, MassUnit.Kilogram,
            "the empty mass taken off it; assumed where `assumptions` says so", canBeAbsent: true),
        Asked.Quantity("pressure_kpa_gauge", q => q.Readings.Pressure_Pa is { } p_Pa ? SiQuantity.Pressure(p_Pa) : null,
            PressureUnit.Kilopascal, "a gauge at the cylinder", canBeAbsent: true),
        Asked.Quantity("wall_c", q => q.Readings.Wall_K is { } wall_K ? SiQuantity.Temperature(wall_K) : null,
            TemperatureUnit.DegreeCelsius, "the cylinder's wall low down, measured", canBeAbsent: true),
        Asked.Word("wall_feel", q => q.Readings.WallFeel, WallFeels, "the same, felt beside something as cold as the air",
            canBeAbsent: true),
        Asked.Quantity("frost_line_m", q => q.Readings.FrostLine_m is { } line_m ? Length.FromMeters(line_m) : null, LengthUnit.Meter,
            "the frost's edge above the body's lowest point; 0 for no frost", canBeAbsent: true),
        Asked.Quantity("board_v", q => q.Board_V is { } board_V ? ElectricPotential.FromVolts(board_V) : null, ElectricPotentialUnit.Volt,
            "voltage at the furnace's board while the fan runs", canBeAbsent: true),
    ];

    private static IReadOnlyList<Weighed> EvidenceFigures { get; } =
    [
        Weighed.Text("sign", NameOf, "the sign or reading, by its option; `air` for the model at the air's temperature"),
        Weighed.Text("state", e => e.Sign is { } sign ? SignStates.Of(sign)[e.State] : null, "the sign's state", canBeAbsent: true),
        Weighed.Number("weight", e => e.Weight,
            "how often it is seen under this cause, over how often under all others; above 1 it speaks for it"),
    ];

    /// <summary>A cause.</summary>
    public static IReadOnlyList<Ranked> CauseFigures { get; } =
    [
        Ranked.Word("cause", r => r.Cause, Causes, "the cause").InTable(ReportTable.Diagnosis, "cause", left: true),
        Ranked.Number("probability", r => r.Probability_frac, "after all that is known; together 1"),
        Ranked.Number("odds", r => r.Odds, "how many times likelier than not").InTable(ReportTable.Diagnosis, "odds", value: OddsOf),
        Ranked.Rows("evidence", r => r.Evidence, EvidenceFigures, "what is known, weighed for this cause, the heaviest first")
            .InTable(ReportTable.Diagnosis, "for it", left: true, value: r => Names(r.Evidence.Where(e => e.IsFor)))
            .InTable(ReportTable.Diagnosis, "against it", left: true, value: r => Names(r.Evidence.Where(e => e.IsAgainst))),
    ];

    private static IReadOnlyList<Test> TestFigures { get; } =
    [
        Test.Text("look_at", t => t.Sign is { } sign ? Signs[sign].Key : Readings[t.Reading!.Value].Key,
            "the sign or reading, by its option"),
        Test.Number("information_bit", t => t.Information_bit, "what it tells on average, in bits"),
        Test.Number("cost_min", t => t.Cost_min, "time and trouble, as minutes; common practice, no source"),
    ];

    /// <summary>A state of the cylinder.</summary>
    public static IReadOnlyList<State> StateFigures { get; } =
    [
        State.Word("state", s => s.Fault, Faults, "state of the cylinder").InTable(ReportTable.DiagnosisStates, "cylinder", left: true),
        State.Quantity("fill", s => SiQuantity.Ratio(s.Fill_frac), RatioUnit.DecimalFraction, "part of the legal filling")
            .InTable(ReportTable.DiagnosisStates, "left", Display.PercentSign),
        State.Quantity("wall_c", s => SiQuantity.Temperature(s.Liquid_K), TemperatureUnit.DegreeCelsius, "liquid, and wall below its line")
            .InTable(ReportTable.DiagnosisStates, "wall, {unit}", Display.WholeDegrees),
        State.Quantity("pressure_kpa_gauge", s => SiQuantity.Pressure(s.Pressure_Pa), PressureUnit.Kilopascal, "gauge pressure")
            .InTable(ReportTable.DiagnosisStates, "pressure, {unit}", Display.GaugePressure),
        State.Quantity("level_m", s => Length.FromMeters(s.Level_m), LengthUnit.Meter, "height of the liquid")
            .InTable(ReportTable.DiagnosisStates, "level, {unit}"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Word("emergency", r => r.Question.Emergency, Emergencies, "what comes before any other answer"),
        Document.Group("readings", r => r.Question, ReadingFigures, "what was measured or felt and given; null for what was not"),
        Document.Rows("causes", r => r.Causes, CauseFigures, "the likeliest first; none in an emergency"),
        Document.Rows("tests", r => r.Tests, TestFigures, "what tells the first two causes apart, the most for its cost first"),
        Document.Quantity("least_kpa_gauge", r => SiQuantity.Pressure(r.Model.Least_Pa), PressureUnit.Kilopascal,
            "least pressure in the cylinder that feeds the furnace, by the model"),
        Document.Quantity("sure_kpa_gauge", r => SiQuantity.Pressure(r.Model.Sure_Pa), PressureUnit.Kilopascal,
            "the same by the regulator's plate"),
        Document.Rows("expected", r => r.Expected, StateFigures,
            "what the model says should be seen now; none without the air's temperature"),
        Document.Texts("assumptions", r => r.Question.Assumptions, "what was assumed"),
    ];

    /// <summary>The odds as people say them, such as "9 to 1".</summary>
    public static string OddsOf(RankedCause cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        double odds = Math.Max(cause.Odds, 1 / cause.Odds);
        if (odds >= MostOdds)
            return FormattableString.Invariant($"{(cause.Odds >= 1 ? $"over {MostOdds} to 1" : $"under 1 to {MostOdds}")}");
        double many = odds >= 10 ? Math.Round(odds / 5) * 5 : Math.Round(odds);
        return many <= 1 ? "even" : cause.Odds >= 1 ? FormattableString.Invariant($"{many:0} to 1")
            : FormattableString.Invariant($"1 to {many:0}");
    }

    private static string Names(IEnumerable<Evidence> evidence)
    {
        string[] names = [.. evidence.Take(MostNames).Select(NameOf)];
        return names.Length == 0 ? "-" : string.Join(", ", names);
    }

    /// <summary>The name of what is known, by its option.</summary>
    public static string NameOf(Evidence evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        return evidence.Sign is { } sign ? Signs[sign].Key : evidence.Reading is { } reading ? Readings[reading].Key : "air";
    }
}
