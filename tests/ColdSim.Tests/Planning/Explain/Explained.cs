using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Explain;

namespace ColdSim.Tests.Planning.Explain;

/// <summary>Explanations, each worked out once for all tests.</summary>
internal static class Explained
{
    private static readonly ConcurrentDictionary<Limit, Lazy<Explanation>> Rigs = new();

    private static readonly Lazy<Scenario> DemoScenario = new(() => ScenarioReader.Read(Path.Combine(Root(), "scenarios", "cold-snap.toml")).Scenario!);

    private static readonly Lazy<Explanation> DemoOnce = new(() => Explanation.Of(DemoScenario.Value, AmountGrid.Us));

    private static readonly Lazy<Explanation> FlatOnce = new(
        () => Explanation.Of(ScenarioReader.Read(Path.Combine(Root(), "scenarios", "battery-first.toml")).Scenario!, AmountGrid.Us));

    private static readonly Lazy<Explanation> BlendOnce = new(
        () => Explanation.Of(ScenarioReader.Read(Path.Combine(Root(), "scenarios", "mixed-gas.toml")).Scenario!, AmountGrid.Us));

    /// <summary>The blend that leaves its butane behind.</summary>
    public static Explanation Blend => BlendOnce.Value;

    /// <summary>The rig whose battery fails first.</summary>
    public static Explanation Flat => FlatOnce.Value;

    public static Explanation Demo => DemoOnce.Value;

    /// <summary>The demo's as for a person who reads metric units; the amounts are those of the other.</summary>
    public static Explanation DemoMetric => DemoOnce.Value with { Grid = AmountGrid.Metric };

    public static Explanation Of(Limit limit) => Rigs.GetOrAdd(limit, l => new(() => Explanation.Of(SixRigs.Of(l), AmountGrid.Us))).Value;

    private static string Root([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", ".."));
}
