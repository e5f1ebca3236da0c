using System.Text.Json;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public sealed class LogAndFitCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public LogAndFitCommandTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "three-days*"))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    private string Scenario => Path.Combine(_folder, "three-days.toml");

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error + shell.Out);
        return shell;
    }

    [Fact]
    public void A_reading_is_added_and_shown_as_pounds()
    {
        File.Delete(LogFile.PathOf(Scenario));
        Assert.Contains("there is no log", Run(2, "log", "show", Scenario).Error, StringComparison.Ordinal);
        Assert.Contains("25.0 lb of propane, give or take 0.4 lb", Run(0, "log", "add", Scenario, "--weight", "49.5 lb", "--at", "2027-01-12T16:00", "--tare", "24.5 lb", "--note", "a, \"b\"").Out, StringComparison.Ordinal);
        Run(0, "log", "add", Scenario, "--weight", "45.5 lb", "--at", "2027-01-13T16:00-07:00", "--tare", "24.5 lb");
        string show = Run(0, "log", "show", Scenario, "--full").Out;
        Assert.StartsWith("LEFT: 21.0 lb in the 40 lb cylinder, give or take 0.4 lb, read Wed 13 Jan 16:00.", show, StringComparison.Ordinal);
        Assert.Contains("4.00 0.28", show, StringComparison.Ordinal);
        Assert.All(show.Split('\n'), l => Assert.True(l.Length <= 80, l));
        using JsonDocument json = JsonDocument.Parse(Run(0, "log", "show", Scenario, "--json").Out);
        Assert.Equal("a, \"b\"", json.RootElement.GetProperty("readings")[0].GetProperty("note").GetString());
    }

    [Theory]
    [InlineData("give a reading", "--note", "x")]
    [InlineData("--weight: '31' has no unit", "--weight", "31")]
    [InlineData("--temperature: no liquid temperature", "--line", "5 in")]
    [InlineData("--at: 'yesterday' is not a time", "--weight", "49 lb", "--at", "yesterday")]
    [InlineData("--foot does not go with --weight", "--weight", "49 lb", "--foot", "2 in")]
    [InlineData("less than an empty cylinder", "--weight", "9 lb")]
    [InlineData("--note: more than one line", "--weight", "49 lb", "--note", "a\nb")]
    public void A_wrong_reading_is_refused_and_nothing_is_written(string message, params string[] words)
    {
        string before = File.ReadAllText(LogFile.PathOf(Scenario));
        Assert.Contains(message, Run(2, ["log", "add", Scenario, .. words]).Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(LogFile.PathOf(Scenario)));
    }

    [Fact]
    public void A_damaged_line_stops_unless_it_is_skipped_and_is_never_rewritten()
    {
        string log = LogFile.PathOf(Scenario);
        File.AppendAllText(log, "2027-01-15T07:00-07:00,40 lb,wieght,38 lb,,,\n");
        string text = File.ReadAllText(log);
        int line = text.Split('\n').Length - 1;
        string fault = Run(2, "log", "show", Scenario).Error;
        Assert.Contains($"three-days.log.csv:{line}:30: 'wieght' is not a way of reading", fault, StringComparison.Ordinal);
        Assert.Contains("did you mean 'weight'?", fault, StringComparison.Ordinal);
        Assert.Contains("left out: ", Run(0, "log", "show", Scenario, "--skip-damaged").Error, StringComparison.Ordinal);
        Run(2, "fit", Scenario);
        Run(0, "fit", Scenario, "--skip-damaged");
        Assert.Equal(text, File.ReadAllText(log));
    }

    [Fact]
    public void A_fit_is_printed_and_written_only_where_it_is_asked_to()
    {
        string before = File.ReadAllText(Scenario);
        string print = Run(0, "fit", Scenario, "--full").Out;
        Assert.Matches("^LEARNED: the coach loses [0-9]+ % more heat than the file says", print);
        Assert.All(print.Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.Equal(before, File.ReadAllText(Scenario));
        string copy = Path.Combine(_folder, "learned.toml");
        Run(0, "fit", Scenario, "--out", copy);
        Assert.Equal(before, File.ReadAllText(Scenario));
        Assert.Contains("as [fit] has them", Run(0, "check", copy, "--full").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Run(0, "fit", Scenario, "--out", copy);
        File.WriteAllText(copy, File.ReadAllText(copy).Replace("40 lb", "30 lb", StringComparison.Ordinal));
        Assert.Contains("exists already", Run(2, "fit", Scenario, "--out", copy).Error, StringComparison.Ordinal);
        Run(0, "fit", Scenario, "--out", copy, "--force");
        Assert.Contains("not both", Run(2, "fit", Scenario, "--out", copy, "--in-place").Error, StringComparison.Ordinal);
        Run(0, "fit", Scenario, "--in-place");
        Assert.Equal(before, File.ReadAllText(Scenario + ".bak"));
        Assert.Equal(File.ReadAllText(copy), File.ReadAllText(Scenario));
    }

    [Fact]
    public void A_run_starts_from_the_latest_reading_and_gives_ranges()
    {
        Shell log = Run(0, "run", Scenario, "--full");
        Assert.Contains("Without it: --no-log", log.Error, StringComparison.Ordinal);
        Assert.Contains("from Friday 15 January 2027, 16:15", log.Out, StringComparison.Ordinal);
        Assert.Contains("with 15.6 lb", log.Out, StringComparison.Ordinal);
        Assert.Contains("four times in five", log.Out, StringComparison.Ordinal);
        Assert.All(log.Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.Equal(log.Out, Run(0, "run", Scenario, "--full").Out);
        Assert.Contains("from Tuesday 12 January 2027, 16:00", Run(0, "run", Scenario, "--no-log", "--full").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Daily_use_is_shown_in_gas_and_money_beside_what_the_weather_says()
    {
        Assert.Contains("no [gas] price, so no money", Run(0, "log", "show", Scenario, "--full").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        File.AppendAllText(Scenario, "\n[gas]\nprice = \"4 per lb\"\n");
        Shell show = Run(0, "log", "show", Scenario, "--full");
        Assert.Contains("Day by day so far", show.Out, StringComparison.Ordinal);
        Assert.Contains("97.60", show.Out, StringComparison.Ordinal);
        Assert.All(show.Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.Contains("Day by day so far", Run(0, "run", Scenario, "--full").Out, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run(0, "run", Scenario, "--json").Out);
        Assert.Equal(8, json.RootElement.GetProperty("forecast").GetProperty("from_line").GetInt32());
        Assert.Equal(4, json.RootElement.GetProperty("forecast").GetProperty("days").GetArrayLength());
        Assert.Contains("\"forecast\": null", Run(0, "run", Scenario, "--json", "--no-log").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trip_starts_from_the_latest_reading_and_says_so()
    {
        Shell trip = Run(0, "trip", Scenario, "--full");
        Assert.Contains("Without it: --no-log", trip.Error, StringComparison.Ordinal);
        Assert.Contains("15.6 lb at the start", trip.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("40.0 lb at the start", Run(0, "trip", Scenario, "--no-log", "--full").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_of_several_cylinders_names_its_cylinder()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)), overwrite: true);
        string two = Path.Combine(_folder, "changeover.toml");
        Assert.Contains("--cylinder is missing", Run(2, "log", "add", two, "--weight", "45 lb").Error, StringComparison.Ordinal);
        Assert.Contains("--cylinder: 'third'; accepted", Run(2, "log", "add", two, "--cylinder", "third", "--weight", "45 lb").Error, StringComparison.Ordinal);
        ColdSim.Planning.Scenario scenario = ScenarioReader.Read(two).Scenario!;
        string at = scenario.Start.AddHours(20).ToString("yyyy-MM-dd'T'HH:mmzzz", System.Globalization.CultureInfo.InvariantCulture);
        foreach (string name in LogCylinders.NamesOf(scenario.Rig))
            Assert.Contains(name, Run(0, "log", "add", two, "--cylinder", name, "--weight", "38 lb", "--tare", "25 lb", "--at", at).Out, StringComparison.Ordinal);
        Assert.Contains(LogCylinders.NameOf(scenario.Rig, 1), Run(0, "log", "show", two).Out, StringComparison.Ordinal);
        Assert.Contains("the log has 2 readings; at least 5 are needed", Run(2, "fit", two).Error, StringComparison.Ordinal);
        Assert.Contains("with 26.0 lb", Run(0, "run", two, "--full").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_cylinders_are_fitted_and_a_filling_that_nobody_marked_is_said()
    {
        string two = Path.Combine(DocPage.Scenarios, "two-cylinders.toml");
        string filled = "'left' was filled or changed between Fri 15 Jan 16:15 and Sat 16 Jan 07:30; the log does not say so (line 12)";
        string fit = Run(0, "fit", two, "--full").Out.ReplaceLineEndings(" ");
        Assert.Contains(filled, fit, StringComparison.Ordinal);
        Assert.Contains("LEARNED: the coach loses", fit, StringComparison.Ordinal);
        Assert.Contains("Fri 15 Jan 07:20 to Sat 16 Jan 16:40: right", fit, StringComparison.Ordinal);
        Shell run = Run(0, "run", two);
        Assert.Contains(filled, run.Error, StringComparison.Ordinal);
        Assert.Contains("'right' feeds, by the readings.", run.Error, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run(0, "run", two, "--json").Out);
        JsonElement from = json.RootElement.GetProperty("started_from");
        Assert.Equal("right", from.GetProperty("in_use").GetString());
        Assert.Equal(["right", "left"], from.GetProperty("cylinders").EnumerateArray().Select(c => c.GetProperty("name").GetString()));
    }

    [Fact]
    public void A_log_that_is_too_short_is_refused()
    {
        string log = LogFile.PathOf(Scenario);
        File.WriteAllLines(log, File.ReadAllLines(log).Take(4));
        string fault = Run(2, "fit", Scenario).Error;
        Assert.Contains("the log has 3 readings; at least 5 are needed", fault, StringComparison.Ordinal);
        Assert.Contains("nothing was fitted", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("log", "three-days.toml", "log", "show")]
    [InlineData("fit", "two-cylinders.toml", "fit")]
    public void The_documents_have_the_keys_of_their_figures(string document, string scenario, params string[] words)
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "two-cylinders*"))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
        string path = Path.Combine(_folder, scenario);
        Run(0, "log", "add", path, "--inside", "57 °F", "--at", "2027-01-13T03:00-07:00");
        using JsonDocument json = JsonDocument.Parse(Run(0, [.. words, path, "--json"]).Out);
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(json.RootElement, "", written);
        ResultsTests.AssertKeys(document, written);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
