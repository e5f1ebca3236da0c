using ColdSim.App.Commands;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Jobs;

/// <summary>
/// Eleven people with a question, each with a file or a line of their own: the verdict comes first, it names the cause, and the first thing to do is
/// one that helps. People, places, rigs and weather are invented.
/// </summary>
public class JobTests
{
    private static readonly DateTimeOffset Dusk = new(2027, 1, 13, 16, 0, 0, TimeSpan.FromHours(-7));

    [Fact]
    public void A_dusk_with_a_third_of_a_20_and_a_full_30_on_a_changeover()
    {
        string[] answer = Answer(
            "tonight", "--low", "-15 °F", "--cylinder", "20 lb,30 lb", "--left", "1/3,full", "--joined", "changeover", "--furnace", "30000 BTU/h", "--length",
            "26 ft", "--grade", "leaky");
        Assert.StartsWith("FAILS Wednesday night, 13 to 14 January: the furnace is too small from ", answer[0], StringComparison.Ordinal);
        Assert.Contains("Gas is short as well", string.Join(' ', answer), StringComparison.Ordinal);
        Assert.Contains(answer, l => l.StartsWith("Do: leave or plug in before Wed ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_furnace_that_went_out_before_dawn_with_half_a_cylinder()
    {
        string[] answer = Answer("explain", File("went-out-at-four.toml"));
        Assert.StartsWith("FAILS Wednesday night, 13 to 14 January: gas is short from 04:", answer[0], StringComparison.Ordinal);
        Assert.StartsWith("Why: the cylinder is too empty for this cold: only ", answer.First(l => l.StartsWith("Why:", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Matches("^- Top up by [0-9]+ lb, to [0-9]+ lb: holds, ", First(answer));
    }

    [Fact]
    public void Cylinders_for_a_northern_winter()
    {
        string[] answer = Answer("compare", File("one-cylinder.toml"), "--sizes", "30 lb,40 lb,100 lb");
        Assert.StartsWith("HOLDS with \"100 lb\": ", answer[0], StringComparison.Ordinal);
        Assert.Contains(answer, l => l.StartsWith("As it is: gas is short from Wed ", StringComparison.Ordinal));
        Assert.Contains("set on the ground", string.Join(' ', answer), StringComparison.Ordinal);
        Assert.StartsWith("FAILS with all 2. \"two 30s\" does the least harm: gas is short from ", Answer("compare", File("northern-winter.toml"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_blanket_on_a_battery_fails_by_the_battery_and_that_comes_first()
    {
        string[] answer = Answer("run", File("blanket-on-battery.toml"));
        Assert.StartsWith("FAILS Tuesday night, 12 to 13 January: the battery is flat from 06:", answer[0], StringComparison.Ordinal);
        Assert.Matches("Why: the furnace's fan and the other 12 V loads took [0-9]+ Wh", string.Join(' ', answer));
        Assert.StartsWith("FAILS with all 2. \"without the blanket\" does the least harm: ", Answer("compare", File("blanket-on-battery.toml"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Nine_days_three_stops_and_a_station_closed_on_Sunday()
    {
        string[] answer = Answer("trip", File("nine-days.toml"));
        Assert.StartsWith("FAILS Wednesday night, 13 to 14 January: the furnace is too small from ", answer[0], StringComparison.Ordinal);
        Assert.Contains(answer, l => l.StartsWith("- R1 Wed 13 Jan 09:00, left at Bench Fuel: ", StringComparison.Ordinal));
        Assert.Contains("Cannot wait", string.Join(' ', answer), StringComparison.Ordinal);
        Assert.Matches("It takes [0-9]+ lb of gas, \\$[0-9]+\\.[0-9]{2} in all", string.Join(' ', answer));
    }

    [Fact]
    public void A_scale_and_a_line_that_do_not_agree()
    {
        string[] answer = Answer("gauge", "combine", "--cylinder", "20 lb", "--tare", "17 lb", "--weight", "32.4 lb", "--line", "4.3 in", "--temperature", "25 °F");
        Assert.StartsWith("13.6 lb of propane left, by 2 readings together", answer[0], StringComparison.Ordinal);
        Assert.Contains("The readings disagree: weight means 8.0 lb more than line", string.Join(' ', answer), StringComparison.Ordinal);
        Assert.Contains(answer, l => l.StartsWith("Do: read line again before you trust the figure", StringComparison.Ordinal));
        Assert.StartsWith("EMPTY of liquid: 20.0 psi", Answer("gauge", "pressure", "--cylinder", "20 lb", "--pressure", "20 psi", "--temperature", "25 °F", "--rested")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Five_days_of_readings_give_the_use_of_a_day_and_the_day_to_refill()
    {
        string[] log = Answer("log", "show", File("five-days.toml"));
        Assert.StartsWith("LEFT: 10.4 lb in the 100 lb cylinder", log[0], StringComparison.Ordinal);
        Assert.Matches("You use 13\\.[0-9] lb a day", string.Join(' ', log));
        string[] run = Answer("run", File("five-days.toml"));
        Assert.StartsWith("From the log: 10.4 lb left Fri 15 Jan 08:00 (line 7).", run[0], StringComparison.Ordinal);
        Assert.StartsWith("FAILS Friday night, 15 to 16 January: the gas is out from 01:", run[1], StringComparison.Ordinal);
        Assert.Matches("^- Top up by [0-9]+ lb, to [0-9]+ lb: holds, ", First(run));
    }

    [Fact]
    public void A_page_for_the_door()
    {
        string[] page = Answer(["limits", File("one-cylinder.toml"), "--one-page"], rows: 60);
        Assert.StartsWith("WHICH SIZE FOR THE WINTER", page[0], StringComparison.Ordinal);
        Assert.Contains("WHEN SHORT", page);
        Assert.All(page, l => Assert.InRange(l.Length, 0, 78));
    }

    [Fact]
    public void A_metric_rig_hears_metric_units_only()
    {
        string[] answer = Answer("run", File("metric.toml"), "--units", "si");
        Assert.StartsWith("FAILS Saturday night, 16 to 17 January: the furnace is too small from ", answer[0], StringComparison.Ordinal);
        Assert.Contains(answer, l => l.Contains("with 11.0 kg in the 11 kg", StringComparison.Ordinal));
        Assert.DoesNotContain(answer, l => l.Contains(" lb", StringComparison.Ordinal) || l.Contains("°F", StringComparison.Ordinal) || l.Contains("psi", StringComparison.Ordinal));
    }

    [Fact]
    public void Refrigerator_water_heater_furnace_and_generator_on_one_regulator()
    {
        string[] answer = Answer("explain", File("one-regulator.toml"));
        Assert.StartsWith("FAILS Wednesday night, 13 to 14 January: gas is short from ", answer[0], StringComparison.Ordinal);
        Assert.Contains(answer, l => l.StartsWith("Why: the regulator or its connection passes too little: ", StringComparison.Ordinal));
        Assert.Contains(answer, l => l.StartsWith("- Regulator for ", StringComparison.Ordinal) && l.Contains("fitted by a technician", StringComparison.Ordinal));
    }

    [Fact]
    public void A_furnace_that_died_at_two_leaves_this_long_until_the_pipes_freeze()
    {
        string answer = string.Join(' ', Answer("freeze", File("died-at-two.toml"), "--at", "02:00"));
        Assert.StartsWith("If the furnace stops on Thu 14 Jan 02:00, fresh water is freezing already.", answer, StringComparison.Ordinal);
        Assert.Matches("Next to freeze: kitchen line after 1 h [0-9]+ min", answer);
    }

    private static string[] Answer(params string[] words) => Answer(words, rows: 23);

    private static string[] Answer(string[] words, int rows)
    {
        Shell shell = new() { Clock = new FixedClock(Dusk) };
        Assert.Equal(0, shell.Run(words));
        string[] lines = (shell.Error + shell.Out).TrimEnd('\n').Split('\n');
        Assert.InRange(lines.Length, 1, rows);
        return lines;
    }

    private static string First(string[] answer) => answer.First(l => l.StartsWith("- ", StringComparison.Ordinal));

    private static string File(string name) => Path.Combine(Path.GetDirectoryName(DocPage.Scenarios)!, "tests", "ColdSim.Tests", "App", "Jobs", "files", name);
}
