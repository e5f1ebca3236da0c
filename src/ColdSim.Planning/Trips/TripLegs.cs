using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Trips;

/// <summary>Cuts a trip into the legs of a run: a new one begins with every stop, every road and every refill.</summary>
internal static class TripLegs
{
    /// <summary>The legs.</summary>
    /// <param name="trip">The trip.</param>
    /// <param name="cylinders">The rig's cylinders.</param>
    /// <param name="report">Called with the outcome of every refill during the run; may be null.</param>
    public static IReadOnlyList<Leg> Of(Trip trip, IReadOnlyList<CylinderSpecification> cylinders, Action<RefillOutcome>? report = null)
    {
        ArgumentNullException.ThrowIfNull(trip);
        IReadOnlyList<bool> refused = Requalification.Refused(trip.Refills, cylinders);
        (Refill Refill, RefillTransition Transition)[] transitions = [.. trip.Refills.Select((r, i) => (r, new RefillTransition(r, refused[i], report)))];
        List<Leg> legs = [];
        foreach (TripSegment segment in TripSegment.Of(trip))
        {
            (Refill Refill, RefillTransition Transition)[] here = [.. transitions.Where(a => segment.Has(a.Refill.At))];
            DateTimeOffset[] begins = [segment.From, .. here.Select(a => a.Refill.At).Where(t => t > segment.From).Distinct()];
            for (int i = 0; i < begins.Length; i++)
            {
                legs.Add(new Leg
                {
                    From = begins[i],
                    To = i + 1 < begins.Length ? begins[i + 1] : segment.To,
                    Site = segment.Site,
                    Weather = segment.Weather,
                    OnTheRoad = segment.OnTheRoad,
                    Before = [.. here.Where(a => a.Refill.At == begins[i]).Select(a => a.Transition)],
                });
            }
        }

        return legs;
    }
}

/// <summary>A stop, or the road to the next.</summary>
/// <param name="Stop">Place of the stop, or of the one that the road leads to, from 0.</param>
/// <param name="OnTheRoad">Whether it is the road.</param>
/// <param name="From">Its first instant.</param>
/// <param name="To">Its last instant.</param>
/// <param name="Site">Where; on the road there is no hookup.</param>
/// <param name="Weather">The weather there; on the road, that of the next stop.</param>
internal sealed record TripSegment(int Stop, bool OnTheRoad, DateTimeOffset From, DateTimeOffset To, SiteSpecification Site, WeatherSeries Weather)
{
    /// <summary>Whether an instant lies in it; its end belongs to the next.</summary>
    public bool Has(DateTimeOffset at) => at >= From && at < To;

    /// <summary>All of a trip's, in order.</summary>
    public static IEnumerable<TripSegment> Of(Trip trip)
    {
        for (int i = 0; i < trip.Stops.Count; i++)
        {
            TripStop stop = trip.Stops[i];
            if (i > 0 && trip.Stops[i - 1].To < stop.From)
                yield return new TripSegment(i, true, trip.Stops[i - 1].To, stop.From, stop.Site with { Hookup = false }, stop.Weather);
            yield return new TripSegment(i, false, stop.From, stop.To, stop.Site, stop.Weather);
        }
    }
}

/// <summary>A refill as it changes the cylinders between two legs.</summary>
/// <param name="refill">What is planned.</param>
/// <param name="refused">Whether it is refused.</param>
/// <param name="report">Called with the outcome; may be null.</param>
internal sealed class RefillTransition(Refill refill, bool refused, Action<RefillOutcome>? report) : ILegTransition
{
    /// <inheritdoc/>
    public IReadOnlyList<int> Cylinders { get; } = refused ? [] : [refill.Cylinder];

    // What is paid, and when a station is closed, changes nothing in the cylinder.
    private (int Cylinder, RefillKind Kind, double? Asked_kg, FillLimit Limit, double? Supply_K, double ExchangeFill_kg, bool Refused) Effect
        => (refill.Cylinder, refill.Kind, refill.Asked_kg, refill.Limit, refill.Supply_K, refill.ExchangeFill_kg, refused);

    /// <inheritdoc/>
    public bool ActsLike(ILegTransition other) => other is RefillTransition refilled && refilled.Effect == Effect;

    /// <inheritdoc/>
    public RigState After(RigState before, Rig rig, double air_K)
    {
        CylinderState cylinder = before.Cylinders[refill.Cylinder];
        FilledCylinder after = Filled(rig.Cylinders[refill.Cylinder], cylinder, air_K);
        report?.Invoke(new RefillOutcome(refill, cylinder, after, refused));
        if (refused) return before;
        CylinderState[] cylinders = [.. before.Cylinders];
        FrostLayer frost = refill.Kind == RefillKind.Exchange ? default : cylinder.Frost;
        cylinders[refill.Cylinder] = new CylinderState(after.Propane_kg, after.Liquid_K, frost);
        return before with { Cylinders = cylinders };
    }

    // An exchange cylinder comes from its cage outside, at the temperature of the air.
    private FilledCylinder Filled(CylinderSpecification cylinder, CylinderState before, double air_K)
        => refused ? Filling.StateWith(cylinder, before.Propane_kg, before.Liquid_K, FillingEnd.Full)
            : refill.Kind == RefillKind.Exchange ? Filling.StateWith(cylinder, refill.ExchangeFill_kg, air_K, FillingEnd.Amount)
            : Filling.Of(cylinder, before, refill.Asked_kg, refill.Limit, refill.Supply_K ?? air_K);
}
