namespace ColdSim.Files.Weather;

/// <summary>Dew point from relative humidity, both over water, as weather services give them below freezing too.</summary>
/// <remarks>Alduchov and Eskridge (1996), es = 610.94 Pa · exp(17.625·t/(243.04 + t)), solved for t.</remarks>
internal static class DewPoint
{
    private const double A = 17.625;
    private const double B_K = 243.04;
    private const double Zero_K = 273.15;
    private const double DriestAir_frac = 0.001;

    public static double From(double air_K, double humidity_frac)
    {
        double t = air_K - Zero_K;
        double x = Math.Log(Math.Max(humidity_frac, DriestAir_frac)) + (A * t / (B_K + t));
        return (B_K * x / (A - x)) + Zero_K;
    }
}
