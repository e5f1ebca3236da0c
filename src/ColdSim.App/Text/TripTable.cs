using ColdSim.Model;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>The nights of a trip, a row each, within 80 columns.</summary>
internal static class TripTable
{
    private const int WidestName = 7;
    private const int MostNameLines = 2;

    public static IReadOnlyList<string> Lines(TripReport report, UnitStyle units)
    {
        Rig rig = report.Run.Scenario.Rig;
        List<TextColumn> columns =
        [
            .. TripNightCells.Columns(rig, units, i => Name(rig.NameOf(i))),
            new(["Least", "margin", units.PowerUnit]),
            new([""], Left: true),
            new(["Chan-", "ges"]),
            new(["Blan-", "kets", "Wh"]),
            new(["Refill"], Left: true),
        ];
        string dawn = report.Run.Scenario.Criteria.Dawn.ToString("HH:mm", null);
        return
        [
            .. TextTable.Lines(columns, [.. report.Nights.Select(n => Row(n, units))]),
            .. Wrap.Lines($"Left at {dawn}, or at the end of what was run. The least margin is the gas that could have been given at full "
                + "pressure, less what was asked, in the minute of the night in which that was least."
                + (report.Refills.Count > 0 ? " A night runs from noon to noon, so a morning's refill stands in the row of the night before." : "")),
        ];
    }

    private static IEnumerable<string> Name(string name)
        => Wrap.Lines(name, WidestName).SelectMany(l => l.Chunk(WidestName)).Select(c => new string(c)).Take(MostNameLines);

    private static IReadOnlyList<string> Row(TripNight trip, UnitStyle units) =>
    [
        .. TripNightCells.Of(trip, units),
        trip.Margin is { } margin ? Margin((double)margin.Surplus.Watts, units) : "-",
        VerdictWord.Of(trip.Night.Verdict),
        UnitStyle.Number(trip.Changes, 0),
        UnitStyle.Number(trip.Night.BlanketEnergy.WattHours, 0),
        string.Join(' ', trip.Refills.Select(r => $"R{r + 1}")),
    ];

    private static string Margin(double watt, UnitStyle units)
        => units.IsUs ? UnitStyle.Number(Math.Round(units.PowerIn(watt) / 100) * 100, 0) : UnitStyle.Number(units.PowerIn(watt), 1);
}
