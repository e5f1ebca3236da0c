using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Planning.Nights;
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
            new(["Night"], Left: true),
            new(["At"]),
            new(["Out", "low", units.TemperatureUnit]),
            new(["In", "low", units.TemperatureUnit]),
            new(["Gas", "used", units.MassUnit]),
        ];
        for (int i = 0; i < rig.Cylinders.Count; i++)
        {
            string name = rig.Cylinders.Count == 1 ? "" : rig.NameOf(i);
            columns.Add(new([name.Length > WidestName ? name[..WidestName] : name, "left", units.MassUnit]));
        }

        columns.AddRange(
        [
            new(["Least", "margin", units.PowerUnit]),
            new([""], Left: true),
            new(["Refill, and when", "it can wait until"], Left: true),
        ]);
        return TextTable.Lines(columns, [.. report.Nights.Select(n => Row(n, report, units))]);
    }

    private static IReadOnlyList<string> Row(TripNight trip, TripReport report, UnitStyle units)
    {
        NightReport night = trip.Night;
        return
        [
            " ",
            ClockText.NightShort(night),
            trip.Stop is { } stop ? UnitStyle.Number(stop + 1, 0) : "road",
            Temperature(night.OutsideLow, units),
            night.InsideLow is { } inside ? Temperature(inside, units) : "-",
            Mass(night.GasUsed, units),
            .. night.EachLeftAtEnd.Select((end, i) => Mass(night.EachLeftAtDawn.Count > 0 ? night.EachLeftAtDawn[i] : end, units)),
            trip.Margin is { } margin ? units.PowerNumber((double)margin.Surplus.Watts) : "-",
            VerdictWord.Of(night.Verdict),
            trip.Refills.Count == 0 ? "" : trip.Refills.Count == 1 ? Wait(trip.Refills[0], report)
                : string.Join(", ", trip.Refills.Select(r => $"R{r + 1}")) + ": see below",
        ];
    }

    private static string Wait(int refill, TripReport report) => $"R{refill + 1} " + (report.Refills[refill].Wait switch
    {
        { Kind: WaitKind.NotNeeded } => "not needed",
        { Kind: WaitKind.CanWait, Latest: { } latest } => $"until {latest.ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture)}",
        { Kind: WaitKind.Refused } => report.Refills[refill].Outcome is null ? "not reached" : "refused",
        _ => "cannot wait",
    });

    private static string Temperature(UnitsNet.Temperature t, UnitStyle units) => UnitStyle.Number(units.TemperatureIn(t.Kelvins), units.IsUs ? 0 : 1);

    private static string Mass(UnitsNet.Mass m, UnitStyle units) => UnitStyle.Number(units.MassIn(m.Kilograms), units.IsUs ? 1 : 2);
}
