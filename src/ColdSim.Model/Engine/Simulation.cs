using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Heaters;
using ColdSim.Model.Numerics;
using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>One run of one rig through its weather, from its start to its end. Deterministic.</summary>
/// <remarks>
/// Between events the continuous equations are integrated. Events known ahead (clock hours,
/// purges, weather rows, cylinder changes) are landed on; those of the continuous state (the thermostat's band, a lost flame, the last
/// liquid, freezing) are located as zero crossings of event functions. The loop allocates nothing.
/// </remarks>
internal sealed class Simulation
{
    private const int StepsBetweenCancelChecks = 16;

    // A board or valve may move a few times at one instant; more means that two controls trigger each other without end.
    private const int MostEventIterations = 100;

    private readonly Rig _rig;
    private readonly RunWeather _weather;
    private readonly SimulationSettings _settings;
    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly RunClock _clock;
    private readonly Occupants _occupants;
    private readonly Ledger _ledger;
    private readonly HeldInputs _inputs;
    private readonly FrostLayer[] _frost;
    private readonly InputHold _hold;
    private readonly double _longestStep_s;
    private readonly double _fan_W;

    private readonly Stepper _stepper;
    private readonly StepRecord _record;
    private readonly StepMeans _means;
    private readonly EventPublisher _publisher;
    private readonly CoachWatch _coachWatch;
    private double _time_s;
    private double _nextClockEdge_s;
    private WeatherSample _sample;
    private double _generatorInput_W;
    private RunEnd? _ended;

    /// <summary>A run of a rig in a weather.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="weather">The weather; must cover the start.</param>
    /// <param name="settings">Start, duration, step and initial state.</param>
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

        (_rig, _settings, _ledger) = (rig, settings, ledger);
        _weather = new RunWeather(weather, settings.Start);
        int n = rig.Cylinders.Count;
        _plant = new Plant(rig);
        _controls = new Controls(rig, _plant, settings.Undersupplied_frac);
        _clock = new RunClock(settings.Start, _controls.Windows());
        _occupants = new Occupants(rig.Occupancy, _clock, _controls.Warm);
        int k = _plant.Nodes.Length;
        _inputs = new HeldInputs(n, rig.Appliances.Count, k);
        _stepper = new Stepper(rig, _plant, _controls, _inputs);
        _frost = new FrostLayer[n];
        _hold = new InputHold(rig, _plant, _controls, _stepper, _inputs, _frost, _clock, _weather, settings.Step_s);
        _record = StepRecord.For(rig);
        _publisher = new EventPublisher(_plant, _controls, _stepper, _inputs, _frost, _record);
        _coachWatch = new CoachWatch(_plant, _controls, _inputs, _publisher);
        _longestStep_s = Math.Min(settings.Step_s, _plant.LongestStep_s());
        _fan_W = rig.FurnaceFan_W;
        IgnitionOutlook? ignition = rig.Furnace is { } furnace ? new IgnitionOutlook(_plant, furnace.IgnitionPressure_Pa) : null;
        _means = new StepMeans(_plant, _controls, _stepper, _inputs, _record, ignition, settings.Undersupplied_frac);
    }

    /// <summary>Present state of the rig: that at the end, once the run is over.</summary>
    public RigState State() => new(
        [.. Enumerable.Range(0, _frost.Length).Select(StateOf)],
        _plant.Manifold.InUse(AlgebraicState.Cylinders), Now.Air_K, Now.Furnishings_K)
    {
        Power = _controls.Power?.State(),
        Nodes_J = [.. Now.Node_J],
        Vapour_kg = _plant.Damp is null ? null : Now.Vapour_kg,
    };

    private CylinderState StateOf(int i)
        => _plant.Gas.StateOf(Now, i, _frost[i]) with { Wall_J = _plant.Cylinders[i].IsUnderBlanket ? Now.Wall_J[i] : 0 };

    /// <summary>Runs from start to end. A simulation runs once.</summary>
    /// <param name="observer">Receives every step and event.</param>
    /// <param name="cancel">Cancels the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public SimulationResult Run(IRunObserver observer, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(observer);
        _publisher.Observer = observer;
        double end_s = Math.Min(_settings.Duration_s, _weather.End_s);
        Begin();
        Stored start = StoredNow();
        Switch();

        for (int steps = 0; _ended is null && _time_s < end_s; steps++)
        {
            if (steps % StepsBetweenCancelChecks == 0) cancel.ThrowIfCancellationRequested();
            if (_time_s >= _hold.Until_s) _hold.Set(_time_s, _sample);

            // Something may be due at this very instant; a step without length has no means.
            double stop_s = NextStop_s(end_s);
            if (stop_s > _time_s) Advance(stop_s);
            Switch();
        }

        if (_ended is null && end_s < _settings.Duration_s)
        {
            _ended = RunEnd.WeatherEnded;
            Publish(EventKind.WeatherEnds, 0);
        }

        return new SimulationResult(
            _ended ?? RunEnd.Complete, _time_s, _ledger.Close(start, StoredNow(), _plant.HeatingValue_J_kg));
    }

    private Stored StoredNow() => _plant.StoredAt(Now) with { Battery_J = _controls.Power?.Stored_J ?? 0 };

    private void Begin()
    {
        _sample = _weather.At(0);
        _inputs.AirPressure_Pa = _sample.Pressure_Pa;
        _publisher.Begin(_sample);
        RigState? from = _settings.From;
        for (int i = 0; i < _frost.Length; i++)
        {
            CylinderSpecification cylinder = _rig.Cylinders[i];
            Now.Propane_kg[i] = from?.Cylinders[i].Propane_kg ?? cylinder.Contents_kg;
            Now.Cylinder_K[i] = from?.Cylinders[i].Liquid_K ?? cylinder.InitialTemperature_K ?? _sample.Air_K;
            _frost[i] = from?.Cylinders[i].Frost ?? default;
            if (_plant.Cylinders[i].IsUnderBlanket) Now.Wall_J[i] = from?.Cylinders[i].Wall_J ?? 0;
            _plant.Gas.Begin(Now, i, from?.Cylinders[i]);
            _inputs.HasLiquid[i] = _plant.Gas.At(Now, i, Now.Cylinder_K[i]).HasLiquid;
            _controls.Hot[i].Begin(Now.Cylinder_K[i]);
        }

        if (from is not null && _plant.Manifold is OneOpenManifold one) one.Open = from.InUse;
        Evaluate();
        SetClock();
        double inside_K = _rig.Coach is null ? double.NaN
            : from?.Air_K ?? _rig.Coach.InitialTemperature_K ?? _controls.Thermostat?.SetPoint_K ?? _sample.Air_K;
        Now.Air_K = inside_K;
        Now.Furnishings_K = _rig.Coach is null ? double.NaN : from?.Furnishings_K ?? inside_K;
        for (int i = 0; i < Now.Node_J.Length; i++)
        {
            Now.Node_J[i] = from is { Nodes_J.Count: > 0 } ? from.Nodes_J[i] : _plant.Nodes[i].Energy_J(_plant.Nodes[i].Node.Initial_K);
            _controls.Liquid[i].Begin(Now.Node_J[i]);
            _controls.Solid[i].Begin(-Now.Node_J[i]);
        }

        _means.Begin();

        if (_plant.Damp is { } damp)
        {
            Now.Vapour_kg = from?.Vapour_kg ?? damp.Initial_kg(inside_K);
            _controls.Damp.Begin(damp.Saturation_frac(Now.Vapour_kg, inside_K, _sample.Air_K));
        }

        Now.Sensor_K = _controls.Thermostat is null ? double.NaN : inside_K;
        _controls.Freezing.Begin(inside_K);
        _occupants.Begin(inside_K);
        BeginPower(from?.Power);
        OpenValves();
        _hold.Set(_time_s, _sample);
        SwitchBlankets();
    }

    // The next time that must be landed on: the grid, the clock, the weather's rows, at which inputs are not held on, timers, the end.
    private double NextStop_s(double end_s)
    {
        double cell_s = _hold.CellEnd_s(_time_s) - _time_s;
        double stop_s = Math.Min(_time_s + cell_s / Math.Ceiling(cell_s / _stepper.Longest_s(_longestStep_s)), Math.Min(_nextClockEdge_s, end_s));
        return Math.Min(stop_s, _controls.NextTimer_s(_time_s, Now, AlgebraicState, stop_s));
    }

    private void Advance(double stop_s)
    {
        _inputs.SinceMiddle_s = _hold.SinceMiddle_s(_time_s);
        if (_controls.Furnace is { } furnace)
        {
            (_inputs.FurnaceLit, _inputs.FanHeat_W) = (furnace.IsLit, furnace.FanRuns ? _fan_W : 0);
            _inputs.FanRuns_s = _controls.FanStopsWithin ? furnace.PhaseEnds_s - _time_s : double.PositiveInfinity;
        }

        if (_controls.Power is not null) TakePower();
        double whole_s = stop_s - _time_s;
        _stepper.Try(whole_s);
        double step_s = _stepper.ToFirstEvent_s(_time_s, stop_s);
        if (_controls.Power is { } power)
        {
            power.SetTemperatures(Battery_K(), BatteryOver_K(_stepper.Tried_s), _stepper.Tried_s);
            step_s = Math.Min(step_s, power.ToEvent_s(_time_s, _stepper.Tried_s));

            // Within a step in which the fan stops the air is only near; up to where it stops it is right.
            if (step_s < _stepper.Tried_s) step_s = Math.Min(step_s, _inputs.FanRuns_s);
        }

        if (step_s < _stepper.Tried_s) step_s = _stepper.CutTo(step_s);
        if (step_s < whole_s) stop_s = _time_s + step_s;

        _publisher.CaptureIfChanged();
        double demand_kg_s = _controls.Demand_kg_s(_plant);
        _ledger.Post(_stepper.Flowed);
        if (_controls.Power is not null) StepPower(step_s);
        for (int i = 0; i < _frost.Length; i++) _frost[i] = _frost[i].After(_inputs.Cylinders[i], step_s);
        _stepper.Accept();
        _time_s = stop_s;
        _sample = _weather.At(_time_s);
        _record.Next();
        _publisher.Capture(_time_s, _sample);
        _means.Write(step_s, demand_kg_s);
        _publisher.Observer.Stepped(_record);
    }

    private PlantState Now => _stepper.State;

    private AlgebraicState AlgebraicState => _stepper.AlgebraicState;

    private void Evaluate()
    {
        _stepper.Evaluate();
        _publisher.Invalidate();
    }

    // State and contents of the cylinders are unchanged; the flows are not.
    private void Exchange()
    {
        _stepper.Exchange();
        _publisher.Invalidate();
    }

    private void Publish(EventKind kind, double value, int place = 0) => _publisher.Publish(kind, value, place);

    private double Battery_K() => _controls.Power!.AirOfBattery_K(Now.Air_K, _sample.Air_K);

    // How the air around it departs from that over a step that was tried and is not accepted yet.
    private Quartic BatteryOver_K(double step_s)
        => _controls.Power!.IsInside ? _stepper.AirWithin_K : new Quartic(step_s * _inputs.OutsideDrift_K_s, 0, 0, 0);

    private void BeginPower(PowerState? from)
    {
        if (_controls.Power is not { } power) return;
        power.Begin(from);
        _controls.SetVoltage(power.Live);
    }

    // Sets loads and sources over the step, and the gas that the generator takes for them.
    private void TakePower()
    {
        PowerSide power = _controls.Power!;
        power.TakeLoads(_controls.Furnace?.FanRuns ?? false, _controls.BatteryBlankets_W(wanted: false), _inputs.FanRuns_s);
        if (power.Generator is not { Runs: true }) return;
        double heating_J_kg = _plant.HeatingValue_J_kg;
        power.SetTemperatures(Battery_K(), default, 0);
        _generatorInput_W = power.GeneratorInput_W(_generatorInput_W);
        if (_plant.Supply.SetFull(_plant.GeneratorLoad, _generatorInput_W / heating_J_kg)) Exchange();
    }

    private void StepPower(double step_s)
    {
        PowerSide power = _controls.Power!;
        power.SetTemperatures(Battery_K(), BatteryOver_K(step_s), step_s);
        PowerIntegrals integrals = power.Accept(step_s);
        _ledger.Post(integrals);
        power.Note(_record.Power!, integrals, step_s);
    }

    // Returns whether anything switched.
    private bool SwitchPower()
    {
        if (_controls.Power is not { } power) return false;
        double battery_K = Battery_K();
        bool frozen = power.SwitchFrozen(battery_K), cutOut = power.SwitchCutOut(battery_K);
        if (frozen) Publish(power.IsFrozen ? EventKind.BatteryFreezes : EventKind.BatteryThawed, power.Charge(battery_K).Charge_frac);
        if (cutOut && power.IsCutOut) Publish(EventKind.BatteryCutOut, power.Charge(battery_K).Charge_frac);
        power.TakeLoads(_controls.Furnace?.FanRunsAt(_time_s) ?? false, _controls.BatteryBlankets_W(wanted: false));
        bool voltage = power.SwitchVoltage(battery_K, _controls.Furnace is not null, _controls.BatteryBlankets_W(wanted: true), _time_s);
        if (voltage)
        {
            _controls.SetVoltage(power.Live);
            _occupants.NoteChange();
            SwitchBlankets();
            OpenValves();
            Publish(power.Live ? EventKind.VoltageBack : EventKind.VoltageGone, power.Charge(battery_K).Charge_frac);
        }

        if (!power.SwitchGenerator(battery_K, FlameDelivery_Pa(), _time_s)) return frozen || cutOut || voltage;
        OpenValves();
        if (power.Generator!.WantsGas) Publish(EventKind.GeneratorStarved, _publisher.Delivery_Pa());
        else Publish(power.Generator.Runs ? EventKind.GeneratorStarts : EventKind.GeneratorStops, power.Charge(battery_K).Charge_frac);
        return true;
    }

    // Event iteration: everything that switches at this instant, until nothing does.
    private void Switch()
    {
        if (_time_s >= _nextClockEdge_s) SetClock();
        CheckContents();
        bool loadsChanged = SwitchPower() | SwitchBlankets();
        for (int moves = 0; SwitchOnce(); moves++)
        {
            if (moves > MostEventIterations) throw new InvalidOperationException("Two controls trigger each other without end.");
            loadsChanged = true;
        }

        if (loadsChanged) SwitchPower();
        WatchSupply();
        ChangeCylinder();
        _coachWatch.Update(Now, _sample.Air_K);
        if (_controls.CanAct) WatchCold();
    }

    // Whoever the cold wakes acts as if it were day, until it is warm enough to sleep again.
    private void WatchCold()
    {
        bool asleep = _occupants.IsAsleep(_time_s);
        if (!_controls.Warm.Update(Now.Air_K) || _controls.Warm.IsHigh) return;
        _controls.Change?.Wake(_occupants.Acts_s(_time_s));
        if (!asleep) return;
        Publish(EventKind.WokenByCold, Now.Air_K);
        _controls.Furnace?.ResetAt(_occupants.Resets_s(_time_s));
    }

    private void SetClock()
    {
        double clock_s = _clock.At_s(_time_s);
        _controls.SetClock(clock_s);
        if (_rig.Coach is { Covers_W_K: > 0 }) _hold.EndAt(_time_s);
        for (int i = 0; i < _inputs.Drain_W_K.Length; i++) _inputs.Drain_W_K[i] = _plant.Nodes[i].Drain_W_K(clock_s);
        OpenValves();
        _nextClockEdge_s = _clock.NextEdge_s(_time_s);
        _publisher.Invalidate();
    }

    private bool SwitchOnce()
    {
        bool moved = false;
        if (_controls.Thermostat is { } thermostat && thermostat.Update(Now.Sensor_K, _time_s))
        {
            Publish(thermostat.Calls ? EventKind.HeatCalled : EventKind.HeatSatisfied, Now.Air_K);
            moved = true;
        }

        if (_controls.Furnace is { } furnace && _controls.Power is not { Live: false })
        {
            FurnaceChange change = furnace.Update(_controls.Thermostat!.Calls, FlameDelivery_Pa(), _time_s, _occupants);
            if (change != FurnaceChange.None)
            {
                OpenValves();
                PublishFurnace(change);
                moved = true;
            }
        }

        for (int i = 0; i < _controls.Appliances.Length; i++)
        {
            moved |= _controls.Appliances[i].Sense(_plant.Sensed_K(i, Now));
            moved |= _controls.Appliances[i].Update(FlameDelivery_Pa(), _time_s, AlgebraicState.HighestFeed_Pa);
        }

        foreach (HeaterControl heater in _controls.Heaters) moved |= heater.Sense(Now.Air_K);

        // Heaters share what the breaker leaves, which changes with the battery's charge.
        if (moved) OpenValves();
        else if (_controls.Heaters.Length > 0) ShareShorePower();
        return moved;
    }

    private void OpenValves()
    {
        bool moved = _controls.Furnace is { } furnace && _plant.Supply.Set(Plant.FurnaceLoad, furnace.ValveOpen);
        for (int i = 0; i < _controls.Appliances.Length; i++)
        {
            moved |= _plant.Supply.Set(Plant.FurnaceLoad + 1 + i, _controls.Appliances[i].ValveOpen);
            _inputs.Electric_W[i] = _controls.Appliances[i].Electric_W;
        }

        if (_controls.Power?.Generator is { } generator) moved |= _plant.Supply.Set(_plant.GeneratorLoad, generator.Runs);
        if (_controls.Heaters.Length > 0) ShareShorePower();
        if (moved) Exchange();
    }

    private void ShareShorePower() => _inputs.OtherHeat_W = _controls.OtherHeat_W(_rig.Site.Hookup ? ShorePower_W() : 0);

    // Shore power used beside the heaters, which get what is left.
    private double ShorePower_W()
    {
        double sum_W = _controls.Power?.ShoreDraw_W(Battery_K()) ?? 0;
        foreach (double appliance_W in _inputs.Electric_W) sum_W += appliance_W;
        for (int i = 0; i < _frost.Length; i++)
        {
            if (_rig.Cylinders[i].Blanket is { Supply: BlanketSupply.ShorePower }) sum_W += _inputs.Blanket_W[i];
        }

        return sum_W;
    }

    // Returns whether any switched.
    private bool SwitchBlankets()
    {
        bool switched = false;
        for (int i = 0; i < _frost.Length; i++)
        {
            if (_controls.Blankets[i] is not { } blanket) continue;
            bool before = _inputs.Blanket_W[i] > 0;
            double wall_K = _plant.Covered_K(Now, _inputs, i);
            blanket.Update(wall_K);
            _inputs.Blanket_W[i] = blanket.Power_W;
            if (blanket.On == before) continue;
            switched = true;
            Exchange();
            Publish(blanket.On ? EventKind.BlanketOn : EventKind.BlanketOff, wall_K, i);
        }

        return switched;
    }

    // Delivery pressure at the flames: infinite where the demand is met in full, because it is then above every limit.
    private double FlameDelivery_Pa() => AlgebraicState.Point.IsFull ? double.PositiveInfinity : AlgebraicState.Point.Delivery_Pa;

    private void PublishFurnace(FurnaceChange change)
    {
        switch (change)
        {
            case FurnaceChange.Lit:
                Publish(EventKind.BurnerOn, _publisher.Delivery_Pa());
                break;
            case FurnaceChange.Out:
                _occupants.NoteChange();
                Publish(EventKind.BurnerOff, Now.Air_K);
                break;
            case FurnaceChange.IgnitionFailed:
                Publish(EventKind.IgnitionFailed, _publisher.Delivery_Pa());
                break;
            case FurnaceChange.FlameLost:
                if (_controls.Furnace!.HasProved(_time_s)) _occupants.NoteChange();
                Publish(EventKind.FlameLost, _publisher.Delivery_Pa());
                break;
            case FurnaceChange.LockedOut:
                _means.LockOut();
                Publish(EventKind.Lockout, Now.Air_K);
                if (_occupants.NoteLockout()) Publish(EventKind.ResetsGivenUp, Now.Air_K);
                break;
            case FurnaceChange.Retries:
                Publish(EventKind.LockoutRetry, Now.Air_K);
                break;
            case FurnaceChange.Reset:
                _occupants.NoteReset();
                Publish(EventKind.LockoutReset, Now.Air_K);
                break;
        }
    }

    private void WatchSupply()
    {
        if (_controls.Supply.Update(_controls.Waiting(), _plant.Supply.LowestSatisfied_frac(AlgebraicState.Point)))
            Publish(_controls.Supply.Undersupplied ? EventKind.ShortBegins : EventKind.ShortEnds, AlgebraicState.FeedPressure_Pa);
        if (_controls.HasReserve && AlgebraicState.Point.Flow_kg_s > 0 && _controls.Reserve.Update(AlgebraicState.Reserve_frac))
            Publish(_controls.Reserve.IsHigh ? EventKind.ReserveFeeds : EventKind.ServiceAlone, Now.Propane_kg[ChangeoverManifold.Service]);
    }

    private void ChangeCylinder()
    {
        if (_controls.Change is not { } change || _plant.Manifold is not OneOpenManifold manifold) return;
        if (_time_s >= change.At_s)
        {
            int next = change.Next(manifold.Open, _inputs.HasLiquid, _time_s);
            if (next >= 0)
            {
                double left_kg = Now.Propane_kg[manifold.Open];
                manifold.Open = next;
                Exchange();
                Publish(EventKind.CylinderChanged, left_kg, next);
                _occupants.NoteChange();
                _controls.Furnace?.ResetAt(_occupants.Resets_s(_time_s));
                WatchSupply();
            }
        }

        change.Watch(_controls.Supply.Undersupplied, _time_s, _clock.At_s(0), cold: !_controls.Warm.IsHigh);
    }

    private void CheckContents()
    {
        for (int i = 0; i < _frost.Length; i++)
        {
            if (AlgebraicState.Cylinders.Contents[i].HasLiquid != _inputs.HasLiquid[i])
            {
                _inputs.HasLiquid[i] = !_inputs.HasLiquid[i];
                _hold.ChangePhase(_time_s);
                Evaluate();
                Publish(_inputs.HasLiquid[i] ? EventKind.LiquidAgain : EventKind.LiquidGone, Now.Propane_kg[i], i);
            }

            double hottest_K = _plant.Hottest_K(Now, _inputs, i);
            if (_controls.Hot[i].Update(hottest_K))
                Publish(_controls.Hot[i].IsHigh ? EventKind.CylinderHot : EventKind.CylinderCooled, hottest_K, i);
            if (AlgebraicState.Cylinders.Contents[i].LiquidVolume_m3 >= _rig.Cylinders[i].Volume_m3) End(RunEnd.LiquidFull, EventKind.LiquidFull, i);
            else if (AlgebraicState.CylinderPressure_Pa(i) >= _rig.Cylinders[i].ReliefPressure_Pa
                || (_inputs.HasLiquid[i] && EventFunctions.PastLine_Pa(Now.Cylinder_K[i]) >= 0)) End(RunEnd.ReliefPressure, EventKind.ReliefPressure, i);
        }
    }

    private void End(RunEnd end, EventKind kind, int cylinder)
    {
        if (_ended is not null) return;
        _ended = end;
        Publish(kind, Now.Cylinder_K[cylinder], cylinder);
    }
}
