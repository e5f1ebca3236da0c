using System.Globalization;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ColdSim.Files.Toml;

/// <summary>Sets and removes keys of a TOML text in place; comments and everything else stay as they are written.</summary>
/// <remarks>
/// A path names tables of a list by their number from 1, such as <c>cylinder.2.left</c>; a table that is written once, with one pair of brackets or two, is
/// its own number 1. Only keys under their own table's header, or at the top level, are found: not those of inline tables or with dots.
/// </remarks>
internal sealed class TomlSplice
{
    private readonly record struct Header(TableSyntaxBase Syntax, string Path);

    private string _text;

    /// <summary>Holds a text to be changed.</summary>
    /// <param name="text">A text that parses.</param>
    public TomlSplice(string text) => _text = text;

    /// <summary>The text with all changes so far.</summary>
    public string Text => _text;

    /// <summary>The value of a key as it is written; null where it is not given under a header of its own.</summary>
    /// <param name="path">Parts of the key's whole name.</param>
    public string? Value(IReadOnlyList<string> path)
        => Find(SyntaxParser.Parse(_text, "", validate: false), path) is { Value: { } there } ? _text.Substring(there.Span.Offset, there.Span.Length) : null;

    /// <summary>Sets a key.</summary>
    /// <param name="path">Parts of its whole name. Its table is written where it is missing, one more table of a list after the last.</param>
    /// <param name="value">As TOML writes it.</param>
    public void Set(IReadOnlyList<string> path, string value)
    {
        DocumentSyntax document = SyntaxParser.Parse(_text, "", validate: false);
        if (Find(document, path)?.Value is { } there)
        {
            _text = _text[..there.Span.Offset] + value + _text[(there.Span.Offset + there.Span.Length)..];
            return;
        }

        string line = $"{path[^1]} = {value}\n";
        if (path.Count == 1)
        {
            _text = line + _text;
            return;
        }

        List<Header> headers = Headers(document);
        string table = Path(path, path.Count - 1);
        if (headers.FirstOrDefault(h => h.Path == table) is { Syntax: not null } header)
            Insert(LineEnd(Start(header.Syntax)), line);
        else
            AddTable(headers, path, line);
    }

    /// <summary>Removes a key with its whole line; nothing happens where it is not given.</summary>
    /// <param name="path">Parts of its whole name.</param>
    public void Remove(IReadOnlyList<string> path)
    {
        if (Find(SyntaxParser.Parse(_text, "", validate: false), path) is not { } pair)
            return;
        int from = LineStart(pair.Span.Offset), to = LineEnd(pair.Span.Offset + Math.Max(0, pair.Span.Length - 1));
        _text = _text[..from] + _text[to..];
    }

    // A table below one of a list belongs to the one that was opened last before it, so it is written before the next.
    private void AddTable(List<Header> headers, IReadOnlyList<string> path, string line)
    {
        string name = string.Join('.', path.Take(path.Count - 1).Where(p => !IsNumber(p)));
        bool isOfList = IsNumber(path[^2]);
        string owner = Path(path, isOfList ? path.Count - 2 : path.Count - 1);
        if (isOfList)
            MakeList(headers, name);
        string open = isOfList ? $"\n[[{name}]]\n" : $"\n[{name}]\n";

        // After the last table whose name begins as this one's parent's does, or at the end.
        string parent = isOfList ? path[0] : owner.Contains('.', StringComparison.Ordinal) ? owner[..owner.LastIndexOf('.')] : owner;
        List<Header> now = Headers(SyntaxParser.Parse(_text, "", validate: false));
        int last = now.FindLastIndex(h => h.Path == parent || h.Path.StartsWith(parent + ".", StringComparison.Ordinal));
        int at = last < 0 ? _text.Length : last + 1 < now.Count ? TableEnd(now[last].Syntax) : _text.Length;
        if (at == _text.Length && _text.Length > 0 && !_text.EndsWith('\n'))
            Insert(at++, "\n");
        Insert(at, open + line);
    }

    // Of several each has two pairs of brackets, so the one that there is gets them too.
    private void MakeList(List<Header> headers, string name)
    {
        if (headers.FirstOrDefault(h => h.Path == name + ".1").Syntax is not TableSyntax one)
            return;
        int open = one.OpenBracket!.Span.Offset, close = one.CloseBracket!.Span.Offset;
        _text = $"{_text[..open]}[{_text[open..close]}]{_text[close..]}";
    }

    private static KeyValueSyntax? Find(DocumentSyntax document, IReadOnlyList<string> path)
    {
        if (path.Count == 1)
            return document.KeyValues.FirstOrDefault(p => Name(p.Key) == path[0]);
        string table = Path(path, path.Count - 1);
        foreach (Header header in Headers(document))
        {
            if (header.Path == table && header.Syntax.Items.FirstOrDefault(p => Name(p.Key) == path[^1]) is { } pair)
                return pair;
        }

        return null;
    }

    // Every header with the numbers of the tables of lists that it lies in. Top-level tables count as number 1 of their name.
    private static List<Header> Headers(DocumentSyntax document)
    {
        Dictionary<string, int> counts = [];
        List<Header> headers = [];
        foreach (TableSyntaxBase table in document.Tables)
        {
            string[] parts = Name(table.Name).Split('.');
            string path = "";
            for (int i = 0; i < parts.Length; i++)
            {
                string plain = string.Join('.', parts.Take(i + 1));
                if (i == parts.Length - 1)
                    counts[plain] = table is TableArraySyntax ? counts.GetValueOrDefault(plain) + 1 : 1;
                int number = counts.GetValueOrDefault(plain, 1);
                path += (i == 0 ? "" : ".") + parts[i] + (i == 0 || number > 1 || table is TableArraySyntax ? FormattableString.Invariant($".{number}") : "");
            }

            headers.Add(new(table, path));
        }

        return headers;
    }

    // The first part has a number always, so that "cylinder.left" and "cylinder.1.left" are one.
    private static string Path(IReadOnlyList<string> parts, int count)
    {
        List<string> path = [parts[0]];
        if (parts.Count < 2 || count < 2 || !IsNumber(parts[1]))
            path.Add("1");
        path.AddRange(parts.Skip(1).Take(count - 1));
        return string.Join('.', path);
    }

    private void Insert(int at, string what) => _text = _text[..at] + what + _text[at..];

    private int TableEnd(TableSyntaxBase table)
    {
        int last = table.Items.Select(i => i.Span.Offset + i.Span.Length).DefaultIfEmpty(Start(table)).Max();
        return LineEnd(Math.Max(Start(table), last - 1));
    }

    private static int Start(TableSyntaxBase table) => table.OpenBracket?.Span.Offset ?? table.Span.Offset;

    private int LineStart(int offset) => offset == 0 ? 0 : _text.LastIndexOf('\n', offset - 1) + 1;

    private int LineEnd(int offset) => _text.IndexOf('\n', offset) is >= 0 and int feed ? feed + 1 : _text.Length;

    private static bool IsNumber(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out _);

    private static string Name(KeySyntax? key) => key?.ToString().Replace(" ", "", StringComparison.Ordinal) ?? "";
}
