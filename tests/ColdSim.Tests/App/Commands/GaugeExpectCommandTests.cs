using System.Globalization;
using System.Text.Json;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class GaugeExpectCommandTests
{
    private static readonly string TwoCylinders = Shell.Demo("changeover.toml");

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(["gauge", "expect", .. words]);
        Assert.True(code == ended, shell.Error);
        return shell;
    }

    [Fact]
    public void One_cylinder_at_four_in_us_units() => Snapshot.Match(Run(0, Shell.ColdSnap, "--at", "04:00").Out);

    [Fact]
    public void Two_cylinders_in_full_in_si_units() => Snapshot.Match(Run(0, TwoCylinders, "--units", "si", "--full").Out);

    [Fact]
    public void The_scale_it_expects_weighs_what_is_in_the_cylinder()
    {
        using JsonDocument json = JsonDocument.Parse(Run(0, Shell.ColdSnap, "--at", "04:00", "--json").Out);
        JsonElement cylinder = json.RootElement.GetProperty("cylinders")[0], then = cylinder.GetProperty("then");
        string Kg(JsonElement of, string key) => $"{of.GetProperty(key).GetDouble().ToString("R", CultureInfo.InvariantCulture)} kg";
        Shell weighed = new();
        Assert.Equal(0, weighed.Run("gauge", "weight", "--cylinder", "40 lb", "--scale", Kg(then, "scale_kg"), "--tare", Kg(cylinder, "tare_kg"), "--accessories", Kg(then, "frost_kg"), "--json"));
        using JsonDocument back = JsonDocument.Parse(weighed.Out);
        Assert.Equal(then.GetProperty("gas_kg").GetDouble(), back.RootElement.GetProperty("contents").GetProperty("mass_kg").GetDouble(), 5e-6);
    }

    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        foreach (string scenario in (string[])[TwoCylinders, Shell.Demo("three-days.toml")])
        {
            using JsonDocument json = JsonDocument.Parse(Run(0, scenario, "--json").Out);
            ResultsTests.Collect(json.RootElement, "", written);
        }

        // What a run starts from has more or less of it from log to log, and tests of its own.
        static bool IsOwn(string path) => !path.StartsWith("started_from.", StringComparison.Ordinal);
        IEnumerable<string> keys = JsonPage.Keys(JsonPage.Documents["gauge expect"]).Select(k => k.Path).Where(IsOwn);
        Assert.Equal(keys.Order(StringComparer.Ordinal), written.Where(IsOwn));
    }

    [Fact]
    public void A_full_time_and_a_clock_time_mean_the_same_and_a_time_of_another_offset_too()
    {
        string clock = Run(0, Shell.ColdSnap, "--at", "04:00").Out;
        Assert.Equal(clock, Run(0, Shell.ColdSnap, "--at", "2027-01-13T04:00").Out);
        Assert.Equal(clock, Run(0, Shell.ColdSnap, "--at", "2027-01-13T11:00Z").Out);
    }

    [Fact]
    public void A_named_cylinder_is_the_answer_s_whatever_is_in_use()
    {
        using JsonDocument json = JsonDocument.Parse(Run(0, TwoCylinders, "--json").Out);
        foreach (JsonElement cylinder in json.RootElement.GetProperty("cylinders").EnumerateArray())
        {
            string name = cylinder.GetProperty("name").GetString()!;
            Assert.Contains($": {name} should weigh ", Run(0, TwoCylinders, "--cylinder", name.ToUpperInvariant(), "--at", "03:00").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Several_faults_are_said_at_once()
    {
        Shell shell = Run(2, TwoCylinders, "--at", "2029-01-01T00:00", "--cylinder", "lefd", "--assumed-temperature", "20");
        Assert.Contains("--at: Monday 1 January 2029, 00:00", shell.Error, StringComparison.Ordinal);
        Assert.Contains("is outside the run, which goes from", shell.Error, StringComparison.Ordinal);
        Assert.Contains("--cylinder: no cylinder is called 'lefd'; there are ", shell.Error, StringComparison.Ordinal);
        Assert.Contains("--assumed-temperature: '20' has no unit", shell.Error, StringComparison.Ordinal);
        Assert.Contains("See 'coldsim gauge expect --help'.", shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_text_that_is_no_time_is_refused_with_what_is_accepted()
        => Assert.Contains("--at: 'dusk' is not a time; ", Run(2, Shell.ColdSnap, "--at", "dusk").Error, StringComparison.Ordinal);

    [Fact]
    public void A_misspelt_name_is_answered_with_the_nearest()
    {
        using JsonDocument json = JsonDocument.Parse(Run(0, TwoCylinders, "--json").Out);
        string name = json.RootElement.GetProperty("cylinders")[0].GetProperty("name").GetString()!;
        Assert.Contains($"did you mean '{name}'?", Run(2, TwoCylinders, "--cylinder", name[..^1] + "x").Error, StringComparison.Ordinal);
    }
}
