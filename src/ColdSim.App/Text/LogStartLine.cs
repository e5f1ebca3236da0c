using ColdSim.Planning;

namespace ColdSim.App.Text;

/// <summary>The line that says from which reading of the log a run starts.</summary>
internal static class LogStartLine
{
    /// <summary>One line of less than 80 columns.</summary>
    /// <param name="start">The reading.</param>
    /// <param name="units">The person's units.</param>
    public static string Of(LogStart start, UnitStyle units)
    {
        string line = FormattableString.Invariant($"line {start.Line}"), left = units.Mass(start.Left_kg);
        return start.Simulated ? $"From {line} of the log, run on to the start: {left}. Without it: --no-log"
            : start.OnTheRoad ? $"From the log: {left} left, read on the road ({line}). Without it: --no-log"
            : $"From the log: {left} left {ClockText.DayClock(start.Read)} ({line}). Without it: --no-log";
    }
}
