using ColdSim.Model.Cylinder;

namespace ColdSim.Planning.Compare;

/// <summary>The base with other common cylinders at the same fill.</summary>
public static class SizeSweep
{
    /// <summary>
    /// One option a size: every cylinder of the base becomes one of that size, as full as it was, by part of the legal filling. The
    /// base's own size is left out.
    /// </summary>
    /// <param name="scenario">The base; its cylinders' surroundings, temperatures and blankets are kept.</param>
    /// <param name="sizes">The common sizes.</param>
    public static IReadOnlyList<ComparedOption> Of(Scenario scenario, IEnumerable<CylinderSpecification> sizes)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(sizes);
        return [.. sizes.Select(s => With(scenario, s)).Where(o => !o.Scenario.Rig.Cylinders.SequenceEqual(scenario.Rig.Cylinders))];
    }

    /// <summary>How full a cylinder is, as part of its legal filling.</summary>
    public static double Fill_frac(CylinderSpecification cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return cylinder.Contents_kg / cylinder.LegalFill_kg;
    }

    private static ComparedOption With(Scenario scenario, CylinderSpecification size)
        => new(size.Name, scenario with { Rig = scenario.Rig with { Cylinders = [.. scenario.Rig.Cylinders.Select(c => Resized(c, size))] } });

    /// <summary>A cylinder of another size in the place of one, as full by part of the legal filling.</summary>
    /// <param name="cylinder">The cylinder whose size varies.</param>
    /// <param name="size">The other size.</param>
    public static CylinderSpecification Resized(CylinderSpecification cylinder, CylinderSpecification size)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(size);
        return cylinder with
        {
            Name = size.Name,

            // One that is too large to carry is set on the ground, beside the cover or locker of those that it replaces.
            IsEnclosed = cylinder.IsEnclosed && !ComparedOption.IsTooLargeToCarry(size),
            Orientation = size.Orientation,
            Volume_m3 = size.Volume_m3,
            OutsideDiameter_m = size.OutsideDiameter_m,
            WallThickness_m = size.WallThickness_m,
            MetalMass_kg = size.MetalMass_kg,
            Tare_kg = size.Tare_kg,
            LegalFill_kg = size.LegalFill_kg,
            Contents_kg = size.LegalFill_kg == cylinder.LegalFill_kg ? cylinder.Contents_kg : Fill_frac(cylinder) * size.LegalFill_kg,
        };
    }
}
