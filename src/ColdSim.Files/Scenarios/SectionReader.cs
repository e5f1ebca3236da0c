using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>Reads one table key by key; what nobody asked for is reported at the end.</summary>
internal sealed class SectionReader(Reading reading, TomlTable table, bool present = true)
{
    private readonly SortedSet<string> _known = new(StringComparer.Ordinal);

    /// <summary>What the whole reading gathers.</summary>
    public Reading Reading { get; } = reading;

    /// <summary>Whether the table is written at all.</summary>
    public bool Present { get; } = present;

    /// <summary>Where its header stands.</summary>
    public TextPlace Place => table.Place;

    /// <summary>How it is written, such as <c>[cylinder]</c>.</summary>
    public string Title => table.Title;

    /// <summary>Whether the key is written; does not make it known.</summary>
    public bool Has(string key) => table.Entries.ContainsKey(key);

    /// <summary>Where the key stands, or the header.</summary>
    public TextPlace PlaceOf(string key) => table.Entries.TryGetValue(key, out TomlEntry? entry) ? entry.KeyPlace : Place;

    public string? Text(string key)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlText text: return text.Value;
            case { } other: return Refuse<string>(key, other, "a text in quotes");
        }
    }

    public bool? Flag(string key)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlFlag flag: return flag.Value;
            case { } other: return Refuse<bool?>(key, other, "true or false");
        }
    }

    public double? Number(string key, double low, double high)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlNumber number when number.Value >= low && number.Value <= high: return number.Value;
            case TomlNumber number: return Outside(key, number, FormattableString.Invariant($"accepted: {low} to {high}"));
            case { } other: return Refuse<double?>(key, other, FormattableString.Invariant($"a number, {low} to {high}"));
        }
    }

    public int? Whole(string key, int low, int high)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlNumber { Whole: true } number when number.Value >= low && number.Value <= high: return (int)number.Value;
            case TomlNumber { Whole: true } number:
                Outside(key, number, FormattableString.Invariant($"accepted: {low} to {high}"));
                return null;
            case TomlNumber number:
                Reading.Report(number.Place, $"'{key}' is {number.Written}", FormattableString.Invariant($"accepted: a whole number, {low} to {high}"));
                return null;
            case { } other: return Refuse<int?>(key, other, FormattableString.Invariant($"a whole number, {low} to {high}"));
        }
    }

    /// <summary>The value in SI units; null where it is absent or faulty.</summary>
    public double? Get(QuantityKey key)
    {
        Reading.Limits.Add(new AskedLimit(table.Name, key.Name, key.Low, key.High));
        switch (Value(key.Name))
        {
            case null: return null;
            case TomlNumber number when key.Dimension == Dimension.Ratio: return Within(key, number.Place, number.Written, number.Value);
            case TomlNumber number:
                Reading.Report(number.Place, $"'{key.Name}' is {number.Written} without a unit", key.Accepted);
                return null;
            case TomlText text:
                if (SiText.Read(text.Value, key.Dimension, out double si) is { } fault)
                {
                    Reading.Report(text.Place, $"'{key.Name}': {fault.What}", fault.Accepted, fault.Nearest);
                    return null;
                }
                return Within(key, text.Place, text.Value.Trim(), si);
            case { } other: return Refuse<double?>(key.Name, other, $"a text with a unit, \"{key.Low}\" to \"{key.High}\"");
        }
    }

    /// <summary>The value in SI units, or the default where it is absent or faulty.</summary>
    public double Get(QuantityKey key, double otherwise) => Get(key) ?? otherwise;

    /// <summary>The value in SI units, or the default, which the report then names.</summary>
    public double GetOrAssume(QuantityKey key, double otherwise, FormattableString assumption)
    {
        if (!Has(key.Name))
            Reading.Assume(assumption);
        return Get(key) ?? otherwise;
    }

    /// <summary>The value in SI units; NaN, and a fault, where it is absent.</summary>
    public double Require(QuantityKey key)
    {
        if (!Has(key.Name))
            Lacks(key.Name, key.Accepted);
        return Get(key) ?? double.NaN;
    }

    /// <summary>One of a few words.</summary>
    public T? Choice<T>(string key, params IReadOnlyList<(string Word, T Value)> choices) where T : struct
    {
        string accepted = string.Join(", ", choices.Select(c => $"\"{c.Word}\""));
        switch (Value(key))
        {
            case null: return null;
            case TomlText text:
                foreach ((string word, T value) in choices)
                {
                    if (string.Equals(word, text.Value.Trim(), StringComparison.OrdinalIgnoreCase))
                        return value;
                }
                Reading.Report(text.Place, $"'{key}' is \"{text.Value}\"", "accepted: " + accepted, NearestName.Of(text.Value, choices.Select(c => c.Word)));
                return null;
            case { } other: return Refuse<T?>(key, other, "one of " + accepted);
        }
    }

    /// <summary>Any value, for keys that read it themselves.</summary>
    public TomlValue? Value(string key)
    {
        Know(key);
        return table.Entries.TryGetValue(key, out TomlEntry? entry) && entry.Value is not TomlBroken ? entry.Value : null;
    }

    /// <summary>A table below this one; an empty one where it is not written.</summary>
    public SectionReader Section(string key)
    {
        switch (Value(key))
        {
            case TomlTable below: return new SectionReader(Reading, below);
            case null: break;
            case { } other: Refuse<string>(key, other, $"a table [{Join(key)}]"); break;
        }
        return new SectionReader(Reading, new TomlTable(Place, Join(key)), present: false);
    }

    /// <summary>The tables <c>[[key]]</c> below this one.</summary>
    public IReadOnlyList<SectionReader> Sections(string key)
    {
        switch (Value(key))
        {
            case null: return [];
            case TomlTables tables: return [.. tables.Items.Select(t => new SectionReader(Reading, t))];
            case TomlList { Items: var items } when items.All(i => i is TomlTable):
                return [.. items.Select(i => new SectionReader(Reading, (TomlTable)i))];
            case { } other:
                Refuse<string>(key, other, $"tables [[{Join(key)}]]");
                return [];
        }
    }

    /// <summary>Makes a key known without reading it, so that another way of saying the same is not called unknown.</summary>
    public void Know(string key)
    {
        _known.Add(key);
        Reading.Vocabulary.Add(new AskedKey(table.Name, key));
    }

    /// <summary>Reports that a key is absent.</summary>
    public void Lacks(string key, string? accepted = null) => Reading.Missing(Place, $"{Title} lacks '{key}'", accepted);

    /// <summary>Reports a fault at a key.</summary>
    public void Report(string key, string what, string? accepted = null) => Reading.Report(PlaceOf(key), what, accepted);

    /// <summary>Reports the keys that nobody asked for.</summary>
    public void Finish()
    {
        foreach ((string key, TomlEntry entry) in table.Entries)
        {
            if (_known.Contains(key))
                continue;
            bool isTable = entry.Value is TomlTable { HasHeader: true } or TomlTables;
            string what = isTable ? $"unknown table [{Join(key)}]" : $"unknown key '{key}' {(table.Name.Length == 0 ? "at" : "in")} {Title}";
            string? nearest = NearestName.Of(key, _known);
            Reading.Report(entry.KeyPlace, what, nearest is null ? "accepted: " + string.Join(", ", _known) : null, nearest);
        }
    }

    private double? Within(QuantityKey key, TextPlace place, string written, double si)
    {
        // The limits are given in round units; a value written in others may miss them by its last digit.
        double slack = 1e-9 * Math.Max(Math.Abs(key.LowSi), Math.Abs(key.HighSi));
        if (si >= key.LowSi - slack && si <= key.HighSi + slack)
            return Math.Clamp(si, key.LowSi, key.HighSi);
        Reading.Report(place, $"'{key.Name}' is {written}", key.Accepted);
        return null;
    }

    private double? Outside(string key, TomlNumber number, string accepted)
    {
        Reading.Report(number.Place, $"'{key}' is {number.Written}", accepted);
        return null;
    }

    private T? Refuse<T>(string key, TomlValue found, string accepted)
    {
        string what = found is TomlNumber number ? $"'{key}' is the number {number.Written}" : $"'{key}' is {found.Kind}";
        Reading.Report(found.Place, what, "accepted: " + accepted);
        return default;
    }

    private string Join(string key) => table.Name.Length == 0 ? key : string.Create(CultureInfo.InvariantCulture, $"{table.Name}.{key}");
}
