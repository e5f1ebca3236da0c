using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Schemas;
using ColdSim.Files.Scenarios.Starters;
using Json.Schema;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>The schema of the scenario file, by a validator that is not ours.</summary>
public partial class ScenarioSchemaTests
{
    private static readonly IReadOnlyList<(string Section, ScenarioKey Key)> Keys =
        [.. ScenarioKeys.All.SelectMany(s => s.Section.Keys.Select(k => (s.Name, k)))];

    private static readonly string Root = Path.GetDirectoryName(DocPage.Scenarios)!;

    public static TheoryData<string> Scenarios()
        => new(Directory.EnumerateFiles(Root, "*.toml", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/bin/", StringComparison.Ordinal) && !f.Contains("/obj/", StringComparison.Ordinal))
            .Where(f => IsScenario(File.ReadAllText(f)))
            .Select(f => Path.GetRelativePath(Root, f))
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Every_scenario_of_the_project_fits(string file)
        => Assert.Empty(SchemaCheck.Faults(File.ReadAllText(Path.Combine(Root, file))));

    [Fact]
    public void Every_starter_fits()
    {
        Assert.Empty(SchemaCheck.Faults(StarterScenario.Text()));
        foreach (string kind in StarterRig.Kinds)
        {
            foreach (bool metric in (bool[])[false, true])
            {
                StarterRig rig = StarterRig.OfKind(kind, metric);
                Assert.Empty(SchemaCheck.Faults(StarterFiles.Of(rig, "trip.toml", DateTimeOffset.UnixEpoch)[^1].Text));
            }
        }
    }

    [Fact]
    public void It_is_a_schema_of_2020_12_that_says_of_every_key_what_it_means()
    {
        using JsonDocument document = JsonDocument.Parse(ScenarioSchema.Text());
        Assert.True(MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid);
        JsonObject schema = JsonNode.Parse(ScenarioSchema.Text())!.AsObject();
        Assert.All(Keys, k =>
        {
            JsonObject key = SchemaCheck.Property(schema, KeyPath(k));
            Assert.False(string.IsNullOrWhiteSpace((string?)key["description"]));
            Assert.NotEmpty(key["examples"]!.AsArray());
            if (k.Key is QuantityKey { DefaultSi: not null, Default.Unit: not "-" } or FlagKey { Default.Si: not null })
                Assert.True(key.ContainsKey("default"), KeyPath(k));
        });
    }

    [Fact]
    public void Every_keys_example_fits() => Assert.All(Keys, k => Assert.True(Fits(k, k.Key.Example), KeyPath(k)));

    [Fact]
    public void A_value_of_another_form_does_not_fit_at_any_key()
        => Assert.All(Keys, k => Assert.False(Fits(k, k.Key is FlagKey ? "1" : "false"), KeyPath(k)));

    [Fact]
    public void A_quantity_without_its_unit_or_with_one_of_something_else_does_not_fit()
        => Assert.All(Keys.Where(k => k.Key is QuantityKey { Words.Count: 0 } q && q.Ranges.All(r => r.Dimension != Dimension.Ratio)), k =>
        {
            foreach (string value in (string[])["12", "\"12\"", "\"12 furlongs\""])
                Assert.False(Fits(k, value), $"{KeyPath(k)} = {value}");
        });

    [Fact]
    public void Every_spelling_of_every_unit_fits_as_the_reader_reads_it()
    {
        foreach (UnitSpelling unit in SpellingTable.All)
        {
            Regex pattern = new(TextPattern.Quantity(unit.Dimension), RegexOptions.ECMAScript);
            foreach (string text in unit.Spellings.SelectMany(s
                => (string[])[$"12 {s}", $"12{s}", $"-1,250.5 {s}", $"12 1/4 {s}", $" 1.2e3 {s} ", $".5 {s}"]))
                Assert.Equal((text, SiText.Read(text, unit.Dimension, out _) is null), (text, pattern.IsMatch(text)));
            foreach (string text in unit.Spellings.SelectMany(s => (string[])[s, $"12,5 {s}", $"12 x{s}", $"0,500 {s}", $"1.2.3 {s}"]))
                Assert.False(pattern.IsMatch(text) && SiText.Read(text, unit.Dimension, out _) is not null, text);
        }
    }

    [Theory]
    [InlineData("half")]
    [InlineData("a third")]
    [InlineData("Three-quarters full")]
    [InlineData("full")]
    [InlineData("4/5")]
    [InlineData("40%")]
    public void A_part_may_be_said_in_words(string part)
    {
        Assert.Null(SiText.Read(part, Dimension.Ratio, out _));
        Assert.Empty(SchemaCheck.Faults($"[weather]\nfile = \"w.csv\"\n[cylinder]\nsize = \"20 lb\"\nleft = \"{part}\"\n"));
    }

    // What hangs on units, on other keys or on the weather, and what is no TOML, a schema cannot see.
    [GeneratedRegex("unknown key|unknown table|without a unit|has no unit|is not a unit of|unknown unit|a decimal comma|"
        + "does not begin with a number|accepted: a whole number|accepted: -?\\d+ to \\d+$|is true or false|"
        + "is the number|'orientation' is|is a text; accepted|accepted: a span|accepted: a time|accepted: tables|lacks 'rate'")]
    private static partial Regex Visible();

    [GeneratedRegex("begins and ends|not TOML")]
    private static partial Regex Unseen();

    public static TheoryData<string, bool> SingleFaults()
    {
        TheoryData<string, bool> faults = [];
        MethodInfo reader = typeof(ScenarioFaultTests).GetMethod(nameof(ScenarioFaultTests.A_fault_is_reported_with_its_place))!;
        foreach (InlineDataAttribute data in reader.GetCustomAttributes<InlineDataAttribute>())
        {
            object[] row = [.. data.GetData(null!).Single()];
            string said = (string)row[1];
            faults.Add((string)row[0], Visible().IsMatch(said) && !Unseen().IsMatch(said));
        }

        return faults;
    }

    [Theory]
    [MemberData(nameof(SingleFaults))]
    public void A_fault_that_a_schema_can_see_does_not_fit(string more, bool visible)
    {
        if (visible)
            Assert.NotEmpty(SchemaCheck.Faults(Fixtures.Least + "\n" + more));
    }

    [Fact]
    public void More_than_half_of_the_readers_faults_are_seen() => Assert.InRange(SingleFaults().Count(f => (bool)f[1]), 20, int.MaxValue);

    private static bool Fits((string Section, ScenarioKey Key) key, string toml) => SchemaCheck.Fits(KeyPath(key), toml);

    private static string KeyPath((string Section, ScenarioKey Key) key) => $"{key.Section}.{key.Key.Name}".TrimStart('.');

    private static bool IsScenario(string text) => text.Contains("[cylinder", StringComparison.Ordinal);
}
