namespace ColdSim.Physics.Geometry;

/// <summary>A 2:1 ellipsoidal head, half an oblate ellipsoid half as deep as its radius, for radius 1.</summary>
/// <remarks>
/// Heads of cylinders and tanks are made near this shape. Everything is exact geometry; areas scale with the radius squared,
/// volumes with its cube.
/// </remarks>
internal static class EllipsoidalHead
{
    /// <summary>Volume of one head: two thirds of π r² times the depth r/2.</summary>
    internal const double Volume = Math.PI / 3;

    /// <summary>Quarter meridian, the complete elliptic integral E for k² = 3/4.</summary>
    internal const double QuarterMeridian = 1.2110560275684595;

    // asinh(√3)/(2 √3) + 1
    private const double WholeZone = 1.3801729981504731;

    private static readonly double TwoRootThree = 2 * Math.Sqrt(3);
    private static readonly double RootThree = Math.Sqrt(3);

    /// <summary>Area of one head.</summary>
    internal const double Area = Math.PI * WholeZone;

    /// <summary>Area of the zone between the head's rim and a plane parallel to it at <paramref name="u"/> of the depth, 0..1.</summary>
    // With z = u/2, dA = 2π √(1 + 3u²) dz, whose integral is elementary.
    internal static double ZoneArea(double u)
        => Math.PI * ((0.5 * u * Math.Sqrt(1 + (3 * u * u))) + (Math.Asinh(RootThree * u) / TwoRootThree));

    /// <summary>Volume of the cap of relative height <paramref name="s"/> (0 at the crown, 1 at the rim).</summary>
    internal static double CapVolume(double s) => Math.PI / 6 * s * s * (3 - s);

    /// <summary>Relative height of the cap of a given volume: the exact inverse of <see cref="CapVolume"/>.</summary>
    // s²(3 - s) = q is a cubic with three real roots. Written with the arcsine of √q rather than an arccosine, no digits are lost near the crown.
    internal static double CapHeight(double volume)
    {
        double q = volume * 6 / Math.PI;
        (double sin, double cos) = Math.SinCos(Math.Asin(Math.Min(1, 0.5 * Math.Sqrt(q))) / 3);
        return 2 * sin * (sin + (RootThree * cos));
    }
}
