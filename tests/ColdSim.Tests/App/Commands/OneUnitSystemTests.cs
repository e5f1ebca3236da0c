using System.Text.RegularExpressions;
using ColdSim.App;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>No figure of the other system of units in any answer; names that a person gave, of cylinders and options, stay as they were given.</summary>
public partial class OneUnitSystemTests
{
    private static readonly string[] Commands = ["run", "trip", "compare", "limits", "freeze", "explain", "check"];

    // Commands whose answer fits a screen unless more is asked for.
    private static readonly string[] WithMore = ["run", "trip", "compare", "explain"];

    public static TheoryData<string, bool> Demos()
    {
        TheoryData<string, bool> demos = [];
        foreach (string demo in Directory.GetFiles(DocPage.Scenarios, "*.toml").Order(StringComparer.Ordinal))
        {
            demos.Add(Path.GetFileName(demo), true);
            demos.Add(Path.GetFileName(demo), false);
        }

        return demos;
    }

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Demos))]
    public void An_answer_on_a_demo_has_one_system_of_units(string demo, bool us)
    {
        string path = Shell.Demo(demo);
        string[] names = [.. ScenarioReader.Read(path).Options.Select(o => o.Name)];
        Assert.All(Commands, command => Check(us, names, command, path));
        Assert.All(WithMore, command => Check(us, names, command, path, "--full"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_answer_has_one_system_of_units(bool us)
    {
        Check(us, [], "run", Shell.ColdSnap);
        Check(us, [], "run", Shell.ColdSnap, "--full");
        Check(us, [], "check", Shell.Demo("breakfast-overload.toml"));
        Check(us, [], "tonight", "--low", "-8F", "--cylinder", "20 lb", "--left", "1/3", "--furnace", "25000 BTU/h", "--full");
        Check(us, [], "gauge", "weight", "--cylinder", "20 lb", "--scale", "31.2 lb", "--tare", "17.6 lb", "--furnace", "25000 BTU/h");
        Check(us, [], "gauge", "pressure", "--cylinder", "20 lb", "--pressure", "12 psi", "--temperature", "20 °F", "--rested");
        Check(us, [], "gauge", "combine", "--cylinder", "20 lb", "--tare", "17.6 lb", "--temperature", "10 °F", "--weight", "31.2 lb", "--line", "5.1 in");
        Check(us, [], "gauge", "combine", "--cylinder", "20 lb", "--level", "48 %", "--pressure", "31 psi", "--full");
        Check(us, [], "gauge", "expect", Shell.ColdSnap, "--full");
        Check(us, [], "log", "show", Shell.Demo("three-days.toml"));
        Check(us, [], "fit", Shell.Demo("three-days.toml"));
    }

    [Theory]
    [InlineData("coach: heat loss assumed 15 W/K per metre of length", "coach: heat loss assumed 8.7 BTU/h per °F per foot of length")]
    [InlineData("below 125 °F (52 °C).", "below 125 °F.")]
    [InlineData("water heater: set_point not given; assumed 60 °C", "water heater: set_point not given; assumed 140 °F")]
    [InlineData("fan heater: differential not given; assumed 2 K", "fan heater: differential not given; assumed 3.6 °F")]
    [InlineData("-60 to 55 °C", "-76 to 131 °F")]
    [InlineData("what it stores is taken by its floor of 9.8 m² where not given", "what it stores is taken by its floor of 110 ft² where not given")]
    [InlineData("regulator: taken as 160000 BTU/h at 30 psi", "regulator: taken as 160000 BTU/h at 30 psi")]
    [InlineData("9 kg bottle: taken as full, 9.07 kg", "9 kg bottle: taken as full, 20 lb")]
    [InlineData("taken as 30 min, 0.3 in the open", "taken as 30 min, 0.3 in the open")]
    public void A_sentence_is_shown_in_us_units(string text, string expected) => Assert.Equal(expected, UnitStyle.Us.InOwn(text));

    [Theory]
    [InlineData("regulator: taken as 160000 BTU/h at 30 psi", "regulator: taken as 47 kW at 2,100 mbar")]
    [InlineData("below 125 °F (52 °C).", "below 52 °C.")]
    [InlineData("(50.33 MJ/kg (21,638 BTU/lb))", "(50.33 MJ/kg)")]
    [InlineData("68 % within 3 °F (1.7 K), 3 % 10 °F (5.6 K) or more off", "68 % within 1.7 K, 3 % 5.6 K or more off")]
    [InlineData("over 105 lb of water", "over 47.6 kg of water")]
    [InlineData("heat loss 11.6 BTU/h per °F per ft (20 W/K per m), computed", "heat loss 20 W/K per m, computed")]
    [InlineData("delivery at 11 inH2O, wall 0.08 in (2.1 mm)", "delivery at 27 mbar, wall 2.1 mm")]
    [InlineData("taken as 0.3 in the open", "taken as 0.3 in the open")]
    public void A_sentence_is_shown_in_metric_units(string text, string expected) => Assert.Equal(expected, UnitStyle.Si.InOwn(text));

    private static void Check(bool us, string[] names, params string[] words)
    {
        Shell shell = new();
        int code = shell.Run([.. words, "--units", us ? "us" : "si"]);
        Assert.True(code is ExitCode.Done or ExitCode.BadInput, shell.Error);
        string all = Spaces().Replace(shell.Out + shell.Error, " ");
        foreach (Match named in names.SelectMany(n => Named().Matches(n)))
            all = all.Replace(named.Value, "", StringComparison.Ordinal);
        Regex foreign = us ? Metric() : American();
        Assert.True(!foreign.IsMatch(all), $"{string.Join(' ', words)}: {string.Join(" | ", foreign.Matches(all).Select(m => all[Math.Max(0, m.Index - 30)..Math.Min(all.Length, m.Index + 30)]))}");
    }

    // A name may go over two lines of a table; what it measures stays together.
    [GeneratedRegex(@"-?[0-9]+ (°[FC]|lb|kg|ft|m)")]
    private static partial Regex Named();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"°C|\bkg\b|\bkPa\b|\bkW\b|mbar|\bm/s\b|W/K|\bMJ\b|[0-9] (mm|cm|m|L|K|m²|m³)(?![\w/²³])")]
    private static partial Regex Metric();

    // Sizes of cylinders are their names.
    [GeneratedRegex(@"°F|(?<!\b(5|10|20|30|40|100)) lb\b|\bpsi\b|BTU|inH2O|\bgal\b|\bmph\b|CFR|kPa|[0-9] (ft|in)(?![\w ²]| \()")]
    private static partial Regex American();
}
