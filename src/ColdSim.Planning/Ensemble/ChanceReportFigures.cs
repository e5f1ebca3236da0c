using ColdSim.Planning.Figures;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using UnitsNet.Units;
using Chance = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.Proportion>;
using Decided = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.SequentialDecision>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.ChanceReport>;
using Fan = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.FanRow>;
using Influenced = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.Influence>;
using LeftOut = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.YearLeftOut>;
using Night = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.ChanceNight>;
using Option = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.OptionChance>;
using Size = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Ensemble.StatedSize>;

namespace ColdSim.Planning.Ensemble;

/// <summary>What is reported of a chance of holding.</summary>
internal static class ChanceReportFigures
{
    /// <summary>The words for what is not known.</summary>
    public static WordTable<Uncertainty> Uncertainties { get; } = new WordTable<Uncertainty>()
        .With(Uncertainty.Temperature, "temperature", "the forecast's temperature")
        .With(Uncertainty.Wind, "wind", "the forecast's wind")
        .With(Uncertainty.HeatLoss, "heat_loss", "the coach's heat loss")
        .With(Uncertainty.Infiltration, "infiltration", "how leaky the coach is")
        .With(Uncertainty.Contents, "contents", "what is in the cylinders")
        .With(Uncertainty.SetPoint, "set_point", "the set points")
        .With(Uncertainty.DoorOpenings, "door_openings", "the door");

    /// <summary>The words for why a year is left out.</summary>
    public static WordTable<WhyLeftOut> WhysLeftOut { get; } = new WordTable<WhyLeftOut>()
        .With(WhyLeftOut.Gap, "gap")
        .With(WhyLeftOut.Begins, "record_begins")
        .With(WhyLeftOut.Ends, "record_ends");

    /// <summary>The words for the side of the wanted chance.</summary>
    public static WordTable<ChanceSide> Sides { get; } = new WordTable<ChanceSide>()
        .With(ChanceSide.Above, "above")
        .With(ChanceSide.Below, "below")
        .With(ChanceSide.Open, "open");

    private static IReadOnlyList<Decided> Decisions { get; } =
    [
        Decided.Word("side", d => d.Side, Sides, "where the chance is beside the wanted one; open where the members do not say"),
        Decided.Number("low", d => d.Low_frac, "lower end of the 95 % interval that holds at every look"),
        Decided.Number("high", d => d.High_frac, "upper end"),
        Decided.Count("members_at_most", d => d.Most, "members after which it stops without an answer"),
    ];

    private static IReadOnlyList<Chance> Proportions { get; } =
    [
        Chance.Count("count", c => c.Count, "members of which that is so"),
        Chance.Number("chance", c => c.Chance_frac, "their part")
            .InTable(ReportTable.ChanceNights, "Holds|%", Display.Chance)
            .InTable(ReportTable.ChanceOptions, "Holds|%", Display.Chance),
        Chance.Number("low", c => c.Low_frac, "lower end of its 95 % interval")
            .InTable(ReportTable.ChanceNights, "Within|%", value: c => c)
            .InTable(ReportTable.ChanceOptions, "Within|%", value: c => c),
        Chance.Number("high", c => c.High_frac, "upper end"),
    ];

    private static IReadOnlyList<LeftOut> YearsLeftOut { get; } =
    [
        LeftOut.Count("year", y => y.Year, "which"),
        LeftOut.Word("why", y => y.Why, WhysLeftOut, "a gap of over 3 h in these days, or the record itself begins or ends in them"),
    ];

    /// <summary>A night's chance.</summary>
    public static IReadOnlyList<Night> Nights { get; } =
    [
        Night.Count("number", n => n.Chance.Night.Number, "1 for the first").InTable(ReportTable.ChanceNights, "Night", left: true, value: n => n.Chance.Night.Evening),
        Night.Time("from", n => n.Chance.Night.From, "first instant counted, without errors"),
        Night.Time("to", n => n.Chance.Night.To, "last instant counted"),
        .. Proportions.Select(p => p.From((ChanceNight n) => n.Chance.Holds)),
        Night.Quantity("left_at_dawn_p10_kg", n => SiQuantity.Mass(n.Chance.LeftAtDawn_kg?.Low), MassUnit.Kilogram, "a tenth of the members have at most this", canBeAbsent: true).InTable(ReportTable.ChanceNights, "Left|{dawn}|{unit}"),
        Night.Quantity("left_at_dawn_p50_kg", n => SiQuantity.Mass(n.Chance.LeftAtDawn_kg?.Median), MassUnit.Kilogram, "half of them", canBeAbsent: true).InTable(ReportTable.ChanceNights, "|half|"),
        Night.Quantity("left_at_dawn_p90_kg", n => SiQuantity.Mass(n.Chance.LeftAtDawn_kg?.High), MassUnit.Kilogram, "nine tenths of them", canBeAbsent: true).InTable(ReportTable.ChanceNights, "|nine|tenths"),
        Night.Time("dry_p10", n => n.Within(n.Dry.Low), "a tenth of the members are dry by then").InTable(ReportTable.ChanceNights, "Dry|a tenth|at").OutsideDocuments(),
        Night.Time("dry_p50", n => n.Within(n.Dry.Median), "half of them").InTable(ReportTable.ChanceNights, "|half|").OutsideDocuments(),
        Night.Time("dry_p90", n => n.Within(n.Dry.High), "nine tenths of them").InTable(ReportTable.ChanceNights, "|nine|tenths").OutsideDocuments(),
    ];

    /// <summary>What moves the chance.</summary>
    public static IReadOnlyList<Influenced> Influences { get; } =
    [
        Influenced.Word("of", i => i.Of, Uncertainties, "what is not known").InTable(ReportTable.Influences, "What is not known", left: true),
        Influenced.Number("rank_correlation", i => i.Correlation, "Spearman's, with what is left at the end where it holds and minus the time short where it does not")
            .InTable(ReportTable.Influences, "Rank|correlation", Display.TwoDecimals),
        Influenced.Number("share", i => i.Share_frac, "its square, as a part of the sum of all").InTable(ReportTable.Influences, "Share", Display.Share),
    ];

    /// <summary>An option's chance.</summary>
    public static IReadOnlyList<Option> Options { get; } =
    [
        Option.Text("name", o => o.Option.Name, "its name").InTable(ReportTable.ChanceOptions, "Option", Display.ShortText, left: true),
        .. Proportions.Select(p => p.From((OptionChance o) => o.AllNights)),
        Option.Number("cost", o => o.Cost, "as in a comparison", canBeAbsent: true)
            .InTable(ReportTable.ChanceOptions, "Cost", Display.Money, shown: options => options.Any(o => o.Cost is not null)),
    ];

    private static IReadOnlyList<Size> Errors { get; } =
    [
        Size.Text("key", e => e.Key, "the key of `[chance]`, with its unit"),
        Size.Number("value", e => e.Size.Value, "how large"),
        Size.Text("source", e => e.Size.Source, "who says so"),
    ];

    private static IReadOnlyList<Fan> FanPoints { get; } =
    [
        Fan.Time("time", f => f.Start.AddSeconds(f.Point.Time_s), "when"),
        Fan.Quantity("inside_p10_c", f => SiQuantity.Temperature(f.Point.Inside_K?.Low), TemperatureUnit.DegreeCelsius, "inside air: a tenth of the members are below", canBeAbsent: true),
        Fan.Quantity("inside_p50_c", f => SiQuantity.Temperature(f.Point.Inside_K?.Median), TemperatureUnit.DegreeCelsius, "half of them", canBeAbsent: true),
        Fan.Quantity("inside_p90_c", f => SiQuantity.Temperature(f.Point.Inside_K?.High), TemperatureUnit.DegreeCelsius, "nine tenths of them", canBeAbsent: true),
        Fan.Quantity("left_p10_kg", f => SiQuantity.Mass(f.Point.Left_kg.Low), MassUnit.Kilogram, "propane left: a tenth of the members are below"),
        Fan.Quantity("left_p50_kg", f => SiQuantity.Mass(f.Point.Left_kg.Median), MassUnit.Kilogram, "half of them"),
        Fan.Quantity("left_p90_kg", f => SiQuantity.Mass(f.Point.Left_kg.High), MassUnit.Kilogram, "nine tenths of them"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", r => r.Scenario.Title, "the scenario's title"),
        Document.Time("start", r => r.Scenario.Start, "when the run starts"),
        Document.Count("members_asked", r => r.Asked, "members, or years, that were to be run"),
        Document.Count("members", r => r.Done, "those that are in here"),
        Document.Count("seed", r => r.Seed, "of the random numbers; null by years", canBeAbsent: true),
        Document.Numbers("years", r => r.Years.Select(y => (double)y), "the years; empty for an ensemble of errors"),
        Document.Rows("years_left_out", r => r.YearsLeftOut, YearsLeftOut, "years of the record that could not be run"),
        Document.Number("wanted", r => r.Scenario.WantedChance_frac, "the chance that is wanted"),
        Document.Group("decision", r => r.Decision, Decisions, "the answer of `--members auto`", canBeAbsent: true),
        Document.Word("verdict_without_errors", r => r.Plain.Summary.Verdict, ReportWords.Verdicts, "of the plain run"),
        Document.Group("all_nights", r => r.AllNights, Proportions, "all nights hold"),
        Document.Group("runs_dry", r => r.RunsDry, Proportions, "it runs dry"),
        Document.Time("dry_p10", r => r.Dry.Low, "a tenth of the members are dry by then; null past the end", canBeAbsent: true),
        Document.Time("dry_p50", r => r.Dry.Median, "half of them", canBeAbsent: true),
        Document.Time("dry_p90", r => r.Dry.High, "nine tenths of them", canBeAbsent: true),
        Document.Rows("nights", ChanceNight.Of, Nights, "night by night"),
        Document.Rows("influences", r => r.Influences, Influences, "what matters, the most first"),
        Document.Rows("options", r => r.Options, Options, "the scenario's options, with the same random numbers"),
        Document.Text("cheapest_as_wanted", r => r.Cheapest?.Option.Name, "the cheapest option with the wanted chance", canBeAbsent: true),
        Document.Rows("errors", r => StatedSizes(r.Scenario.Errors), Errors, "what may be off"),
        Document.Rows("fan", r => r.Fan.Select(p => new FanRow(r.Scenario.Start, p)), FanPoints, "hour by hour, at most 400 points"),
        LogStartFigures.In<ChanceReport>(r => r.Scenario),
        Document.Texts("assumptions", r => r.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];

    private static IEnumerable<StatedSize> StatedSizes(ErrorSizes errors) =>
    [
        new("temperature_error_k", errors.Temperature),
        new("temperature_growth_k", errors.TemperatureGrowth),
        new("correlation_time_s", errors.CorrelationTime),
        new("tail", errors.Tail),
        new("wind_error", errors.Wind),
        new("heat_loss_error", errors.HeatLoss),
        new("infiltration_error", errors.Infiltration),
        new("reading_error_kg", errors.Reading),
        new("set_point_error_k", errors.SetPoint),
        new("door_openings", errors.DoorOpenings),
    ];
}

/// <summary>The size of an error with its key.</summary>
/// <param name="Key">The key of <c>[chance]</c>, with its unit.</param>
/// <param name="Size">How large, and who says so.</param>
internal sealed record StatedSize(string Key, ErrorSize Size);

/// <summary>An instant of the fan.</summary>
/// <param name="Start">When the run starts.</param>
/// <param name="Point">The spreads then.</param>
internal sealed record FanRow(DateTimeOffset Start, FanPoint Point);

/// <summary>A night's chance beside when the members run dry.</summary>
/// <param name="Chance">The night's chance.</param>
/// <param name="Dry">When the members are dry, over all nights.</param>
internal sealed record ChanceNight(NightChance Chance, Spread<DateTimeOffset?> Dry)
{
    /// <summary>The nights of a report.</summary>
    public static IEnumerable<ChanceNight> Of(ChanceReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return report.Nights.Select(n => new ChanceNight(n, report.Dry));
    }

    /// <summary>An instant that falls in this night; else null.</summary>
    public DateTimeOffset? Within(DateTimeOffset? time) => time >= Chance.Night.From && time < Chance.Night.To ? time : null;
}
