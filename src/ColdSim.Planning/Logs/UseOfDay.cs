using UnitsNet;

namespace ColdSim.Planning.Logs;

/// <summary>What was used on one day, as far as readings cover it, beside what the simulator would have used.</summary>
/// <param name="Day">The day, midnight to midnight by the scenario's clock.</param>
/// <param name="Covered">How much of it lies between readings.</param>
/// <param name="Used">What was used; between two readings it is shared out over the hours as the simulator has it.</param>
/// <param name="UsedUncertainty">Its standard uncertainty, from the readings.</param>
/// <param name="Predicted">What the simulator used in the same hours.</param>
public sealed record UseOfDay(DateOnly Day, Duration Covered, Mass Used, Mass UsedUncertainty, Mass Predicted);
