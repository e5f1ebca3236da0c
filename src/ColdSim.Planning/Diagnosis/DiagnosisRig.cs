using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Diagnosis;

/// <summary>What the model needs to know of the rig to say what should be seen. SI units.</summary>
public sealed record DiagnosisRig
{
    /// <summary>The open cylinder.</summary>
    public CylinderSpecification Cylinder { get; init; } = StandardSize.Find(UsualSize)!.Full();

    /// <summary>The furnace's input. [W]</summary>
    public double Furnace_W { get; init; } = UsualFurnace_W;

    /// <summary>The regulator.</summary>
    public RegulatorSpecification Regulator { get; init; } = new();

    /// <summary>Height above sea level. [m]</summary>
    public double Elevation_m { get; init; }

    /// <summary>Part of the plate's input that was burned, on average over <see cref="Use_s"/>.</summary>
    public double Use_frac { get; init; } = UsualUse_frac;

    /// <summary>Part of the plate's input that is burned on a usual winter's night; common practice, no source.</summary>
    public const double UsualUse_frac = 0.5;

    /// <summary>How long that went on. [s]</summary>
    public const double Use_s = 8 * 3600;

    /// <summary>What a diagnosis needs to know of a whole rig.</summary>
    /// <param name="rig">The rig; its first cylinder is the open one.</param>
    /// <exception cref="ArgumentNullException">There is no rig.</exception>
    public static DiagnosisRig Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return new()
        {
            Cylinder = rig.Cylinders[0],
            Furnace_W = rig.Furnace?.Input_W ?? UsualFurnace_W,
            Regulator = rig.Regulator,
            Elevation_m = rig.Site.Elevation_m,
        };
    }

    /// <summary>The cylinder unless another is named.</summary>
    public const string UsualSize = "20 lb";

    /// <summary>The furnace unless another is named. [W]</summary>
    public const double UsualFurnace_W = 30_000 * ConversionFactors.BtuPerHour_W;
}
