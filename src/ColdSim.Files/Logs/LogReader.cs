using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Logs;

namespace ColdSim.Files.Logs;

/// <summary>The result of reading a log.</summary>
/// <param name="Readings">The lines that are good.</param>
/// <param name="Damaged">A problem for every line that is not, with its place.</param>
public sealed record LogResult(IReadOnlyList<LogReading> Readings, IReadOnlyList<FileProblem> Damaged)
{
    /// <summary>Whether nothing could be read at all, so that no line can be left out.</summary>
    public bool IsUnreadable { get; init; }
}

/// <summary>Reads a log against the scenario's cylinders; docs/log-and-fit.md describes every column.</summary>
public static class LogReader
{
    /// <summary>Reads the log of a rig with one cylinder.</summary>
    /// <param name="path">The log.</param>
    /// <param name="cylinder">The cylinder.</param>
    public static LogResult Read(string path, CylinderSpecification cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return Read(path, name => cylinder.Name.Equals(name, StringComparison.OrdinalIgnoreCase) ? 0 : null, [cylinder], $"accepted: the scenario's, '{Quote.Of(cylinder.Name)}'");
    }

    /// <summary>Reads a log; a damaged line is reported and the others are still read.</summary>
    /// <param name="path">The log.</param>
    /// <param name="rig">The scenario's rig.</param>
    public static LogResult Read(string path, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Read(path, name => LogCylinders.PlaceOf(rig, name), rig.Cylinders, LogCylinders.Accepted(rig));
    }

    private static LogResult Read(string path, Func<string, int?> placeOf, IReadOnlyList<CylinderSpecification> cylinders, string accepted)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        List<LogReading> readings = [];
        List<FileProblem> damaged = [];
        IReadOnlyList<(int Number, string Text)> lines;
        try
        {
            lines = LogFile.Lines(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new([], [new(path, 1, 1, "the log cannot be opened: " + FileProblem.WhyUnreadable(e))]) { IsUnreadable = true };
        }

        if (lines.Count == 0 || !LogLine.IsHeader(lines[0].Text))
            damaged.Add(new(path, lines.Count == 0 ? 1 : lines[0].Number, 1, "the first line is not a log's header", $"accepted: {LogLine.Header}"));
        foreach ((int number, string text) in lines.Skip(damaged.Count == 0 ? 1 : 0))
        {
            if (LogLine.Read(text, path, number, damaged) is not { } entry)
                continue;
            if (placeOf(entry.Cylinder) is not { } place)
                damaged.Add(new(path, number, LogLine.ColumnOf(text, (int)LogField.Cylinder), $"a cylinder called '{Quote.Of(entry.Cylinder)}'", accepted));
            else if (Reading(entry with { Cylinder = cylinders[place].Name }, text, path, number, cylinders[place], damaged) is { } reading)
                readings.Add(reading with { Cylinder = place });
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
