using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;

namespace ColdSim.Planning.Gauges;

/// <summary>A cylinder as a vessel to be read: its shape and how well that is known. SI units.</summary>
public sealed record GaugedCylinder
{
    /// <summary>What people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Upright or horizontal.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Water capacity. [m³]</summary>
    public required double Volume_m3 { get; init; }

    /// <summary>Outside diameter. [m]</summary>
    public required double OutsideDiameter_m { get; init; }

    /// <summary>Shell thickness. [m]</summary>
    public required double WallThickness_m { get; init; }

    /// <summary>Propane that may legally be filled. [kg]</summary>
    public required double LegalFill_kg { get; init; }

    /// <summary>Standard uncertainty of the diameter: an inch and a tenth between makers of a common size, less where it was measured.</summary>
    public double DiameterError_frac { get; init; } = 0.01;

    /// <summary>Standard uncertainty of the water capacity.</summary>
    public double CapacityError_frac { get; init; } = 0.01;

    /// <summary>Distance of a sensor from the middle of a lying tank, along it; null takes a quarter of the straight part. [m]</summary>
    public double? OffMiddle_m { get; init; }

    /// <summary>Whether it lies.</summary>
    public bool Lies => Orientation == Orientation.Horizontal;

    /// <summary>A scenario's cylinder as a vessel to be read.</summary>
    public static GaugedCylinder Of(CylinderSpecification cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return new()
        {
            Name = cylinder.Name,
            Orientation = cylinder.Orientation,
            Volume_m3 = cylinder.Volume_m3,
            OutsideDiameter_m = cylinder.OutsideDiameter_m,
            WallThickness_m = cylinder.WallThickness_m,
            LegalFill_kg = cylinder.LegalFill_kg,
        };
    }

    /// <summary>The vessel inside its wall.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Dimensions that make no vessel with 2:1 heads.</exception>
    public PressureVessel Vessel() => Vessel(Volume_m3, OutsideDiameter_m);

    internal PressureVessel Vessel(double volume_m3, double diameter_m) => Lies
        ? new HorizontalTank(volume_m3, diameter_m, WallThickness_m)
        : new UprightCylinder(volume_m3, diameter_m, WallThickness_m);

    internal double OffMiddleOf(PressureVessel vessel) => Lies ? OffMiddle_m ?? 0.25 * vessel.StraightLength_m : 0;
}
