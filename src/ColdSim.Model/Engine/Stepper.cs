using ColdSim.Model.Numerics;

namespace ColdSim.Model.Engine;

/// <summary>One step of the continuous equations: tried whole, halved where its books do not close, cut where something switches.</summary>
internal sealed class Stepper
{
    private const double EventTolerance_s = 1e-2;

    // Past the last liquid the step still sees the equations with liquid; the ledger notices every joule of that.
    private const double LastLiquidTolerance_s = 1e-6;
    private const double SlopeOver_s = 1;

    // A starved supply gives less with every tenth of a kelvin, which makes a small cylinder fast.
    private const double StarvedStep_s = 15;
    private const double LargestMove_K = 0.5;

    // A step whose own books of the cylinders close worse than this, per what went through, is halved: it went over a bend, such as
    // where supply begins to starve or a reserve side opens.
    private const double BooksOfAStep_frac = 3e-7;
    private const double BooksOfAStep_J = 1e-3;
    private const double ShortestStep_s = 0.5;

    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly EventFunctions _points;
    private readonly HeldInputs _conditions;
    private readonly PlantState _rate;
    private readonly AlgebraicState _trialAlgebraicState;
    private PlantState _trial;
    private AlgebraicState _then;
    private StepIntegrals _trialFlowed;
    private double _tried_s;
    private double _stop_s;

    /// <summary>Steps for a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="plant">Its equations.</param>
    /// <param name="controls">What switches.</param>
    /// <param name="conditions">What is held still over a step; kept and changed by the caller.</param>
    public Stepper(Rig rig, Plant plant, Controls controls, HeldInputs conditions)
    {
        (_plant, _controls, _conditions) = (plant, controls, conditions);
        _points = new EventFunctions(rig, plant, controls, conditions);
        int cylinders = plant.Cylinders.Length, nodes = plant.Nodes.Length;
        (State, Next, _trial, _rate) = (plant.Gas.NewState(nodes), plant.Gas.NewState(nodes), plant.Gas.NewState(nodes), plant.Gas.NewState(nodes));
        (AlgebraicState, _then, _trialAlgebraicState) = (new AlgebraicState(cylinders), new AlgebraicState(cylinders), new AlgebraicState(cylinders));
        (Flowed, _trialFlowed) = (new StepIntegrals(rig.GasPlaces), new StepIntegrals(rig.GasPlaces));
    }

    /// <summary>The state before the step.</summary>
    public PlantState State { get; private set; }

    /// <summary>What stands and flows there.</summary>
    public AlgebraicState AlgebraicState { get; private set; }

    /// <summary>The state after the step that was tried or cut last.</summary>
    public PlantState Next { get; private set; }

    /// <summary>What flowed in it.</summary>
    public StepIntegrals Flowed { get; private set; }

    /// <summary>Works out what stands and flows at the state.</summary>
    public void Evaluate() => _plant.Evaluate(State, _conditions, AlgebraicState);

    /// <summary>Works out what flows anew; what is in the cylinders stands.</summary>
    public void Exchange() => _plant.Exchange(_conditions, AlgebraicState);

    /// <summary>The longest step that the state allows. [s]</summary>
    /// <param name="most_s">The longest that anything else does. [s]</param>
    public double Longest_s(double most_s)
    {
        double longest_s = AlgebraicState.Point.IsFull ? most_s : Math.Min(most_s, StarvedStep_s);
        longest_s = Math.Min(longest_s, _plant.Manifold.LongestStep_s(AlgebraicState.Cylinders));
        double fastest_K_s = 0;
        for (int i = 0; i < AlgebraicState.Cylinders.Count; i++) fastest_K_s = Math.Max(fastest_K_s, Math.Abs(AlgebraicState.Cylinders.Warming_K_s(i)));
        double moved_K = fastest_K_s * longest_s;
        return moved_K > LargestMove_K ? longest_s * LargestMove_K / moved_K : longest_s;
    }

    /// <summary>Tries a step, or as much of it as keeps its books closed.</summary>
    /// <param name="step_s">Its length. [s]</param>
    /// <returns>The length that was stepped. [s]</returns>
    public double Try(double step_s)
    {
        Step(step_s);
        while (step_s > ShortestStep_s && !BooksClose())
        {
            step_s *= 0.5;
            Step(step_s);
        }

        _tried_s = double.NaN;
        return step_s;
    }

    /// <summary>Where in the step that was tried something switches first; its whole length where nothing does. [s]</summary>
    /// <param name="time_s">When it starts. [s]</param>
    /// <param name="step_s">Its length. [s]</param>
    /// <param name="stop_s">When it ends, to the last bit. [s]</param>
    public double ToSwitch_s(double time_s, double step_s, double stop_s)
    {
        _stop_s = stop_s;
        double first_s = step_s;
        foreach (ref readonly EventFunction point in _points.All)
        {
            if (_points.EventValue(point, Next, _then, _conditions.HasLiquid, stop_s) is > 0 and double past)
                first_s = Math.Min(first_s, Locate(point, time_s, step_s, past));
        }

        return first_s;
    }

    /// <summary>Steps a part of the step that was tried instead.</summary>
    /// <param name="step_s">The part. [s]</param>
    public void CutTo(double step_s)
    {
        if (step_s != _tried_s)
        {
            Step(step_s);
            return;
        }

        // Where an instant was located the last trial mostly ended there.
        (Next, _trial) = (_trial, Next);
        (Flowed, _trialFlowed) = (_trialFlowed, Flowed);
        _plant.Evaluate(Next, _conditions, _then);
    }

    /// <summary>The state after the step becomes the one before the next.</summary>
    public void Accept()
    {
        (State, Next) = (Next, State);
        (AlgebraicState, _then) = (_then, AlgebraicState);
    }

    private void Step(double step_s)
    {
        _plant.Step(State, AlgebraicState, _conditions, step_s, Next, Flowed);
        _plant.Evaluate(Next, _conditions, _then);
    }

    private bool BooksClose()
    {
        double left_J = Flowed.CylinderHeat_J - Flowed.VapourEnthalpy_J - (_plant.CylinderEnergy_J(_then) - _plant.CylinderEnergy_J(AlgebraicState));
        return Math.Abs(left_J) <= BooksOfAStep_J + BooksOfAStep_frac * (Math.Abs(Flowed.CylinderHeat_J) + Math.Abs(Flowed.VapourEnthalpy_J));
    }

    private double Locate(in EventFunction point, double time_s, double step_s, double pastAtEnd)
    {
        double pastAtStart = _points.EventValue(point, State, AlgebraicState, _conditions.HasLiquid, _stop_s);

        // Air pressure is held over a step, so at its edge a point may already be passed: it is now.
        if (pastAtStart > 0) return Math.Min(step_s, EventTolerance_s);
        Crossing crossing = new(this, point);
        double part_s = point.OfCoach
            ? SmoothCrossing.Past(
                ref crossing, pastAtStart, Slope(point, State, AlgebraicState, pastAtStart), step_s, pastAtEnd, Slope(point, Next, _then, pastAtEnd),
                EventTolerance_s)
            : BracketedRoot.Root(
                ref crossing, 0, pastAtStart, step_s, pastAtEnd, point.Kind == EventFunctionKind.Liquid ? LastLiquidTolerance_s : EventTolerance_s);

        // Past its band before its shortest time is over, the thermostat switches when it is.
        return point.Kind == EventFunctionKind.Thermostat ? Math.Max(part_s, _controls.Thermostat!.MayChangeFrom_s - time_s) : part_s;
    }

    // How fast a state goes past a switching point of the coach.
    private double Slope(in EventFunction point, PlantState s, AlgebraicState at, double past)
    {
        _plant.Rate(s, at, _conditions, _rate);
        _trial.SetAlong(s, _rate, SlopeOver_s);
        return (_points.EventValue(point, _trial, at, _conditions.HasLiquid, _stop_s) - past) / SlopeOver_s;
    }

    // How far past a switching point the state is after part of the step.
    private readonly struct Crossing(Stepper stepper, EventFunction point) : IFunction
    {
        public double At(double part_s)
        {
            stepper._plant.Step(stepper.State, stepper.AlgebraicState, stepper._conditions, part_s, stepper._trial, stepper._trialFlowed);
            stepper._tried_s = part_s;
            if (!point.OfCoach) stepper._plant.Evaluate(stepper._trial, stepper._conditions, stepper._trialAlgebraicState);
            return stepper._points.EventValue(point, stepper._trial, stepper._trialAlgebraicState, stepper._conditions.HasLiquid, stepper._stop_s);
        }
    }
}
