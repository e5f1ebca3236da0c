using System.Diagnostics;
using System.Globalization;
using System.Text;
using ColdSim.App;
using ColdSim.App.Commands;

namespace ColdSim.Benchmarks.Files;

/// <summary>A record of ten million rows through <c>coldsim weather</c> with everything it tells, and turned into our CSV; time and memory of the whole process.</summary>
internal static class TenMillionRows
{
    private const int Rows = 10_000_000;
    private const int Minutes = 5;

    public static int Run()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-rows-").FullName;
        try
        {
            string file = Path.Combine(folder, "rows.csv");
            Write(file);
            Console.WriteLine(FormattableString.Invariant($"{Rows:#,0} rows of {Minutes} min, {new FileInfo(file).Length / 1e6:0} MB"));
            Timed("looked into, a night picked", "weather", file, "--night", "p99");
            Timed("looked into and written as our CSV", "weather", file, "--out", Path.Combine(folder, "ours.csv"));
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Timed(string what, params string[] words)
    {
        using Process own = Process.GetCurrentProcess();
        TimeSpan before = own.TotalProcessorTime;
        Stopwatch wall = Stopwatch.StartNew();
        using Host host = new(Stream.Null, Console.Error, Joined.Parts());
        int code = CommandLine.RunAsync(words, host).GetAwaiter().GetResult();
        own.Refresh();
        Console.WriteLine(FormattableString.Invariant(
            $"{what}: exit {code}, {wall.Elapsed.TotalSeconds:0.0} s wall, {(own.TotalProcessorTime - before).TotalSeconds:0.0} s of processor, heap {GC.GetTotalMemory(true) / 1e6:0.0} MB, peak working set {own.PeakWorkingSet64 / 1e6:0} MB"));
    }

    // Invented: a day's and a fortnight's wave.
    private static void Write(string file)
    {
        using StreamWriter text = new(file, append: false, new UTF8Encoding(false), 1 << 16);
        text.Write("time,air [°C],wind [m/s],dew point [°C]\n");
        DateTime first = new(1930, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        for (int i = 0; i < Rows; i++)
        {
            double day = i * Minutes / 1440.0, air = -4 - 9 * Math.Cos(day / 14 * 2 * Math.PI) - 5 * Math.Cos(day * 2 * Math.PI);
            text.Write(string.Create(CultureInfo.InvariantCulture, $"{first.AddMinutes(i * (double)Minutes):yyyy-MM-dd'T'HH:mm}Z,{air:0.0},{i % 7},{air - 3:0.0}\n"));
        }
    }
}
