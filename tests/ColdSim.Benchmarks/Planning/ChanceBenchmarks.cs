using BenchmarkDotNet.Attributes;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;

namespace ColdSim.Benchmarks.Planning;

/// <summary>An ensemble over three nights, on every processor.</summary>
[MemoryDiagnoser]
public class ChanceBenchmarks
{
    private static readonly Scenario Scenario = FourteenNights.Scenario with { Nights = 3 };

    [Params(250, 1000)]
    public int Members { get; set; }

    [Benchmark]
    public int Members_over_three_nights() => ChanceRun.Of(Scenario, [], Members, 1).AllNights.Count;
}
