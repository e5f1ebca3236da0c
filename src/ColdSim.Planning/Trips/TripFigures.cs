using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Trips.TripReport>;
using Filled = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Trips.TripRefillRow>;
using Night = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Trips.TripNightRow>;
using Stop = ColdSim.Planning.Figures.Figure<ColdSim.Planning.TripStop>;

namespace ColdSim.Planning.Trips;

/// <summary>What is reported of a trip.</summary>
internal static class TripFigures
{
    /// <summary>The words for what is done at a refill.</summary>
    public static WordTable<RefillKind> RefillKinds { get; } = new WordTable<RefillKind>()
        .With(RefillKind.Fill, "fill", "filled")
        .With(RefillKind.Exchange, "exchange", "exchanged");

    /// <summary>The words for what ended a filling.</summary>
    public static WordTable<FillingEnd> FillingEnds { get; } = new WordTable<FillingEnd>()
        .With(FillingEnd.Amount, "amount")
        .With(FillingEnd.Volume, "volume")
        .With(FillingEnd.Weight, "weight")
        .With(FillingEnd.Full, "full_before");

    /// <summary>The words for how long a refill can wait.</summary>
    public static WordTable<WaitKind> Waits { get; } = new WordTable<WaitKind>()
        .With(WaitKind.NotNeeded, "not_needed", "not needed")
        .With(WaitKind.CanWait, "can_wait", "can wait")
        .With(WaitKind.CannotWait, "cannot_wait", "cannot wait")
        .With(WaitKind.NoLaterDay, "no_later_day", "cannot wait")
        .With(WaitKind.Refused, "refused")
        .With(WaitKind.NotKnown, "not_known", "cannot wait");

    /// <summary>A stop.</summary>
    public static IReadOnlyList<Stop> Stops { get; } =
    [
        Stop.Text("name", s => s.Name, "its name"),
        Stop.Time("from", s => s.From, "when the coach is there"),
        Stop.Time("to", s => s.To, "when it leaves"),
        Stop.Number("elevation_m", s => s.Site.Elevation_m, "height above the sea"),
        Stop.Flag("hookup", s => s.Site.Hookup, "whether there is shore power"),
    ];

    /// <summary>A night: all that is reported of a run's night, and where it is, its margin and its refills.</summary>
    public static IReadOnlyList<Night> Nights { get; } =
    [
        .. NightFigures.All.Select(f => f.From<TripNightRow>(r => r.Night.Night)),
        Night.Count("stop", r => r.Night.Stop + 1, "the stop where the coach is at midnight; null on the road", canBeAbsent: true)
            .InTable(ReportTable.Trip, "At", value: r => r.Night.Stop is { } stop ? stop + 1 : "road", order: -1)
            .AlsoIn(ReportTable.TripPage)
            .InCsv(CsvTable.Trip, "stop", value: r => r.Night.Stop is { } stop ? r.Trip.Trip.Stops[stop].Name : null, order: -2),
        Night.Quantity("margin_w", r => r.Night.Margin?.Surplus, PowerUnit.Watt, "smallest margin: gas that could have been given at full delivery pressure less what was asked, in the minute in which that was least among those in which gas was asked for; null where none was", canBeAbsent: true)
            .InTable(ReportTable.Trip, "Least|margin|{unit}", Display.ShortPower, order: 1)
            .AlsoIn(ReportTable.TripPage, Display.Usual)
            .InCsv(CsvTable.Trip, "margin", order: 1),
        Night.Time("margin_at", r => r.Night.Margin?.At, "that minute's end", canBeAbsent: true),
        Night.Numbers("refills", r => r.Night.Refills.Select(i => i + 1.0), "refills between its noons")
            .InTable(ReportTable.Trip, "Refill", left: true, value: r => string.Join(' ', r.Night.Refills.Select(i => $"R{i + 1}")), order: 5)
            .InCsv(CsvTable.Trip, "refills", value: r => string.Join(' ', r.Night.Refills.Select(i => $"{i + 1}")), order: 4),
    ];

    /// <summary>A refill.</summary>
    public static IReadOnlyList<Filled> Refills { get; } =
    [
        Filled.Time("at", r => r.Refill.At, "when")
            .InTable(ReportTable.Refills, "", left: true, value: r => $"R{r.Place + 1}")
            .InTable(ReportTable.Refills, "When", Display.DayClock, left: true),
        Filled.Text("station", r => r.Refill.Station, "where; empty where nothing is said"),
        Filled.Count("cylinder", r => r.Refill.Cylinder + 1, "which cylinder")
            .InTable(ReportTable.Refills, "Cylinder", left: true, value: r => r.Trip.Run.Scenario.Rig.NameOf(r.Refill.Cylinder)),
        Filled.Word("kind", r => r.Refill.Kind, RefillKinds, "what is done")
            .InTable(ReportTable.Refills, "What", left: true, value: r => r.Outcome is null ? "not reached" : r.Outcome.Refused ? "refused" : RefillKinds[r.Refill.Kind]),
        Filled.Flag("refused", r => r.Outcome?.Refused ?? false, "whether it is refused, the cylinder being past its requalification date"),
        Filled.Quantity("before_kg", r => SiQuantity.Mass(r.Outcome?.Before.Propane_kg), MassUnit.Kilogram, "propane in it before; null where the run ends before the refill", canBeAbsent: true)
            .InTable(ReportTable.Refills, "Before|{unit}"),
        Filled.Quantity("bought_kg", r => SiQuantity.Mass(r.Outcome?.Bought_kg), MassUnit.Kilogram, "propane bought; null where the run ends before", canBeAbsent: true)
            .InTable(ReportTable.Refills, "Bought|{unit}"),
        Filled.Quantity("after_kg", r => SiQuantity.Mass(r.After?.Propane_kg), MassUnit.Kilogram, "propane in it, or in the one that came for it, afterwards; null where the run ends before", canBeAbsent: true)
            .InTable(ReportTable.Refills, "After|{unit}"),
        Filled.Quantity("left_behind_kg", r => SiQuantity.Mass(r.Outcome?.LeftBehind_kg), MassUnit.Kilogram, "propane in the cylinder given in exchange; null where the run ends before", canBeAbsent: true),
        Filled.Word("stopped_by", r => r.After?.End, FillingEnds, "what ended the filling, `full_before` where nothing went in; null where the run ends before", canBeAbsent: true),
        Filled.Quantity("liquid_of_volume", r => SiQuantity.Ratio(r.After?.Liquid_frac), RatioUnit.DecimalFraction, "part of the volume that is liquid afterwards; null where the run ends before", canBeAbsent: true)
            .InTable(ReportTable.Refills, "Liquid|{unit}"),
        Filled.Quantity("liquid_temperature_c", r => SiQuantity.Temperature(r.After?.Liquid_K), TemperatureUnit.DegreeCelsius, "temperature of old and new mixed; null where the run ends before", canBeAbsent: true),
        Filled.Quantity("over_weight_kg", r => SiQuantity.Mass(r.After?.OverWeight_kg), MassUnit.Kilogram, "by how much it is over the legal filling; null where the run ends before", canBeAbsent: true),
        Filled.Quantity("liquid_full_at_c", r => SiQuantity.Temperature(r.After?.LiquidFull_K), TemperatureUnit.DegreeCelsius, "temperature at which its liquid would fill it; null above 80 °C", canBeAbsent: true),
        Filled.Quantity("carried_kg", r => r.Planned.Carried, MassUnit.Kilogram, "cylinder and gas together; null for a tank in a frame and where it is refused", canBeAbsent: true),
        Filled.Flag("too_heavy", r => r.Planned.TooHeavy, "whether that is more than one person is assumed to carry"),
        Filled.Number("paid", r => r.Outcome?.Paid, "money; null without a price", canBeAbsent: true).InTable(ReportTable.Refills, "Paid|{currency}", Display.Money),
        Filled.Word("wait", r => r.Planned.Wait.Kind, Waits, "how long it can wait, `not_known` where the ledger of a run with it moved does not close"),
        Filled.Time("latest", r => r.Planned.Wait.Latest, "the latest instant at which it is early enough, where it can wait", canBeAbsent: true),
        Filled.Time("too_late", r => r.Planned.Wait.Next, "the next open day, on which it is too late", canBeAbsent: true),
        Filled.Time("worse_night", r => r.Planned.Wait.Worse?.From, "first instant of the first night that goes worse than planned then, or without it where there is no later day", canBeAbsent: true),
        Filled.Word("worse_verdict", r => r.Planned.Wait.Worse?.Verdict, ReportWords.Verdicts, "how that night goes", canBeAbsent: true),
    ];

    /// <summary>The whole trip in one row: all that is reported of a run, and what was bought, left behind and paid.</summary>
    public static IReadOnlyList<Document> Totals { get; } =
    [
        .. RunFigures.Summaries.Select(f => f.From<TripReport>(t => t.Run.Summary)),
        Document.Quantity("bought_kg", t => t.Bought, MassUnit.Kilogram, "propane bought"),
        Document.Quantity("left_behind_kg", t => t.LeftBehind, MassUnit.Kilogram, "propane in cylinders given in exchange"),
        Document.Text("currency", t => t.Run.Scenario.Prices.Currency, "what is written before a sum"),
        Document.Number("paid", t => t.Money.Paid, "money paid at the refills; null where none has a price", canBeAbsent: true),
        Document.Number("from_stock", t => t.Money.FromStock, "the gas that the cylinders hold less at the end than at the start, at the price of `[gas]`; below zero where they hold more; null without that price", canBeAbsent: true),
        Document.Number("cost", t => t.Money.Cost, "both together", canBeAbsent: true),
        Document.Number("carries_kg", t => t.Trip.Carries_kg, "what one person is assumed to carry"),
        Document.Flag("ledger_closes", t => t.Run.Ledger.Closes, "whether energy and mass close in every leg"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", t => t.Run.Scenario.Title, "the scenario's title"),
        Document.Time("start", t => t.Run.Scenario.Start, "when the trip started"),
        Document.Word("end", t => t.Run.End, ReportWords.Ends, "why its run ended"),
        Document.Texts("cylinders", t => FigureContext.Of(t.Run.Scenario).Cylinders, "the cylinders' names, in the order in which they are used"),
        Document.Rows("stops", t => t.Trip.Stops, Stops, "the stops in order"),
        Document.Rows("nights", TripNightRow.Of, Nights, "night by night, each from noon to noon"),
        Document.Rows("refills", TripRefillRow.Of, Refills, "the refills in order of time"),
        Document.Group("totals", t => t, Totals, "the whole trip"),
        LogStartFigures.In<TripReport>(t => t.Run.Scenario),
        Document.Texts("assumptions", t => t.Run.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];
}

/// <summary>A night of a trip as a row of figures.</summary>
internal sealed record TripNightRow(TripReport Trip, TripNight Night)
{
    /// <summary>The nights of a trip.</summary>
    public static IReadOnlyList<TripNightRow> Of(TripReport trip)
    {
        ArgumentNullException.ThrowIfNull(trip);
        return [.. trip.Nights.Select(n => new TripNightRow(trip, n))];
    }
}

/// <summary>A refill of a trip as a row of figures.</summary>
/// <param name="Trip">The trip.</param>
/// <param name="Place">The refill's place in the order of time, from 0.</param>
internal sealed record TripRefillRow(TripReport Trip, int Place)
{
    /// <summary>The refill with how long it can wait.</summary>
    public TripRefill Planned => Trip.Refills[Place];

    /// <summary>The refill as planned.</summary>
    public Refill Refill => Planned.Refill;

    /// <summary>What came of it; null where the run ended before.</summary>
    public RefillOutcome? Outcome => Planned.Outcome;

    /// <summary>The cylinder afterwards; null where the run ended before.</summary>
    public FilledCylinder? After => Outcome?.After;

    /// <summary>The refills of a trip.</summary>
    public static IReadOnlyList<TripRefillRow> Of(TripReport trip)
    {
        ArgumentNullException.ThrowIfNull(trip);
        return [.. trip.Refills.Select((_, i) => new TripRefillRow(trip, i))];
    }
}
