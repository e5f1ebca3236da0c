namespace ColdSim.Files.Toml;

/// <summary>A place in a scenario text, counted from 1.</summary>
internal readonly record struct TextPlace(int Line, int Column);

/// <summary>One value of a scenario text and its place.</summary>
internal abstract record TomlValue(TextPlace Place)
{
    /// <summary>What kind of value it is, for "found …".</summary>
    public abstract string Kind { get; }
}

internal sealed record TomlText(TextPlace Place, string Value) : TomlValue(Place)
{
    public override string Kind => "a text";
}

internal sealed record TomlNumber(TextPlace Place, double Value, bool Whole, string Written) : TomlValue(Place)
{
    public override string Kind => "a number";
}

internal sealed record TomlFlag(TextPlace Place, bool Value) : TomlValue(Place)
{
    public override string Kind => "true or false";
}

/// <summary>A date, a time or both; what of them is written is said by the flags.</summary>
internal sealed record TomlDateOrTime(TextPlace Place, DateTimeOffset Value, bool HasOffset, bool HasDate, bool HasTime) : TomlValue(Place)
{
    public override string Kind => (HasDate, HasTime) switch
    {
        (true, true) => "a date and time",
        (true, false) => "a date",
        _ => "a time",
    };
}

internal sealed record TomlList(TextPlace Place, IReadOnlyList<TomlValue> Items) : TomlValue(Place)
{
    public override string Kind => "a list";
}

/// <summary>A value that Tomlyn could not read and has already reported.</summary>
internal sealed record TomlBroken(TextPlace Place) : TomlValue(Place)
{
    public override string Kind => "an unreadable value";
}

/// <summary>The tables of one <c>[[name]]</c>.</summary>
internal sealed record TomlTables(TextPlace Place, List<TomlTable> Items) : TomlValue(Place)
{
    public override string Kind => "a list of tables";
}

/// <summary>A key with the place where it is written.</summary>
/// <param name="KeyPlace">The key's place.</param>
/// <param name="Value">Its value.</param>
internal sealed record TomlEntry(TextPlace KeyPlace, TomlValue Value);

/// <summary>A table: keys and values, in the order written.</summary>
/// <param name="Place">Its header's place.</param>
/// <param name="Name">Dotted, empty for the top level.</param>
internal sealed record TomlTable(TextPlace Place, string Name) : TomlValue(Place)
{
    public override string Kind => "a table";

    public Dictionary<string, TomlEntry> Entries { get; } = [];

    /// <summary>Whether a header <c>[name]</c> has been seen, so that a second one is refused.</summary>
    public bool HasHeader { get; set; }

    /// <summary>How it is written in messages.</summary>
    public string Title => Name.Length == 0 ? "the top level" : $"[{Name}]";
}
