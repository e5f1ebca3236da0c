using ColdSim.Planning.Freezing;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What times to freezing rest on, as text; the times themselves are in the answer above it.</summary>
internal static class FreezeText
{
    private const string Thaw = "Thaw a frozen pipe with warm air or a listed heat tape, never with a flame; open the tap first. Drain what cannot be kept warm.";

    public static IReadOnlyList<TextSection> Sections(FreezeOutlook outlook, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections = [new("How to read the table", Legend(outlook, units))];
        if (outlook.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(outlook.Scenario.Assumptions, units)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points([Thaw, .. cautions], units)));
        return sections;
    }

    private static IReadOnlyList<string> Legend(FreezeOutlook outlook, UnitStyle units)
    {
        Duration least = outlook.Stops.MinBy(s => s.Watched.Seconds)!.Watched;
        return Wrap.Lines(
            $"Hours and minutes; - means not within the weather that is known, at least {ClockText.Span(Duration.FromHours(Math.Floor(least.Hours)))} from each time on. "
            + $"Freezing is counted from {units.WholeTemperature(Planning.Nights.CoolDown.Freezing_K)}, although still water may stay liquid for a while below.");
    }
}
