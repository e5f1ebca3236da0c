using ColdSim.Physics.Units;

namespace ColdSim.Files.Weather;

/// <summary>Distances on the earth.</summary>
internal static class GreatCircle
{
    private const double Earth_m = 6_371_000;

    /// <summary>From one place to another along the ground. [m]</summary>
    /// <param name="latitude">Of the one. [°]</param>
    /// <param name="longitude">Of the one. [°]</param>
    /// <param name="otherLatitude">Of the other. [°]</param>
    /// <param name="otherLongitude">Of the other. [°]</param>
    public static double Distance_m(double latitude, double longitude, double otherLatitude, double otherLongitude)
    {
        double from = latitude * ConversionFactors.Degree_rad, to = otherLatitude * ConversionFactors.Degree_rad, east = (otherLongitude - longitude) * ConversionFactors.Degree_rad;
        double cosine = (Math.Sin(from) * Math.Sin(to)) + (Math.Cos(from) * Math.Cos(to) * Math.Cos(east));
        return Earth_m * Math.Acos(Math.Clamp(cosine, -1, 1));
    }
}
