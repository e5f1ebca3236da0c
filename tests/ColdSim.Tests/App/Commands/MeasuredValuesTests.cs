using System.Text.Json;
using System.Xml.Linq;
using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Reports;
using ColdSim.Tests.Files;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>Values measured beside contents, from the command line to every place that shows them. The values are invented.</summary>
public sealed class MeasuredValuesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public MeasuredValuesTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "three-days*").Concat(Directory.GetFiles(DocPage.Scenarios, "two-cylinders*")))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Scenario => Path.Combine(_folder, "three-days.toml");

    private string Log => LogFile.PathOf(Scenario);

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error + shell.Out);
        return shell;
    }

    private void AddAll()
    {
        Run(0, "log", "add", Scenario, "--at", "2027-01-13T03:00-07:00", "--inside", "54 °F", "--liquid", "-2 °F", "--pressure", "28 psi");
        Run(0, "log", "add", Scenario, "--at", "2027-01-15T22:00-07:00", "--inside", "58 °F", "--wall", "3 °F", "--note", "held against it");
        Run(0, "log", "add", Scenario, "--at", "2027-01-16T02:00-07:00", "--inside", "52 °F", "--error", "1 °F");
        Run(0, "log", "add", Scenario, "--at", "2027-01-16T02:00-07:00", "--pressure", "24 psi");
        Run(0, "log", "add", Scenario, "--at", "2027-01-16T02:00-07:00", "--voltage", "12.4 V", "--rested");
    }

    // The log says that the right cylinder feeds, so the run has it first: the file and the log have the left one first.
    [Fact]
    public void A_value_is_compared_with_its_own_cylinder_when_the_run_has_the_one_in_use_first()
    {
        string scenario = Path.Combine(_folder, "two-cylinders.toml");
        foreach ((string cylinder, string at) in new[] { ("left", "2027-01-15T07:30-07:00"), ("left", "2027-01-17T04:00-07:00"), ("right", "2027-01-17T04:00-07:00") })
            Run(0, "log", "add", scenario, "--at", at, "--cylinder", cylinder, "--liquid", "5 °F");
        JsonElement[] run = Measured(Run(0, "run", scenario, "--json").Out), log = Measured(Run(0, "log", "show", scenario, "--json").Out);
        Assert.Equal("right", JsonDocument.Parse(Run(0, "run", scenario, "--json").Out).RootElement.GetProperty("started_from").GetProperty("in_use").GetString());
        Assert.Equal(["left", "left", "right"], run.Select(m => m.GetProperty("cylinder").GetString()));
        Assert.Equal(["left", "left", "right"], log.Select(m => m.GetProperty("cylinder").GetString()));
        Assert.Equal(log[0].GetProperty("computed").GetDouble(), run[0].GetProperty("computed").GetDouble());
        Assert.True(run[2].GetProperty("computed").GetDouble() < run[1].GetProperty("computed").GetDouble(), "the cylinder that gives gas is the colder one");

        static JsonElement[] Measured(string json) => [.. JsonDocument.Parse(json).RootElement.GetProperty("measured").EnumerateArray()];
    }

    [Fact]
    public void Values_are_appended_as_lines_of_the_same_seven_columns()
    {
        string before = File.ReadAllText(Log);
        AddAll();
        Assert.Equal(
            before + """
                2027-01-13T03:00-07:00,40 lb,pressure,28 psi,,,
                2027-01-13T03:00-07:00,40 lb,liquid,-2 °F,,,
                2027-01-13T03:00-07:00,,inside,54 °F,,,
                2027-01-15T22:00-07:00,40 lb,wall,3 °F,,,held against it
                2027-01-15T22:00-07:00,,inside,58 °F,,,held against it
                2027-01-16T02:00-07:00,,inside,52 °F,,error=1 °F,
                2027-01-16T02:00-07:00,40 lb,pressure,24 psi,,,
                2027-01-16T02:00-07:00,,voltage,12.4 V,,rested,

                """.ReplaceLineEndings("\n"),
            File.ReadAllText(Log));
    }

    [Theory]
    [InlineData("--inside: '54' has no unit", "--inside", "54")]
    [InlineData("--error: '9 V'", "--voltage", "12.4 V", "--error", "9 V")]
    [InlineData("--filled does not go with --inside", "--inside", "54 °F", "--filled")]
    [InlineData("--rested does not go with --inside", "--inside", "54 °F", "--rested")]
    [InlineData("did you mean '--inside'?", "--insid", "54 °F")]
    [InlineData("--cylinder: 'left'", "--pressure", "28 psi", "--cylinder", "left")]
    public void A_faulty_value_is_refused_and_nothing_is_written(string message, params string[] words)
    {
        string before = File.ReadAllText(Log);
        Assert.Contains(message, Run(2, ["log", "add", Scenario, .. words]).Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Log));
    }

    [Fact]
    public void Of_several_cylinders_a_pressure_needs_one_and_inside_does_not()
    {
        string two = Path.Combine(_folder, "two.toml");
        File.WriteAllText(two, File.ReadAllText(Path.Combine(DocPage.Scenarios, "changeover.toml")));
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "*.csv").Where(f => !File.Exists(Path.Combine(_folder, Path.GetFileName(f)))))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
        Assert.Contains("--cylinder is missing", Run(2, "log", "add", two, "--pressure", "40 psi").Error, StringComparison.Ordinal);
        Run(0, "log", "add", two, "--inside", "60 °F");
    }

    [Fact]
    public void Values_move_nothing_of_a_run_its_start_or_its_forecast()
    {
        string[] kept = ["measured", "measured_by_cause"];
        string Without(string json)
        {
            using JsonDocument document = JsonDocument.Parse(json);
            return string.Join('\n', document.RootElement.EnumerateObject().Where(p => !kept.Contains(p.Name)).Select(p => $"{p.Name} {p.Value.GetRawText()}"));
        }

        string before = Run(0, "run", Scenario, "--json").Out, log = Run(0, "log", "show", Scenario, "--json").Out;
        AddAll();
        Assert.Equal(Without(before), Without(Run(0, "run", Scenario, "--json").Out));
        Assert.Equal(Without(log), Without(Run(0, "log", "show", Scenario, "--json").Out));
    }

    [Fact]
    public void The_log_shows_each_value_beside_the_run_and_what_they_come_to()
    {
        AddAll();
        string show = Run(0, "log", "show", Scenario, "--full").Out;
        Assert.All(show.Split('\n'), l => Assert.True(l.Length <= 80, l));
        string section = show[show.IndexOf("Measured beside computed", StringComparison.Ordinal)..show.IndexOf("How to read it", StringComparison.Ordinal)];
        section.MatchSnapshot();
        string answer = Run(0, "log", "show", Scenario).Out;
        Assert.True(answer.TrimEnd().Split('\n').Length <= 24, answer);
        Assert.Contains("8 other values", answer.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_has_the_same_values_in_text_and_document()
    {
        AddAll();
        string full = Run(0, "run", Scenario, "--full").Out;
        Assert.All(full.Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.Contains("Measured beside computed", full, StringComparison.Ordinal);
        Assert.DoesNotContain("Measured beside computed", Run(0, "run", Scenario, "--full", "--no-log").Out, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run(0, "run", Scenario, "--json").Out);
        JsonElement[] measured = [.. json.RootElement.GetProperty("measured").EnumerateArray()];
        Assert.Equal(8, measured.Length);
        foreach (JsonElement row in measured.Where(m => m.GetProperty("not_compared").GetString() == "no"))
        {
            double difference = row.GetProperty("measured").GetDouble() - row.GetProperty("computed").GetDouble();
            Assert.Equal(difference, row.GetProperty("difference").GetDouble(), 1e-5);
            Assert.Equal(difference / row.GetProperty("standard_error").GetDouble(), row.GetProperty("off_standard_errors").GetDouble(), 1e-3);
        }

        Assert.Equal("without_battery", measured.Single(m => m.GetProperty("quantity").GetString() == "voltage").GetProperty("not_compared").GetString());
        Assert.Contains(json.RootElement.GetProperty("measured_by_cause").EnumerateArray(), g => g.GetProperty("cause").GetString() == "coach");
    }

    [Fact]
    public void A_log_of_values_alone_starts_no_run_and_is_still_compared()
    {
        File.Delete(Log);
        AddAll();
        Shell run = Run(0, "run", Scenario, "--full");
        Assert.Contains("has no reading of contents to start from", run.Error, StringComparison.Ordinal);
        Assert.Contains("Measured beside computed", run.Out, StringComparison.Ordinal);
        Assert.StartsWith("The log has no reading of what is left.", Run(0, "log", "show", Scenario).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_screen_marks_values_on_the_strips_and_names_the_mark()
    {
        Sheet sheet = new(80, 20);
        NightView.Open(Measured(), UnitStyle.Us).Picture.Draw(sheet, PlotArea.Across(80), 0, PictureLayout.For(20));
        string text = sheet.ToString();
        Assert.Equal(2, text.Split("× measured").Length - 1);
        Assert.Equal(3 + 2, text.Count(c => c == MeasuredMark.Glyph));
        Assert.All(PlainSheet.Of(sheet).ToString(), c => Assert.InRange(c, '\0', '\x7f'));
        text.MatchSnapshot();
    }

    [Fact]
    public void The_report_marks_values_on_the_strips_names_the_marks_and_lists_them()
    {
        AddAll();
        string path = Path.Combine(_folder, "report.html");
        Run(0, "report", Scenario, "--out", path);
        ReportPage page = new(File.ReadAllText(path));
        XElement first = page.Pictures.First();
        Assert.Equal(3, first.Descendants("circle").Count(c => (string?)c.Attribute("class") == "read"));
        Assert.Single(first.Descendants("rect"), r => (string?)r.Attribute("class") == "read");
        Assert.Contains(first.Descendants("text"), t => t.Value.Contains("○ measured inside", StringComparison.Ordinal));
        Assert.Contains(first.Descendants("text"), t => t.Value.Contains("□ measured pressure", StringComparison.Ordinal));
        Assert.Empty(page.Pictures.ElementAt(1).Descendants("circle"));
        Assert.Equal(8, page.Table("Values from the log beside the run").Count());
    }

    private static RunReport Measured()
    {
        Scenario scenario = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "three-days.toml")).Scenario!;
        Measurement Value(MeasuredQuantity quantity, double hours, double value_K) => new()
        {
            Line = 2,
            Time = scenario.Start.AddHours(hours),
            Quantity = quantity,
            Value = value_K,
            StandardError = 1,
            Cylinder = Measurement.IsOfCylinder(quantity) ? 0 : null,
        };
        return NightRun.Of(scenario with
        {
            Nights = 1,
            Measurements = [Value(MeasuredQuantity.Inside, 4, 285), Value(MeasuredQuantity.Inside, 10, 283), Value(MeasuredQuantity.Liquid, 10, 255)],
        });
    }
}
