using ColdSim.Model;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>The refills of a trip, a row each.</summary>
internal static class RefillTable
{
    private const int WidestName = 16;

    public static IReadOnlyList<string> Lines(TripReport report, UnitStyle units)
    {
        Rig rig = report.Run.Scenario.Rig;
        string currency = report.Run.Scenario.Prices.Currency;
        return TextTable.Lines(
            [
                new([""], Left: true),
                new(["When"], Left: true),
                new(["Cylinder"], Left: true),
                new(["What"], Left: true),
                new(["Before", units.MassUnit]),
                new(["Bought", units.MassUnit]),
                new(["After", units.MassUnit]),
                new(["Liquid", "%"]),
                new(["Paid", currency]),
            ],
            [.. report.Refills.Select((r, i) => Row(r, i, rig, units))]);
    }

    private static IReadOnlyList<string> Row(TripRefill refill, int place, Rig rig, UnitStyle units)
    {
        RefillOutcome? outcome = refill.Outcome;
        string name = rig.NameOf(refill.Refill.Cylinder);
        return
        [
            $"R{place + 1}",
            ClockText.DayClock(refill.Refill.At),
            name.Length > WidestName ? name[..WidestName] : name,
            outcome is null ? "not reached" : outcome.Refused ? "refused" : refill.Refill.Kind == RefillKind.Fill ? "filled" : "exchanged",
            Mass(outcome?.Before.Propane_kg, units),
            Mass(outcome?.Bought_kg, units),
            Mass(outcome?.After.Propane_kg, units),
            outcome is null ? "-" : UnitStyle.Number(outcome.After.Liquid_frac * 100, 0),
            outcome?.Paid is { } paid ? UnitStyle.Number(paid, 2) : "-",
        ];
    }

    private static string Mass(double? kg, UnitStyle units) => kg is { } mass ? units.MassNumber(mass) : "-";
}
