using System.Globalization;
using ColdSim.Physics.Units;

namespace ColdSim.Files.Weather;

/// <summary>Chooses one of the places in a file: the only one, or the nearest to the position asked for.</summary>
internal static class PlaceChoice
{
    private const int Shown = 5;

    /// <summary>The place's number from 0; null, and a fault, where there are several and none is asked for.</summary>
    public static int? Of(IReadOnlyList<WeatherStation> places, WeatherRequest request, int line, WeatherFaults faults)
    {
        if (places.Count == 1)
            return 0;
        if (request.Near is not { } near)
        {
            string more = places.Count > Shown ? FormattableString.Invariant($" and {places.Count - Shown} more") : "";
            faults.Report(line, 1, FormattableString.Invariant($"the file holds {places.Count} places: {string.Join("; ", places.Take(Shown).Select(Position))}{more}"),
                "accepted: one place, or --latitude and --longitude (latitude and longitude under [place]) to take the nearest");
            return null;
        }

        int best = 0;
        for (int i = 1; i < places.Count; i++)
        {
            if (Away(places[i], near) < Away(places[best], near))
                best = i;
        }

        faults.Note($"{faults.File}: of {places.Count} places the nearest is used, {Position(places[best])}");
        return best;
    }

    private static string Position(WeatherStation place)
        => place is { Latitude_deg: { } latitude, Longitude_deg: { } longitude } ? string.Create(CultureInfo.InvariantCulture, $"{latitude:0.##}, {longitude:0.##}") : "no position";

    // Degrees of latitude, squared; good enough to compare places that lie near.
    private static double Away(WeatherStation place, (double Latitude_deg, double Longitude_deg) near)
    {
        if (place is not { Latitude_deg: { } latitude, Longitude_deg: { } longitude })
            return double.PositiveInfinity;
        double north = latitude - near.Latitude_deg, east = Math.IEEERemainder(longitude - near.Longitude_deg, 360) * Math.Cos(near.Latitude_deg * ConversionFactors.Degree_rad);
        return (north * north) + (east * east);
    }
}
