using System.Globalization;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ColdSim.Files.Toml;

/// <summary>Turns Tomlyn's syntax tree into tables of values with their places, and collects the faults.</summary>
/// <remarks>A line that does not parse is reported once and left out, so that the rest is still checked.</remarks>
internal sealed class TomlTree
{
    private readonly string _file;
    private readonly List<FileProblem> _problems = [];
    private readonly HashSet<int> _brokenLines = [];
    private readonly string[] _lines;

    private const int MostBrokenLines = 20;

    // The table of which there may be several, each written with two brackets.
    private readonly string? _many;

    private TomlTree(string text, string file, string? many = null)
    {
        (_file, _many) = (file, many);
        _lines = text.Split('\n');
        Root = new TomlTable(new TextPlace(1, 1), "");
    }

    /// <summary>The top level.</summary>
    public TomlTable Root { get; }

    /// <summary>Syntax errors and keys given twice.</summary>
    public IReadOnlyList<FileProblem> Problems => _problems;

    /// <summary>Whether something did not parse, so that what seems missing may only be unread.</summary>
    public bool HasSyntaxErrors => _brokenLines.Count > 0;

    /// <summary>Whether the text is too large to be read at all.</summary>
    public bool IsBeyondBounds { get; private init; }

    /// <summary>Reads a text; never throws for its content.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Its name in messages.</param>
    /// <param name="many">A table that may be written once, or several times with two brackets each; null for none.</param>
    public static TomlTree Read(string text, string file, string? many = null)
    {
        if (TomlBounds.Fault(text) is { } beyond)
            return Beyond(beyond, file);
        TomlTree tree = new(text, file, many);
        DocumentSyntax document = tree.Parse();
        foreach (KeyValueSyntax pair in document.KeyValues)
            tree.AddPair(tree.Root, pair);
        foreach (TableSyntaxBase table in document.Tables)
            tree.AddTable(table);
        return tree;
    }

    // Nothing of a text that is too large is read.
    private static TomlTree Beyond((TextPlace Place, string What, string Accepted) beyond, string file)
    {
        TomlTree tree = new("", file) { IsBeyondBounds = true };
        tree._brokenLines.Add(beyond.Place.Line);
        tree.Add(beyond.Place, beyond.What, beyond.Accepted);
        return tree;
    }

    // One unclosed quotation mark turns everything after it inside out. So the first line that does not parse is put aside,
    // and the text parsed again, until it parses or is hopeless.
    private DocumentSyntax Parse()
    {
        while (true)
        {
            if (TryParse() is not { } document)
                return new DocumentSyntax();
            if (document.Diagnostics.Count == 0)
                return document;
            DiagnosticMessage? first = document.Diagnostics.OrderBy(m => m.Span.Start.Line).ThenBy(m => m.Span.Start.Column).FirstOrDefault();
            if (first is null)
                return document;
            TextPlace place = Place(first.Span);
            if (_brokenLines.Count == MostBrokenLines || place.Line > _lines.Length || !_brokenLines.Add(place.Line))
            {
                _brokenLines.Add(place.Line);
                return new DocumentSyntax();
            }
            string line = _lines[place.Line - 1].TrimEnd('\r');
            Add(place, BrokenLine.Fault(first.Message), BrokenLine.Hint(line));
            _lines[place.Line - 1] = BrokenLine.Repair(line);
        }
    }

    private DocumentSyntax? TryParse()
    {
        try
        {
            string text = string.Join('\n', _lines);
            if (_brokenLines.Count == 0 || TomlBounds.Fault(text) is not { } beyond)
                return SyntaxParser.Parse(text, _file, validate: false);
            Add(beyond.Place, beyond.What, beyond.Accepted);
            return null;
        }
        catch (TomlException)
        {
            _brokenLines.Add(1);
            Add(new TextPlace(1, 1), "the text cannot be read as TOML", "accepted: TOML");
            return null;
        }
    }

    private void AddTable(TableSyntaxBase syntax)
    {
        TextPlace place = Place(syntax.OpenBracket?.Span ?? syntax.Span);
        if (syntax.Name is null)
            return;
        List<(string Name, TextPlace Place)> path = Path(syntax.Name);
        if (path.Count == 0)
            return;
        TomlTable? parent = Root;
        for (int i = 0; i < path.Count - 1 && parent is not null; i++)
            parent = Step(parent, path[i].Name, path[i].Place);
        if (parent is null)
            return;
        TomlTable? table = syntax is TableArraySyntax ? Append(parent, path[^1].Name, place) : Open(parent, path[^1].Name, place);
        if (table is null)
            return;
        foreach (KeyValueSyntax pair in syntax.Items)
            AddPair(table, pair);
    }

    private TomlTable? Open(TomlTable parent, string name, TextPlace place)
    {
        if (!parent.Entries.TryGetValue(name, out TomlEntry? there))
        {
            TomlTable made = new(place, Join(parent, name)) { HasHeader = true };
            parent.Entries.Add(name, new TomlEntry(place, made));
            return made;
        }
        if (there.Value is TomlTable { HasHeader: false } opened)
        {
            TomlTable headed = new(place, opened.Name) { HasHeader = true };
            foreach ((string key, TomlEntry entry) in opened.Entries)
                headed.Entries.Add(key, entry);
            parent.Entries[name] = new TomlEntry(place, headed);
            return headed;
        }
        if (there.Value is TomlTables)
            OneBesideMany(place, Join(parent, name), there.KeyPlace.Line, place.Line);
        else if (_many == Join(parent, name))
            Add(place, $"[{name}] is given twice", FormattableString.Invariant($"for several write [[{name}]], in line {there.KeyPlace.Line} and here"));
        else
            Twice(place, $"[{Quote.Of(Join(parent, name))}]", there.KeyPlace);
        return there.Value as TomlTable;
    }

    private TomlTable? Append(TomlTable parent, string name, TextPlace place)
    {
        TomlTable made = new(place, Join(parent, name)) { HasHeader = true };
        if (!parent.Entries.TryGetValue(name, out TomlEntry? there))
        {
            parent.Entries.Add(name, new TomlEntry(place, new TomlTables(place, [made])));
            return made;
        }
        if (there.Value is TomlTables tables)
        {
            tables.Items.Add(made);
            return made;
        }
        if (there.Value is TomlTable { HasHeader: true })
            OneBesideMany(place, Join(parent, name), place.Line, there.KeyPlace.Line);
        else
            Twice(place, $"[[{Quote.Of(Join(parent, name))}]]", there.KeyPlace);
        return null;
    }

    // Goes into a table on the way to a deeper one; of a list of tables the last is meant.
    private TomlTable? Step(TomlTable parent, string name, TextPlace place)
    {
        if (!parent.Entries.TryGetValue(name, out TomlEntry? there))
        {
            TomlTable made = new(place, Join(parent, name));
            parent.Entries.Add(name, new TomlEntry(place, made));
            return made;
        }
        switch (there.Value)
        {
            case TomlTable table: return table;
            case TomlTables tables: return tables.Items[^1];
            default:
                Twice(place, $"'{Quote.Of(Join(parent, name))}'", there.KeyPlace);
                return null;
        }
    }

    private void AddPair(TomlTable table, KeyValueSyntax pair)
    {
        if (pair.Key is null)
            return;
        List<(string Name, TextPlace Place)> path = Path(pair.Key);
        if (path.Count == 0)
            return;
        TomlTable? owner = table;
        for (int i = 0; i < path.Count - 1 && owner is not null; i++)
            owner = Step(owner, path[i].Name, path[i].Place);
        if (owner is null)
            return;
        (string key, TextPlace keyPlace) = path[^1];
        if (owner.Entries.TryGetValue(key, out TomlEntry? there))
        {
            Twice(keyPlace, $"key '{Quote.Of(key)}'" + (owner.Name.Length == 0 ? "" : $" in [{Quote.Of(owner.Name)}]"), there.KeyPlace);
            return;
        }
        owner.Entries.Add(key, new TomlEntry(keyPlace, Value(pair.Value, keyPlace, Join(owner, key))));
    }

    private TomlValue Value(ValueSyntax? syntax, TextPlace fallback, string name)
    {
        if (syntax is null)
            return new TomlBroken(fallback);
        TextPlace place = Place(syntax.Span);
        return syntax switch
        {
            StringValueSyntax text => new TomlText(place, text.Value ?? ""),
            IntegerValueSyntax whole => new TomlNumber(place, whole.Value, true, whole.Value.ToString(CultureInfo.InvariantCulture)),
            FloatValueSyntax number => new TomlNumber(place, number.Value, false, number.Value.ToString(CultureInfo.InvariantCulture)),
            BooleanValueSyntax flag => new TomlFlag(place, flag.Value),
            DateTimeValueSyntax time => DateOrTime(place, time.Value),
            ArraySyntax list => new TomlList(place, Values(list, place, name)),
            InlineTableSyntax table => Inline(table, place, name),
            _ => new TomlBroken(place),
        };
    }

    private TomlValue[] Values(ArraySyntax syntax, TextPlace place, string name)
    {
        TomlValue[] values = new TomlValue[syntax.Items.ChildrenCount];
        for (int i = 0; i < values.Length; i++)
            values[i] = Value(syntax.Items.GetChild(i)!.Value, place, name);
        return values;
    }

    // The calendar's first and last years have no room for offsets, nights and trips that go beyond them.
    private TomlValue DateOrTime(TextPlace place, TomlDateTime value)
    {
        if (value.Kind != TomlDateTimeKind.LocalTime && value.DateTime.Year is < CalendarYears.First or > CalendarYears.Last)
        {
            Add(place, $"the year {value.DateTime.Year}", CalendarYears.Accepted);
            return new TomlBroken(place);
        }

        return new TomlDateOrTime(
            place,
            value.DateTime,
            value.Kind is TomlDateTimeKind.OffsetDateTimeByZ or TomlDateTimeKind.OffsetDateTimeByNumber,
            value.Kind != TomlDateTimeKind.LocalTime,
            value.Kind != TomlDateTimeKind.LocalDate);
    }

    private TomlTable Inline(InlineTableSyntax syntax, TextPlace place, string name)
    {
        TomlTable table = new(place, name) { HasHeader = true };
        foreach (InlineTableItemSyntax item in syntax.Items)
        {
            if (item.KeyValue is not null)
                AddPair(table, item.KeyValue);
        }
        return table;
    }

    private static List<(string, TextPlace)> Path(KeySyntax syntax)
    {
        List<(string, TextPlace)> path = [];
        Append(syntax.Key);
        foreach (DottedKeyItemSyntax part in syntax.DotKeys)
            Append(part.Key);
        return path;

        void Append(BareKeyOrStringValueSyntax? part)
        {
            string? name = part switch
            {
                BareKeySyntax bare => bare.Key?.Text,
                StringValueSyntax quoted => quoted.Value,
                _ => null,
            };
            if (name is not null && part is not null)
                path.Add((name, Place(part.Span)));
        }
    }

    private void OneBesideMany(TextPlace place, string name, int many, int one)
        => Add(place, FormattableString.Invariant($"[[{Quote.Of(name)}]] in line {many} and [{Quote.Of(name)}] in line {one}"),
            FormattableString.Invariant($"of several each is [[{Quote.Of(name)}]]: write [[{Quote.Of(name)}]] in line {one}"));

    private void Twice(TextPlace place, string what, TextPlace first)
        => Add(place, $"{what} is given twice", FormattableString.Invariant($"it is first given in line {first.Line}"));

    private void Add(TextPlace place, string what, string? accepted)
        => _problems.Add(new FileProblem(_file, place.Line, place.Column, what, accepted));

    private static string Join(TomlTable parent, string name) => parent.Name.Length == 0 ? name : parent.Name + "." + name;

    private static TextPlace Place(SourceSpan span) => new(span.Start.Line + 1, span.Start.Column + 1);
}
