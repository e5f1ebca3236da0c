using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Gauges;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Reports;

/// <summary>Every figure of a report is the one of <c>--json</c>, rounded as a person reads it.</summary>
public class ReportFiguresTests
{
    private static readonly string[] Moments = ["then", "warmed"];

    public static TheoryData<string> Demos { get; } = [.. Directory.GetFiles(DocPage.Scenarios, "*.toml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_figures_of_the_demo_are_those_of_JSON() => Check("cold-snap.toml");

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Demos))]
    public void The_figures_of_every_demo_are_those_of_JSON(string demo) => Check(demo);

    [Fact]
    [Trait("Category", "Slow")]
    public void The_limits_and_the_chance_are_those_of_JSON()
    {
        ReportPage page = ReportPage.Of("cold-snap.toml", "--with", "limits,chance", "--members", "20");
        JsonElement columns = Json("limits", "cold-snap.toml").GetProperty("set_ups");
        Dictionary<string, string>[] limits = [.. page.Table("The coldest night's low that this rig holds")];
        Assert.Equal(columns[0].GetProperty("cells").GetArrayLength() + 1, limits.Length);
        for (int row = 0; row < limits.Length; row++)
        {
            string[] cells = [.. limits[row].Values.Skip(2)];
            for (int column = 0; column < cells.Length; column++)
            {
                JsonElement cell = row == 0 ? columns[column].GetProperty("now") : columns[column].GetProperty("cells")[row - 1];
                Assert.Equal(Degrees(cell.GetProperty("limit_c")), cells[column].TrimEnd('*', 'b', 'w', 'd'));
            }
        }

        JsonElement nights = Json("run", "cold-snap.toml", "--members", "20").GetProperty("nights");
        Dictionary<string, string>[] chances = [.. page.Table("The chance of each night")];
        Assert.Equal(nights.GetArrayLength(), chances.Length);
        for (int i = 0; i < chances.Length; i++)
        {
            Assert.Equal(Fixed(100 * nights[i].GetProperty("chance").GetDouble(), 0), chances[i]["Holds %"]);
            Assert.Equal(Pounds(nights[i].GetProperty("left_at_dawn_p50_kg")), chances[i]["Left half"]);
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_set_ups_to_buy_and_the_cylinders_states_are_those_of_JSON()
    {
        ReportPage page = ReportPage.Of("cold-snap.toml", "--with", "buy,diagnose");
        JsonElement[] setUps = [.. Json("buy", "cold-snap.toml").GetProperty("set_ups").EnumerateArray()];
        Dictionary<string, string>[] rows = [.. page.Table("The set-ups, the best first")];
        Assert.Equal(setUps.Length, rows.Length);
        for (int i = 0; i < rows.Length; i++)
        {
            string[] cells = [.. rows[i].Values];
            Assert.Equal(setUps[i].GetProperty("set_up").GetString()!.Replace("changeover", "auto", StringComparison.Ordinal), cells[0]);
            Assert.Equal(Degrees(setUps[i].GetProperty("full_limit_c")), cells[1]);
            Assert.Equal(setUps[i].GetProperty("refills").GetInt32().ToString(CultureInfo.InvariantCulture), rows[i]["fills"]);
        }

        string caption = page.Text.Split("<caption>").Select(c => c.Split('<')[0]).Single(c => c.StartsWith("What the cylinder should show", StringComparison.Ordinal));
        string air = caption[(caption.LastIndexOf("air of ", StringComparison.Ordinal) + "air of ".Length)..];
        Assert.Equal(Degrees(Json("run", "cold-snap.toml").GetProperty("summary").GetProperty("outside_low_c")) + " °F", air);
        Dictionary<string, string>[] states = [.. page.Table(caption)];
        JsonElement asked = Json("diagnose", "cold-snap.toml", "--air", air, "--left", states[0]["left"], "--use", "hard", "--stove", "fades");
        JsonElement[] expected = [.. asked.GetProperty("expected").EnumerateArray()];
        Assert.Equal(expected.Length, states.Length);
        for (int i = 0; i < states.Length; i++)
            Assert.InRange(double.Parse(states[i]["wall, °F"], CultureInfo.InvariantCulture) - Fahrenheit(expected[i].GetProperty("wall_c")), -6, 6);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void What_the_gauges_should_show_is_that_of_JSON()
    {
        const string demo = "changeover.toml";
        ReportPage page = ReportPage.Of(demo, "--with", "gauges");
        JsonElement expect = Json(["gauge", "expect"], demo), assumed = expect.GetProperty("echo_assumes_c");
        JsonElement[] cylinders = [.. expect.GetProperty("cylinders").EnumerateArray()];
        XElement section = page.Sections.Single(s => (string?)s.Attribute("id") == "gauges");
        XElement[] tables = [.. section.Descendants("table")];
        Assert.Equal(2, tables.Length);
        Assert.Equal(cylinders.Length, tables.Length);
        Assert.Contains(expect.GetProperty("at").GetDateTimeOffset().ToString("ddd dd MMM HH:mm", CultureInfo.InvariantCulture), section.Value, StringComparison.Ordinal);
        Assert.Contains("as it warms, liquid swells and some of it evaporates, so the same gas reads another level", section.Value, StringComparison.Ordinal);
        Assert.Contains("Caution: read it outside", section.Value, StringComparison.Ordinal);
        for (int i = 0; i < tables.Length; i++)
        {
            string caption = tables[i].Element("caption")!.Value;
            Assert.StartsWith(cylinders[i].GetProperty("name").GetString()!, caption, StringComparison.Ordinal);
            Assert.Contains($"tare {Pounds(cylinders[i].GetProperty("tare_kg"))} lb", caption, StringComparison.Ordinal);
            Dictionary<string, string>[] rows = [.. page.Table(caption)];
            int shown = 0;
            foreach (Figure<InstrumentReadings> figure in ExpectedFigures.Instruments.Where(f => f.Columns.Count > 0))
            {
                string instrument = figure.Columns[0].Heading.Replace("{assumed}", Degrees(assumed) + " °F", StringComparison.Ordinal);
                string[] cells = [.. Moments.Select(s => Instrument(figure.Key, cylinders[i].GetProperty(s).GetProperty(figure.Key)))];
                if (cells.All(c => c == "-"))
                    continue;
                Dictionary<string, string> row = rows.Single(r => r["instrument"] == instrument.Replace("{unit}", UnitOf(figure.Key), StringComparison.Ordinal));
                Assert.Equal(cells, row.Values.Skip(1));
                shown++;
            }

            Assert.Equal(shown, rows.Length);
            Assert.InRange(shown, 17, 18);
        }
    }

    // By the unit that ends the key, not by what formats the page.
    private static string Instrument(string key, JsonElement value) => value.ValueKind == JsonValueKind.Null ? "-" : UnitOf(key) switch
    {
        "°F" => Degrees(value),
        "psi" => Psi(value),
        "in" => Fixed(value.GetDouble() / 0.0254, 1),
        "lb" => key == "frost_kg" ? Fixed(value.GetDouble() / 0.45359237, 2) : Pounds(value),
        "µs" => Fixed(value.GetDouble(), 0),
        _ => Fixed(100 * value.GetDouble(), 0),
    };

    private static string UnitOf(string key) => key switch
    {
        _ when key.EndsWith("_c", StringComparison.Ordinal) => "°F",
        _ when key.EndsWith("_kpa_gauge", StringComparison.Ordinal) => "psi",
        _ when key.EndsWith("_m", StringComparison.Ordinal) => "in",
        _ when key.EndsWith("_kg", StringComparison.Ordinal) => "lb",
        _ when key.EndsWith("_us", StringComparison.Ordinal) => "µs",
        _ => "%",
    };

    private static void Check(string demo)
    {
        ReportPage page = ReportPage.Of(demo);
        JsonElement json = Json("run", demo);
        Readings(page, json.GetProperty("summary"));
        JsonElement[] nights = [.. json.GetProperty("nights").EnumerateArray()];
        Nights(page, nights);
        Events(page, [.. json.GetProperty("events").EnumerateArray()]);
        Curves(page, nights);
        if (page.Tables("The options, the best first").FirstOrDefault() is { } options)
            Options(options, Json("compare", demo).GetProperty("options"));
        else
            Assert.DoesNotContain("[[option]]", File.ReadAllText(Shell.Demo(demo)), StringComparison.Ordinal);
    }

    private static void Readings(ReportPage page, JsonElement summary)
    {
        Dictionary<string, string> readings = page.Readings;
        Assert.Equal($"{summary.GetProperty("nights_held")} of {summary.GetProperty("nights")}", readings["Nights that hold"]);
        Assert.Equal(Degrees(summary.GetProperty("outside_low_c")) + " °F", readings["Coldest outside"]);
        if (readings.TryGetValue("Coldest inside", out string? inside))
            Assert.Equal(Degrees(summary.GetProperty("inside_low_c")) + " °F", inside);
        Assert.Equal(Pounds(summary.GetProperty("gas_used_kg")) + " lb", readings["Gas used"]);
        Assert.Equal(Pounds(summary.GetProperty("left_at_end_kg")) + " lb", readings["Left at the end"]);
    }

    private static void Nights(ReportPage page, JsonElement[] nights)
    {
        Dictionary<string, string>[] few = [.. page.Table("The nights, each from noon to noon")], more = [.. page.Table("The nights in more figures")];
        Assert.Equal(nights.Length, few.Length);
        Assert.Equal(nights.Length, more.Length);
        for (int i = 0; i < nights.Length; i++)
        {
            JsonElement night = nights[i];
            foreach (Dictionary<string, string> row in (Dictionary<string, string>[])[few[i], more[i]])
            {
                Assert.Equal(Degrees(night.GetProperty("outside_low_c")), row["Out low °F"]);
                Assert.Equal(Degrees(night.GetProperty("inside_low_c")), row["In low °F"]);
                Assert.Equal(Fixed(night.GetProperty("burner_time_s").GetDouble() / 3600, 1), row["Lit h"]);
                Assert.Equal(Pounds(night.GetProperty("gas_used_kg")), row["Gas used lb"]);
                Assert.Equal(Pounds(night.GetProperty("left_at_dawn_kg")), row["Left 07:00 lb"]);
            }

            Assert.Equal(night.GetProperty("verdict").GetString() == "holds", few[i]["Outcome"] == "holds");
            Assert.Equal(Fixed(night.GetProperty("pressure_min_kpa_gauge").GetDouble() / 6.894757293168361, 1), more[i]["Cyl. low psi"]);
            Assert.Equal(Degrees(night.GetProperty("liquid_temperature_min_c")), more[i]["Liq. low °F"]);
            Assert.Equal(Clock(night.GetProperty("first_short")), more[i]["Short first at"]);
            Assert.Equal(Clock(night.GetProperty("dry_at")), more[i]["Dry at"]);
        }
    }

    // Repeats are folded into one row, which has the state at the first of them.
    private static void Events(ReportPage page, JsonElement[] events)
    {
        HashSet<string> all = [.. events.Select(e => string.Join(
            '|', Day(e.GetProperty("time")), Degrees(e.GetProperty("liquid_temperature_c")), Psi(e.GetProperty("pressure_kpa_gauge")), Pounds(e.GetProperty("left_kg"))))];
        foreach (Dictionary<string, string> row in page.Tables("What happens").SelectMany(t => t))
            Assert.Contains(string.Join('|', row["When"], row["Liquid °F"], row["Cylinder psi"], row["Left lb"]), all);
        string[] kinds = [.. events.Select(e => e.GetProperty("kind").GetString()!).Where(k => k is not ("burner_on" or "burner_off"))];
        Assert.Equal(kinds.Length > 0, page.Tables("What happens").Any());
    }

    private static void Curves(ReportPage page, JsonElement[] nights)
    {
        XElement[] pictures = [.. page.Pictures];
        Assert.Equal(nights.Length, pictures.Length);
        for (int i = 0; i < nights.Length; i++)
        {
            if (nights[i].GetProperty("inside_low_c").ValueKind == JsonValueKind.Number)
                Assert.Equal(Fahrenheit(nights[i].GetProperty("inside_low_c")), ReportPage.Curve(pictures[i], "inside").Min(), 0.6);
            Assert.Equal(Fahrenheit(nights[i].GetProperty("outside_low_c")), ReportPage.Curve(pictures[i], "outside").Min(), 0.6);
            XElement left = pictures[i].Descendants("path").Single(p => (string?)p.Attribute("data-unit") == "lb");
            Assert.Equal(nights[i].GetProperty("left_at_end_kg").GetDouble() / 0.45359237, ReportPage.Curve(pictures[i], (string)left.Attribute("data-name")!)[^1], 0.1);
        }
    }

    private static void Options(IReadOnlyList<Dictionary<string, string>> rows, JsonElement options)
    {
        Assert.Equal(options.GetArrayLength(), rows.Count);
        for (int i = 0; i < rows.Count; i++)
        {
            Assert.StartsWith(options[i].GetProperty("name").GetString()!, rows[i]["Option"], StringComparison.Ordinal);
            Assert.Equal($"{options[i].GetProperty("nights_held")}/{options[i].GetProperty("nights")}", rows[i]["Held"]);
            Assert.Equal(Degrees(options[i].GetProperty("inside_low_c")), rows[i]["In low °F"]);
            Assert.Equal(Pounds(options[i].GetProperty("gas_used_kg")), rows[i]["Gas used lb"]);
            Assert.Equal(Pounds(options[i].GetProperty("left_at_end_kg")), rows[i]["Left end lb"]);
        }
    }

    private static JsonElement Json(string command, string demo, params string[] more) => Json([command], demo, more);

    private static JsonElement Json(string[] command, string demo, params string[] more)
    {
        Shell shell = new();
        Assert.True(shell.Run([.. command, Shell.Demo(demo), "--json", .. more]) == 0, shell.Error);
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        return document.RootElement.Clone();
    }

    private static double Fahrenheit(JsonElement celsius) => celsius.GetDouble() * 1.8 + 32;

    private static string Degrees(JsonElement celsius) => celsius.ValueKind == JsonValueKind.Null ? "-" : Fixed(Fahrenheit(celsius), 0);

    private static string Pounds(JsonElement kg) => kg.ValueKind == JsonValueKind.Null ? "-" : Fixed(kg.GetDouble() / 0.45359237, 1);

    private static string Psi(JsonElement kPa) => kPa.ValueKind == JsonValueKind.Null ? "-" : Fixed(kPa.GetDouble() / 6.894757293168361, 1);

    private static string Clock(JsonElement time) => time.ValueKind == JsonValueKind.Null ? "-" : Minute(time).ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Day(JsonElement time) => Minute(time).ToString("ddd dd MMM HH:mm", CultureInfo.InvariantCulture);

    private static DateTimeOffset Minute(JsonElement time)
    {
        DateTimeOffset at = time.GetDateTimeOffset();
        return at.AddSeconds(at.Second < 30 ? -at.Second : 60 - at.Second);
    }

    private static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text;
    }
}
