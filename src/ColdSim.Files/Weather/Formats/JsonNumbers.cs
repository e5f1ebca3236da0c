using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Checks the numbers of a JSON document as values of a column.</summary>
internal sealed class JsonNumbers(JsonText json, RowCollector rows, WeatherFaults faults)
{
    // Marks for "not known" that are within a column's limits are lower than this.
    private const double NoMark = -98;

    /// <summary>Records without a temperature.</summary>
    public int WithoutAir { get; private set; }

    /// <summary>Counts a record without a temperature.</summary>
    public void LeaveOut()
    {
        WithoutAir++;
        rows.LeftOut++;
    }

    /// <summary>The value in SI; null where it is not known, and, with a fault, where it is out of range.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="number">The number; null or not a number where it is not known.</param>
    /// <param name="name">What the document calls it.</param>
    /// <param name="place">Where it is in the document.</param>
    public double? Of(WeatherColumn column, UnitSpelling unit, double? number, string name, long place)
    {
        if (number is not { } value || double.IsNaN(value))
            return null;
        double si = unit.ToSi(value);

        // The values of a column lie one behind another, so lines are counted only for those that may be named.
        (double low, double high) = column.Limits;
        if (value > NoMark && si >= low && si <= high)
            return si;
        switch (rows.Values.Of(column, value, json.LineOf(place), ref si))
        {
            case ColumnCheck.Outcome.Value: return si;
            case ColumnCheck.Outcome.NotKnown: return null;
        }

        faults.Report(json.LineOf(place), json.ColumnOf(place), FormattableString.Invariant($"{name}: {value} {unit.Spellings[0]} is out of range"), $"accepted: {column.Low} to {column.High}");
        return null;
    }

    /// <summary>Notes what was left out.</summary>
    public void Finish()
    {
        if (WithoutAir == 0)
            return;
        rows.EmptyMessage = "every air temperature is missing";
        faults.Note($"{faults.File}: {(WithoutAir == 1 ? "1 record" : FormattableString.Invariant($"{WithoutAir} records"))} without a temperature left out");
    }
}
