using ColdSim.Physics.Geometry;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Cylinder;

/// <summary>A cylinder as a vessel with a heat capacity, made once from its specification.</summary>
/// <remarks>Liquid, vapour and shell are one temperature; the shell above the liquid acts as a fin towards it.</remarks>
public sealed class CylinderBody
{
    /// <summary>Works out the vessel.</summary>
    /// <param name="specification">Specification of the cylinder.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter, a wall and a volume that do not make a vessel with 2:1 heads.</exception>
    public CylinderBody(CylinderSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        Specification = specification;
        Vessel = specification.Orientation == Orientation.Upright
            ? new UprightCylinder(specification.Volume_m3, specification.OutsideDiameter_m, specification.WallThickness_m)
            : new HorizontalTank(specification.Volume_m3, specification.OutsideDiameter_m, specification.WallThickness_m);
        ShellHeat_J_K = specification.MetalMass_kg * specification.MetalHeat_J_kgK;
        IsUnderBlanket = specification.Blanket is { Coverage_frac: > 0 };
    }

    /// <summary>Specification of the cylinder.</summary>
    public CylinderSpecification Specification { get; }

    /// <summary>Geometry of the shell.</summary>
    public PressureVessel Vessel { get; }

    /// <summary>Heat capacity of the shell. [J/K]</summary>
    public double ShellHeat_J_K { get; }

    /// <summary>Whether any of it is under a blanket, so that its dry wall has a temperature of its own.</summary>
    public bool IsUnderBlanket { get; }

    /// <summary>Whether any of several is under a blanket.</summary>
    /// <param name="bodies">Several cylinders.</param>
    internal static bool IsAnyUnderBlanket(CylinderBody[] bodies)
    {
        foreach (CylinderBody body in bodies)
        {
            if (body.IsUnderBlanket) return true;
        }

        return false;
    }

    /// <summary>Its contents at a mass and a temperature.</summary>
    /// <param name="mass_kg">Propane. [kg]</param>
    /// <param name="t_K">Temperature. [K]</param>
    public CylinderContents Contents(double mass_kg, double t_K) => CylinderContents.Of(mass_kg, Specification.Volume_m3, t_K);

    /// <summary>Its contents of a mixed gas.</summary>
    /// <param name="gas">Masses of all species. [kg]</param>
    /// <param name="t_K">Temperature. [K]</param>
    public CylinderContents Contents(in GasMasses gas, double t_K)
        => CylinderContents.Of(MixedContents.Of(gas, Specification.Volume_m3, t_K));
}
