using System.Text.Json;
using System.Text.RegularExpressions;
using ColdSim.Files.Logs;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>No reading of a log is ignored without a word.</summary>
public sealed partial class LogStartTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public LogStartTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    private string Scenario => Path.Combine(_folder, "three-days.toml");

    private string Log => LogFile.PathOf(Scenario);

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error + shell.Out);
        return shell;
    }

    private void Append(string time, string weight) => File.AppendAllText(Log, $"{time},40 lb,weight,{weight},,tare=29.0 lb,\n");

    [Theory]
    [InlineData("run")]
    [InlineData("trip")]
    [InlineData("compare", "--sizes", "30 lb")]
    [InlineData("explain")]
    [InlineData("limits", "--fills", "50")]
    [InlineData("freeze")]
    public void A_latest_reading_after_the_weather_is_refused_by_every_command_that_starts_somewhere(string command, params string[] more)
    {
        Append("2027-01-18T16:15-07:00", "40.0 lb");
        string fault = Run(2, [command, Scenario, .. more]).Error;
        Assert.Contains("three-days.log.csv:9:1: the log's latest reading, Mon 18 Jan 2027 16:15 with 11.0 lb left, is later than the weather, which ends Mon 18 Jan 2027 12:00", fault, StringComparison.Ordinal);
        Assert.Contains("[weather]", fault, StringComparison.Ordinal);
        Assert.Contains("--no-log", fault, StringComparison.Ordinal);
        Assert.Contains("coldsim tonight", fault, StringComparison.Ordinal);
        Assert.DoesNotContain("year", fault, StringComparison.Ordinal);
        Run(0, [command, Scenario, .. more, "--no-log"]);
    }

    [Theory]
    [InlineData("us")]
    [InlineData("si")]
    public void The_command_for_tonight_that_is_printed_runs_from_what_was_left(string units)
    {
        Append("2027-01-18T16:15-07:00", "40.0 lb");
        string line = Run(2, "run", Scenario, "--units", units).Error.TrimEnd().Split('\n')[^1].Trim();
        string[] words = [.. Words().Matches(line).Select(m => m.Value.Trim('"'))];
        Assert.Equal("coldsim", words[0]);
        Assert.Contains(units == "us" ? "with\n11.0 lb of propane" : "with\n4.90 kg of propane", Run(0, [.. words[1..], "--full"]).Out.Replace(" with ", " with\n", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("--cylinder \"40 lb\"", line, StringComparison.Ordinal);
        Assert.Contains("--grade good", line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("20 m", "60 kW", "6,000 m", "35 °C", "us")]
    [InlineData("20 m", "60 kW", "6,000 m", "35 °C", "si")]
    [InlineData("1.5 m", "300 W", "-430 m", "0 °C", "us")]
    [InlineData("1.5 m", "300 W", "-430 m", "0 °C", "si")]
    public void The_command_for_tonight_is_one_that_is_accepted_at_the_ends_of_what_a_scenario_may_have(string length, string input, string elevation, string night, string units)
    {
        string path = Path.Combine(_folder, "ends.toml");
        File.WriteAllText(path, $"""
            [place]
            elevation = "{elevation}"
            [weather]
            file = "three-days.weather.csv"
            [cylinder]
            water_capacity = "150 L"
            diameter = "40 cm"
            [furnace]
            input = "{input}"
            [thermostat]
            day = "35 °C"
            night = "{night}"
            [coach]
            grade = "leaky"
            length = "{length}"
            """);
        File.WriteAllText(LogFile.PathOf(path), "time,cylinder,method,reading,liquid temperature,details,note\n2027-01-19T16:00-07:00,138.9 lb,weight,95 kg,,tare=50 kg,\n");
        string line = Run(2, "run", path, "--units", units).Error.TrimEnd().Split('\n')[^1].Trim();
        Assert.StartsWith("coldsim tonight", line, StringComparison.Ordinal);
        Run(0, [.. Words().Matches(line).Select(m => m.Value.Trim('"')).Skip(1)]);
    }

    [Fact]
    public void A_latest_reading_a_year_too_late_is_refused_and_its_year_named()
    {
        string[] lines = File.ReadAllLines(Log);
        lines[^1] = lines[^1].Replace("2027", "2028", StringComparison.Ordinal);
        File.WriteAllLines(Log, lines);
        string fault = Run(2, "run", Scenario).Error;
        Assert.Contains("three-days.log.csv:8:1: the log's latest reading, Sat 15 Jan 2028 16:15 with 15.6 lb left, is later than the weather", fault, StringComparison.Ordinal);
        Assert.Contains("if Fri 15 Jan 2027 16:15 is meant", fault, StringComparison.Ordinal);
        Assert.DoesNotContain("left out", fault, StringComparison.Ordinal);
        Shell show = Run(0, "log", "show", Scenario, "--json");
        Assert.Contains("left out: ", show.Error, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(show.Out);
        Assert.Equal(6, json.RootElement.GetProperty("readings").GetArrayLength());
        Assert.Contains(":8:1: the reading of Sat 15 Jan 2028 16:15", Assert.Single(json.RootElement.GetProperty("left_out").EnumerateArray()).GetString(), StringComparison.Ordinal);
        Assert.Contains("left out: ", Run(0, "fit", Scenario).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_latest_reading_before_the_weather_is_refused_and_an_earlier_one_among_later_ones_is_said()
    {
        string[] lines = File.ReadAllLines(Log);
        File.WriteAllLines(Log, [lines[0], lines[1].Replace("2027-01-12", "2027-01-10", StringComparison.Ordinal)]);
        Assert.Contains("is earlier than the weather, which begins Tue 12 Jan 2027 12:00", Run(2, "run", Scenario).Error, StringComparison.Ordinal);
        File.WriteAllLines(Log, [lines[0], lines[1].Replace("2027-01-12", "2027-01-10", StringComparison.Ordinal), .. lines[2..]]);
        Shell run = Run(0, "run", Scenario, "--full");
        Assert.Contains("1 reading of ", run.Error, StringComparison.Ordinal);
        Assert.Contains("from before the weather begins, Tue 12 Jan 2027 12:00, is not compared with it", run.Error, StringComparison.Ordinal);
        Assert.Contains("with 15.6 lb", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_latest_reading_between_the_weathers_begin_and_the_start_is_run_on_to_the_start()
    {
        string[] lines = File.ReadAllLines(Log);
        File.WriteAllLines(Log, [lines[0], lines[1].Replace("T16:05", "T13:05", StringComparison.Ordinal)]);
        Assert.StartsWith("From line 2 of the log, run on to the start: 39.", Run(0, "run", Scenario).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_made_when_the_run_starts_is_started_from()
    {
        string[] lines = File.ReadAllLines(Log);
        File.WriteAllLines(Log, [lines[0], lines[1].Replace("T16:05", "T16:00", StringComparison.Ordinal).Replace("69.0 lb", "49.0 lb", StringComparison.Ordinal)]);
        Assert.Contains("with 20.0 lb", Run(0, "run", Scenario, "--full").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_screen_shows_the_reading_that_it_starts_from()
    {
        IReadOnlyList<string> assumed = [];
        Shell shell = new() { Terminal = true, Screen = (opening, _, _) => { assumed = opening.Report.Scenario.Assumptions; return 0; } };
        Assert.Equal(0, shell.Run("view", Scenario));
        Assert.Contains("15.6 lb left Fri 15 Jan 16:15 (line 8)", assumed[0], StringComparison.Ordinal);
        Append("2027-01-18T16:15-07:00", "40.0 lb");
        Assert.Equal(2, shell.Run("view", Scenario));
        Assert.Equal(0, shell.Run("view", Scenario, "--no-log"));
    }

    [Fact]
    public void A_reading_that_cannot_be_right_is_left_out_with_its_line_and_why()
    {
        Append("2027-01-15T18:00-07:00", "60.0 lb");
        Shell run = Run(0, "run", Scenario, "--full");
        Assert.Contains("log.csv:9:1: 31.0 lb left is 15.4 lb more than at the reading before it, line 8, Fri 15 Jan 16:15, and no filling is noted between them", run.Error, StringComparison.Ordinal);
        Assert.Contains("with 15.6 lb", run.Out, StringComparison.Ordinal);
        Assert.Contains("left out: ", Run(0, "fit", Scenario).Error, StringComparison.Ordinal);
        Assert.Contains("used, but it looks wrong: ", Run(0, "fit", Scenario, "--keep-outliers").Error, StringComparison.Ordinal);
        File.WriteAllText(Log, File.ReadAllText(Log).TrimEnd('\n').TrimEnd(',') + "; checked,\n");
        Assert.Contains("with 31.0 lb", Run(0, "run", Scenario, "--full").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the year looks wrong", "--at", "2026-01-16T07:00-07:00", "--weight", "44.0 lb")]
    [InlineData("and no filling is noted", "--at", "2027-01-16T07:00-07:00", "--weight", "60 lb")]
    [InlineData("all burners together take at most", "--at", "2027-01-15T18:00-07:00", "--weight", "36 lb")]
    public void A_reading_that_looks_wrong_is_asked_about_or_refused(string why, params string[] words)
    {
        string before = File.ReadAllText(Log);
        string[] add = ["log", "add", Scenario, .. words, "--tare", "29.0 lb"];
        string fault = Run(2, add).Error;
        Assert.Contains(why, fault, StringComparison.Ordinal);
        Assert.Contains("--checked", fault, StringComparison.Ordinal);
        Shell asked = new() { Answer = () => "n" };
        Assert.Equal(2, asked.Run(add));
        Assert.Contains("[y/N]", asked.Error, StringComparison.Ordinal);
        asked.Answer = () => null;
        Assert.Equal(2, asked.Run(add));
        Assert.Equal(before, File.ReadAllText(Log));
        asked.Answer = () => "y";
        Assert.Equal(0, asked.Run(add));
        string byAnswer = File.ReadAllText(Log);
        Assert.Contains("checked", byAnswer, StringComparison.Ordinal);
        File.WriteAllText(Log, before);
        Run(0, [.. add, "--checked"]);
        Assert.Equal(Sorted(byAnswer), Sorted(File.ReadAllText(Log)));
        Assert.DoesNotContain("left out", Run(0, "log", "show", Scenario).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_year_that_the_clock_does_not_have_is_asked_about()
    {
        File.Delete(Log);
        Shell shell = new() { Clock = new StoppedClock(new(2031, 2, 3, 8, 0, 0, TimeSpan.Zero)) };
        Assert.Equal(2, shell.Run("log", "add", Scenario, "--at", "2030-02-03T07:00-07:00", "--weight", "44.0 lb"));
        Assert.Contains("Mon 3 Feb 2031", shell.Error, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run("log", "add", Scenario, "--at", "2031-02-03T07:00-07:00", "--weight", "44.0 lb"));
    }

    // The order of details is not what is tested.
    private static string Sorted(string log) => string.Join('\n', log.Split('\n').Select(l => string.Concat(l.Order())));

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Words();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private sealed class StoppedClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
