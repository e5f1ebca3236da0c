using ColdSim.Model.Furnace;

namespace ColdSim.Model.Engine;

/// <summary>Writes into the record what a step was in the mean, and what switches had been over it.</summary>
/// <param name="plant">The continuous equations.</param>
/// <param name="controls">What switches.</param>
/// <param name="stepper">Holds the state and what flowed.</param>
/// <param name="inputs">Inputs held over the step.</param>
/// <param name="record">Receives the means.</param>
/// <param name="ignition">Says whether a furnace in lockout would light; null without a furnace.</param>
/// <param name="undersupplied_frac">Satisfied fraction below which a consumer is undersupplied.</param>
internal sealed class StepMeans(
    Plant plant, Controls controls, Stepper stepper, HeldInputs inputs, StepRecord record, IgnitionOutlook? ignition, double undersupplied_frac)
{
    private double _ignitionMargin_Pa = double.NaN;

    /// <summary>The run starts.</summary>
    public void Begin()
    {
        for (int i = 0; i < record.Node_K.Length; i++) record.Node_K[i] = plant.Nodes[i].Temperature_K(stepper.State.Node_J[i]);
    }

    /// <summary>The furnace's board locks out.</summary>
    public void LockOut() => _ignitionMargin_Pa = ignition!.Margin_Pa(stepper.AlgebraicState);

    /// <summary>Writes the means of a step that was accepted. A mixed gas changes within it, and with it what the open valves would take.</summary>
    /// <param name="step_s">Length of the step. [s]</param>
    /// <param name="demand_kg_s">Demand over it. [kg/s]</param>
    public void Write(double step_s, double demand_kg_s)
    {
        double heating_J_kg = plant.HeatingValue_J_kg * stepper.AlgebraicState.Cylinders.Heating_factor, perSecond = 1 / step_s;
        record.Asked_W = demand_kg_s * (stepper.Flowed.MassFactor_s * perSecond) * heating_J_kg;
        record.Given_W = stepper.Flowed.Drawn_kg * perSecond * heating_J_kg;
        for (int i = 0; i < record.Gas_W.Length; i++)
        {
            double taken_kg_s = stepper.Flowed.Taken_kg[i] * perSecond;
            record.Gas_W[i] = taken_kg_s * heating_J_kg;
            record.IsShort[i] = controls.Supply.Undersupplied && controls.IsShort(i, taken_kg_s, plant, undersupplied_frac);
        }

        ReadOnlySpan<double> node_J = stepper.State.Node_J;
        for (int i = 0; i < node_J.Length; i++)
        {
            record.NodeBefore_K[i] = record.Node_K[i];
            record.Node_K[i] = plant.Nodes[i].Temperature_K(node_J[i]);
            record.Ice_frac[i] = plant.Nodes[i].Ice_frac(node_J[i]);
        }

        record.InsideWithin_K = stepper.AirWithin_K;
        record.HeatIntoCylinder_W = stepper.Flowed.CylinderHeat_J * perSecond;
        record.Blanket_W = inputs.BlanketPower_W();
        record.OtherHeat_W = inputs.OtherHeat_W;
        record.HeatCalled = controls.Thermostat?.Calls ?? false;
        record.Furnace = controls.Furnace?.Phase ?? FurnacePhase.Idle;
        record.BurnerLit = inputs.FurnaceLit;
        record.Undersupplied = controls.Supply.Undersupplied;
        WriteIgnition();
        record.DampSettles = plant.Damp is not null && controls.Damp.IsHigh;
    }

    // The margin before a step is that after the one before it, or that at which the lockout began; where neither was asked for, that after the step.
    private void WriteIgnition()
    {
        double before_Pa = _ignitionMargin_Pa;
        bool asks = ignition is not null && record is { Undersupplied: true, Furnace: FurnacePhase.Lockout };
        _ignitionMargin_Pa = asks ? ignition!.Margin_Pa(stepper.AlgebraicState) : double.NaN;
        record.WouldLight_frac = asks ? IgnitionOutlook.WouldLight_frac(double.IsNaN(before_Pa) ? _ignitionMargin_Pa : before_Pa, _ignitionMargin_Pa) : 0;
    }
}
