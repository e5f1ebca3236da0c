using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Fills empty cells between two written ones with a straight line, where they are near enough.</summary>
internal static class MissingValues
{
    /// <summary>Fills what can be filled in one column and says what was done.</summary>
    /// <param name="rows">The rows, changed in place.</param>
    /// <param name="longest">The longest span that is filled.</param>
    /// <param name="name">The column's name.</param>
    /// <param name="value">Reads the column.</param>
    /// <param name="with">A row with the column set.</param>
    /// <param name="faults">Takes the note.</param>
    public static void Fill(
        List<WeatherRow> rows, TimeSpan longest, string name, Func<WeatherRow, double?> value, Func<WeatherRow, double, WeatherRow> with, WeatherFaults faults)
    {
        int empty = 0;
        int filled = 0;
        int last = -1;
        for (int i = 0; i < rows.Count; i++)
        {
            if (value(rows[i]) is not { } after)
            {
                empty++;
                continue;
            }
            if (last >= 0 && i - last > 1 && rows[i].Time - rows[last].Time <= longest)
            {
                double before = value(rows[last])!.Value;
                TimeSpan span = rows[i].Time - rows[last].Time;
                for (int j = last + 1; j < i; j++)
                {
                    rows[j] = with(rows[j], before + ((after - before) * ((rows[j].Time - rows[last].Time) / span)));
                    filled++;
                }
            }
            last = i;
        }
        if (empty == 0)
            return;
        string rest = filled == empty ? "" : FormattableString.Invariant($", {empty - filled} left to the stand-in");
        faults.Note($"{faults.File}: {name} is empty in {empty} rows; {filled} filled in between their neighbours{rest}");
    }
}
