using ColdSim.Model.Cylinder;

namespace ColdSim.Planning.Compare;

/// <summary>One thing to try: the base with some of it changed.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="Scenario">The whole scenario, changes made.</param>
public sealed record ComparedOption(string Name, Scenario Scenario)
{
    /// <summary>The name of the base in every comparison.</summary>
    public const string AsItIs = "as it is";

    private const double CarriedWater_kg = 105 * 0.45359237;

    /// <summary>Whether some upright cylinder is too large to be carried: over 105 lb of water, after 24 CFR 3280.704.</summary>
    public bool IsOnGround => Scenario.Rig.Cylinders.Any(
        c => c.Orientation == Orientation.Upright && c.Volume_m3 * 1000 > CarriedWater_kg * (1 + 1e-9));
}
