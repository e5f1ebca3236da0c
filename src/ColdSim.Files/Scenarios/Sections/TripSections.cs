using ColdSim.Planning;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Puts stops and refills into a scenario.</summary>
internal static class TripSections
{
    /// <summary>The scenario with its trip and legs; as it is where it has neither stops nor refills.</summary>
    public static Scenario With(
        Scenario scenario, IReadOnlyList<ReadStop> stops, IReadOnlyList<ReadRefill> refills, double carries_kg, Reading reading)
    {
        Trip whole = stops.Count > 0 ? new Trip { Stops = [.. stops.Select(s => s.Stop)] } : Trip.InOnePlace(scenario);
        DateTimeOffset from = whole.Stops[0].From, to = whole.Stops[^1].To;
        foreach (ReadRefill refill in refills)
        {
            if (refill.Refill.At < from || refill.Refill.At >= to)
            {
                reading.Report(refill.AtPlace, $"the refill at {StopsSection.Shown(refill.Refill.At)} lies outside the {(stops.Count > 0 ? "stops" : "run")}",
                    $"accepted: from {StopsSection.Shown(from)} to before {StopsSection.Shown(to)}");
            }
        }
        if (stops.Count == 0 && refills.Count == 0)
            return scenario with { Trip = null };
        Trip trip = whole with { Refills = [.. refills.Select(r => r.Refill)], Carries_kg = carries_kg };
        return scenario with { Trip = trip, Legs = trip.Legs(scenario.Rig.Cylinders) };
    }
}
