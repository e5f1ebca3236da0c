using ColdSim.Model.Engine;

namespace ColdSim.App.Text;

/// <summary>Gas over time as one stacked strip: each column is a stretch of time, each letter an appliance that takes that part of the gas.</summary>
/// <remarks>The same lines for the command line and for the screen. A column shows means, so that a burner's cycles even out.</remarks>
internal static class GasStack
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>The letter of an appliance.</summary>
    /// <param name="place">Its place among those that can take gas.</param>
    public static char LetterOf(int place) => Letters[place % Letters.Length];

    /// <summary>The strip, its highest mean at the top row.</summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="places">Which of them can take gas, in the order of the letters.</param>
    /// <param name="from">First sample.</param>
    /// <param name="to">Past the last.</param>
    /// <param name="columns">Width in cells.</param>
    /// <param name="rows">Height in cells.</param>
    /// <param name="units">Units of the scale.</param>
    /// <param name="start">The run's start, for the clock below.</param>
    public static IReadOnlyList<string> Lines(
        RunSeries series, IReadOnlyList<int> places, int from, int to, int columns, int rows, UnitStyle units, DateTimeOffset start)
    {
        columns = Math.Max(1, Math.Min(columns, to - from));
        double[][] mean_W = [.. Enumerable.Range(0, columns).Select(c => Means(series, places, from, to, c, columns))];
        double peak_W = mean_W.Max(m => m.Sum());
        string top = units.PowerNumber(peak_W), none = units.IsUs ? "0" : "0.00";
        int width = Math.Max(top.Length, Math.Max(none.Length, units.PowerUnit.Length));
        List<string> lines = [];
        for (int row = rows - 1; row >= 0; row--)
        {
            string label = row == rows - 1 ? top : row == rows - 2 && rows > 2 ? units.PowerUnit : row == 0 ? none : "";
            double level_W = (row + 0.5) / rows * peak_W;
            lines.Add((label.PadLeft(width) + " |" + string.Concat(mean_W.Select(m => At(m, level_W)))).TrimEnd());
        }

        lines.Add(new string(' ', width) + " +" + new string('-', columns));
        lines.Add(new string(' ', width + 2) + Clock(from, to, columns, start));
        return lines;
    }

    private static char At(double[] mean_W, double level_W)
    {
        double sum_W = 0;
        for (int i = 0; i < mean_W.Length; i++)
        {
            sum_W += mean_W[i];
            if (level_W < sum_W) return LetterOf(i);
        }

        return ' ';
    }

    private static double[] Means(RunSeries series, IReadOnlyList<int> places, int from, int to, int column, int columns)
    {
        int a = from + (int)((long)column * (to - from) / columns), b = from + (int)((long)(column + 1) * (to - from) / columns);
        b = Math.Min(Math.Max(a + 1, b), series.Count);
        return [.. places.Select(p => b <= a ? 0 : series.Gas_W[p].AsSpan(a, b - a).ToArray().Average())];
    }

    // The first and the last instant, and one between.
    private static string Clock(int from, int to, int columns, DateTimeOffset start)
    {
        string first = ClockAt(from - 1), last = ClockAt(to - 1), middle = ClockAt((from + to) / 2 - 1);
        int gap = columns - first.Length - last.Length;
        if (gap < 1) return first;
        int before = (gap - middle.Length) / 2;
        return before < 1 ? first + new string(' ', gap) + last
            : first + new string(' ', before) + middle + new string(' ', gap - middle.Length - before) + last;

        string ClockAt(int sample) => ClockText.Clock(start.AddSeconds(sample * RunSeries.Spacing_s));
    }
}
