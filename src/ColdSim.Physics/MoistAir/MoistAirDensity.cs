namespace ColdSim.Physics.MoistAir;

/// <summary>Density of air with water vapour in it; no checks.</summary>
/// <remarks>Ideal mixture: a mole of vapour in place of a mole of air is lighter by 1 - 0.621945.</remarks>
public static class MoistAirDensity
{
    /// <summary>Density, kg/m³.</summary>
    /// <param name="t_K">Temperature, K.</param>
    /// <param name="p_Pa">Total pressure, Pa.</param>
    /// <param name="vapourPressure_Pa">Vapour pressure, Pa, part of the total.</param>
    public static double Density_kg_m3(double t_K, double p_Pa, double vapourPressure_Pa)
        => DryAir.Density_kg_m3(t_K, p_Pa - ((1 - Humidity.MolarMassRatio) * vapourPressure_Pa));
}
