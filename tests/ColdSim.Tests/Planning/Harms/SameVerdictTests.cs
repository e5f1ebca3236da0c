using System.Runtime.CompilerServices;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using Xunit;

namespace ColdSim.Tests.Planning.Harms;

/// <summary>Every way to ask about a demo gives the same verdict, first failure and lowest inside.</summary>
public class SameVerdictTests
{
    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "..", "scenarios"));

    public static TheoryData<string> Demos { get; } = [.. Directory.GetFiles(Folder(), "*.toml").Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Demos))]
    public void Run_compare_trip_and_members_agree_on_every_demo(string demo)
    {
        Scenario scenario = ScenarioReader.Read(Path.Combine(Folder(), demo)).Scenario!;
        RunReport run = NightRun.Of(scenario);
        (Verdict, DateTimeOffset?, UnitsNet.Temperature?) expected = Of(run.Summary);

        Assert.Equal(expected, Of(Comparison.Of(scenario, []).Rows[0].Summary));
        Assert.Equal(expected, Of(TripRun.Of(scenario).Run.Summary));
        LeanRun lean = NightRun.Lean(scenario, UnwatchedRun.Only);
        Assert.Equal(run.Nights.Select(n => n.Verdict), lean.Nights.Select(n => n.Verdict));
        Assert.Equal(run.Nights.Select(n => n.Harm.ToString()), lean.Nights.Select(n => n.Harm.ToString()));

        NightReport? failed = run.Nights.FirstOrDefault(n => n.Verdict != Verdict.Holds);
        Assert.Equal(failed?.Verdict ?? Verdict.Holds, run.Summary.Verdict);
        Assert.Equal(failed?.FirstFailure, run.Summary.FirstFailure);
        Assert.All(run.Nights, n => Assert.Equal(n.Verdict == Verdict.Holds, n.FirstFailure is null));
        Assert.All(run.Nights, n => Assert.StartsWith(n.Verdict == Verdict.Holds ? "holds" : "FAILS: ", NightOutcome.Short(n), StringComparison.Ordinal));
    }

    private static (Verdict, DateTimeOffset?, UnitsNet.Temperature?) Of(RunSummary summary) => (summary.Verdict, summary.FirstFailure, summary.InsideLow);
}
