using System.Diagnostics;
using System.Globalization;
using System.Text;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;
using ColdSim.Tests.Files.Weather;

namespace ColdSim.Benchmarks.Files;

/// <summary>
/// Long tables in other publishers' layouts, made as they are read: processor time and peak memory for 100,000 rows and for more. JSON and typical years are held
/// whole while they are read, so these are shown at 100,000 rows alone.
/// </summary>
internal static class LayoutRows
{
    private const int Few = 100_000;
    private const int Times = 5;

    private static readonly DateTime First = new(1900, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private static readonly ColumnMap Map = new()
    {
        Time = ["Year", "Month", "Day", "Hour", "Minute"],
        Columns = new Dictionary<string, MappedColumn> { ["air"] = new("T [°C]", null), ["wind"] = new("W [m/s]", null), ["dew point"] = new("D [°C]", null) },
    };

    private static readonly ColumnMap Blanks = Map with { Separator = ColumnMap.Blanks, Time = ["date", "time"], TimeFormat = "yyyyMMdd HHmm", Columns = new Dictionary<string, MappedColumn> { ["air"] = new("T", "°C") } };

    private static readonly ColumnMap Zone = Map with { Time = ["when"], Zone = TimeZoneInfo.FindSystemTimeZoneById("America/Denver"), Columns = new Dictionary<string, MappedColumn> { ["air"] = new("T [°C]", null) } };

    private static readonly (string Name, WeatherRequest Request, string Head, Func<long, DateTime, double, FormattableString> Row, string Foot, bool Streams)[] Layouts =
    [
        ("Environment Canada", new() { Offset = TimeSpan.FromHours(-5) },
            "\"Longitude (x)\",\"Latitude (y)\",\"Station Name\",\"Climate ID\",\"Date/Time (LST)\",\"Temp (°C)\",\"Dew Point Temp (°C)\",\"Rel Hum (%)\",\"Wind Spd (km/h)\",\"Stn Press (kPa)\"\n",
            (_, t, air) => $"\"-82.25\",\"49.50\",\"NOWHERE\",\"9\",\"{t:yyyy-MM-dd HH:mm}\",\"{air:0.0}\",\"{air - 3:0.0}\",\"77\",\"18\",\"98.45\"\n", "", true),
        ("global-hourly", new(), "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"REPORT_TYPE\",\"WND\",\"TMP\",\"DEW\",\"GA1\",\"MA1\"\n",
            (_, t, air) => $"\"9\",\"{t:yyyy-MM-dd'T'HH:mm:ss}\",\"40\",\"-105\",\"1600\",\"FM-15\",\"160,1,N,0046,1\",\"{(int)Math.Round(air * 10):+0000;-0000},1\",\"{(int)Math.Round((air - 3) * 10):+0000;-0000},1\",\"02,1,+00366,1,99,9\",\"10240,1,08400,1\"\n", "", true),
        ("PVGIS series", new(), "Latitude (decimal degrees):\t45.000\nSlope: 0 deg.\ntime,G(i),H_sun,T2m,WS10m,Int\n", (_, t, air) => $"{t:yyyyMMdd':'HHmm},0.0,0.0,{air:0.00},1.43,0.0\n", "", true),
        ("Open-Meteo CSV", new(), "latitude,longitude,elevation,utc_offset_seconds\n40,-105,1600,0\n\ntime,temperature_2m (°C),wind_speed_10m (km/h)\n", (i, _, air) => $"{First.AddMinutes(30 * i):yyyy-MM-dd'T'HH:mm},{air:0.0},7.2\n", "", true),
        ("column map, date over five columns", new() { Map = Map, Offset = TimeSpan.Zero }, "Year,Month,Day,Hour,Minute,T [°C],W [m/s],D [°C]\n",
            (_, t, air) => $"{t.Year},{t.Month},{t.Day},{t.Hour},{t.Minute},{air:0.0},2,{air - 3:0.0}\n", "", true),
        ("column map, blanks", new() { Map = Blanks, Offset = TimeSpan.Zero }, "date time  T\n", (_, t, air) => $"{t:yyyyMMdd}   {t:HHmm}  {air:0.0}\n", "", true),
        ("column map, time zone", new() { Map = Zone, Bridge = TimeSpan.FromHours(4) }, "when,T [°C]\n", (_, t, air) => $"{AtDenver(t):yyyy-MM-dd HH:mm},{air:0.0}\n", "", true),
        ("NSRDB", new(), "Latitude,Longitude,Time Zone,Elevation,Local Time Zone\n40,-105,-7,1600,-7\nYear,Month,Day,Hour,Minute,Temperature,Wind Speed,GHI\n",
            (_, t, air) => $"{t.Year},{t.Month},{t.Day},{t.Hour},{t.Minute},{air:0.0},2,0\n", "", false),
    ];

    public static int Run(int[] more)
    {
        foreach ((string name, WeatherRequest request, string head, Func<long, DateTime, double, FormattableString> row, string foot, bool streams) in Layouts)
        {
            byte[] few = Bytes(head, row, foot);
            double[] processor_s = new double[Times];
            long read = Read(new MemoryStream(few), request);
            for (int i = 0; i < Times; i++)
                processor_s[i] = Processor_s(() => Read(new MemoryStream(few), request));
            Array.Sort(processor_s);
            Console.WriteLine(FormattableString.Invariant($"{name}: {read:#,0} rows in {processor_s[Times / 2]:0.00} s of processor"));
            foreach (int rows in streams ? more : [])
            {
                using GeneratedText stream = Table(head, row, rows);
                double all_s = Processor_s(() => read = Read(stream, request));
                using Process own = Process.GetCurrentProcess();
                Console.WriteLine(FormattableString.Invariant($"{name}: {read:#,0} rows in {all_s:0.0} s of processor with the making of them, peak working set {own.PeakWorkingSet64 / 1e6:0} MB"));
            }
        }

        byte[] json = OpenMeteoJson();
        WeatherRequest none = new();
        Read(new MemoryStream(json), none);
        Console.WriteLine(FormattableString.Invariant($"Open-Meteo JSON: {Few:#,0} rows in {Processor_s(() => Read(new MemoryStream(json), none)):0.00} s of processor"));
        byte[] instants = MetNorwayJson();
        Read(new MemoryStream(instants), none);
        Console.WriteLine(FormattableString.Invariant($"MET Norway JSON: {Few:#,0} rows in {Processor_s(() => Read(new MemoryStream(instants), none)):0.00} s of processor"));
        return 0;
    }

    private static double Processor_s(Action work)
    {
        using Process own = Process.GetCurrentProcess();
        TimeSpan before = own.TotalProcessorTime;
        work();
        own.Refresh();
        return (own.TotalProcessorTime - before).TotalSeconds;
    }

    private static long Read(Stream stream, WeatherRequest request)
    {
        Counted counted = new();
        WeatherResult read = WeatherFile.Read(stream, "generated", request, counted);
        return read.Problems.Count == 0 ? counted.Rows : throw new InvalidOperationException(read.Problems[0].ToString());
    }

    private static byte[] Bytes(string head, Func<long, DateTime, double, FormattableString> row, string foot)
    {
        StringBuilder text = new(head);
        for (int i = 0; i < Few; i++)
            text.Append(Text(row, i));
        return Encoding.UTF8.GetBytes(text.Append(foot).ToString());
    }

    // A cold wave of ten days and days within it, a row every ten minutes.
    private static string Text(Func<long, DateTime, double, FormattableString> row, long i)
    {
        double day = i / 144.0;
        return row(i, First.AddMinutes(10 * i), -4 - (9 * Math.Cos(day / 10 * Math.Tau)) - (5 * Math.Cos(day * Math.Tau))).ToString(CultureInfo.InvariantCulture);
    }

    private static DateTime AtDenver(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(utc, Zone.Zone!);

    private static byte[] OpenMeteoJson()
    {
        string List(Func<int, string> item) => string.Join(',', Enumerable.Range(0, Few).Select(item));
        return Encoding.UTF8.GetBytes(
            "{\"latitude\":40,\"longitude\":-105,\"elevation\":1600,\"utc_offset_seconds\":0,\"hourly_units\":{\"temperature_2m\":\"°C\"},\"hourly\":{\"time\":["
            + List(i => First.AddHours(i).ToString("'\"'yyyy-MM-dd'T'HH:mm'\"'", CultureInfo.InvariantCulture)) + "],\"temperature_2m\":[" + List(i => $"{-(i % 24)}.5")
            + "],\"wind_speed_10m\":[" + List(i => $"{i % 9}.1") + "],\"cloud_cover\":[" + List(i => $"{i % 100}") + "],\"shortwave_radiation\":[" + List(i => $"{i % 24 * 10}.0") + "]}}");
    }

    private static byte[] MetNorwayJson()
        => Encoding.UTF8.GetBytes("{\"properties\":{\"timeseries\":[" + string.Join(',', Enumerable.Range(0, Few).Select(i => string.Create(
            CultureInfo.InvariantCulture,
            $"{{\"time\":\"{First.AddHours(i):yyyy-MM-dd'T'HH:mm:ss}Z\",\"data\":{{\"instant\":{{\"details\":{{\"air_temperature\":{-(i % 24)}.5,\"relative_humidity\":80.1,\"wind_speed\":2.5,\"cloud_area_fraction\":10.0}}}}}}}}"))) + "]}}");

    private sealed class Counted : IRowSink
    {
        public long Rows { get; private set; }

        public void Begin(WeatherSource source)
        {
        }

        public void Take(in WeatherRow row) => Rows++;
    }

    private static GeneratedText Table(string head, Func<long, DateTime, double, FormattableString> row, long rows)
    {
        long next = 0;
        return new(head, () =>
        {
            StringBuilder text = new();
            for (int i = 0; i < 500 && next < rows; i++, next++)
                text.Append(Text(row, next));
            return text.ToString();
        });
    }
}
