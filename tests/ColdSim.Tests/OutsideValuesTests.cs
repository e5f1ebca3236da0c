using System.Reflection;
using Xunit;

namespace ColdSim.Tests;

/// <summary>Counts the checks against the world outside, so that they cannot quietly thin out.</summary>
public class OutsideValuesTests
{
    private static readonly Dictionary<MethodInfo, OutsideAttribute> Marked = typeof(OutsideValuesTests).Assembly.GetTypes()
        .SelectMany(t => t.GetMethods())
        .Where(m => m.GetCustomAttribute<OutsideAttribute>() is not null)
        .ToDictionary(m => m, m => m.GetCustomAttribute<OutsideAttribute>()!);

    private const string NoSource = "common practice, no source";

    // Read in a source: neither recalled nor a fact of the trade that nobody has written down.
    private static readonly List<KeyValuePair<MethodInfo, OutsideAttribute>> Read =
        [.. Marked.Where(p => !p.Value.FromMemory && p.Value.Source != NoSource)];

    private static int Values(MethodInfo m) => Math.Max(1, m.GetCustomAttributes<InlineDataAttribute>().Count());

    [Fact]
    public void At_least_forty_values_come_from_outside()
        => Assert.True(Read.GroupBy(p => p.Value.Source).Sum(g => Math.Min(10, g.Sum(p => Values(p.Key)))) >= 40);

    [Fact]
    public void At_least_twenty_of_them_are_on_heat_transfer_furnace_coach_infiltration_or_moist_air()
    {
        Field[] fields = [Field.HeatTransfer, Field.Furnace, Field.Coach, Field.Infiltration, Field.MoistAir];
        Assert.True(Read.Where(p => fields.Contains(p.Value.Field)).Sum(p => Values(p.Key)) >= 20);
    }

    [Fact]
    public void No_source_gives_more_than_ten_values()
        => Assert.DoesNotContain(Marked.Where(p => p.Value.Source != NoSource).GroupBy(p => p.Value.Source), g => g.Sum(p => Values(p.Key)) > 10);

    [Fact]
    public void Every_marked_method_is_a_test()
        => Assert.All(Marked.Keys, m => Assert.NotNull(m.GetCustomAttribute<FactAttribute>()));
}
