using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CsvHelper;

namespace ColdSim.Files.Weather;

/// <summary>The records of a table one after another, lines counted, with broken quotation reported.</summary>
internal sealed class Records : IDisposable
{
    /// <summary>What is accepted where headings stand again.</summary>
    public const string OnlyHeadings = "accepted: one row of headings, above all others";

    private const int LongestRecord = 1 << 22;

    private readonly CsvReader _csv;
    private readonly WeatherFaults _faults;
    private readonly char _separator;
    private bool _malformed;

    public Records(TextReader text, char separator, WeatherFaults faults)
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

    /// <summary>How many fields it has.</summary>
    public int Count => _csv.FieldCount;

    /// <summary>Whether a record was left out because it could not be taken apart.</summary>
    public bool Broken { get; private set; }

    /// <summary>Whether quotation does not matter, as in lines of comment above a table.</summary>
    public bool Lenient { get; set; }

    /// <summary>Goes to the next record that can be taken apart.</summary>
    public bool Next()
    {
        while (_csv.Read())
        {
            if (!_malformed)
                return true;
            _malformed = false;
            if (Lenient)
                return true;
            Broken = true;
            _faults.Report(Line, 1, "a quotation mark that does not open and close a field");
        }
        return false;
    }

    /// <summary>A field without outer spaces; empty where the record is short.</summary>
    public string Text(int field) => field >= 0 && field < _csv.FieldCount ? _csv.GetString(field).Trim() : "";

    /// <summary>Every field of the record.</summary>
    public string[] All() => [.. Enumerable.Range(0, Count).Select(Text)];

    /// <summary>Reports where the headings stand again, as in files that were put one behind another.</summary>
    public bool IsAgain(string[] headings)
    {
        if (headings.Length != Count || !headings.SequenceEqual(All(), StringComparer.OrdinalIgnoreCase))
            return false;
        _faults.Report(Line, 1, "the headings stand here again", OnlyHeadings);
        return true;
    }

    /// <summary>Whether a field is empty or not there.</summary>
    public bool IsEmpty(int field) => field < 0 || field >= _csv.FieldCount || _csv.GetSpan(field).IndexOfAnyExcept((byte)' ', (byte)'\t') < 0;

    /// <summary>A number in a field; a comma is its point where commas do not part fields.</summary>
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
