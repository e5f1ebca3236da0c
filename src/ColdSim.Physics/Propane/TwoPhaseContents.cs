using System.Runtime.CompilerServices;
using ColdSim.Physics.Fluids;

namespace ColdSim.Physics.Propane;

/// <summary>Propane in a closed vessel with liquid and vapour at one temperature.</summary>
/// <remarks>
/// From V = m′v′ + m″v″ and U = m′u′ + m″u″ follow, at constant volume, the heat capacity ∂U/∂T and the heat that a draw of
/// vapour takes. The exact identity h″ − ∂U/∂m = h_fg ρ′/(ρ′ − ρ″) makes the second one the latent heat times a factor.
/// </remarks>
internal readonly struct TwoPhaseContents
{
    private readonly SaturatedPhases _sat;
    private readonly double _perGap_kg_m3;

    /// <summary>The contents at a mass, a volume and a temperature.</summary>
    /// <param name="mass_kg">Propane, liquid and vapour. [kg]</param>
    /// <param name="volume_m3">Inside volume. [m³]</param>
    /// <param name="t_K">Temperature. [K]</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TwoPhaseContents(double mass_kg, double volume_m3, double t_K)
    {
        _sat = SaturationTable.At(t_K);
        _perGap_kg_m3 = 1 / (_sat.VapourVolume_m3_kg - _sat.LiquidVolume_m3_kg);
        VapourMass_kg = (volume_m3 - mass_kg * _sat.LiquidVolume_m3_kg) * _perGap_kg_m3;
        LiquidMass_kg = mass_kg - VapourMass_kg;
    }

    /// <summary>Liquid; negative once the vessel holds less than its saturated vapour. [kg]</summary>
    public double LiquidMass_kg { get; }

    /// <summary>Vapour; negative once the vessel is full of liquid. [kg]</summary>
    public double VapourMass_kg { get; }

    /// <summary>Volume of the liquid. [m³]</summary>
    public double LiquidVolume_m3 => LiquidMass_kg * _sat.LiquidVolume_m3_kg;

    /// <summary>Saturation pressure. [Pa]</summary>
    public double Pressure_Pa => _sat.Pressure_Pa;

    /// <summary>Enthalpy that leaves with each mass of vapour. [J/kg]</summary>
    public double VapourEnthalpy_J_kg => _sat.VapourEnthalpy_J_kg;

    /// <summary>Specific volume of the vapour. [m³/kg]</summary>
    public double VapourVolume_m3_kg => _sat.VapourVolume_m3_kg;

    /// <summary>Heat taken per mass of vapour drawn: latent heat × ρ′/(ρ′ − ρ″). [J/kg]</summary>
    /// <remarks>More than the latent heat, because the volume that the boiled liquid leaves must be filled with vapour too.</remarks>
    public double DrawHeat_J_kg => _sat.LatentHeat_J_kg * _sat.VapourVolume_m3_kg * _perGap_kg_m3;

    /// <summary>Internal energy of all the propane. [J]</summary>
    public double InternalEnergy_J => LiquidMass_kg * _sat.LiquidEnergy_J_kg + VapourMass_kg * _sat.VapourEnergy_J_kg;

    /// <summary>∂U/∂T at constant mass and volume; holds the heat of the liquid that boils to keep the vapour saturated. [J/K]</summary>
    public double HeatCapacity_J_K
    {
        get
        {
            double boiled_kg_K = -(LiquidMass_kg * _sat.LiquidVolumeSlope + VapourMass_kg * _sat.VapourVolumeSlope) * _perGap_kg_m3;
            return LiquidMass_kg * _sat.LiquidEnergySlope + VapourMass_kg * _sat.VapourEnergySlope
                + (_sat.VapourEnergy_J_kg - _sat.LiquidEnergy_J_kg) * boiled_kg_K;
        }
    }
}
