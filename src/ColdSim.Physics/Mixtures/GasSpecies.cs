using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;

namespace ColdSim.Physics.Mixtures;

/// <summary>A species that a gas may be mixed of: its fluid and its gross heat of combustion.</summary>
/// <param name="Fluid">Its equation of state.</param>
/// <param name="HeatingValue_J_kg">Gross heat of combustion as a gas at 25 °C, water condensed. [J/kg]</param>
internal sealed record GasSpecies(Fluid Fluid, double HeatingValue_J_kg)
{
    /// <summary>How many there are.</summary>
    public const int Count = 3;

    /// <summary>Propane, n-butane and isobutane, in the order of <see cref="GasMasses"/>.</summary>
    /// <remarks>
    /// Heats of combustion from heats of formation (Active Thermochemical Tables): 2,219.3, 2,877.1 and 2,867.8 kJ/mol. Propane's is
    /// the value that the pure gas always had here.
    /// </remarks>
    public static IReadOnlyList<GasSpecies> All { get; } =
    [
        new(ReferenceEquation.Fluid, 50.33e6),
        new(NormalButane.Fluid, 49.50e6),
        new(Isobutane.Fluid, 49.34e6),
    ];
}
