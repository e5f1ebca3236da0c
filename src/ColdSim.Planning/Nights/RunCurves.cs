using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>The curves of a run: kept whole, or around one night and the rest worked out by running again when it is asked for.</summary>
/// <remarks>A run is deterministic, so that curves are the same to the bit whether they were kept or not.</remarks>
internal sealed class RunCurves
{
    /// <summary>How many samples before an instant its cause is looked for in.</summary>
    public const int LookBack = 720;

    /// <summary>How many samples after an instant its demand is looked for in.</summary>
    public const int LookAhead = 2;

    private readonly RunSeries? _kept;
    private readonly int _samples;
    private readonly Lazy<RunSeries> _whole;

    /// <summary>Curves that are kept whole.</summary>
    /// <param name="whole">The curves.</param>
    public RunCurves(RunSeries whole) => (_kept, _samples, _whole) = (whole, whole.Count, new(whole));

    /// <summary>Curves of which a part is kept.</summary>
    /// <param name="kept">That part; null for none.</param>
    /// <param name="samples">How many samples the whole run has.</param>
    /// <param name="again">Runs again and gives the curves of the whole run.</param>
    public RunCurves(RunSeries? kept, int samples, Func<RunSeries> again) => (_kept, _samples, _whole) = (kept, samples, new(again));

    /// <summary>Whether the whole run's are there already.</summary>
    public bool HasWhole => _whole.IsValueCreated;

    /// <summary>The whole run's.</summary>
    public RunSeries Whole => _whole.Value;

    /// <summary>Curves that hold what led to an instant: the samples before and after it in which a cause is looked for.</summary>
    /// <param name="time_s">The instant, since the run's start. [s]</param>
    public RunSeries Around(double time_s)
    {
        int at = (int)Math.Floor(time_s / RunSeries.Spacing_s), from = Math.Max(0, at - LookBack), to = Math.Min(_samples - 1, at + LookAhead);
        return _kept is { } kept && kept.FirstSample <= from && to < kept.FirstSample + kept.Count ? kept : Whole;
    }
}
