using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;

namespace ColdSim.Physics.Mixtures;

/// <summary>What follows from a gas's composition alone: heat, molar mass, and parts by liquid volume.</summary>
internal static class GasBlend
{
    /// <summary>The temperature at which liquid volumes are stated, 60 °F. [K]</summary>
    public const double VolumesAt_K = 288.705_555_555_555_6;

    private static readonly double[] Density_kg_m3 = [.. GasSpecies.All.Select(s => 1 / s.Fluid.Saturation.At(VolumesAt_K).LiquidVolume_m3_kg)];

    /// <summary>Gross heat of combustion of a mass of gas. [J]</summary>
    public static double Heat_J(in GasMasses gas)
        => gas.Propane * GasSpecies.All[0].HeatingValue_J_kg + gas.NormalButane * GasSpecies.All[1].HeatingValue_J_kg
            + gas.Isobutane * GasSpecies.All[2].HeatingValue_J_kg;

    /// <summary>Molar mass of a gas. [kg/mol]</summary>
    /// <remarks>Both butanes have one molar mass.</remarks>
    public static double MolarMass_kg_mol(in GasMasses gas)
        => gas.Sum / (gas.Propane / ReferenceEquation.MolarMass_kg_mol + (gas.NormalButane + gas.Isobutane) / NormalButane.MolarMass_kg_mol);

    /// <summary>Mass of a gas that a hole passes, per mass of propane at the same pressures.</summary>
    /// <remarks>The root of the molar masses' ratio; that butane's isentropic exponent is 0.03 lower is left out (0.5 %).</remarks>
    public static double Flow_factor(in GasMasses gas) => Math.Sqrt(MolarMass_kg_mol(gas) / ReferenceEquation.MolarMass_kg_mol);

    /// <summary>Parts by mass from volumes of liquid at 60 °F, assumed to add up.</summary>
    /// <param name="volumes">Volumes, or parts by volume, of each species.</param>
    public static GasMasses FromLiquidVolumes(in GasMasses volumes) => new GasMasses(
        volumes.Propane * Density_kg_m3[0], volumes.NormalButane * Density_kg_m3[1], volumes.Isobutane * Density_kg_m3[2]).Parts();

    /// <summary>Parts by volume of liquid at 60 °F.</summary>
    public static GasMasses LiquidVolumes(in GasMasses gas) => new GasMasses(
        gas.Propane / Density_kg_m3[0], gas.NormalButane / Density_kg_m3[1], gas.Isobutane / Density_kg_m3[2]).Parts();
}
