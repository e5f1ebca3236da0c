using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>Collects the faults, warnings and notes of a weather file; after the first few faults only their number is kept.</summary>
internal sealed class WeatherFaults(string file)
{
    private const int Shown = 20;

    // A file with as many is no weather file, and may have no end.
    private const int TooMany = 10_000;

    private readonly List<FileProblem> _problems = [];
    private readonly List<string> _warnings = [];
    private readonly List<string> _notes = [];
    // A row's faults wait for its time, which is known only when a typical year is put together.
    private const int MostWaiting = 20_000;

    private List<FileProblem>? _waiting;
    private int _waited;
    private int _more;
    private (long Count, int Line) _outside;
    private int _lastLine;

    public string File => file;

    public bool Any => _problems.Count > 0;

    /// <summary>Whether reading on is of no use.</summary>
    public bool AreTooMany => _more >= TooMany;

    public IReadOnlyList<string> Warnings => _warnings;

    public IReadOnlyList<string> Notes => _notes;

    /// <summary>Tells times outside the days wanted; null where all are wanted.</summary>
    public Func<DateTimeOffset, bool>? IsUnwanted { get; init; }

    /// <summary>The time of the row that is read, or of the last one whose time could be read; null before the first and after the last row.</summary>
    public DateTimeOffset? At { get; set; }

    /// <summary>Whether that row lies outside the days wanted, so that its faults refuse nothing.</summary>
    public bool IsOutside => IsUnwanted is { } unwanted && At is { } time && time != default && unwanted(time);

    public void Report(int line, int column, string what, string? accepted = null, string? nearest = null)
    {
        if (_waiting is not null)
        {
            _waiting.Add(new FileProblem(file, line, column, what, accepted, nearest));
            return;
        }

        if (IsOutside)
        {
            _outside = (_outside.Count + 1, _outside.Count == 0 ? line : _outside.Line);
            return;
        }

        Report(new FileProblem(file, line, column, what, accepted, nearest));
    }

    /// <summary>What a reading reports, kept back until the row's time is known; nothing where every row is wanted anyway.</summary>
    public IReadOnlyList<FileProblem> Waiting(Action read)
    {
        if (IsUnwanted is null || _waited > MostWaiting)
        {
            read();
            return [];
        }

        List<FileProblem> waiting = _waiting = [];
        read();
        _waiting = null;
        _waited += waiting.Count;
        return waiting;
    }

    /// <summary>Reports what was kept back, now that <see cref="At"/> is known.</summary>
    public void Report(IReadOnlyList<FileProblem> waiting)
    {
        foreach (FileProblem problem in waiting)
        {
            if (IsOutside)
                _outside = (_outside.Count + 1, _outside.Count == 0 ? problem.Line : _outside.Line);
            else
                Report(problem);
        }
    }

    private void Report(FileProblem problem)
    {
        if (_problems.Count < Shown)
            _problems.Add(problem);
        else
            (_more, _lastLine) = (_more + 1, _more == 0 ? problem.Line : _lastLine);
    }

    /// <summary>Warns of faults that were passed over.</summary>
    public void WarnOfOutside()
    {
        if (_outside.Count > 0)
            Warn($"{file}:{_outside.Line}: {(_outside.Count == 1 ? "a fault" : FormattableString.Invariant($"the first of {_outside.Count} faults"))} outside the days wanted; what is faulty there is left out");
    }

    public void Note(FormattableString text) => _notes.Add(text.ToString(CultureInfo.InvariantCulture));

    public void Warn(FormattableString text) => _warnings.Add(text.ToString(CultureInfo.InvariantCulture));

    /// <summary>Warns of an unusual value.</summary>
    /// <param name="unusual">Its declaration.</param>
    /// <param name="found">What was found, with its place and value.</param>
    public void Warn(UnusualValue unusual, string found) => _warnings.Add(unusual.Warning(found));

    public IReadOnlyList<FileProblem> Problems()
    {
        IReadOnlyList<FileProblem> ordered = FileProblem.InOrder(_problems, file);
        if (_more == 0)
            return ordered;
        string rest = _more == 1 ? "and 1 more fault in this file" : FormattableString.Invariant($"and {_more} more faults in this file{(AreTooMany ? ", the rest of which was not read" : "")}");
        return [.. ordered, new FileProblem(file, Math.Max(_lastLine, ordered[^1].Line), 1, rest)];
    }
}
