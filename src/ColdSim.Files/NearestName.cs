namespace ColdSim.Files;

/// <summary>Finds the name somebody probably meant, by edit distance.</summary>
internal static class NearestName
{
    /// <summary>The nearest of <paramref name="names"/>, or null where none is near enough to be meant.</summary>
    public static string? Of(string written, IEnumerable<string> names)
    {
        if (written.Length > Quote.Longest)
            return null;
        int limit = written.Length switch { <= 2 => 1, <= 5 => 2, _ => 3 };
        string? best = null;
        foreach (string name in names)
        {
            int distance = Distance(written.ToLowerInvariant(), name.ToLowerInvariant());
            if (distance < limit || (distance == limit && best is null))
                (limit, best) = (distance, name);
        }
        return best;
    }

    /// <summary>The edit distance (Damerau-Levenshtein): letters added, left out, changed or swapped with their neighbour.</summary>
    internal static int Distance(string a, string b)
    {
        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (int j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int same = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + same);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }
        return d[a.Length, b.Length];
    }
}
