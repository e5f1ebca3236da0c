using CsvHelper;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Our own layout; docs/weather-csv.md describes it.</summary>
internal static class OwnCsv
{
    /// <summary>Reads a table.</summary>
    /// <param name="file">The file from its beginning.</param>
    /// <param name="request">How it is to be read.</param>
    /// <param name="rows">Receives the rows.</param>
    /// <param name="faults">Receives the faults.</param>
    /// <param name="guessed">Whether it is read so only because no other layout was recognised.</param>
    public static void Read(WeatherInput file, WeatherRequest request, RowCollector rows, WeatherFaults faults, bool guessed = false)
    {
        bool malformed = false;
        char separator = RecordReader.SeparatorOf(file.Head.FirstOrDefault(l => l.Trim() is not ("" or ['#', ..])) ?? "");
        rows.Station = StationComment.Read(file.Head);
        CsvReaderOptions options = new()
        {
            Separator = separator,
            CommentPrefix = '#',
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            MalformedData = CsvMalformedDataHandling.Recover,
            OnMalformedRecord = _ => malformed = true,
        };
        using CsvReader csv = CsvReader.Create(file.Text, options, leaveOpen: true);
        csv.ReadHeader();
        if (csv.Headers.Count == 0)
        {
            faults.Report(1, 1, "the file is empty", "accepted: a row of headings, such as time,air [°C], and rows below it");
            return;
        }
        if (WeatherHeader.Read(csv.Headers, (int)csv.LineNumber, faults, guessed) is not { } header)
            return;
        foreach (WeatherColumn column in WeatherColumn.All.Where(header.Has))
            rows.DeclareColumn(column);
        rows.Clock = "with each time's own offset from UTC";
        if (request.Offset is { } offset)
            rows.Clock += $", or UTC{InstantText.OfOffset(offset)} where it has none";
        rows.AirUnit = header.Of(WeatherColumn.Air).Unit.Spellings[0];
        WeatherRowReader reader = new(csv, separator, header, request.Offset, rows.Values, faults);
        for (int without = 0; !rows.IsPastWindow && !faults.AreTooMany && csv.Read(); without = reader.WithoutAir)
        {
            if (malformed)
            {
                malformed = false;
                rows.HasSkippedRows = true;
                faults.Report((int)csv.LineNumber, 1, "a quotation mark that does not open and close a field");
                continue;
            }
            if (reader.Read() is { } row)
            {
                // A row with a faulty temperature closes no gap outside the days wanted, where its fault is not reported.
                if (double.IsNaN(row.Air_K) && faults.IsOutside)
                    continue;

                // Times in UTC say nothing of the clock at the place.
                if (row.Time.Offset != TimeSpan.Zero && rows.Station.Offset is null)
                    rows.Station = rows.Station with { Offset = row.Time.Offset };
                rows.Add(row, (int)csv.LineNumber);
            }
            else if (reader.WithoutAir == without)
                rows.HasSkippedRows = true;
        }

        if (reader.WithoutAir > 0)
            rows.EmptyMessage = "every air temperature is marked as not known";
        rows.Finish((int)csv.LineNumber);
    }
}
