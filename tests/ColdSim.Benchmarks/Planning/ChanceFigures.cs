using System.Diagnostics;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;

namespace ColdSim.Benchmarks.Planning;

/// <summary>Processor time and memory of ensembles; on a shared machine the clock on the wall says little.</summary>
internal static class ChanceFigures
{
    public static int Run()
    {
        Scenario scenario = FourteenNights.Scenario with { Nights = 3 };
        ChanceRun.Of(scenario, [], 100, 1);
        foreach (int members in (int[])[500, 1000, 2000, 4000])
        {
            using Process own = Process.GetCurrentProcess();
            TimeSpan before = own.TotalProcessorTime;
            Stopwatch wall = Stopwatch.StartNew();
            ChanceReport report = ChanceRun.Of(scenario, [], members, 1);
            own.Refresh();
            Console.WriteLine(FormattableString.Invariant(
                $"{members} members: {(own.TotalProcessorTime - before).TotalSeconds:0.00} s of processor, {wall.Elapsed.TotalSeconds:0.00} s on the wall, heap {GC.GetTotalMemory(true) / 1e6:0.0} MB, peak {own.PeakWorkingSet64 / 1e6:0} MB, chance {report.AllNights.Chance_frac:0.000}"));
        }

        return 0;
    }
}
