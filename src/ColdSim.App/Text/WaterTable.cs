using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>How bays, pipes and tanks fared over the run, and the alert of about 20 °F.</summary>
internal static class WaterTable
{
    /// <summary>Whether the rig has any.</summary>
    public static bool Applies(RunReport report) => report.Nights.Any(n => n.Water.Count > 0);

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units) =>
    [
        .. new FigureTable(ReportTable.Water, units).Lines(
            NightFigures.WaterPlaces, [.. report.Nights.SelectMany(n => n.Water).GroupBy(w => w.Name).Select(w => WaterReport.Over([.. w]))]),
        .. Alerts(report, units).SelectMany(a => Wrap.Lines(a, rest: "  ")),
    ];

    private static IEnumerable<string> Alerts(RunReport report, UnitStyle units)
    {
        NightReport[] nights = [.. report.Nights.Where(n => n.WaterAlert)];
        if (nights.Length == 0)
            yield break;
        string[] places = [.. nights.SelectMany(n => n.Water).Where(w => w.HoldsWater && !w.Heated).Select(w => w.Name).Distinct()];
        string when = nights.Length == 1 ? ClockText.NightShort(nights[0]) : $"{nights.Length} nights from {ClockText.NightShort(nights[0])}";
        yield return $"Alert, {when}: outside is at or below about {units.Temperature(WaterPlaces.Alert_K)} with water where nothing heats it "
            + $"({string.Join(", ", places)}). Pipes in unheated places were seen to freeze from there on (Building Research Council, University of "
            + "Illinois, as widely quoted); an alert only, nothing is reckoned with it.";
    }
}
