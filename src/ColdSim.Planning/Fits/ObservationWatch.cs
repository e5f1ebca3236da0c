using ColdSim.Model.Engine;

namespace ColdSim.Planning.Fits;

/// <summary>Takes the observations' values from a run, and the burner's cycles.</summary>
/// <param name="observations">All observations.</param>
/// <param name="order">Places of those that lie in the run, in order of time.</param>
/// <param name="values">Receives the value of each observation in its place.</param>
/// <param name="start">When the run starts.</param>
/// <param name="first">Place in the scenario of the run's first cylinder.</param>
/// <param name="cylinders">How many cylinders there are.</param>
internal sealed class ObservationWatch(
    IReadOnlyList<FitObservation> observations, int[] order, double[] values, DateTimeOffset start, int first = 0, int cylinders = 1) : IRunObserver
{
    private readonly double[] _times_s = [.. order.Select(i => (observations[i].Time - start).TotalSeconds)];
    private StepRecord? _record;
    private int _next;

    /// <inheritdoc/>
    public bool ReadsDelivery => false;

    /// <summary>Heat of what the burner took. [J]</summary>
    public double Burnt_J { get; private set; }

    /// <summary>How often the burner lit.</summary>
    public int Starts { get; private set; }

    /// <inheritdoc/>
    public void Stepped(StepRecord record)
    {
        double step_s = record.To.Time_s - record.From.Time_s;
        while (_next < order.Length && _times_s[_next] <= record.To.Time_s + 1e-6)
        {
            FitObservation observation = observations[order[_next]];
            double x = Math.Clamp((_times_s[_next] - record.From.Time_s) / step_s, 0, 1);
            double from = observation.In(new(in record.From, first, cylinders));
            values[order[_next++]] = from + x * (observation.In(new(in record.To, first, cylinders)) - from);
        }

        _record = record;
        if (record.BurnerLit)
            Burnt_J += record.Given_W * step_s;
    }

    /// <inheritdoc/>
    public void Happened(in SimulationEvent happened, in Snapshot moment)
    {
        if (happened.Kind == EventKind.BurnerOn)
            Starts++;
    }

    /// <summary>After a cylinder has ended the run there is nothing more to predict: what comes later keeps its last value.</summary>
    public void Finish()
    {
        for (; _record is not null && _next < order.Length; _next++)
            values[order[_next]] = observations[order[_next]].In(new(in _record.To, first, cylinders));
    }
}
