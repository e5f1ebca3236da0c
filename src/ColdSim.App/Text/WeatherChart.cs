using System.Globalization;
using System.Text;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Text;

/// <summary>Air temperature over time: a band from the lowest to the highest of each slice, in braille on a terminal, in stars elsewhere.</summary>
internal static class WeatherChart
{
    private const int Cells = 64;
    private const int Rows = 7;

    // A weekday and a number with a blank.
    private const int DayLabel = 7;

    /// <summary>The lines of the chart.</summary>
    /// <param name="air">What is drawn; at least two slices.</param>
    /// <param name="units">The person's units.</param>
    /// <param name="braille">Whether dots may be drawn.</param>
    /// <param name="days">Whether the midnights are marked, and named where there is room.</param>
    public static IReadOnlyList<string> Lines(IReadOnlyList<AirSlice> air, UnitStyle units, bool braille, bool days = false)
    {
        ValueAxis axis = ValueAxis.Around(units.TemperatureIn(air.Min(a => a.Low_K)), units.TemperatureIn(air.Max(a => a.High_K)), units.TemperatureUnit);
        double middle = (axis.Low + axis.High) / 2;
        string middleLabel = $"{middle.ToString("#,0.###", CultureInfo.InvariantCulture)} {axis.Unit}";
        int margin = Math.Max(Math.Max(axis.LowLabel.Length, axis.HighLabel.Length), middleLabel.Length);
        string[] drawn = braille ? Dots(air, units, axis) : Stars(air, units, axis);
        List<string> lines = [];
        for (int row = 0; row < Rows; row++)
        {
            string label = row == 0 ? axis.HighLabel : row == Rows - 1 ? axis.LowLabel : row == Rows / 2 ? middleLabel : "";
            lines.Add($"{label.PadLeft(margin)} |{drawn[row]}".TrimEnd());
        }

        string first = Edge(air[0].From), last = Edge(air[^1].To);
        (string marks, string names) = days ? Days(air[0].From, air[^1].To) : (new string('-', Cells), "");
        lines.Add($"{new string(' ', margin)} +{marks}");
        if (names.Length > 0)
        {
            lines.Add($"{new string(' ', margin + 2)}{names}".TrimEnd());
            return lines;
        }

        lines.Add($"{new string(' ', margin + 2)}{first}{last.PadLeft(Cells - first.Length)}");
        return lines;
    }

    private static (string Marks, string Names) Days(DateTimeOffset first, DateTimeOffset last)
    {
        char[] marks = [.. Enumerable.Repeat('-', Cells)], names = [.. Enumerable.Repeat(' ', Cells)];
        double scale = (Cells - 1) / (last - first).TotalHours;
        bool named = scale * 24 >= DayLabel;
        for (DateTimeOffset midnight = new(first.Date.AddDays(1), first.Offset); midnight < last; midnight = midnight.AddDays(1))
        {
            int cell = (int)Math.Round((midnight - first).TotalHours * scale);
            marks[cell] = '+';
            string name = midnight.ToString("ddd d", CultureInfo.InvariantCulture);
            if (named && cell + name.Length <= Cells)
                name.CopyTo(0, names, cell, name.Length);
        }

        return (new string(marks), named ? new string(names) : "");
    }

    private static string[] Dots(IReadOnlyList<AirSlice> air, UnitStyle units, ValueAxis axis)
    {
        DotGrid grid = new(Cells, Rows);
        Draw(air, units, axis, grid.Columns, grid.Dots, grid.Set);
        return [.. Enumerable.Range(0, Rows).Select(r => string.Concat(Enumerable.Range(0, Cells).Select(c => grid.IsSet(c, r) ? grid.Glyph(c, r) : ' ')))];
    }

    private static string[] Stars(IReadOnlyList<AirSlice> air, UnitStyle units, ValueAxis axis)
    {
        StringBuilder[] lines = [.. Enumerable.Range(0, Rows).Select(_ => new StringBuilder(new string(' ', Cells)))];
        Draw(air, units, axis, Cells, Rows, (column, dot) => lines[Rows - 1 - dot][column] = '*');
        return [.. lines.Select(l => l.ToString())];
    }

    private static void Draw(IReadOnlyList<AirSlice> air, UnitStyle units, ValueAxis axis, int columns, int dots, Action<int, int> set)
    {
        (double Low, double High)[] band = [.. Enumerable.Repeat((double.PositiveInfinity, double.NegativeInfinity), columns)];
        DateTimeOffset first = air[0].From;
        double scale = (columns - 1) / (air[^1].To - first).TotalHours;
        double x = 0, before = 0;
        for (int i = 0; i < air.Count; i++)
        {
            double from = (air[i].From - first).TotalHours * scale, to = (air[i].To - first).TotalHours * scale;
            double begins = units.TemperatureIn(air[i].First_K);
            // Where rows are wider apart than columns, the line between them.
            for (int column = (int)Math.Floor(x) + 1; i > 0 && column < from; column++)
                Take(column, before + (begins - before) * (column - x) / (from - x));
            for (double column = from; column <= to; column++)
            {
                Take(column, units.TemperatureIn(air[i].Low_K));
                Take(column, units.TemperatureIn(air[i].High_K));
            }

            (x, before) = (to, units.TemperatureIn(air[i].Last_K));
        }

        for (int column = 0; column < columns; column++)
        {
            for (double dot = axis.Dot(band[column].Low, dots); dot <= axis.Dot(band[column].High, dots) && dot < dots; dot++)
                set(column, (int)dot);
        }

        void Take(double at, double value)
        {
            int column = Math.Clamp((int)Math.Round(at), 0, columns - 1);
            band[column] = (Math.Min(band[column].Low, value), Math.Max(band[column].High, value));
        }
    }

    private static string Edge(DateTimeOffset time) => ClockText.NumberedDateClock(time);
}
