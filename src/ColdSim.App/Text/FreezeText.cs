using ColdSim.Physics.Units;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Times to freezing as text: the shortest in a sentence, then every instant that was asked about.</summary>
internal static class FreezeText
{
    private const string Thaw = "Thaw a frozen pipe with warm air or a listed heat tape, never with a flame; open the tap first. Drain what cannot be kept warm.";

    public static IReadOnlyList<TextSection> Sections(FreezeOutlook outlook, UnitStyle units, IReadOnlyList<string> cautions)
    {
        CoolDown shortest = outlook.Shortest ?? outlook.Stops[0];
        List<TextSection> sections =
        [
            new(outlook.Scenario.Title, [.. Wrap.Lines(FreezeSentence.If(shortest, units), rest: "  ")]),
            new("How long is left when the furnace stops", [.. new FigureTable(ReportTable.HeatStops, units) { Gap = 2 }.Lines(FreezeFigures.Stops, outlook.Stops), "", .. Under(outlook, units)]),
        ];
        if (outlook.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(outlook.Scenario.Assumptions, units)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points([Thaw, .. cautions], units)));
        return sections;
    }

    private static IEnumerable<string> Under(FreezeOutlook outlook, UnitStyle units)
    {
        Duration least = outlook.Stops.MinBy(s => s.Watched.Seconds)!.Watched;
        return Wrap.Lines(
            $"Hours and minutes; - is not within what is known of the weather, at least {ClockText.Span(Duration.FromHours(Math.Floor(least.Hours)))} from each stop on. "
            + $"Water counts as freezing at {units.Temperature(ConversionFactors.ZeroCelsius_K)}, although still water may stay liquid for a while below.");
    }
}
