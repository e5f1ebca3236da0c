namespace ColdSim.Physics.Geometry;

/// <summary>A lying cylinder, such as a tank fixed to a motorhome's frame.</summary>
/// <remarks>
/// With θ the half angle of the wetted arc, level = r (1 - cos θ) and volume = L r² (θ - sin θ cos θ) + (π/6) r³ (1 - cos θ)² (2 + cos θ):
/// the second part is both heads, exactly. The inverse is tabulated over the cube root of the volume at construction, where it is smooth, and polished by Newton.
/// </remarks>
internal sealed class HorizontalTank : PressureVessel
{
    private const int Cells = 256;

    // Cube root of one half: the table covers the lower half, the upper is its mirror image.
    private const double LastRoot = 0.7937005259840998;

    private readonly double straight_m3;
    private readonly double heads_m3;
    private readonly double[] angles = new double[Cells + 1];
    private readonly double[] slopes = new double[Cells + 1];

    /// <summary>A tank of given volume and diameter; its length follows.</summary>
    /// <param name="volume_m3">Inside volume (water capacity), 0.0001 to 100 m³.</param>
    /// <param name="outsideDiameter_m">Outside diameter, 0.02 to 5 m.</param>
    /// <param name="wallThickness_m">Wall thickness, 0 to a tenth of the diameter; 0 takes inside and outside as one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension outside its range, or heads that alone hold more than the volume.</exception>
    public HorizontalTank(double volume_m3, double outsideDiameter_m, double wallThickness_m = 0)
        : base(volume_m3, outsideDiameter_m, wallThickness_m)
    {
        straight_m3 = StraightLength_m * InsideRadius_m * InsideRadius_m;
        heads_m3 = Math.PI / 6 * InsideRadius_m * InsideRadius_m * InsideRadius_m;

        // From half full down: each root is below the last, and Newton on a convex curve from above cannot overshoot.
        double angle = 0.5 * Math.PI;
        for (int i = Cells; i > 0; i--)
        {
            double root = LastRoot * i / Cells;
            angle = Solve(Volume_m3 * root * root * root, angle);
            angles[i] = angle;
            slopes[i] = 3 * root * root * Volume_m3 / Slope(Math.Sin(angle)) * (LastRoot / Cells);
        }

        // Near the bottom volume goes with θ³ and the inverse starts straight; its first chord is slope enough, as Newton polishes it.
        slopes[0] = angles[1];
    }

    /// <summary>Length of the body outside, heads included, m.</summary>
    public double Length_m => StraightLength_m + OutsideRadius_m;

    /// <inheritdoc/>
    public override double Height_m => OutsideDiameter_m;

    /// <inheritdoc/>
    public override double FullLevel_m => 2 * InsideRadius_m;

    /// <inheritdoc/>
    public override double LiquidLevel_m(double liquidVolume_m3)
        => liquidVolume_m3 <= 0.5 * Volume_m3 ? LowLevel_m(liquidVolume_m3) : FullLevel_m - LowLevel_m(Volume_m3 - liquidVolume_m3);

    /// <inheritdoc/>
    public override double VolumeAtLevel_m3(double level_m)
        => level_m <= InsideRadius_m ? LowVolume_m3(HalfAngle(level_m)) : Volume_m3 - LowVolume_m3(HalfAngle(FullLevel_m - level_m));

    /// <inheritdoc/>
    public override double WettedArea_m2(double level_m)
        => (2 * OutsideRadius_m * StraightLength_m * HalfAngle(level_m))
            + (OutsideRadius_m * OutsideRadius_m * SideOfEllipsoid.AreaBelow(level_m / InsideRadius_m));

    /// <inheritdoc/>
    public override double FinRootLength_m(double level_m)
    {
        // The liquid's surface ends in half an ellipse at either head, similar to the head's own meridian.
        double x = Math.Clamp(1 - (level_m / InsideRadius_m), -1, 1);
        return (2 * StraightLength_m) + (4 * EllipsoidalHead.QuarterMeridian * OutsideRadius_m * Math.Sqrt(1 - (x * x)));
    }

    /// <inheritdoc/>
    public override double ProjectedWettedArea_m2(double level_m)
    {
        double angle = HalfAngle(level_m);
        double scaled_m = Math.Clamp(level_m, 0, FullLevel_m) * (OutsideRadius_m / InsideRadius_m);
        return (StraightLength_m * scaled_m) + (0.5 * OutsideRadius_m * OutsideRadius_m * Segment(angle, Math.Sin(angle), Math.Cos(angle)));
    }

    private double LowLevel_m(double volume_m3)
    {
        if (volume_m3 <= 0)
        {
            return 0;
        }

        double position = Math.Cbrt(volume_m3 / Volume_m3) * (Cells / LastRoot);
        int i = Math.Min((int)position, Cells - 1);
        double f = position - i;
        double rise = angles[i + 1] - angles[i];
        double angle = angles[i] + (f * (rise + ((1 - f) * (((slopes[i] - rise) * (1 - f)) + ((rise - slopes[i + 1]) * f)))));
        return Polish(volume_m3, angle);
    }

    // One turn is enough from the table; more are needed only in the first cell and for tanks that are nearly all head.
    private double Polish(double volume_m3, double angle)
    {
        for (int turn = 0; ; turn++)
        {
            (double sin, double cos) = Math.SinCos(angle);
            double change = (volume_m3 - LowVolume_m3(angle, sin, cos)) / Slope(sin);
            if (Math.Abs(change) < 1e-7 * angle || turn == 60)
            {
                // 1 - cos(angle + change) to second order: the third is below 1e-21, and no second sine is called.
                return InsideRadius_m * ((sin * sin / (1 + cos)) + (change * (sin + (0.5 * change * cos))));
            }

            angle = Math.Min(angle + change, 0.5 * Math.PI * (1 + 1e-9));
        }
    }

    private double Solve(double volume_m3, double angle)
    {
        for (int turn = 0; turn < 60; turn++)
        {
            double change = (volume_m3 - LowVolume_m3(angle)) / Slope(Math.Sin(angle));
            angle += change;
            if (Math.Abs(change) < 1e-13 * angle)
            {
                break;
            }
        }

        return angle;
    }

    private double Slope(double sin) => sin * sin * ((2 * straight_m3) + (3 * heads_m3 * sin));

    private double LowVolume_m3(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return LowVolume_m3(angle, sin, cos);
    }

    private double LowVolume_m3(double angle, double sin, double cos)
    {
        // 1 - cos θ without cancellation.
        double rise = sin * sin / (1 + cos);
        return (straight_m3 * Segment(angle, sin, cos)) + (heads_m3 * rise * rise * (2 + cos));
    }

    private double HalfAngle(double level_m)
        => 2 * Math.Asin(Math.Sqrt(Math.Clamp(level_m / (2 * InsideRadius_m), 0, 1)));

    // θ - sin θ cos θ: the circular segment for radius 1; by its series where the difference would lose digits.
    private static double Segment(double angle, double sin, double cos)
    {
        if (angle > 0.5)
        {
            return angle - (sin * cos);
        }

        double y = 4 * angle * angle;
        return angle * y / 6
            * (1 - (y / 20 * (1 - (y / 42 * (1 - (y / 72 * (1 - (y / 110 * (1 - (y / 156 * (1 - (y / 210))))))))))));
    }
}

/// <summary>Area of a lying 2:1 ellipsoid (two heads put together, radius 1) below a level plane along its short axis.</summary>
/// <remarks>
/// The zone at distance x from the middle has dA/dx = 2 E(-3 (1 - x²)), E the complete elliptic integral; its integral is
/// tabulated once, and read by cubic Hermite pieces that have the exact value and slope at every node. Error below 1e-9 of the whole.
/// </remarks>
internal static class SideOfEllipsoid
{
    private const int Cells = 256;
    private static readonly double[] Areas = new double[Cells + 1];
    private static readonly double[] Slopes = new double[Cells + 1];

    // An explicit static constructor: the two arrays fill each other.
    static SideOfEllipsoid()
    {
        double step = 2.0 / Cells;
        for (int i = 0; i <= Cells; i++)
        {
            Slopes[i] = ZoneWidth((i * step) - 1);
            if (i > 0)
            {
                Areas[i] = Areas[i - 1] + Gauss((i * step) - 1 - (0.5 * step), 0.5 * step);
            }
        }

        // The last node is known in closed form; forcing it there makes full and wetted area the same number.
        double scale = 2 * EllipsoidalHead.Area / Areas[Cells];
        for (int i = 0; i <= Cells; i++)
        {
            Areas[i] *= scale;
        }
    }

    /// <summary>Area below the plane at <paramref name="level"/> above the lowest point, 0..2.</summary>
    internal static double AreaBelow(double level)
    {
        double position = Math.Clamp(level, 0, 2) * (Cells / 2.0);
        int i = Math.Min((int)position, Cells - 1);
        double f = position - i;
        double step = 2.0 / Cells;
        double rise = Areas[i + 1] - Areas[i];
        double a = (step * Slopes[i]) - rise;
        double b = rise - (step * Slopes[i + 1]);
        return Areas[i] + (f * (rise + ((1 - f) * ((a * (1 - f)) + (b * f)))));
    }

    /// <summary>dA/dx at <paramref name="x"/> from the middle, -1..1: the mean over the section of √(1 + 3 (1 - x²) sin²φ), times π.</summary>
    // Arithmetic-geometric mean for 2 √(1+m) E(m/(1+m)), m = 3 (1 - x²); it doubles its digits with each turn.
    private static double ZoneWidth(double x)
    {
        double m = 3 * (1 - (x * x));
        double a = 1;
        double g = 1 / Math.Sqrt(1 + m);
        double sum = 0.5 * (1 - (g * g));
        double weight = 0.5;
        for (int i = 0; i < 6; i++)
        {
            double c = 0.5 * (a - g);
            (a, g) = (0.5 * (a + g), Math.Sqrt(a * g));
            weight *= 2;
            sum += weight * c * c;
        }

        return 2 * Math.Sqrt(1 + m) * (0.5 * Math.PI / a) * (1 - sum);
    }

    private static double Gauss(double middle, double half)
    {
        double inner = half * 0.339981043584856265;
        double outer = half * 0.861136311594052575;
        return half * ((0.652145154862546143 * (ZoneWidth(middle - inner) + ZoneWidth(middle + inner)))
            + (0.347854845137453857 * (ZoneWidth(middle - outer) + ZoneWidth(middle + outer))));
    }
}
