namespace ColdSim.Files.Quantities;

/// <summary>Heat per temperature difference, for which UnitsNet has no quantity.</summary>
/// <param name="WattsPerKelvin">W/K.</param>
public readonly record struct HeatConductance(double WattsPerKelvin);
