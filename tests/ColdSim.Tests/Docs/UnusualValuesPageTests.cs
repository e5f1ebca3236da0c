using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Weather;
using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class UnusualValuesPageTests
{
    [Fact]
    public void The_generated_tables_of_docs_unusual_values_md_are_current() => GeneratedPage.AssertCurrent("unusual-values.md", new Dictionary<string, string>
    {
        ["keys"] = Table(["key", "usual", "basis"], Keys().Select(k => (string[])[$"`{k.Name}`", k.Usual.Shown + k.Usual.Hint, k.Usual.Basis])),
        ["scenario"] = Table(["key", "noticed", "usual", "basis"], UnusualScenario.All.Append(CylinderSection.LeftIsOne).Select(u => Row(u, code: true))),
        ["weather"] = Table(["column or key", "noticed", "usual", "basis"], UnusualWeather.All.Select(u => Row(u, code: true))),
        ["rows"] = Table(["column", "noticed", "usual", "basis"], UnusualRows.Declared.Select(u => Row(u, code: false))),
    });

    /// <summary>The keys of which some values within the limits are unusual.</summary>
    internal static IEnumerable<(string Name, UsualRange Usual)> Keys()
        => ScenarioKeys.All.SelectMany(s => s.Section.Keys.Where(k => k.Usual is not null).Select(k => (s.Name.Length == 0 ? k.Name : $"{s.Name}.{k.Name}", k.Usual!)));

    private static string[] Row(UnusualValue unusual, bool code) => [code ? $"`{unusual.Where}`" : unusual.Where, unusual.Noticed, unusual.Usual, unusual.Basis];

    private static string Table(string[] headings, IEnumerable<string[]> rows)
        => string.Concat(rows.Prepend([.. headings.Select(_ => "---")]).Prepend(headings).Select(r => $"| {string.Join(" | ", r)} |\n"));
}
