using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>A lean run that ends with the first night that does not hold, and may have its first legs in common with another run.</summary>
/// <remarks>Legs in common are run once: its watch sees them go by in the other's run, and it goes on from where they end.</remarks>
internal sealed class OptionRun : IDisposable
{
    private readonly Scenario _scenario;
    private readonly IReadOnlyList<Leg> _legs;
    private readonly CancellationToken _cancel;
    private readonly CancellationTokenSource _failed;
    private LegRun _run;
    private int _next;

    /// <summary>A run that has not begun.</summary>
    /// <param name="scenario">Its scenario.</param>
    /// <param name="shared">How many of its legs are the other run's, from the first.</param>
    /// <param name="cancel">Stops it.</param>
    public OptionRun(Scenario scenario, int shared, CancellationToken cancel)
    {
        (_scenario, _cancel, Shared) = (scenario, cancel, shared);
        NightCalendar calendar = new(scenario);
        _legs = NightRun.LegsOf(scenario, calendar);
        _failed = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        Watch = new NightWatch(scenario, calendar, UnwatchedRun.Only, RunDetail.Nights) { Failed = _failed };
        _run = new LegRun(scenario, Watch);
    }

    /// <summary>How many of its legs are the other run's.</summary>
    public int Shared { get; }

    /// <summary>Counts its nights.</summary>
    public NightWatch Watch { get; }

    /// <summary>Whether a night is known not to hold.</summary>
    public bool HasFailed => _failed.IsCancellationRequested;

    /// <summary>The legs in common are over: it goes on from where they ended.</summary>
    /// <param name="other">The other run, with all of them behind it.</param>
    public void GoOnFrom(LegRun other) => (_run, _next) = (other.Branch(_scenario, Watch), Shared);

    /// <summary>The other run ended within the legs in common, and so did this one.</summary>
    /// <param name="other">The other run.</param>
    public void EndWith(LegRun other) => (_run, _next) = (other.Branch(_scenario, Watch), _legs.Count);

    /// <summary>Runs what is left of it.</summary>
    /// <returns>The run; null where a night does not hold.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public LeanRun? Finish()
    {
        try
        {
            while (!HasFailed && _next < _legs.Count && _run.Go(_legs[_next], _failed.Token)) _next++;
        }
        catch (OperationCanceledException) when (!_cancel.IsCancellationRequested)
        {
            return null;
        }

        _cancel.ThrowIfCancellationRequested();
        LeanRun run = NightRun.LeanOf(_run, Watch, _scenario);
        return run.Nights.All(n => n.Verdict == Verdict.Holds) ? run : null;
    }

    /// <inheritdoc/>
    public void Dispose() => _failed.Dispose();
}
