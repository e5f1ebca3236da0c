namespace ColdSim.Files.Scenarios.Sections;

/// <summary>A cylinder with 2:1 ellipsoidal heads, to fill in what a plate does not say.</summary>
internal static class ShellGeometry
{
    /// <summary>Collar, foot ring and valve of a portable cylinder. [kg]</summary>
    public const double Fittings_kg = 1.4;

    private const double Steel_kg_m3 = 7850;

    // Both heads of a 2:1 ellipsoidal shell together, per square of the diameter: an oblate spheroid of axis ratio 1/2.
    private const double HeadsArea_frac = 2.16797;

    /// <summary>Straight part between the heads; negative where the heads alone hold more than the volume. [m]</summary>
    public static double StraightLength_m(double volume_m3, double insideDiameter_m)
        => (volume_m3 - (Math.PI * insideDiameter_m * insideDiameter_m * insideDiameter_m / 12)) / (Math.PI * insideDiameter_m * insideDiameter_m / 4);

    /// <summary>Mass of a steel shell. [kg]</summary>
    public static double SteelMass_kg(double volume_m3, double outsideDiameter_m, double wall_m)
    {
        double straight_m = StraightLength_m(volume_m3, outsideDiameter_m - (2 * wall_m));
        double area_m2 = (Math.PI * outsideDiameter_m * straight_m) + (HeadsArea_frac * outsideDiameter_m * outsideDiameter_m);
        return area_m2 * wall_m * Steel_kg_m3;
    }
}
