using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Limits;

/// <summary>Runs a standard night with the whole engine, without curves, and only until it is known that it does not hold.</summary>
/// <remarks>The same criteria as a night's verdict. A night that holds here is confirmed by <see cref="NightRun"/> where it becomes a limit.</remarks>
internal sealed class LimitTrial : IRunObserver
{
    private readonly NightCriteria _criteria;
    private readonly bool[] _liquidGone;
    private readonly SetPointShortfall _shortfall = new();
    private readonly CancellationTokenSource _decided;
    private double _short_s;
    private double _voltageGone_s;
    private double _below_K;

    private LimitTrial(Scenario night, CancellationTokenSource decided)
    {
        _criteria = night.Criteria;
        _liquidGone = new bool[night.Rig.Cylinders.Count];
        _decided = decided;
    }

    private bool Fails { get; set; }

    private double Left_kg { get; set; }

    /// <summary>Whether the night holds, and what is left at its end or when that is known. [kg]</summary>
    public static (bool Holds, double Left_kg) Of(Scenario night, CancellationToken cancel)
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
            return (!watch.Fails && result.End == RunEnd.Complete, watch.Left_kg);
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested && watch.Fails)
        {
            return (false, watch.Left_kg);
        }
    }

    public void Stepped(StepRecord record)
    {
        if (Fails) return;
        Left_kg = record.To.Propane_kg;
        if (record.Undersupplied) _short_s += record.To.Time_s - record.From.Time_s;
        _below_K = Math.Max(_below_K, _shortfall.Below_K(record));
        if (record.Power is { Live: false }) _voltageGone_s += record.To.Time_s - record.From.Time_s;
        bool dry = record.Undersupplied && Array.TrueForAll(_liquidGone, gone => gone);
        if (dry || Math.Max(_short_s, _voltageGone_s) > _criteria.ShortAllowance.Seconds || _below_K > _criteria.BelowSetPoint.Kelvins) Fail();
    }

    public void Happened(in SimulationEvent happened, in Snapshot moment)
    {
        if (happened.Kind is EventKind.LiquidGone or EventKind.LiquidAgain)
            _liquidGone[happened.Cylinder] = happened.Kind == EventKind.LiquidGone;
    }

    private void Fail()
    {
        Fails = true;
        _decided.Cancel();
    }
}
