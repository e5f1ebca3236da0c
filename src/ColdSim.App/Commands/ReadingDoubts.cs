using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary>Asks before a reading that looks wrong is written down.</summary>
internal static class ReadingDoubts
{
    /// <summary>The entries to write: as they are where nothing looks wrong, marked as checked where the person says that they are right.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="log">The log that they go to.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="host">Where the command runs.</param>
    /// <exception cref="CommandFault">One looks wrong, and nobody says that it is right.</exception>
    public static IReadOnlyList<LogEntry> Confirmed(IReadOnlyList<LogEntry> entries, string log, Scenario scenario, Host host)
    {
        // Damaged lines say nothing here; the readers of the log name them.
        IReadOnlyList<LogReading> others = host.Files.Exists(log) ? LogReader.Read(log, scenario.Rig).Readings : [];
        List<string> doubts = [];
        foreach (LogEntry entry in entries.Where(e => MeasuredMethod.Of(e.Method) is null))
        {
            LogReading reading = EntryReader.Read(entry, scenario.Rig).Reading!;
            if (!reading.Checked)
                doubts.AddRange(LogConsistency.Doubts(reading, others, scenario, host.Clock.GetUtcNow()).Select(d => InconsistencyWords.Of(d, scenario, UnitStyle.Us)));
        }

        if (doubts.Count == 0)
            return entries;
        string[] lines = [.. doubts.Select(d => $"coldsim: this reading looks wrong: {d}")];
        if (host.Answer is not { } answer)
            throw CommandFault.Input([.. lines, "coldsim: nothing was written; correct it, or give --checked if it is right"]);
        foreach (string line in lines)
            host.Error.WriteLine(line);
        host.Error.Write("Write it down as it is, marked as checked? [y/N] ");
        host.Error.Flush();
        return answer()?.Trim() is { Length: > 0 } word && word[0] is 'y' or 'Y'
            ? [.. entries.Select(e => MeasuredMethod.Of(e.Method) is not null ? e : e with { Details = [.. e.Details, new LogDetail(LogMethods.Checked, "")] })]
            : throw CommandFault.Input("coldsim: nothing was written");
    }
}
