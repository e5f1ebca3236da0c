using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Heaters;
using ColdSim.Model.Numerics;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Engine;

/// <summary>One run of one rig through its weather, from its start to its end. Deterministic.</summary>
/// <remarks>
/// Between instants at which something switches, the continuous equations are stepped forward. Switches known ahead (clock hours,
/// purges, weather rows, walks) are landed on; those found by the equations (the thermostat's band, a lost flame, the last liquid,
/// freezing) are located by stepping again to the instant itself. The loop allocates nothing.
/// </remarks>
public sealed class Simulation
{
    private const double EventTolerance_s = 1e-2;

    private const double SlopeOver_s = 1;

    // Past the last liquid the step still sees the equations with liquid; the ledger notices every joule of that.
    private const double LastLiquidTolerance_s = 1e-6;

    // A starved supply gives less with every tenth of a kelvin, which makes a small cylinder fast.
    private const double StarvedStep_s = 15;
    private const double LargestMove_K = 0.5;
    // A step whose own books of the cylinders close worse than this, per what went through, is halved: it went over a bend, such as
    // where supply begins to starve or a reserve side opens.
    private const double BooksOfAStep_frac = 3e-7;
    private const double BooksOfAStep_J = 1e-3;
    private const double ShortestStep_s = 0.5;
    private const int StepsBetweenCancelChecks = 256;

    // A board or valve may move a few times at one instant; more means that two switches chase each other.
    private const int MovesAtOneInstant = 100;

    private readonly Rig _rig;
    private readonly WeatherSeries _weather;
    private readonly SimulationSettings _settings;
    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly SwitchingPoints _points;
    private readonly RunClock _clock;
    private readonly LockoutReset _reset;
    private readonly Ledger _ledger;
    private readonly StepConditions _conditions;
    private readonly FrostLayer[] _frost;
    private readonly double _weatherStart_s;
    private readonly double _longestStep_s;

    private IRunObserver _observer = null!;
    private PlantState _state, _next, _trial;
    private Standing _standing, _then;
    private readonly PlantState _rate;
    private readonly Standing _trialStanding;
    private readonly StepRecord _record;
    private Fluxes _flowed, _trialFlowed;
    private bool _looked;
    private double _time_s;
    private double _stop_s;
    private double _tried_s;
    private double _nextClockEdge_s;
    private double _conditionsUntil_s;
    private int _weatherRow;
    private WeatherSample _sample;
    private double _generatorInput_W;
    private RunEnd? _ended;

    /// <summary>Puts a rig into its weather.</summary>
    /// <param name="rig">What stands there.</param>
    /// <param name="weather">The weather; must cover the start.</param>
    /// <param name="settings">How to run.</param>
    /// <exception cref="ArgumentException">
    /// A start outside the weather, a furnace without coach or thermostat, no cylinder or too many, a changeover without two, or a
    /// step that is not above zero.
    /// </exception>
    public Simulation(Rig rig, WeatherSeries weather, SimulationSettings settings)
        : this(rig, weather, settings, new Ledger())
    {
    }

    internal Simulation(Rig rig, WeatherSeries weather, SimulationSettings settings, Ledger ledger)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(weather);
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.Start < weather.First || settings.Start >= weather.Last)
            throw new ArgumentException($"The start {settings.Start:O} is outside the weather, {weather.First:O} to {weather.Last:O}.", nameof(settings));
        if (!(settings.Step_s > 0) || !(settings.Duration_s > 0))
            throw new ArgumentException("Step and duration must be above zero.", nameof(settings));
        if (rig.Furnace is not null && (rig.Coach is null || rig.Thermostat is null))
            throw new ArgumentException("A furnace needs a coach and a thermostat.", nameof(rig));
        if (rig.Cylinders.Count is < 1 or > Rig.MostCylinders)
            throw new ArgumentException($"A rig has 1 to {Rig.MostCylinders} cylinders, not {rig.Cylinders.Count}.", nameof(rig));
        if (rig.Arrangement is AutomaticChangeover && rig.Cylinders.Count != 2)
            throw new ArgumentException($"An automatic changeover joins two cylinders, not {rig.Cylinders.Count}.", nameof(rig));

        if (rig.Arrangement is OpenTogether && rig.Gas.IsMixed)
            throw new ArgumentException("Cylinders open together are worked out for propane alone.", nameof(rig));

        (_rig, _weather, _settings, _ledger) = (rig, weather, settings, ledger);
        int n = rig.Cylinders.Count;
        _plant = new Plant(rig);
        _controls = new Controls(rig, _plant, settings.Undersupplied_frac);
        _clock = new RunClock(settings.Start, _controls.Windows());
        _reset = new LockoutReset(rig.Occupancy, _clock);
        int k = _plant.Nodes.Length;
        _conditions = new StepConditions(n, rig.Appliances.Count, k);
        _points = new SwitchingPoints(rig, _plant, _controls, _conditions);
        _frost = new FrostLayer[n];
        (_state, _next, _trial, _rate) = (_plant.Gas.NewState(k), _plant.Gas.NewState(k), _plant.Gas.NewState(k), _plant.Gas.NewState(k));
        (_standing, _then, _trialStanding) = (new Standing(n), new Standing(n), new Standing(n));
        _record = StepRecord.For(rig);
        (_flowed, _trialFlowed) = (new Fluxes(rig.GasPlaces), new Fluxes(rig.GasPlaces));
        _weatherStart_s = (settings.Start - weather.First).TotalSeconds;
        _longestStep_s = Math.Min(settings.Step_s, _plant.LongestStep_s());
    }

    /// <summary>How cylinders and coach stand now: at the end, once the run is over.</summary>
    public RigState State() => new(
        [.. Enumerable.Range(0, _frost.Length).Select(i => _plant.Gas.StateOf(_state, i, _frost[i]))],
        _plant.Manifold.InUse(_standing.Cylinders), _state.Air_K, _state.Furnishings_K)
    {
        Power = _controls.Power?.State(),
        Nodes_J = [.. _state.Node_J],
        Vapour_kg = _plant.Damp is null ? null : _state.Vapour_kg,
    };

    /// <summary>Runs from start to end. A simulation runs once.</summary>
    /// <param name="observer">Told of every step and event.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public SimulationResult Run(IRunObserver observer, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(observer);
        _observer = observer;
        double weatherEnd_s = (_weather.Last - _settings.Start).TotalSeconds;
        double end_s = Math.Min(_settings.Duration_s, weatherEnd_s);
        Begin();
        Stored start = StoredNow();
        Switch();

        for (int steps = 0; _ended is null && _time_s < end_s; steps++)
        {
            if (steps % StepsBetweenCancelChecks == 0) cancel.ThrowIfCancellationRequested();
            Advance(NextStop_s(end_s));
            Switch();
        }

        if (_ended is null && end_s < _settings.Duration_s)
        {
            _ended = RunEnd.WeatherEnded;
            Tell(EventKind.WeatherEnds, 0);
        }

        return new SimulationResult(
            _ended ?? RunEnd.Complete, _time_s, _ledger.Close(start, StoredNow(), _plant.HeatingValue_J_kg));
    }

    private Stored StoredNow() => _plant.StoredAt(_state) with { Battery_J = _controls.Power?.Stored_J ?? 0 };

    private void Begin()
    {
        _sample = _weather.At(_weatherStart_s, ref _weatherRow);
        _conditions.AirPressure_Pa = _sample.Pressure_Pa;
        RigState? from = _settings.From;
        for (int i = 0; i < _frost.Length; i++)
        {
            CylinderSpecification cylinder = _rig.Cylinders[i];
            _state.Propane_kg[i] = from?.Cylinders[i].Propane_kg ?? cylinder.Contents_kg;
            _state.Cylinder_K[i] = from?.Cylinders[i].Liquid_K ?? cylinder.InitialTemperature_K ?? _sample.Air_K;
            _frost[i] = from?.Cylinders[i].Frost ?? default;
            _plant.Gas.Begin(_state, i, from?.Cylinders[i]);
            _conditions.HasLiquid[i] = _plant.Gas.At(_state, i, _state.Cylinder_K[i]).HasLiquid;
            _controls.Hot[i].Begin(_state.Cylinder_K[i]);
        }

        if (from is not null && _plant.Manifold is OneOpenManifold one) one.Open = from.InUse;
        Evaluate();
        SetClock();
        double inside_K = _rig.Coach is null ? double.NaN
            : from?.Air_K ?? _rig.Coach.InitialTemperature_K ?? _controls.Thermostat?.SetPoint_K ?? _sample.Air_K;
        _state.Air_K = inside_K;
        _state.Furnishings_K = _rig.Coach is null ? double.NaN : from?.Furnishings_K ?? inside_K;
        for (int i = 0; i < _state.Node_J.Length; i++)
        {
            _state.Node_J[i] = from is { Nodes_J.Count: > 0 } ? from.Nodes_J[i] : _plant.Nodes[i].Energy_J(_plant.Nodes[i].Node.Initial_K);
            _controls.Liquid[i].Begin(_state.Node_J[i]);
            _controls.Solid[i].Begin(-_state.Node_J[i]);
        }

        if (_plant.Damp is { } damp)
        {
            _state.Vapour_kg = from?.Vapour_kg ?? damp.Initial_kg(inside_K);
            _controls.Damp.Begin(damp.Saturation_frac(_state.Vapour_kg, inside_K, _sample.Air_K));
        }

        _state.Sensor_K = _controls.Thermostat is null ? double.NaN : inside_K;
        _controls.Freezing.Begin(inside_K);
        BeginPower(from?.Power);
        OpenValves();
        SwitchBlankets();
        TakeConditions();
    }

    // The next time that must be landed on: the grid, the clock, the weather's rows, timers, the end.
    private double NextStop_s(double end_s)
    {
        double grid_s = (Math.Floor(_time_s / _settings.Step_s + 1e-9) + 1) * _settings.Step_s;
        double cell_s = grid_s - _time_s;
        double stop_s = Math.Min(_time_s + cell_s / Math.Ceiling(cell_s / LongestStep_s()), Math.Min(_nextClockEdge_s, end_s));
        stop_s = Math.Min(stop_s, _weather.NextRow_s(_weatherStart_s + _time_s, _weatherRow) - _weatherStart_s);
        return Math.Min(stop_s, _controls.NextTimer_s(_time_s, _state));
    }

    private double LongestStep_s()
    {
        double longest_s = _longestStep_s;
        if (!_standing.Point.IsFull) longest_s = Math.Min(longest_s, StarvedStep_s);
        longest_s = Math.Min(longest_s, _plant.Manifold.LongestStep_s(_standing.Cylinders));
        double fastest_K_s = 0;
        for (int i = 0; i < _frost.Length; i++) fastest_K_s = Math.Max(fastest_K_s, Math.Abs(_standing.Cylinders.Warming_K_s(i)));
        double moved_K = fastest_K_s * longest_s;
        return moved_K > LargestMove_K ? longest_s * LargestMove_K / moved_K : longest_s;
    }

    private void Advance(double stop_s)
    {
        if (_time_s >= _conditionsUntil_s) TakeConditions();
        _conditions.FurnaceLit = _controls.Furnace?.IsLit ?? false;
        if (_controls.Power is not null) TakePower();
        double step_s = stop_s - _time_s;
        TryStep(step_s);
        while (step_s > ShortestStep_s && !BooksClose())
        {
            step_s *= 0.5;
            stop_s = _time_s + step_s;
            TryStep(step_s);
        }

        _stop_s = stop_s;
        _tried_s = double.NaN;
        double toEvent_s = step_s;
        foreach (ref readonly SwitchingPoint point in _points.All)
        {
            if (_points.Past(point, _next, _then, _conditions.HasLiquid, _stop_s) is > 0 and double past)
                toEvent_s = Math.Min(toEvent_s, Locate(point, step_s, past));
        }

        if (_controls.Power is { } power)
        {
            power.SetTemperatures(_state.Air_K, _next.Air_K, _conditions.Outside_K, step_s);
            toEvent_s = Math.Min(toEvent_s, power.ToEvent_s(step_s));
        }

        if (toEvent_s < step_s)
        {
            step_s = toEvent_s;
            stop_s = _time_s + step_s;
            StepTo(step_s);
        }

        if (!_looked) Look();
        double asked_kg_s = _controls.AskedFor_kg_s(_plant);
        _ledger.Post(_flowed);
        if (_controls.Power is not null) StepPower(step_s);
        for (int i = 0; i < _frost.Length; i++) _frost[i] = _frost[i].After(_conditions.Cylinders[i], step_s);
        (_state, _next) = (_next, _state);
        (_standing, _then) = (_then, _standing);
        _time_s = stop_s;
        _sample = _weather.At(_weatherStart_s + _time_s, ref _weatherRow);
        _record.Next();
        Look();
        Note(step_s, asked_kg_s);
        _observer.Stepped(_record);
    }

    // What went on in the step, as means.
    private void Note(double step_s, double asked_kg_s)
    {
        double heating_J_kg = _plant.HeatingValue_J_kg * _standing.Cylinders.Heating_factor, perSecond = 1 / step_s;
        _record.Asked_W = asked_kg_s * _standing.Cylinders.Mass_factor * heating_J_kg;
        _record.Given_W = _flowed.Drawn_kg * perSecond * heating_J_kg;
        for (int i = 0; i < _record.Gas_W.Length; i++)
        {
            double taken_kg_s = _flowed.Taken_kg[i] * perSecond;
            _record.Gas_W[i] = taken_kg_s * heating_J_kg;
            _record.IsShort[i] = _controls.Supply.Undersupplied && _controls.IsShort(i, taken_kg_s, _plant, _settings.Undersupplied_frac);
        }

        ReadOnlySpan<double> node_J = _state.Node_J;
        for (int i = 0; i < node_J.Length; i++)
        {
            _record.Node_K[i] = _plant.Nodes[i].Temperature_K(node_J[i]);
            _record.Ice_frac[i] = _plant.Nodes[i].Ice_frac(node_J[i]);
        }

        _record.HeatIntoCylinder_W = _flowed.CylinderHeat_J * perSecond;
        _record.Blanket_W = _conditions.BlanketPower_W();
        _record.BurnerLit = _conditions.FurnaceLit;
        _record.Undersupplied = _controls.Supply.Undersupplied;
        _record.DampSettles = _plant.Damp is not null && _controls.Damp.Passed;
    }

    private void TryStep(double step_s)
    {
        _plant.Step(_state, _standing, _conditions, step_s, _next, _flowed);
        _plant.Evaluate(_next, _conditions, _then);
    }

    // Where an instant was located the last trial mostly ended there.
    private void StepTo(double step_s)
    {
        if (step_s != _tried_s)
        {
            TryStep(step_s);
            return;
        }

        (_next, _trial) = (_trial, _next);
        (_flowed, _trialFlowed) = (_trialFlowed, _flowed);
        _plant.Evaluate(_next, _conditions, _then);
    }

    private bool BooksClose()
    {
        double left_J = _flowed.CylinderHeat_J - _flowed.VapourEnthalpy_J - (_plant.CylinderEnergy_J(_then) - _plant.CylinderEnergy_J(_standing));
        return Math.Abs(left_J) <= BooksOfAStep_J + BooksOfAStep_frac * (Math.Abs(_flowed.CylinderHeat_J) + Math.Abs(_flowed.VapourEnthalpy_J));
    }

    // Surroundings are taken once for each cell of the step grid, at its middle, where their error over the cell is of second order.
    // Steps that events cut shorter within the cell keep them.
    private void TakeConditions()
    {
        _conditionsUntil_s = Math.Min(
            (Math.Floor(_time_s / _settings.Step_s + 1e-9) + 1) * _settings.Step_s,
            _weather.NextRow_s(_weatherStart_s + _time_s, _weatherRow) - _weatherStart_s);
        double half_s = 0.5 * (_conditionsUntil_s - _time_s);
        WeatherSample middle = _weather.At(_weatherStart_s + _time_s + half_s, ref _weatherRow);
        for (int i = 0; i < _frost.Length; i++)
        {
            double liquid_K = _state.Cylinder_K[i] + half_s * _standing.Cylinders.Warming_K_s(i);
            _conditions.Cylinders[i] = CylinderFilm.At(_plant.Cylinders[i], middle, _plant.Gas.At(_state, i, liquid_K), liquid_K, _frost[i]);
        }

        _conditions.Coach = _plant.Coach?.At(middle, _state.Air_K, _clock.At_s(_time_s)) ?? default;
        _conditions.OutsideVapour_kg_m3 = Humidity.VapourDensity_kg_m3(middle.VapourPressure_Pa, middle.Air_K);
        _conditions.Outside_K = middle.Air_K;
        _conditions.AirPressure_Pa = middle.Pressure_Pa;
        _controls.Power?.TakeSun(middle, _settings.Start.AddSeconds(_time_s + half_s));
        _plant.Exchange(_conditions, _standing);
    }

    private double Locate(in SwitchingPoint point, double step_s, double pastAtEnd)
    {
        double pastAtStart = _points.Past(point, _state, _standing, _conditions.HasLiquid, _stop_s);

        // Air pressure is held over a step, so at its edge a point may already be passed: it is now.
        if (pastAtStart > 0) return Math.Min(step_s, EventTolerance_s);
        Crossing crossing = new(this, point);
        double part_s = point.OfCoach
            ? SmoothCrossing.Past(
                ref crossing, pastAtStart, Slope(point, _state, _standing, pastAtStart), step_s, pastAtEnd, Slope(point, _next, _then, pastAtEnd),
                EventTolerance_s)
            : BracketedRoot.Root(
                ref crossing, 0, pastAtStart, step_s, pastAtEnd, point.Kind == SwitchingKind.Liquid ? LastLiquidTolerance_s : EventTolerance_s);

        // Past its band before its shortest time is over, the thermostat switches when it is.
        return point.Kind == SwitchingKind.Thermostat ? Math.Max(part_s, _controls.Thermostat!.MayChangeFrom_s - _time_s) : part_s;
    }

    // How fast a state goes past a switching point of the coach.
    private double Slope(in SwitchingPoint point, PlantState s, Standing at, double past)
    {
        _plant.Rate(s, at, _conditions, _rate);
        _trial.SetAlong(s, _rate, SlopeOver_s);
        return (_points.Past(point, _trial, at, _conditions.HasLiquid, _stop_s) - past) / SlopeOver_s;
    }

    private void Evaluate()
    {
        _plant.Evaluate(_state, _conditions, _standing);
        _looked = false;
    }

    // The state stands, and with it what is in the cylinders; what flows does not.
    private void Exchange()
    {
        _plant.Exchange(_conditions, _standing);
        _looked = false;
    }

    private double Battery_K() => _controls.Power!.AirOfBattery_K(_state.Air_K, _conditions.Outside_K);

    private void BeginPower(PowerState? from)
    {
        if (_controls.Power is not { } power) return;
        power.Begin(from);
        _controls.SetVoltage(power.Live);
    }

    // What draws and feeds over the step, and the gas that the generator takes for it.
    private void TakePower()
    {
        PowerSide power = _controls.Power!;
        power.TakeLoads(_controls.Furnace?.FanRuns ?? false, _controls.BatteryBlankets_W(wanted: false));
        if (power.Generator is not { Runs: true }) return;
        double heating_J_kg = _plant.HeatingValue_J_kg;
        power.SetTemperatures(_state.Air_K, _state.Air_K, _conditions.Outside_K, 0);
        _generatorInput_W = power.GeneratorInput_W(_generatorInput_W);
        if (_plant.Supply.SetFull(_plant.GeneratorLoad, _generatorInput_W / heating_J_kg)) Exchange();
    }

    private void StepPower(double step_s)
    {
        PowerSide power = _controls.Power!;
        power.SetTemperatures(_state.Air_K, _next.Air_K, _conditions.Outside_K, step_s);
        PowerFlux flux = power.Accept(step_s);
        _ledger.Post(flux);
        power.Note(_record.Power!, flux, step_s, power.AirOfBattery_K(_next.Air_K, _conditions.Outside_K));
    }

    private void SwitchPower()
    {
        if (_controls.Power is not { } power) return;
        power.TakeLoads(_controls.Furnace?.FanRuns ?? false, _controls.BatteryBlankets_W(wanted: false));
        if (power.SwitchVoltage(Battery_K(), _controls.Furnace is not null, _controls.BatteryBlankets_W(wanted: true)))
        {
            _controls.SetVoltage(power.Live);
            SwitchBlankets();
            OpenValves();
            Tell(power.Live ? EventKind.VoltageBack : EventKind.VoltageGone, power.Charge(Battery_K()).Charge_frac);
        }

        if (!power.SwitchGenerator(Battery_K(), FlameDelivery_Pa(), _time_s)) return;
        OpenValves();
        if (power.Generator!.WantsGas) Tell(EventKind.GeneratorStarved, Delivery_Pa());
        else Tell(power.Generator.Runs ? EventKind.GeneratorStarts : EventKind.GeneratorStops, power.Charge(Battery_K()).Charge_frac);
    }

    // Everything that switches at this instant, until nothing does.
    private void Switch()
    {
        if (_time_s >= _nextClockEdge_s) SetClock();
        CheckContents();
        SwitchPower();
        SwitchBlankets();
        for (int moves = 0; moves < MovesAtOneInstant && SwitchOnce(); moves++)
        {
        }

        SwitchPower();
        WatchSupply();
        ChangeCylinder();
        WatchWater();
        if (_plant.Damp is { } damp && _controls.Damp.Update(damp.Saturation_frac(_state.Vapour_kg, _state.Air_K, _conditions.Outside_K)))
            Tell(_controls.Damp.Passed ? EventKind.DampSettles : EventKind.DampGone, damp.Surface_K(_state.Air_K, _conditions.Outside_K));
        if (_plant.Coach is not null && _controls.Freezing.Update(_state.Air_K))
            Tell(_controls.Freezing.Passed ? EventKind.InsideThawed : EventKind.InsideFreezing, _sample.Air_K);
    }

    private void WatchWater()
    {
        ReadOnlySpan<double> node_J = _state.Node_J;
        for (int i = 0; i < node_J.Length; i++)
        {
            if (_plant.Nodes[i].Latent_J <= 0) continue;
            if (_controls.Liquid[i].Update(node_J[i]))
                Tell(_controls.Liquid[i].Passed ? EventKind.WaterThawed : EventKind.WaterFreezes, _sample.Air_K, i);
            if (_controls.Solid[i].Update(-node_J[i]) && _controls.Solid[i].Passed)
                Tell(EventKind.WaterSolid, _sample.Air_K, i);
        }
    }

    private void SetClock()
    {
        double clock_s = _clock.At_s(_time_s);
        _controls.SetClock(clock_s);
        if (_rig.Coach is { Covers_W_K: > 0 }) _conditionsUntil_s = Math.Min(_conditionsUntil_s, _time_s);
        for (int i = 0; i < _conditions.Drain_W_K.Length; i++) _conditions.Drain_W_K[i] = _plant.Nodes[i].Drain_W_K(clock_s);
        OpenValves();
        _nextClockEdge_s = _clock.NextEdge_s(_time_s);
        _looked = false;
    }

    private bool SwitchOnce()
    {
        bool moved = false;
        if (_controls.Thermostat is { } thermostat && thermostat.Update(_state.Sensor_K, _time_s))
        {
            Tell(thermostat.Calls ? EventKind.HeatCalled : EventKind.HeatSatisfied, _state.Air_K);
            moved = true;
        }

        if (_controls.Furnace is { } furnace && _controls.Power is not { Live: false })
        {
            FurnaceChange change = furnace.Update(_controls.Thermostat!.Calls, FlameDelivery_Pa(), _time_s, _reset);
            OpenValves();
            TellFurnace(change);
            moved |= change != FurnaceChange.None;
        }

        for (int i = 0; i < _controls.Appliances.Length; i++)
        {
            moved |= _controls.Appliances[i].Sense(_plant.Sensed_K(i, _state));
            moved |= _controls.Appliances[i].Update(FlameDelivery_Pa(), _time_s);
        }

        foreach (HeaterControl heater in _controls.Heaters) moved |= heater.Sense(_state.Air_K);
        OpenValves();
        return moved;
    }

    private void OpenValves()
    {
        bool moved = _controls.Furnace is { } furnace && _plant.Supply.Set(Plant.FurnaceLoad, furnace.ValveOpen);
        for (int i = 0; i < _controls.Appliances.Length; i++)
        {
            moved |= _plant.Supply.Set(Plant.FurnaceLoad + 1 + i, _controls.Appliances[i].ValveOpen);
            _conditions.Electric_W[i] = _controls.Appliances[i].Electric_W;
        }

        if (_controls.Power?.Generator is { } generator) moved |= _plant.Supply.Set(_plant.GeneratorLoad, generator.Runs);
        if (_controls.Heaters.Length > 0) _conditions.OtherHeat_W = _controls.OtherHeat_W(ShorePower_W());
        if (moved) Exchange();
    }

    // What runs on a hookup beside the heaters, which get what is left.
    private double ShorePower_W()
    {
        double sum_W = _controls.Power?.ShoreDraw_W(Battery_K()) ?? 0;
        foreach (double appliance_W in _conditions.Electric_W) sum_W += appliance_W;
        for (int i = 0; i < _frost.Length; i++)
        {
            if (_rig.Cylinders[i].Blanket is { Supply: BlanketSupply.ShorePower }) sum_W += _conditions.Blanket_W[i];
        }

        return sum_W;
    }

    private void SwitchBlankets()
    {
        for (int i = 0; i < _frost.Length; i++)
        {
            if (_controls.Blankets[i] is not { } blanket) continue;
            bool before = _conditions.Blanket_W[i] > 0;
            blanket.Update(_state.Cylinder_K[i]);
            _conditions.Blanket_W[i] = blanket.Power_W;
            if (blanket.On == before) continue;
            Exchange();
            Tell(blanket.On ? EventKind.BlanketOn : EventKind.BlanketOff, _state.Cylinder_K[i], i);
        }
    }

    // What a flame sees: where delivery is full it is above whatever lights or keeps one, and need not be known nearer.
    private double FlameDelivery_Pa() => _standing.Point.IsFull ? double.PositiveInfinity : _standing.Point.Delivery_Pa;

    private void TellFurnace(FurnaceChange change)
    {
        switch (change)
        {
            case FurnaceChange.Lit:
                Tell(EventKind.BurnerOn, Delivery_Pa());
                break;
            case FurnaceChange.Out:
                Tell(EventKind.BurnerOff, _state.Air_K);
                break;
            case FurnaceChange.IgnitionFailed:
                Tell(EventKind.IgnitionFailed, Delivery_Pa());
                break;
            case FurnaceChange.FlameLost:
                Tell(EventKind.FlameLost, Delivery_Pa());
                break;
            case FurnaceChange.LockedOut:
                Tell(EventKind.Lockout, _state.Air_K);
                break;
            case FurnaceChange.Retries:
                Tell(EventKind.LockoutRetry, _state.Air_K);
                break;
            case FurnaceChange.Reset:
                Tell(EventKind.LockoutReset, _state.Air_K);
                break;
        }
    }

    private void WatchSupply()
    {
        if (_controls.Supply.Update(_controls.Waiting(), _plant.Supply.WorstTaken_frac(_standing.Point)))
            Tell(_controls.Supply.Undersupplied ? EventKind.ShortBegins : EventKind.ShortEnds, _standing.FeedPressure_Pa);
        if (_controls.HasReserve && _standing.Point.Flow_kg_s > 0 && _controls.Reserve.Update(_standing.Reserve_frac))
            Tell(_controls.Reserve.Passed ? EventKind.ReserveFeeds : EventKind.ServiceAlone, _state.Propane_kg[ChangeoverManifold.Service]);
    }

    private void ChangeCylinder()
    {
        if (_controls.Change is not { } change || _plant.Manifold is not OneOpenManifold manifold) return;
        if (_time_s >= change.At_s)
        {
            int next = change.Next(manifold.Open, _conditions.HasLiquid, _time_s);
            if (next >= 0)
            {
                double left_kg = _state.Propane_kg[manifold.Open];
                manifold.Open = next;
                Exchange();
                Tell(EventKind.CylinderChanged, left_kg, next);
                WatchSupply();
            }
        }

        change.Watch(_controls.Supply.Undersupplied, _time_s, _clock.At_s(0));
    }

    private void CheckContents()
    {
        for (int i = 0; i < _frost.Length; i++)
        {
            if (_standing.Cylinders.Contents[i].HasLiquid != _conditions.HasLiquid[i])
            {
                _conditions.HasLiquid[i] = !_conditions.HasLiquid[i];
                _conditionsUntil_s = _time_s;
                Evaluate();
                Tell(_conditions.HasLiquid[i] ? EventKind.LiquidAgain : EventKind.LiquidGone, _state.Propane_kg[i], i);
            }

            if (_controls.Hot[i].Update(_state.Cylinder_K[i]))
                Tell(_controls.Hot[i].Passed ? EventKind.CylinderHot : EventKind.CylinderCooled, _state.Cylinder_K[i], i);
            if (_standing.Cylinders.Contents[i].LiquidVolume_m3 >= _rig.Cylinders[i].Volume_m3) End(RunEnd.LiquidFull, EventKind.LiquidFull, i);
            else if (_standing.CylinderPressure_Pa(i) >= _rig.Cylinders[i].ReliefPressure_Pa) End(RunEnd.ReliefPressure, EventKind.ReliefPressure, i);
        }
    }

    private void End(RunEnd end, EventKind kind, int cylinder)
    {
        if (_ended is not null) return;
        _ended = end;
        Tell(kind, _state.Cylinder_K[cylinder], cylinder);
    }

    private double Delivery_Pa() => _plant.Supply.Delivery_Pa(_standing.Point, _standing.Feed, _standing.AirPressure_Pa);

    // Written in place: it is done at every step, and a moment is large.
    private void Look()
    {
        ref Moment now = ref _record.Now;
        for (int i = 0; i < _frost.Length; i++)
        {
            now.Set(i, new CylinderReading(
                _state.Propane_kg[i], _state.Cylinder_K[i], _standing.CylinderPressure_Pa(i), _frost[i].Mass_kg_m2, _frost[i].Thickness_m,
                _state.NormalButane_kg(i), _state.Isobutane_kg(i)));
        }

        now.Time_s = _time_s;
        now.Outside_K = _sample.Air_K;
        now.Wind_m_s = _sample.Wind_m_s;
        now.Inside_K = _state.Air_K;
        now.SetPoint_K = _controls.Thermostat?.SetPoint_K ?? double.NaN;
        now.CylinderPressure_Pa = _standing.FeedPressure_Pa;
        now.DeliveryPressure_Pa = Delivery_Pa();
        now.Propane_kg = _state.TotalPropane_kg();
        now.InUse = _plant.Manifold.InUse(_standing.Cylinders);
        _looked = true;
    }

    private void Tell(EventKind kind, double value, int place = 0)
    {
        if (!_looked) Look();
        _observer.Happened(new SimulationEvent(_time_s, kind, value, place), _record.Now);
    }

    // How far past a switching point the state is after part of the step.
    private readonly struct Crossing(Simulation run, SwitchingPoint point) : IFunction
    {
        public double At(double part_s)
        {
            run._plant.Step(run._state, run._standing, run._conditions, part_s, run._trial, run._trialFlowed);
            run._tried_s = part_s;
            if (!point.OfCoach) run._plant.Evaluate(run._trial, run._conditions, run._trialStanding);
            return run._points.Past(point, run._trial, run._trialStanding, run._conditions.HasLiquid, run._stop_s);
        }
    }
}
