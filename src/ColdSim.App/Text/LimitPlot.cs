using ColdSim.Planning.Limits;

namespace ColdSim.App.Text;

/// <summary>The limits as a plain chart: fill along, the night's low upwards, a mark a set-up, dots between its marks.</summary>
/// <remarks>Characters of ASCII only but for the degree sign, so that it prints anywhere and needs no colour.</remarks>
internal static class LimitPlot
{
    private const int Width = 60;
    private const int MostRows = 19;
    private const char Several = '@';
    private const char Between = '.';

    public static IReadOnlyList<string> Lines(LimitChart chart, UnitStyle units)
    {
        LimitCell[] found = [.. chart.Cells.Where(c => c.Kind != LimitKind.NotAtWarmest)];
        if (found.Length == 0) return [$"No set-up is fed even at {units.Temperature(chart.Axis.Warmest_K)}, so there is nothing to draw."];
        int warmest = Ceiling(found.Max(c => In(c.Low_K, units))), coldest = Floor(found.Min(c => In(c.Low_K, units)));
        if (warmest == coldest) warmest += Decade(units);
        int degreesPerRow = Enumerable.Range(1, 100).First(d => Decade(units) % d == 0 && (warmest - coldest) / d < MostRows || d % Decade(units) == 0);
        int rows = (warmest - coldest) / degreesPerRow + 1;
        char[][] grid = [.. Enumerable.Range(0, rows).Select(_ => Enumerable.Repeat(' ', Width).ToArray())];
        (int X, int Y, char Mark)[] marks = [.. chart.Columns.SelectMany(Marks)];
        foreach (LimitColumn column in chart.Columns) Dots(grid, [.. Marks(column)]);
        foreach ((int x, int y, char mark) in marks) grid[y][x] = marks.Any(m => m.X == x && m.Y == y && m.Mark != mark) ? Several : mark;

        List<string> lines = [$"The night's low, {units.TemperatureUnit}: fed at a mark and above it, short below it"];
        for (int y = 0; y < rows; y++)
        {
            int degrees = warmest - y * degreesPerRow;
            string label = degrees % Decade(units) == 0 ? $"{UnitStyle.Number(degrees, 0),4} +" : "     |";
            lines.Add($"{label}{new string(grid[y]).TrimEnd()}".TrimEnd());
        }

        lines.Add("     +" + Ticks());
        lines.Add("      " + Numbers());
        lines.Add("      fill of each cylinder, % of its legal filling");
        string several = marks.Any(m => grid[m.Y][m.X] == Several) ? $"   {Several} several of these" : "";
        lines.AddRange(Wrap.Lines(string.Join("   ", chart.Columns.Select(c => Unbroken($"{LimitWords.Mark(c.RigVariant.Kind)} {LimitWords.Name(c.RigVariant.Kind, chart.Scenario.Rig)}"))) + Unbroken(several))
            .Select(l => l.Replace('\u00a0', ' ')));
        return lines;

        IEnumerable<(int X, int Y, char Mark)> Marks(LimitColumn column) => column.Cells.Where(c => c.Kind != LimitKind.NotAtWarmest)
            .Select(c => (X(c.Fill_frac), (int)Math.Round((warmest - In(c.Low_K, units)) / degreesPerRow), LimitWords.Mark(column.RigVariant.Kind)));
    }

    private static void Dots(char[][] grid, (int X, int Y, char Mark)[] marks)
    {
        for (int i = 1; i < marks.Length; i++)
        {
            (int fromX, int fromY, _) = marks[i - 1];
            (int toX, int toY, _) = marks[i];
            for (int x = fromX + 1; x < toX; x++)
                grid[(int)Math.Round(fromY + (toY - fromY) * (double)(x - fromX) / (toX - fromX))][x] = Between;
        }
    }

    private static string Unbroken(string words) => words.Replace(' ', '\u00a0');

    private static int X(double fill_frac) => Math.Clamp((int)Math.Round(fill_frac * (Width - 1)), 0, Width - 1);

    private static string Ticks()
    {
        char[] line = Enumerable.Repeat('-', Width).ToArray();
        for (int tenth = 0; tenth <= 10; tenth += 2) line[X(tenth / 10.0)] = '+';
        return new string(line);
    }

    private static string Numbers()
    {
        char[] line = Enumerable.Repeat(' ', Width + 2).ToArray();
        for (int tenth = 0; tenth <= 10; tenth += 2)
        {
            string number = UnitStyle.Number(tenth * 10, 0);
            number.CopyTo(0, line, Math.Max(0, X(tenth / 10.0) - number.Length / 2), number.Length);
        }

        return new string(line).TrimEnd();
    }

    private static double In(double kelvin, UnitStyle units) => units.TemperatureIn(kelvin);

    private static int Decade(UnitStyle units) => units.IsUs ? 10 : 5;

    private static int Ceiling(double degrees) => (int)Math.Ceiling(Math.Round(degrees, 6) / 10) * 10;

    private static int Floor(double degrees) => (int)Math.Floor(Math.Round(degrees, 6) / 10) * 10;
}
