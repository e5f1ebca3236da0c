using BenchmarkDotNet.Attributes;
using ColdSim.Planning.Fits;
using ColdSim.Tests.Planning.Fits;

namespace ColdSim.Benchmarks.Planning;

/// <summary>A fit on fourteen days of two readings a day, the last of them on a dry cylinder, which is the slow case.</summary>
public class FitBenchmarks
{
    private readonly SyntheticLog _log = SyntheticLog.Of(21, days: 14);

    /// <summary>The fit.</summary>
    [Benchmark]
    public FitReport FourteenDays() => CoachFit.Of(_log.Scenario, _log.Readings);
}
