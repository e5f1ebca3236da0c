namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>A higher rating of regulator and connection.</summary>
public sealed class LargerRegulator : Relaxation
{
    /// <inheritdoc/>
    public override Limit Limit => Limit.Regulator;

    /// <inheritdoc/>
    public override IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac) =>
    [
        With(scenario, rig => rig with { Regulator = rig.Regulator with { RatedFlow_W = rig.Regulator.RatedFlow_W * (1 + part_frac) } }),
    ];
}
