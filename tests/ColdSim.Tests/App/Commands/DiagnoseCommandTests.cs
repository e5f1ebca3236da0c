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
