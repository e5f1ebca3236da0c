namespace ColdSim.Physics.HeatTransfer;

/// <summary>Natural convection: mean Nusselt numbers of a vertical plate and of a horizontal cylinder by the Rayleigh number.</summary>
/// <remarks>
/// Vertical plate and horizontal cylinder: Churchill and Chu 1975, laminar and turbulent flow in one expression each, for Rayleigh numbers
/// up to 10¹². A cold wall follows the same law as a warm one, with the layer falling. No checks: called every step.
/// </remarks>
internal static class NaturalConvection
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
