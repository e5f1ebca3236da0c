using System.Text;
using ColdSim.Files.Weather;
using CsvHelper;

namespace ColdSim.Files.Logs;

/// <summary>One line of the log as text and back. A record never runs over a line's end.</summary>
internal static class LogLine
{
    /// <summary>The first line of a log.</summary>
    public const string Header = "time,cylinder,method,reading,liquid temperature,details,note";

    private const int Columns = 7;
    private const int Longest = 1 << 16;

    /// <summary>Whether a line is a log's first; a spreadsheet may have added spaces.</summary>
    public static bool IsHeader(string line) => line.Replace(" ", "", StringComparison.Ordinal) == Header.Replace(" ", "", StringComparison.Ordinal);

    // A note such as 5" is an ordinary value in a spreadsheet, so a quotation mark inside a field that is not quoted is kept as it is.
    private static readonly CsvReaderOptions Reading = new() { Separator = ',', HasHeader = false, MalformedData = CsvMalformedDataHandling.Recover };

    // Outer spaces are dropped when a line is read, so a field that has them is quoted.
    private static readonly CsvWriterOptions Writing = new() { Separator = ',', NewLine = "\n", ShouldQuote = (field, _, _, _) => field.Trim().Length < field.Length };

    /// <summary>The line without its end.</summary>
    /// <exception cref="ArgumentException">A text with a line's end or another control character in it.</exception>
    public static string Of(LogEntry entry)
    {
        string[] fields =
        [
            InstantText.Of(entry.Time), entry.Cylinder, entry.Method, entry.Reading,
            entry.Temperature, string.Join("; ", entry.Details), entry.Note,
        ];
        if (fields.Any(f => f.Any(char.IsControl)))
            throw new ArgumentException("A log's line holds no line ends or other control characters.", nameof(entry));
        using StringWriter line = new();
        using (CsvWriter csv = CsvWriter.Create(line, Writing))
        {
            foreach (string field in fields)
                csv.WriteField(field);
            csv.EndRecord();
        }

        return line.ToString().TrimEnd('\n');
    }

    /// <summary>Reads a line; null, and what is wrong, where it is damaged.</summary>
    public static LogEntry? Read(string text, string file, int line, List<FileProblem> problems)
    {
        if (text.Length > Longest)
        {
            problems.Add(new(file, line, 1, "a line longer than 64 kB", "accepted: lines of up to 64 kB"));
            return null;
        }

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
                problems.Add(new(file, line, fields[0].Column, $"'{Quote.Of(fields[0].Text)}' is not a time", InstantText.Accepted));
                return null;
            case InstantText.Outcome.WithoutOffset:
                problems.Add(new(file, line, fields[0].Column, $"'{Quote.Of(fields[0].Text)}' has no offset from UTC", InstantText.Accepted));
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

    // Null where a quotation mark does not end. The spaces around a field without quotes do not count: a spreadsheet may add them.
    private static List<(string Text, int Column)>? Split(string text)
    {
        // Lines end at line feeds; a carriage return that is left within one is no line end.
        using CsvReader csv = CsvReader.Create(Encoding.UTF8.GetBytes(text.Replace('\r', ' ')), Reading);
        if (!csv.Read())
            return [];
        List<(string, int)> fields = [];
        int column = 1;
        for (int i = 0; i < csv.FieldCount; i++)
        {
            string raw = Encoding.UTF8.GetString(csv.GetRawSpan(i));
            if (!raw.StartsWith('"'))
                fields.Add((raw.Trim(), column));
            else if (IsClosed(raw))
                fields.Add((csv.GetString(i), column));
            else
                return null;
            column += raw.Length + 1;
        }

        return fields;
    }

    // What is left of the quotation marks after the opening one, once the doubled ones are gone, is the closing one.
    private static bool IsClosed(string quoted) => quoted[1..].Replace("\"\"", "", StringComparison.Ordinal).Contains('"', StringComparison.Ordinal);
}
