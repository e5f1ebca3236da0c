namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>More propane to burn, without wetting more wall.</summary>
public sealed class MorePropane : Relaxation
{
    /// <inheritdoc/>
    public override Limit Limit => Limit.LiquidGone;

    /// <inheritdoc/>
    public override IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac) =>
    [
        WithEach(scenario, c => c with
        {
            Contents_kg = c.Contents_kg * (1 + part_frac),
            Surroundings = c.Surroundings with { WettingLiquid_factor = c.Surroundings.WettingLiquid_factor / (1 + part_frac) },
        }),
    ];
}
