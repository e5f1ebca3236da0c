using ColdSim.Planning.Freezing;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Times to freezing as text: the shortest in a sentence, then every instant that was asked about.</summary>
internal static class FreezeText
{
    private const string Thaw = "Thaw a frozen pipe with warm air or a listed heat tape, never with a flame; open the tap first. Drain what cannot be kept warm.";

    public static IReadOnlyList<TextSection> Sections(FreezeOutlook outlook, UnitStyle units, IReadOnlyList<string> cautions)
    {
        HeatStop told = outlook.Shortest ?? outlook.Stops[0];
        List<TextSection> sections =
        [
            new(outlook.Scenario.Title, [.. Wrap.Lines(FreezeSentence.If(told, units), rest: "  ")]),
            new("How long is left when the furnace stops", [.. Table(outlook, units), "", .. Under(outlook)]),
        ];
        if (outlook.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(outlook.Scenario.Assumptions)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points([Thaw, .. cautions])));
        return sections;
    }

    private static IReadOnlyList<string> Table(FreezeOutlook outlook, UnitStyle units)
    {
        bool inside = outlook.Stops[0].Inside is not null, water = outlook.Stops[0].Water.Count > 0;
        List<TextColumn> columns = [new(["Furnace", "stops"], Left: true), new(["Outside", units.TemperatureUnit])];
        if (inside) columns.AddRange([new(["Inside", units.TemperatureUnit]), new([units.Temperature(HeatStop.Fifty_K), "after"]), new(["freezing", "after"])]);
        if (water) columns.AddRange([new(["First water", "to freeze"], Left: true), new(["begins", "after"]), new(["all ice", "after"])]);
        return TextTable.Lines(columns, [.. outlook.Stops.Select(s => Row(s, units, inside, water))], gap: 2);
    }

    private static List<string> Row(HeatStop stop, UnitStyle units, bool inside, bool water)
    {
        List<string> cells = [ClockText.DayClock(stop.At), units.TemperatureNumber(stop.Outside.Kelvins)];
        if (inside) cells.AddRange([units.TemperatureNumber(stop.Inside!.Value.Kelvins), Span(stop.FiftyAfter), Span(stop.FreezingAfter)]);
        if (water) cells.AddRange([stop.First?.Name ?? "-", Span(stop.First?.BeginsAfter), Span(stop.First?.SolidAfter)]);
        return cells;
    }

    private static IEnumerable<string> Under(FreezeOutlook outlook)
    {
        Duration least = outlook.Stops.MinBy(s => s.Watched.Seconds)!.Watched;
        return Wrap.Lines(
            $"Hours and minutes; - is not within what is known of the weather, at least {ClockText.Span(Duration.FromHours(Math.Floor(least.Hours)))} from each stop on. "
            + "Water is told at 0 °C, although still water may stay liquid for a while below.");
    }


    private static string Span(Duration? span) => span is { } s ? ClockText.SpanShort(s) : "-";
}
