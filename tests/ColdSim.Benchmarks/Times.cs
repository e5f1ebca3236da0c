using System.Diagnostics;
using ColdSim.Benchmarks.Files;
using ColdSim.Benchmarks.Planning;

namespace ColdSim.Benchmarks;

/// <summary>The longer answers by a stopwatch, wall and processor time: on a machine that others use too, only the latter says much.</summary>
internal static class Times
{
    private const int Runs = 5;

    public static int Run()
    {
        WeatherBenchmarks weather = new();
        Of("our weather CSV, 100,000 rows", () => weather.Our_csv_100_000_rows());
        Of("Meteostat, 100,000 rows", () => weather.Meteostat_100_000_rows());
        CompareBenchmarks compare = new();
        Of("base and 12 options over 7 nights", () => compare.Twelve_options_over_seven_nights());
        TripBenchmarks trip = new();
        Of("trip of 14 nights, 2 refills", () => trip.Fourteen_nights_with_two_refills());
        LimitBenchmarks limits = new();
        Of("limits, 8 fills by 4 set-ups", () => limits.Eight_fills_by_four_set_ups());
        FitBenchmarks fit = new();
        Of("fit, 14 days, filled once", () => fit.Fourteen_days_filled_once());
        Of("fit, 14 days, dry at the end", () => fit.Fourteen_days_dry_at_the_end());
        return 0;
    }

    // The first run, compiling as it goes, does not count.
    private static void Of(string what, Action work)
    {
        work();
        double[] wall_s = new double[Runs], processor_s = new double[Runs];
        using Process own = Process.GetCurrentProcess();
        for (int i = 0; i < Runs; i++)
        {
            own.Refresh();
            TimeSpan before = own.TotalProcessorTime;
            Stopwatch clock = Stopwatch.StartNew();
            work();
            wall_s[i] = clock.Elapsed.TotalSeconds;
            own.Refresh();
            processor_s[i] = (own.TotalProcessorTime - before).TotalSeconds;
        }

        Array.Sort(wall_s);
        Array.Sort(processor_s);
        Console.WriteLine(FormattableString.Invariant($"{what}: median of {Runs}: {wall_s[Runs / 2]:0.000} s wall, {processor_s[Runs / 2]:0.000} s of processor"));
    }
}
