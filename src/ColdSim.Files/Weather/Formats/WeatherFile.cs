using System.Text;
using ColdSim.Files.Disk;
using CsvHelper;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Reads a weather file of any layout; docs/weather-formats.md describes the layouts.</summary>
public static class WeatherFile
{
    /// <summary>Reads a weather file from its beginning to its end; never throws for its content.</summary>
    /// <param name="stream">The file, perhaps packed with gzip; its owner disposes it.</param>
    /// <param name="name">The file's name in messages.</param>
    /// <param name="request">How it is to be read.</param>
    /// <param name="sink">Receives the rows one by one, and the result has none; null keeps them in the result.</param>
    public static WeatherResult Read(Stream stream, string name, WeatherRequest request, IRowSink? sink = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(request);
        WeatherFaults faults = new(name) { IsUnwanted = request.From is null && request.To is null && request.Wanted is null ? null : request.IsUnwanted };
        RowsKept kept = new(request.MostRows);
        RowCollector rows = new(request, faults, sink ?? kept);
        WeatherFormat format = request.Format ?? WeatherFormat.Csv;
        WeatherInput? input = null;
        string? otherKind = null;
        ReportingFailures(faults, rows, () =>
        {
            input = WeatherInput.Open(stream);
            WeatherFormat? seen = FormatDetection.Detect(input.Bytes, input.Head);
            format = request.Map is not null ? WeatherFormat.Mapped : request.Format ?? seen ?? WeatherFormat.Csv;
            rows.Format = format;
            otherKind = FormatDetection.OtherKindOfFile(input.Bytes, input.Head) ?? (seen is null && format == WeatherFormat.Csv && request.Format is null ? "JSON of an unknown kind" : null);
            if (otherKind is not null)
                faults.Report(1, 1, $"the file is {otherKind}", "accepted: a text table of weather, packed with gzip or not, or a forecast in JSON of Open-Meteo, the US weather service or MET Norway");
            else
                Rows(format, input, request, rows, faults);
            if (request.Year is { } year && !rows.TakesYear && !faults.Any)
                faults.Warn($"{faults.File}: its times have years of their own; the year {year} that was asked for is not used");
        });
        faults.WarnOfOutside();
        return Result(format, rows, kept, faults) with { OtherKind = otherKind };
    }

    private static void Rows(WeatherFormat format, WeatherInput input, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (input.Encoding == Encoding.Latin1)
            faults.Warn($"{faults.File}: not in UTF-8, read as Latin-1");
        switch (format)
        {
            case WeatherFormat.NwsForecast:
                NwsForecastJson.Read(input, rows, faults);
                return;
            case WeatherFormat.OpenMeteoJson:
                OpenMeteoJson.Read(input, request, rows, faults);
                return;
            case WeatherFormat.MetNorway:
                MetNorwayJson.Read(input, request, rows, faults);
                return;
            case WeatherFormat.Csv:
                OwnCsv.Read(input, request, rows, faults, guessed: request.Format is null);
                return;
            case WeatherFormat.Mapped:
                MappedCsv.Read(input, request.Map!, request, rows, faults);
                return;
        }
        // The lines above PVGIS's table have tabs, the table has commas.
        char separator = format == WeatherFormat.Pvgis ? ',' : RecordReader.SeparatorOf(input.Head.FirstOrDefault(l => l.Trim().Length > 0) ?? "");
        using RecordReader records = new(input.Text, separator, faults);
        switch (format)
        {
            case WeatherFormat.Epw: EpwCsv.Read(records, request, rows, faults); break;
            case WeatherFormat.Tmy3: Tmy3Csv.Read(records, request, rows, faults); break;
            case WeatherFormat.Lcd: LcdCsv.Read(input, separator, records, request, rows, faults); break;
            case WeatherFormat.Ghcnh: GhcnhPsv.Read(records, request, rows, faults); break;
            case WeatherFormat.OpenMeteo: OpenMeteoCsv.Read(records, request, rows, faults); break;
            case WeatherFormat.EnvironmentCanada: EnvironmentCanadaCsv.Read(records, request, rows, faults); break;
            case WeatherFormat.Nsrdb: NsrdbCsv.Read(records, request, rows, faults); break;
            case WeatherFormat.Pvgis: PvgisCsv.Read(records, request, rows, faults); break;
            case WeatherFormat.GlobalHourly: GlobalHourlyCsv.Read(records, request, rows, faults); break;
            default: MeteostatCsv.Read(records, request, rows, faults); break;
        }
    }

    private static void ReportingFailures(WeatherFaults faults, RowCollector rows, Action read)
    {
        try
        {
            read();
        }
        catch (LongLineException e)
        {
            faults.Report(e.Line, 1, "a line longer than 64 kB", "accepted: lines of up to 64 kB");
        }
        catch (EndlessFileException e)
        {
            faults.Report(e.Line ?? rows.LastLine, 1, "the file goes on after this line; it is " + e.Message, "accepted: up to 2 GB, unpacked, and 100 million lines; of a layout for typical years 2 million rows");
        }
        catch (Exception e) when (e is IOException or InvalidDataException or CsvFormatException or DecoderFallbackException or InvalidOperationException)
        {
            faults.Report(1, 1, "cannot be read: " + Why(e));
        }
    }

    private static string Why(Exception e) => e switch
    {
        InvalidDataException => "it is packed with gzip, and what is packed is damaged",
        DecoderFallbackException => "it is not a text in UTF-8 or UTF-16",
        CsvFormatException => "it is no table with separators: a quotation mark does not end, or a cell is too long",
        IOException => FileFaultException.WhyNotRead(e),
        _ => "what is in it cannot be a weather file",
    };

    private static WeatherResult Result(WeatherFormat format, RowCollector rows, RowsKept kept, WeatherFaults faults) => new()
    {
        Rows = faults.Any ? [] : kept.Rows,
        RowsForEach = kept.Stretch,
        Counts = kept.Counts,
        Problems = faults.Problems(),
        Warnings = faults.Warnings,
        Notes = faults.Notes,
        Format = format,
        AirUnit = rows.AirUnit,
        Clock = rows.Clock,
        Station = rows.Station,
        Gaps = rows.Gaps,
        AllGaps = rows.AllGaps,
        Outside = rows.Outside,
        IsTypicalYear = rows.IsTypicalYear,
    };
}
