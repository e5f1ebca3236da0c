namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>More heat from surroundings and blanket, at the same temperatures.</summary>
public sealed class MoreHeat : Relaxation
{
    /// <inheritdoc/>
    public override Limit Limit => Limit.HeatIntoLiquid;

    /// <inheritdoc/>
    public override IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac) =>
    [
        WithEach(scenario, c => c with
        {
            Surroundings = c.Surroundings with { HeatGain_factor = c.Surroundings.HeatGain_factor * (1 + part_frac) },
            Blanket = c.Blanket is null ? null : c.Blanket with { Power_W = c.Blanket.Power_W * (1 + part_frac) },
        }),
    ];
}
