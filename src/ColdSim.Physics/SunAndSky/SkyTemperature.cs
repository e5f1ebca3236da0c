using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.SunAndSky;

/// <summary>Temperature of a black sky that would send down the same heat radiation.</summary>
/// <remarks>Clear-sky fits differ by 8 to 10 K in the cold, where none of them was measured much; a roof's heat loss hardly notices. No checks.</remarks>
internal static class SkyTemperature
{
    /// <summary>Sky temperature, K, by Berdahl and Martin 1984, with the cloud rule 0.784 (1 - ε₀) n.</summary>
    /// <remarks>
    /// Fitted for dew points of -13 to 24 °C. Their small terms for the hour and for pressure (up to 0.013 each in emissivity)
    /// are left out. The factor 0.784 is a later mean over cloud heights (California's 2013 reference manual for residential compliance).
    /// </remarks>
    /// <param name="air_K">Air temperature, K.</param>
    /// <param name="dewPoint_K">Dew point over water, K.</param>
    /// <param name="cloud_frac">Part of the sky covered, 0 to 1.</param>
    public static double BerdahlMartin_K(double air_K, double dewPoint_K, double cloud_frac)
    {
        // The parabola has its bottom at -38.4 °C; without the floor a drier sky would turn warmer.
        double x = Math.Max(dewPoint_K - ZeroCelsius_K, -38.356) / 100;
        double clear = 0.711 + (x * (0.56 + (0.73 * x)));
        return FromEmissivity_K(air_K, Math.Min(1, clear + (0.784 * (1 - clear) * cloud_frac)));
    }

    private static double FromEmissivity_K(double air_K, double emissivity) => air_K * Math.Sqrt(Math.Sqrt(emissivity));
}
