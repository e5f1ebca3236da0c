using System.Runtime.Intrinsics;

namespace ColdSim.Physics.Fluids;

/// <summary>Saturated liquid and vapour of one fluid at one temperature, as read from the table.</summary>
public readonly record struct SaturatedPhases
{
    // In the table's order: volume of liquid and vapour, energy of liquid and vapour; one look-up works out all four at once.
    private readonly Vector256<double> _values, _slopes;

    internal SaturatedPhases(double pressure_Pa, Vector256<double> values, Vector256<double> slopes)
        => (Pressure_Pa, _values, _slopes) = (pressure_Pa, values, slopes);

    /// <summary>Saturation pressure. [Pa]</summary>
    public double Pressure_Pa { get; }

    /// <summary>Specific volume of the liquid. [m³/kg]</summary>
    public double LiquidVolume_m3_kg => _values[0];

    /// <summary>Its slope along the saturation line. [m³/(kg·K)]</summary>
    public double LiquidVolumeSlope => _slopes[0];

    /// <summary>Specific volume of the vapour. [m³/kg]</summary>
    public double VapourVolume_m3_kg => _values[1];

    /// <summary>Its slope along the saturation line. [m³/(kg·K)]</summary>
    public double VapourVolumeSlope => _slopes[1];

    /// <summary>Internal energy of the liquid. [J/kg]</summary>
    public double LiquidEnergy_J_kg => _values[2];

    /// <summary>Its slope along the saturation line. [J/(kg·K)]</summary>
    public double LiquidEnergySlope => _slopes[2];

    /// <summary>Internal energy of the vapour. [J/kg]</summary>
    public double VapourEnergy_J_kg => _values[3];

    /// <summary>Its slope along the saturation line. [J/(kg·K)]</summary>
    public double VapourEnergySlope => _slopes[3];

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
