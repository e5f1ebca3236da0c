namespace ColdSim.Model.Cylinder;

/// <summary>A size of cylinder or tank that is sold everywhere, in steel. SI units.</summary>
/// <param name="Name">What people call it: the nominal charge in lb, or the gross gallons of a frame tank.</param>
/// <param name="Orientation">How it stands.</param>
/// <param name="Volume_m3">Water capacity. [m³]</param>
/// <param name="OutsideDiameter_m">Outside diameter. [m]</param>
/// <param name="WallThickness_m">Shell thickness. [m]</param>
/// <param name="ShellMass_kg">Shell without collar, foot ring, feet and valve. [kg]</param>
/// <param name="Tare_kg">Empty mass, a typical value; the stamp on the collar decides. [kg]</param>
public sealed record StandardSize(
    string Name,
    Orientation Orientation,
    double Volume_m3,
    double OutsideDiameter_m,
    double WallThickness_m,
    double ShellMass_kg,
    double Tare_kg)
{
    /// <summary>Propane per water capacity, by mass, that a cylinder may hold under the United States' filling rule.</summary>
    public const double LegalFill_frac = 0.42;

    private const double Water_kg_m3 = 1000;

    /// <summary>Propane that may legally be filled. [kg]</summary>
    public double LegalFill_kg => LegalFill_frac * Volume_m3 * Water_kg_m3;
}
