using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary>A scenario that starts from its log's latest reading.</summary>
/// <param name="Before">The scenario as it is written.</param>
/// <param name="Log">Its log.</param>
/// <param name="Start">Where it starts.</param>
internal sealed record FromLog(Scenario Before, UseLog Log, ForecastStart Start)
{
    public static Option<bool> NoLog() => new("--no-log") { Description = "Start as the scenario says, though its log has a newer reading." };

    /// <summary>Moves a scenario to its log's latest reading and says so; null where there is no log or nothing newer in it.</summary>
    public static FromLog? Of(string path, Scenario scenario, bool skipDamaged, Host host)
    {
        if (!File.Exists(LogFile.PathOf(path)))
            return null;
        UseLog log = UseLog.Of(LogCommand.Read(path, scenario, skipDamaged, host).Readings, scenario.Rig);
        if (ForecastStart.Of(scenario, log) is not { } start)
            return null;
        string road = start.Scenario.Start == start.Newest.Reading.Time ? "" : $", read on the road: from {ClockText.DayClock(start.Scenario.Start)}";
        host.Error.WriteLine(
            $"started from the log's latest reading, line {start.Newest.Reading.Line}, {ClockText.DayClock(start.Newest.Reading.Time.ToOffset(scenario.Start.Offset))}{road}; --no-log starts as the scenario says");
        return new(scenario, log, start);
    }
}
