using ColdSim.Planning;

namespace ColdSim.App.Text;

/// <summary>The line that says from which reading of the log a run starts.</summary>
internal static class LogStartLine
{
    private const double Sure_frac = 0.8;

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

    /// <summary>Which of several cylinders is in use, and what those hold that were not read with the latest reading; a sentence each.</summary>
    /// <param name="start">The reading.</param>
    /// <param name="units">The person's units.</param>
    public static IEnumerable<string> Cylinders(LogStart start, UnitStyle units)
    {
        if (start.InUse is { } inUse)
            yield return start.InUse_frac >= Sure_frac ? $"'{inUse}' feeds, by the readings." : $"'{inUse}' probably feeds ({UnitStyle.Number(100 * start.InUse_frac, 0)} %); the readings do not say it clearly.";
        foreach (StartedCylinder c in start.Cylinders)
        {
            string read = c.Read is { } time ? $"was last read {ClockText.DayClock(time)}" : "was never read";
            string held = $"{units.Mass(c.Left_kg)}, give or take {units.Mass(c.Uncertainty_kg)}";
            if (c.By == StartedBy.WorkedOut)
                yield return $"'{c.Name}' {read}; by the readings and the weather it holds {held}, unless it was filled since.";
            else if (c.By == StartedBy.Earlier)
                yield return $"'{c.Name}' {read} and is assumed to hold that still.";
            else if (c.By == StartedBy.Scenario)
                yield return $"'{c.Name}' {read} and holds what the scenario says.";
        }
    }
}
