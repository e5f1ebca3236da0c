using System.Globalization;
using System.Text;
using ColdSim.App.Screens;
using ColdSim.Model.Weather;

namespace ColdSim.App.Text;

/// <summary>Air temperature over time: a band from the lowest to the highest of each slice, in braille on a terminal, in stars elsewhere.</summary>
internal static class WeatherChart
{
    private const int Cells = 64;
    private const int Rows = 10;

    public static IReadOnlyList<string> Lines(IReadOnlyList<WeatherRow> rows, UnitStyle units, bool braille)
    {
        double[] shown = [.. rows.Select(r => units.TemperatureIn(r.Air_K))];
        ValueAxis axis = ValueAxis.Around(shown.Min(), shown.Max(), units.TemperatureUnit);
        double middle = (axis.Low + axis.High) / 2;
        string middleLabel = $"{middle.ToString("#,0.###", CultureInfo.InvariantCulture)} {axis.Unit}";
        int margin = Math.Max(Math.Max(axis.LowLabel.Length, axis.HighLabel.Length), middleLabel.Length);
        string[] drawn = braille ? Dots(rows, shown, axis) : Stars(rows, shown, axis);
        List<string> lines = [];
        for (int row = 0; row < Rows; row++)
        {
            string label = row == 0 ? axis.HighLabel : row == Rows - 1 ? axis.LowLabel : row == Rows / 2 ? middleLabel : "";
            lines.Add($"{label.PadLeft(margin)} |{drawn[row]}".TrimEnd());
        }

        string first = Edge(rows[0].Time), last = Edge(rows[^1].Time);
        lines.Add($"{new string(' ', margin)} +{new string('-', Cells)}");
        lines.Add($"{new string(' ', margin + 2)}{first}{last.PadLeft(Cells - first.Length)}");
        return lines;
    }

    private static string[] Dots(IReadOnlyList<WeatherRow> rows, double[] shown, ValueAxis axis)
    {
        DotGrid grid = new(Cells, Rows);
        Draw(rows, shown, axis, grid.Columns, grid.Dots, grid.Set);
        return [.. Enumerable.Range(0, Rows).Select(r => string.Concat(Enumerable.Range(0, Cells).Select(c => grid.IsSet(c, r) ? grid.Glyph(c, r) : ' ')))];
    }

    private static string[] Stars(IReadOnlyList<WeatherRow> rows, double[] shown, ValueAxis axis)
    {
        StringBuilder[] lines = [.. Enumerable.Range(0, Rows).Select(_ => new StringBuilder(new string(' ', Cells)))];
        Draw(rows, shown, axis, Cells, Rows, (column, dot) => lines[Rows - 1 - dot][column] = '*');
        return [.. lines.Select(l => l.ToString())];
    }

    private static void Draw(IReadOnlyList<WeatherRow> rows, double[] shown, ValueAxis axis, int columns, int dots, Action<int, int> set)
    {
        (double Low, double High)[] band = [.. Enumerable.Repeat((double.PositiveInfinity, double.NegativeInfinity), columns)];
        DateTimeOffset first = rows[0].Time;
        double scale = (columns - 1) / (rows[^1].Time - first).TotalHours;
        double x = 0;
        for (int i = 0; i < shown.Length; i++)
        {
            double to = (rows[i].Time - first).TotalHours * scale;
            Take(to, shown[i]);
            // Where rows are wider apart than columns, the line between them.
            for (int column = (int)Math.Floor(x) + 1; i > 0 && column < to; column++)
                Take(column, shown[i - 1] + (shown[i] - shown[i - 1]) * (column - x) / (to - x));
            x = to;
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

    private static string Edge(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
