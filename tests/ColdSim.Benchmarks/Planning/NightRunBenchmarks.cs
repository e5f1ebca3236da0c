using BenchmarkDotNet.Attributes;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.Benchmarks.Planning;

/// <summary>The whole answer in process: step loop, curves, nights and verdicts.</summary>
[MemoryDiagnoser]
public class NightRunBenchmarks
{
    private static readonly Scenario Scenario = FourteenNights.Scenario;

    [Benchmark]
    public Verdict Fourteen_nights_with_everything() => NightRun.Of(Everything.Scenario).Summary.Verdict;

    [Benchmark]
    public Verdict Fourteen_nights() => NightRun.Of(Scenario).Summary.Verdict;
}
