using System.Runtime.CompilerServices;
using ColdSim.Model.Appliances;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Moisture;
using ColdSim.Model.Nodes;
using ColdSim.Model.Numerics;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;

namespace ColdSim.Model.Engine;

/// <summary>The coupled equations of cylinders, gas supply and coach, and their integrator.</summary>
/// <remarks>
/// Runge–Kutta, of fifth order and for steps short against every time constant of third, on propane and liquid temperature of each cylinder, inside air, furnishings and sensor at once, so that a starved burner
/// and the coach it cools are coupled within the step. Flows are integrated with the same weights for the ledger.
/// </remarks>
internal sealed class Plant
{
    /// <summary>The furnace's place among the loads.</summary>
    public const int FurnaceLoad = 0;

    // A sensor with a shorter lag counts as the air itself: steps would have to be shorter than it, for no visible difference.
    private const double ShortestLag_s = 1;

    // Over half a time constant of a cylinder its energy is right to a part in a hundred million.
    private const double LargestCylinderPart = 0.5;

    // Nodes settle by tens of kelvins, where the coach's air does by a few.
    private const double LargestNodePart = 0.75;

    // Over a time constant the method errs by less than five parts in ten thousand of what has still to settle.
    private const double LargestPart = 1;

    private readonly double _heatingValue_J_kg;
    private readonly double _furnaceEfficiency_frac;
    private readonly double[] _warmsCoach_frac, _warmsNode_frac, _electricWarmsNode_frac;
    private readonly bool[] _isUnvented;
    private readonly int[] _nodeOf;
    private readonly double[] _node_K;
    private readonly double _duct_frac, _ductLoss_frac;
    private readonly double _ground_K, _coupling_W_K, _perAirCapacity_K_J, _perFurnishingsCapacity_K_J;
    private readonly double _sensorLag_s;
    private readonly bool _hasSensor, _hasBlanket;

    // Propane alone has no composition: two calls at every stage would do nothing.
    private readonly bool _isMixed;
    private double _fan_W, _outside_K;
    private CoachCoupling _coach;
    private readonly PlantState _trial;
    private readonly PlantState[] _rates = new PlantState[RungeKuttaMethod.DormandPrince.Stages + 1];
    private readonly StepIntegrals[] _flows = new StepIntegrals[RungeKuttaMethod.DormandPrince.Stages + 1];
    private readonly double[][] _rateRows, _flowRows;
    private readonly double[] _weights = new double[RungeKuttaMethod.DormandPrince.Stages + 1];
    private RungeKuttaMethod _method = RungeKuttaMethod.DormandPrince;
    private readonly AlgebraicState _stageState;
    private readonly StepIntegrals _discarded;

    public Plant(Rig rig)
    {
        _heatingValue_J_kg = rig.Gas.PlateHeatingValue_J_kg;
        Cylinders = [.. rig.Cylinders.Select(c => new CylinderBody(c))];
        int n = Cylinders.Length;
        _hasBlanket = CylinderBody.IsAnyUnderBlanket(Cylinders);
        _isMixed = rig.Gas.IsMixed;
        Gas = _isMixed ? new MixedGasInCylinders(Cylinders, rig.Gas) : new PropaneInCylinders(Cylinders);
        (Nodes, _nodeOf) = NodesOf(rig);
        _node_K = new double[Nodes.Length];
        foreach (NodeBody node in Nodes) _duct_frac += node.Node.Duct_frac;
        int k = Nodes.Length;
        _trial = Gas.NewState(k);
        for (int i = 0; i < _rates.Length; i++) (_rates[i], _flows[i]) = (Gas.NewState(k), new StepIntegrals(rig.GasPlaces));
        (_rateRows, _flowRows) = ([.. _rates.Select(r => r.Values)], [.. _flows.Select(f => f.Values)]);
        _stageState = new AlgebraicState(n);
        _discarded = new StepIntegrals(rig.GasPlaces);
        Manifold = rig.Arrangement switch
        {
            AutomaticChangeover => new ChangeoverManifold(),
            OpenTogether together => new TogetherManifold(Cylinders, together.MeetingTime_s),
            _ => new OneOpenManifold(),
        };
        Coach = rig.Coach is null ? null : new CoachBody(rig.Coach);
        if (Coach is { Specification: { } coach, HasFurnishings: var slow })
        {
            (_ground_K, _perAirCapacity_K_J) = (coach.GroundTemperature_K, 1 / Coach.AirCapacity_J_K);
            if (slow) (_coupling_W_K, _perFurnishingsCapacity_K_J) = (coach.Coupling_W_K, 1 / coach.FurnishingsCapacity_J_K);
        }

        Damp = rig.Coach?.Moisture is { } moisture ? new DampAir(moisture) : null;
        int appliances = rig.Appliances.Count;
        (_isUnvented, _warmsCoach_frac) = (new bool[appliances], new double[appliances]);
        (_warmsNode_frac, _electricWarmsNode_frac) = (new double[appliances], new double[appliances]);
        for (int i = 0; i < appliances; i++)
        {
            GasAppliance appliance = rig.Appliances[i];
            _isUnvented[i] = appliance.IsUnvented;
            _warmsCoach_frac[i] = Coach is null ? 0 : appliance.WarmsCoach_frac;
            _warmsNode_frac[i] = appliance.WarmsNode_frac;
            _electricWarmsNode_frac[i] = appliance.ElectricWarmsNode_frac;
        }

        _hasSensor = rig.Thermostat is not null && Coach is not null;
        _sensorLag_s = rig.Thermostat?.SensorLag_s is double lag_s and >= ShortestLag_s ? lag_s : 0;
        (_furnaceEfficiency_frac, _ductLoss_frac) = (rig.Furnace?.Efficiency_frac ?? 0, rig.Furnace?.DuctLoss_frac ?? 0);

        // The furnace always has the first place, at no flow where there is none, so that places never shift.
        List<GasLoad> loads = [rig.Furnace is null
            ? new GasLoad(0, 1)
            : new GasLoad(BurnerInput.At_W(rig.Furnace.Input_W, rig.Furnace.Altitude, rig.Site.Elevation_m) / _heatingValue_J_kg, rig.Furnace.FullPressure_Pa)];
        foreach (GasAppliance appliance in rig.Appliances)
            loads.Add(new GasLoad(appliance.InputAt_W(rig.Site.Elevation_m) / _heatingValue_J_kg, appliance.FullPressure_Pa));
        if (rig.Power?.Generator is { } generator)
        {
            GeneratorLoad = loads.Count;
            loads.Add(new GasLoad(generator.IdleInput_W / _heatingValue_J_kg, generator.FullPressure_Pa));
        }

        Loads = loads;
        Regulator = new TwoStageRegulator(
            rig.Regulator, _heatingValue_J_kg, rig.Arrangement is AutomaticChangeover c ? (c.ReserveSetting_Pa, c.ReserveDroop_Pa) : null);
        Supply = new GasSupply(Regulator, loads);
    }

    public CylinderBody[] Cylinders { get; }

    public IGasInCylinders Gas { get; }

    /// <summary>The appliances' nodes, then the rig's water.</summary>
    public NodeBody[] Nodes { get; }

    public IManifold Manifold { get; }

    /// <summary>The coach's damp air, or null where it is not followed.</summary>
    public DampAir? Damp { get; }

    public CoachBody? Coach { get; }

    public TwoStageRegulator Regulator { get; }

    public GasSupply Supply { get; }

    public IReadOnlyList<GasLoad> Loads { get; }

    /// <summary>The generator's place among the loads; -1 without one.</summary>
    public int GeneratorLoad { get; } = -1;

    /// <summary>Heat of the gas that inputs on plates are turned into: propane, or the one gas there is.</summary>
    public double HeatingValue_J_kg => _heatingValue_J_kg;

    /// <summary>The longest step that the fastest node allows. [s]</summary>
    public double LongestStep_s()
    {
        double fastest_s = double.PositiveInfinity;
        if (Coach is not null)
        {
            // Twice the envelope's conductance leaves room for infiltration.
            double conductance_W_K = (Coach.HasFurnishings ? Coach.Specification.Coupling_W_K : 0) + 2 * Coach.Envelope_W_K
                + Coach.Specification.GroundConductance_W_K;
            fastest_s = Math.Min(fastest_s, Coach.AirCapacity_J_K / conductance_W_K);
            if (Coach.HasFurnishings)
                fastest_s = Math.Min(fastest_s, Coach.Specification.FurnishingsCapacity_J_K / Coach.Specification.Coupling_W_K);
        }

        foreach (NodeBody node in Nodes) fastest_s = Math.Min(fastest_s, LargestNodePart / LargestPart * node.TimeConstant_s);
        return LargestPart * fastest_s;
    }

    /// <summary>The longest step that the present exchange with outside allows: of a cylinder by its conductance, of the coach by the air it lets in. [s]</summary>
    /// <param name="c">Inputs held over the step.</param>
    /// <param name="at">The algebraic state.</param>
    /// <param name="air_K">Inside air. [K]</param>
    public double LongestStep_s(HeldInputs c, AlgebraicState at, double air_K)
    {
        double fastest_s = double.PositiveInfinity;
        for (int i = 0; i < Cylinders.Length; i++)
        {
            double conductance_W_K = c.HasLiquid[i] ? c.Cylinders[i].Conductance_W_K : Math.Max(c.Cylinders[i].Conductance_W_K, c.WholeShells[i].Conductance_W_K);
            fastest_s = Math.Min(fastest_s, LargestCylinderPart / LargestPart * at.Cylinders.Capacity_J_K[i] / conductance_W_K);
            if (Cylinders[i].IsUnderBlanket) fastest_s = Math.Min(fastest_s, c.Cylinders[i].Wall.TimeConstant_s);
        }

        if (Coach is not null)
        {
            double coach_W_K = c.Coach.Loss_W_K(air_K - c.Outside_K) + c.Coach.Ground_W_K + (Coach.HasFurnishings ? Coach.Specification.Coupling_W_K : 0);
            fastest_s = Math.Min(fastest_s, Coach.AirCapacity_J_K / coach_W_K);
        }

        if (Damp is not null) fastest_s = Math.Min(fastest_s, Damp.TimeConstant_s(c.Coach.Air_m3_s(air_K - c.Outside_K), c.Outside_K, c.AirPressure_Pa));
        return LargestPart * fastest_s;
    }

    /// <summary>Inside air over the step that was made last, by the method's continuous extension. [K]</summary>
    public Quartic AirWithin_K { get; private set; }

    /// <summary>Energy and mass stored at a state.</summary>
    public Stored StoredAt(PlantState s)
    {
        double cylinders_J = 0;
        for (int i = 0; i < Cylinders.Length; i++)
            cylinders_J += Gas.At(s, i, s.Cylinder_K[i]).InternalEnergy_J + Cylinders[i].ShellHeat_J_K * s.Cylinder_K[i];
        foreach (double wall_J in s.Wall_J) cylinders_J += wall_J;
        double coach_J = Coach?.StoredEnergy_J(s.Air_K, s.Furnishings_K) ?? 0;
        foreach (double node_J in s.Node_J) coach_J += node_J;
        return new Stored(cylinders_J, coach_J, s.TotalPropane_kg(), FuelBeyondPropane_J: Gas.FuelBeyondPropane_J(s));
    }

    /// <summary>What an appliance's thermostat senses: its node, or the coach's air. [K]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Sensed_K(int appliance, PlantState s)
        => _nodeOf[appliance] is >= 0 and int node ? Nodes[node].Temperature_K(s.Node_J[node]) : s.Air_K;

    /// <summary>Evaluates contents and flows of the cylinders at a state.</summary>
    public void Evaluate(PlantState s, HeldInputs c, AlgebraicState at)
    {
        CylinderStates cylinders = at.Cylinders;
        Gas.Contents(s, c.HasLiquid, cylinders);
        if (_hasBlanket) s.Wall_J.CopyTo(cylinders.Wall_J);
        for (int i = 0; i < Cylinders.Length; i++)
        {
            cylinders.Temperature_K[i] = s.Cylinder_K[i];
            cylinders.Capacity_J_K[i] = cylinders.Contents[i].HeatCapacity_J_K + Cylinders[i].ShellHeat_J_K;
        }

        Exchange(c, at);
    }

    /// <summary>Evaluates the flows again where the held inputs have changed and the contents have not.</summary>
    public void Exchange(HeldInputs c, AlgebraicState at)
    {
        CylinderStates cylinders = at.Cylinders;
        for (int i = 0; i < Cylinders.Length; i++)
        {
            double t_K = cylinders.Temperature_K[i], heat_W = c.Cylinders[i].DirectHeat_W(t_K, c.Blanket_W[i]);
            if (!c.HasLiquid[i])
                heat_W += WholeShell_frac(c, cylinders, i) * (c.WholeShells[i].DirectHeat_W(t_K, 0) - c.Cylinders[i].DirectHeat_W(t_K, 0));
            if (Cylinders[i].IsUnderBlanket) heat_W += WallToLiquid_W_K(c, cylinders, i) * c.Cylinders[i].Wall.Excess_K(cylinders.Wall_J[i]);
            cylinders.Heat_W[i] = heat_W;
        }

        FeedPressures feed = Manifold.Feed(cylinders);
        SupplyPoint point = Supply.At(feed, c.AirPressure_Pa);
        (at.AirPressure_Pa, at.Feed, at.Point) = (c.AirPressure_Pa, feed, point);
        Manifold.Share(point, cylinders);
        if (_isMixed) Gas.ConvertOutflows(point.Flow_kg_s, Manifold, cylinders);
        cylinders.Mix();
        for (int i = 0; _hasBlanket && i < Cylinders.Length; i++)
        {
            if (Cylinders[i].IsUnderBlanket) cylinders.WallGain_W[i] = WallGain_W(c, cylinders, i);
        }
    }

    /// <summary>The dry wall under a cylinder's blanket, as its thermostat feels it; the liquid without a blanket. [K]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Covered_K(PlantState s, HeldInputs c, int i)
        => Cylinders[i].IsUnderBlanket ? s.Cylinder_K[i] + c.Cylinders[i].Wall.Excess_K(s.Wall_J[i]) : s.Cylinder_K[i];

    /// <summary>The hottest place of a cylinder. [K]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Hottest_K(PlantState s, HeldInputs c, int i)
        => Cylinders[i].IsUnderBlanket ? c.Cylinders[i].Wall.Hottest_K(c.Cylinders[i].Wall.Excess_K(s.Wall_J[i]), s.Cylinder_K[i]) : s.Cylinder_K[i];

    private static double WholeShell_frac(HeldInputs c, CylinderStates cylinders, int i)
        => HeatCoupling.WholeShell_frac(cylinders.Contents[i], c.Unsaturated_kg[i]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double WallToLiquid_W_K(HeldInputs c, CylinderStates cylinders, int i)
    {
        double wet_W_K = c.Cylinders[i].Wall.ToLiquid_W_K;
        return c.HasLiquid[i] ? wet_W_K : wet_W_K + WholeShell_frac(c, cylinders, i) * (c.WholeShells[i].Wall.ToLiquid_W_K - wet_W_K);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double WallGain_W(HeldInputs c, CylinderStates cylinders, int i)
    {
        DryWall wall = c.Cylinders[i].Wall;
        double excess_K = wall.Excess_K(cylinders.Wall_J[i]), t_K = cylinders.Temperature_K[i], draw_kg_s = cylinders.Out_kg_s[i];
        double wet_W = wall.Gain_W(excess_K, t_K, c.Blanket_W[i], draw_kg_s);
        return c.HasLiquid[i]
            ? wet_W
            : wet_W + WholeShell_frac(c, cylinders, i) * (c.WholeShells[i].Wall.Gain_W(excess_K, t_K, c.Blanket_W[i], draw_kg_s) - wet_W);
    }

    /// <summary>Energy stored in propane and shells at an algebraic state. [J]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double CylinderEnergy_J(AlgebraicState at)
    {
        double sum_J = 0;
        for (int i = 0; i < Cylinders.Length; i++)
            sum_J += at.Cylinders.Contents[i].InternalEnergy_J + Cylinders[i].ShellHeat_J_K * at.Cylinders.Temperature_K[i] + at.Cylinders.Wall_J[i];
        return sum_J;
    }

    /// <summary>One Runge–Kutta step: the state after it and the integrals of the flows.</summary>
    /// <param name="method">The method.</param>
    /// <param name="s">State before the step.</param>
    /// <param name="at">Algebraic part of that state under the held inputs.</param>
    /// <param name="c">Inputs held over the step.</param>
    /// <param name="step_s">Length of the step. [s]</param>
    /// <param name="next">Receives the state after the step.</param>
    /// <param name="nextAlgebraic">Receives its algebraic part.</param>
    /// <param name="flowed">Receives the integrals of the flows.</param>
    public void Step(RungeKuttaMethod method, PlantState s, AlgebraicState at, HeldInputs c, double step_s, PlantState next, AlgebraicState nextAlgebraic, StepIntegrals flowed)
    {
        _method = method;
        bool fanStops = c.FanRuns_s < step_s;
        EndingInput fan = fanStops ? new EndingInput(c.FanRuns_s / step_s) : default;
        _fan_W = fanStops ? c.FanHeat_W * fan.At(0) : c.FanHeat_W;
        SetWeather(c, c.SinceMiddle_s);
        Rates(s, at, c, _rates[0], _flows[0]);
        for (int stage = 1; stage < method.Stages; stage++)
        {
            WeightedSum.Set(_trial.Values, s.Values, _rateRows, method.Stage(stage), step_s);
            Evaluate(_trial, c, _stageState);
            if (fanStops) _fan_W = c.FanHeat_W * fan.At(method.Nodes[stage]);
            SetWeather(c, c.SinceMiddle_s + step_s * method.Nodes[stage]);
            Rates(_trial, _stageState, c, _rates[stage], _flows[stage]);
        }

        WeightedSum.Set(next.Values, s.Values, _rateRows, method.Weights, step_s);
        CarryRounding(s, method.Weights, step_s, next);
        WeightedSum.Set(flowed.Values, [], _flowRows, method.Weights, step_s);
        Evaluate(next, c, nextAlgebraic);
        if (fanStops) _fan_W = c.FanHeat_W * fan.At(1);
        SetWeather(c, c.SinceMiddle_s + step_s);
        Rates(next, nextAlgebraic, c, _rates[method.Stages], _flows[method.Stages]);
        if (Coach is not null) SetAirWithin(s, step_s, next);
        next.Sensor_K = SensorWithin_K(s, step_s, 1);
    }

    /// <summary>How far the temperatures of the cylinders after the step that was made last may be off, by the embedded method. [K]</summary>
    /// <param name="step_s">Length of the step. [s]</param>
    public double CylinderError_K(double step_s)
    {
        double worst_K_s = 0;
        for (int i = 0; i < Cylinders.Length; i++)
        {
            double sum_K_s = 0;
            for (int stage = 0; stage <= _method.Stages; stage++) sum_K_s += _method.Error[stage] * _rates[stage].Cylinder_K[i];
            worst_K_s = Math.Max(worst_K_s, Math.Abs(sum_K_s));
        }

        return step_s * worst_K_s;
    }

    /// <summary>A part of the step that was made last, by the method's continuous extension.</summary>
    /// <param name="s">State before the step.</param>
    /// <param name="step_s">Length of the whole step. [s]</param>
    /// <param name="part">Part of it, 0 to 1.</param>
    /// <param name="state">Receives the state after the part.</param>
    public void Within(PlantState s, double step_s, double part, PlantState state) => SetWithin(s, step_s, part, Weights(part), state);

    /// <summary>
    /// A part of the step that was made last as the state that is gone on from, with what rounding keeps out of it carried on, and the integrals
    /// of the flows over it.
    /// </summary>
    /// <param name="s">State before the step.</param>
    /// <param name="step_s">Length of the whole step. [s]</param>
    /// <param name="part">Part of it, 0 to 1.</param>
    /// <param name="state">Receives the state after the part.</param>
    /// <param name="flowed">Receives the integrals.</param>
    public void EndWithin(PlantState s, double step_s, double part, PlantState state, StepIntegrals flowed)
    {
        ReadOnlySpan<double> weights = Weights(part);
        SetWithin(s, step_s, part, weights, state);
        CarryRounding(s, weights, step_s, state);
        WeightedSum.Set(flowed.Values, [], _flowRows, weights, step_s);
    }

    private void SetWithin(PlantState s, double step_s, double part, ReadOnlySpan<double> weights, PlantState state)
    {
        WeightedSum.Set(state.Values, s.Values, _rateRows, weights, step_s);
        state.Sensor_K = SensorWithin_K(s, step_s, part);
    }

    // Summed with compensation: of a large tank's gas a small flow takes, in each short step, little more than the last digit.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void CarryRounding(PlantState s, ReadOnlySpan<double> weights, double step_s, PlantState next)
    {
        Span<double> before_kg = s.Propane_kg, after_kg = next.Propane_kg;
        for (int i = 0; i < after_kg.Length; i++)
        {
            double change_kg = 0;
            for (int k = 0; k < weights.Length; k++) change_kg += weights[k] * _rates[k].Propane_kg[i];
            double left_kg = s.Rounded_kg[i] + (step_s * change_kg - (after_kg[i] - before_kg[i])), sum_kg = after_kg[i] + left_kg;
            next.Rounded_kg[i] = left_kg - (sum_kg - after_kg[i]);
            after_kg[i] = sum_kg;
        }
    }

    private ReadOnlySpan<double> Weights(double part)
    {
        _method.Within(part, _weights);
        return _weights.AsSpan(0, _method.Stages + 1);
    }

    private void SetAirWithin(PlantState s, double step_s, PlantState next)
    {
        double difference_K = next.Air_K - s.Air_K, first_K = step_s * _rates[0].Air_K - difference_K;
        double second_K = difference_K - step_s * _rates[_method.Stages].Air_K - first_K, third_K = 0;
        for (int i = 0; i <= _method.Stages; i++) third_K += _method.Dense[i] * _rates[i].Air_K;
        third_K *= step_s;
        AirWithin_K = new Quartic(difference_K + first_K, second_K + third_K - first_K, -second_K - 2 * third_K, third_K);
    }

    /// <summary>The sensor after a part of the step that was made last, solved exactly from the air before it; NaN without a thermostat. [K]</summary>
    /// <param name="s">State before the step.</param>
    /// <param name="step_s">Length of the whole step. [s]</param>
    /// <param name="part">Part of it, 0 to 1.</param>
    public double SensorWithin_K(PlantState s, double step_s, double part)
    {
        if (!_hasSensor) return double.NaN;
        Quartic air = part == 1 ? AirWithin_K : AirWithin_K.Over(0, part);
        return _sensorLag_s <= 0
            ? s.Air_K + air.At(1)
            : SensorLag.After_K(s.Sensor_K, part * step_s / _sensorLag_s, s.Air_K, air);
    }

    /// <summary>The rate of change at a state.</summary>
    /// <param name="s">State at which the rate is taken.</param>
    /// <param name="at">Algebraic part of that state.</param>
    /// <param name="c">Inputs held over the step.</param>
    /// <param name="rate">Receives the rate of change.</param>
    public void Rate(PlantState s, AlgebraicState at, HeldInputs c, PlantState rate)
    {
        _fan_W = c.FanRuns_s > 0 ? c.FanHeat_W : 0;
        SetWeather(c, c.SinceMiddle_s);
        Rates(s, at, c, rate, _discarded);
    }

    // What the coach meets of the weather some time after the middle of the time for which the inputs are held.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void SetWeather(HeldInputs c, double since_s)
    {
        _outside_K = c.Outside_K + since_s * c.OutsideDrift_K_s;
        _coach = c.Coach.After(c.CoachDrift, since_s);
    }

    // Rates of change and flows at a state.
    private void Rates(PlantState s, AlgebraicState at, HeldInputs c, PlantState rate, StepIntegrals flows)
    {
        CylinderStates cylinders = at.Cylinders;
        SupplyPoint point = at.Point;
        double heat_W = 0;
        Span<double> propane_kg_s = rate.Propane_kg, cylinder_K_s = rate.Cylinder_K, node_W = rate.Node_J;
        for (int i = 0; i < propane_kg_s.Length; i++)
        {
            heat_W += cylinders.Heat_W[i];
            propane_kg_s[i] = -cylinders.Out_kg_s[i];
            cylinder_K_s[i] = cylinders.Warming_K_s(i);
        }

        if (_hasBlanket)
        {
            foreach (double gain_W in cylinders.WallGain_W) heat_W += gain_W;
            cylinders.WallGain_W.CopyTo(rate.Wall_J);
        }

        if (_isMixed) Gas.CompositionRates(cylinders, rate);
        double flow_kg_s = point.Flow_kg_s * cylinders.Mass_factor, heating_J_kg = _heatingValue_J_kg * cylinders.Heating_factor;
        double furnace_kg_s = Supply.Taken_kg_s(FurnaceLoad, point) * cylinders.Mass_factor;
        double burnt_kg_s = c.FurnaceLit ? furnace_kg_s : 0;
        double unburnt_kg_s = furnace_kg_s - burnt_kg_s;
        double toAir_W = burnt_kg_s * heating_J_kg * _furnaceEfficiency_frac;
        double useful_W = toAir_W, electric_W = _fan_W, damp_kg_s = 0;
        toAir_W += _fan_W;
        Span<double> taken = flows.Taken_kg;
        taken[FurnaceLoad] = furnace_kg_s;
        double lostByDucts_W = _ductLoss_frac * toAir_W, loss_W = lostByDucts_W;
        if (Nodes.Length > 0) loss_W += NodeRates(s, c, node_W, ref toAir_W);
        toAir_W -= lostByDucts_W;
        for (int i = 0; i < _warmsCoach_frac.Length; i++)
        {
            double taken_kg_s = Supply.Taken_kg_s(i + 1, point) * cylinders.Mass_factor;
            taken[i + 1] = taken_kg_s;
            if (taken_kg_s == 0 && c.Electric_W[i] == 0) continue;
            burnt_kg_s += taken_kg_s;
            if (_isUnvented[i]) damp_kg_s += taken_kg_s;
            double gas_W = taken_kg_s * heating_J_kg, power_W = c.Electric_W[i];
            toAir_W += (gas_W + power_W) * _warmsCoach_frac[i];
            useful_W += gas_W * (_warmsCoach_frac[i] + _warmsNode_frac[i]);
            electric_W += power_W * (_warmsCoach_frac[i] + _electricWarmsNode_frac[i]);
            if (_nodeOf[i] >= 0) node_W[_nodeOf[i]] += gas_W * _warmsNode_frac[i] + power_W * _electricWarmsNode_frac[i];
        }

        if (GeneratorLoad >= 0)
        {
            double generator_kg_s = Supply.Taken_kg_s(GeneratorLoad, point) * cylinders.Mass_factor;
            burnt_kg_s += generator_kg_s;
            taken[GeneratorLoad] = generator_kg_s;
        }

        rate.Vapour_kg = Damp?.Growth_kg_s(
            s.Vapour_kg, s.Air_K, _outside_K, c.OutsideVapour_kg_m3, _coach.Air_m3_s(s.Air_K - _outside_K), damp_kg_s, c.AirPressure_Pa) ?? 0;
        (rate.Air_K, rate.Furnishings_K) = (0, 0);
        double gains_W = electric_W, ground_W = 0;
        if (Coach is not null)
        {
            double dT_K = s.Air_K - _outside_K, envelope_W = _coach.Loss_W_K(dT_K) * dT_K;
            ground_W = _coach.Ground_W_K * (s.Air_K - _ground_K);
            double toFurnishings_W = _coupling_W_K * (s.Air_K - s.Furnishings_K);
            double air_K_s = (toAir_W + _coach.Gains_W + c.OtherHeat_W - envelope_W - ground_W - toFurnishings_W) * _perAirCapacity_K_J;
            rate.Air_K = air_K_s;
            rate.Furnishings_K = _coupling_W_K > 0 ? toFurnishings_W * _perFurnishingsCapacity_K_J : air_K_s;
            gains_W += _coach.Gains_W + c.OtherHeat_W;
            loss_W += envelope_W;
        }

        flows.Set(
            flow_kg_s, heat_W, flow_kg_s * cylinders.ManifoldEnthalpy_J_kg, burnt_kg_s, unburnt_kg_s, unburnt_kg_s * (heating_J_kg - _heatingValue_J_kg), useful_W,
            burnt_kg_s * heating_J_kg - useful_W, gains_W, loss_W, ground_W, cylinders.Mass_factor);
    }

    // Heat between the nodes and what is around them, and what the furnace's ducts bring; what that leaves for the coach's air.
    // Returns what is lost to outside and with water that runs away. [W]
    private double NodeRates(PlantState s, HeldInputs c, Span<double> rate_W, ref double toAir_W)
    {
        double furnace_W = toAir_W, inside_K = Coach is null ? _outside_K : s.Air_K, loss_W = 0;
        toAir_W -= furnace_W * _duct_frac;
        ReadOnlySpan<double> node_J = s.Node_J;
        for (int i = 0; i < node_J.Length; i++)
        {
            NodeBody body = Nodes[i];
            ThermalNode node = body.Node;
            double t_K = body.Temperature_K(node_J[i]), ice_frac = node_J[i] < 0 ? body.Ice_frac(node_J[i]) : 0;
            _node_K[i] = t_K;
            double fromInside_W = body.ThroughIce_W_K(node.Inside_W_K, ice_frac) * (inside_K - t_K);
            double toOutside_W = body.ThroughIce_W_K(node.Outside_W_K, ice_frac) * (t_K - _outside_K) + c.Drain_W_K[i] * (t_K - node.Cold_K);
            double fromBay_W = 0;
            if (node.Bay >= 0)
            {
                fromBay_W = body.ThroughIce_W_K(node.Bay_W_K, ice_frac) * (_node_K[node.Bay] - t_K);
                rate_W[node.Bay] -= fromBay_W;
            }

            rate_W[i] = fromInside_W - toOutside_W + fromBay_W + furnace_W * node.Duct_frac;
            loss_W += toOutside_W;
            if (Coach is null) loss_W -= fromInside_W;
            else toAir_W -= fromInside_W;
        }

        return loss_W;
    }

    // A bay's index counts the rig's water nodes; here the appliances' nodes come first.
    private static (NodeBody[] Nodes, int[] Of) NodesOf(Rig rig)
    {
        List<NodeBody> nodes = [];
        int[] of = new int[rig.Appliances.Count];
        for (int i = 0; i < of.Length; i++)
        {
            of[i] = rig.Appliances[i].Node is null ? -1 : nodes.Count;
            if (rig.Appliances[i].Node is { } node) nodes.Add(new NodeBody(node));
        }

        int before = nodes.Count;
        foreach (ThermalNode water in rig.Water) nodes.Add(new NodeBody(water.Bay < 0 ? water : water with { Bay = water.Bay + before }));
        return ([.. nodes], of);
    }
}
