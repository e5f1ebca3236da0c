using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Screens.Pages;

/// <summary>The rows of the trip page: what each night comes to, and until when its refill can wait.</summary>
internal static class TripRows
{
    public const int HeadingRows = 3;

    private const int WidestName = 6;

    /// <summary>The heading's rows, then a row a night; the first column is left blank for a pointer.</summary>
    public static IReadOnlyList<string> Lines(TripReport report, UnitStyle units)
    {
        Rig rig = report.Run.Scenario.Rig;
        List<TextColumn> columns =
        [
            new([" "], Left: true),
            .. TripNightCells.Columns(rig, units, i => [Name(rig, i)]),
            new(["Least", "margin", units.PowerUnit]),
            new([""], Left: true),
            new(["Refill, and when", "it can wait until"], Left: true),
        ];
        return TextTable.Lines(columns, [.. report.Nights.Select(n => Row(n, report, units))]);
    }

    // One cylinder alone needs no name.
    private static string Name(Rig rig, int i)
    {
        string name = rig.Cylinders.Count == 1 ? "" : rig.NameOf(i);
        return name.Length > WidestName ? name[..WidestName] : name;
    }

    private static IReadOnlyList<string> Row(TripNight trip, TripReport report, UnitStyle units) =>
    [
        " ",
        .. TripNightCells.Of(trip, units),
        trip.Margin is { } margin ? units.PowerNumber((double)margin.Surplus.Watts) : "-",
        VerdictWord.Of(trip.Night.Verdict),
        trip.Refills.Count == 0 ? "" : trip.Refills.Count == 1 ? Wait(trip.Refills[0], report)
            : string.Join(", ", trip.Refills.Select(r => $"R{r + 1}")) + ": see below",
    ];

    private static string Wait(int refill, TripReport report) => $"R{refill + 1} " + (report.Refills[refill].Wait switch
    {
        { Kind: WaitKind.NotNeeded } => "not needed",
        { Kind: WaitKind.CanWait, Latest: { } latest } => $"until {latest.ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture)}",
        { Kind: WaitKind.Refused } => report.Refills[refill].Outcome is null ? "not reached" : "refused",
        _ => "cannot wait",
    });
}
