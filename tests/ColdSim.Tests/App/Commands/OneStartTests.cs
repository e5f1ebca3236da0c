using System.Text.Json;
using ColdSim.App.Screens.Frame;
using ColdSim.Files.Logs;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>All commands start one file at one place: at the latest reading of its log.</summary>
public sealed class OneStartTests : IDisposable
{
    private const string Heading = "time,cylinder,method,reading,liquid temperature,details,note\n";
    private static readonly string[] AnswerKeys = ["verdict", "nights", "first_short", "dry_at", "flat_at", "inside_low_c", "left_at_start_kg"];
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public OneStartTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    /// <summary>The demos that have a log, and others with one that is made up: in place, two cylinders, a trip at a stop and on the road, and before the start.</summary>
    public static TheoryData<string, string> Logs()
    {
        TheoryData<string, string> logs = new()
        {
            { "cold-snap.toml", "2027-01-13T17:00-07:00,{only},weight,27 lb,,tare=17 lb,\n" },
            { "changeover.toml", "2027-01-13T17:00-07:00,left,weight,20 lb,,tare=17 lb,\n" },
            { "fortnight.toml", "2027-01-15T17:00-07:00,left,weight,36 lb,,tare=25 lb,\n" },
            { "fortnight.toml", "2027-01-13T12:00-07:00,left,weight,36 lb,,tare=25 lb,\n" },
            { "cold-snap.toml", "2027-01-12T12:30-07:00,{only},weight,30 lb,,tare=17 lb,\n" },
        };
        foreach (string log in Directory.GetFiles(DocPage.Scenarios, "*.log.csv"))
            logs.Add(Path.GetFileName(log).Replace(".log.csv", ".toml", StringComparison.Ordinal), "");
        return logs;
    }

    private static Shell Run(params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(ended == 0, shell.Error + shell.Out);
        return shell;
    }

    private static JsonElement Json(params string[] words)
    {
        using JsonDocument json = JsonDocument.Parse(Run([.. words, "--json"]).Out);
        return json.RootElement.Clone();
    }

    private string Write(string demo, string line)
    {
        string path = Path.Combine(_folder, demo);
        if (line.Length == 0)
            return path;
        string first = Assert.Single(Json("run", path).GetProperty("cylinders").EnumerateArray().Take(1)).GetString()!;
        File.WriteAllText(LogFile.PathOf(path), Heading + line.Replace("{only}", first, StringComparison.Ordinal));
        return path;
    }

    private static string Answer(JsonElement summary)
        => string.Join(' ', AnswerKeys.Select(k => summary.GetProperty(k).ToString()));

    [Theory]
    [MemberData(nameof(Logs))]
    public void Run_trip_compare_and_the_screen_start_at_the_same_reading_and_agree(string demo, string line)
    {
        string path = Write(demo, line);
        JsonElement run = Json("run", path), trip = Json("trip", path), compare = Json("compare", path, "--sizes", "100 lb,40 lb");
        JsonElement from = run.GetProperty("started_from");
        Assert.Equal(JsonValueKind.Object, from.ValueKind);
        Assert.Equal(from.ToString(), trip.GetProperty("started_from").ToString());
        Assert.Equal(from.ToString(), compare.GetProperty("started_from").ToString());
        string answer = Answer(run.GetProperty("summary"));
        Assert.Equal(answer, Answer(trip.GetProperty("totals")));
        Assert.Equal(answer, Answer(compare.GetProperty("options").EnumerateArray().Single(o => o.GetProperty("as_it_is").GetBoolean())));
        Assert.Equal(run.GetProperty("start").GetString(), compare.GetProperty("start").GetString());

        Opening? opened = null;
        Shell shell = new() { Terminal = true, Screen = (opening, _, _) => { opened = opening; return 0; } };
        Assert.Equal(0, shell.Run("view", path));
        Assert.Equal(run.GetProperty("summary").GetProperty("inside_low_c").GetDouble(), opened!.Report.Summary.InsideLow!.Value.DegreesCelsius, 6);
        Assert.Equal(run.GetProperty("summary").GetProperty("left_at_start_kg").GetDouble(), opened.Report.Summary.LeftAtStart.Kilograms, 6);
        Assert.Equal(run.GetProperty("nights").GetArrayLength(), opened.Report.Nights.Count);
        Assert.Equal(run.GetProperty("start").GetDateTimeOffset(), opened.Report.Scenario.Start);
        Assert.StartsWith("From ", opened.Report.Scenario.Assumptions[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("explain")]
    [InlineData("limits", "--fills", "50")]
    [InlineData("freeze")]
    [InlineData("run", "--members", "2")]
    [InlineData("compare", "--sizes", "30 lb")]
    [InlineData("trip")]
    [InlineData("run")]
    public void The_reading_is_said_first_in_one_line_and_no_log_starts_as_the_scenario_says(string command, params string[] more)
    {
        string path = Path.Combine(_folder, "three-days.toml");
        string first = Run([command, path, .. more]).Error.Split('\n')[0];
        Assert.Equal("From the log: 15.6 lb left Fri 15 Jan 16:15 (line 8). Without it: --no-log", first);
        Assert.True(first.Length < 80, first);
        Assert.DoesNotContain("the log", Run([command, path, .. more, "--no-log"]).Error, StringComparison.Ordinal);
        Assert.Equal(8, Json([command, path, .. more]).GetProperty("started_from").GetProperty("line").GetInt32());
        Assert.Equal(JsonValueKind.Null, Json([command, path, .. more, "--no-log"]).GetProperty("started_from").ValueKind);
    }

    [Fact]
    public void An_option_that_sets_a_cylinders_size_or_contents_keeps_its_own_and_the_others_start_from_the_reading()
    {
        string path = Path.Combine(_folder, "three-days.toml");
        File.AppendAllText(path, """

            [[option]]
            name = "cooler"
            set = { "thermostat.night" = "50 °F" }
            [[option]]
            name = "full"
            set = { "cylinder.left" = "full" }
            [[option]]
            name = "smaller"
            set = { "cylinder.size" = "30 lb", "cylinder.left" = "10 lb" }
            [[option]]
            name = "second"
            set = { "cylinder.2.size" = "20 lb", "cylinder.2.left" = "12 lb", "arrangement.order" = [2, 1] }
            """);
        JsonElement compare = Json("compare", path);
        double Start(string name) => compare.GetProperty("options").EnumerateArray().Single(o => o.GetProperty("name").GetString() == name).GetProperty("left_at_start_kg").GetDouble();
        const double Pound_kg = 0.45359237;
        Assert.Equal(15.6 * Pound_kg, Start("as it is"), 3);
        Assert.Equal(15.6 * Pound_kg, Start("cooler"), 3);
        Assert.Equal(40 * Pound_kg, Start("full"), 1);
        Assert.Equal(10 * Pound_kg, Start("smaller"), 3);
        Assert.Equal((15.6 + 12) * Pound_kg, Start("second"), 3);
        Assert.Equal(4, Json("run", path, "--members", "2").GetProperty("options").GetArrayLength());
    }

    [Fact]
    public void A_start_later_than_the_reading_is_run_on_to_from_it()
    {
        string path = Write("cold-snap.toml", "2027-01-12T12:30-07:00,{only},weight,30 lb,,tare=17 lb,\n");
        Shell run = Run("run", path, "--full");
        Assert.Matches("^From line 2 of the log, run on to the start: 1[0-2]\\.[0-9] lb\\. Without it: --no-log\n", run.Error);
        Assert.Contains("Tue 12 Jan 12:30, and run on from it", run.Out.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        JsonElement from = Json("run", path).GetProperty("started_from");
        Assert.True(from.GetProperty("simulated").GetBoolean());
        Assert.InRange(from.GetProperty("left_kg").GetDouble(), 4.5, 13 * 0.4536 - 0.05);
        Assert.Equal(Json("run", path, "--no-log").GetProperty("start").GetString(), Json("run", path).GetProperty("start").GetString());
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
