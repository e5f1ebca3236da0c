using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;

namespace ColdSim.Planning.Harms;

/// <summary>Reads the harm off the steps of a run, with what must be remembered from night to night. SI units.</summary>
/// <param name="rig">The rig of the whole run.</param>
/// <param name="criteria">What holding means.</param>
internal sealed class HarmWatch(Rig rig, NightCriteria criteria)
{
    // A step that lands on the freezing point leaves less ice than this by rounding alone.
    private const double SomeIce_frac = 1e-6;

    // Every step compares with them, and each reading of a quantity is a conversion.
    private static readonly double Settling_s = NightCriteria.Settling.Seconds, WithoutPause_s = NightCriteria.WithoutPause.Seconds;

    private readonly double _belowSetPoint_K = criteria.BelowSetPoint.Kelvins;
    private readonly bool _isHeated = rig is { Furnace: not null, Thermostat: not null, Coach: not null };
    private readonly double _legalFill_kg = rig.Cylinders.Sum(c => c.LegalFill_kg);
    private readonly double _halfBand_K = 0.5 * (rig.Thermostat?.Differential_K ?? 0);
    private readonly bool[] _liquidGone = new bool[rig.Cylinders.Count];
    private readonly bool[] _holdsWater = [.. rig.Nodes().Select((n, i) => i >= rig.Nodes().Count - rig.Water.Count && n.Water_kg > 0)];
    private readonly SetPointShortfall _shortfall = new();
    private readonly ColdSpell _cold = new();
    private readonly FurnaceStart _start = new();
    private double _setPoint_K = double.NaN;
    private double _rose_s = double.NegativeInfinity;
    private double _heatFailed_s = double.NegativeInfinity;
    private double _burnsSince_s = double.NaN;

    /// <summary>Whether the furnace is out and stays out.</summary>
    public bool FurnaceOut { get; set; }

    /// <summary>Whether the coach is on the road, where nothing burns by intention.</summary>
    public bool OnTheRoad { get; set; }

    /// <summary>Whether no cylinder has liquid.</summary>
    public bool AllLiquidGone => Array.TrueForAll(_liquidGone, gone => gone);

    /// <summary>Notes that a cylinder was filled.</summary>
    public void Filled(int cylinder) => _liquidGone[cylinder] = false;

    /// <summary>Notes an event.</summary>
    /// <param name="happened">The event.</param>
    /// <param name="time_s">When. [s]</param>
    /// <param name="night">The night it lies in.</param>
    public void Happened(in SimulationEvent happened, double time_s, HarmTally night)
    {
        if (happened.Kind is EventKind.LiquidGone or EventKind.LiquidAgain)
            _liquidGone[happened.Cylinder] = happened.Kind == EventKind.LiquidGone;
        else if (happened.Kind == EventKind.WaterFreezes && _holdsWater[happened.Cylinder] && double.IsNaN(night.WaterFreezes_s))
            night.WaterFreezes_s = time_s;
    }

    /// <summary>Adds a step, or the part of one that lies in a night.</summary>
    public void Add(StepRecord record, HarmTally night)
    {
        double from_s = record.From.Time_s, step_s = record.To.Time_s - from_s;
        bool isLive = record.Power is not { Live: false };
        if (record.Undersupplied)
        {
            night.Short_s += step_s;
            AddShortage(record, step_s, night);
            if (double.IsNaN(night.FirstShort_s)) (night.FirstShort_s, night.LeftAtFirstShort_frac) = (from_s, record.From.Propane_kg / _legalFill_kg);
            if (double.IsNaN(night.Dry_s) && AllLiquidGone) night.Dry_s = from_s;
        }

        if (!isLive)
        {
            night.VoltageGone_s += step_s;
            if (double.IsNaN(night.Flat_s)) night.Flat_s = from_s;
        }

        AddFreezing(record, step_s, night);
        bool lacksOther = !isLive || FurnaceOut || OnTheRoad;
        night.BelowSetPoint_K = Math.Max(night.BelowSetPoint_K, _shortfall.Below_K(record, lacksOther));
        if (_isHeated) AddHeat(record, step_s, night);
    }

    private static void AddShortage(StepRecord record, double step_s, HarmTally night)
    {
        switch (ShortageKinds.Of(record))
        {
            case ShortageKind.WeakFlame:
                night.WeakFlame_s += step_s;
                break;
            case ShortageKind.LockedOut:
                night.LockedOut_s += record.WouldLight_frac * step_s;
                night.NoFlame_s += (1 - record.WouldLight_frac) * step_s;
                break;
            default:
                night.NoFlame_s += step_s;
                break;
        }
    }

    private void AddFreezing(StepRecord record, double step_s, HarmTally night)
    {
        bool freezing = 0.5 * (record.From.Inside_K + record.To.Inside_K) < Harm.Freezing_K;
        if (record.To.Inside_K < night.Lowest_K) night.Lowest_K = record.To.Inside_K;
        for (int i = 0; i < _holdsWater.Length; i++)
        {
            if (!_holdsWater[i]) continue;
            if (record.Node_K[i] < night.Lowest_K) night.Lowest_K = record.Node_K[i];
            if (!(record.Ice_frac[i] > SomeIce_frac)) continue;
            freezing = true;
            if (double.IsNaN(night.WaterFreezes_s)) night.WaterFreezes_s = record.From.Time_s;
        }

        if (freezing) night.Freezing_s += step_s;
    }

    private void AddHeat(StepRecord record, double step_s, HarmTally night)
    {
        double from_s = record.From.Time_s, to_s = record.To.Time_s;
        double wanted_K = record.To.SetPoint_K, threshold_K = Math.Max(_belowSetPoint_K, _halfBand_K);

        // Whoever comes into a cold coach has just turned the thermostat up, and the end of the road is the same.
        bool arrives = double.IsNaN(_setPoint_K) && record.From.Inside_K < wanted_K - threshold_K;
        if (arrives || OnTheRoad || wanted_K > _setPoint_K) _rose_s = OnTheRoad ? to_s : from_s;
        _setPoint_K = wanted_K;
        if (OnTheRoad)
        {
            _start.Forget();
            _cold.End();
            _burnsSince_s = double.NaN;
            return;
        }

        double noHeat_s = _start.NoHeat_s(record, step_s);
        night.NoHeat_s += noHeat_s;
        if (noHeat_s > 0 && (FurnaceOut || (record.Furnace == FurnacePhase.Lockout && !record.Undersupplied)))
        {
            night.Stopped_s += noHeat_s;
            if (double.IsNaN(night.FirstStopped_s)) night.FirstStopped_s = to_s - noHeat_s;
        }

        bool fails = noHeat_s > 0 || record.Undersupplied;
        if (fails) _heatFailed_s = to_s;
        bool settled = to_s - _rose_s > Settling_s;
        night.ColdKelvinSeconds += _cold.Added(wanted_K - _halfBand_K - record.To.Inside_K, step_s, settled, fails);

        if (!record.BurnerLit || record.Undersupplied) _burnsSince_s = double.NaN;
        else if (double.IsNaN(_burnsSince_s)) _burnsSince_s = from_s;
        bool tooSmall = to_s - Math.Max(_rose_s, _heatFailed_s) > Settling_s
            && to_s - _burnsSince_s >= WithoutPause_s && record.To.Inside_K < wanted_K - threshold_K;
        if (tooSmall && double.IsNaN(night.TooSmall_s)) night.TooSmall_s = to_s;
    }
}
