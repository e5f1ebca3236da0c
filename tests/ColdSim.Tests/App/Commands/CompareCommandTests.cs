using System.Text.Json;
using ColdSim.App.Text;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
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
    public void Nothing_is_wider_than_eighty_columns_however_wide_the_numbers()
    {
        ComparedRow wide = Row(new string('n', 60), 1, Verdict.RunsDry, 60 * 345, 100.5, 123.4, -41.5, 123.4);
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
        ComparedRow flat = Row(new string('n', 60), 1, Verdict.RunsFlat);
        flat = flat with
        {
            Cost = 1234.5,
            Summary = flat.Summary with
            {
                ChargeLow = Ratio.FromPercent(48),
                VoltageGone = Duration.FromMinutes(8 * 60 + 28),
                FirstOut = FirstOut.Battery,
                FlatAt = InventedRuns.Scenario.Start,
                WaterFreezesAt = new(2027, 1, 14, 5, 6, 0, TimeSpan.FromHours(-7)),
                BlanketEnergy = Energy.FromWattHours(12345),
                CylinderChanges = 3,
            },
        };
        IReadOnlyList<string> lines = CompareText.Costs(HandRows.Of(dry, flat), UnitStyle.Us);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 80));
        Assert.EndsWith("48    8:28 14 Jan 05:06 battery", lines.Single(l => l.Contains("nnn", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.EndsWith("-       -            - -", lines.Single(l => l.Contains("as it is", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_battery_and_water_neither_has_a_column()
        => Assert.Empty(CompareText.Costs(HandRows.Several, UnitStyle.Us));

    [Theory]
    [InlineData(Verdict.Holds, 14, 9, "\"b\" is best: it holds all 3 nights with 3.00 kg left at the end and inside never below 14.0 °C, and the rig as it is, next, runs short on Fri 15 Jan 07:00, short for 1 h 40 min in all and inside down to 9.0 °C.")]
    [InlineData(Verdict.RunsShort, 9, 9, "Nothing here holds all nights. \"b\" does least badly: gas is short for 50 min in all, against 1 h 40 min with the rig as it is; inside falls to 9.0 °C, against 9.0 °C.")]
    public void The_sentence_says_why_in_the_numbers_of_the_runs(Verdict verdict, double inside_C, double gas_kg, string sentence)
    {
        ComparedRow asItIs = Row(ComparedOption.AsItIs, 0, Verdict.RunsShort, 100, 15, inside_C: 9);
        ComparedRow b = Row("b", 1, verdict, verdict == Verdict.Holds ? 0 : 50, verdict == Verdict.Holds ? null : 16, inside_C: inside_C, gas_kg: gas_kg);
        Assert.Equal(sentence, CompareSentence.Of(HandRows.Of(asItIs, b), UnitStyle.Si));
    }

    [Fact]
    public void The_sentence_is_honest_about_ties_and_small_differences()
    {
        ComparedRow asItIs = Row(ComparedOption.AsItIs, 0);
        Assert.Equal(
            "Both hold, with inside never below 14.0 °C: what was changed makes no difference that counts in these nights.",
            CompareSentence.Of(HandRows.Of(asItIs, Row("b")), UnitStyle.Si));
        Assert.Equal(
            "The rig as it is and \"b\" tie: each holds all 3 nights, with inside never below 14.0 °C, the same to the minute, a tenth of a degree "
            + "and ten grams; so nothing has to be changed.",
            CompareSentence.Of(HandRows.Of(asItIs, Row("b"), Row("c", 2, inside_C: 12)), UnitStyle.Si));
        Assert.Equal(
            "The rig as it is is best: all nights hold with it and with the next, and inside stays at 14.0 °C or above, against 12.0 °C with \"c\".",
            CompareSentence.Of(HandRows.Of(asItIs, Row("c", inside_C: 12)), UnitStyle.Si));
        Assert.Equal(
            "\"c\" is best: all nights hold with it and with the next, inside is as warm, and it takes 8.00 kg of gas, against 9.00 kg with the rig as it is.",
            CompareSentence.Of(HandRows.Of(asItIs, Row("c", gas_kg: 8)), UnitStyle.Si));
        Assert.Equal(
            "Nothing here holds all nights. \"c\" does least badly: gas runs short first on Fri 15 Jan 08:00, with \"b\" on Fri 15 Jan 07:00 already.",
            CompareSentence.Of(HandRows.Of(Row("b", 1, Verdict.RunsShort, 60, 15), Row("c", 2, Verdict.RunsShort, 60, 16)), UnitStyle.Si));
    }

    [Fact]
    public void Where_nothing_holds_that_is_said_first_also_of_what_is_left_as_it_is()
    {
        ComparedRow asItIs = Row(ComparedOption.AsItIs, 0, Verdict.RunsDry, 60, 15, 20, inside_C: null);
        Assert.Equal(
            "Nothing here holds all nights. The rig as it is does least badly: gas is short for 1 h in all, against 2 h with \"b\".",
            CompareSentence.Of(HandRows.Of(asItIs, Row("b", 1, Verdict.RunsDry, 120, 15, 20, inside_C: null)), UnitStyle.Us));
        Assert.Equal(
            "Both fall short alike, for 1 h in all: what was changed makes no difference that counts in these nights.",
            CompareSentence.Of(HandRows.Of(asItIs, Row("b", 1, Verdict.RunsDry, 60, 15, 20, inside_C: null)), UnitStyle.Us));
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
