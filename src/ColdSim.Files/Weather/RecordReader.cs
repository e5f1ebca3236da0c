using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CsvHelper;

namespace ColdSim.Files.Weather;

/// <summary>Reads the records of a delimited table one after another, counts lines and reports broken quotation.</summary>
internal sealed class RecordReader : IDisposable
{
    /// <summary>What is accepted, for the fault that headings are repeated.</summary>
    public const string OneHeadingRow = "accepted: one row of headings, above all others";

    private const int LongestRecord = 1 << 22;

    private static readonly char[] KnownSeparators = [',', ';', '\t', '|'];

    private readonly CsvReader _csv;
    private readonly WeatherFaults _faults;
    private readonly char _separator;
    private bool _malformed;

    public RecordReader(TextReader text, char separator, WeatherFaults faults)
    {
        (_separator, _faults) = (separator, faults);
        _csv = CsvReader.Create(text, new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            // Remarks in pipe-separated files hold single quotation marks; there they quote nothing.
            Quote = separator == '|' ? '\u001F' : '"',
            MaxRecordSize = LongestRecord,
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            MalformedData = CsvMalformedDataHandling.Recover,
            OnMalformedRecord = _ => _malformed = true,
        }, leaveOpen: true);
    }

    /// <summary>The line of the record.</summary>
    public int Line => (int)Math.Max(1, _csv.LineNumber);

    /// <summary>The number of fields of the record.</summary>
    public int Count => _csv.FieldCount;

    /// <summary>Whether a record was left out because its fields could not be separated.</summary>
    public bool HasBroken { get; private set; }

    /// <summary>Whether quotation does not matter, as in lines of comment above a table.</summary>
    public bool Lenient { get; set; }

    /// <summary>Goes to the next record whose fields can be separated.</summary>
    public bool Next()
    {
        while (!_faults.AreTooMany && _csv.Read())
        {
            if (!_malformed)
                return true;
            _malformed = false;
            if (Lenient)
                return true;
            HasBroken = true;
            _faults.Report(Line, 1, "a quotation mark that does not open and close a field");
        }
        return false;
    }

    /// <summary>A field without outer spaces; empty where the record is short.</summary>
    public string Text(int field) => field >= 0 && field < _csv.FieldCount ? _csv.GetString(field).Trim() : "";

    /// <summary>Every field of the record.</summary>
    public string[] All() => [.. Enumerable.Range(0, Count).Select(Text)];

    /// <summary>Whether the record repeats the headings, as in files that were joined; this is then reported.</summary>
    public bool ReportRepeatedHeadings(string[] headings)
    {
        if (headings.Length != Count || !headings.SequenceEqual(All(), StringComparer.OrdinalIgnoreCase))
            return false;
        _faults.Report(Line, 1, "the headings are here again", OneHeadingRow);
        return true;
    }

    /// <summary>Whether a field is empty or not there.</summary>
    public bool IsEmpty(int field) => field < 0 || field >= _csv.FieldCount || _csv.GetSpan(field).IndexOfAnyExcept((byte)' ', (byte)'\t') < 0;

    /// <summary>A number in a field; a comma is a decimal point where fields are not separated by commas.</summary>
    public bool TryNumber(int field, out double value)
    {
        value = double.NaN;
        if (field < 0 || field >= _csv.FieldCount)
            return false;
        ReadOnlySpan<byte> bytes = _csv.GetSpan(field);
        bytes = bytes.Trim((byte)' ');
        if (Utf8Parser.TryParse(bytes, out value, out int read) && read == bytes.Length)
            return double.IsFinite(value);
        return TryNumber(Text(field), out value);
    }

    /// <summary>The same for a text.</summary>
    public bool TryNumber(string text, out double value)
    {
        string plain = text.Replace('−', '-');
        if (_separator != ',' && plain.Count(c => c == ',') == 1 && !plain.Contains('.', StringComparison.Ordinal))
            plain = plain.Replace(',', '.');
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    /// <summary>A number in a field whose size is at most a limit, or null.</summary>
    public double? NumberWithin(int field, double limit) => TryNumber(field, out double value) && Math.Abs(value) <= limit ? value : null;

    /// <summary>A whole number in a field, or null.</summary>
    public int? WholeNumber(int field)
        => TryNumber(field, out double value) && Math.Floor(value) == value && Math.Abs(value) < 1e6 ? (int)value : null;

    /// <summary>The field under any of some headings, in any case; -1 where there is none.</summary>
    public static int IndexOf(string[] headings, params string[] names)
        => Array.FindIndex(headings, h => names.Any(n => string.Equals(n, h, StringComparison.OrdinalIgnoreCase)));

    /// <summary>The separator that is most frequent outside quotes in a line; a comma where it has none.</summary>
    public static char SeparatorOf(string line)
    {
        int[] counts = new int[KnownSeparators.Length];
        int most = 0;
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
                quoted = !quoted;
            else if (!quoted && Array.IndexOf(KnownSeparators, c) is var i and >= 0)
                counts[i]++;
        }

        for (int i = 1; i < counts.Length; i++)
        {
            if (counts[i] > counts[most])
                most = i;
        }

        return KnownSeparators[most];
    }

    /// <summary>The column, in characters, at which a field begins.</summary>
    public int ColumnOf(int field)
    {
        int column = 1;
        for (int i = 0; i < field && i < _csv.FieldCount; i++)
            column += Encoding.UTF8.GetCharCount(_csv.GetRawSpan(i)) + 1;
        return column;
    }

    public void Dispose() => _csv.Dispose();
}
