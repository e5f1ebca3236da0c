namespace ColdSim.App.Screens.Frame;

/// <summary>The keys of the pages there are, in a word or two.</summary>
internal static class PageNumbers
{
    /// <summary>Such as "1-7 9", or "F1-F7 F9" with a letter before each.</summary>
    public static string Of(IReadOnlyList<IPage> pages, string before = "")
    {
        char[] keys = [.. pages.Select(p => p.Key).Order()];
        List<string> runs = [];
        for (int from = 0, to; from < keys.Length; from = to)
        {
            for (to = from + 1; to < keys.Length && keys[to] == keys[to - 1] + 1;)
                to++;
            runs.Add(to - from == 1 ? $"{before}{keys[from]}" : $"{before}{keys[from]}-{before}{keys[to - 1]}");
        }

        return string.Join(' ', runs);
    }
}
