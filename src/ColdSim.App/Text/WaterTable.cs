using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>How bays, pipes and tanks fared over the run, and the alert of about 20 °F.</summary>
internal static class WaterTable
{
    /// <summary>Whether the rig has any.</summary>
    public static bool Applies(RunReport report) => report.Nights.Any(n => n.Water.Count > 0);

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units)
    {
        IGrouping<string, WaterReport>[] each = [.. report.Nights.SelectMany(n => n.Water).GroupBy(w => w.Name)];
        return
        [
            .. TextTable.Lines(
                [new(["Where"], Left: true), new(["Lowest", units.TemperatureUnit]), new(["Most ice"]), new(["Begins", "to freeze"]), new(["All ice"])],
                [.. each.Select(w => Row([.. w], units))]),
            .. Alerts(report, units).SelectMany(a => Wrap.Lines(a, rest: "  ")),
        ];
    }

    /// <summary>A sentence for the nights with water where nothing heats it and outside at about 20 °F or less; none for none.</summary>
    public static IEnumerable<string> Alerts(RunReport report, UnitStyle units)
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

    private static IReadOnlyList<string> Row(IReadOnlyList<WaterReport> nights, UnitStyle units)
    {
        DateTimeOffset? freezes = nights.Select(n => n.FreezesAt).FirstOrDefault(t => t is not null);
        DateTimeOffset? solid = nights.Select(n => n.SolidAt).FirstOrDefault(t => t is not null);
        bool water = nights[0].HoldsWater;
        return
        [
            nights[0].Name,
            units.TemperatureNumber(nights.Min(n => n.Lowest.Kelvins)),
            water ? UnitStyle.Number(nights.Max(n => n.MostIce.Percent), 0) + " %" : "-",
            freezes is { } f ? ClockText.DayClock(f) : "-",
            solid is { } s ? ClockText.DayClock(s) : "-",
        ];
    }
}
