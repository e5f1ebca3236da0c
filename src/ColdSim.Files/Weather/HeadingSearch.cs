namespace ColdSim.Files.Weather;

/// <summary>Finds the line of the headings and the separator of a table of no known layout.</summary>
internal static class HeadingSearch
{
    /// <summary>The line, from 1, and the separator; the line that has most of the names, however few.</summary>
    /// <param name="head">The first lines of the file.</param>
    /// <param name="names">The headings that are looked for.</param>
    /// <param name="separator">The separator; null tries all.</param>
    public static (int Line, char Separator) Of(IReadOnlyList<string> head, IReadOnlyCollection<string> names, char? separator)
    {
        (int Line, char Separator) best = (1, separator ?? ',');
        int most = 0;
        for (int i = 0; i < Math.Min(head.Count, ColumnMap.HeadingLines); i++)
        {
            foreach (char by in separator is { } stated ? (char[])[stated] : [RecordReader.SeparatorOf(head[i]), ColumnMap.Blanks])
            {
                string[] fields = Split(head[i], by);
                int found = names.Count(n => fields.Contains(n.Trim(), StringComparer.OrdinalIgnoreCase));
                if (found > most)
                    (most, best) = (found, (i + 1, by));
            }
        }

        return best;
    }

    /// <summary>The fields of a line, without their quotation marks.</summary>
    public static string[] Split(string line, char separator)
    {
        List<string> fields = [];
        bool quoted = false;
        int from = 0;
        string text = line.TrimStart('\uFEFF');
        for (int i = 0; i <= text.Length; i++)
        {
            if (i < text.Length && text[i] == '"')
                quoted = !quoted;
            else if (i == text.Length || (!quoted && (text[i] == separator || (separator == ColumnMap.Blanks && text[i] == '\t'))))
            {
                string field = text[from..i].Trim().Trim('"').Trim();
                if (separator != ColumnMap.Blanks || field.Length > 0)
                    fields.Add(field);
                from = i + 1;
            }
        }

        return [.. fields];
    }
}
