using ColdSim.Model.Electrical;
using ColdSim.Model.Numerics;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Engine;

/// <summary>The 12 V side during a run: adds up what draws and what feeds, steps the battery's charge, and says when something switches.</summary>
/// <remarks>
/// Nothing of gas or heat depends on the charge within a step, so the charge is stepped beside them, by the same Runge–Kutta rule, with
/// the battery's temperature being that of the air around it.
/// </remarks>
internal sealed class PowerSide
{
    private const double EventTolerance_s = 1e-2;

    // A generator's gas follows its load in steps no finer than this part of it, so that the supply is not solved again at each.
    private const double GasStep_frac = 0.01;

    // So much warmer than where they began a frozen battery has thawed, and a bank that the cold had cut out gives again (assumptions).
    private const double Thawed_K = 0.5, GivesAgain_K = 2;

    private readonly PowerSpecification _power;
    private readonly SiteSpecification _site;
    private readonly BatteryBody _battery;
    private readonly PowerControl _control;
    private readonly bool[] _isSwitchedOn;
    private readonly double[] _drawn_W;
    private readonly double _fan_W;
    private readonly double _generator_W;
    private double _load_W, _solar_W, _converter_W;
    private double _before_J;

    // Load if there were voltage.
    private double _waiting_W;
    private double _from_K, _step_s;
    private Quartic _over_K;

    // How long after the start of the step the furnace's fan runs.
    private double _fanRuns_s = double.PositiveInfinity;
    private double _time_s;

    // What flows until a part of the step, kept until something that decides it changes; NaN where nothing is kept.
    private PowerIntegrals _integrals;
    private double _flownFor_s = double.NaN;

    public PowerSide(Rig rig)
    {
        _power = rig.Power!;
        _site = rig.Site;
        _battery = new BatteryBody(_power.Battery);
        _control = new PowerControl(_power.Battery);
        _isSwitchedOn = new bool[_power.Loads.Count];
        _drawn_W = new double[_power.Places];
        _fan_W = rig.FurnaceFan_W;
        IsInside = _power.Battery.Inside && rig.Coach is not null;
        Generator = _power.Generator is null ? null : new GeneratorControl(_power.Generator);

        // What the converter can draw from the generator limits what it gives.
        double room_W = _power.Generator is { } set ? Math.Max(0, set.Power_W(rig.Site.Elevation_m) - set.OtherLoad_W) : 0;
        _generator_W = Math.Min(_power.Converter.Rated_W, room_W / _power.Converter.Mains_W(1));
    }

    public GeneratorControl? Generator { get; }

    /// <summary>Charge. [J]</summary>
    public double Stored_J { get; private set; }

    /// <summary>Whether there is voltage.</summary>
    public bool Live => _control.Live;

    /// <summary>Whether a load that ends changes only what the battery gives: neither a generator's gas nor what is left of shore power.</summary>
    public bool BatteryCarriesLoads => !_site.Hookup && Generator is not { Runs: true };

    // Its starter needs voltage, and beside shore power it rests.
    private bool MayStart => Live && !_site.Hookup;

    /// <summary>Whether acid in the battery is frozen: it takes nothing and gives nothing.</summary>
    public bool IsFrozen { get; private set; }

    /// <summary>Whether it is too cold for its electronics to let it give anything.</summary>
    public bool IsCutOut { get; private set; }

    public PowerState State() => new(Stored_J, Live, IsFrozen, IsCutOut);

    /// <summary>Every window of the clock at whose edges something switches.</summary>
    public IEnumerable<ClockWindow> Windows()
        => _power.Loads.SelectMany(l => l.Hours).Concat(_power.Generator?.Hours ?? []);

    public void SetClock(double clock_s)
    {
        for (int i = 0; i < _isSwitchedOn.Length; i++) _isSwitchedOn[i] = ClockWindow.AnyContains(_power.Loads[i].Hours, clock_s);
        Generator?.SetClock(clock_s);
    }

    /// <summary>Sets the initial state: that of an earlier run, or the specification's.</summary>
    public void Begin(PowerState? from)
    {
        Stored_J = from?.Stored_J ?? _power.Battery.InitialCharge_frac * _power.Battery.Rated_J;
        if (from is null) return;
        (IsFrozen, IsCutOut) = (from.IsFrozen, from.IsCutOut);
        if (!from.Live) _control.Begin(false);
    }

    /// <summary>Sets the solar power from the weather at the middle of a cell of the step grid.</summary>
    public void TakeSun(in WeatherSample middle, DateTimeOffset time)
    {
        (_solar_W, _flownFor_s) = (0, double.NaN);
        if (_power.Panels.Count == 0 || middle.LevelSun_W_m2 <= 0) return;
        SunAngles? sun = GlobalHorizontalIrradiance.Position(time, _site);
        int day = time.ToUniversalTime().DayOfYear;
        for (int i = 0; i < _power.Panels.Count; i++)
        {
            SolarPanelSpecification panel = _power.Panels[i];
            double plane_W_m2 = panel.PlaneSun_W_m2(middle.LevelSun_W_m2, sun, day, _site.GroundAlbedo_frac);
            _solar_W += panel.Power_W(plane_W_m2, middle.Air_K);
        }
    }

    /// <summary>Sets the present loads and sources.</summary>
    /// <param name="fanRuns">Whether the furnace's fan runs.</param>
    /// <param name="blankets_W">What the blankets on the battery draw. [W]</param>
    /// <param name="fanRuns_s">For how long the fan still runs; infinite where it does not stop by itself. [s]</param>
    public void TakeLoads(bool fanRuns, double blankets_W, double fanRuns_s = double.PositiveInfinity)
    {
        _fanRuns_s = fanRuns_s;
        _drawn_W[PowerSpecification.FanPlace] = Live && fanRuns ? _fan_W : 0;
        _drawn_W[PowerSpecification.BlanketsPlace] = Live ? blankets_W : 0;
        _load_W = _drawn_W[PowerSpecification.FanPlace] + _drawn_W[PowerSpecification.BlanketsPlace];
        for (int i = 0; i < _isSwitchedOn.Length; i++)
        {
            _drawn_W[PowerSpecification.FirstLoadPlace + i] = Live && _isSwitchedOn[i] ? _power.Loads[i].Power_W : 0;
            _load_W += _drawn_W[PowerSpecification.FirstLoadPlace + i];
        }

        _flownFor_s = double.NaN;
        _converter_W = _site.Hookup ? _power.Converter.Rated_W : Generator is { Runs: true } ? _generator_W : 0;
    }

    /// <summary>Freezing and thawing, by charge and temperature now.</summary>
    /// <returns>Whether it froze or thawed.</returns>
    public bool SwitchFrozen(double battery_K)
    {
        bool before = IsFrozen;
        IsFrozen = battery_K < _battery.FreezingPoint_K(Stored_J) + (before ? Thawed_K : 0);
        if (IsFrozen != before) _flownFor_s = double.NaN;
        return IsFrozen != before;
    }

    /// <summary>Cutting out and in by the cold, at a temperature now.</summary>
    /// <returns>Whether it cut out or in.</returns>
    public bool SwitchCutOut(double battery_K)
    {
        bool before = IsCutOut;
        IsCutOut = battery_K < _power.Battery.LowestDischarge_K + (before ? GivesAgain_K : 0);
        return IsCutOut != before;
    }

    /// <summary>Gas that the generator takes by its load now, as gross heat. [W]</summary>
    /// <param name="before_W">Value used before; kept while it is close enough. [W]</param>
    public double GeneratorInput_W(double before_W)
    {
        GeneratorSpecification set = _power.Generator!;
        BusFlow flow = BusFlow.Of(_load_W, _solar_W, _converter_W, Acceptance_W(Stored_J, _from_K));
        double now_W = set.Input_W(set.OtherLoad_W + (_site.Hookup ? 0 : _power.Converter.Mains_W(flow.Converter_W)));
        return Math.Abs(now_W - before_W) <= GasStep_frac * before_W ? before_W : now_W;
    }

    /// <summary>Sets the battery's temperature over a step.</summary>
    /// <param name="from_K">Air around it at its start. [K]</param>
    /// <param name="over_K">How that air departs from it over the step. [K]</param>
    /// <param name="step_s">Length of the step; 0 for its start alone. [s]</param>
    public void SetTemperatures(double from_K, in Quartic over_K, double step_s)
    {
        if (from_K == _from_K && step_s == _step_s && over_K == _over_K) return;
        (_from_K, _over_K, _step_s, _flownFor_s) = (from_K, over_K, step_s, double.NaN);
    }

    private double Battery_K(double part_s) => part_s > 0 && _step_s > 0 ? _from_K + _over_K.At(part_s / _step_s) : _from_K;

    /// <summary>The next time that the relay or the generator waits for; infinite where neither does. [s]</summary>
    /// <param name="time_s">Now. [s]</param>
    public double NextTimer_s(double time_s)
    {
        double next_s = !Live && _control.MayCloseFrom_s > time_s ? _control.MayCloseFrom_s : double.PositiveInfinity;
        if (Generator is null) return next_s;
        if (Generator.MaySwitchFrom_s > time_s) next_s = Math.Min(next_s, Generator.MaySwitchFrom_s);
        return Math.Min(next_s, Generator.RetryAt_s);
    }

    /// <summary>When, after the step's start, something switches; its length where nothing does. [s]</summary>
    /// <param name="time_s">Start of the step. [s]</param>
    /// <param name="step_s">Its length. [s]</param>
    public double ToEvent_s(double time_s, double step_s)
    {
        _time_s = time_s;
        double first_s = step_s;
        CutOut cutOut = new(this);
        if (cutOut.At(step_s) is > 0 and double past_K)
            first_s = Math.Min(step_s, BracketedRoot.Root(ref cutOut, 0, Math.Min(0, cutOut.At(0)), step_s, past_K, EventTolerance_s));
        for (int point = 0; point < (Generator is null ? 1 : 2); point++)
        {
            Crossing crossing = new(this, point);
            double atEnd = crossing.At(step_s);
            if (!(atEnd > 0)) continue;
            double atStart = crossing.At(0);
            first_s = Math.Min(first_s, atStart > 0 ? Math.Min(step_s, EventTolerance_s)
                : BracketedRoot.Root(ref crossing, 0, atStart, step_s, atEnd, EventTolerance_s));
        }

        return first_s;
    }

    /// <summary>Accepts a step.</summary>
    public PowerIntegrals Accept(double step_s)
    {
        Flow(step_s);
        (_before_J, Stored_J, _flownFor_s) = (Stored_J, _integrals.Stored_J, double.NaN);
        return _integrals;
    }

    /// <summary>Voltage goes or comes back.</summary>
    /// <param name="battery_K">Temperature of the air around it. [K]</param>
    /// <param name="hasFurnace">Whether a furnace's fan would run if there were voltage.</param>
    /// <param name="blankets_W">What the blankets would draw. [W]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <returns>Whether it did.</returns>
    public bool SwitchVoltage(double battery_K, bool hasFurnace, double blankets_W, double time_s)
    {
        double load_W = _load_W;
        if (!Live)
        {
            load_W = (hasFurnace ? _fan_W : 0) + blankets_W;
            for (int i = 0; i < _isSwitchedOn.Length; i++) load_W += _isSwitchedOn[i] ? _power.Loads[i].Power_W : 0;
            _waiting_W = load_W;
        }

        return _control.Update(Usable_J(Stored_J, battery_K), load_W - _solar_W - _converter_W, time_s);
    }

    /// <summary>The generator starts or stops.</summary>
    /// <returns>Whether it did.</returns>
    public bool SwitchGenerator(double battery_K, double delivery_Pa, double time_s)
        => Generator is not null && Generator.Update(_battery.Usable_frac(Stored_J, battery_K), MayStart, delivery_Pa, time_s);

    /// <summary>What the converter draws from the hookup now; 0 without one. [W]</summary>
    /// <param name="battery_K">The battery. [K]</param>
    public double ShoreDraw_W(double battery_K)
        => _site.Hookup ? _power.Converter.Mains_W(BusFlow.Of(_load_W, _solar_W, _converter_W, Acceptance_W(Stored_J, battery_K)).Converter_W) : 0;

    /// <summary>Whether the battery is in the coach.</summary>
    public bool IsInside { get; }

    /// <summary>Temperature of the air around the battery. [K]</summary>
    public double AirOfBattery_K(double inside_K, double outside_K) => IsInside ? inside_K : outside_K;

    /// <summary>Charge per rated, and usable charge per that of a full bank.</summary>
    public (double Charge_frac, double Usable_frac) Charge(double battery_K)
        => (Stored_J / _power.Battery.Rated_J, _battery.Usable_frac(Stored_J, battery_K));

    /// <summary>Writes the means of a step.</summary>
    public void Note(PowerUse use, in PowerIntegrals integrals, double step_s)
    {
        double battery_K = Battery_K(step_s);
        _drawn_W.AsSpan().CopyTo(use.Load_W);
        use.Load_W[PowerSpecification.FanPlace] *= Math.Min(1, _fanRuns_s / step_s);
        use.Solar_W = integrals.Solar_J / step_s;
        use.Shore_W = _site.Hookup ? integrals.Converter_J / step_s : 0;
        use.Generator_W = _site.Hookup ? 0 : integrals.Converter_J / step_s;
        use.ChargeBefore_frac = _before_J / _power.Battery.Rated_J;
        (use.Charge_frac, use.Usable_frac) = Charge(battery_K);
        (use.Live, use.IsFrozen, use.TooCold, use.GeneratorRuns) = (Live, IsFrozen, _battery.IsTooColdToCharge(battery_K), Generator is { Runs: true });
    }

    private double Usable_J(double stored_J, double battery_K) => IsFrozen || IsCutOut ? -1 : _battery.Usable_J(stored_J, battery_K);

    private double Acceptance_W(double stored_J, double battery_K) => IsFrozen ? 0 : _battery.Acceptance_W(stored_J, battery_K);

    // The charge after a part of the step, and what flowed until then.
    private void Flow(double part_s)
    {
        if (part_s == _flownFor_s) return;
        _flownFor_s = part_s;
        if (part_s <= _fanRuns_s)
        {
            _integrals = Flow(Stored_J, 0, part_s, _load_W);
            return;
        }

        PowerIntegrals withFan = Flow(Stored_J, 0, _fanRuns_s, _load_W);
        PowerIntegrals without = Flow(withFan.Stored_J, _fanRuns_s, part_s - _fanRuns_s, LoadAfter_W(part_s));
        _integrals = new PowerIntegrals(
            withFan.Solar_J + without.Solar_J, withFan.Converter_J + without.Converter_J, withFan.Load_J + without.Load_J, withFan.Loss_J + without.Loss_J,
            without.Stored_J);
    }

    private double LoadAfter_W(double part_s) => part_s <= _fanRuns_s ? _load_W : _load_W - _drawn_W[PowerSpecification.FanPlace];

    private PowerIntegrals Flow(double stored_J, double from_s, double length_s, double load_W)
    {
        double half_s = 0.5 * length_s, sixth_s = length_s / 6;
        double solar_J = 0, converter_J = 0, loss_J = 0, grown_J = 0;
        double k1_W = Stage(stored_J, 0, sixth_s);
        double k2_W = Stage(stored_J + (half_s * k1_W), half_s, 2 * sixth_s);
        double k3_W = Stage(stored_J + (half_s * k2_W), half_s, 2 * sixth_s);
        Stage(stored_J + (length_s * k3_W), length_s, sixth_s);
        return new PowerIntegrals(solar_J, converter_J, load_W * length_s, loss_J, stored_J + grown_J);

        double Stage(double at_J, double at_s, double weight_s)
        {
            BusFlow flow = BusFlow.Of(load_W, _solar_W, _converter_W, Acceptance_W(at_J, Battery_K(from_s + at_s)));
            double gain_W = _battery.Gain_W(flow.Taken_W), drain_W = _battery.Drain_W(flow.Given_W);
            solar_J += weight_s * flow.Solar_W;
            converter_J += weight_s * flow.Converter_W;
            loss_J += weight_s * (flow.Taken_W - gain_W + drain_W - flow.Given_W);
            grown_J += weight_s * (gain_W - drain_W);
            return gain_W - drain_W;
        }
    }

    // Event function of the temperature: past the limit at which it cuts out or in.
    private readonly struct CutOut(PowerSide side) : IFunction
    {
        public double At(double part_s)
        {
            double above_K = side.Battery_K(part_s) - side._power.Battery.LowestDischarge_K - (side.IsCutOut ? GivesAgain_K : 0);
            return side.IsCutOut ? above_K : -above_K;
        }
    }

    // Event functions of the charge after a part of the step: voltage, then the generator.
    private readonly struct Crossing(PowerSide side, int point) : IFunction
    {
        public double At(double part_s)
        {
            side.Flow(part_s);
            double battery_K = side.Battery_K(part_s), stored_J = side._integrals.Stored_J;
            double load_W = side.Live ? side.LoadAfter_W(part_s) : side._waiting_W;
            return point == 0
                ? side._control.EventValue_J(side.Usable_J(stored_J, battery_K), load_W - side._solar_W - side._converter_W, side._time_s)
                : side.Generator!.EventValue_frac(side._battery.Usable_frac(stored_J, battery_K), side.MayStart, side._time_s);
        }
    }
}
