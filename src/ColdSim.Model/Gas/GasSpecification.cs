using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Gas;

/// <summary>The gas as fuel.</summary>
public sealed record GasSpecification
{
    /// <summary>
    /// Gross heat of combustion of the gas as filled, at 25 °C, water condensed; propane's is 2,219.3 kJ/mol from the Active
    /// Thermochemical Tables' heats of formation. [J/kg]
    /// </summary>
    public double HeatingValue_J_kg { get; init; } = 50.33e6;

    /// <summary>What the gas is made of, as filled: parts by mass.</summary>
    public GasMasses Composition { get; init; } = GasMasses.PurePropane;

    /// <summary>Common name.</summary>
    public string Name { get; init; } = "propane";

    /// <summary>Whether it is more than propane, so that its composition changes as it is drawn.</summary>
    public bool IsMixed => Composition != GasMasses.PurePropane;

    /// <summary>Heat by which the inputs on appliances' plates are turned into gas. [J/kg]</summary>
    /// <remarks>Plates are for propane; what an orifice made for it passes of another gas is worked out from there.</remarks>
    public double PlateHeatingValue_J_kg => IsMixed ? GasSpecies.All[0].HeatingValue_J_kg : HeatingValue_J_kg;

    /// <summary>What the heats of the species are multiplied by, so that the gas as filled has its stated heat; 1 unless one was stated.</summary>
    public double Heat_factor => HeatingValue_J_kg / GasBlend.Heat_J(Composition);
}
