namespace ColdSim.Physics.Geometry;

/// <summary>A vertical cylinder, such as a portable propane cylinder.</summary>
internal sealed class UprightCylinder : PressureVessel
{
    private readonly double headDepth_m;
    private readonly double headVolume_m3;
    private readonly double radiusCubed_m3;
    private readonly double section_m2;
    private readonly double topRim_m;

    /// <summary>A cylinder of given volume and diameter; its height follows.</summary>
    /// <param name="volume_m3">Inside volume (water capacity), 0.0001 to 100 m³.</param>
    /// <param name="outsideDiameter_m">Outside diameter, 0.02 to 5 m.</param>
    /// <param name="wallThickness_m">Wall thickness, 0 to a tenth of the diameter; 0 takes inside and outside as one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension outside its range, or heads that alone hold more than the volume.</exception>
    public UprightCylinder(double volume_m3, double outsideDiameter_m, double wallThickness_m = 0)
        : base(volume_m3, outsideDiameter_m, wallThickness_m)
    {
        headDepth_m = 0.5 * InsideRadius_m;
        radiusCubed_m3 = InsideRadius_m * InsideRadius_m * InsideRadius_m;
        headVolume_m3 = EllipsoidalHead.Volume * radiusCubed_m3;
        section_m2 = Math.PI * InsideRadius_m * InsideRadius_m;
        topRim_m = headDepth_m + StraightLength_m;
    }

    /// <inheritdoc/>
    public override double Height_m => StraightLength_m + OutsideRadius_m;

    /// <inheritdoc/>
    public override double FullLevel_m => StraightLength_m + InsideRadius_m;

    /// <inheritdoc/>
    public override double LiquidLevel_m(double liquidVolume_m3)
    {
        if (liquidVolume_m3 < headVolume_m3)
        {
            return headDepth_m * EllipsoidalHead.CapHeight(Math.Max(0, liquidVolume_m3) / radiusCubed_m3);
        }

        double empty_m3 = Volume_m3 - liquidVolume_m3;
        return empty_m3 < headVolume_m3
            ? FullLevel_m - (headDepth_m * EllipsoidalHead.CapHeight(Math.Max(0, empty_m3) / radiusCubed_m3))
            : headDepth_m + ((liquidVolume_m3 - headVolume_m3) / section_m2);
    }

    /// <inheritdoc/>
    public override double VolumeAtLevel_m3(double level_m)
    {
        if (level_m < headDepth_m)
        {
            return radiusCubed_m3 * EllipsoidalHead.CapVolume(Math.Max(0, level_m) / headDepth_m);
        }

        return level_m > topRim_m
            ? Volume_m3 - (radiusCubed_m3 * EllipsoidalHead.CapVolume(Math.Max(0, FullLevel_m - level_m) / headDepth_m))
            : headVolume_m3 + (section_m2 * (level_m - headDepth_m));
    }

    /// <inheritdoc/>
    public override double WettedArea_m2(double level_m)
    {
        double u = HeadPosition(level_m);
        double head_m2 = EllipsoidalHead.Area * OutsideRadius_m * OutsideRadius_m;
        double zone_m2 = u == 0 ? 0 : EllipsoidalHead.ZoneArea(Math.Abs(u)) * OutsideRadius_m * OutsideRadius_m;
        return u < 0
            ? head_m2 - zone_m2
            : head_m2 + zone_m2 + (Math.Tau * OutsideRadius_m * WettedStraight_m(level_m));
    }

    /// <inheritdoc/>
    public override double FinRootLength_m(double level_m)
    {
        double u = HeadPosition(level_m);
        return Math.Tau * OutsideRadius_m * Math.Sqrt(1 - (u * u));
    }

    /// <inheritdoc/>
    public override double ProjectedWettedArea_m2(double level_m)
    {
        double u = HeadPosition(level_m);

        // Half an ellipse of half axes r and r/2, its rim up; the strip between rim and plane is r²/2 (u √(1-u²) + asin u).
        double half_m2 = 0.25 * Math.PI * OutsideRadius_m * OutsideRadius_m;
        double strip_m2 = 0.5 * OutsideRadius_m * OutsideRadius_m * ((u * Math.Sqrt(1 - (u * u))) + Math.Asin(u));
        return half_m2 + strip_m2 + (2 * OutsideRadius_m * WettedStraight_m(level_m));
    }

    private double WettedStraight_m(double level_m) => Math.Clamp(level_m - headDepth_m, 0, StraightLength_m);

    // -1 at the bottom crown, 0 anywhere along the straight part, 1 at the top crown.
    private double HeadPosition(double level_m)
    {
        double below = level_m - headDepth_m;
        double above = level_m - topRim_m;
        return below < 0 ? Math.Max(-1, below / headDepth_m) : above > 0 ? Math.Min(1, above / headDepth_m) : 0;
    }
}
