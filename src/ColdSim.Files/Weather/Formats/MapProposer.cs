using System.Globalization;
using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Proposes a column map for a table of no known layout, from its headings and first rows.</summary>
internal static class MapProposer
{
    private const int Sample = 30;
    private const int Shown = 3;

    private static readonly string[][] Parts = [["year", "yr", "yyyy", "jahr"], ["month", "mo", "mon", "mm", "monat"], ["day", "dy", "dd", "tag"], ["hour", "hr", "hh", "stunde"], ["minute", "min", "mi"]];
    private static readonly string[] Dates = ["date", "datum", "datetime", "timestamp", "time", "zeit", "when", "utc", "valid", "unix", "epoch"];
    private static readonly string[] Clocks = ["time", "uhrzeit", "uhr", "zeit", "clock", "hour", "hhmm", "hrmn"];

    /// <summary>The table's heading line, with its fields and the rows below it.</summary>
    private sealed record Table(int Line, char Separator, string[] Headings, IReadOnlyList<string[]> Rows)
    {
        public IEnumerable<string> Cells(int field) => Rows.Select(r => field < r.Length ? r[field] : "");
    }

    /// <summary>Proposes a map.</summary>
    /// <param name="stream">The file, perhaps packed; its owner disposes it.</param>
    /// <param name="name">Its name in messages.</param>
    /// <param name="offset">The offset of times that have none, for the preview.</param>
    /// <returns>The proposal; or what is in the way of one.</returns>
    public static (MapProposal? Proposal, FileProblem? Problem) Of(Stream stream, string name, TimeSpan? offset)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(name);
        WeatherInput input;
        try
        {
            input = WeatherInput.Open(stream);
        }
        catch (Exception e) when (e is IOException or InvalidDataException)
        {
            return (null, new FileProblem(name, 1, 1, "cannot be read: " + (e is InvalidDataException ? "it is packed with gzip, and what is packed is damaged" : FileProblem.WhyUnreadable(e))));
        }

        if (FormatDetection.OtherKindOfFile(input.Bytes, input.Head) is { } other)
            return (null, new FileProblem(name, 1, 1, $"the file is {other}", "accepted: a table of text"));
        if (FormatDetection.Detect(input.Bytes, input.Head) is not WeatherFormat.Csv and var known)
            return (null, new FileProblem(name, 1, 1, known is { } format ? $"it is {format.Title()}, which is read without a map" : "the file is JSON of an unknown kind", "accepted: a table of no known layout"));
        if (Find(input.Head) is not { } table)
        {
            return (null, new FileProblem(name, 1, 1, $"no line of its first {ColumnMap.HeadingLines} has headings of a time and an air temperature",
                "accepted: a map written by hand; docs/weather-formats.md says how, also for a table without headings"));
        }

        return Of(table, input, name, offset);
    }

    private static (MapProposal?, FileProblem?) Of(Table table, WeatherInput input, string name, TimeSpan? offset)
    {
        List<string> guesses = [];
        (int[] time, int clock, TimeShape? shape) = Time(table);
        if (shape is null)
        {
            string such = string.Join(' ', time.Append(clock).Where(f => f >= 0).Select(f => table.Cells(f).FirstOrDefault() ?? ""));
            return (null, new FileProblem(name, table.Line + 1, 1, $"times such as '{Quote.Of(such)}' under '{Quote.Of(table.Headings[time[0]])}' are not understood", "accepted: a map written by hand, with its time_format"));
        }

        if (shape.IsGuess)
            guesses.Add($"months come before days in '{table.Headings[time[0]]}'; {shape.Format!.Replace("M/d", "d/M", StringComparison.Ordinal)} where days come first");
        Dictionary<string, MappedColumn> columns = Columns(table, guesses);
        HashSet<string> used = [.. time.Append(clock).Where(f => f >= 0).Select(f => table.Headings[f]), .. columns.Values.Select(c => c.Heading)];
        ColumnMap map = new()
        {
            Time = [.. time.Select(f => table.Headings[f])],
            Clock = clock < 0 ? null : table.Headings[clock],
            TimeFormat = shape.Format,
            HeaderLine = table.Line,
            Separator = table.Separator,
            Columns = columns,
        };
        WeatherResult read = Preview(input, map, name, offset ?? (shape.HasOffset ? null : TimeSpan.Zero));
        return (new MapProposal
        {
            File = name,
            Map = map,
            Guesses = guesses,
            Unused = [.. table.Headings.Where(h => h.Length > 0 && !used.Contains(h))],
            NeedsOffset = !shape.HasOffset && offset is null,
            Preview = [.. read.Rows.Take(Shown)],
            Problems = read.Problems,
        }, null);
    }

    // The line that has most headings that are understood, a time and the air among them.
    private static Table? Find(IReadOnlyList<string> head)
    {
        (int Line, char Separator, string[] Headings)? best = null;
        int most = 0;
        for (int i = 0; i < Math.Min(head.Count, ColumnMap.HeadingLines); i++)
        {
            foreach (char by in (char[])[RecordReader.SeparatorOf(head[i]), ColumnMap.Blanks])
            {
                string[] fields = HeadingSearch.Split(head[i], by);
                int score = fields.Count(f => HeadingWords.Meaning(f) is not null || IsTime(f));
                if (score > most && fields.Length > 1 && fields.Any(f => HeadingWords.Meaning(f) == WeatherColumn.Air) && fields.Any(IsTime))
                    (most, best) = (score, (i + 1, by, fields));
            }
        }

        if (best is not { } found)
            return null;
        IEnumerable<string[]> rows = head.Skip(found.Line).Select(l => HeadingSearch.Split(l, found.Separator)).Where(r => r.Length > 1);

        // The last line of the head may be cut off.
        return new(found.Line, found.Separator, found.Headings, [.. rows.Take(Math.Max(1, Math.Min(Sample, head.Count - found.Line - 1)))]);
    }

    private static bool IsTime(string heading) => Array.Exists(HeadingWords.Words(heading), w => Array.IndexOf(Dates, w) >= 0 || Array.IndexOf(Parts[0], w) >= 0);

    private static (int[] Fields, int Clock, TimeShape? Shape) Time(Table table)
    {
        int Named(string[] words) => Array.FindIndex(table.Headings, h => HeadingWords.Words(h) is [var only] && Array.IndexOf(words, only) >= 0);
        int[] parts = [.. Parts.Select(Named).TakeWhile(f => f >= 0)];
        if (parts.Length >= 3)
            return (parts, -1, table.Rows.Count > 0 ? new TimeShape(null, false) : null);
        int date = Array.FindIndex(table.Headings, h => HeadingWords.Words(h).Any(w => Array.IndexOf(Dates, w) >= 0));
        IReadOnlyList<string> dates = Data(table, date);
        if (TimeShape.Of(dates) is { } whole)
            return ([date], -1, whole);
        int clock = Array.FindIndex(table.Headings, h => HeadingWords.Words(h).Any(w => Array.IndexOf(Clocks, w) >= 0));
        if (clock == date)
            clock = Array.FindIndex(table.Headings, date + 1, h => HeadingWords.Words(h).Any(w => Array.IndexOf(Clocks, w) >= 0));
        return clock < 0 ? ([date], -1, null) : ([date], clock, TimeShape.Of([.. dates.Zip(Data(table, clock), (d, c) => $"{d} {c}")]));
    }

    // A line of units, and a footer, do not begin with a digit.
    private static IReadOnlyList<string> Data(Table table, int field) => [.. table.Cells(field).Where(c => c.Length > 0 && char.IsAsciiDigit(c[0]))];

    private static Dictionary<string, MappedColumn> Columns(Table table, List<string> guesses)
    {
        Dictionary<string, MappedColumn> columns = [];
        foreach (WeatherColumn column in WeatherColumn.All)
        {
            int field = Array.FindIndex(table.Headings, h => !IsTime(h) && HeadingWords.Meaning(h) == column);
            if (field < 0)
                continue;
            string heading = table.Headings[field];
            string below = table.Rows.Count > 0 && field < table.Rows[0].Length ? table.Rows[0][field] : "";
            string? bracketed = MappedCsv.Bracketed(heading) is { } text && column.FindUnit(text) is not null ? null : HeadingWords.Unit(column, heading) ?? HeadingWords.Unit(column, below);
            if (bracketed is null && (MappedCsv.Bracketed(heading) is not { } own || column.FindUnit(own) is null))
            {
                double[] numbers = [.. table.Cells(field).Select(c => double.TryParse(c.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double n) && double.IsFinite(n) ? n : double.NaN).Where(double.IsFinite)];
                bracketed = HeadingWords.Usual(column, numbers);
                guesses.Add($"'{heading}' names no unit of {column.Dimension.Name()}; {bracketed} by its numbers");
            }

            columns[column.Name] = new MappedColumn(heading, bracketed);
        }

        return columns;
    }

    private static WeatherResult Preview(WeatherInput input, ColumnMap map, string name, TimeSpan? offset)
    {
        // Whole lines of the beginning are enough, however long the file.
        int end = input.Bytes.Length < 1 << 16 ? input.Bytes.Length : input.Bytes.AsSpan().LastIndexOf((byte)'\n') + 1;
        using MemoryStream beginning = new(input.Bytes, 0, end);
        return WeatherFile.Read(beginning, name, new WeatherRequest { Map = map, Offset = offset });
    }
}
