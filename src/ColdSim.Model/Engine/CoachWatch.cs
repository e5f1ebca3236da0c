namespace ColdSim.Model.Engine;

/// <summary>Detects the events of the coach that switch nothing: freezing water, condensation, inside air through freezing.</summary>
/// <param name="plant">The continuous equations.</param>
/// <param name="controls">Holds the comparators.</param>
/// <param name="inputs">Inputs held over the step.</param>
/// <param name="publisher">Receives the events.</param>
internal sealed class CoachWatch(Plant plant, Controls controls, HeldInputs inputs, EventPublisher publisher)
{
    /// <summary>Publishes the events of a state.</summary>
    /// <param name="s">State to compare.</param>
    /// <param name="outside_K">Outside air. [K]</param>
    public void Update(PlantState s, double outside_K)
    {
        ReadOnlySpan<double> node_J = s.Node_J;
        for (int i = 0; i < node_J.Length; i++)
        {
            if (plant.Nodes[i].Latent_J <= 0) continue;
            if (controls.Liquid[i].Update(node_J[i]))
                publisher.Publish(controls.Liquid[i].IsHigh ? EventKind.WaterThawed : EventKind.WaterFreezes, outside_K, i);
            if (controls.Solid[i].Update(-node_J[i]) && controls.Solid[i].IsHigh)
                publisher.Publish(EventKind.WaterSolid, outside_K, i);
        }

        if (plant.Damp is { } damp && controls.Damp.Update(damp.Saturation_frac(s.Vapour_kg, s.Air_K, inputs.Outside_K)))
            publisher.Publish(controls.Damp.IsHigh ? EventKind.DampSettles : EventKind.DampGone, damp.Surface_K(s.Air_K, inputs.Outside_K));
        if (plant.Coach is not null && controls.Freezing.Update(s.Air_K))
            publisher.Publish(controls.Freezing.IsHigh ? EventKind.InsideThawed : EventKind.InsideFreezing, outside_K);
    }
}
