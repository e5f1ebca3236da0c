namespace ColdSim.Files.Quantities;

/// <summary>Heat stored per temperature rise of a whole body.</summary>
/// <param name="JoulesPerKelvin">J/K.</param>
public readonly record struct HeatCapacity(double JoulesPerKelvin);
