using System.Text;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>The declarations of sections and keys, held against the reader that goes by them.</summary>
public class ScenarioKeysTests
{
    private static readonly IReadOnlyList<(string Section, ScenarioKey Key)> Keys = [.. ScenarioKeys.All.SelectMany(s => s.Section.Keys.Select(k => (s.Name, k)))];

    [Fact]
    public void Every_declared_key_is_read()
        => Assert.All(Keys, k =>
        {
            IReadOnlyList<FileProblem> faults = Faults(k.Section, k.Key, k.Key is FlagKey ? "1" : "false");
            Assert.Contains(faults, p => p.What.Contains($"'{k.Key.Name}'", StringComparison.Ordinal) && p.Column > k.Key.Name.Length);
            Assert.DoesNotContain(faults, p => p.What.Contains("unknown", StringComparison.Ordinal));
        });

    [Fact]
    public void Every_keys_example_is_accepted()
        => Assert.All(Keys, k => Assert.DoesNotContain(
            Faults(k.Section, k.Key, k.Key.Example),
            p => p.What.StartsWith($"'{k.Key.Name}' is", StringComparison.Ordinal) || p.What.StartsWith($"'{k.Key.Name}':", StringComparison.Ordinal)));

    [Fact]
    public void A_key_that_goes_with_another_is_refused_alone()
        => Assert.All(Keys.Where(k => k.Key.GoesWith.Count > 0), k => Assert.Single(Faults(k.Section, k.Key, k.Key.Example)));

    [Fact]
    public void A_key_is_refused_beyond_its_limits()
        => Assert.All(Keys.Where(k => k.Key is QuantityKey), k =>
        {
            foreach (QuantityRange range in ((QuantityKey)k.Key).Ranges)
            {
                Assert.InRange(range.Si(range.Example), range.LowSi, range.HighSi);
                UnitSpelling unit = SpellingTable.All.First(u => u.Dimension == range.Dimension);
                string beyond = FormattableString.Invariant($"\"{(range.HighSi * 1.01 + 1) / unit.Factor - unit.Offset:0.######} {unit.Spellings[0]}\"");
                Assert.Contains(Faults(k.Section, k.Key, beyond), p => p.Accepted == range.Accepted);
            }
        });

    [Fact]
    public void No_section_declares_a_name_twice()
        => Assert.All(ScenarioKeys.All, s => Assert.Equal(s.Section.Names.Distinct(), s.Section.Names));

    [Fact]
    public void What_goes_together_or_instead_is_declared_in_the_same_section()
        => Assert.All(ScenarioKeys.All, s => Assert.All(
            s.Section.Ways.SelectMany(w => w).Concat(s.Section.Keys.SelectMany(k => k.GoesWith)), n => Assert.Contains(n, s.Section.Names)));

    [Fact]
    public void The_starter_shows_the_comments_and_defaults_of_its_keys()
    {
        string[] lines = StarterScenario.Text().Split('\n');
        Assert.Contains("sky_view = 0.5                  # part of the sky it sees", lines);
        Assert.Contains("# set_point = \"11 inH2O\"", lines);
        Assert.Contains("# altitude = \"fixed orifice\"    # or \"code percentage\"", lines);
        Assert.All(lines, l => Assert.False(l.EndsWith(" #", StringComparison.Ordinal) || l.EndsWith("# ", StringComparison.Ordinal), l));
    }

    /// <summary>What the reader says of the line of one key.</summary>
    private static IReadOnlyList<FileProblem> Faults(string section, ScenarioKey key, string value)
    {
        string line = $"{key.Name} = {value}";
        string text = With(section, line);
        int at = Array.IndexOf(text.Split('\n'), line) + 1;
        return [.. ScenarioReader.ReadText(text, "s.toml", new Fixtures.OneFile("w.csv", Fixtures.Weather)).Problems.Where(p => p.File == "s.toml" && p.Line == at)];
    }

    // A scenario with two cylinders and, in the section, that line.
    private static string With(string section, string line)
    {
        StringBuilder text = new();
        Add("", null);
        Add("weather", "file = \"w.csv\"");
        Add("weather.columns", null);
        Add("weather.day", null);
        Add("cylinder", "size = \"20 lb\"");
        Add("cylinder.surroundings", null);
        Add("cylinder.blanket", null);
        text.Append("[[cylinder]]\nsize = \"20 lb\"\n");
        string[] parts = section.Split('.');
        for (int i = 1; parts[0] is not ("" or "weather" or "cylinder") && i <= parts.Length; i++)
        {
            string name = string.Join('.', parts[..i]);
            text.Append(Header(name)).Append('\n');
            if (name == section)
                text.Append(line).Append('\n');
        }
        return text.ToString();

        void Add(string name, string? usual)
        {
            if (name == section)
                text.Append(Header(name)).Append('\n').Append(line).Append('\n');
            else if (usual is not null)
                text.Append(Header(name)).Append('\n').Append(usual).Append('\n');
        }
    }

    private static string Header(string name) => name switch
    {
        "" => "",
        "cylinder" => "[[cylinder]]",
        _ => ScenarioKeys.All.First(s => s.Name == name).Section.Form == TableForm.Many ? $"[[{name}]]" : $"[{name}]",
    };
}
