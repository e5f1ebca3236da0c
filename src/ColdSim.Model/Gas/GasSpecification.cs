namespace ColdSim.Model.Gas;

/// <summary>The gas as fuel.</summary>
public sealed record GasSpecification
{
    /// <summary>
    /// Gross heat of combustion of gaseous propane at 25 °C, water condensed: 2,219.3 kJ/mol from the Active Thermochemical
    /// Tables' heats of formation. [J/kg]
    /// </summary>
    public double HeatingValue_J_kg { get; init; } = 50.33e6;
}
