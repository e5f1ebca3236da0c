using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Limits;

/// <summary>One standard night by the whole engine. SI units.</summary>
/// <param name="Verdict">Whether it holds, by the same criteria as any night, and what failed it first where it does not.</param>
/// <param name="Left_kg">Propane left at its end, or when it is known that it does not hold. [kg]</param>
/// <param name="Used_kg">Gas used until then. [kg]</param>
/// <param name="Blanket_J">Electricity of the blankets until then. [J]</param>
/// <param name="InsideLow_K">Lowest inside air until then; NaN without a coach. [K]</param>
/// <param name="PressureLow_Pa">Lowest pressure before the regulator while gas was in demand; infinite where it never was. [Pa gauge]</param>
/// <param name="NotRun_s">What was not run because it was known that the night does not hold. [s]</param>
/// <param name="Ledger">How well energy and mass close; null where it does not hold.</param>
internal sealed record NightTrial(
    Verdict Verdict, double Left_kg, double Used_kg, double Blanket_J, double InsideLow_K, double PressureLow_Pa, double NotRun_s, LedgerBalance? Ledger)
{
    /// <summary>Whether it holds.</summary>
    public bool Holds { get; init; }
}

/// <summary>Runs a standard night with the whole engine, without curves, and only until it is known that it does not hold.</summary>
internal sealed class LimitTrial : IRunObserver
{
    private readonly NightCriteria _criteria;
    private readonly HarmWatch _watch;
    private readonly HarmTally _tally = new();
    private readonly CancellationTokenSource _decided;
    private double _time_s;
    private double _left_kg;
    private double _used_kg;
    private double _blanket_J;
    private double _insideLow_K = double.PositiveInfinity;
    private double _pressureLow_Pa = double.PositiveInfinity;
    private bool _fails;

    /// <inheritdoc/>
    public bool ReadsDelivery => false;

    private LimitTrial(Scenario night, CancellationTokenSource decided)
    {
        _criteria = night.Criteria;
        _watch = new HarmWatch(night.Rig, night.Criteria);
        _decided = decided;
    }

    /// <summary>Runs a night.</summary>
    public static NightTrial Of(Scenario night, CancellationToken cancel)
    {
        using CancellationTokenSource decided = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        LimitTrial watch = new(night, decided);
        SimulationSettings settings = new()
        {
            Start = night.Legs[0].From,
            Duration_s = (night.Legs[0].To - night.Legs[0].From).TotalSeconds,
            Step_s = night.Step_s,
            Undersupplied_frac = night.Criteria.Undersupplied.DecimalFractions,
        };
        try
        {
            SimulationResult result = new Simulation(night.Rig, night.Weather, settings).Run(watch, decided.Token);
            return watch.Outcome(!watch._fails && result.End == RunEnd.Complete, settings.Duration_s, result.Ledger);
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested && watch._fails)
        {
            return watch.Outcome(holds: false, settings.Duration_s, null);
        }
    }

    public void Stepped(StepRecord record)
    {
        if (_fails) return;
        double step_s = record.To.Time_s - record.From.Time_s;
        if (_time_s == 0) _insideLow_K = record.From.Inside_K;
        _time_s = record.To.Time_s;
        _left_kg = record.To.Propane_kg;
        _used_kg += record.From.Propane_kg - record.To.Propane_kg;
        _blanket_J += record.Blanket_W * step_s;
        _insideLow_K = Math.Min(_insideLow_K, record.To.Inside_K);
        if (record.Asked_W > 0) _pressureLow_Pa = Math.Min(_pressureLow_Pa, record.To.CylinderPressure_Pa);
        _watch.Add(record, _tally);
        if (_tally.Judge(_criteria).Verdict != Verdict.Holds) Fail();
    }

    public void Happened(in SimulationEvent happened, in Snapshot moment) => _watch.Happened(happened, moment.Time_s, _tally);

    private NightTrial Outcome(bool holds, double duration_s, LedgerBalance? ledger)
        => new(_tally.Judge(_criteria).Verdict, _left_kg, _used_kg, _blanket_J, _insideLow_K, _pressureLow_Pa, Math.Max(0, duration_s - _time_s), holds ? ledger : null) { Holds = holds };

    private void Fail()
    {
        _fails = true;
        _decided.Cancel();
    }
}
