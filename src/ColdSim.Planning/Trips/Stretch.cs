using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Trips;

/// <summary>A stop, or the road to the next.</summary>
/// <param name="Stop">Place of the stop, or of the one that the road leads to, from 0.</param>
/// <param name="OnTheRoad">Whether it is the road.</param>
/// <param name="From">Its first instant.</param>
/// <param name="To">Its last instant.</param>
/// <param name="Site">Where; on the road there is no hookup.</param>
/// <param name="Weather">The weather there; on the road, that of the next stop.</param>
internal sealed record Stretch(int Stop, bool OnTheRoad, DateTimeOffset From, DateTimeOffset To, SiteSpecification Site, WeatherSeries Weather)
{
    /// <summary>Whether an instant lies in it; its end belongs to the next.</summary>
    public bool Has(DateTimeOffset at) => at >= From && at < To;

    /// <summary>All of a trip's, in order.</summary>
    public static IEnumerable<Stretch> Of(Trip trip)
    {
        for (int i = 0; i < trip.Stops.Count; i++)
        {
            TripStop stop = trip.Stops[i];
            if (i > 0 && trip.Stops[i - 1].To < stop.From)
                yield return new Stretch(i, true, trip.Stops[i - 1].To, stop.From, stop.Site with { Hookup = false }, stop.Weather);
            yield return new Stretch(i, false, stop.From, stop.To, stop.Site, stop.Weather);
        }
    }
}
