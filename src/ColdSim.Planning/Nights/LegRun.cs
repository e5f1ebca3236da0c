using ColdSim.Model;
using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>Runs legs one after the other, each from where the one before ended.</summary>
internal sealed class LegRun(Scenario scenario, NightWatch watch)
{
    private RigState? _state;
    private LedgerBalance? _ledger;

    /// <summary>State of rig and coach; null before the first leg.</summary>
    public RigState? State => _state;

    /// <summary>Why the last leg ended.</summary>
    public RunEnd End { get; private set; }

    /// <summary>When the last leg ended; null before the first.</summary>
    public DateTimeOffset? Ended { get; private set; }

    /// <summary>How well energy and mass close: the worst leg.</summary>
    public LedgerBalance Ledger => _ledger!.Value;

    /// <summary>Another run that goes on from where this one is.</summary>
    /// <param name="other">Its scenario.</param>
    /// <param name="itsWatch">A watch that has seen all that this one's has.</param>
    public LegRun Branch(Scenario other, NightWatch itsWatch) => new(other, itsWatch) { _state = _state, _ledger = _ledger, End = End, Ended = Ended };

    /// <summary>Runs a leg.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>Whether it reached its end, so that the next can begin.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public bool Go(Leg leg, CancellationToken cancel) => Go(leg, [], cancel);

    /// <summary>Runs a leg that is one of other scenarios too.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="along">Watches of the others, which see it as well.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>Whether it reached its end, so that the next can begin.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public bool Go(Leg leg, IReadOnlyList<NightWatch> along, CancellationToken cancel)
    {
        NightWatch[] watches = [watch, .. along];
        Rig rig = leg.Of(scenario.Rig);
        int row = 0;
        double air_K = leg.Weather.At((leg.From - leg.Weather.First).TotalSeconds, ref row).Air_K;
        foreach (ILegTransition change in leg.Before)
        {
            _state = change.After(_state ?? First(rig, air_K, leg.From.TimeOfDay), rig, air_K);
            foreach (NightWatch each in watches) each.Changed(change.Cylinders, _state, (leg.From - scenario.Start).TotalSeconds);
        }

        SimulationSettings settings = new()
        {
            Start = leg.From,
            Duration_s = (leg.To - leg.From).TotalSeconds,
            Step_s = scenario.Step_s,
            Undersupplied_frac = scenario.Criteria.Undersupplied.DecimalFractions,
            From = _state,
        };
        Simulation simulation = new(rig, leg.Weather, settings);
        foreach (NightWatch each in watches) each.Begin(leg);
        SimulationResult result = simulation.Run(along.Count == 0 ? watch : new ObserverGroup(watches), cancel);
        _state = simulation.State();
        End = result.End;
        Ended = leg.From.AddSeconds(result.Ended_s);
        if (_ledger is null || !(result.Ledger.WorstEnergy_frac <= _ledger.Value.WorstEnergy_frac)) _ledger = result.Ledger;
        return result.End == RunEnd.Complete;
    }

    private static RigState First(Rig rig, double air_K, TimeSpan clock)
    {
        double inside_K = rig.Coach?.InitialTemperature_K ?? rig.Thermostat?.SetPoint_K(clock.TotalSeconds) ?? air_K;
        return new([.. rig.Cylinders.Select(c => new CylinderState(c.Contents_kg, c.InitialTemperature_K ?? air_K, default))], 0, inside_K, inside_K);
    }
}

/// <summary>The outlook of a run in several legs: each sample's is its leg's.</summary>
internal sealed class LegOutlook(IReadOnlyList<Leg> legs, Func<Leg, SupplyOutlook> outlook) : ISupplyOutlook
{
    private readonly SupplyOutlook?[] _outlooks = new SupplyOutlook?[legs.Count];
    private int _last;

    /// <inheritdoc/>
    public double AllowedLiquid_K(RunSeries series, int sample) => At(series, sample).AllowedLiquid_K(series, sample);

    /// <inheritdoc/>
    public double LeftBehind_kg(RunSeries series, int sample, int cylinder, double t_K) => At(series, sample).LeftBehind_kg(series, sample, cylinder, t_K);

    /// <inheritdoc/>
    public double CanGiveNow_W(RunSeries series, int sample) => At(series, sample).CanGiveNow_W(series, sample);

    /// <inheritdoc/>
    public double CanGiveWithoutEnd_W(RunSeries series, int sample) => At(series, sample).CanGiveWithoutEnd_W(series, sample);

    private SupplyOutlook At(RunSeries series, int sample)
    {
        double time_s = series.Time_s(sample);
        while (_last > 0 && time_s < (legs[_last].From - legs[0].From).TotalSeconds) _last--;
        while (_last < legs.Count - 1 && time_s >= (legs[_last].To - legs[0].From).TotalSeconds) _last++;
        return _outlooks[_last] ??= outlook(legs[_last]);
    }
}
