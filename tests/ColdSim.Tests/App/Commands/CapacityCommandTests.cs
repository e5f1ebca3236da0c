using System.Text.Json;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class CapacityCommandTests
{
    [Fact]
    public void The_table_says_for_how_long_in_its_title_and_sentence()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("capacity", "20 lb"));
        Assert.Matches("At 0 °F a 20 lb cylinder 40 % full gives [0-9,]+ BTU/h for 4 h; full, [0-9,]+\\.", shell.Out);
        Assert.Contains("BTU/h for 4 h, by air and fill.", shell.Out, StringComparison.Ordinal);
        Assert.Matches("If the regulator gives nothing below 5.0 psi, its minimum inlet: [0-9,]+\\.", shell.Out.Replace('\n', ' '));
        Assert.Contains("Caution: ", shell.Out, StringComparison.Ordinal);
        Assert.Equal("", shell.Error);
    }

    [Fact]
    public void With_one_fill_the_times_are_beside_each_other()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("capacity", "20 lb", "--fill", "30%"));
        Assert.Contains("1 h      4 h", shell.Out, StringComparison.Ordinal);
        Assert.Contains("night   without end", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_size_by_the_kilogram_is_answered_in_metric_units_unless_others_are_given()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("capacity", "11 kg", "--low", "-5C,-15C", "--for", "night"));
        Assert.Contains("At -15 °C an 11 kg cylinder", shell.Out, StringComparison.Ordinal);
        Assert.Contains("kW for the night", shell.Out, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run("capacity", "11 kg", "--low", "-5C", "--units", "us"));
        Assert.Contains("At 23 °F an 11 kg cylinder", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_are_said_together()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("capacity", "21 lb", "--low", "7", "--fill", "30 stone", "--wind", "fast", "--for", "soon"));
        foreach (string name in (string[])["CYLINDER", "--low", "--wind", "--for"])
            Assert.Contains($"coldsim: {name}: ", shell.Error, StringComparison.Ordinal);
        Assert.Contains("See 'coldsim capacity --help'.", shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Theory]
    [InlineData("--fill", "30 stone", "neither a part of a full one")]
    [InlineData("--fill", "0.5 %", "must be 1 % or more")]
    [InlineData("--fill", "25 lb", "no more than full, 20.0 lb (9.07 kg)")]
    [InlineData("--low", "-90C", "must be -60 to 40 °C")]
    [InlineData("--for", "1 min", "must be 15 min to 48 h")]
    [InlineData("--for", "1h,4h", "several times go with one --fill")]
    public void What_is_out_of_range_is_refused_with_what_is_accepted(string option, string value, string said)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("capacity", "20 lb", option, value));
        Assert.Contains(said, shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_keys_of_its_figures_in_si_units_whatever_the_units()
    {
        Shell us = new(), si = new();
        Assert.Equal(0, us.Run("capacity", "20 lb", "--low", "0F", "--fill", "40%", "--json"));
        Assert.Equal(0, si.Run("capacity", "20 lb", "--low", "0F", "--fill", "40%", "--json", "--units", "si"));
        Assert.Equal(us.Out, si.Out);
        using JsonDocument json = JsonDocument.Parse(us.Out);
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(json.RootElement, "", written);
        ResultsTests.AssertKeys("capacity", written);
        JsonElement[] cells = [.. json.RootElement.GetProperty("capacities").EnumerateArray()];
        Assert.Equal(["span", "span", "span", "night", "without_end"], cells.Select(c => c.GetProperty("time").GetString()));
        Assert.Equal([3600, 14400, 28800, 54000], cells.SkipLast(1).Select(c => c.GetProperty("time_s").GetInt32()));
        Assert.Equal(JsonValueKind.Null, cells[^1].GetProperty("time_s").ValueKind);
    }

    [Fact]
    public void What_is_printed_is_rounded_down_so_that_it_is_fed()
    {
        Shell text = new(), json = new();
        Assert.Equal(0, text.Run("capacity", "20 lb", "--low", "0F", "--fill", "40%", "--for", "4h"));
        Assert.Equal(0, json.Run("capacity", "20 lb", "--low", "0F", "--fill", "40%", "--for", "4h", "--json"));
        using JsonDocument document = JsonDocument.Parse(json.Out);
        double run_Btu_h = document.RootElement.GetProperty("capacities")[0].GetProperty("capacity_w").GetDouble() / ColdSim.Physics.Units.ConversionFactors.BtuPerHour_W;
        string printed = text.Out.Split(" BTU/h")[0].Split(' ')[^1].Replace(",", "", StringComparison.Ordinal);
        double told_Btu_h = double.Parse(printed, System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(told_Btu_h, run_Btu_h - 1000, run_Btu_h);
    }

    [Fact]
    public void The_full_text_says_what_the_time_means_and_what_is_assumed()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("capacity", "20 lb", "--fill", "full", "--low", "0F", "--full"));
        string text = string.Join(' ', shell.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (string said in (string[])["Each draw was run for its time", "Without end, the heat that flows in balances the draw", "from 16:00 to 07:00", "Assumed", "Liquid at the end"])
            Assert.Contains(said, text, StringComparison.Ordinal);
        Assert.All(shell.Out.Split('\n'), l => Assert.InRange(l.Length, 0, 80));
    }
}
