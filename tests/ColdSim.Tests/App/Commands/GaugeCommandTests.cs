using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Tests.Files;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class GaugeCommandTests
{
    private static readonly string[] Weight = ["gauge", "weight", "--cylinder", "20 lb", "--scale", "31.2 lb", "--tare", "17.6 lb"];
    private static readonly string[] Echo = ["gauge", "echo", "--cylinder", "20 lb", "--percent", "30 %", "--assumed-temperature", "20C", "--temperature", "-22C"];
    private static readonly string[] Line = ["gauge", "line", "--cylinder", "20 lb", "--height", "5.1 in", "--temperature", "10 °F", "--rested"];
    private static readonly string[] Float = ["gauge", "float", "--cylinder", "20 gal", "--percent", "35 %", "--temperature", "-10C", "--tilt", "2"];
    private static readonly string[] Pressure = ["gauge", "pressure", "--cylinder", "20 lb", "--pressure", "12 psi", "--temperature", "20 °F"];

    private static readonly string[] Combine =
    [
        "gauge", "combine", "--cylinder", "20 lb", "--tare", "17.6 lb", "--temperature", "10 °F", "--weight", "31.2 lb", "--weight", "31.0 lb",
        "--line", "5.1 in", "--echo-time", "300 us",
    ];

    private static readonly string[] WithPressure =
    [
        "gauge", "combine", "--cylinder", "20 lb", "--tare", "17.6 lb", "--level", "48 %", "--echo-percent", "43 %", "--percent-of", "full", "--pressure", "31 psi",
        "--weight", "30 lb",
    ];

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error);
        return shell;
    }

    [Fact]
    public void Weight_in_us_units() => Snapshot.Match(Run(0, [.. Weight, "--furnace", "25000 BTU/h", "--full"]).Out);

    [Fact]
    public void Echo_in_si_units() => Snapshot.Match(Run(0, [.. Echo, "--units", "si", "--full"]).Out);

    [Fact]
    public void Line_in_us_units() => Snapshot.Match(Run(0, [.. Line, "--full"]).Out);

    [Fact]
    public void Float_in_us_units() => Snapshot.Match(Run(0, [.. Float, "--full"]).Out);

    [Fact]
    public void Combine_in_us_units() => Snapshot.Match(Run(0, [.. Combine, "--full"]).Out);

    [Fact]
    public void Combine_with_a_level_an_echo_and_a_pressure() => Snapshot.Match(Run(0, WithPressure).Out + "\n-----\n\n" + Run(0, [.. WithPressure, "--temperature", "50 °F", "--units", "si"]).Out);

    [Fact]
    public void Pressure_at_rest_and_not() => Snapshot.Match(Run(0, [.. Pressure, "--full"]).Out + "\n-----\n\n" + Run(0, [.. Pressure, "--rested", "--full"]).Out);

    [Fact]
    public void Everything_keeps_to_eighty_columns()
    {
        foreach (string[] words in (string[][])[Weight, Echo, Line, Float, Pressure, Combine, WithPressure])
        {
            foreach (string units in (string[])["us", "si"])
                Assert.All(Run(0, [.. words, "--units", units, "--full"]).Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
            Assert.All(Run(0, "gauge", words[1], "--help").Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
        }
    }

    [Fact]
    public void Own_dimensions_answer_like_the_size_they_are()
    {
        string size = Run(0, Weight).Out;
        string own = Run(0, "gauge", "weight", "--water-capacity", "47.6 lb", "--diameter", "12.2 in", "--scale", "31.2 lb", "--tare", "17.6 lb").Out;
        Assert.Equal(size.Replace("20 lb cylinder", "Own cylinder", StringComparison.Ordinal), own);
        Assert.Contains("\nOwn tank, horizontal", Run(0, "gauge", "float", "--water-capacity", "20 gal", "--diameter", "14 in", "--orientation", "horizontal",
            "--percent", "40 %", "--temperature", "0C").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--scale is missing", "weight", "--cylinder", "20 lb", "--tare", "17 lb")]
    [InlineData("--temperature is missing", "line", "--cylinder", "20 lb", "--height", "5 in")]
    [InlineData("give one of --time, --height and --percent", "echo", "--cylinder", "20 lb", "--temperature", "0C")]
    [InlineData("give one of --time, --height and --percent", "echo", "--cylinder", "20 lb", "--temperature", "0C", "--time", "200 us", "--height", "4 in")]
    [InlineData("give --cylinder, or --water-capacity with --diameter", "weight", "--scale", "30 lb", "--tare", "17 lb")]
    [InlineData("is not a common size; there are 5 lb", "weight", "--cylinder", "21 lb", "--scale", "30 lb", "--tare", "17 lb")]
    [InlineData("two 2:1 heads alone", "weight", "--water-capacity", "10 lb", "--diameter", "20 in", "--scale", "30 lb", "--tare", "17 lb")]
    [InlineData("less than an empty cylinder", "weight", "--cylinder", "20 lb", "--scale", "15 lb", "--tare", "17 lb")]
    [InlineData("lying tanks only", "float", "--cylinder", "20 lb", "--percent", "30 %", "--temperature", "0C")]
    [InlineData("give at least two readings", "combine", "--cylinder", "20 lb", "--line", "5 in", "--temperature", "0C")]
    [InlineData("a pressure does not say how much is left", "combine", "--cylinder", "20 lb", "--pressure", "30 psi")]
    [InlineData("--temperature is missing", "combine", "--cylinder", "20 lb", "--level", "40 %", "--line", "5 in")]
    [InlineData("--tare is missing", "combine", "--cylinder", "20 lb", "--weight", "30 lb", "--weight", "30 lb")]
    [InlineData("'300' has no unit", "echo", "--cylinder", "20 lb", "--temperature", "0C", "--time", "300")]
    [InlineData("did you mean '--scale'?", "weight", "--cylinder", "20 lb", "--scal", "30 lb", "--tare", "17 lb")]
    public void Faults_end_with_two_and_say_what_is_wrong(string message, params string[] words)
    {
        Shell shell = Run(2, ["gauge", .. words]);
        Assert.Contains(message, shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_wrong_subcommand_is_refused_and_help_is_named_in_full()
    {
        Assert.Contains("did you mean 'weight'?", Run(2, "gauge", "wieght").Error, StringComparison.Ordinal);
        Assert.EndsWith("See 'coldsim gauge echo --help'.\n", Run(2, "gauge", "echo", "--wrong").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_filling_above_the_legal_one_says_so()
        => Assert.Contains("above the legal fill", Run(0, "gauge", "weight", "--cylinder", "20 lb", "--scale", "40 lb", "--tare", "17.6 lb").Out, StringComparison.Ordinal);

    [Fact]
    public void The_documents_have_the_keys_of_their_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        string[][] all = [[.. Combine, "--furnace", "7 kW"], [.. Pressure, "--rested"], [.. WithPressure, "--temperature", "10 °F"]];
        foreach (string[] words in all)
        {
            using JsonDocument json = JsonDocument.Parse(Run(0, [.. words, "--json"]).Out);
            ResultsTests.Collect(json.RootElement, "", written);
        }

        ResultsTests.AssertKeys("gauge", written);
    }

    [Fact]
    public void A_level_beside_a_pressure_needs_no_thermometer_and_is_one_reading()
    {
        string answer = Run(0, "gauge", "combine", "--cylinder", "20 lb", "--level", "48 %", "--pressure", "31 psi").Out.ReplaceLineEndings(" ");
        Assert.Contains("by level, give or take", answer, StringComparison.Ordinal);
        Assert.Contains("says how warm the liquid is, not how much is left: propane has that pressure at 9 °F", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pressure_far_too_low_for_the_thermometer_is_not_used_and_said_so()
    {
        string answer = Run(0, "gauge", "combine", "--cylinder", "20 lb", "--level", "48 %", "--pressure", "5 psi", "--temperature", "40 °F").Out.ReplaceLineEndings(" ");
        Assert.Contains("The pressure is too low for 40 °F", answer, StringComparison.Ordinal);
        Assert.Contains("butane or no liquid is left", answer, StringComparison.Ordinal);
        Assert.Contains("The levels use the thermometer.", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_carries_the_same_answer()
    {
        using JsonDocument json = JsonDocument.Parse(Run(0, [.. Weight, "--json"]).Out);
        Assert.Equal(13.6 * 0.45359237, json.RootElement.GetProperty("contents").GetProperty("mass_kg").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("contents").GetProperty("full_fire_s").ValueKind);
    }
}
