namespace ColdSim.Model.Engine;

/// <summary>What flowed on the 12 V side over a step. [J]</summary>
/// <param name="Solar_J">From the panels.</param>
/// <param name="Converter_J">Through the converter.</param>
/// <param name="Load_J">To everything that draws.</param>
/// <param name="Loss_J">Lost in charging, and by Peukert's law in giving.</param>
/// <param name="Stored_J">Charge at its end.</param>
internal readonly record struct PowerFlux(double Solar_J, double Converter_J, double Load_J, double Loss_J, double Stored_J);
