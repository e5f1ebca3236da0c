using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>Reads one table by the declarations of its keys; what is not declared is reported at the end.</summary>
internal sealed class SectionReader(Reading reading, TomlTable table, ScenarioSection declared, bool present = true)
{
    /// <summary>What the whole reading gathers.</summary>
    public Reading Reading { get; } = reading;

    /// <summary>Whether the table is written at all.</summary>
    public bool Present { get; } = present;

    /// <summary>Where its header is.</summary>
    public TextPlace Place => table.Place;

    /// <summary>How it is written, such as <c>[cylinder]</c>.</summary>
    public string Title => table.Title;

    /// <summary>Whether the key is written.</summary>
    public bool Has(ScenarioKey key) => table.Entries.ContainsKey(key.Name);

    /// <summary>Whether the section below this one is written.</summary>
    public bool Has(ScenarioSection below) => table.Entries.ContainsKey(below.Name);

    /// <summary>Where the value of a key is, or the header.</summary>
    public TextPlace ValuePlace(ScenarioKey key) => Value(key)?.Place ?? Place;

    /// <summary>Where the key is, or the header.</summary>
    public TextPlace PlaceOf(ScenarioKey key) => PlaceOf(key.Name);

    /// <summary>Where the header of a section below is, or this section's header.</summary>
    public TextPlace PlaceOf(ScenarioSection below) => PlaceOf(below.Name);

    public string? Get(TextKey key)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlText text: return text.Value;
            case { } other: return Refuse<string>(key.Name, other, "a text in quotes");
        }
    }

    public bool? Get(FlagKey key)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlFlag flag: return flag.Value;
            case { } other: return Refuse<bool?>(key.Name, other, "true or false");
        }
    }

    /// <summary>The flag as written, or its default.</summary>
    public bool GetOrDefault(FlagKey key) => Get(key) ?? key.IsTrueByDefault;

    public double? Get(NumberKey key)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlNumber number when number.Value >= key.Low && number.Value <= key.High: return number.Value;
            case TomlNumber number:
                ReportOutside(key, number, "accepted: " + key.Limits);
                return null;
            case { } other: return Refuse<double?>(key.Name, other, $"a number, {key.Limits}");
        }
    }

    public int? Get(WholeKey key)
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlNumber { Whole: true } number when number.Value >= key.Low && number.Value <= key.High:
                if (key.Usual is { High: { } most } && number.Value > double.Parse(most, CultureInfo.InvariantCulture))
                    WarnUnusual(key, number.Place, number.Written);
                return (int)number.Value;
            case TomlNumber { Whole: true } number:
                ReportOutside(key, number, "accepted: " + key.Limits);
                return null;
            case TomlNumber number:
                ReportOutside(key, number, $"accepted: a whole number, {key.Limits}");
                return null;
            case { } other: return Refuse<int?>(key.Name, other, $"a whole number, {key.Limits}");
        }
    }

    /// <summary>The whole number as written, or its default.</summary>
    public int GetOrDefault(WholeKey key) => Get(key) ?? (int)(key.Default.Si ?? throw NoDefault(key));

    /// <summary>The value in SI units; null where it is absent or faulty.</summary>
    public double? Get(QuantityKey key) => Get(key, out _);

    /// <summary>The value in SI units, and which of the key's quantities it is; null where it is absent, faulty or one of the key's words.</summary>
    public double? Get(QuantityKey key, out QuantityRange range)
    {
        range = key.Ranges[0];
        switch (Value(key))
        {
            case null: return null;
            case TomlNumber number when range.Dimension == Dimension.Ratio: return Within(key, range, number.Place, number.Written, number.Value);
            case TomlNumber number:
                ReportOutside(key, number, $"write {range.WithUnit(number.Value)}; {key.Accepted}", " without a unit");
                return null;
            case TomlText text when IsWord(key, text): return null;
            case TomlText text:
                range = RangeOf(key, text.Value);
                if (SiText.Read(text.Value, range.Dimension, out double si) is { } fault)
                {
                    Reading.Report(text.Place, $"'{key.Name}': {fault.What}", fault.Accepted, fault.Nearest);
                    return null;
                }
                return Within(key, range, text.Place, text.Value.Trim(), si);
            case { } other: return Refuse<double?>(key.Name, other, $"a text with a unit, \"{range.Low}\" to \"{range.High}\"");
        }
    }

    /// <summary>Whether one of the key's words is written instead of a quantity.</summary>
    public bool IsWord(QuantityKey key) => Value(key) is TomlText text && IsWord(key, text);

    /// <summary>The value in SI units, or the default where it is absent or faulty.</summary>
    public double Get(QuantityKey key, double otherwise) => Get(key) ?? otherwise;

    /// <summary>The value in SI units, or the key's default where it is absent or faulty.</summary>
    public double GetOrDefault(QuantityKey key)
        => Get(key) ?? key.DefaultSi ?? throw NoDefault(key);

    /// <summary>The value in SI units; NaN, and a fault, where it is absent.</summary>
    public double Require(QuantityKey key)
    {
        if (!Has(key))
            Lacks(key, key.Accepted);
        return Get(key) ?? double.NaN;
    }

    /// <summary>One of a few words.</summary>
    public T? Get<T>(ChoiceKey<T> key)
        where T : struct
    {
        switch (Value(key))
        {
            case null: return null;
            case TomlText text:
                if (key.ValueOf(text.Value.Trim()) is { } value)
                    return value;
                Reading.Report(text.Place, $"'{key.Name}' is \"{Quote.Of(text.Value)}\"", "accepted: " + key.Accepted, NearestName.Of(text.Value, key.Words));
                return null;
            case { } other: return Refuse<T?>(key.Name, other, "one of " + key.Accepted);
        }
    }

    /// <summary>One of a few words, or the default where there is none or a faulty one.</summary>
    public T GetOrDefault<T>(ChoiceKey<T> key)
        where T : struct
        => Get(key) ?? key.Otherwise ?? throw NoDefault(key);

    /// <summary>What is written for a section below; null where nothing is.</summary>
    public TomlValue? Value(ScenarioSection below) => Value(below.Name);

    /// <summary>Any value, for keys that are read elsewhere.</summary>
    public TomlValue? Value(ScenarioKey key) => Value(key.Name);

    /// <summary>A table below this one; an empty one where it is not written.</summary>
    public SectionReader Section(ScenarioSection below)
    {
        switch (Value(below.Name))
        {
            case TomlTable there: return new SectionReader(Reading, there, below);
            case null: break;
            case { } other: Refuse<string>(below.Name, other, $"a table [{Join(below.Name)}]"); break;
        }
        return new SectionReader(Reading, new TomlTable(Place, Join(below.Name)), below, present: false);
    }

    /// <summary>The tables <c>[[name]]</c> below this one.</summary>
    public IReadOnlyList<SectionReader> Sections(ScenarioSection below)
    {
        switch (Value(below.Name))
        {
            case null: return [];
            case TomlTables tables: return [.. tables.Items.Select(t => new SectionReader(Reading, t, below))];
            case TomlList { Items: var items } when items.All(i => i is TomlTable):
                return [.. items.Select(i => new SectionReader(Reading, (TomlTable)i, below))];
            case { } other:
                Refuse<string>(below.Name, other, $"tables [[{Join(below.Name)}]]");
                return [];
        }
    }

    /// <summary>Whether the section below this one is written as a list of tables.</summary>
    public bool IsList(ScenarioSection below) => Value(below.Name) is TomlTables;

    /// <summary>Whether the section below this one is written as tables, by headers or as a list of its own.</summary>
    public bool AreTables(ScenarioSection below)
        => Value(below.Name) is TomlTables || Value(below.Name) is TomlList { Items: var items } && items.All(i => i is TomlTable);

    /// <summary>The place of a key or table by its dotted name, or of the nearest table above it that is written; of several the first.</summary>
    public TextPlace PlaceOfPath(string path)
    {
        (TomlTable at, TextPlace place) = (table, Place);
        foreach (string name in path.Split('.'))
        {
            if (!at.Entries.TryGetValue(name, out TomlEntry? entry))
                break;
            place = entry.KeyPlace;
            if ((entry.Value as TomlTable ?? (entry.Value as TomlTables)?.Items.FirstOrDefault()) is not { } below)
                break;
            at = below;
        }

        return place;
    }

    /// <summary>Names what is assumed of a key that is not written.</summary>
    /// <param name="key">The key.</param>
    /// <param name="who">Whose it is.</param>
    /// <param name="value">What is assumed; null for the key's default.</param>
    public void Assume(ScenarioKey key, string who, FormattableString? value = null)
    {
        if (!Has(key))
            Reading.Assumptions.Add(key.AssumedAs(who, value?.ToString(CultureInfo.InvariantCulture)));
    }

    /// <summary>Reports that a key is absent.</summary>
    public void Lacks(ScenarioKey key, string? accepted = null) => Reading.Missing(Place, $"{Title} lacks '{key.Name}'", accepted);

    /// <summary>Reports a fault at a key.</summary>
    public void Report(ScenarioKey key, string what, string? accepted = null) => Reading.Report(PlaceOf(key), what, accepted);

    /// <summary>Reports a fault at a section below.</summary>
    public void Report(ScenarioSection below, string what, string? accepted = null) => Reading.Report(PlaceOf(below), what, accepted);

    /// <summary>Reports the keys that are not declared.</summary>
    public void Finish()
    {
        foreach ((string name, TomlEntry entry) in table.Entries)
        {
            if (declared.Has(name))
                continue;
            bool isTable = entry.Value is TomlTable { HasHeader: true } or TomlTables;
            string what = isTable ? $"unknown table [{Quote.Of(Join(name))}]" : $"unknown key '{Quote.Of(name)}' {(table.Name.Length == 0 ? "at" : "in")} {Title}";
            string? nearest = NearestName.Of(name, declared.Names);
            Reading.Report(entry.KeyPlace, what, nearest is null ? "accepted: " + string.Join(", ", declared.Names) : null, nearest);
        }
    }

    private TomlValue? Value(string name)
    {
        if (!declared.Has(name))
            throw new ArgumentException($"[{declared.Name}] declares no '{name}'.", nameof(name));
        return table.Entries.TryGetValue(name, out TomlEntry? entry) && entry.Value is not TomlBroken ? entry.Value : null;
    }

    private TextPlace PlaceOf(string name) => table.Entries.TryGetValue(name, out TomlEntry? entry) ? entry.KeyPlace : Place;

    private static InvalidOperationException NoDefault(ScenarioKey key) => new($"'{key.Name}' has no single default.");

    private static bool IsWord(QuantityKey key, TomlText text) => key.Words.Contains(text.Value.Trim(), StringComparer.OrdinalIgnoreCase);

    // Which of several quantities is meant is said by the unit.
    private static QuantityRange RangeOf(QuantityKey key, string text)
    {
        if (key.Ranges.Count == 1 || !NumberText.TryRead(text.Trim(), out _, out string unit, out _) || unit.Length == 0)
            return key.Ranges[0];
        return key.Ranges.FirstOrDefault(r => SpellingTable.Find(r.Dimension, unit) is not null) ?? key.Ranges[0];
    }

    private double? Within(QuantityKey key, QuantityRange range, TextPlace place, string written, double si)
    {
        // The limits are given in round units; a value written in others may miss them by its last digit.
        double slack = 1e-9 * Math.Max(Math.Abs(range.LowSi), Math.Abs(range.HighSi));
        if (si >= range.LowSi - slack && si <= range.HighSi + slack)
        {
            if (key.Usual is { } usual && ((usual.Low is { } least && si < range.Si(least) - slack) || (usual.High is { } most && si > range.Si(most) + slack)))
                WarnUnusual(key, place, written);
            return Math.Clamp(si, range.LowSi, range.HighSi);
        }

        bool bare = range.Dimension == Dimension.Ratio && key.Ranges.Count > 1 && si >= 2 && NumberText.TryRead(written, out _, out string unit, out _) && unit.Length == 0;
        string accepted = bare ? $"write {key.Ranges[1].WithUnit(si)}; {range.Accepted}" : range.Accepted;
        Reading.Report(place, $"'{key.Name}' is {Quote.Of(written)}", accepted);
        return null;
    }

    private void WarnUnusual(ScenarioKey key, TextPlace place, string written)
        => Reading.WarnUnusual(place, $"'{key.Name}' is {Quote.Of(written)}", key.Usual!.Shown + key.Usual.Hint);

    private void ReportOutside(ScenarioKey key, TomlNumber number, string accepted, string more = "")
        => Reading.Report(number.Place, $"'{key.Name}' is {number.Written}{more}", accepted);

    private T? Refuse<T>(string name, TomlValue found, string accepted)
    {
        string what = found is TomlNumber number ? $"'{name}' is the number {number.Written}" : $"'{name}' is {found.Kind}";
        Reading.Report(found.Place, what, "accepted: " + accepted);
        return default;
    }

    private string Join(string name) => table.Name.Length == 0 ? name : string.Create(CultureInfo.InvariantCulture, $"{table.Name}.{name}");
}
