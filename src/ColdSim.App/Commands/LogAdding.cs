using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Model;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary>Checks readings, appends them to the log and says what they mean; for the command and for the screen.</summary>
internal static class LogAdding
{
    /// <summary>The clock cut to the minute, as the log keeps it.</summary>
    public static DateTimeOffset Now(TimeProvider clock, TimeSpan offset)
    {
        DateTimeOffset now = clock.GetUtcNow().ToOffset(offset);
        return new DateTimeOffset(now.Year, now.Month, now.Day, now.Hour, now.Minute, 0, now.Offset);
    }

    /// <summary>The reading that an entry is, or everything that is wrong with it.</summary>
    public static (LogReading? Reading, IReadOnlyList<EntryFault> Faults) Read(LogEntry entry, Rig rig)
    {
        if (LogCylinders.PlaceOf(rig, entry.Cylinder) is not { } place)
            return (null, [new EntryFault(LogField.Cylinder, "", $"a cylinder called '{entry.Cylinder}'", LogCylinders.Accepted(rig))]);
        EntryReader reader = new(entry with { Cylinder = rig.Cylinders[place].Name }, rig.Cylinders[place]);
        LogReading? reading = reader.Read(0);
        return (reading is null ? null : reading with { Cylinder = place }, reader.Faults);
    }

    /// <summary>What a good entry means.</summary>
    public static ContentsEstimate Held(LogReading reading, Rig rig)
        => reading.Reading.Estimate(GaugedCylinder.Of(rig.Cylinders[reading.Cylinder]));

    /// <summary>Appends good entries to a scenario's log in one write.</summary>
    /// <returns>The log's path.</returns>
    public static string Append(string scenarioPath, IReadOnlyList<LogEntry> entries)
    {
        string path = LogFile.PathOf(scenarioPath);
        LogFile.Append(path, entries);
        return path;
    }

    /// <summary>Such as "Tue 12 Jan 16:05, weight 69.0 lb: 40.0 lb of propane, give or take 0.5 lb".</summary>
    public static string Words(LogEntry entry, Rig rig, UnitStyle units)
    {
        ContentsEstimate held = Held(Read(entry, rig).Reading!, rig);
        string which = rig.Cylinders.Count > 1 ? $"{entry.Cylinder}, " : "";
        return $"{ClockText.DayClock(entry.Time)}, {which}{entry.Method} {entry.Reading}: {units.Mass(held.Mass.Kilograms)} of propane, give or take {units.Mass(held.StandardUncertainty.Kilograms)}";
    }
}
