using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model.Appliances;
using UnitsNet;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.App.Text;

public class WhoDrewTests
{
    // Four minutes: the first burns throughout, the second in the latter half.
    private static RunSeries Four()
    {
        RunSeries series = new(240, gasPlaces: 2);
        for (int i = 1; i <= 4; i++)
        {
            series.Gas_W[0][i] = 1000;
            series.Gas_W[1][i] = i > 2 ? 3000 : 0;
        }

        series.Count = 5;
        return series;
    }

    [Fact]
    public void A_strip_stacks_who_takes_gas_and_names_them_by_letter()
        => Assert.Equal(
            ["4.00 |  BB", "  kW |  BB", "     |  BB", "0.00 |AAAA", "     +----"],
            GasStack.Lines(Four(), [0, 1], 1, 5, 4, 4, UnitStyle.Si, Start).Take(5));

    [Fact]
    public void Fewer_columns_show_means()
        => Assert.Equal(["4.00 | B", "  kW | B", "     | B", "0.00 |AA"], GasStack.Lines(Four(), [0, 1], 1, 5, 2, 4, UnitStyle.Si, Start).Take(4));

    [Fact]
    public void No_gas_at_all_is_an_empty_strip()
        => Assert.Equal("0.00 |", GasStack.Lines(new RunSeries(240) { Count = 5 }, [0], 1, 5, 4, 4, UnitStyle.Si, Start)[0]);

    [Fact]
    public void A_row_for_each_says_mass_and_share()
        => Assert.Equal(
            ["             Gas", "  Appliance   kg Share", "A furnace   1.50  75 % AAAAAAAAAAAAAAAAAA", "B stove     0.50  25 % BBBBBB"],
            WhoDrew.Table(
                [new("furnace", Mass.FromKilograms(1.5), Ratio.FromPercent(75)), new("stove", Mass.FromKilograms(0.5), Ratio.FromPercent(25))], UnitStyle.Si));

    [Fact]
    public void A_run_says_who_drew_what_what_freezes_and_what_to_mind()
    {
        RunReport report = ColdSim.Tests.Model.Rigs.Nights(Everything.Rig, Steady(-14, 30), 1);
        IReadOnlyList<TextSection> sections = RunText.Sections(report, UnitStyle.Us, ["in short"]);
        Assert.Contains(sections, s => s.Title == "Who drew what gas");
        string water = string.Join(' ', sections.Single(s => s.Title == "Water").Lines.Select(l => l.Trim()));
        Assert.Contains("at or below about 20 °F with water where nothing heats it (outside, tank)", water, StringComparison.Ordinal);
        Assert.Contains("Building Research Council", water, StringComparison.Ordinal);
        string cautions = string.Join(' ', sections.Single(s => s.Title == "Cautions").Lines.Select(l => l.Trim()));
        Assert.Contains("carbon monoxide", cautions, StringComparison.Ordinal);
        Assert.Contains("Never heat with the stove", cautions, StringComparison.Ordinal);
        Assert.Contains(sections.Single(s => s.Title == "Events").Lines, l => l.Contains("outside: water begins to freeze", StringComparison.Ordinal));
    }

    [Fact]
    public void The_screen_has_a_page_of_gas_where_there_is_more_than_one_burner()
    {
        RunReport report = ColdSim.Tests.Model.Rigs.Nights(Everything.Rig, Steady(-14, 54), 2);
        GasPage page = Assert.IsType<GasPage>(Assert.Single(GasPage.Of(report, UnitStyle.Us)));
        string[] rows = Rows(page.Draw(80, 24));
        string[] took = [.. report.Nights[0].GasByAppliance.Where(g => g.Gas.Kilograms > 0).Select(g => g.Name)];
        Assert.True(took.Length > 1);

        // A name at the end of a strip, and a row of the table.
        Assert.All(took, name => Assert.Contains(rows, r => r.StartsWith(name, StringComparison.Ordinal)));
        Assert.True(rows.Count(r => r.Contains('┤', StringComparison.Ordinal)) > 1);
        Assert.Contains("Wed 13 Jan", Rows(((GasPage)page.Update(new PageMessage.NextNight(1))).Draw(80, 24))[0], StringComparison.Ordinal);
        Assert.Empty(GasPage.Of(ColdSim.Tests.Model.Rigs.Nights(Heated(), Steady(0, 30), 1), UnitStyle.Us));
        _ = page.Draw(60, 16);
    }

    private static string[] Rows(Sheet sheet)
        => [.. Enumerable.Range(0, sheet.Height).Select(y => string.Concat(Enumerable.Range(0, sheet.Width).Select(x => sheet[x, y].Glyph)))];
}
