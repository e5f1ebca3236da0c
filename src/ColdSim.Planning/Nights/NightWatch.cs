using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>Observes a run and splits it into nights.</summary>
/// <param name="scenario">The scenario to run.</param>
/// <param name="calendar">Its nights.</param>
/// <param name="recorder">Receives every step as well, in the run's own time.</param>
/// <param name="detail">Which events are kept.</param>
internal sealed class NightWatch(Scenario scenario, NightCalendar calendar, IRunObserver recorder, RunDetail detail) : IRunObserver
{
    // A thousandth of a step, less than a second, is near enough for a report.
    private const double FiftyPart = 1e-3;

    private readonly List<NightTally> _nights = [];
    private readonly List<ReportedEvent> _events = new(detail >= RunDetail.Events ? 256 + (int)(calendar.Duration_s / 120) : 0);
    private readonly HarmWatch _harm = new(scenario.Rig, scenario.Criteria);
    private readonly StepRecord _shifted = StepRecord.For(scenario.Rig);
    private readonly StepRecord _part = StepRecord.For(scenario.Rig);
    private readonly string[] _nodes = [.. scenario.Rig.Nodes().Select(n => n.Name)];
    private NightTally _night = Tally(scenario, 0);
    private double _end_s = double.NegativeInfinity;
    private double _dawn_s;
    private bool _dryPublished;
    private bool _fiftyPublished;
    private bool _voltageGone;

    /// <inheritdoc/>
    public bool ReadsDelivery => detail > RunDetail.Nights || recorder.ReadsDelivery;

    /// <summary>When the leg that is running began. [s]</summary>
    public double Offset_s { get; private set; }

    /// <summary>Cancelled as soon as a night is known not to hold; null where the run goes on.</summary>
    public CancellationTokenSource? Failed { get; init; }

    public IReadOnlyList<NightTally> Nights => _nights;

    public IReadOnlyList<ReportedEvent> Events => _events;

    /// <summary>Notes that a leg begins.</summary>
    public void Begin(Leg leg)
    {
        Offset_s = (leg.From - scenario.Start).TotalSeconds;
        (_harm.FurnaceOut, _harm.OnTheRoad) = (leg.FurnaceOut, leg.OnTheRoad);
    }

    public void Stepped(StepRecord record)
    {
        if (Offset_s == 0)
        {
            Take(record);
            return;
        }

        _shifted.SetShifted(record, Offset_s);
        Take(_shifted);
    }

    private Snapshot Shifted(in Snapshot m) => m with { Time_s = m.Time_s + Offset_s };

    private void Take(StepRecord record)
    {
        recorder.Stepped(record);
        if (record.From.Time_s >= _end_s) Turn(calendar.NightOf(record.From.Time_s));
        if (record.To.Time_s <= _end_s)
        {
            Count(record);
            return;
        }

        // A step over noon is cut there; steps are short, so what changes within one is assumed to change linearly.
        double end_s = _end_s;
        double x = (end_s - record.From.Time_s) / (record.To.Time_s - record.From.Time_s);
        Snapshot noon = record.To with
        {
            Time_s = end_s,
            Inside_K = record.Inside_K(x),
            Propane_kg = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg),
            Cylinders = Between(record, x),
        };
        _part.SetPart(record, record.From, noon);
        Count(_part);
        Turn(calendar.NightOf(end_s));
        _part.SetPart(record, noon, record.To);
        Count(_part);
    }

    public void Happened(in SimulationEvent happened, in Snapshot snapshot) => Take(happened, Offset_s == 0 ? snapshot : Shifted(snapshot));

    /// <summary>Records a change made to cylinders between legs.</summary>
    /// <param name="cylinders">Their places in the rig.</param>
    /// <param name="after">The state afterwards.</param>
    /// <param name="time_s">When. [s]</param>
    public void Changed(IReadOnlyList<int> cylinders, RigState after, double time_s)
    {
        _dryPublished = false;
        foreach (int i in cylinders)
        {
            _harm.Filled(i);
            if (!Keeps(ReportedKind.CylinderFilled)) continue;
            CylinderState cylinder = after.Cylinders[i];
            _events.Add(new ReportedEvent(
                scenario.Start.AddSeconds(time_s), ReportedKind.CylinderFilled, after.Air_K, cylinder.Liquid_K, double.NaN,
                after.Cylinders.Sum(c => c.Propane_kg))
            { Cylinder = i, Value = cylinder.Propane_kg });
        }
    }

    private void Take(in SimulationEvent happened, in Snapshot snapshot)
    {
        NightTally night = At(calendar.NightOf(snapshot.Time_s));
        night.Count(happened, snapshot.Time_s);
        _harm.Happened(happened, snapshot.Time_s, night.Harm);
        if (happened.Kind is EventKind.VoltageGone or EventKind.VoltageBack) _voltageGone = happened.Kind == EventKind.VoltageGone;
        switch (happened.Kind)
        {
            case EventKind.LiquidAgain:
                _dryPublished = false;
                return;
            case EventKind.WaterFreezes or EventKind.WaterSolid or EventKind.WaterThawed:
                night.Consumers.Happened(happened.Kind, happened.Cylinder, snapshot.Time_s);
                Report(Kind(happened.Kind), snapshot, 0, happened.Value, _nodes[happened.Cylinder]);
                return;
            case EventKind.HeatCalled or EventKind.HeatSatisfied or EventKind.BlanketOn or EventKind.BlanketOff or EventKind.CylinderCooled
                or EventKind.DampGone:
                return;
        }

        Report(_voltageGone && happened.Kind == EventKind.ShortEnds ? ReportedKind.ShortStops : Kind(happened.Kind), snapshot, happened.Cylinder, happened.Value);
    }

    private void Turn(int number)
    {
        _fiftyPublished = false;
        _night = At(number);
        _end_s = calendar.End_s(number);
        _dawn_s = calendar.ClockIn_s(number, scenario.Criteria.Dawn);
    }

    private void Count(StepRecord record)
    {
        NightTally night = _night;
        if (_dawn_s >= record.From.Time_s && _dawn_s <= record.To.Time_s)
        {
            double x = (_dawn_s - record.From.Time_s) / (record.To.Time_s - record.From.Time_s);
            night.PropaneAtDawn_kg = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg);
            night.EachAtDawn = Between(record, x);
        }

        WatchFifty(record);
        night.Add(record);
        bool wasDry = !double.IsNaN(night.Harm.Dry_s);
        _harm.Add(record, night.Harm);
        if (!wasDry && !double.IsNaN(night.Harm.Dry_s))
        {
            if (!_dryPublished) Report(ReportedKind.Dry, record.From, record.From.InUse, record.From.Propane_kg);
            _dryPublished = true;
        }

        // Nothing that fails a night goes away again.
        if (Failed is not null && night.Harm.Judge(scenario.Criteria).Verdict != Verdict.Holds) Failed.Cancel();
    }

    // Once a night, so that a thermostat's swing about 50 °F does not fill the list.
    private void WatchFifty(StepRecord record)
    {
        double from_K = record.From.Inside_K, to_K = record.To.Inside_K;
        if (_fiftyPublished || !(from_K > CoolDown.Fifty_K && to_K <= CoolDown.Fifty_K)) return;
        double low = 0, high = 1;
        while (high - low > FiftyPart)
        {
            double middle = 0.5 * (low + high);
            if (record.Inside_K(middle) > CoolDown.Fifty_K) low = middle;
            else high = middle;
        }

        double x = high;
        Report(
            ReportedKind.InsideFifty,
            record.To with { Time_s = record.From.Time_s + x * (record.To.Time_s - record.From.Time_s), Inside_K = CoolDown.Fifty_K }, 0, CoolDown.Fifty_K);
        _fiftyPublished = true;
    }

    private CylinderReadings Between(StepRecord record, double x)
    {
        CylinderReadings readings = record.To.Cylinders;
        for (int i = 0; i < scenario.Rig.Cylinders.Count; i++)
        {
            CylinderReading from = record.From.Cylinder(i), to = readings[i];
            readings[i] = to with
            {
                Propane_kg = from.Propane_kg + x * (to.Propane_kg - from.Propane_kg),
                NormalButane_kg = from.NormalButane_kg + x * (to.NormalButane_kg - from.NormalButane_kg),
                Isobutane_kg = from.Isobutane_kg + x * (to.Isobutane_kg - from.Isobutane_kg),
            };
        }

        return readings;
    }

    private NightTally At(int number)
    {
        while (_nights.Count <= number) _nights.Add(Tally(scenario, calendar.Begin_s(_nights.Count)));
        return _nights[number];
    }

    private static NightTally Tally(Scenario scenario, double from_s)
        => new(scenario.Rig, new GasConsumerTally(scenario.Rig), from_s);

    private void Report(ReportedKind kind, in Snapshot m, int cylinder, double value, string? node = null)
    {
        if (!Keeps(kind)) return;
        _events.Add(new ReportedEvent(
            scenario.Start.AddSeconds(m.Time_s), kind, m.Inside_K, m.Liquid_K, m.CylinderPressure_Pa, m.Propane_kg)
        { Cylinder = cylinder, Value = value, Node = node });
    }

    private bool Keeps(ReportedKind kind) => detail >= RunDetail.Events || (detail == RunDetail.Answer && EventKinds.Of(kind).Fold != EventFold.OnlyCounted);

    private static ReportedKind Kind(EventKind kind) => kind switch
    {
        EventKind.BurnerOn => ReportedKind.BurnerOn,
        EventKind.BurnerOff => ReportedKind.BurnerOff,
        EventKind.IgnitionFailed => ReportedKind.IgnitionFailed,
        EventKind.FlameLost => ReportedKind.FlameLost,
        EventKind.Lockout => ReportedKind.Lockout,
        EventKind.LockoutRetry => ReportedKind.LockoutRetry,
        EventKind.LockoutReset => ReportedKind.LockoutReset,
        EventKind.ShortBegins => ReportedKind.ShortBegins,
        EventKind.ShortEnds => ReportedKind.ShortEnds,
        EventKind.LiquidGone => ReportedKind.LiquidGone,
        EventKind.InsideFreezing => ReportedKind.InsideFreezing,
        EventKind.InsideThawed => ReportedKind.InsideThawed,
        EventKind.LiquidFull => ReportedKind.LiquidFull,
        EventKind.ReliefPressure => ReportedKind.ReliefPressure,
        EventKind.WeatherEnds => ReportedKind.WeatherEnds,
        EventKind.CylinderChanged => ReportedKind.CylinderChanged,
        EventKind.ReserveFeeds => ReportedKind.ReserveFeeds,
        EventKind.ServiceAlone => ReportedKind.ServiceAlone,
        EventKind.CylinderHot => ReportedKind.CylinderHot,
        EventKind.WaterFreezes => ReportedKind.WaterFreezes,
        EventKind.WaterSolid => ReportedKind.WaterSolid,
        EventKind.WaterThawed => ReportedKind.WaterThawed,
        EventKind.DampSettles => ReportedKind.DampSettles,
        EventKind.VoltageGone => ReportedKind.VoltageGone,
        EventKind.VoltageBack => ReportedKind.VoltageBack,
        EventKind.GeneratorStarts => ReportedKind.GeneratorStarts,
        EventKind.GeneratorStops => ReportedKind.GeneratorStops,
        EventKind.GeneratorStarved => ReportedKind.GeneratorStarved,
        EventKind.WokenByCold => ReportedKind.WokenByCold,
        EventKind.ResetsGivenUp => ReportedKind.ResetsGivenUp,
        EventKind.BatteryFreezes => ReportedKind.BatteryFreezes,
        EventKind.BatteryThawed => ReportedKind.BatteryThawed,
        EventKind.BatteryCutOut => ReportedKind.BatteryCutOut,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind that is reported."),
    };
}
