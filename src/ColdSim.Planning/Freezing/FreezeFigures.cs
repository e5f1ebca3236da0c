using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Freezing.FreezeOutlook>;
using Stop = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.CoolDown>;
using Water = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.WaterAfter>;

namespace ColdSim.Planning.Freezing;

/// <summary>What is reported of how long is left once the furnace stops.</summary>
internal static class FreezeFigures
{
    private static IReadOnlyList<Water> Bodies { get; } =
    [
        Water.Text("name", w => w.Name, "which"),
        Water.Quantity("begins_after_s", w => w.BeginsAfter, DurationUnit.Second, "until it begins to freeze; 0 where it already had", canBeAbsent: true),
        Water.Quantity("solid_after_s", w => w.SolidAfter, DurationUnit.Second, "until it is ice through and through", canBeAbsent: true),
    ];

    /// <summary>One stop of the furnace.</summary>
    public static IReadOnlyList<Stop> Stops { get; } =
    [
        Stop.Time("at", s => s.At, "when the heat stops").InTable(ReportTable.HeatStops, "Furnace|stops", Display.DayClock, left: true),
        Stop.Quantity("outside_c", s => s.Outside, TemperatureUnit.DegreeCelsius, "outside air then").InTable(ReportTable.HeatStops, "Outside|{unit}"),
        Stop.Quantity("inside_c", s => s.Inside, TemperatureUnit.DegreeCelsius, "inside air then; null without a coach", canBeAbsent: true)
            .InTable(ReportTable.HeatStops, "Inside|{unit}", shown: HasCoach),
        Stop.Quantity("fifty_fahrenheit_after_s", s => s.FiftyAfter, DurationUnit.Second, "until inside is at 50 °F (10 °C); null where it is not while it was watched", canBeAbsent: true)
            .InTable(ReportTable.HeatStops, "{fifty}|after", Display.HoursMinutes, shown: HasCoach),
        Stop.Quantity("freezing_after_s", s => s.FreezingAfter, DurationUnit.Second, "until inside is at freezing", canBeAbsent: true)
            .InTable(ReportTable.HeatStops, "freezing|after", Display.HoursMinutes, shown: HasCoach),
        Stop.Quantity("fifty_fahrenheit_earliest_s", s => s.FiftyEarliest, DurationUnit.Second, "the earliest that it is, as far as what the coach stores is known (a factor of two)", canBeAbsent: true),
        Stop.Quantity("fifty_fahrenheit_latest_s", s => s.FiftyLatest, DurationUnit.Second, "the latest; null where it may not be while it was watched", canBeAbsent: true),
        Stop.Quantity("freezing_earliest_s", s => s.FreezingEarliest, DurationUnit.Second, "the earliest that inside is at freezing", canBeAbsent: true),
        Stop.Quantity("freezing_latest_s", s => s.FreezingLatest, DurationUnit.Second, "the latest; null where it may not be while it was watched", canBeAbsent: true),
        Stop.Rows("water", s => s.Water, Bodies, "every body of water")
            .InTable(ReportTable.HeatStops, "First water|to freeze", left: true, value: s => s.First?.Name, shown: HasWater)
            .InTable(ReportTable.HeatStops, "begins|after", Display.HoursMinutes, value: s => s.First?.BeginsAfter, shown: HasWater)
            .InTable(ReportTable.HeatStops, "all ice|after", Display.HoursMinutes, value: s => s.First?.SolidAfter, shown: HasWater),
        Stop.Quantity("watched_s", s => s.Watched, DurationUnit.Second, "how long was looked ahead"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", o => o.Scenario.Title, "the scenario's title"),
        Document.Rows("stops", o => o.Stops, Stops, "one for each instant, in order"),
        LogStartFigures.In<FreezeOutlook>(o => o.Scenario),
        Document.Texts("assumptions", o => o.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];

    private static bool HasCoach(IReadOnlyList<CoolDown> stops) => stops[0].Inside is not null;

    private static bool HasWater(IReadOnlyList<CoolDown> stops) => stops[0].Water.Count > 0;
}
