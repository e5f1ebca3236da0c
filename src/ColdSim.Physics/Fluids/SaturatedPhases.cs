namespace ColdSim.Physics.Fluids;

/// <summary>Saturated liquid and vapour of one fluid at one temperature, as read from the table.</summary>
/// <param name="Pressure_Pa">Saturation pressure. [Pa]</param>
/// <param name="LiquidVolume_m3_kg">Specific volume of the liquid. [m³/kg]</param>
/// <param name="LiquidVolumeSlope">Its slope along the saturation line. [m³/(kg·K)]</param>
/// <param name="VapourVolume_m3_kg">Specific volume of the vapour. [m³/kg]</param>
/// <param name="VapourVolumeSlope">Its slope along the saturation line. [m³/(kg·K)]</param>
/// <param name="LiquidEnergy_J_kg">Internal energy of the liquid. [J/kg]</param>
/// <param name="LiquidEnergySlope">Its slope along the saturation line. [J/(kg·K)]</param>
/// <param name="VapourEnergy_J_kg">Internal energy of the vapour. [J/kg]</param>
/// <param name="VapourEnergySlope">Its slope along the saturation line. [J/(kg·K)]</param>
public readonly record struct SaturatedPhases(
    double Pressure_Pa,
    double LiquidVolume_m3_kg,
    double LiquidVolumeSlope,
    double VapourVolume_m3_kg,
    double VapourVolumeSlope,
    double LiquidEnergy_J_kg,
    double LiquidEnergySlope,
    double VapourEnergy_J_kg,
    double VapourEnergySlope)
{
    /// <summary>Enthalpy of the vapour. [J/kg]</summary>
    public double VapourEnthalpy_J_kg => VapourEnergy_J_kg + Pressure_Pa * VapourVolume_m3_kg;

    /// <summary>Enthalpy of the liquid. [J/kg]</summary>
    public double LiquidEnthalpy_J_kg => LiquidEnergy_J_kg + Pressure_Pa * LiquidVolume_m3_kg;

    /// <summary>Latent heat of vaporisation. [J/kg]</summary>
    public double LatentHeat_J_kg => VapourEnthalpy_J_kg - LiquidEnthalpy_J_kg;

    /// <summary>Heat taken from the vessel per mass of vapour drawn: latent heat × ρ′/(ρ′ − ρ″). [J/kg]</summary>
    /// <remarks>More than the latent heat, because the volume that the boiled liquid leaves must be filled with vapour too.</remarks>
    public double DrawHeat_J_kg => LatentHeat_J_kg * VapourVolume_m3_kg / (VapourVolume_m3_kg - LiquidVolume_m3_kg);
}
