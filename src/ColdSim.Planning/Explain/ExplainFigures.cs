using ColdSim.Planning.Actions;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Chained = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Explain.ChainOfCause>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Explain.Explanation>;
using Eased = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Explain.LimitSensitivity>;
using Fault = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Explain.SimilarFault>;
using Limited = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Explain.BindingLimit>;

namespace ColdSim.Planning.Explain;

/// <summary>What is reported of an explanation.</summary>
internal static class ExplainFigures
{
    private const string Assumed = "what was assumed because the scenario does not say it";

    /// <summary>The words for limits.</summary>
    public static WordTable<Limit> Limits { get; } = new WordTable<Limit>()
        .With(Limit.HeatIntoLiquid, "heat_into_liquid")
        .With(Limit.LittleLiquid, "little_liquid")
        .With(Limit.Regulator, "regulator")
        .With(Limit.Appliances, "appliances")
        .With(Limit.Altitude, "altitude")
        .With(Limit.LiquidGone, "liquid_gone");

    private static IReadOnlyList<Eased> Sensitivities { get; } =
    [
        Eased.Word("limit", e => e.Limit, Limits, "which"),
        Eased.Flag("applies", e => e.Applies, "whether the rig has it"),
        Eased.Time("first_short", e => e.FirstShort, "the first shortage then", canBeAbsent: true),
        Eased.Flag("gone", e => e.GoneAt_frac is not null, "whether it is gone"),
        Eased.Number("delay_s", e => e.Delay_s, "how much later; null where it is gone or cannot be said", canBeAbsent: true),
        Eased.Number("gone_at", e => e.GoneAt_frac, "the least easing with which it is gone", canBeAbsent: true),
    ];

    private static IReadOnlyList<Limited> Binding { get; } =
    [
        Limited.Word("binds", l => l.Binds, Limits, "which limit binds; null where none delays the shortage by a minute", canBeAbsent: true),
        Limited.Texts("ties", l => [.. l.Ties.Select(t => Limits[t].Key)], "others that do as much"),
        Limited.Number("eased_by", l => l.Part_frac, "by which part each was eased"),
        Limited.Rows("eased", l => l.Eased, Sensitivities, "limit by limit"),
    ];

    private static IReadOnlyList<Chained> Chain { get; } =
    [
        Chained.Time("from", c => c.From, "when its liquid was last at its warmest in the twelve hours before"),
        Chained.Time("to", c => c.To, "where the chain ends"),
        Chained.Text("cylinder", c => c.Cylinder, "the cylinder in use"),
        Chained.Quantity("burner_time_s", c => SiQuantity.Duration(c.Burner_s), DurationUnit.Second, "time with the furnace lit"),
        Chained.Quantity("gas_given_kg", c => SiQuantity.Mass(c.Given_kg), MassUnit.Kilogram, "gas, all appliances"),
        Chained.Quantity("evaporation_kj", c => SiQuantity.Energy(c.Evaporation_J), EnergyUnit.Kilojoule, "heat that evaporation took"),
        Chained.Quantity("surroundings_kj", c => SiQuantity.Energy(c.Surroundings_J), EnergyUnit.Kilojoule, "heat from air, ground and sky"),
        Chained.Quantity("sun_kj", c => SiQuantity.Energy(c.Sun_J), EnergyUnit.Kilojoule, "heat from the sun"),
        Chained.Quantity("blanket_kj", c => SiQuantity.Energy(c.Blanket_J), EnergyUnit.Kilojoule, "heat from blankets"),
        Chained.Number("wetted_wall_m2", c => c.WettedWall_m2, "outside wall under the liquid's level at the end"),
        Chained.Number("whole_wall_m2", c => c.WholeWall_m2, "the whole outside wall"),
        Chained.Flag("has_liquid", c => c.HasLiquid, "whether liquid is left"),
        Chained.Quantity("left_kg", c => SiQuantity.Mass(c.Left_kg), MassUnit.Kilogram, "propane in that cylinder"),
        Chained.Quantity("liquid_from_c", c => SiQuantity.Temperature(c.LiquidFrom_K), TemperatureUnit.DegreeCelsius, "its liquid at the start of the chain"),
        Chained.Quantity("liquid_to_c", c => SiQuantity.Temperature(c.LiquidTo_K), TemperatureUnit.DegreeCelsius, "and at its end"),
        Chained.Quantity("outside_c", c => SiQuantity.Temperature(c.Outside_K), TemperatureUnit.DegreeCelsius, "outside air at the end"),
        Chained.Quantity("inside_c", c => SiQuantity.Temperature(c.Inside_K), TemperatureUnit.DegreeCelsius, "inside air at the end", canBeAbsent: true),
        Chained.Quantity("pressure_kpa_gauge", c => SiQuantity.Pressure(c.Pressure_Pa), PressureUnit.Kilopascal, "before the regulator"),
        Chained.Quantity("regulator_could_pass_w", c => SiQuantity.Power(c.CanGive_W), PowerUnit.Watt, "at full delivery pressure"),
        Chained.Quantity("asked_w", c => SiQuantity.Power(c.Asked_W), PowerUnit.Watt, "what was asked"),
        Chained.Group("liquid", c => c.Liquid is { } liquid ? new GasParts(liquid) : null, NightFigures.GasParts,
            "what its liquid is made of at the end, parts by mass; null for propane alone and without liquid", canBeAbsent: true),
        Chained.Quantity("left_behind_kg", c => c.Blend?.LeftBehind, MassUnit.Kilogram, "of a mixed gas, as in the night's `blends[]` of a run", canBeAbsent: true),
        Chained.Quantity("left_behind_at_c", c => c.Blend?.LeftBehindAt, TemperatureUnit.DegreeCelsius, "the air for which that is", canBeAbsent: true),
    ];

    private static IReadOnlyList<Fault> Faults { get; } =
    [
        Fault.Text("trouble", f => f.Trouble, "what it is"),
        Fault.Text("signs", f => f.Signs, "what sets it apart"),
        Fault.Text("source", f => f.Source, "where that is from"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", e => e.Report.Scenario.Title, "the scenario's title"),
        Document.Word("verdict", e => e.Report.Summary.Verdict, ReportWords.Verdicts, "of the whole run"),
        Document.Flag("at_time", e => e.AtTime, "whether a time was asked for; then there is a chain only"),
        Document.Time("shortage", e => e.Shortage, "the shortage that is explained", canBeAbsent: true),
        Document.Time("first_failure", e => e.Failed?.FirstFailure, "when the cause began that failed the first night that does not hold", canBeAbsent: true),
        Document.Time("flat_at", e => e.Failed is { Verdict: Verdict.BatteryFlat } n ? n.FirstFailure : null, "the same, where it is the battery", canBeAbsent: true),
        Document.Count("night", e => e.Night > 0 ? e.Night : null, "the night it is in", canBeAbsent: true),
        Document.Group("limit", e => e.Limit, Binding, "which limit binds", canBeAbsent: true),
        Document.Group("chain", e => e.Chain, Chain, "how the cylinder came to that state"),
        Document.Group("actions", e => e.Plan, ActionFigures.All, "what to do, each action re-run over the whole run; null where a time was asked for", canBeAbsent: true),
        Document.Rows("look_alikes", _ => SimilarFaults.All, Faults, "what looks the same from inside"),
        LogStartFigures.In<Explanation>(e => e.Report.Scenario),
        Document.Texts("assumptions", e => e.Report.Scenario.Assumptions, Assumed),
    ];
}
