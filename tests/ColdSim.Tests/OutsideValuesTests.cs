using System.Reflection;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests;

/// <summary>Counts the checks against the world outside, so that they cannot quietly thin out, and holds what they name against docs/sources.md.</summary>
public class OutsideValuesTests
{
    private const string NoSource = "common practice, no source";

    private static readonly Dictionary<MethodInfo, OutsideAttribute> Marked = typeof(OutsideValuesTests).Assembly.GetTypes()
        .SelectMany(t => t.GetMethods())
        .Where(m => m.GetCustomAttribute<OutsideAttribute>() is not null)
        .ToDictionary(m => m, m => m.GetCustomAttribute<OutsideAttribute>()!);

    // Read in a source: neither recalled nor a fact of the trade that nobody has written down.
    private static readonly List<KeyValuePair<MethodInfo, OutsideAttribute>> Read =
        [.. Marked.Where(p => !p.Value.FromMemory && p.Value.Source != NoSource)];

    // The text under each heading; a source with two headings has the text of both.
    private static readonly Dictionary<string, string> Sources = string.Join('\n', DocPage.Lines("sources.md"))
        .Split("\n## ").Skip(1)
        .Select(section => section.Split('\n', 2))
        .GroupBy(parts => parts[0].Trim(), parts => parts[1].ReplaceLineEndings(" "))
        .ToDictionary(g => g.Key, g => string.Join(' ', g));

    private static int Values(MethodInfo m) => Math.Max(1, m.GetCustomAttributes<InlineDataAttribute>().Count());

    private static string Name(MethodInfo m) => $"{m.DeclaringType!.Name}.{m.Name}";

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
    public void Every_source_is_a_heading_of_the_page_of_sources()
        => Assert.Empty(Marked.Where(p => p.Value.Source != NoSource && !Sources.ContainsKey(p.Value.Source)).Select(p => Name(p.Key)));

    [Fact]
    public void What_a_value_came_through_is_named_with_its_source()
        => Assert.Empty(Marked
            .Where(p => p.Value.Through is { } through && !Sources[p.Value.Source].Contains(through, StringComparison.Ordinal))
            .Select(p => Name(p.Key)));

    // Headings that are themselves a library or a program are the source of what its authors computed.
    [Fact]
    public void A_value_read_in_a_library_says_which()
    {
        string[] ownSources = ["CoolPropFluids", "RocketProps", "pvlib 2014", "PsychroLib 2018"];
        Assert.Empty(Read
            .Where(p => p.Value.Through is null && !ownSources.Contains(p.Value.Source)
                && Sources[p.Value.Source].Contains(" library ", StringComparison.Ordinal))
            .Select(p => Name(p.Key)));
    }

    [Fact]
    public void Every_marked_method_is_a_test()
        => Assert.All(Marked.Keys, m => Assert.NotNull(m.GetCustomAttribute<FactAttribute>()));
}
