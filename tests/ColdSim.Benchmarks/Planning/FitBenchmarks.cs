using BenchmarkDotNet.Attributes;
using ColdSim.Planning.Fits;
using ColdSim.Tests.Planning.Fits;

namespace ColdSim.Benchmarks.Planning;

/// <summary>A fit on fourteen days of two readings a day: once filled half-way, and never filled, its last readings on a dry cylinder.</summary>
public class FitBenchmarks
{
    private readonly SyntheticLog _filled = SyntheticLog.Of(21, days: 14, filledAt: 14);
    private readonly SyntheticLog _dry = SyntheticLog.Of(21, days: 14);

    [Benchmark]
    public int Fourteen_days_filled_once() => CoachFit.Of(_filled.Scenario, _filled.Readings).Freedom;

    [Benchmark]
    public int Fourteen_days_dry_at_the_end() => CoachFit.Of(_dry.Scenario, _dry.Readings).Freedom;
}
