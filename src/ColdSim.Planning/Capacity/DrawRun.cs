using ColdSim.Model.Engine;

namespace ColdSim.Planning.Capacity;

/// <summary>How one constant draw went. SI units.</summary>
/// <param name="Fed_s">How long it was fed in full. [s]</param>
/// <param name="Failed">Whether it stopped being fed; false where the run ended first.</param>
/// <param name="Liquid_K">Liquid of the feeding cylinder then. [K]</param>
/// <param name="Left_kg">Gas left in all cylinders then. [kg]</param>
/// <param name="Ledger">How well energy and mass close; null where the draw failed.</param>
internal readonly record struct DrawOutcome(double Fed_s, bool Failed, double Liquid_K, double Left_kg, LedgerBalance? Ledger = null);

/// <summary>Runs one constant draw with the whole engine: contents fall, frost grows, until it is no longer fed in full.</summary>
internal sealed class DrawRun : IRunObserver
{
    // A draw a thousandth short is the end: what is asked for is the draw that is just fed.
    private const double Fed_frac = 0.999;

    private readonly CancellationTokenSource _ended;
    private readonly double _coldest_K;
    private DrawOutcome _outcome;

    private DrawRun(double coldest_K, CancellationTokenSource ended) => (_coldest_K, _ended) = (coldest_K, ended);

    /// <inheritdoc/>
    public bool ReadsDelivery => false;

    /// <summary>Runs it.</summary>
    /// <param name="conditions">Cylinders, weather and start.</param>
    /// <param name="draw_W">The draw, as gross heat. [W]</param>
    /// <param name="longest_s">How long at most. [s]</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static DrawOutcome Of(DrawConditions conditions, double draw_W, double longest_s, CancellationToken cancel)
    {
        using CancellationTokenSource ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        DrawRun watch = new(conditions.ColdestLiquid_K, ended);
        Simulation simulation = new(conditions.With(draw_W), conditions.Weather, new SimulationSettings
        {
            Start = conditions.Start,
            Duration_s = longest_s,
            Step_s = Scenario.DefaultStep_s,
            Undersupplied_frac = Fed_frac,
            From = conditions.From,
        });
        try
        {
            SimulationResult result = simulation.Run(watch, ended.Token);
            return watch._outcome.Failed ? watch._outcome : watch._outcome with { Ledger = result.Ledger };
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested && watch._outcome.Failed)
        {
            return watch._outcome;
        }
    }

    /// <inheritdoc/>
    public void Stepped(StepRecord record)
    {
        if (_outcome.Failed) return;
        ref readonly Snapshot from = ref record.From, to = ref record.To;
        if (record.Undersupplied)
        {
            End(new DrawOutcome(from.Time_s, true, from.Liquid_K, from.Propane_kg));
            return;
        }

        if (to.Liquid_K < _coldest_K)
        {
            double part = from.Liquid_K <= _coldest_K ? 0 : (from.Liquid_K - _coldest_K) / (from.Liquid_K - to.Liquid_K);
            End(new DrawOutcome(
                from.Time_s + part * (to.Time_s - from.Time_s), true, Math.Min(from.Liquid_K, _coldest_K), from.Propane_kg + part * (to.Propane_kg - from.Propane_kg)));
            return;
        }

        _outcome = new DrawOutcome(to.Time_s, false, to.Liquid_K, to.Propane_kg);
    }

    /// <inheritdoc/>
    public void Happened(in SimulationEvent happened, in Snapshot snapshot)
    {
    }

    private void End(DrawOutcome outcome)
    {
        _outcome = outcome;
        _ended.Cancel();
    }
}
