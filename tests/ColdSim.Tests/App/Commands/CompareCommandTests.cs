using System.Text.Json;
using ColdSim.App.Text;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Text;
using ColdSim.Tests.Model.Appliances;
using ColdSim.Tests.Planning.Compare;
using Snapshooter.Xunit;
using UnitsNet;
using Xunit;
using static ColdSim.Tests.Planning.Compare.HandRows;
using Comparison = ColdSim.Planning.Compare.Comparison;

namespace ColdSim.Tests.App.Commands;

public class CompareCommandTests
{
    [Fact]
    public void A_comparison_in_us_units() => Snapshot.Match(Printed(UnitStyle.Us));

    [Fact]
    public void A_comparison_in_si_units() => Snapshot.Match(Printed(UnitStyle.Si));

    [Fact]
    public void Only_the_options_that_are_named_are_compared()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("compare", Shell.Demo("which-cylinder.toml"), "--nights", "1", "--json", "--option", "100 lb cylinder", "--option", "40 LB cylinder"));
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Equal(
            ["100 lb cylinder", "40 lb cylinder", "as it is"],
            document.RootElement.GetProperty("options").EnumerateArray().Select(o => o.GetProperty("name").GetString()!).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("--option: 'which-cylinder.toml' has no option '40 lb cylindr'; did you mean \"40 lb cylinder\"?", "--option", "40 lb cylindr")]
    [InlineData("--option and --sizes do not go together", "--option", "40 lb cylinder", "--sizes", "20 lb")]
    [InlineData("--option goes with one file", "which-cylinder.toml", "--option", "40 lb cylinder")]
    public void An_option_that_cannot_be_chosen_is_said(string said, params string[] words)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run(["compare", Shell.Demo("which-cylinder.toml"), .. words]));
        Assert.Contains(said, shell.Error.Replace(Path.GetDirectoryName(Shell.ColdSnap) + "/", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_wider_than_eighty_columns_however_wide_the_numbers()
    {
        ComparedRow wide = Row(new string('n', 60), 1, Verdict.GasGone, 60 * 345, 100.5, 123.4, -41.5, 123.4, harm: new(123.4, 231.65, 234.5, 9000, 20_700));
        Comparison comparison = HandRows.Of([Row(ComparedOption.AsItIs, 0), .. Enumerable.Repeat(wide, 12)]);
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            IEnumerable<string> lines = CompareText.Sections(comparison, units, ["A caution."], swept: true).SelectMany(s => s.Lines);
            Assert.All(lines, l => Assert.InRange(l.Length, 0, 80));
        }
    }

    [Fact]
    public void What_a_blend_leaves_behind_is_a_column_that_propane_leaves_empty()
    {
        Comparison comparison = HandRows.Of(Row(ComparedOption.AsItIs, 0) with { LeftBehind = Mass.FromKilograms(2.5) }, Row("propane", 1));
        string[] lines = [.. CompareText.Sections(comparison, UnitStyle.Si, [], swept: false).SelectMany(s => s.Lines)];
        Assert.Contains(lines, l => l.StartsWith("1 as it is", StringComparison.Ordinal) && l.EndsWith(" 2.50", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("1 propane", StringComparison.Ordinal) && l.EndsWith(" -", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("Stays behind: ", StringComparison.Ordinal));
        Assert.DoesNotContain(CompareText.Sections(HandRows.Several, UnitStyle.Si, [], swept: false).SelectMany(s => s.Lines), l => l.Contains("tays", StringComparison.Ordinal));
    }

    [Fact]
    public void Battery_and_water_are_in_the_second_table_and_within_eighty_columns()
    {
        ComparedRow dry = Row(ComparedOption.AsItIs, 0, scenario: InventedRuns.Scenario with { Rig = Everything.Rig });
        ComparedRow flat = Row(new string('n', 60), 1, Verdict.BatteryFlat);
        flat = flat with
        {
            Cost = 1234.5,
            Summary = flat.Summary with
            {
                ChargeLow = Ratio.FromPercent(48),
                VoltageGone = Duration.FromMinutes(8 * 60 + 28),
                FlatAt = InventedRuns.Scenario.Start,
                WaterFreezesAt = new(2027, 1, 14, 5, 6, 0, TimeSpan.FromHours(-7)),
                BlanketEnergy = Energy.FromWattHours(12345),
                CylinderChanges = 3,
            },
        };
        IReadOnlyList<string> lines = CompareText.Costs(HandRows.Of(dry, flat), UnitStyle.Us);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 80));
        Assert.EndsWith("48    8:28 14 Jan 05:06", lines.Single(l => l.Contains("nnn", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.EndsWith("-       -            -", lines.Single(l => l.Contains("as it is", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_battery_and_water_neither_has_a_column()
        => Assert.Empty(CompareText.Costs(HandRows.Several, UnitStyle.Us));

    private static ComparedRow Short(string name, int order, double short_min, double noHeat_h = 0, double inside_C = 9)
        => Row(name, order, Verdict.GasShort, firstShort_h: 15, inside_C: inside_C, harm: new(0, inside_C + 273.15, noHeat_h, 0, short_min));

    [Fact]
    public void The_sentence_says_why_in_the_numbers_of_the_runs()
    {
        Assert.Equal(
            "\"b\" is best: all 3 nights hold with 3.00 kg left at the end and inside never below 14 °C; with the rig as it is, next, gas runs short on "
            + "Fri 15 Jan 07:00, no heat for 1 h 30 min, gas short for 1 h 40 min, inside down to 9 °C.",
            CompareSentence.Of(HandRows.Of(Short(ComparedOption.AsItIs, 0, 100, 1.5), Row("b")), UnitStyle.Si));
        Assert.Equal(
            "Nothing here holds all nights. \"b\" does the least harm: gas is short for 50 min, against 1 h 40 min with the rig as it is; inside falls to "
            + "9 °C, against 9 °C.",
            CompareSentence.Of(HandRows.Of(Short(ComparedOption.AsItIs, 0, 100), Short("b", 1, 50)), UnitStyle.Si));
    }

    [Fact]
    public void The_sentence_is_honest_about_ties_and_small_differences()
    {
        ComparedRow asItIs = Row(ComparedOption.AsItIs, 0, cost: 20);
        Assert.Equal(
            "Both come out the same: with each, all 3 nights hold, with inside never below 14 °C. What was changed makes no difference that counts in these "
            + "nights.",
            CompareSentence.Of(HandRows.Of(asItIs, Row("b", cost: 20)), UnitStyle.Si));
        Assert.Equal(
            "The rig as it is and \"b\" come out the same: with each, all 3 nights hold, with inside never below 14 °C. Nothing has to be changed.",
            CompareSentence.Of(HandRows.Of(asItIs, Row("b", cost: 20), Row("c", 2, cost: 30)), UnitStyle.Si));
        Assert.Equal(
            "The rig as it is is best: all nights hold with it and with the next, and it costs 20, against 30 with \"c\".",
            CompareSentence.Of(HandRows.Of(asItIs, Row("c", cost: 30)), UnitStyle.Si));
        Assert.Equal(
            "\"c\" is best: all nights hold with it and with the next, and the gas left lasts 3.0 more nights, against 0.6 more nights with the rig as it is.",
            CompareSentence.Of(HandRows.Of(Row(ComparedOption.AsItIs, 0, gas_kg: 10), Row("c", gas_kg: 6)), UnitStyle.Si));
    }

    [Fact]
    public void Where_nothing_holds_that_is_said_first_and_never_that_nothing_has_to_be_changed()
    {
        ComparedRow Flat(string name, int order) => Row(name, order, Verdict.BatteryFlat, firstShort_h: 15, inside_C: -13.3, harm: new(6, 259.85, 9, 80, 0));
        Assert.Equal(
            "Nothing here holds all nights. The rig as it is and \"b\" come out the same: with each, the battery goes flat on Fri 15 Jan 07:00, no heat for "
            + "9 h, inside down to 8 °F. None of them is enough.",
            CompareSentence.Of(HandRows.Of(Flat(ComparedOption.AsItIs, 0), Flat("b", 1), Short("c", 2, 10) with { End = RunEnd.LiquidFull }), UnitStyle.Us));
        Assert.Equal(
            "Both come out the same: with each, the battery goes flat on Fri 15 Jan 07:00, no heat for 9 h, inside down to 8 °F. What was changed makes no "
            + "difference that counts in these nights.",
            CompareSentence.Of(HandRows.Of(Flat(ComparedOption.AsItIs, 0), Flat("b", 1)), UnitStyle.Us));
    }

    [Theory]
    [InlineData("100 lb", false, 0)]
    [InlineData("100 lb", true, 0)]
    [InlineData("20 lb", false, 0)]
    [InlineData("20 lb", true, 1)]
    public void Exit_code_is_a_failure_only_when_asked_and_only_where_nothing_holds(string size, bool asked, int code)
        => Assert.Equal(code, new Shell().Run(["compare", Shell.ColdSnap, "--sizes", size, .. asked ? ["--fail-if-short"] : Array.Empty<string>()]));

    [Fact]
    public void Json_is_all_there_is_on_standard_output()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("compare", Shell.ColdSnap, "--sizes", "20 lb", "--json"));
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains("assumed: coach: u of doors not given", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_replace_the_files_options_and_nights_apply_to_all()
    {
        string which = Shell.Demo("which-cylinder.toml");
        Shell shell = new();
        Assert.Equal(0, shell.Run("compare", which, "--sizes", "40 lb, 10 lb,40 lb", "--nights", "1", "--json"));
        using JsonDocument sizes = JsonDocument.Parse(shell.Out);
        JsonElement[] options = [.. sizes.RootElement.GetProperty("options").EnumerateArray().OrderBy(o => o.GetProperty("name").GetString(), StringComparer.Ordinal)];
        Assert.Equal(["10 lb", "40 lb", "as it is"], options.Select(o => o.GetProperty("name").GetString()));
        Assert.All(options, o => Assert.Equal(1, o.GetProperty("nights").GetInt32()));
        double Filled(int option) => options[option].GetProperty("left_at_start_kg").GetDouble();
        Assert.Equal(Filled(0) / StandardSize.Find("10 lb")!.LegalFill_kg, Filled(1) / StandardSize.Find("40 lb")!.LegalFill_kg, 1e-6);
        Assert.Equal(0, shell.Run("compare", which, "--nights", "1", "--json"));
        using JsonDocument file = JsonDocument.Parse(shell.Out);
        Assert.DoesNotContain(file.RootElement.GetProperty("options").EnumerateArray(), o => o.GetProperty("name").GetString() == "10 lb");
        Assert.Equal(0, shell.Run("compare", which, "--sizes", "10 lb", "--nights", "1", "--full"));
        Assert.Contains("of its legal filling", shell.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_that_do_not_exist_are_named_all_at_once()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("compare", Shell.ColdSnap, "--sizes", "20 lb,21 lb,22 lb"));
        string[] lines = shell.Error.TrimEnd().Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.StartsWith("coldsim: --sizes: '21 lb' is not a common size; there are 5 lb, 10 lb, 20 lb", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("coldsim: --sizes: '22 lb' is not a common size; there are 5 lb, 10 lb, 20 lb", lines[1], StringComparison.Ordinal);
        Assert.Equal("See 'coldsim compare --help'.", lines[2]);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void The_scenarios_own_size_alone_is_nothing_to_compare_with()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("compare", Shell.ColdSnap, "--sizes", "40 lb"));
        Assert.Equal("coldsim: --sizes: '40 lb' names nothing but the scenario's own cylinder\n", shell.Error);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void Without_options_it_says_what_to_do()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("compare", Shell.ColdSnap));
        Assert.Equal($"coldsim: '{Shell.ColdSnap}' has no [[option]] to compare with; write one, or give --sizes\n", shell.Error);
    }

    [Fact]
    public void A_terminal_is_told_how_many_are_done()
    {
        Shell shell = new() { Terminal = true, Clock = new HastyClock() };
        Assert.Equal(0, shell.Run("compare", Shell.ColdSnap, "--sizes", "20 lb"));
        Assert.Matches("\rrunning for 1 s, [012] of 2 done", shell.Error);
        Assert.EndsWith(" \r", shell.Error, StringComparison.Ordinal);
    }

    private static string Printed(UnitStyle units)
    {
        string printed = Shell.Printed(CompareText.Sections(HandRows.Several, units, ["An invented caution."], swept: false));
        Assert.All(printed.Split('\n'), l => Assert.InRange(l.Length, 0, 80));
        return printed;
    }
}
