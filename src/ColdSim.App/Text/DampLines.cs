using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>Where damp settled on the coldest surface of the coach, night by night.</summary>
internal static class DampLines
{
    /// <summary>Whether the coach's damp is followed.</summary>
    public static bool Applies(RunReport report) => report.Scenario.Rig.Coach?.Moisture is not null;

    public static IReadOnlyList<string> Of(RunReport report, UnitStyle units)
    {
        NightReport[] damp = [.. report.Nights.Where(n => n.DampTime.Seconds > 0)];
        IEnumerable<string> nights = damp.Length == 0
            ? ["No damp settles on the coldest surface."]
            : damp.Select(n => $"{ClockText.NightShort(n)}: damp settles on the coldest surface for {ClockText.Span(n.DampTime)}, at {units.Temperature(n.OutsideLow.Kelvins)} outside at the lowest.");
        return [.. nights.SelectMany(l => Wrap.Lines(l, rest: "  "))];
    }
}
