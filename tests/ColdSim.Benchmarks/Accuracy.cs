using System.Globalization;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.Benchmarks;

/// <summary>What a step does to the answer: every scenario given, against steps of one second. Prints the rows of the table in docs/performance.md.</summary>
internal static class Accuracy
{
    private static readonly double[] Steps_s = [10, 20, 30, 60, 180, 300, Scenario.DefaultStep_s];

    /// <summary>Prints a row for each scenario.</summary>
    /// <param name="files">Scenarios.</param>
    public static int Run(IReadOnlyList<string> files)
    {
        foreach (string file in files)
        {
            if (ScenarioReader.Read(file).Scenario is not { } scenario)
                return 2;
            RunReport fine = NightRun.Of(scenario with { Step_s = 1 });
            IEnumerable<RunReport> coarse = Steps_s.Select(step_s => NightRun.Of(scenario with { Step_s = step_s }));
            Console.WriteLine($"| `{Path.GetFileNameWithoutExtension(file)}` | {Starts(fine)} | {string.Join(" | ", coarse.Select(run => Cell(fine, run)))} |");
        }

        return 0;
    }

    private static string Cell(RunReport fine, RunReport coarse)
    {
        double gas = Math.Abs(coarse.Summary.GasUsed.Kilograms / fine.Summary.GasUsed.Kilograms - 1) * 100;
        double low_K = fine.Nights.Zip(coarse.Nights, (a, b) => Math.Abs((a.InsideLow?.Kelvins ?? 0) - (b.InsideLow?.Kelvins ?? 0))).Max();
        return string.Create(CultureInfo.InvariantCulture, $"{Short(fine, coarse)}; {gas:0.0000} %; {low_K:0.0000} K; {Starts(coarse) - Starts(fine)}");
    }

    private static string Short(RunReport fine, RunReport coarse)
    {
        if ((FirstShort(fine), FirstShort(coarse)) is not ({ } exact, { } at))
            return FirstShort(fine) == FirstShort(coarse) ? "–" : "only one is short";
        return string.Create(CultureInfo.InvariantCulture, $"{(at - exact).TotalSeconds:+0;−0;0} s");
    }

    private static DateTimeOffset? FirstShort(RunReport report) => report.Nights.Select(n => n.FirstShort).FirstOrDefault(t => t is not null);

    private static int Starts(RunReport report) => report.Nights.Sum(n => n.BurnerStarts);
}
