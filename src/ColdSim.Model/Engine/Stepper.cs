using System.Runtime.CompilerServices;
using ColdSim.Model.Numerics;

namespace ColdSim.Model.Engine;

/// <summary>One step of the continuous equations: tried whole, halved where its energy residual is too large, cut at the first event.</summary>
internal sealed class Stepper
{
    private const double EventTolerance_s = 1e-2;

    // After the last liquid the step still uses the equations with liquid, and that error shows in the ledger.
    private const double LastLiquidTolerance_s = 1e-6;

    private const double LargestMove_K = 0.5;

    // A starved supply gives less with every tenth of a kelvin, and vapour alone is drawn down in minutes: the steps then follow the embedded error,
    // from this length.
    private const double FirstFollowedStep_s = 15;
    private const double FollowedError_K = 1e-4;

    // Half the step makes a thirty-second of the error.
    private const double ErrorOfHalf = 1.0 / 32;

    // A step whose energy residual of the cylinders is larger than this, per throughput, is halved: it crossed a kink, such as
    // where supply begins to starve or a reserve side opens.
    private const double EnergyResidual_frac = 3e-9;
    private const double EnergyResidual_J = 1e-5;
    private const double ShortestStep_s = 0.005;

    // Nothing flows beyond the demand, nor back: where the weighted stages say so the step crossed
    // the kink at which supply begins to starve or to flow.
    private const double BeyondDemand_frac = 1e-9;

    // Trials that a kink gets to come to its place; each makes the step before it free of the kink.
    private const int MostKinkTrials = 3;

    // Over a hundredth of the shortest time constant a rule of third order errs by a few parts in a hundred million, for half the work.
    private const double ShortPart = 0.01;

    // Where the step follows the embedded error, that says whether it does for a longer part.
    private const double ShortPartWhereFollowed = 0.1;

    // How far ahead a cylinder's temperature is predicted; a nearly empty one under a strong blanket would go much further.
    private const double FarthestAhead_K = 5;

    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly EventFunctions _functions;
    private readonly HeldInputs _inputs;
    private readonly PlantState _rate;
    private readonly double[][] _rateRow;
    private readonly double _longestOfNodes_s;
    private readonly AlgebraicState _trialAlgebraicState;
    private readonly PlantState _trial;
    private AlgebraicState _nextAlgebraicState;
    private double _stop_s;
    private double _exchangeStep_s = double.NaN;
    private double _followedStep_s = FirstFollowedStep_s;
    private double _short_s;
    private RungeKuttaMethod _method = RungeKuttaMethod.DormandPrince;

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
        _rateRow = [_rate.Values];
        _longestOfNodes_s = plant.LongestStep_s();
        Flowed = new StepIntegrals(rig.GasPlaces);
    }

    /// <summary>The state before the step.</summary>
    public PlantState State { get; private set; }

    /// <summary>Algebraic part of the state before the step.</summary>
    public AlgebraicState AlgebraicState { get; private set; }

    /// <summary>The state after the step that was tried or cut last.</summary>
    public PlantState Next { get; private set; }

    /// <summary>Length of the step that was tried last. [s]</summary>
    public double Tried_s { get; private set; }

    /// <summary>Integrals of the flows over that step.</summary>
    public StepIntegrals Flowed { get; }

    /// <summary>Inside air over that step. [K]</summary>
    public Quartic AirWithin_K { get; private set; }

    /// <summary>Evaluates the algebraic part of the state.</summary>
    public void Evaluate() => _plant.Evaluate(State, _inputs, AlgebraicState);

    /// <summary>Evaluates the flows again, with the same contents of the cylinders.</summary>
    public void Exchange() => _plant.Exchange(_inputs, AlgebraicState);

    /// <summary>The longest step that the state allows. [s]</summary>
    /// <param name="most_s">Upper limit by everything else. [s]</param>
    public double Longest_s(double most_s)
    {
        // Contents with liquid change too slowly to matter while the inputs are held.
        if (double.IsNaN(_exchangeStep_s) || AlgebraicState.Cylinders.IsAnyWithoutLiquid()) _exchangeStep_s = _plant.LongestStep_s(_inputs, AlgebraicState, State.Air_K);
        bool isFast = IsFast(AlgebraicState);
        double longest_s = isFast ? Math.Min(most_s, _followedStep_s) : most_s;
        double ofExchange_s = Math.Min(_exchangeStep_s, _plant.Manifold.LongestStep_s(AlgebraicState.Cylinders));
        _short_s = isFast
            ? Math.Min(ShortPart * _longestOfNodes_s, ShortPartWhereFollowed * Math.Min(ofExchange_s, _followedStep_s))
            : ShortPart * Math.Min(ofExchange_s, _longestOfNodes_s);
        longest_s = Math.Min(longest_s, ofExchange_s);
        double fastest_K_s = 0;
        for (int i = 0; i < AlgebraicState.Cylinders.Count; i++) fastest_K_s = Math.Max(fastest_K_s, Math.Abs(AlgebraicState.Cylinders.Warming_K_s(i)));
        double moved_K = fastest_K_s * longest_s;
        return moved_K > LargestMove_K ? longest_s * LargestMove_K / moved_K : longest_s;
    }

    /// <summary>The state some time ahead by its present rate, for inputs that are held from now to twice that time; overwritten by the next call.</summary>
    /// <param name="ahead_s">How far ahead. [s]</param>
    /// <remarks>The inputs are about to change. Half of the gas may be gone by then but no more: vapour alone is drawn down within less than a step of the grid.</remarks>
    public PlantState Predict(double ahead_s)
    {
        _exchangeStep_s = double.NaN;
        _plant.Rate(State, AlgebraicState, _inputs, _rate);
        WeightedSum.Set(_trial.Values, State.Values, _rateRow, [1], ahead_s);
        for (int i = 0; i < _plant.Cylinders.Length; i++)
        {
            double now_K = State.Cylinder_K[i];
            _trial.Propane_kg[i] = Math.Max(_trial.Propane_kg[i], 0.5 * State.Propane_kg[i]);
            _trial.Cylinder_K[i] = Math.Clamp(_trial.Cylinder_K[i], now_K - FarthestAhead_K, now_K + FarthestAhead_K);
        }

        return _trial;
    }

    /// <summary>Tries a step, or as much of it as keeps the energy residual small, and the embedded error where the cylinders are fast.</summary>
    /// <param name="step_s">Length of the step. [s]</param>
    public void Try(double step_s)
    {
        bool isFast = IsFast(AlgebraicState);
        _method = step_s <= _short_s && _inputs.FanRuns_s >= step_s ? RungeKuttaMethod.BogackiShampine : RungeKuttaMethod.DormandPrince;
        Step(step_s);
        if (_method == RungeKuttaMethod.BogackiShampine
            && (isFast != IsFast(_nextAlgebraicState) || ErrorWhereFast_K() > FollowedError_K || !EnergyResidualIsSmall() || FlowIsImpossible()))
        {
            _method = RungeKuttaMethod.DormandPrince;
            Step(step_s);
        }

        double error_K = ErrorWhereFast_K();
        while (step_s > ShortestStep_s && (error_K > FollowedError_K || !EnergyResidualIsSmall() || FlowIsImpossible()))
        {
            step_s *= 0.5;
            Step(step_s);
            error_K = ErrorWhereFast_K();
        }

        KeepFlowPossible();
        if (!IsFast(_nextAlgebraicState)) _followedStep_s = FirstFollowedStep_s;
        else if (error_K > ErrorOfHalf * FollowedError_K) _followedStep_s = step_s;
        else _followedStep_s = Math.Max(_followedStep_s, 2 * step_s);
    }

    private double ErrorWhereFast_K() => IsFast(AlgebraicState) || IsFast(_nextAlgebraicState) ? _plant.CylinderError_K(Tried_s) : 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool IsFast(AlgebraicState at) => !at.Point.IsFull || at.Cylinders.IsAnyGivingVapourAlone();

    /// <summary>Time of the first zero crossing of an event function within the step that was tried; its whole length without one. [s]</summary>
    /// <param name="time_s">Start of the step. [s]</param>
    /// <param name="stop_s">End of the whole step, to the last bit. [s]</param>
    /// <remarks>
    /// Where the equations have a kink at the event, the step is made again up to it: stages past the kink spoil what is before it. A step within which the
    /// fan stops is right at its end only: one with an event is made again up to that.
    /// </remarks>
    public double ToFirstEvent_s(double time_s, double stop_s)
    {
        double first_s = FirstEvent_s(time_s, stop_s, out bool isKink);
        if (first_s < Tried_s && _inputs.FanRuns_s < Tried_s)
        {
            StepWithPossibleFlow(_inputs.FanRuns_s);
            first_s = FirstEvent_s(time_s, time_s + Tried_s, out isKink);
        }

        for (int i = 0; isKink && i < MostKinkTrials; i++)
        {
            StepWithPossibleFlow(first_s);
            first_s = FirstEvent_s(time_s, time_s + Tried_s, out isKink);
        }

        return first_s;
    }

    private double FirstEvent_s(double time_s, double stop_s, out bool isKink)
    {
        (_stop_s, isKink) = (stop_s, false);
        double first_s = Tried_s;
        foreach (ref readonly EventFunction function in _functions.All)
        {
            if (!(_functions.EventValue(function, Next, _nextAlgebraicState, _inputs.HasLiquid, stop_s) is > 0 and double value)) continue;
            double part_s = Locate(function, time_s, Tried_s, value);
            if (part_s >= first_s) continue;
            (first_s, isKink) = (part_s, function.IsKink);
        }

        return first_s;
    }

    /// <summary>Makes a part of the step that was tried instead of the whole: by its continuous extension where that keeps the energy, else anew.</summary>
    /// <param name="step_s">Length of the part. [s]</param>
    /// <returns>Length that was made: shorter where the part made anew crossed the kink at which supply begins to starve. [s]</returns>
    public double CutTo(double step_s)
    {
        double part = step_s / Tried_s;
        if (_inputs.FanRuns_s < Tried_s)
        {
            StepWithPossibleFlow(step_s);
            return Tried_s;
        }

        _plant.EndWithin(State, Tried_s, part, Next, Flowed);
        _plant.Evaluate(Next, _inputs, _nextAlgebraicState);
        AirWithin_K = _plant.AirWithin_K.Over(0, part);
        if (!IsFast(AlgebraicState) && EnergyResidualIsSmall() && !FlowIsImpossible()) return step_s;
        StepWithPossibleFlow(step_s);
        return Tried_s;
    }

    /// <summary>The state after the step becomes the one before the next.</summary>
    public void Accept()
    {
        (State, Next) = (Next, State);
        (AlgebraicState, _nextAlgebraicState) = (_nextAlgebraicState, AlgebraicState);
    }

    private void Step(double step_s)
    {
        _plant.Step(_method, State, AlgebraicState, _inputs, step_s, Next, _nextAlgebraicState, Flowed);
        (Tried_s, AirWithin_K) = (step_s, _plant.AirWithin_K);
    }

    private void StepWithPossibleFlow(double step_s)
    {
        Step(step_s);
        KeepFlowPossible();
    }

    // Dormand and Prince's method has a negative weight, so that supply which starves at that stage alone counts as more than the demand, and
    // supply which flows at it alone as flowing back. The weights of the method of third order are all positive and cannot do so; over the
    // shortest step it is as exact.
    private void KeepFlowPossible()
    {
        while (FlowIsImpossible() && Tried_s > ShortestStep_s) Step(0.5 * Tried_s);
        if (!FlowIsImpossible()) return;
        _method = RungeKuttaMethod.BogackiShampine;
        Step(Tried_s);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool FlowIsImpossible()
        => Flowed.Drawn_kg < 0 || Flowed.Drawn_kg > (1 + BeyondDemand_frac) * _plant.Supply.Demand_kg_s * Flowed.MassFactor_s;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
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
        double part_s = BracketedRoot.Root(
            ref crossing, 0, valueAtStart, step_s, valueAtEnd, function.Kind == EventFunctionKind.Liquid ? LastLiquidTolerance_s : EventTolerance_s);

        // A thermostat past its dead band before its shortest time is over switches when that is over.
        return function.Kind == EventFunctionKind.Thermostat ? Math.Max(part_s, _controls.Thermostat!.MayChangeFrom_s - time_s) : part_s;
    }

    // Event function after a part of the step.
    private readonly struct Crossing(Stepper stepper, EventFunction function) : IFunction
    {
        public double At(double part_s)
        {
            if (function.Kind == EventFunctionKind.Thermostat)
            {
                stepper._trial.Sensor_K = stepper._plant.SensorWithin_K(stepper.State, stepper.Tried_s, part_s / stepper.Tried_s);
                return stepper._functions.EventValue(function, stepper._trial, stepper._trialAlgebraicState, stepper._inputs.HasLiquid, stepper._stop_s);
            }

            stepper._plant.Within(stepper.State, stepper.Tried_s, part_s / stepper.Tried_s, stepper._trial);
            if (!function.IsOfCoach) stepper._plant.Evaluate(stepper._trial, stepper._inputs, stepper._trialAlgebraicState);
            return stepper._functions.EventValue(function, stepper._trial, stepper._trialAlgebraicState, stepper._inputs.HasLiquid, stepper._stop_s);
        }
    }
}
