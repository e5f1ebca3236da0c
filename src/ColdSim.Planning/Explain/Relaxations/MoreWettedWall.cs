using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;

namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>Wall wetted as if part of a legal filling more liquid stood against it; the propane stays as it is.</summary>
/// <remarks>
/// Counted from the legal filling: a tenth of what is there would always do less than a tenth more heat, and could never be told
/// from it.
/// </remarks>
public sealed class MoreWettedWall : Relaxation
{
    // A filling's volume is reckoned at the temperature at which fillings are.
    private const double Filling_K = 288.71;

    /// <inheritdoc/>
    public override Limit Limit => Limit.LittleLiquid;

    /// <inheritdoc/>
    public override IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac)
        => [WithEach(scenario, c => c with { Surroundings = Wetter(c, part_frac) })];

    private static CylinderSurroundings Wetter(CylinderSpecification cylinder, double part_frac) => cylinder.Surroundings with
    {
        WettingExtra_m3 = cylinder.Surroundings.WettingExtra_m3
            + part_frac * cylinder.LegalFill_kg / PropaneSaturation.LiquidDensity_kg_m3(Filling_K),
    };
}
