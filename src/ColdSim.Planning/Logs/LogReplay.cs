using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Logs;

/// <summary>Replays the time of a log in the simulator; each interval continues from the state at the end of the one before.</summary>
internal sealed class LogReplay(Scenario scenario)
{
    private const double Least_kg = 0.02;
    private readonly double[] _left_kg = [.. scenario.Rig.Cylinders.Select(c => c.Contents_kg)];
    private RigState? _state;
    private int? _inUse;

    /// <summary>Puts one of several cylinders in use: the open one, or the service side of a changeover.</summary>
    /// <param name="cylinder">Its place, from 0; null leaves it to the rig.</param>
    public void Use(int? cylinder) => _inUse = cylinder;

    /// <summary>Sets a cylinder to what was read.</summary>
    public void Set(int cylinder, double mass_kg)
    {
        _left_kg[cylinder] = Math.Max(Least_kg, mass_kg);
        if (_state is null)
            return;
        CylinderState[] cylinders = [.. _state.Cylinders];
        cylinders[cylinder] = cylinders[cylinder] with { Propane_kg = _left_kg[cylinder] };
        _state = _state with { Cylinders = cylinders };
    }

    /// <summary>Runs an interval; where the weather does not reach or a cylinder ends the run, its use is null.</summary>
    /// <param name="from">Its first instant.</param>
    /// <param name="to">Its last instant.</param>
    /// <param name="cancel">Stops it.</param>
    /// <param name="beside">Observes it too, in the interval's own time; null for nobody.</param>
    public LogPrediction.Interval Run(DateTimeOffset from, DateTimeOffset to, CancellationToken cancel, IRunObserver? beside = null)
    {
        cancel.ThrowIfCancellationRequested();
        (Rig rig, WeatherSeries weather) = At(from);
        if (from < weather.First || to > weather.Last)
        {
            _state = null;
            return new(from, to, null, 0);
        }

        // The rig uses its first cylinder first.
        int n = _left_kg.Length;
        int[] order = [.. Enumerable.Range(0, n).Select(i => ((_inUse ?? 0) + i) % n)];
        SimulationSettings settings = new()
        {
            Start = from.ToOffset(scenario.Start.Offset),
            Duration_s = (to - from).TotalSeconds,
            Step_s = scenario.Step_s,
            Undersupplied_frac = scenario.Criteria.Undersupplied.DecimalFractions,
            From = _state is null || _inUse is null ? _state : _state with { InUse = 0, Cylinders = [.. order.Select(i => _state.Cylinders[i])] },
        };
        rig = rig with { Cylinders = [.. order.Select(i => rig.Cylinders[i] with { Contents_kg = _left_kg[i] })] };
        Simulation simulation = new(rig, weather, settings);
        Burnt burnt = new();
        SimulationResult result = simulation.Run(beside is null ? burnt : new ObserverGroup([beside, burnt]), cancel);
        if (result.End != RunEnd.Complete)
        {
            _state = null;
            return new(from, to, null, 0);
        }

        RigState state = simulation.State();
        CylinderState[] cylinders = new CylinderState[n];
        for (int i = 0; i < n; i++)
            cylinders[order[i]] = state.Cylinders[i];
        _state = state with { InUse = order[state.InUse], Cylinders = cylinders };
        double[] used_kg = new double[_left_kg.Length];
        for (int i = 0; i < used_kg.Length; i++)
        {
            used_kg[i] = _left_kg[i] - _state.Cylinders[i].Propane_kg;
            _left_kg[i] = _state.Cylinders[i].Propane_kg;
        }

        // A fitted base use below zero is no appliance; its gas is given back.
        if (used_kg.Length == 1 && scenario.Fit is { Factors.BaseUse_W: < 0 } fit)
        {
            double back_kg = -fit.Factors.BaseUse_W * settings.Duration_s / rig.Gas.HeatingValue_J_kg;
            used_kg[0] -= back_kg;
        }

        return new(from, to, used_kg, burnt.Starts == 0 ? 0 : burnt.Burnt_J / rig.Gas.HeatingValue_J_kg / burnt.Starts);
    }

    private (Rig Rig, WeatherSeries Weather) At(DateTimeOffset time)
    {
        if (scenario.Legs.Count == 0)
            return (scenario.Rig, scenario.Weather);
        Leg leg = scenario.Legs.LastOrDefault(l => l.From <= time) ?? scenario.Legs[0];
        return (leg.Of(scenario.Rig), leg.Weather);
    }

    private sealed class Burnt : IRunObserver
    {
        public bool ReadsDelivery => false;

        public double Burnt_J { get; private set; }

        public int Starts { get; private set; }

        public void Stepped(StepRecord record)
        {
            if (record.BurnerLit)
                Burnt_J += record.Given_W * (record.To.Time_s - record.From.Time_s);
        }

        public void Happened(in SimulationEvent happened, in Snapshot moment)
        {
            if (happened.Kind == EventKind.BurnerOn)
                Starts++;
        }
    }
}
