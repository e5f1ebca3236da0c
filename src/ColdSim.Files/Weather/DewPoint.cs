using ColdSim.Physics.MoistAir;

namespace ColdSim.Files.Weather;

/// <summary>Dew point from relative humidity, both over water, as weather services give them below freezing too.</summary>
internal static class DewPoint
{
    private const double DriestAir_frac = 0.001;

    public static double From(double air_K, double humidity_frac)
        => MagnusFormula.DewPoint_K(Math.Max(humidity_frac, DriestAir_frac) * MagnusFormula.OverWater_Pa(air_K));
}
