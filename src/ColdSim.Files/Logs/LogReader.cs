using ColdSim.Model.Cylinder;
using ColdSim.Planning.Logs;

namespace ColdSim.Files.Logs;

/// <summary>What came of reading a log.</summary>
/// <param name="Readings">The lines that are good.</param>
/// <param name="Damaged">Every line that is not, with its place.</param>
public sealed record LogResult(IReadOnlyList<LogReading> Readings, IReadOnlyList<FileProblem> Damaged);

/// <summary>Reads a log against the scenario's cylinder; docs/log-and-fit.md describes every column.</summary>
public static class LogReader
{
    /// <summary>Reads a log; a damaged line is reported and the others are read all the same.</summary>
    /// <param name="path">The log.</param>
    /// <param name="cylinder">The scenario's cylinder.</param>
    public static LogResult Read(string path, CylinderSpecification cylinder)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(cylinder);
        List<LogReading> readings = [];
        List<FileProblem> damaged = [];
        IReadOnlyList<(int Number, string Text)> lines;
        try
        {
            lines = LogFile.Lines(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new([], [new(path, 1, 1, "the log cannot be opened: " + FileTrouble.Words(e))]);
        }

        if (lines.Count == 0 || lines[0].Text.Replace(" ", "", StringComparison.Ordinal) != LogLine.Header.Replace(" ", "", StringComparison.Ordinal))
            damaged.Add(new(path, lines.Count == 0 ? 1 : lines[0].Number, 1, "the first line is not a log's header", $"accepted: {LogLine.Header}"));
        foreach ((int number, string text) in lines.Skip(damaged.Count == 0 ? 1 : 0))
        {
            if (LogLine.Read(text, path, number, damaged) is { } entry && Reading(entry, text, path, number, cylinder, damaged) is { } reading)
                readings.Add(reading);
        }

        return new(readings, damaged);
    }

    private static LogReading? Reading(LogEntry entry, string text, string file, int line, CylinderSpecification cylinder, List<FileProblem> damaged)
    {
        EntryReader reader = new(entry, cylinder);
        LogReading? reading = reader.Read(line);
        foreach (EntryFault fault in reader.Faults)
            damaged.Add(new(file, line, LogLine.ColumnOf(text, (int)fault.Field), fault.What, fault.Accepted, fault.Nearest));
        return reading;
    }
}
