using MathNet.Numerics.RootFinding;

namespace ColdSim.Physics.Propane;

/// <summary>Saturation properties of propane from −80 to +80 °C, one call a property, checked arguments.</summary>
/// <remarks>From the reference equation of Lemmon, McLinden and Wagner (2009) through <see cref="SaturationTable"/>.</remarks>
public static class PropaneSaturation
{
    /// <summary>Saturation pressure. [Pa]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double Pressure_Pa(double t_K) => SaturationTable.Pressure_Pa(InRange(t_K));

    /// <summary>Density of saturated liquid. [kg/m³]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double LiquidDensity_kg_m3(double t_K) => 1 / SaturationTable.At(InRange(t_K)).LiquidVolume_m3_kg;

    /// <summary>Density of saturated vapour. [kg/m³]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double VapourDensity_kg_m3(double t_K) => 1 / SaturationTable.At(InRange(t_K)).VapourVolume_m3_kg;

    /// <summary>Latent heat of vaporisation. [J/kg]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double LatentHeat_J_kg(double t_K) => SaturationTable.At(InRange(t_K)).LatentHeat_J_kg;

    /// <summary>Internal energy of saturated liquid; h = 200 kJ/kg on saturated liquid at 0 °C. [J/kg]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double LiquidEnergy_J_kg(double t_K) => SaturationTable.At(InRange(t_K)).LiquidEnergy_J_kg;

    /// <summary>Internal energy of saturated vapour, on the same zero. [J/kg]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double VapourEnergy_J_kg(double t_K) => SaturationTable.At(InRange(t_K)).VapourEnergy_J_kg;

    /// <summary>Heat capacity of saturated liquid at constant pressure, from the reference equation itself. [J/(kg·K)]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double LiquidHeat_J_kgK(double t_K)
        => ReferenceEquation.At(InRange(t_K), LiquidDensity_kg_m3(t_K)).Cp_J_kgK;

    /// <summary>Speed of sound in saturated liquid, from the reference equation itself. [m/s]</summary>
    /// <param name="t_K">Temperature, 193.15 to 353.15 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double LiquidSpeedOfSound_m_s(double t_K)
        => ReferenceEquation.At(InRange(t_K), LiquidDensity_kg_m3(t_K)).SpeedOfSound_m_s;

    /// <summary>Temperature at which propane boils at a pressure: the inverse of <see cref="Pressure_Pa"/>. [K]</summary>
    /// <param name="p_Pa">Absolute pressure, that of −80 to that of +80 °C. [Pa]</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double Temperature_K(double p_Pa)
    {
        double low_Pa = SaturationTable.Pressure_Pa(SaturationTable.Lowest_K);
        double high_Pa = SaturationTable.Pressure_Pa(SaturationTable.Highest_K);
        if (!(p_Pa >= low_Pa && p_Pa <= high_Pa))
            throw new ArgumentOutOfRangeException(nameof(p_Pa), p_Pa, FormattableString.Invariant($"Must be {low_Pa:F0} to {high_Pa:F0} Pa."));
        return Brent.FindRoot(t_K => Math.Log(SaturationTable.Pressure_Pa(t_K) / p_Pa), SaturationTable.Lowest_K, SaturationTable.Highest_K, 1e-11, 100);
    }

    private static double InRange(double t_K)
        => t_K is >= SaturationTable.Lowest_K and <= SaturationTable.Highest_K
            ? t_K
            : throw new ArgumentOutOfRangeException(nameof(t_K), t_K, "Must be 193.15 to 353.15 K (-80 to +80 °C).");
}
