using System.Globalization;
using System.Text;
using ColdSim.Files.Weather;

namespace ColdSim.Files.Logs;

/// <summary>One line of the log as text and back. A record never runs over a line's end.</summary>
internal static class LogLine
{
    /// <summary>The first line of a log.</summary>
    public const string Header = "time,cylinder,method,reading,liquid temperature,details,note";

    private const int Columns = 7;

    /// <summary>The line without its end.</summary>
    /// <exception cref="ArgumentException">A text with a line's end or another control character in it.</exception>
    public static string Of(LogEntry entry)
    {
        string[] fields =
        [
            entry.Time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture), entry.Cylinder, entry.Method, entry.Reading,
            entry.Temperature, string.Join("; ", entry.Details), entry.Note,
        ];
        if (fields.Any(f => f.Any(char.IsControl)))
            throw new ArgumentException("A log's line holds no line ends or other control characters.", nameof(entry));
        return string.Join(',', fields.Select(Quoted));
    }

    /// <summary>Reads a line; null, and what is wrong, where it is damaged.</summary>
    public static LogEntry? Read(string text, string file, int line, List<FileProblem> problems)
    {
        if (Split(text) is not { } fields)
        {
            problems.Add(new(file, line, text.IndexOf('"', StringComparison.Ordinal) + 1, "a quotation mark that does not end", "accepted: a field in quotes, each quote in it doubled"));
            return null;
        }

        if (fields.Count != Columns)
        {
            problems.Add(new(file, line, 1, FormattableString.Invariant($"{fields.Count} {(fields.Count == 1 ? "field" : "fields")}"), $"accepted: {Columns}, {Header}"));
            return null;
        }

        switch (InstantText.TryRead(fields[0].Text, null, out DateTimeOffset time))
        {
            case InstantText.Outcome.Unreadable:
                problems.Add(new(file, line, fields[0].Column, $"'{fields[0].Text}' is not a time", InstantText.Accepted));
                return null;
            case InstantText.Outcome.WithoutOffset:
                problems.Add(new(file, line, fields[0].Column, $"'{fields[0].Text}' has no offset from UTC", InstantText.Accepted));
                return null;
        }

        return new LogEntry
        {
            Time = time,
            Cylinder = fields[1].Text,
            Method = fields[2].Text,
            Reading = fields[3].Text,
            Temperature = fields[4].Text,
            Details = [.. fields[5].Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Detail)],
            Note = fields[6].Text,
        };
    }

    /// <summary>Where each field of a line begins, from 1; for messages.</summary>
    public static int ColumnOf(string text, int field) => Split(text) is { } fields && field < fields.Count ? fields[field].Column : 1;

    private static LogDetail Detail(string text)
        => text.IndexOf('=', StringComparison.Ordinal) is > 0 and int at ? new(text[..at].TrimEnd(), text[(at + 1)..].TrimStart()) : new(text, "");

    private static string Quoted(string field)
        => field.AsSpan().IndexOfAny(',', '"') < 0 && field == field.Trim() ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    // Null where a quotation mark does not end. Outside quotes, a field's spaces at its ends do not count: a spreadsheet may add them.
    private static List<(string Text, int Column)>? Split(string text)
    {
        List<(string, int)> fields = [];
        StringBuilder field = new();
        int i = 0;
        while (true)
        {
            int column = i + 1;
            field.Clear();
            if (i < text.Length && text[i] == '"')
            {
                for (i++; ; i++)
                {
                    if (i >= text.Length)
                        return null;
                    if (text[i] != '"')
                        field.Append(text[i]);
                    else if (i + 1 < text.Length && text[i + 1] == '"')
                        field.Append(text[i++]);
                    else
                        break;
                }

                i++;
                while (i < text.Length && text[i] != ',')
                    field.Append(text[i++]);
                fields.Add((field.ToString(), column));
            }
            else
            {
                while (i < text.Length && text[i] != ',')
                    field.Append(text[i++]);
                fields.Add((field.ToString().Trim(), column));
            }

            if (i >= text.Length)
                return fields;
            i++;
        }
    }
}
