using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>The parts of a printed run or trip that only some rigs have: what a mixed gas is made of, who drew what gas, water, damp and the 12 V side.</summary>
internal static class RigSections
{
    public static IEnumerable<TextSection> Of(RunReport report, UnitStyle units)
    {
        foreach (TextSection shortage in ShortageText.Sections(report, units))
            yield return shortage;
        if (BlendTable.Applies(report))
            yield return new("The gas", BlendTable.Lines(report, units));
        if (WhoDrew.Applies(report))
            yield return new("Who drew what gas", WhoDrew.Lines(report, units));
        if (report.Nights.Any(n => n.Water.Count > 0))
            yield return new("Water", Water(report, units));
        if (report.Scenario.Rig.Heaters.Count > 0)
            yield return new("Other heat", OtherHeatLines(report, units));
        if (IsDampFollowed(report))
            yield return new("Damp", Damp(report, units));
        if (report.Scenario.Rig.Power is not null)
            yield return new("The 12 V side", [.. new FigureTable(ReportTable.Power, units).Lines(NightFigures.All, report.Nights), .. TooCold(report), .. Frozen(report)]);
    }

    private static IReadOnlyList<string> Water(RunReport report, UnitStyle units) =>
    [
        .. new FigureTable(ReportTable.Water, units).Lines(
            NightFigures.WaterPlaces, [.. report.Nights.SelectMany(n => n.Water).GroupBy(w => w.Name).Select(w => WaterReport.Over([.. w]))]),
        .. WaterAlerts(report, units).SelectMany(a => Wrap.Lines(a, rest: "  ")),
    ];

    private static IEnumerable<string> WaterAlerts(RunReport report, UnitStyle units)
    {
        NightReport[] nights = [.. report.Nights.Where(n => n.WaterAlert)];
        if (nights.Length == 0)
            yield break;
        string[] places = [.. nights.SelectMany(n => n.Water).Where(w => w.HoldsWater && !w.Heated).Select(w => w.Name).Distinct()];
        string when = nights.Length == 1 ? ClockText.NightShort(nights[0]) : $"{nights.Length} nights from {ClockText.NightShort(nights[0])}";
        yield return $"Alert, {when}: outside is at or below about {units.Temperature(WaterReport.Alert_K)} with water where nothing heats it "
            + $"({string.Join(", ", places)}). Pipes in unheated places were seen to freeze from there on (Building Research Council, University of "
            + "Illinois, as widely quoted); an alert only, nothing is reckoned with it.";
    }

    private static IReadOnlyList<string> OtherHeatLines(RunReport report, UnitStyle units)
    {
        string names = string.Join(", ", report.Scenario.Rig.Heaters.Select(h => h.Name));
        string nights = string.Join(", ", report.Nights.Select(n => $"{ClockText.NightShort(n)} {units.Energy(n.OtherHeat.Joules)}"));
        return Wrap.Lines($"From {names}: {nights}.", rest: "  ");
    }

    /// <summary>Whether the coach's damp is followed.</summary>
    private static bool IsDampFollowed(RunReport report) => report.Scenario.Rig.Coach?.Moisture is not null;

    private static IReadOnlyList<string> Damp(RunReport report, UnitStyle units)
    {
        NightReport[] damp = [.. report.Nights.Where(n => n.DampTime.Seconds > 0)];
        IEnumerable<string> nights = damp.Length == 0
            ? ["No damp settles on the coldest surface."]
            : damp.Select(n => $"{ClockText.NightShort(n)}: damp settles on the coldest surface for {ClockText.Span(n.DampTime)}, at {units.Temperature(n.OutsideLow.Kelvins)} outside at the lowest.");
        return [.. nights.SelectMany(l => Wrap.Lines(l, rest: "  "))];
    }

    private static IEnumerable<string> Frozen(RunReport report) => report.Nights.Where(n => n.Power!.FrozenAt is not null).SelectMany(n => Wrap.Lines(
        $"The battery freezes on {ClockText.DayClock(n.Power!.FrozenAt!.Value)} with {UnitStyle.Number(n.Power.ChargeAtFrozen!.Value.Percent, 0)} % of its charge: its case may burst, and it "
        + "takes no charge until it has thawed.", rest: "  "));

    // Sun and shore power do nothing for a bank that may not be charged.
    private static IEnumerable<string> TooCold(RunReport report)
    {
        string[] nights = [.. report.Nights.Where(n => n.Power!.TooCold.Seconds > 0).Select(n => $"{ClockText.NightShort(n)} {ClockText.Span(n.Power!.TooCold)}")];
        return nights.Length == 0 ? [] : Wrap.Lines($"Too cold to be charged: {string.Join(", ", nights)}.", rest: "  ");
    }
}
