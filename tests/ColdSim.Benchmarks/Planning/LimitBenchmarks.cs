using BenchmarkDotNet.Attributes;
using ColdSim.Planning.Limits;

namespace ColdSim.Benchmarks.Planning;

/// <summary>A limits chart of the usual eight fills and four set-ups, on every processor.</summary>
[MemoryDiagnoser]
public class LimitBenchmarks
{
    [Benchmark]
    public int Eight_fills_by_four_set_ups() => LimitChart.Of(FourteenNights.Scenario, LimitAxis.Fahrenheit).Columns.Count;
}
