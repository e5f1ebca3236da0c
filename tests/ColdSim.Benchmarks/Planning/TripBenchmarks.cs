using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Trips;

namespace ColdSim.Benchmarks.Planning;

/// <summary>The fortnight of scenarios/: fourteen nights, three stops, two refills and until when each can wait, on every processor.</summary>
[MemoryDiagnoser]
public class TripBenchmarks
{
    private readonly Scenario _scenario = ScenarioReader.Read(Path.Combine(Root(), "scenarios", "fortnight.toml")).Scenario!;

    [Benchmark]
    public int Fourteen_nights_with_two_refills() => TripRun.Of(_scenario).Refills.Count;

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
