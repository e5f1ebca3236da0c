using System.Text.RegularExpressions;
using ColdSim.App;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Schemas;
using ColdSim.Files.Scenarios.Starters;
using ColdSim.Model.Arrangement;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>What <c>coldsim new</c> asks, and that whatever it writes passes <c>coldsim check</c>.</summary>
public sealed partial class NewCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("two-cylinders")]
    [InlineData("changeover")]
    [InlineData("battery")]
    [InlineData("pipes")]
    public void A_starter_of_each_kind_passes_check_and_names_no_date(string kind)
    {
        Shell shell = new();
        Assert.True(shell.Run("new", Path.Combine(_folder, "trip.toml"), "--kind", kind) == ExitCode.Done, shell.Error);
        Scenario scenario = Checked();
        Assert.Equal(kind is "two-cylinders" or "changeover" ? 2 : 1, scenario.Rig.Cylinders.Count);
        Assert.Equal(kind == "changeover", scenario.Rig.Arrangement is AutomaticChangeover);
        Assert.Equal(kind == "battery", scenario.Rig.Power is not null);
        Assert.Equal(kind == "pipes", scenario.Rig.Water.Count > 0);
        Assert.DoesNotMatch(Date(), File.ReadAllText(Path.Combine(_folder, "trip.toml")));
    }

    [Theory]
    [InlineData("two-cylinders")]
    [InlineData("changeover")]
    [InlineData("battery")]
    [InlineData("pipes")]
    public void A_metric_starter_passes_check_and_has_no_other_unit(string kind)
    {
        Shell shell = new();
        Assert.True(shell.Run("new", Path.Combine(_folder, "trip.toml"), "--kind", kind, "--units", "si") == ExitCode.Done, shell.Error);
        Assert.All(Checked().Rig.Cylinders, c => Assert.Equal("11 kg", c.Name));
        string[] own = [.. File.ReadLines(Path.Combine(_folder, "trip.toml")).Skip(3)];
        Assert.DoesNotContain(own, l => UsUnit().IsMatch(l));
    }

    [Fact]
    public void The_questions_may_be_metric()
    {
        (Shell shell, _) = Asked(Enumerable.Repeat("", 9), "--units", "si");
        Assert.Contains("[11 kg 80 %]", shell.Error, StringComparison.Ordinal);
        Assert.Equal(6000, Checked().Rig.Furnace!.Input_W, 1e-9);
    }

    [Fact]
    public void Another_kind_is_answered_with_the_four()
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run("new", Path.Combine(_folder, "trip.toml"), "--kind", "boat"));
        Assert.Contains("--kind takes two-cylinders, changeover, battery, pipes, not 'boat'", shell.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void The_plain_starter_names_no_date_and_runs_from_the_first_afternoon_of_its_weather()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("new", Path.Combine(_folder, "trip.toml")));
        Assert.DoesNotMatch(Date(), File.ReadAllText(Path.Combine(_folder, "trip.toml")));
        Assert.Equal((16, 0), (Checked().Start.Hour, Checked().Start.Minute));
    }

    public static TheoryData<string[]> Answers() =>
    [
        ["", "", "", "", "", "", "", "", ""],
        ["?", "don't know", "?", "?", "I don't know", "?", "?", "?", "?"],
        ["Trailhead, 5,300 ft", "26 ft, leaky", "20 lb 1/3 + 30 lb full, changeover", "tongue cover", "30,000 BTU/h", "68 °F, 60 °F", "lithium 200 Ah", "2, 06:30-22:30", "5 °F"],
        ["Pass, 1,900 m", "6 m good", "11 kg half", "in a locker", "4 kW", "20 °C, 15 °C", "AGM 100 Ah", "1, 07:00-23:00", "-12 °C, -9 °C, -4 °C"],
        ["4,900 ft", "24 ft", "2x20 lb, together", "?", "30 kBTU/h", "66 °F", "none", "3", "invented"],
        ["sea level", "ordinary", "2x20 lb half, together", "on the ground by the wall", "25000 BTU/h", "20 °C / 16 °C", "flooded, 225 Ah", "06:00-22:00", "-8 °F; 2 °F"],
        ["A flat, by the river", "7.5 m, Ordinary", "30lb; 30lb 12 lb; by hand", "open", "5.5 kW", "20 °C and 16 °C", "gel 90 Ah", "2 06:30-22:30", "?"],
    ];

    [Theory]
    [MemberData(nameof(Answers))]
    public void What_is_written_of_the_answers_passes_check(string[] answers)
    {
        (Shell shell, int asked) = Asked(answers);
        Assert.Equal(9, asked);
        Assert.Contains("1. Place, and height above the sea", shell.Error, StringComparison.Ordinal);
        Checked();
        Assert.DoesNotMatch(Date(), File.ReadAllText(Path.Combine(_folder, "trip.toml")));
    }

    [Fact]
    public void The_answers_are_in_the_file()
    {
        Asked(["Pass, 1,900 m", "6 m good", "11 kg half + 11 kg full, changeover", "under a cover", "4 kW", "20 °C, 15 °C", "lithium 100 Ah", "1, 07:00-23:00", "-12 °C, -9 °C"]);
        Scenario scenario = Checked();
        Assert.Equal(1900, scenario.Rig.Site.Elevation_m, 1e-9);
        Assert.Equal(["11 kg", "11 kg"], scenario.Rig.Cylinders.Select(c => c.Name));
        Assert.Equal(0.5, scenario.Rig.Cylinders[0].Contents_kg / scenario.Rig.Cylinders[0].LegalFill_kg, 9);
        Assert.Equal(4000, scenario.Rig.Furnace!.Input_W, 1e-9);
        Assert.Equal((293.15, 288.15), (scenario.Rig.Thermostat!.DaySetPoint_K, scenario.Rig.Thermostat.NightSetPoint_K));
        Assert.Equal("tongue cover", scenario.Rig.Enclosure!.Name);
        int row = 0;
        Assert.Equal(261.15, Enumerable.Range(0, 48).Min(h => scenario.Weather.At(3600 * h, ref row).Air_K), 0.01);
    }

    [Fact]
    public void A_weather_file_that_is_there_is_named_and_none_is_written()
    {
        File.WriteAllText(Path.Combine(_folder, "forecast.csv"), StarterScenario.WeatherText());
        Asked(["", "", "", "", "", "", "", "", "forecast.csv"]);
        Checked();
        Assert.Equal(["coldsim.schema.json", "forecast.csv", "trip.toml"], Directory.GetFiles(_folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void An_answer_that_cannot_be_read_is_asked_again_with_what_is_accepted()
    {
        (Shell shell, int asked) = Asked(["", "", "", "on the roof", "", "30k", "30 kBTU/h", "", "", "", "nowhere.csv", ""]);
        Assert.Equal(12, asked);
        Assert.Contains("'kind' is \"on the roof\"", shell.Error, StringComparison.Ordinal);
        Assert.Contains("'30k' has no unit; write \"30 kBTU/h\"", shell.Error, StringComparison.Ordinal);
        Assert.Contains("'nowhere.csv' cannot be opened", shell.Error, StringComparison.Ordinal);
        Assert.Equal(8792, Checked().Rig.Furnace!.Input_W, 1.0);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(7)]
    public async Task An_interrupt_at_any_question_leaves_nothing_behind(int after)
    {
        using CancellationTokenSource source = new();
        int asked = 0;
        Shell shell = new() { Terminal = true };
        shell.Answer = () =>
        {
            if (asked++ < after)
                return "";
            source.Cancel();
            return null;
        };
        Assert.NotEqual(ExitCode.Done, await shell.RunAsync(["new", Path.Combine(_folder, "trip.toml")], source.Token));
        Assert.Empty(Directory.GetFiles(_folder));
    }

    // The person may never answer: what waits for an answer does not hold the program up.
    [Fact]
    public async Task An_interrupt_does_not_wait_for_an_answer()
    {
        using CancellationTokenSource source = new();
        using ManualResetEventSlim never = new();
        Shell shell = new() { Terminal = true };
        shell.Answer = () =>
        {
            source.Cancel();
            never.Wait();
            return "";
        };
        try
        {
            Assert.Equal(ExitCode.Interrupted, await shell.RunAsync(["new", Path.Combine(_folder, "trip.toml")], source.Token).WaitAsync(TimeSpan.FromSeconds(20)));
            Assert.Empty(Directory.GetFiles(_folder));
        }
        finally
        {
            never.Set();
        }
    }

    [Fact]
    public void A_file_that_somebody_else_wrote_is_refused_before_anything_is_asked()
    {
        File.WriteAllText(Path.Combine(_folder, "trip.toml"), "mine");
        Shell shell = new() { Terminal = true, Answer = () => throw new InvalidOperationException("nothing is asked") };
        Assert.Equal(ExitCode.BadInput, shell.Run("new", Path.Combine(_folder, "trip.toml")));
        Assert.Contains("exists already", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Options_answer_without_questions()
    {
        Shell shell = new() { Terminal = true, Answer = () => throw new InvalidOperationException("nothing is asked") };
        Assert.Equal(ExitCode.Done, shell.Run(
            "new", Path.Combine(_folder, "trip.toml"), "--place", "Pass, 1,900 m", "--coach", "6 m, good", "--cylinders", "11 kg half", "--furnace", "4 kW",
            "--thermostat", "20 °C, 15 °C", "--battery", "none", "--people", "1, 07:00-23:00", "--weather", "-12 °C, -9 °C"));
        Assert.Equal("11 kg", Checked().Rig.Cylinders[0].Name);
    }

    [Fact]
    public void Every_faulty_option_is_named_and_nothing_is_written()
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run("new", Path.Combine(_folder, "trip.toml"), "--furnace", "30k", "--battery", "nickel 100 Ah"));
        Assert.Contains("coldsim: --furnace: ", shell.Error, StringComparison.Ordinal);
        Assert.Contains("coldsim: --battery: ", shell.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Nothing_is_asked_where_nobody_looks_at_the_answer()
    {
        Shell shell = new() { Answer = () => throw new InvalidOperationException("nothing is asked") };
        Assert.Equal(ExitCode.Done, shell.Run("new", Path.Combine(_folder, "trip.toml")));
        string written = File.ReadAllText(Path.Combine(_folder, "trip.toml"));
        Assert.Equal($"{ScenarioSchema.Line}\n{StarterScenario.Text("trip.weather.csv")}", written);
    }

    [Fact]
    public void The_schema_is_written_beside_and_a_changed_one_is_left_alone()
    {
        string schema = Path.Combine(_folder, ScenarioSchema.FileName);
        Shell shell = new();
        Assert.Equal(ExitCode.Done, shell.Run("new", Path.Combine(_folder, "one.toml")));
        shell.Run("schema");
        Assert.Equal(shell.Out, File.ReadAllText(schema));
        File.WriteAllText(schema, shell.Out.Replace("what the report is called", "an older version", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Done, shell.Run("new", Path.Combine(_folder, "two.toml"), "--kind", "pipes"));
        Assert.Equal(ScenarioSchema.Text(), File.ReadAllText(schema));
        File.WriteAllText(schema, "{}");
        Assert.Equal(ExitCode.BadInput, shell.Run("new", Path.Combine(_folder, "three.toml")));
        Assert.Contains("does not look like a schema that coldsim wrote", shell.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "three.toml")));
    }

    [Fact]
    public void Lows_become_the_lowest_of_their_nights()
    {
        string csv = StarterWeather.Of(["-10 °C", "-20 °C", "-5 °C"], new DateTimeOffset(2027, 1, 12, 12, 0, 0, TimeSpan.Zero));
        string[] sevens = [.. csv.Split('\n').Where(l => l.Contains("T07:00", StringComparison.Ordinal)).Select(l => l.Split(',')[1])];
        Assert.Equal([-10.0, -20.0, -5.0], sevens.Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture)));
        double[] all = [.. csv.Split('\n').Where(l => l.StartsWith("2027", StringComparison.Ordinal)).Select(l => double.Parse(l.Split(',')[1], System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(73, all.Length);
        Assert.All(all.Zip(all.Skip(1)), p => Assert.InRange(Math.Abs(p.First - p.Second), 0, 5));
    }

    private (Shell Shell, int Asked) Asked(IEnumerable<string> answers, params string[] more)
    {
        Queue<string> left = new(answers);
        int asked = 0;
        Shell shell = new()
        {
            Terminal = true,
            Answer = () =>
            {
                asked++;
                return left.Dequeue();
            },
        };
        Assert.True(shell.Run(["new", Path.Combine(_folder, "trip.toml"), .. more]) == ExitCode.Done, shell.Error);
        return (shell, asked);
    }

    private Scenario Checked()
    {
        string path = Path.Combine(_folder, "trip.toml");
        Shell shell = new();
        Assert.True(shell.Run("check", path) == ExitCode.Done, shell.Error);
        Assert.Equal("", shell.Error);
        return ScenarioReader.Read(path).Scenario!;
    }

    [GeneratedRegex(@"°F|\blb\b|\bft\b|\bgal\b|BTU")]
    private static partial Regex UsUnit();

    [GeneratedRegex(@"\d{4}-\d\d-\d\d")]
    private static partial Regex Date();
}
