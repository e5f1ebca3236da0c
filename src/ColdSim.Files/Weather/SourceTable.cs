using ColdSim.Files.Quantities;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>A column of a table in a layout other than our own.</summary>
/// <param name="Column">Its meaning.</param>
/// <param name="Field">Its field, from 0.</param>
/// <param name="Heading">Its heading in the table.</param>
/// <param name="Unit">Its unit.</param>
internal sealed record SourceColumn(WeatherColumn Column, int Field, string Heading, UnitSpelling Unit)
{
    /// <summary>Numbers that mean "not known".</summary>
    public Func<double, bool>? Missing { get; init; }

    /// <summary>Further fields whose numbers are added to it.</summary>
    public IReadOnlyList<int> AlsoAdded { get; init; } = [];

    /// <summary>Numbers from this one up mean "not known".</summary>
    public static Func<double, bool> AtLeast(double value) => v => v >= value;

    /// <summary>Numbers from this one down mean "not known".</summary>
    public static Func<double, bool> AtMost(double value) => v => v <= value;
}

/// <summary>Reads the records of a table in a layout other than our own as rows of weather.</summary>
internal sealed class SourceTable(RecordReader records, RowCollector rows, WeatherFaults faults)
{
    private static readonly HashSet<string> Unknown = new(["NaN", "null", "NA", "N/A", "-", "M", "*", "T", "VRB"], StringComparer.OrdinalIgnoreCase);

    private readonly Dictionary<WeatherColumn, SourceColumn> _columns = [];

    /// <summary>Texts that mean "not known", beside the usual.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>Whether a letter after a number marks it as suspect; the number then counts as not known.</summary>
    public bool LettersAreSuspect { get; init; }

    /// <summary>Whether the value in a column passed the publisher's checks; null accepts all.</summary>
    public Func<WeatherColumn, bool>? Accepts { get; init; }

    /// <summary>Records without a temperature.</summary>
    public int WithoutAir { get; private set; }

    /// <summary>Values marked as suspect.</summary>
    public int Suspect { get; private set; }

    /// <summary>Values that <see cref="Accepts"/> refused.</summary>
    public int Failed { get; private set; }

    public bool Has(WeatherColumn column) => _columns.ContainsKey(column);

    public IEnumerable<WeatherColumn> Columns => _columns.Keys;

    /// <summary>The unit of a column; null where the table does not have it.</summary>
    public string? UnitOf(WeatherColumn column) => _columns.TryGetValue(column, out SourceColumn? known) ? known.Unit.Spellings[0] : null;

    public void Add(SourceColumn column) => _columns.TryAdd(column.Column, column);

    /// <summary>Adds a column by its heading, where the table has it.</summary>
    public void Add(WeatherColumn column, IReadOnlyList<string> headings, string heading, string unit, Func<double, bool>? missing = null)
    {
        for (int i = 0; i < headings.Count; i++)
        {
            if (string.Equals(headings[i].Trim(), heading, StringComparison.OrdinalIgnoreCase))
            {
                Add(new SourceColumn(column, i, heading, column.Unit(unit)) { Missing = missing });
                return;
            }
        }
    }

    /// <summary>The record as a row at a time; null where it has no temperature, and where it is faulty.</summary>
    public WeatherRow? Row(DateTimeOffset time)
    {
        if (time != default)
            faults.At = time;
        double? air = Value(WeatherColumn.Air, out bool faulty);
        double? humidity = Value(WeatherColumn.Humidity, out _);
        double? dewPoint = Value(WeatherColumn.DewPoint, out _) ?? (air is { } a && humidity is { } h ? WeatherColumn.DewPoint_K(a, h) : null);
        WeatherRow row = new(time, air ?? double.NaN, Value(WeatherColumn.Wind, out _), dewPoint, Value(WeatherColumn.Sun, out _), Value(WeatherColumn.Cloud, out _), Value(WeatherColumn.Pressure, out _));
        if (air is not null)
            return row;
        if (!faulty)
        {
            WithoutAir++;
            rows.LeftOut++;
        }

        return null;
    }

    /// <summary>Notes what was left out.</summary>
    public void NoteLeftOut()
    {
        if (WithoutAir > 0)
        {
            rows.EmptyMessage = "every air temperature is missing";
            faults.Note($"{faults.File}: {Counted(WithoutAir, "record")} without a temperature left out");
        }

        if (Suspect > 0)
            faults.Note($"{faults.File}: {Counted(Suspect, "value")} that the publisher marks as suspect left out");
        if (Failed > 0)
            faults.Note($"{faults.File}: {Counted(Failed, "value")} that failed the publisher's checks left out");
    }

    private static string Counted(int n, string what) => n == 1 ? $"1 {what}" : FormattableString.Invariant($"{n} {what}s");

    private double? Value(WeatherColumn column, out bool faulty)
    {
        faulty = false;
        if (!_columns.TryGetValue(column, out SourceColumn? known) || records.IsEmpty(known.Field))
            return null;
        if (!records.TryNumber(known.Field, out double value))
        {
            string text = records.Text(known.Field);
            if (Unknown.Contains(text) || Missing.Contains(text))
                return null;
            if (LettersAreSuspect && records.TryNumber(text.TrimEnd('s', 'S', '*'), out _))
            {
                Suspect++;
                return null;
            }
            faulty = true;
            string hint = text.Contains(',', StringComparison.Ordinal) ? "; a decimal comma, perhaps" : "";
            Report(known, $"'{Quote.Of(text)}' is not a number{hint}", "accepted: a number, or nothing where it is not known");
            return null;
        }
        if (known.Missing is { } missing && missing(value))
            return null;
        if (Missing.Count > 0 && Missing.Contains(records.Text(known.Field)))
            return null;
        if (Accepts is { } accepts && !accepts(column))
        {
            Failed++;
            return null;
        }
        foreach (int field in known.AlsoAdded)
        {
            if (!records.TryNumber(field, out double more))
                return null;
            value += more;
        }

        double si = known.Unit.ToSi(value);
        switch (rows.Values.Of(column, value, records.Line, ref si))
        {
            case ColumnCheck.Outcome.Value: return si;
            case ColumnCheck.Outcome.NotKnown: return null;
        }

        faulty = true;
        Report(known, FormattableString.Invariant($"{records.Text(known.Field)} {known.Unit.Spellings[0]} is out of range"), $"accepted: {column.Low} to {column.High}");
        return null;
    }

    private void Report(SourceColumn column, string what, string accepted)
        => faults.Report(records.Line, records.ColumnOf(column.Field), $"{column.Heading}: {what}", accepted);
}
