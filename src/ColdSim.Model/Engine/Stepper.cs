using ColdSim.Model.Numerics;

namespace ColdSim.Model.Engine;

/// <summary>One step of the continuous equations: tried whole, halved where its energy residual is too large, cut at the first event.</summary>
internal sealed class Stepper
{
    private const double EventTolerance_s = 1e-2;

    // After the last liquid the step still uses the equations with liquid, and that error shows in the ledger.
    private const double LastLiquidTolerance_s = 1e-6;
    private const double SlopeOver_s = 1;

    // A starved supply gives less with every tenth of a kelvin, which makes a small cylinder fast.
    private const double StarvedStep_s = 15;
    private const double LargestMove_K = 0.5;

    // A step whose energy residual of the cylinders is larger than this, per throughput, is halved: it crossed a kink, such as
    // where supply begins to starve or a reserve side opens.
    private const double EnergyResidual_frac = 3e-9;
    private const double EnergyResidual_J = 1e-5;
    private const double ShortestStep_s = 0.05;

    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly EventFunctions _functions;
    private readonly HeldInputs _inputs;
    private readonly PlantState _rate;
    private readonly AlgebraicState _trialAlgebraicState;
    private PlantState _trial;
    private AlgebraicState _nextAlgebraicState;
    private StepIntegrals _trialFlowed;
    private double _tried_s;
    private double _stop_s;

    /// <summary>A stepper for a rig.</summary>
    /// <param name="rig">Rig to step.</param>
    /// <param name="plant">The continuous equations.</param>
    /// <param name="controls">The controls, whose switching points are the event functions.</param>
    /// <param name="inputs">Inputs held over a step; owned and changed by the caller.</param>
    public Stepper(Rig rig, Plant plant, Controls controls, HeldInputs inputs)
    {
        (_plant, _controls, _inputs) = (plant, controls, inputs);
        _functions = new EventFunctions(rig, plant, controls, inputs);
        int cylinders = plant.Cylinders.Length, nodes = plant.Nodes.Length;
        (State, Next, _trial, _rate) = (plant.Gas.NewState(nodes), plant.Gas.NewState(nodes), plant.Gas.NewState(nodes), plant.Gas.NewState(nodes));
        (AlgebraicState, _nextAlgebraicState, _trialAlgebraicState) = (new AlgebraicState(cylinders), new AlgebraicState(cylinders), new AlgebraicState(cylinders));
        (Flowed, _trialFlowed) = (new StepIntegrals(rig.GasPlaces), new StepIntegrals(rig.GasPlaces));
    }

    /// <summary>The state before the step.</summary>
    public PlantState State { get; private set; }

    /// <summary>Algebraic part of the state before the step.</summary>
    public AlgebraicState AlgebraicState { get; private set; }

    /// <summary>The state after the step that was tried or cut last.</summary>
    public PlantState Next { get; private set; }

    /// <summary>Integrals of the flows over that step.</summary>
    public StepIntegrals Flowed { get; private set; }

    /// <summary>Evaluates the algebraic part of the state.</summary>
    public void Evaluate() => _plant.Evaluate(State, _inputs, AlgebraicState);

    /// <summary>Evaluates the flows again, with the same contents of the cylinders.</summary>
    public void Exchange() => _plant.Exchange(_inputs, AlgebraicState);

    /// <summary>The longest step that the state allows. [s]</summary>
    /// <param name="most_s">Upper limit by everything else. [s]</param>
    public double Longest_s(double most_s)
    {
        double longest_s = AlgebraicState.Point.IsFull ? most_s : Math.Min(most_s, StarvedStep_s);
        longest_s = Math.Min(longest_s, _plant.LongestStep_s(_inputs, AlgebraicState));
        longest_s = Math.Min(longest_s, _plant.Manifold.LongestStep_s(AlgebraicState.Cylinders));
        double fastest_K_s = 0;
        for (int i = 0; i < AlgebraicState.Cylinders.Count; i++) fastest_K_s = Math.Max(fastest_K_s, Math.Abs(AlgebraicState.Cylinders.Warming_K_s(i)));
        double moved_K = fastest_K_s * longest_s;
        return moved_K > LargestMove_K ? longest_s * LargestMove_K / moved_K : longest_s;
    }

    /// <summary>Tries a step, or as much of it as keeps the energy residual small.</summary>
    /// <param name="step_s">Length of the step. [s]</param>
    /// <returns>The length that was stepped. [s]</returns>
    public double Try(double step_s)
    {
        Step(step_s);
        while (step_s > ShortestStep_s && !EnergyResidualIsSmall())
        {
            step_s *= 0.5;
            Step(step_s);
        }

        _tried_s = double.NaN;
        return step_s;
    }

    /// <summary>Time of the first zero crossing of an event function within the step that was tried; its whole length without one. [s]</summary>
    /// <param name="time_s">Start of the step. [s]</param>
    /// <param name="step_s">Length of the step. [s]</param>
    /// <param name="stop_s">End of the step, to the last bit. [s]</param>
    public double ToFirstEvent_s(double time_s, double step_s, double stop_s)
    {
        _stop_s = stop_s;
        double first_s = step_s;
        foreach (ref readonly EventFunction function in _functions.All)
        {
            if (_functions.EventValue(function, Next, _nextAlgebraicState, _inputs.HasLiquid, stop_s) is > 0 and double value)
                first_s = Math.Min(first_s, Locate(function, time_s, step_s, value));
        }

        return first_s;
    }

    /// <summary>Makes a part of the step that was tried instead of the whole.</summary>
    /// <param name="step_s">Length of the part. [s]</param>
    public void CutTo(double step_s)
    {
        if (step_s != _tried_s)
        {
            Step(step_s);
            return;
        }

        // The last trial of the root finder mostly ended at the root.
        (Next, _trial) = (_trial, Next);
        (Flowed, _trialFlowed) = (_trialFlowed, Flowed);
        _plant.Evaluate(Next, _inputs, _nextAlgebraicState);
    }

    /// <summary>The state after the step becomes the one before the next.</summary>
    public void Accept()
    {
        (State, Next) = (Next, State);
        (AlgebraicState, _nextAlgebraicState) = (_nextAlgebraicState, AlgebraicState);
    }

    private void Step(double step_s)
    {
        _plant.Step(State, AlgebraicState, _inputs, step_s, Next, Flowed);
        _plant.Evaluate(Next, _inputs, _nextAlgebraicState);
    }

    private bool EnergyResidualIsSmall()
    {
        double left_J = Flowed.CylinderHeat_J - Flowed.VapourEnthalpy_J - (_plant.CylinderEnergy_J(_nextAlgebraicState) - _plant.CylinderEnergy_J(AlgebraicState));
        return Math.Abs(left_J) <= EnergyResidual_J + EnergyResidual_frac * (Math.Abs(Flowed.CylinderHeat_J) + Math.Abs(Flowed.VapourEnthalpy_J));
    }

    private double Locate(in EventFunction function, double time_s, double step_s, double valueAtEnd)
    {
        double valueAtStart = _functions.EventValue(function, State, AlgebraicState, _inputs.HasLiquid, _stop_s);

        // Air pressure is held over a step, so that at its edge an event function may already be positive: the event is now.
        if (valueAtStart > 0) return Math.Min(step_s, EventTolerance_s);
        Crossing crossing = new(this, function);
        double part_s = function.IsOfCoach
            ? SmoothCrossing.Past(
                ref crossing, valueAtStart, Slope(function, State, AlgebraicState, valueAtStart), step_s, valueAtEnd, Slope(function, Next, _nextAlgebraicState, valueAtEnd),
                EventTolerance_s)
            : BracketedRoot.Root(
                ref crossing, 0, valueAtStart, step_s, valueAtEnd, function.Kind == EventFunctionKind.Liquid ? LastLiquidTolerance_s : EventTolerance_s);

        // A thermostat past its dead band before its shortest time is over switches when that is over.
        return function.Kind == EventFunctionKind.Thermostat ? Math.Max(part_s, _controls.Thermostat!.MayChangeFrom_s - time_s) : part_s;
    }

    // Slope of an event function of the coach along the rate of a state.
    private double Slope(in EventFunction function, PlantState s, AlgebraicState at, double value)
    {
        _plant.Rate(s, at, _inputs, _rate);
        _trial.SetAlong(s, _rate, SlopeOver_s);
        return (_functions.EventValue(function, _trial, at, _inputs.HasLiquid, _stop_s) - value) / SlopeOver_s;
    }

    // Event function after a part of the step.
    private readonly struct Crossing(Stepper stepper, EventFunction function) : IFunction
    {
        public double At(double part_s)
        {
            stepper._plant.Step(stepper.State, stepper.AlgebraicState, stepper._inputs, part_s, stepper._trial, stepper._trialFlowed);
            stepper._tried_s = part_s;
            if (!function.IsOfCoach) stepper._plant.Evaluate(stepper._trial, stepper._inputs, stepper._trialAlgebraicState);
            return stepper._functions.EventValue(function, stepper._trial, stepper._trialAlgebraicState, stepper._inputs.HasLiquid, stepper._stop_s);
        }
    }
}
