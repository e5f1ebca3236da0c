using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Numerics;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>One run of one rig through its weather, from its start to its end. Deterministic.</summary>
/// <remarks>
/// Between instants at which something switches, the continuous equations are stepped forward. Switches known ahead (clock hours,
/// purges, weather rows) are landed on; those found by the equations (the thermostat's band, a lost flame, the last liquid,
/// freezing) are located by stepping again to the instant itself. The loop allocates nothing.
/// </remarks>
public sealed class Simulation
{
    private const double Freezing_K = 273.15;
    private const double EventTolerance_s = 1e-2;

    // Past the last liquid the step still sees the equations with liquid; the ledger notices every joule of that.
    private const double LastLiquidTolerance_s = 1e-6;

    // Vapour left without liquid is drawn down in minutes, so the steps must be short while it flows.
    private const double VapourStep_s = 5;

    // A starved supply gives less with every tenth of a kelvin, which makes a small cylinder fast.
    private const double StarvedStep_s = 15;
    private const double LargestMove_K = 0.5;
    private const int StepsBetweenCancelChecks = 256;

    // A board or valve may move a few times at one instant; more means that two switches chase each other.
    private const int MovesAtOneInstant = 100;

    private readonly Rig _rig;
    private readonly WeatherSeries _weather;
    private readonly SimulationSettings _settings;
    private readonly Plant _plant;
    private readonly ThermostatControl? _thermostat;
    private readonly FurnaceControl? _furnace;
    private readonly DrawControl[] _draws;
    private readonly SupplyWatch _watch;
    private readonly RunClock _clock;
    private readonly LockoutReset _reset;
    private readonly Ledger _ledger;
    private readonly double _weatherStart_s;
    private readonly double _longestStep_s;

    private IRunObserver _observer = null!;
    private PlantState _state;
    private Standing _standing;
    private Moment? _moment;
    private FrostLayer _frost;
    private double _time_s;
    private double _stop_s;
    private double _nextClockEdge_s;
    private StepConditions _conditions;
    private double _conditionsUntil_s;
    private int _weatherRow;
    private WeatherSample _sample;
    private bool _hasLiquid;
    private bool _freezing;
    private RunEnd? _ended;

    /// <summary>Puts a rig into its weather.</summary>
    /// <param name="rig">What stands there.</param>
    /// <param name="weather">The weather; must cover the start.</param>
    /// <param name="settings">How to run.</param>
    /// <exception cref="ArgumentException">A start outside the weather, a furnace without coach or thermostat, or a step that is not above zero.</exception>
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

        (_rig, _weather, _settings, _ledger) = (rig, weather, settings, ledger);
        _plant = new Plant(rig);
        _thermostat = rig.Thermostat is null || rig.Coach is null ? null : new ThermostatControl(rig.Thermostat);
        _furnace = rig.Furnace is null ? null : new FurnaceControl(rig.Furnace);
        _draws = [.. rig.Draws.Select(d => new DrawControl(d))];
        _watch = new SupplyWatch(settings.Undersupplied_frac);
        List<ClockWindow> windows = [.. rig.Draws.SelectMany(d => d.Hours)];
        if (rig.Thermostat is not null) windows.Add(rig.Thermostat.NightHours);
        _clock = new RunClock(settings.Start, windows);
        _reset = new LockoutReset(rig.Occupancy, _clock);
        _weatherStart_s = (settings.Start - weather.First).TotalSeconds;
        _longestStep_s = Math.Min(settings.Step_s, _plant.LongestStep_s());
    }

    /// <summary>The regulator and cylinder of this run, for reading supply off its curves afterwards.</summary>
    internal Plant Plant => _plant;

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
        Stored start = _plant.StoredAt(_state);
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
            _ended ?? RunEnd.Complete, _time_s, _ledger.Close(start, _plant.StoredAt(_state), _plant.HeatingValue_J_kg));
    }

    private void Begin()
    {
        _sample = _weather.At(_weatherStart_s, ref _weatherRow);
        SetClock();
        double inside_K = _rig.Coach is null ? double.NaN
            : _rig.Coach.InitialTemperature_K ?? _thermostat?.SetPoint_K ?? _sample.Air_K;
        _state = new PlantState(
            _rig.Cylinder.Contents_kg,
            _rig.Cylinder.InitialTemperature_K ?? _sample.Air_K,
            inside_K,
            inside_K,
            _thermostat is null ? double.NaN : inside_K);
        _hasLiquid = _plant.Cylinder.Contents(_state.Propane_kg, _state.Cylinder_K).HasLiquid;
        _freezing = inside_K < Freezing_K;
        OpenValves();
        _standing = StandingAt(_state, AirPressure_Pa);
        TakeConditions();
    }

    // Held over a cell of the grid like everything around; before the first cell, the weather's.
    private double AirPressure_Pa => _conditions.AirPressure_Pa > 0 ? _conditions.AirPressure_Pa : _sample.Pressure_Pa;

    // The next time that must be landed on: the grid, the clock, the weather's rows, timers, the end.
    private double NextStop_s(double end_s)
    {
        double grid_s = (Math.Floor(_time_s / _settings.Step_s + 1e-9) + 1) * _settings.Step_s;
        double cell_s = grid_s - _time_s;
        double stop_s = Math.Min(_time_s + cell_s / Math.Ceiling(cell_s / LongestStep_s()), Math.Min(_nextClockEdge_s, end_s));
        stop_s = Math.Min(stop_s, _weather.NextRow_s(_weatherStart_s + _time_s, _weatherRow) - _weatherStart_s);
        if (_furnace is not null) stop_s = Math.Min(stop_s, _furnace.PhaseEnds_s);
        if (ThermostatWaits) stop_s = Math.Min(stop_s, _thermostat!.MayChangeFrom_s);
        foreach (DrawControl draw in _draws) stop_s = Math.Min(stop_s, draw.RetryAt_s);
        return stop_s;
    }

    // The thermostat is past its band and only its shortest time keeps it from switching.
    private bool ThermostatWaits
        => _thermostat is not null && _thermostat.MayChangeFrom_s > _time_s && _thermostat.Past_K(_state.Sensor_K) >= 0;

    private double LongestStep_s()
    {
        double longest_s = _longestStep_s;
        if (!_standing.Point.IsFull) longest_s = Math.Min(longest_s, StarvedStep_s);
        if (!_hasLiquid && _plant.Supply.Asked_kg_s > 0) longest_s = Math.Min(longest_s, VapourStep_s);
        double moved_K = Math.Abs(Warming_K_s()) * longest_s;
        return moved_K > LargestMove_K ? longest_s * LargestMove_K / moved_K : longest_s;
    }

    // How fast liquid and shell warm now, by the surroundings last taken.
    private double Warming_K_s() => _plant.Cylinder.Warming_K_s(
        _standing.Contents, _conditions.Cylinder.Heat_W(_state.Cylinder_K), _standing.Point.Flow_kg_s);

    private void Advance(double stop_s)
    {
        double step_s = stop_s - _time_s;
        _stop_s = stop_s;
        if (_time_s >= _conditionsUntil_s) TakeConditions();
        StepConditions conditions = _conditions with { HasLiquid = _hasLiquid, FurnaceLit = _furnace?.IsLit ?? false };
        PlantState next = _plant.Step(_state, conditions, step_s, out Fluxes flowed);
        Standing then = StandingAt(next, conditions.AirPressure_Pa);
        double toEvent_s = step_s;
        for (Guard guard = Guard.Thermostat; guard < Guard.None; guard++)
        {
            if (Past(guard, next, then) is > 0 and double past)
                toEvent_s = Math.Min(toEvent_s, Locate(guard, conditions, step_s, past));
        }

        if (toEvent_s < step_s)
        {
            step_s = toEvent_s;
            stop_s = _time_s + step_s;
            next = _plant.Step(_state, conditions, step_s, out flowed);
            then = StandingAt(next, conditions.AirPressure_Pa);
        }

        Moment from = _moment ?? Look();
        double asked_kg_s = AskedFor_kg_s();
        _ledger.Post(flowed);
        _frost = _frost.After(conditions.Cylinder, step_s);
        _state = next;
        _time_s = stop_s;
        _sample = _weather.At(_weatherStart_s + _time_s, ref _weatherRow);
        _standing = then;
        Moment to = Look();
        _moment = to;
        double heating = _plant.HeatingValue_J_kg;
        _observer.Stepped(new StepRecord(
            from, to, asked_kg_s * heating, flowed.Drawn_kg / step_s * heating, flowed.CylinderHeat_J / step_s, conditions.FurnaceLit, _watch.Undersupplied));
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
        double liquid_K = _state.Cylinder_K + half_s * Warming_K_s();
        _conditions = new StepConditions(
            CylinderFilm.At(_plant.Cylinder, middle, _state.Propane_kg, liquid_K, _frost),
            _plant.Coach?.At(middle, _state.Air_K) ?? default,
            middle.Air_K,
            middle.Pressure_Pa,
            _hasLiquid,
            FurnaceLit: false);
    }

    private double Locate(Guard guard, in StepConditions conditions, double step_s, double pastAtEnd)
    {
        double pastAtStart = Past(guard, _state, _standing);

        // Air pressure is held over a step, so at its edge a point may already be passed: it is now.
        if (pastAtStart > 0) return Math.Min(step_s, EventTolerance_s);
        Crossing crossing = new(this, guard, conditions);
        double part_s = FalsePosition.Root(
            ref crossing, 0, pastAtStart, step_s, pastAtEnd, guard == Guard.Liquid ? LastLiquidTolerance_s : EventTolerance_s);

        // Past its band before its shortest time is over, the thermostat switches when it is.
        return guard == Guard.Thermostat ? Math.Max(part_s, _thermostat!.MayChangeFrom_s - _time_s) : part_s;
    }

    private Standing StandingAt(in PlantState s, double air_Pa)
    {
        SupplyPoint point = _plant.SupplyAt(s, air_Pa, _hasLiquid, out CylinderContents contents);
        return new Standing(contents, point, air_Pa);
    }

    // How far a state is past a switching point; above 0 it switches.
    private double Past(Guard guard, in PlantState s, in Standing at) => guard switch
    {
        Guard.Thermostat => _thermostat is null || _thermostat.MayChangeFrom_s >= _stop_s ? -1 : _thermostat.Past_K(s.Sensor_K),
        Guard.Flame => at.Point.IsFull ? -1 : FlamePast_Pa(at.Point.Delivery_Pa),
        Guard.Supply => _plant.Supply.Asked_kg_s <= 0 || Waiting() ? -1 : _watch.Past_frac(_plant.Supply.WorstTaken_frac(at.Point)),
        Guard.Liquid => _hasLiquid ? -at.Contents.LiquidMass_kg : at.Contents.LiquidMass_kg,
        Guard.Freezing => _plant.Coach is null ? -1 : _freezing ? s.Air_K - Freezing_K : Freezing_K - s.Air_K,
        Guard.LiquidFull => at.Contents.LiquidVolume_m3 - _rig.Cylinder.Volume_m3,
        Guard.Relief => at.CylinderPressure_Pa - _rig.Cylinder.ReliefPressure_Pa,
        _ => -1,
    };

    // How far delivery is below what keeps some open flame alight.
    private double FlamePast_Pa(double delivery_Pa)
    {
        double past_Pa = _furnace is { IsLit: true } ? _rig.Furnace!.DropOutPressure_Pa - delivery_Pa : -1;
        for (int i = 0; i < _draws.Length; i++)
        {
            if (_draws[i].ValveOpen) past_Pa = Math.Max(past_Pa, _rig.Draws[i].MinimumPressure_Pa - delivery_Pa);
        }

        return past_Pa;
    }

    // Everything that switches at this instant, until nothing does.
    private void Switch()
    {
        if (_time_s >= _nextClockEdge_s) SetClock();
        CheckContents();
        for (int moves = 0; moves < MovesAtOneInstant && SwitchOnce(); moves++)
        {
        }

        WatchSupply();
        CheckFreezing();
    }

    private void SetClock()
    {
        double clock_s = _clock.At_s(_time_s);
        _thermostat?.SetClock(clock_s);
        foreach (DrawControl draw in _draws) draw.SetClock(clock_s);
        OpenValves();
        _nextClockEdge_s = _clock.NextEdge_s(_time_s);
        _moment = null;
    }

    private bool SwitchOnce()
    {
        bool moved = false;
        if (_thermostat is not null && _thermostat.Update(_state.Sensor_K, _time_s))
        {
            Tell(_thermostat.Calls ? EventKind.HeatCalled : EventKind.HeatSatisfied, _state.Air_K);
            moved = true;
        }

        if (_furnace is not null)
        {
            FurnaceChange change = _furnace.Update(_thermostat!.Calls, FlameDelivery_Pa(), _time_s, _reset);
            OpenValves();
            TellFurnace(change);
            moved |= change != FurnaceChange.None;
        }

        foreach (DrawControl draw in _draws) moved |= draw.Update(FlameDelivery_Pa(), _time_s);
        OpenValves();
        return moved;
    }

    private void OpenValves()
    {
        bool moved = _furnace is not null && _plant.Supply.Set(Plant.FurnaceLoad, _furnace.ValveOpen);
        for (int i = 0; i < _draws.Length; i++) moved |= _plant.Supply.Set(Plant.FurnaceLoad + 1 + i, _draws[i].ValveOpen);
        if (!moved) return;
        _standing = StandingAt(_state, AirPressure_Pa);
        _moment = null;
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
        if (_watch.Update(Waiting(), _plant.Supply.WorstTaken_frac(_standing.Point)))
            Tell(_watch.Undersupplied ? EventKind.ShortBegins : EventKind.ShortEnds, _standing.CylinderPressure_Pa);
    }

    private bool Waiting() => SupplyWatch.Waiting(_thermostat?.Calls ?? false, _furnace, _draws);

    private void CheckContents()
    {
        if (_standing.Contents.HasLiquid != _hasLiquid)
        {
            _hasLiquid = !_hasLiquid;
            _conditionsUntil_s = _time_s;
            _standing = StandingAt(_state, AirPressure_Pa);
            _moment = null;
            Tell(_hasLiquid ? EventKind.LiquidAgain : EventKind.LiquidGone, _state.Propane_kg);
        }

        if (_standing.Contents.LiquidVolume_m3 >= _rig.Cylinder.Volume_m3) End(RunEnd.LiquidFull, EventKind.LiquidFull);
        else if (_standing.CylinderPressure_Pa >= _rig.Cylinder.ReliefPressure_Pa) End(RunEnd.ReliefPressure, EventKind.ReliefPressure);
    }

    private void CheckFreezing()
    {
        if (_plant.Coach is null || _state.Air_K < Freezing_K == _freezing) return;
        _freezing = !_freezing;
        Tell(_freezing ? EventKind.InsideFreezing : EventKind.InsideThawed, _sample.Air_K);
    }

    private void End(RunEnd end, EventKind kind)
    {
        if (_ended is not null) return;
        _ended = end;
        Tell(kind, _state.Cylinder_K);
    }

    // A furnace that waits to be lit asks for its gas although its valve is shut.
    private double AskedFor_kg_s()
    {
        double asked_kg_s = _plant.Supply.Asked_kg_s;
        if (_furnace is { WantsGas: true, ValveOpen: false } && _thermostat!.Calls) asked_kg_s += _plant.Loads[Plant.FurnaceLoad].Full_kg_s;
        for (int i = 0; i < _draws.Length; i++)
        {
            if (_draws[i].WantsGas) asked_kg_s += _plant.Loads[Plant.FurnaceLoad + 1 + i].Full_kg_s;
        }

        return asked_kg_s;
    }

    private double Delivery_Pa()
        => _plant.Supply.Delivery_Pa(_standing.Point, _standing.Contents.Pressure_Pa, _standing.AirPressure_Pa, _state.Cylinder_K);

    private Moment Look() => new(
        _time_s,
        _sample.Air_K,
        _sample.Wind_m_s,
        _state.Air_K,
        _thermostat?.SetPoint_K ?? double.NaN,
        _state.Cylinder_K,
        _standing.CylinderPressure_Pa,
        Delivery_Pa(),
        _state.Propane_kg,
        _frost.Mass_kg_m2,
        _frost.Thickness_m);

    private void Tell(EventKind kind, double value) => _observer.Happened(new SimulationEvent(_time_s, kind, value), Look());

    private enum Guard
    {
        // These two look at the coach alone.
        Thermostat,
        Freezing,
        Flame,
        Supply,
        Liquid,
        LiquidFull,
        Relief,
        None,
    }

    // How far past a switching point the state is after part of the step.
    private readonly struct Crossing(Simulation run, Guard guard, StepConditions conditions) : IFunction
    {
        public double At(double part_s)
        {
            PlantState s = run._plant.Step(run._state, conditions, part_s, out _);
            return run.Past(guard, s, guard <= Guard.Freezing ? default : run.StandingAt(s, conditions.AirPressure_Pa));
        }
    }

    // What is in the cylinder and what flows from it at a state, worked out once for all who ask.
    private readonly record struct Standing(CylinderContents Contents, SupplyPoint Point, double AirPressure_Pa)
    {
        public double CylinderPressure_Pa => Contents.Pressure_Pa - AirPressure_Pa;
    }
}
