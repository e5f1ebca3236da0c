using ColdSim.Model.Cylinder;

namespace ColdSim.Planning.Compare;

/// <summary>The base with other common cylinders, filled alike.</summary>
public static class SizeSweep
{
    /// <summary>One option a size, as full as the base's cylinder: the same part of the legal filling. The base's own size is left out.</summary>
    /// <param name="scenario">The base; where its cylinder stands, and its temperature, are kept.</param>
    /// <param name="sizes">The common sizes.</param>
    public static IReadOnlyList<ComparedOption> Of(Scenario scenario, IEnumerable<CylinderSpecification> sizes)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(sizes);
        return [.. sizes.Select(s => With(scenario, s)).Where(o => o.Scenario.Rig.Cylinder != scenario.Rig.Cylinder)];
    }

    /// <summary>How full the base's cylinder is, as part of its legal filling.</summary>
    public static double Fill_frac(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Rig.Cylinder.Contents_kg / scenario.Rig.Cylinder.LegalFill_kg;
    }

    private static ComparedOption With(Scenario scenario, CylinderSpecification size)
    {
        CylinderSpecification cylinder = scenario.Rig.Cylinder with
        {
            Name = size.Name,
            Orientation = size.Orientation,
            Volume_m3 = size.Volume_m3,
            OutsideDiameter_m = size.OutsideDiameter_m,
            WallThickness_m = size.WallThickness_m,
            MetalMass_kg = size.MetalMass_kg,
            Tare_kg = size.Tare_kg,
            LegalFill_kg = size.LegalFill_kg,
            Contents_kg = size.LegalFill_kg == scenario.Rig.Cylinder.LegalFill_kg
                ? scenario.Rig.Cylinder.Contents_kg : Fill_frac(scenario) * size.LegalFill_kg,
        };
        return new ComparedOption(size.Name, scenario with { Rig = scenario.Rig with { Cylinder = cylinder } });
    }
}
