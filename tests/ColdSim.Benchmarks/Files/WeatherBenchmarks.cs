using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;

namespace ColdSim.Benchmarks.Files;

/// <summary>A long weather file from bytes to rows: invented data, 100,000 hours.</summary>
[MemoryDiagnoser]
public class WeatherBenchmarks
{
    private const int Hours = 100_000;

    private readonly byte[] _own = Own();
    private readonly byte[] _meteostat = Meteostat();

    [Benchmark]
    public int Our_csv_100_000_rows() => Read(_own, new());

    [Benchmark]
    public int Meteostat_100_000_rows() => Read(_meteostat, new());

    [Benchmark]
    public int Two_days_out_of_100_000_rows()
        => Read(_meteostat, new() { From = WindowEdge.Read("2030-01-01", endOfDay: false), To = WindowEdge.Read("2030-01-02", endOfDay: true) });

    private static int Read(byte[] bytes, WeatherRequest request)
    {
        using MemoryStream stream = new(bytes);
        return WeatherFile.Read(stream, "weather", request).Rows.Count;
    }

    private static byte[] Own()
    {
        StringBuilder text = new("time,air [°C],wind [m/s],dew point [°C],sun [W/m²],cloud [%],pressure [hPa]\n");
        for (int i = 0; i < Hours; i++)
            text.Append(CultureInfo.InvariantCulture, $"{Time(i):yyyy-MM-dd'T'HH:mm}Z,{-10 + i % 17 * 0.5},{i % 7},-15.5,{i % 24 * 10},{i % 100},830.1\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static byte[] Meteostat()
    {
        StringBuilder text = new("time,temp,dwpt,rhum,prcp,snow,wdir,wspd,wpgt,pres,tsun,coco\n");
        for (int i = 0; i < Hours; i++)
            text.Append(CultureInfo.InvariantCulture, $"{Time(i):yyyy-MM-dd HH:mm:ss},{-10 + i % 17 * 0.5},-15.5,67,0.0,,10,{i % 30},,1020.1,,3\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static DateTime Time(int hour) => new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(hour);
}
