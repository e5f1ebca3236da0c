using System.Diagnostics;
using ColdSim.Benchmarks.Files;
using ColdSim.Benchmarks.Model;
using ColdSim.Benchmarks.Planning;
using ColdSim.Benchmarks.Text;
using ColdSim.Planning.Ensemble;

namespace ColdSim.Benchmarks;

/// <summary>The figures that take seconds, new beside those of baseline.json, so that a change shows what it costs.</summary>
internal static class ShortFigures
{
    // One sample is long enough for the clock and short enough to be left alone now and then on a machine that others use.
    private static readonly TimeSpan Sample = TimeSpan.FromMilliseconds(1);
    private static readonly TimeSpan Warm = TimeSpan.FromMilliseconds(500);
    private static readonly TimeSpan LongestWarming = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(1);

    // The just-in-time compiler looks again at what was called some thirty times.
    private const int WarmRuns = 60;
    private const int Fewest = 5;

    /// <summary>Prints every figure; writes them as the new baseline where that is asked.</summary>
    public static int Run(bool write)
    {
        Baseline? before = Baseline.Read();
        SortedDictionary<string, Cost> now = new(StringComparer.Ordinal);
        if (before is not null)
            Console.WriteLine($"before: {before.Date}, {before.Machine}");
        Console.WriteLine($"{"",-48}{"wall",11}{"before",11}{"ratio",7}{"processor",12}{"before",11}{"ratio",7}{"allocated",12}{"before",11}");
        foreach ((string name, Action work) in Everything())
        {
            Cost cost = Measure(work);
            now.Add(name, cost);
            Console.WriteLine(Line(name, cost, before?.Figures.GetValueOrDefault(name)));
        }

        Baseline measured = Baseline.Of(now);
        Console.WriteLine($"now: {measured.Date}, {measured.Machine}");
        if (write)
            measured.Write();
        return 0;
    }

    private static IEnumerable<(string Name, Action Work)> Everything()
    {
        SimulationBenchmarks simulation = new();
        yield return ("fourteen nights, step loop alone", () => simulation.Fourteen_nights_step_loop());
        NightRunBenchmarks nights = new();
        yield return ("fourteen nights, whole answer", () => nights.Fourteen_nights());
        yield return ("fourteen nights with everything", () => nights.Fourteen_nights_with_everything());
        ReadingBenchmarks reading = new();
        yield return ("starter scenario with its weather, read", () => reading.Starter_scenario_with_its_weather());
        PartBenchmarks parts = new();
        parts.Setup();
        yield return ("saturation table, one look-up", () => parts.Saturation_table());
        yield return ("reference equation, one state", () => parts.Reference_equation());
        yield return ("contents of the cylinder at a state", () => parts.Cylinder_contents());
        yield return ("external heat transfer of the cylinder", () => parts.Cylinder_film());
        yield return ("weather at an instant", () => parts.Weather_sample());
        yield return ("gas supply, all fed", () => parts.Supply_fed());
        yield return ("gas supply, starved", () => parts.Supply_starved());
        WeatherBenchmarks weather = new();
        yield return ("our weather CSV of 100,000 rows, read", () => weather.Our_csv_100_000_rows());
        yield return ("Meteostat CSV of 100,000 rows, read", () => weather.Meteostat_100_000_rows());
        CompareBenchmarks compare = new();
        yield return ("base and 12 options over 7 nights", () => compare.Twelve_options_over_seven_nights());
        TripBenchmarks trip = new();
        yield return ("trip of 14 nights with 2 refills", () => trip.Fourteen_nights_with_two_refills());
        LimitBenchmarks limits = new();
        yield return ("limits, 8 fills and 4 set-ups", () => limits.Eight_fills_by_four_set_ups());
        FitBenchmarks fit = new();
        yield return ("fit, 14 days, filled once", () => fit.Fourteen_days_filled_once());
        yield return ("fit, 14 days, dry at the end", () => fit.Fourteen_days_dry_at_the_end());
        ReportBenchmarks report = new();
        yield return ("page of a report of 14 nights", () => report.Page_of_fourteen_nights());
        yield return ("100 members of three nights", () => ChanceRun.Of(FourteenNights.Scenario with { Nights = 3 }, [], 100, 1));
    }

    private static Cost Measure(Action work)
    {
        Stopwatch warming = Stopwatch.StartNew();
        int runs = 0;
        do
        {
            work();
            runs++;
        }
        while (warming.Elapsed < Warm || (runs < WarmRuns && warming.Elapsed < LongestWarming));
        int batch = Math.Max(1, (int)(runs * (Sample / warming.Elapsed)));

        using Process own = Process.GetCurrentProcess();
        own.Refresh();
        TimeSpan processor = own.TotalProcessorTime;
        long allocated = GC.GetTotalAllocatedBytes(precise: true);
        double least_ms = double.PositiveInfinity;
        int samples = 0;
        Stopwatch whole = Stopwatch.StartNew();
        do
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < batch; i++)
                work();
            least_ms = Math.Min(least_ms, Stopwatch.GetElapsedTime(start).TotalMilliseconds / batch);
            samples++;
        }
        while (samples < Fewest || whole.Elapsed < Long);
        own.Refresh();
        double all = (double)samples * batch;
        return new(
            Rounded(least_ms),
            Rounded((own.TotalProcessorTime - processor).TotalMilliseconds / all),
            Math.Round((GC.GetTotalAllocatedBytes(precise: true) - allocated) / all));
    }

    // Three digits are more than is known.
    private static double Rounded(double value)
    {
        if (value == 0)
            return 0;
        double scale = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Math.Round(Math.Round(value / scale) * scale, 15);
    }

    private static string Line(string name, Cost now, Cost? before)
        => $"{name,-48}{Time(now.WallMilliseconds),11}{Time(before?.WallMilliseconds),11}{Ratio(now.WallMilliseconds, before?.WallMilliseconds),7}"
            + $"{Time(now.ProcessorMilliseconds),12}{Time(before?.ProcessorMilliseconds),11}{Ratio(now.ProcessorMilliseconds, before?.ProcessorMilliseconds),7}"
            + $"{Bytes(now.AllocatedBytes),12}{Bytes(before?.AllocatedBytes),11}";

    private static string Time(double? value_ms) => value_ms switch
    {
        null => "-",
        < 0.001 => FormattableString.Invariant($"{value_ms * 1e6:0.0} ns"),
        < 1 => FormattableString.Invariant($"{value_ms * 1e3:0.00} µs"),
        < 1000 => FormattableString.Invariant($"{value_ms:0.0} ms"),
        _ => FormattableString.Invariant($"{value_ms / 1000:0.00} s"),
    };

    private static string Bytes(double? value) => value switch
    {
        null => "-",
        < 1000 => FormattableString.Invariant($"{value:0} B"),
        < 1e6 => FormattableString.Invariant($"{value / 1e3:0} kB"),
        _ => FormattableString.Invariant($"{value / 1e6:0.0} MB"),
    };

    private static string Ratio(double? now, double? before) => now is not null && before is > 0 ? FormattableString.Invariant($"{now / before:0.00}") : "-";
}
