using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary>What is in a rig's cylinders tonight by the latest reading of its log.</summary>
internal static class TonightLog
{
    private const double Least_kg = 0.02;

    /// <summary>The rig with what its log says is in it, which is said; as it is without a log or a reading.</summary>
    /// <exception cref="CommandFault">A line of the log is damaged.</exception>
    public static Scenario Latest(string path, Scenario scenario, bool skipDamaged, UnitStyle units, Host host)
    {
        if (!host.Files.Exists(LogFile.PathOf(path)))
            return scenario;
        UseLog log = ScenarioLog.Read(path, scenario, skipDamaged, units, host).Use;
        if (log.Rows.Count == 0)
            return scenario;
        CylinderSpecification[] cylinders =
            [.. scenario.Rig.Cylinders.Select((c, i) => log.LatestOf(i) is { } row ? c with { Contents_kg = Math.Max(Least_kg, row.Contents.Mass.Kilograms) } : c)];
        LogReading newest = log.Rows[^1].Reading;
        LogStart start = new(newest.Line, newest.Time.ToOffset(scenario.Start.Offset), cylinders.Sum(c => c.Contents_kg), Simulated: false, OnTheRoad: false);
        host.Error.WriteLine(LogStartLine.Of(start, units));
        return scenario with
        {
            StartedFrom = start,
            Rig = scenario.Rig with { Cylinders = cylinders },
            Assumptions = [$"nothing used since the log's latest reading, {ClockText.DayClock(start.Read)}", .. scenario.Assumptions],
        };
    }
}
