using System.Diagnostics;
using System.Text;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Files.Weather;

namespace ColdSim.Benchmarks.Files;

/// <summary>
/// A record of ten million rows, made as it is read, looked into as <c>coldsim weather --night</c> does, written anew as <c>--out</c> does,
/// a window of it kept as a run does, and the same days of every year as <c>--years</c> does; time and memory of the whole process, beside those for a tenth of the rows.
/// </summary>
internal static class TenMillionRows
{
    private const int Minutes = 5;
    private static readonly TimeSpan Clock = TimeSpan.Zero;

    public static int Run()
    {
        foreach (int rows in (int[])[1_000_000, 10_000_000])
        {
            Of("looked into", rows, Looked);
            Of("written as our CSV", rows, Written);
            Of("three days kept of it", rows, Window);
            Of("three days kept of every year", rows, Years);
        }

        return 0;
    }

    private static void Of(string what, int rows, Func<Stream, string> work)
    {
        using Process own = Process.GetCurrentProcess();
        using Stream stream = GeneratedRows.Of(rows, Minutes);
        TimeSpan before = own.TotalProcessorTime;
        Stopwatch wall = Stopwatch.StartNew();
        string came = work(stream);
        own.Refresh();
        Console.WriteLine(FormattableString.Invariant(
            $"{rows:#,0} rows {what}: {wall.Elapsed.TotalSeconds:0.0} s wall, {(own.TotalProcessorTime - before).TotalSeconds:0.0} s of processor, peak working set {own.PeakWorkingSet64 / 1e6:0} MB; {came}"));
    }

    private static string Looked(Stream stream)
    {
        RunningDigest digest = new(Clock, 273.15);
        RunningNights nights = new(Clock);
        AirCurve curve = new();
        ColumnCounts has = new();
        WeatherResult read = WeatherFile.Read(stream, "generated", new(), new Each((in WeatherRow row) =>
        {
            digest.Add(row);
            nights.Add(row);
            curve.Add(row);
            has.Add(row);
        }));
        return FormattableString.Invariant($"{digest.Read().HoursBelow:#,0} h below, {nights.Nights.Count:#,0} nights, {read.AllGaps:#,0} gaps");
    }

    private static string Written(Stream stream)
    {
        ColumnCounts all = new();
        all.Add(new WeatherRow(default, 260, 1, 255, 100));
        using StreamWriter nowhere = new(Stream.Null, Encoding.UTF8);
        using WeatherCsvWriter csv = new(nowhere, all);
        WeatherFile.Read(stream, "generated", new(), new Each((in WeatherRow row) => csv.Add(row)));
        return "to nowhere";
    }

    // From the end of even the shorter record, so that all of it is read.
    private static string Window(Stream stream)
    {
        WeatherRequest window = new() { From = WindowEdge.Read("1909-06-01", endOfDay: false), To = WindowEdge.Read("1909-06-03", endOfDay: true) };
        return FormattableString.Invariant($"{WeatherFile.Read(stream, "generated", window).Rows.Count:#,0} rows kept");
    }

    private static string Years(Stream stream)
    {
        YearCollector years = new(new RecordDays(new DateTimeOffset(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7)), TimeSpan.FromDays(3)));
        WeatherFile.Read(stream, "generated", new() { Bridge = TimeSpan.FromDays(31) }, new Each((in WeatherRow row) => years.Add(row)));
        RecordYears kept = years.Finish();
        return FormattableString.Invariant($"{kept.Years.Count:#,0} years, {kept.Rows.Count:#,0} rows kept");
    }

    private delegate void Taking(in WeatherRow row);

    private sealed class Each(Taking take) : IRowSink
    {
        public void Begin(WeatherSource source)
        {
        }

        public void Take(in WeatherRow row) => take(row);
    }
}
