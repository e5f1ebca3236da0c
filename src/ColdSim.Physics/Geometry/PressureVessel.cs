namespace ColdSim.Physics.Geometry;

/// <summary>A closed round vessel with 2:1 ellipsoidal heads, partly filled with liquid.</summary>
/// <remarks>
/// Volumes and levels are of the inside, areas of the outside wall. Levels count from the lowest point inside.
/// Outside heads are assumed to be 2:1 on the outside diameter, so an inside level maps to the outside in proportion.
/// The methods with a level or a volume are called every step and do not check: give 0..<see cref="FullLevel_m"/> and 0..<see cref="Volume_m3"/>.
/// </remarks>
public abstract class PressureVessel
{
    /// <summary>Checks the dimensions and finds the straight length that gives the volume.</summary>
    /// <param name="volume_m3">Inside volume (water capacity), 0.0001 to 100 m³.</param>
    /// <param name="outsideDiameter_m">Outside diameter, 0.02 to 5 m.</param>
    /// <param name="wallThickness_m">Wall thickness, 0 to a tenth of the diameter; 0 takes inside and outside as one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension outside its range, or heads that alone hold more than the volume.</exception>
    protected PressureVessel(double volume_m3, double outsideDiameter_m, double wallThickness_m)
    {
        Volume_m3 = Require.InRange(volume_m3, 1e-4, 100, "m³");
        OutsideDiameter_m = Require.InRange(outsideDiameter_m, 0.02, 5, "m");
        WallThickness_m = Require.InRange(wallThickness_m, 0, 0.1 * outsideDiameter_m, "m");
        InsideRadius_m = (0.5 * outsideDiameter_m) - wallThickness_m;
        OutsideRadius_m = 0.5 * outsideDiameter_m;

        double heads_m3 = HeadsVolume_m3(outsideDiameter_m, wallThickness_m);
        StraightLength_m = (volume_m3 - heads_m3) / (Math.PI * InsideRadius_m * InsideRadius_m);
        if (StraightLength_m < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(volume_m3), volume_m3, FormattableString.Invariant(
                $"Must be at least {heads_m3:R} m³, what the heads alone hold at an outside diameter of {outsideDiameter_m} m and a wall of {wallThickness_m} m."));
        }

        OutsideArea_m2 = (Math.Tau * OutsideRadius_m * StraightLength_m) + (2 * EllipsoidalHead.Area * OutsideRadius_m * OutsideRadius_m);
    }

    /// <summary>What two 2:1 heads alone hold, m³: the least volume of a vessel of this diameter and wall.</summary>
    /// <param name="outsideDiameter_m">Outside diameter, m.</param>
    /// <param name="wallThickness_m">Wall thickness, m.</param>
    public static double HeadsVolume_m3(double outsideDiameter_m, double wallThickness_m)
    {
        double radius_m = (0.5 * outsideDiameter_m) - wallThickness_m;
        return 2 * EllipsoidalHead.Volume * radius_m * radius_m * radius_m;
    }

    /// <summary>Inside volume, m³.</summary>
    public double Volume_m3 { get; }

    /// <summary>Outside diameter, m.</summary>
    public double OutsideDiameter_m { get; }

    /// <summary>Wall thickness, m.</summary>
    public double WallThickness_m { get; }

    /// <summary>Length of the straight part between the heads, m.</summary>
    public double StraightLength_m { get; }

    /// <summary>Area of the outside wall, heads included, m².</summary>
    public double OutsideArea_m2 { get; }

    /// <summary>Height of the body outside, without collar, valve and foot, m.</summary>
    public abstract double Height_m { get; }

    /// <summary>Level when full: the height inside, m.</summary>
    public abstract double FullLevel_m { get; }

    /// <summary>Inside radius, m.</summary>
    protected double InsideRadius_m { get; }

    /// <summary>Outside radius, m.</summary>
    protected double OutsideRadius_m { get; }

    /// <summary>Level, m, of <paramref name="liquidVolume_m3"/> of liquid.</summary>
    public abstract double LiquidLevel_m(double liquidVolume_m3);

    /// <summary>Volume, m³, below <paramref name="level_m"/>; the inverse of <see cref="LiquidLevel_m"/>.</summary>
    public abstract double VolumeAtLevel_m3(double level_m);

    /// <summary>Outside wall area, m², below <paramref name="level_m"/>.</summary>
    public abstract double WettedArea_m2(double level_m);

    /// <summary>Length, m, of the liquid line round the outside wall: the root of the fin that the dry wall makes.</summary>
    public abstract double FinRootLength_m(double level_m);

    /// <summary>Wetted part, m², of the vessel's outline seen level from its broad side.</summary>
    public abstract double ProjectedWettedArea_m2(double level_m);

    /// <summary>Length, m, of the dry wall as a fin: dry area over the length of the liquid line.</summary>
    /// <remarks>
    /// Along the straight wall of an upright vessel this is the distance along the wall; over the head, which narrows, it is the
    /// length that keeps the area right. A perfectly conducting wall then counts exactly once, and never more than the whole vessel.
    /// </remarks>
    // At the very bottom the line shrinks to a point; the floor keeps the length finite, and the fin counts for nothing there anyway.
    public double DryFinLength_m(double level_m)
        => Math.Max(0, OutsideArea_m2 - WettedArea_m2(level_m)) / Math.Max(FinRootLength_m(level_m), 1e-6 * OutsideDiameter_m);
}
