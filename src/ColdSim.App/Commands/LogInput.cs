using System.CommandLine;
using System.Globalization;
using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Files.Weather;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary>Turns the words after <c>log add</c> into lines of the log; all faults are reported together.</summary>
internal sealed class LogInput(ParseResult parsed, LogOptions o, Scenario scenario, TimeProvider clock)
{
    private readonly List<string> _faults = [];

    public IReadOnlyList<LogEntry> Entries()
    {
        DateTimeOffset time = Time();

        // What is no cylinder's needs none.
        bool needsCylinder = parsed.GetValue(o.Cylinder) is not null
            || o.Readings.Any(r => parsed.GetValue(r.Option) is { Length: > 0 } && MeasuredMethod.Of(r.Method) is not { IsOfCylinder: false });
        string cylinder = needsCylinder ? Cylinder() : "";
        string note = parsed.GetValue(o.Note) ?? "";
        if (note.Any(char.IsControl))
            _faults.Add("--note: more than one line, or a control character; accepted: one line of text");
        List<LogEntry> entries = [];
        HashSet<string> used = new(StringComparer.Ordinal);
        foreach ((string method, Option<string[]> option) in o.Readings)
        {
            foreach (string reading in parsed.GetValue(option) ?? [])
                entries.Add(Entry(time, cylinder, method, reading, note, used));
        }

        if (entries.Count == 0)
            _faults.Add("give a reading, such as --weight \"31.2 lb\", --line \"5.1 in\" or --inside \"61 °F\"");
        else
            _faults.AddRange(Given().Where(d => !used.Contains(d.Name)).Select(d => $"--{d.Name} does not go with {string.Join(" or ", entries.Select(e => $"--{e.Method}").Distinct())}"));
        foreach (LogEntry entry in entries)
        {
            if (MeasuredMethod.Of(entry.Method) is { } measured)
            {
                if (entry.Cylinder.Length > 0 || !measured.IsOfCylinder)
                    _faults.AddRange(MeasurementReader.Read(entry, scenario.Rig).Faults.Select(f => f.AsOption(entry.Method)));
            }
            else if (entry.Cylinder.Length > 0)
            {
                _faults.AddRange(EntryReader.Read(entry, scenario.Rig).Faults.Select(f => f.AsOption(entry.Method)));
            }
        }

        return _faults.Count == 0 ? entries
            : throw CommandFault.Input([.. _faults.Distinct().Select(f => $"coldsim: {f}"), "See 'coldsim log add --help'."]);
    }

    // Of several readings at once only the first follows the filling.
    private LogEntry Entry(DateTimeOffset time, string cylinder, string method, string reading, string note, HashSet<string> used)
    {
        IReadOnlyList<string> known = LogMethods.DetailsOf(method);
        LogDetail[] details = [.. Given().Where(d => known.Contains(d.Name, StringComparer.Ordinal) && (d.Name != LogMethods.Filled || !used.Contains(d.Name)))];
        used.UnionWith(details.Select(d => d.Name));
        return new()
        {
            Time = time,
            Cylinder = MeasuredMethod.Of(method) is { IsOfCylinder: false } ? "" : cylinder,
            Method = method,
            Reading = reading.Trim(),
            Temperature = LogMethods.ReadsLevel(method) ? (parsed.GetValue(o.Temperature) ?? "").Trim() : "",
            Details = details,
            Note = note,
        };
    }

    // Empty where the cylinder is unknown; the fault has been added then.
    private string Cylinder()
    {
        if (parsed.GetValue(o.Cylinder) is not { } name)
        {
            if (scenario.Rig.Cylinders.Count == 1)
                return LogCylinders.NameOf(scenario.Rig, 0);
            _faults.Add($"--cylinder is missing, and the scenario has {scenario.Rig.Cylinders.Count}; {LogCylinders.Accepted(scenario.Rig)}");
            return "";
        }

        if (LogCylinders.PlaceOf(scenario.Rig, name) is { } place)
            return LogCylinders.NameOf(scenario.Rig, place);
        _faults.Add($"--cylinder: '{Quote.Of(name)}'; {LogCylinders.Accepted(scenario.Rig)}");
        return "";
    }

    private IEnumerable<LogDetail> Given()
    {
        if (parsed.GetValue(o.Filled))
            yield return new(LogMethods.Filled, "");
        if (parsed.GetValue(o.Checked))
            yield return new(LogMethods.Checked, "");
        if (parsed.GetValue(o.Rested))
            yield return new("rested", "");
        foreach (Option<string?> option in o.Details)
        {
            if (parsed.GetValue(option) is { } value)
                yield return new(option.Name.TrimStart('-'), value.Trim());
        }
    }

    private DateTimeOffset Time()
    {
        if (parsed.GetValue(o.At) is not { } text)
            return LogEntry.Now(clock, scenario.Start.Offset);

        // A reading lies behind, so a clock time alone is the latest one.
        if (CommonOptions.ClockTime(text) is { } clockTime)
            return CommonOptions.Coming(clockTime, LogEntry.Now(clock, scenario.Start.Offset).AddDays(-1));
        if (InstantText.TryRead(text, scenario.Start.Offset, out DateTimeOffset time) == InstantText.Outcome.Read)
            return time;
        _faults.Add(string.Create(CultureInfo.InvariantCulture, $"--at: '{Quote.Of(text)}' is not a time; {InstantText.Accepted}, or a clock time such as 07:00"));
        return default;
    }
}
