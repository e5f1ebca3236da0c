using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Cells of several parts, with a code of quality for each value: <c>160,1,N,0046,1</c>.</summary>
internal sealed class PackedCells(RecordReader records, RowCollector rows, WeatherFaults faults)
{
    private int _failed;

    public RowCollector Rows => rows;

    /// <summary>Records without a temperature.</summary>
    public int WithoutAir { get; set; }

    /// <summary>A value in SI; null where it is not known, failed a check, or, with a fault, is no number or out of range.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="field">Its cell; -1 where the file has none.</param>
    /// <param name="part">Its part of the cell, from 0.</param>
    /// <param name="quality">The part with its code of quality.</param>
    /// <param name="scale">What the whole number is multiplied by.</param>
    /// <param name="missing">The number that means "not known".</param>
    public double? Value(WeatherColumn column, string unit, int field, int part, int quality, double scale, int missing)
    {
        if (field < 0 || records.IsEmpty(field))
            return null;
        string cell = records.Text(field);
        ReadOnlySpan<char> text = Part(cell, part);
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number))
        {
            faults.Report(records.Line, records.ColumnOf(field), $"{column.Name}: '{Quote.Of(cell)}' cannot be read", "accepted: whole numbers and codes parted by commas, such as -0067,1");
            return null;
        }

        if (Math.Abs((long)number) >= missing)
            return null;
        if (!Passes(Part(cell, quality)))
        {
            _failed++;
            return null;
        }

        double value = number * scale, si = column.Unit(unit).ToSi(value);
        switch (rows.Values.Of(column, value, records.Line, ref si))
        {
            case ColumnCheck.Outcome.Value: return si;
            case ColumnCheck.Outcome.NotKnown: return null;
        }

        faults.Report(records.Line, records.ColumnOf(field), FormattableString.Invariant($"{column.Name}: {value:0.#} {unit} is out of range"), $"accepted: {column.Low} to {column.High}");
        return null;
    }

    /// <summary>The cover of a cell that begins with it in eighths and has its quality next; null where it is not known.</summary>
    public double? Cover_frac(int field)
    {
        if (field < 0 || records.IsEmpty(field))
            return null;
        string cell = records.Text(field);

        // 9 is an obscured sky; higher codes are parts that are not known in eighths.
        return int.TryParse(Part(cell, 0), NumberStyles.None, CultureInfo.InvariantCulture, out int eighths) && eighths <= 9 && Passes(Part(cell, 1))
            ? Math.Min(1, eighths / 8.0) : null;
    }

    /// <summary>Notes what was left out.</summary>
    public void NoteLeftOut()
    {
        if (WithoutAir > 0)
        {
            rows.EmptyMessage = "every air temperature is missing";
            faults.Note($"{faults.File}: {(WithoutAir == 1 ? "1 record" : FormattableString.Invariant($"{WithoutAir} records"))} without a temperature left out");
        }

        if (_failed > 0)
            faults.Note($"{faults.File}: {(_failed == 1 ? "1 value" : FormattableString.Invariant($"{_failed} values"))} that failed the publisher's checks left out");
    }

    /// <summary>2 and 6 are suspect, 3 and 7 wrong; letters are values that somebody corrected or accepted.</summary>
    internal static bool Passes(ReadOnlySpan<char> quality) => quality is not ("2" or "3" or "6" or "7");

    private static ReadOnlySpan<char> Part(string cell, int part)
    {
        ReadOnlySpan<char> rest = cell;
        for (; part > 0; part--)
        {
            int comma = rest.IndexOf(',');
            if (comma < 0)
                return [];
            rest = rest[(comma + 1)..];
        }

        int end = rest.IndexOf(',');
        return (end < 0 ? rest : rest[..end]).Trim();
    }
}
