using ColdSim.Files.Quantities;

namespace ColdSim.Files.Logs;

/// <summary>Reads the texts of one entry as quantities, and keeps everything that is wrong with them.</summary>
/// <param name="entry">The entry.</param>
internal sealed class EntryFields(LogEntry entry)
{
    private readonly List<EntryFault> _faults = [];

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<EntryFault> Faults => _faults;

    /// <summary>Whether its method is one that a log accepts; a fault where it is not.</summary>
    public bool HasMethod()
    {
        if (LogMethods.All.Contains(entry.Method, StringComparer.Ordinal))
            return true;
        string? nearest = NearestName.Of(entry.Method, LogMethods.All);
        Add(LogField.Method, $"'{Quote.Of(entry.Method)}' is not a way of reading", $"accepted: {string.Join(", ", LogMethods.All)}", nearest);
        return false;
    }

    /// <summary>Notes details that the method does not have, that are given twice, or that lack their value.</summary>
    public void CheckDetails()
    {
        IReadOnlyList<string> known = LogMethods.DetailsOf(entry.Method);
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (LogDetail detail in entry.Details)
        {
            if (!known.Contains(detail.Name, StringComparer.Ordinal))
                _faults.Add(new(LogField.Details, detail.Name, $"unknown detail '{Quote.Of(detail.Name)}' of {entry.Method}", $"accepted: {string.Join(", ", known)}", NearestName.Of(detail.Name, known)));
            else if (!seen.Add(detail.Name))
                _faults.Add(new(LogField.Details, detail.Name, $"'{Quote.Of(detail.Name)}' is given twice", null));
            else if (LogMethods.IsWord(detail.Name) != (detail.Value.Length == 0))
                _faults.Add(new(LogField.Details, detail.Name, $"'{Quote.Of(detail.ToString())}'", detail.Value.Length == 0 ? $"accepted: {detail.Name}=VALUE" : $"accepted: the word {detail.Name} alone"));
        }
    }

    /// <summary>One of some words, the first where it is not given.</summary>
    public string Choice(string name, params string[] words)
    {
        string word = Text(name) ?? words[0];
        if (!words.Contains(word, StringComparer.Ordinal))
            _faults.Add(new(LogField.Details, name, $"'{Quote.Of(word)}'", $"accepted: {string.Join(", ", words)}"));
        return word;
    }

    /// <summary>The reading itself, in SI units; 0 where it is faulty.</summary>
    public double Number(Dimension dimension, string low, string high)
        => Quantity(LogField.Reading, "", entry.Reading, dimension, low, high) ?? 0;

    /// <summary>A detail's quantity in SI units; null where it is not given or faulty.</summary>
    public double? Detail(string name, Dimension dimension, string low, string high)
        => Text(name) is { Length: > 0 } text ? Quantity(LogField.Details, name, text, dimension, low, high) : null;

    /// <summary>A text as a quantity in SI units; null, and a fault, where it is none or beyond its limits.</summary>
    public double? Quantity(LogField field, string detail, string text, Dimension dimension, string low, string high)
    {
        if (SiText.Read(text, dimension, out double si) is { } fault)
        {
            _faults.Add(new(field, detail, fault.What, fault.Accepted, fault.Nearest));
            return null;
        }

        SiText.Read(low, dimension, out double least);
        SiText.Read(high, dimension, out double most);
        if (si >= least && si <= most)
            return si;
        _faults.Add(new(field, detail, $"'{Quote.Of(text)}'", $"accepted: {low} to {high}"));
        return null;
    }

    /// <summary>A detail as it is written; null where it is not given.</summary>
    public string? Text(string name) => entry.Details.Where(d => d.Name == name).Select(d => d.Value).FirstOrDefault();

    /// <summary>Whether a detail is given.</summary>
    public bool Has(string name) => entry.Details.Any(d => d.Name == name);

    /// <summary>Notes a fault of a column.</summary>
    public void Add(LogField field, string what, string? accepted, string? nearest = null) => _faults.Add(new(field, "", what, accepted, nearest));

    /// <summary>Notes a fault of a detail.</summary>
    public void AddDetail(string name, string what, string? accepted) => _faults.Add(new(LogField.Details, name, what, accepted));
}
