using ColdSim.Model.Cylinder;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>Cuts a trip into the legs of a run: a new one begins with every stop, every road and every refill.</summary>
internal static class TripLegs
{
    /// <summary>The legs.</summary>
    /// <param name="trip">The trip.</param>
    /// <param name="cylinders">The rig's cylinders.</param>
    /// <param name="tell">Told what came of every refill, or null.</param>
    public static IReadOnlyList<Leg> Of(Trip trip, IReadOnlyList<CylinderSpecification> cylinders, Action<RefillOutcome>? tell)
    {
        IReadOnlyList<bool> refused = Requalification.Refused(trip.Refills, cylinders);
        (Refill Refill, RefillAct Act)[] acts = [.. trip.Refills.Select((r, i) => (r, new RefillAct(r, refused[i], tell)))];
        List<Leg> legs = [];
        foreach (Stretch stretch in Stretch.Of(trip))
        {
            (Refill Refill, RefillAct Act)[] here = [.. acts.Where(a => stretch.Has(a.Refill.At))];
            DateTimeOffset[] begins = [stretch.From, .. here.Select(a => a.Refill.At).Where(t => t > stretch.From).Distinct()];
            for (int i = 0; i < begins.Length; i++)
            {
                legs.Add(new Leg
                {
                    From = begins[i],
                    To = i + 1 < begins.Length ? begins[i + 1] : stretch.To,
                    Site = stretch.Site,
                    Weather = stretch.Weather,
                    OnTheRoad = stretch.OnTheRoad,
                    Before = [.. here.Where(a => a.Refill.At == begins[i]).Select(a => a.Act)],
                });
            }
        }

        return legs;
    }
}
