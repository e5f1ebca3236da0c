using System.Runtime.CompilerServices;
using ColdSim.Physics.Fluids;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Propane;

namespace ColdSim.Model.Cylinder;

/// <summary>What is in a cylinder at a mass and a temperature: liquid with vapour, or vapour alone. SI units.</summary>
/// <param name="Pressure_Pa">Absolute pressure. [Pa]</param>
/// <param name="LiquidMass_kg">Liquid; negative without liquid, by as much as is missing to saturate the space. [kg]</param>
/// <param name="LiquidVolume_m3">Volume of the liquid, 0 without. [m³]</param>
/// <param name="VapourEnthalpy_J_kg">Enthalpy that leaves with each mass of vapour. [J/kg]</param>
/// <param name="DrawHeat_J_kg">Heat that each mass of vapour drawn takes from what stays. [J/kg]</param>
/// <param name="HeatCapacity_J_K">∂U/∂T of the propane at constant mass and volume. [J/K]</param>
/// <param name="InternalEnergy_J">Internal energy of the propane. [J]</param>
/// <param name="VapourVolume_m3_kg">Specific volume of the vapour. [m³/kg]</param>
/// <param name="PressureByMass_Pa_kg">∂p/∂m at constant temperature; 0 with liquid. [Pa/kg]</param>
public readonly record struct CylinderContents(
    double Pressure_Pa,
    double LiquidMass_kg,
    double LiquidVolume_m3,
    double VapourEnthalpy_J_kg,
    double DrawHeat_J_kg,
    double HeatCapacity_J_K,
    double InternalEnergy_J,
    double VapourVolume_m3_kg,
    double PressureByMass_Pa_kg)
{
    /// <summary>Whether there is liquid.</summary>
    public bool HasLiquid => LiquidMass_kg > 0;

    /// <summary>The contents of a volume.</summary>
    /// <param name="mass_kg">Propane. [kg]</param>
    /// <param name="volume_m3">Inside volume. [m³]</param>
    /// <param name="t_K">Temperature of everything in it. [K]</param>
    public static CylinderContents Of(double mass_kg, double volume_m3, double t_K)
    {
        TwoPhaseContents two = new(mass_kg, volume_m3, Math.Min(t_K, SaturationTable.Highest_K));
        In(two.LiquidMass_kg > 0, mass_kg, volume_m3, t_K, out CylinderContents contents);
        return contents;
    }

    /// <summary>The contents of a volume in a phase that is known, also a little past the point where it ends.</summary>
    /// <param name="withLiquid">Whether liquid and vapour are there, or vapour alone.</param>
    /// <param name="mass_kg">Propane. [kg]</param>
    /// <param name="volume_m3">Inside volume. [m³]</param>
    /// <param name="t_K">Temperature of everything in it. [K]</param>
    /// <param name="contents">Receives the contents.</param>
    /// <remarks>
    /// A time step that ends where the last liquid goes must see one set of equations throughout; the heat of a draw jumps there.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void In(bool withLiquid, double mass_kg, double volume_m3, double t_K, out CylinderContents contents)
    {
        if (!withLiquid)
        {
            contents = VapourAlone(mass_kg, volume_m3, t_K);
            return;
        }

        TwoPhaseContents two = new(mass_kg, volume_m3, t_K);
        contents = new CylinderContents(
            two.Pressure_Pa, two.LiquidMass_kg, two.LiquidVolume_m3, two.VapourEnthalpy_J_kg,
            two.DrawHeat_J_kg, two.HeatCapacity_J_K, two.InternalEnergy_J, two.VapourVolume_m3_kg, 0);
    }

    /// <summary>The contents of a volume of mixed gas.</summary>
    /// <param name="mixed">The mixed gas in the vessel.</param>
    public static CylinderContents Of(in MixedContents mixed) => new(
        mixed.Pressure_Pa, mixed.LiquidMass_kg, mixed.LiquidVolume_m3, mixed.VapourEnthalpy_J_kg, mixed.DrawHeat_J_kg,
        mixed.HeatCapacity_J_K, mixed.InternalEnergy_J, 1 / mixed.VapourDensity_kg_m3, mixed.PressureByMass_Pa_kg);

    // The same equation of state, so pressure and energy go on without a jump where the last liquid went.
    private static CylinderContents VapourAlone(double mass_kg, double volume_m3, double t_K)
    {
        // It may be hotter than the saturation line goes; what is missing to saturate it is then counted from the line's end.
        TwoPhaseContents two = new(mass_kg, volume_m3, Math.Min(t_K, SaturationTable.Highest_K));
        FluidState v = ReferenceEquation.Fluid.VapourAt(t_K, Math.Max(mass_kg, 1e-9) / volume_m3);
        return new CylinderContents(v.Pressure_Pa, two.LiquidMass_kg, 0, v.Enthalpy_J_kg,
            t_K * v.PressureByTemperature_Pa_K / v.Density_kg_m3, mass_kg * v.Cv_J_kgK, mass_kg * v.InternalEnergy_J_kg,
            1 / v.Density_kg_m3, v.PressureByDensity / volume_m3);
    }
}
