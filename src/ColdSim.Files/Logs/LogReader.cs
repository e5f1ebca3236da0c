using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Logs;

namespace ColdSim.Files.Logs;

/// <summary>The result of reading a log.</summary>
/// <param name="Readings">The good lines that say what a cylinder holds.</param>
/// <param name="Damaged">A problem for every line that is not, with its place.</param>
public sealed record LogResult(IReadOnlyList<LogReading> Readings, IReadOnlyList<FileProblem> Damaged)
{
    /// <summary>Whether nothing could be read at all, so that no line can be left out.</summary>
    public bool IsUnreadable { get; init; }

    /// <summary>The good lines of anything else that was measured.</summary>
    internal IReadOnlyList<Measurement> Measurements { get; init; } = [];
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
        return Read(
            path, name => cylinder.Name.Equals(name, StringComparison.OrdinalIgnoreCase) ? 0 : null, new Rig { Cylinders = [cylinder] },
            $"accepted: the scenario's, '{Quote.Of(cylinder.Name)}'");
    }

    /// <summary>Reads a log; a damaged line is reported and the others are still read.</summary>
    /// <param name="path">The log.</param>
    /// <param name="rig">The scenario's rig.</param>
    public static LogResult Read(string path, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Read(path, name => LogCylinders.PlaceOf(rig, name), rig, LogCylinders.Accepted(rig));
    }

    private static LogResult Read(string path, Func<string, int?> placeOf, Rig rig, string accepted)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        List<LogReading> readings = [];
        List<Measurement> measurements = [];
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
            if (MeasuredMethod.Of(entry.Method) is not null)
            {
                (Measurement? measured, IReadOnlyList<EntryFault> faults) = MeasurementReader.Read(entry, rig, number);
                damaged.AddRange(faults.Select(f => Problem(f, text, path, number)));
                if (measured is not null)
                    measurements.Add(measured);
            }
            else if (!LogMethods.All.Contains(entry.Method, StringComparer.Ordinal))
            {
                // Without its method nothing says whether the line has a cylinder.
                EntryFields fields = new(entry);
                fields.HasMethod();
                damaged.AddRange(fields.Faults.Select(f => Problem(f, text, path, number)));
            }
            else if (placeOf(entry.Cylinder) is not { } place)
                damaged.Add(new(path, number, LogLine.ColumnOf(text, (int)LogField.Cylinder), $"a cylinder called '{Quote.Of(entry.Cylinder)}'", accepted));
            else if (Reading(entry with { Cylinder = rig.Cylinders[place].Name }, text, path, number, rig.Cylinders[place], damaged) is { } reading)
                readings.Add(reading with { Cylinder = place });
        }

        return new(readings, damaged) { Measurements = measurements };
    }

    private static LogReading? Reading(LogEntry entry, string text, string file, int line, CylinderSpecification cylinder, List<FileProblem> damaged)
    {
        EntryReader reader = new(entry, cylinder);
        LogReading? reading = reader.Read(line);
        damaged.AddRange(reader.Faults.Select(f => Problem(f, text, file, line)));
        return reading;
    }

    private static FileProblem Problem(EntryFault fault, string text, string file, int line)
        => new(file, line, LogLine.ColumnOf(text, (int)fault.Field), fault.What, fault.Accepted, fault.Nearest);
}
