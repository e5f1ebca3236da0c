using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>The headings of a weather file in our own layout: the meaning and the unit of each field.</summary>
internal sealed class WeatherHeader
{
    private const string TimeHeading = "time";
    private const int Shown = 5;

    private readonly Dictionary<WeatherColumn, (int Field, UnitSpelling Unit, string Heading)> _columns = [];

    /// <summary>The time's field.</summary>
    public int Time { get; private set; } = -1;

    /// <summary>The number of fields in a row.</summary>
    public int Count { get; private init; }

    public bool Has(WeatherColumn column) => _columns.ContainsKey(column);

    public (int Field, UnitSpelling Unit, string Heading) Of(WeatherColumn column) => _columns[column];

    /// <summary>Reads the headings; null where time or air cannot be read.</summary>
    /// <param name="headings">As in the file.</param>
    /// <param name="line">Their line.</param>
    /// <param name="faults">Receives the faults.</param>
    /// <param name="guessed">Whether the file is read as ours only because no other layout was recognised.</param>
    public static WeatherHeader? Read(IReadOnlyList<string> headings, int line, WeatherFaults faults, bool guessed)
    {
        WeatherHeader header = new() { Count = headings.Count };
        int column = 1;
        for (int field = 0; field < headings.Count; field++)
        {
            header.Add(headings[field], field, line, column, faults);
            column += headings[field].Length + 1;
        }
        if (header._unused.Count > 0)
            faults.Warn($"{faults.File}: {(header._unused.Count == 1 ? "column" : "columns")} {header.UnusedNames()} {(header._unused.Count == 1 ? "is" : "are")} not used");
        string begin = guessed ? "no known layout is recognised, and as our own CSV it has " : "";
        if (header.Time < 0)
            faults.Report(line, 1, begin + "no column 'time'", $"accepted: {TimeHeading} and {WeatherColumn.Air.Example}, and any of "
                + string.Join(", ", WeatherColumn.All.Skip(1).Select(c => c.Example)));
        if (!header.Has(WeatherColumn.Air) && !header._airRefused)
            faults.Report(line, 1, begin + "no column 'air'", $"accepted: {WeatherColumn.Air.Example}");
        return header.Time < 0 || !header.Has(WeatherColumn.Air) ? null : header;
    }

    private readonly List<string> _unused = [];
    private bool _airRefused;

    private string UnusedNames()
    {
        string names = string.Join(", ", _unused.Take(Shown).Select(u => $"'{Quote.Of(u)}'"));
        return _unused.Count > Shown ? FormattableString.Invariant($"{names} and {_unused.Count - Shown} more") : names;
    }

    private void Add(string heading, int field, int line, int column, WeatherFaults faults)
    {
        (string name, string? unit) = Split(heading);
        if (name == TimeHeading)
        {
            if (Time >= 0)
                faults.Report(line, column, $"column '{Quote.Of(name)}' is given twice");
            Time = field;
            return;
        }
        if (WeatherColumn.All.FirstOrDefault(c => c.Headings.Contains(name)) is not { } known)
        {
            string? nearest = NearestName.Of(name, WeatherColumn.All.SelectMany(c => c.Headings).Append(TimeHeading));
            if (nearest is not null)
                faults.Report(line, column, $"unknown column '{Quote.Of(name)}'", null, nearest);
            else
                _unused.Add(heading.Trim());
            return;
        }
        if (unit is null)
        {
            Refuse(known, faults, line, column, $"column '{Quote.Of(name)}' has no unit", $"accepted: its unit in brackets, such as {known.Example}");
            return;
        }
        if (SpellingTable.Find(known.Dimension, unit) is not { } spelling)
        {
            string what = SpellingTable.IsUnit(unit) ? $"'{Quote.Of(unit)}' is not a unit of {known.Dimension.Name()}" : $"unknown unit '{Quote.Of(unit)}'";
            Refuse(known, faults, line, column, $"column '{Quote.Of(name)}': {what}", "accepted: " + string.Join(", ", SpellingTable.Accepted(known.Dimension)));
            return;
        }
        if (!_columns.TryAdd(known, (field, spelling, heading.Trim())))
            faults.Report(line, column, $"column '{known.Name}' is given twice");
    }

    private void Refuse(WeatherColumn column, WeatherFaults faults, int line, int at, string what, string accepted)
    {
        _airRefused |= column == WeatherColumn.Air;
        faults.Report(line, at, what, accepted);
    }

    private static (string Name, string? Unit) Split(string heading)
    {
        string text = heading.Trim().TrimStart('\uFEFF');
        int open = text.IndexOfAny(['[', '(']);
        if (open < 0 || text[^1] is not (']' or ')'))
            return (Plain(text), null);
        return (Plain(text[..open]), text[(open + 1)..^1].Trim());
    }

    private static string Plain(string name) => name.Trim().Replace('_', ' ').ToLowerInvariant();
}
