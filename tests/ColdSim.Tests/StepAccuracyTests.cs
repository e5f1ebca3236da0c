using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests;

/// <summary>Two rows of the table of accuracy in docs/performance.md: what a step does to the answer, against steps of one second.</summary>
[Trait("Category", "Slow")]
public class StepAccuracyTests
{
    [Theory]
    [InlineData("cold-snap.toml", 10)]
    [InlineData("cold-snap.toml", Scenario.DefaultStep_s)]
    [InlineData("which-cylinder.toml", 10)]
    [InlineData("which-cylinder.toml", Scenario.DefaultStep_s)]
    public void Answer_at_a_step_is_that_at_one_second(string demo, double step_s)
    {
        RunReport fine = Run(demo, 1), coarse = Run(demo, step_s);
        Assert.Equal(1, coarse.Summary.GasUsed.Kilograms / fine.Summary.GasUsed.Kilograms, 2e-4);
        Assert.Equal(1, Starts(coarse) / Starts(fine), 0.01);
        Assert.All(fine.Nights.Zip(coarse.Nights), pair =>
        {
            Assert.Equal(pair.First.InsideLow!.Value.Kelvins, pair.Second.InsideLow!.Value.Kelvins, 0.05);
            Assert.Equal(pair.First.FirstShort is null, pair.Second.FirstShort is null);
            if (pair.First.FirstShort is { } exact) Assert.InRange((pair.Second.FirstShort!.Value - exact).TotalSeconds, -30, 30);
        });
    }

    private static double Starts(RunReport report) => report.Nights.Sum(n => n.BurnerStarts);

    private static RunReport Run(string demo, double step_s)
        => NightRun.Of(ScenarioReader.Read(Path.Combine(Root(), "scenarios", demo)).Scenario! with { Step_s = step_s });

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
