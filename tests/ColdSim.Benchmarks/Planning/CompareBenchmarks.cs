using BenchmarkDotNet.Attributes;
using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.Benchmarks.Planning;

/// <summary>Twelve options and the base over seven nights, on every processor.</summary>
[MemoryDiagnoser]
public class CompareBenchmarks
{
    private static readonly Scenario Scenario = FourteenNights.Scenario with { Nights = 7 };

    private static readonly ComparedOption[] Options =
    [
        .. Enumerable.Range(1, 12).Select(i => new ComparedOption($"night at {285.15 - i * 0.5} K", Cooler(i * 0.5))),
    ];

    [Benchmark]
    public bool Twelve_options_over_seven_nights() => Comparison.Of(Scenario, Options).AnyHolds;

    private static Scenario Cooler(double by_K) => Scenario with
    {
        Rig = Scenario.Rig with { Thermostat = Scenario.Rig.Thermostat! with { NightSetPoint_K = Scenario.Rig.Thermostat.NightSetPoint_K - by_K } },
    };
}
