using ColdSim.Files;

namespace ColdSim.App.Text;

/// <summary>A column: its heading from top to bottom, and whether its cells are aligned left.</summary>
internal sealed record TextColumn(IReadOnlyList<string> Heading, bool Left = false);

/// <summary>Sets rows under headings, every column as wide as its widest cell.</summary>
internal static class TextTable
{
    public static IReadOnlyList<string> Lines(
        IReadOnlyList<TextColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows, int gap = 1)
    {
        int height = columns.Max(c => c.Heading.Count);
        List<string[]> all = [];
        for (int line = 0; line < height; line++)
            all.Add([.. columns.Select(c => c.Heading.ElementAtOrDefault(line - height + c.Heading.Count) ?? "")]);
        all.AddRange(rows.Select(r => r.Select(VisibleText.Of).ToArray()));

        int[] widths = [.. columns.Select((_, i) => all.Max(r => r[i].Length))];
        string between = new(' ', gap);
        return [.. all.Select(row => string.Join(between, columns.Select((c, i)
            => c.Left ? row[i].PadRight(widths[i]) : row[i].PadLeft(widths[i]))).TrimEnd())];
    }

    /// <summary>The table with its names as wide as the page leaves room for.</summary>
    /// <param name="widest">Of a name.</param>
    /// <param name="narrowest">Of a name, whatever comes of it.</param>
    /// <param name="lines">The table with names of at most some width.</param>
    public static IReadOnlyList<string> Fit(int widest, int narrowest, Func<int, IReadOnlyList<string>> lines)
    {
        for (int width = widest; ; width--)
        {
            IReadOnlyList<string> table = lines(width);
            if (width == narrowest || table.Max(l => l.Length) <= Wrap.Columns)
                return table;
        }
    }
}
