using System.Text.Json;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class DiagnoseCommandTests
{
    [Fact]
    public void Without_evidence_it_asks_and_never_guesses()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("diagnose", "--air", "-20 °F", "--elevation", "9000 ft"));
        Assert.Equal("", shell.Out);
        Assert.Contains("it does not guess", shell.Error, StringComparison.Ordinal);
        Assert.Contains("--stove:", shell.Error, StringComparison.Ordinal);
        Assert.Equal(2, shell.Run("diagnose", "--json"));
        Assert.Equal("", shell.Out);
    }

    [Theory]
    [InlineData("--smell", "A smell of gas: everybody out now")]
    [InlineData("--co", "Signs of carbon monoxide: everybody out into fresh air now")]
    public void Smell_of_gas_and_carbon_monoxide_come_before_any_other_answer(string sign, string verdict)
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("diagnose", "no-such-file.toml", sign, "--stove", "nonsense", "--volts", "10.2 V"));
        Assert.StartsWith(verdict, shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("odds", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Test next", shell.Out, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run("diagnose", sign, "--json"));
        JsonElement root = JsonDocument.Parse(shell.Out).RootElement;
        Assert.NotEqual("none", root.GetProperty("emergency").GetString());
        Assert.Equal(0, root.GetProperty("causes").GetArrayLength());
    }

    [Fact]
    public void The_answer_comes_first_then_evidence_then_the_test_then_what_never_to_do()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("diagnose", "--furnace", "fan-only", "--fan", "slow", "--stove", "normal", "--air", "10 °F"));
        string[] texts = ["voltage at the furnace's board is too low", "Why: ", "Test next: ", "Never: "];
        int[] places = [.. texts.Select(t => shell.Out.IndexOf(t, StringComparison.Ordinal))];
        Assert.Equal(places.Order(), places);
        Assert.DoesNotContain(-1, places);
    }

    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        Shell shell = new();
        Assert.Equal(0, shell.Run("diagnose", "--stove", "fades", "--air", "-8 °F", "--wall", "much-colder", "--json"));
        JsonElement root = JsonDocument.Parse(shell.Out).RootElement;
        ResultsTests.Collect(root, "", written);
        ResultsTests.AssertKeys("diagnose", written);
        Assert.Equal(1, root.GetProperty("causes").EnumerateArray().Sum(c => c.GetProperty("probability").GetDouble()), 1e-4);
    }

    [Fact]
    public void All_faults_are_told_together()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("diagnose", "--stove", "lazy", "--volts", "99", "--left", "banana", "--did", "danced", "--tare",
            "17 lb", "--use", "often"));
        foreach (string name in (string[])["--stove", "--volts", "--left", "--did", "--tare", "--use"])
            Assert.Contains($"coldsim: {name}", shell.Error, StringComparison.Ordinal);
        Assert.Contains("normal, weak, fades, none, flares", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--left", "50 %")]
    [InlineData("--left", "10 lb")]
    [InlineData("--scale", "27.5 lb")]
    public void What_is_left_may_be_a_part_a_mass_or_a_scales_reading(string option, string text)
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("diagnose", "--cylinder", "20 lb", option, text, "--air", "0 °F", "--stove", "none", "--json"));
        JsonElement sound = JsonDocument.Parse(shell.Out).RootElement.GetProperty("expected")[0];
        Assert.Equal(("sound", 0.5), (sound.GetProperty("state").GetString(), Math.Round(sound.GetProperty("fill").GetDouble(), 2)));
    }

    [Fact]
    public void The_document_has_what_was_read_as_it_was_given()
    {
        JsonElement read = Readings("--scale", "12 kg", "--tare", "7.5 kg", "--air", "-8 °F", "--pressure", "12 psi", "--wall", "-20 °C",
            "--frost-line", "5 in", "--volts", "11.2 V");
        Assert.Equal(12, read.GetProperty("scale_kg").GetDouble());
        Assert.Equal(7.5, read.GetProperty("tare_kg").GetDouble());
        Assert.Equal(Readings("--left", "4.5 kg").GetProperty("left_frac").GetDouble(), read.GetProperty("left_frac").GetDouble());
        Assert.Equal((-8 - 32) / 1.8, read.GetProperty("air_c").GetDouble(), 1e-5);
        Assert.Equal(12 * 6.894757293168361, read.GetProperty("pressure_kpa_gauge").GetDouble(), 1e-5);
        Assert.Equal(-20, read.GetProperty("wall_c").GetDouble(), 1e-5);
        Assert.Equal(5 * 0.0254, read.GetProperty("frost_line_m").GetDouble(), 1e-5);
        Assert.Equal(11.2, read.GetProperty("board_v").GetDouble());
        Assert.Equal(JsonValueKind.Null, read.GetProperty("wall_feel").ValueKind);
    }

    [Fact]
    public void What_was_not_read_is_null_and_no_frost_is_none_of_it()
    {
        JsonElement read = Readings("--wall", "much-colder", "--frost-line", "none", "--left", "1/3");
        Assert.Equal("much-colder", read.GetProperty("wall_feel").GetString());
        Assert.Equal(0, read.GetProperty("frost_line_m").GetDouble());
        Assert.Equal(1.0 / 3, read.GetProperty("left_frac").GetDouble(), 1e-5);
        string[] none = [.. read.EnumerateObject().Where(p => p.Value.ValueKind == JsonValueKind.Null).Select(p => p.Name)];
        Assert.Equal(["air_c", "scale_kg", "tare_kg", "pressure_kpa_gauge", "wall_c", "board_v"], none);
    }

    [Fact]
    public void A_pressure_below_that_of_the_air_is_said_in_words_and_stays_a_number_in_the_document()
    {
        string[] cold = ["diagnose", "--air", "-30 °F", "--left", "25 %", "--stove", "fades", "--cylinder", "20 lb"];
        Shell shell = new();
        Assert.Equal(0, shell.Run([.. cold, "--full"]));
        string row = shell.Out.Split('\n').Single(l => l.StartsWith("butane left ", StringComparison.Ordinal) && l.Contains("25 %", StringComparison.Ordinal));
        Assert.Contains(" below air ", row, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run([.. cold, "--json"]));
        JsonElement butane = JsonDocument.Parse(shell.Out).RootElement.GetProperty("expected").EnumerateArray()
            .Single(s => s.GetProperty("state").GetString() == "butane_left");
        Assert.InRange(butane.GetProperty("pressure_kpa_gauge").GetDouble(), -101, -1);
    }

    [Fact]
    public void A_file_says_what_the_rig_is_and_which_gas_it_has()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("diagnose", Shell.Demo("mixed-gas.toml"), "--stove", "none", "--json"));
        JsonElement[] causes = [.. JsonDocument.Parse(shell.Out).RootElement.GetProperty("causes").EnumerateArray()];
        Assert.Contains(causes.Single(c => c.GetProperty("cause").GetString() == "butane_left").GetProperty("evidence").EnumerateArray(),
            e => e.GetProperty("sign").GetString() == "gas");
        Assert.Equal(2, shell.Run("diagnose", Shell.Demo("mixed-gas.toml"), "--cylinder", "20 lb", "--stove", "none"));
        Assert.Contains("both say what the rig is", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void At_a_terminal_it_asks_what_tells_most_until_it_is_clear()
    {
        Shell shell = Asked(question => question switch
        {
            _ when question.Contains("smell", StringComparison.Ordinal) || question.Contains("CO alarm", StringComparison.Ordinal) => "no",
            _ when question.Contains("How cold", StringComparison.Ordinal) => "10 °F",
            _ when question.Contains("Light the stove", StringComparison.Ordinal) => "normal",
            _ when question.Contains("voltage", StringComparison.Ordinal) => "10.3 V",
            _ when question.Contains("fan run", StringComparison.Ordinal) => "slow",
            _ when question.Contains("furnace get", StringComparison.Ordinal) => "fan-only",
            _ => "",
        });
        Assert.Equal(0, shell.Run("diagnose"));
        Assert.Contains("Very likely, the voltage at the furnace's board is too low", shell.Out, StringComparison.Ordinal);
        Assert.True(shell.Error.IndexOf("smell of gas", StringComparison.Ordinal) < shell.Error.IndexOf("Light the stove",
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_smell_ends_the_questions()
    {
        Shell shell = Asked(_ => "yes");
        Assert.Equal(0, shell.Run("diagnose"));
        Assert.Contains("A smell of gas", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("How cold", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_that_is_none_is_asked_again_and_nobody_knowing_anything_is_told_where_to_look()
    {
        Shell shell = Asked(question => question.Contains("Light the stove", StringComparison.Ordinal) ? "purple" : "");
        Assert.Equal(2, shell.Run("diagnose"));
        Assert.Contains("'purple' is none of normal", shell.Error, StringComparison.Ordinal);
        Assert.Contains("it does not guess", shell.Error, StringComparison.Ordinal);
    }

    private static JsonElement Readings(params string[] given)
    {
        Shell shell = new();
        Assert.True(shell.Run(["diagnose", "--cylinder", "20 lb", .. given, "--json"]) == 0, shell.Error);
        return JsonDocument.Parse(shell.Out).RootElement.GetProperty("readings");
    }

    // Answers by the question that was asked last.
    private static Shell Asked(Func<string, string> answer)
    {
        Shell shell = new() { Terminal = true };
        string seen = "";
        shell.WhileWaiting = () => { };
        shell.Answer = () =>
        {
            string all = shell.ErrorSoFar;
            string question = all[seen.Length..];
            seen = all;
            return answer(question);
        };
        return shell;
    }
}
