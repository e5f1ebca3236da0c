namespace ColdSim.Physics.HeatTransfer;

/// <summary>Natural convection: mean Nusselt numbers of plates and of a horizontal cylinder by the Rayleigh number.</summary>
/// <remarks>
/// Vertical plate and horizontal cylinder: Churchill and Chu 1975, laminar and turbulent flow in one expression each, for Rayleigh numbers
/// up to 10¹². Horizontal plate: McAdams 1954, as in Incropera and DeWitt's textbook. A cold wall follows the same law as a warm one, with
/// the layer falling. No checks: called every step.
/// </remarks>
public static class NaturalConvection
{
    // Air's Prandtl number stays within 0.70 to 0.73 outdoors, which moves the Nusselt number by less than 0.4 %.
    private const double AirPrandtl = 0.713;

    private static readonly double PlateAirFactor = PlateFactor(AirPrandtl), CylinderAirFactor = CylinderFactor(AirPrandtl);

    /// <summary>Vertical plate of any height, in any fluid.</summary>
    /// <param name="rayleigh">Rayleigh number on the height, 0 to 10¹².</param>
    /// <param name="prandtl">Prandtl number, above 0.</param>
    public static double VerticalPlate(double rayleigh, double prandtl) => Plate(rayleigh, PlateFactor(prandtl));

    /// <summary>Vertical plate in air, whose Prandtl number is held at 0.713.</summary>
    /// <param name="rayleigh">Rayleigh number on the height, 0 to 10¹².</param>
    public static double VerticalPlateInAir(double rayleigh) => Plate(rayleigh, PlateAirFactor);

    /// <summary>Horizontal cylinder in any fluid.</summary>
    /// <param name="rayleigh">Rayleigh number on the diameter, 0 to 10¹².</param>
    /// <param name="prandtl">Prandtl number, above 0.</param>
    public static double HorizontalCylinder(double rayleigh, double prandtl) => Cylinder(rayleigh, CylinderFactor(prandtl));

    /// <summary>Horizontal cylinder in air, whose Prandtl number is held at 0.713.</summary>
    /// <param name="rayleigh">Rayleigh number on the diameter, 0 to 10¹².</param>
    public static double HorizontalCylinderInAir(double rayleigh) => Cylinder(rayleigh, CylinderAirFactor);

    /// <summary>Horizontal plate on area over perimeter, cold face down or hot face up, where the layer leaves by itself.</summary>
    /// <param name="rayleigh">Rayleigh number, 10⁴ to 10¹¹.</param>
    // McAdams changes law at 1e7 with a jump of 6 %; taking the larger moves the change to 4.7e6 and leaves no jump.
    public static double PlateColdFaceDown(double rayleigh) => Math.Max(0.54 * Math.Sqrt(Math.Sqrt(rayleigh)), 0.15 * Math.Cbrt(rayleigh));

    /// <summary>Horizontal plate on area over perimeter, cold face up or hot face down, where the air has to creep round the edge.</summary>
    /// <param name="rayleigh">Rayleigh number, 10⁵ to 10¹¹.</param>
    public static double PlateColdFaceUp(double rayleigh) => 0.27 * Math.Sqrt(Math.Sqrt(rayleigh));

    /// <summary>Factor by which a slender vertical cylinder exceeds the vertical plate, 1 or more.</summary>
    /// <remarks>Source: Popiel, Wojtkowiak and Bober 2007, for Prandtl numbers 0.01 to 100; about 1.02 for a squat cylinder in air.</remarks>
    /// <param name="grashof">Grashof number on the height, above 0.</param>
    /// <param name="prandtl">Prandtl number, 0.01 to 100.</param>
    /// <param name="height_m">Height, m.</param>
    /// <param name="diameter_m">Diameter, m.</param>
    public static double SlenderCylinderFactor(double grashof, double prandtl, double height_m, double diameter_m)
    {
        double b = 0.0571322 + (0.20305 * Math.Pow(prandtl, -0.43));
        double c = 0.9165 - (0.0043 * Math.Sqrt(prandtl)) + (0.01333 * Math.Log(prandtl)) + (0.0004809 / prandtl);
        double curvature = Math.Sqrt(32) / Math.Sqrt(Math.Sqrt(grashof)) * height_m / diameter_m;
        return 1 + (b * Math.Pow(curvature, c));
    }

    // The parts that depend on the Prandtl number alone.
    private static double PlateFactor(double prandtl) => 0.387 / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);

    private static double CylinderFactor(double prandtl) => 0.387 / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);

    private static double Plate(double rayleigh, double prandtlFactor)
    {
        double root = 0.825 + (prandtlFactor * Math.Sqrt(Math.Cbrt(rayleigh)));
        return root * root;
    }

    private static double Cylinder(double rayleigh, double prandtlFactor)
    {
        double root = 0.60 + (prandtlFactor * Math.Sqrt(Math.Cbrt(rayleigh)));
        return root * root;
    }
}
