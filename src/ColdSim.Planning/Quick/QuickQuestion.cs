using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Quick;

/// <summary>What is known at dusk, without any file. SI units; what is not known has a stated default.</summary>
public sealed record QuickQuestion
{
    /// <summary>The night.</summary>
    public required QuickNight Night { get; init; }

    /// <summary>The cylinders with what is in them, in the order in which they are used.</summary>
    public required IReadOnlyList<CylinderSpecification> Cylinders { get; init; }

    /// <summary>How several are joined.</summary>
    public CylinderArrangement Arrangement { get; init; } = new OneAtATime();

    /// <summary>Power of a blanket around each of them; null for none. [W]</summary>
    public double? Blanket_W { get; init; }

    /// <summary>The gas in them.</summary>
    public GasGrade Gas { get; init; } = GasGrade.Propane;

    /// <summary>Furnace input at sea level, as on the plate. [W]</summary>
    public required double Furnace_W { get; init; }

    /// <summary>Length of the coach; null takes <see cref="Length_m"/>. [m]</summary>
    public double? CoachLength_m { get; init; }

    /// <summary>How well it keeps its heat; null takes ordinary.</summary>
    public CoachGrade? Grade { get; init; }

    /// <summary>Wind at the cylinder per wind at mast height; null takes the usual.</summary>
    public double? WindExposure_frac { get; init; }

    /// <summary>Height above sea level; null takes sea level. [m]</summary>
    public double? Elevation_m { get; init; }

    /// <summary>Length of the coach unless stated: 24 ft. [m]</summary>
    public const double Length_m = 24 * ConversionFactors.Foot_m;

    /// <summary>Set point unless stated: 62 °F. [K]</summary>
    public const double Inside_K = (62 + ConversionFactors.ZeroFahrenheit_R) / 1.8;
}
