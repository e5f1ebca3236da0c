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
    private int _more;
    private int _lastLine;

    public string File => file;

    public bool Any => _problems.Count > 0;

    /// <summary>Whether reading on is of no use.</summary>
    public bool AreTooMany => _more >= TooMany;

    public IReadOnlyList<string> Warnings => _warnings;

    public IReadOnlyList<string> Notes => _notes;

    public void Report(int line, int column, string what, string? accepted = null, string? nearest = null)
    {
        if (_problems.Count < Shown)
            _problems.Add(new FileProblem(file, line, column, what, accepted, nearest));
        else
            (_more, _lastLine) = (_more + 1, _more == 0 ? line : _lastLine);
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
