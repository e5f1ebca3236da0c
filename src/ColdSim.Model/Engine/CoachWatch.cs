namespace ColdSim.Model.Engine;

/// <summary>Watches what nothing switches on: water that freezes, damp that settles, inside air that passes freezing.</summary>
/// <param name="plant">The equations.</param>
/// <param name="controls">The thresholds.</param>
/// <param name="conditions">What is held still.</param>
/// <param name="teller">Is told.</param>
internal sealed class CoachWatch(Plant plant, Controls controls, HeldInputs conditions, EventPublisher teller)
{
    /// <summary>Tells of what a state passes.</summary>
    /// <param name="s">The state.</param>
    /// <param name="outside_K">Outside air. [K]</param>
    public void Update(PlantState s, double outside_K)
    {
        ReadOnlySpan<double> node_J = s.Node_J;
        for (int i = 0; i < node_J.Length; i++)
        {
            if (plant.Nodes[i].Latent_J <= 0) continue;
            if (controls.Liquid[i].Update(node_J[i]))
                teller.Tell(controls.Liquid[i].Passed ? EventKind.WaterThawed : EventKind.WaterFreezes, outside_K, i);
            if (controls.Solid[i].Update(-node_J[i]) && controls.Solid[i].Passed)
                teller.Tell(EventKind.WaterSolid, outside_K, i);
        }

        if (plant.Damp is { } damp && controls.Damp.Update(damp.Saturation_frac(s.Vapour_kg, s.Air_K, conditions.Outside_K)))
            teller.Tell(controls.Damp.Passed ? EventKind.DampSettles : EventKind.DampGone, damp.Surface_K(s.Air_K, conditions.Outside_K));
        if (plant.Coach is not null && controls.Freezing.Update(s.Air_K))
            teller.Tell(controls.Freezing.Passed ? EventKind.InsideThawed : EventKind.InsideFreezing, outside_K);
    }
}
