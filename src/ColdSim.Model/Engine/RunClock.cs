using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Engine;

/// <summary>The clock on the wall during a run: local time in the offset that held at its start.</summary>
internal sealed class RunClock
{
    private readonly double _startClock_s;
    private readonly ClockWindow[] _windows;

    /// <summary>A clock with the hours whose edges must be landed on.</summary>
    /// <param name="start">The run's first instant.</param>
    /// <param name="windows">Every window whose edges must be landed on.</param>
    public RunClock(DateTimeOffset start, IEnumerable<ClockWindow> windows)
    {
        _startClock_s = start.TimeOfDay.TotalSeconds;
        _windows = [.. windows];
    }

    /// <summary>Seconds after local midnight. [s]</summary>
    /// <remarks>Rounded to a microsecond, so that a time landed on an edge is on it.</remarks>
    public double At_s(double time_s)
    {
        double clock_s = Math.Round((_startClock_s + time_s) % Day_s, 6);
        return clock_s >= Day_s ? 0 : clock_s;
    }

    /// <summary>The next time at which a window opens or closes; infinite without windows. [s]</summary>
    public double NextEdge_s(double time_s)
    {
        double clock_s = At_s(time_s), wait_s = double.PositiveInfinity;
        foreach (ClockWindow window in _windows) wait_s = Math.Min(wait_s, window.UntilEdge_s(clock_s));
        return time_s + wait_s;
    }
}
