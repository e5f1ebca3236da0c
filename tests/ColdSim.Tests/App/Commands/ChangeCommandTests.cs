using System.Text.Json;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>Two scenario files beside each other, and a run beside an earlier answer.</summary>
public sealed class ChangeCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public ChangeCommandTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    private string Demo => Path.Combine(_folder, "cold-snap.toml");

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error + shell.Out);
        return shell;
    }

    private string Changed(string from, string to, string add = "")
    {
        string text = File.ReadAllText(Demo), path = Path.Combine(_folder, "other.toml");
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal) + add);
        return path;
    }

    private string Report(string scenario, string name = "yesterday.json")
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllText(path, Run(0, "run", scenario, "--no-log", "--json").Out);
        return path;
    }

    [Fact]
    public void Two_files_are_compared_by_the_keys_that_differ_and_by_their_nights()
    {
        string other = Changed("night = \"59 °F\"", "night = \"12 °C\"", "\n[verdict]\nshort_allowance = \"20 min\"\n");
        Shell shell = Run(0, "compare", Demo, other, "--full");
        Assert.Contains("thermostat.night: 59 °F → 54 °F", shell.Out, StringComparison.Ordinal);
        Assert.Contains("verdict.short_allowance: not given → 20 min", shell.Out, StringComparison.Ordinal);
        Assert.Contains("thermostat.night: 15.0 °C → 12 °C", Run(0, "compare", Demo, other, "--units", "si").Out, StringComparison.Ordinal);
        Assert.All(shell.Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
        string screen = Run(0, "compare", Demo, other).Out;
        Assert.InRange(screen.TrimEnd('\n').Split('\n').Length, 5, 23);
        Assert.Contains("1st, cold-snap.toml: FAILS", screen, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run(0, "compare", Demo, other, "--json").Out);
        Assert.Equal(["thermostat.night", "verdict.short_allowance"], json.RootElement.GetProperty("inputs").EnumerateArray().Select(i => i.GetProperty("key").GetString()));
        JsonElement night = json.RootElement.GetProperty("nights")[0];
        Assert.Equal("2027-01-12", night.GetProperty("evening").GetString());
        Assert.True(night.GetProperty("after").GetProperty("left_at_dawn_kg").GetDouble() > night.GetProperty("before").GetProperty("left_at_dawn_kg").GetDouble());
    }

    [Fact]
    public void A_file_compared_with_itself_differs_in_nothing_and_what_does_not_go_with_two_files_is_refused()
    {
        Assert.Contains("Nothing differs in what the files say.", Run(0, "compare", Demo, Demo).Out, StringComparison.Ordinal);
        Assert.Contains("--sizes goes with one file; drop", Run(2, "compare", Demo, Demo, "--sizes", "30 lb").Error, StringComparison.Ordinal);
        Assert.Contains("--csv goes with one file", Run(2, "compare", Demo, Demo, "--csv", Path.Combine(_folder, "o.csv")).Error, StringComparison.Ordinal);
        Assert.Contains("there is no file", Run(2, "compare", Demo, Path.Combine(_folder, "none.toml")).Error, StringComparison.Ordinal);
        string broken = Path.Combine(_folder, "broken.toml");
        File.WriteAllText(broken, "titel = 1\n");
        Assert.Contains($"{broken}:1:1: ", Run(2, "compare", Demo, broken).Error, StringComparison.Ordinal);
        Run(1, "compare", Demo, Demo, "--fail-if-short");
    }

    [Fact]
    public void A_run_says_what_changed_since_an_earlier_answer_of_weather_contents_and_verdict()
    {
        string report = Report(Demo), weather = Path.Combine(_folder, "cold-snap-weather.csv"), other = Changed("left = \"", "temperature = \"0 °C\"\nleft = \"");
        Assert.Contains("The weather of the nights in both is the same.", Run(0, "run", other, "--since", report).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        string[] lines = File.ReadAllLines(weather);
        File.WriteAllLines(weather, lines.Select((l, i) => i == 0 || l.StartsWith('#') || !l.Contains(',', StringComparison.Ordinal) || !double.TryParse(l.Split(',')[1], out double air)
            ? l : string.Join(',', [l.Split(',')[0], FormattableString.Invariant($"{air + 30:0.0}"), .. l.Split(',')[2..]])));
        string text = Run(0, "run", Demo, "--since", report, "--full").Out.ReplaceLineEndings(" ");
        Assert.Contains("now holds", text, StringComparison.Ordinal);
        Assert.Contains("warmer, low", text, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run(0, "run", Demo, "--since", report, "--json").Out);
        Assert.Equal("holds", json.RootElement.GetProperty("since").GetProperty("after").GetProperty("verdict").GetString());
        Assert.NotEqual("holds", json.RootElement.GetProperty("since").GetProperty("before").GetProperty("verdict").GetString());
    }

    [Fact]
    public void A_reading_that_came_since_an_earlier_answer_is_said()
    {
        string demo = Path.Combine(_folder, "three-days.toml");
        string text = Run(0, "run", demo, "--since", Report(demo)).Out.ReplaceLineEndings(" ");
        Assert.Contains("It started with 40 lb, this one with 16 lb (log, Fri 16:15).", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", ":1:1: not a JSON document")]
    [InlineData("{\n  \"title\": nonsense\n}", ":2:13: not a JSON document")]
    [InlineData("[]", ":1:1: a JSON document, but not the report of a run")]
    [InlineData("{\"title\": \"a\"}", ":1:1: a JSON document, but not the report of a run")]
    [InlineData("{\"title\":\"a\",\"start\":\"noon\",\"summary\":{\"verdict\":\"holds\",\"left_at_start_kg\":1},\"nights\":[]}", ":1:1: a JSON document, but not the report of a run")]
    [InlineData("{\"title\":\"a\",\"start\":\"2027-01-12T16:00:00-07:00\",\"summary\":{\"verdict\":\"holds\",\"left_at_start_kg\":\"1\"},\"nights\":[]}", ":1:1: a JSON document, but not")]
    [InlineData("{\"title\":\"a\",\"start\":\"2027-01-12T16:00:00-07:00\",\"summary\":{\"verdict\":\"holds\",\"left_at_start_kg\":1},\"nights\":[3]}", ":1:1: a JSON document, but not")]
    public void A_bad_or_a_foreign_report_is_refused_with_its_place(string content, string message)
    {
        string path = Path.Combine(_folder, "bad.json");
        File.WriteAllText(path, content);
        Shell shell = Run(2, "run", Demo, "--since", path);
        Assert.Contains(path + message, shell.Error, StringComparison.Ordinal);
        Assert.Contains("accepted: a document that 'coldsim run --json' wrote", shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_missing_report_and_members_beside_one_are_refused()
    {
        Assert.Contains("--since: there is no file", Run(2, "run", Demo, "--since", Path.Combine(_folder, "none.json")).Error, StringComparison.Ordinal);
        Assert.Contains("does not go with --members", Run(2, "run", Demo, "--since", Report(Demo), "--members", "2").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_document_of_two_files_has_the_keys_of_its_figures()
    {
        string demo = Path.Combine(_folder, "three-days.toml");
        using JsonDocument json = JsonDocument.Parse(Run(0, "compare", demo, Changed("night = \"59 °F\"", "night = \"50 °F\""), "--json").Out);
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(json.RootElement, "", written);
        Assert.Empty(written.Except(JsonPage.Keys(JsonPage.Documents["compare files"]).Select(k => k.Path)));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
