using ColdSim.Model;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>What somebody on this trip has to hear before acting on it.</summary>
internal static class TripCautions
{
    public static IEnumerable<string> Of(TripReport report, UnitStyle units)
    {
        Rig rig = report.Run.Scenario.Rig;
        for (int i = 0; i < report.Refills.Count; i++)
        {
            TripRefill refill = report.Refills[i];
            string name = $"R{i + 1} ({rig.NameOf(refill.Refill.Cylinder)})";
            if (refill.Outcome is { Refused: false, After: { IsOverWeight: true } after })
            {
                yield return $"{name} is filled past its legal weight by {units.Mass(after.OverWeight_kg)}: cold liquid weighs more for its volume. "
                    + $"Liquid would fill it at {Full(after, units)}. Have it filled by weight, and never bring it into the warm.";
            }
            if (refill.TooHeavy && refill.Carried is { } gross)
            {
                yield return $"{name} weighs {units.Mass(gross.Kilograms)} with its gas, more than the {units.Mass(report.Trip.Carries_kg)} that one person "
                    + "is taken to carry: two people or a cart.";
            }
            if (refill.Outcome is { Refused: true })
                yield return $"{name}: no station may fill a cylinder past its requalification date. Have it requalified, or exchange it.";
        }

        if (report.Refills.Count > 0)
            yield return Cautions.Filling;
        if (report.Refills.Any(r => r.Wait.Kind == WaitKind.CanWait))
            yield return Cautions.Waiting;
    }

    private static string Full(FilledCylinder after, UnitStyle units)
        => double.IsFinite(after.LiquidFull_K) ? units.Temperature(after.LiquidFull_K) : $"over {units.Temperature(353.15)}";
}
