using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Commands;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Night;

public class NightPictureTests
{
    private static readonly NightView Second = NightView.Open(SampleRun.Report, UnitStyle.Us).On(1);

    private static Sheet Draw(int width, int rows, NightPicture? picture = null)
    {
        Sheet sheet = new(width, rows);
        (picture ?? Second.Picture).Draw(sheet, PlotArea.Across(width), 0, PictureLayout.For(rows));
        return sheet;
    }

    [Fact]
    public void The_word_of_the_first_failure_is_there_at_every_width_and_height()
    {
        for (int width = 40; width <= 200; width++)
        {
            foreach (int rows in (int[])[4, 6, 9, 14, 22, 30, 45])
                Assert.Contains("GAS SHORT 22:58", Draw(width, rows).ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Rows_are_shared_without_one_too_many()
    {
        for (int rows = 4; rows < 80; rows++)
        {
            PictureLayout layout = PictureLayout.For(rows);
            Assert.Equal(rows - 1, layout.ClockRow);
            Assert.All(layout.StripRows, r => Assert.True(r is 0 or >= 2));
        }
    }

    [Fact]
    public void More_columns_are_more_of_the_plot_and_not_of_the_margins()
        => Assert.Equal(PlotArea.Across(80).Columns + 120, PlotArea.Across(200).Columns);

    [Fact]
    public void In_plain_characters_the_picture_is_of_ascii_and_tells_the_curves_apart()
    {
        Sheet plain = PlainSheet.Of(Draw(80, 20, Tried()));
        string text = plain.ToString();
        Assert.All(text, c => Assert.InRange(c, '\0', '\x7f'));
        foreach (string words in (string[])["*** demand", "- - kept up", "... as it is", "####", "SHORT", "= freezing =", "^GAS SHORT 22:58"])
            Assert.Contains(words, text, StringComparison.Ordinal);
        text.MatchSnapshot();
    }

    [Fact]
    public void Of_a_try_the_run_as_it_is_is_dotted_beside_it() => Draw(120, 30, Tried()).ToString().MatchSnapshot();

    [Fact]
    public void Demand_is_the_mean_of_the_hour_and_a_burner_that_cycles_evenly_is_a_level_line()
    {
        double[] cycles = [.. Enumerable.Range(0, 600).Select(i => i % 20 < 10 ? 8000.0 : 0)];
        double[] means = HourlyMean.Of(cycles, 500);
        Assert.All(means[60..400], m => Assert.InRange(m, 3800, 4200));
        Assert.All(means[500..], m => Assert.True(double.IsNaN(m)));
    }

    [Theory]
    [InlineData(10, 4, 10, false, "⠡")]
    [InlineData(10, 4, 4, true, "⣿")]
    [InlineData(4, 10, 4, false, "⠀")]
    public void A_gap_is_loose_where_more_is_asked_than_can_be_kept_up_and_whole_where_gas_is_short(double demand, double supply, double given, bool isShort, string middle)
    {
        ValueAxis axis = new(0, 12, "x");
        double[] Level(double value) => [.. Enumerable.Repeat(value, 60)];
        Gap gap = new("SHORT", Level(demand), Level(supply), Level(given), _ => isShort);
        Curve curve = new("demand", Level(demand), v => v, axis, Stroke.Line, CellStyle.Demand);
        (DotGrid loose, DotGrid whole) = GapDrawing.Dots(gap, curve, new(0, 20), 6, new(0, 60));
        char glyph = isShort ? whole.Glyph(5, 2) : loose.Glyph(5, 2);
        Assert.Equal(middle == "⠀", glyph == '⠀');
        Assert.Equal(middle == "⣿", glyph == '⣿');
    }

    [Fact]
    public void What_can_be_kept_up_is_drawn_at_its_values_and_straight_between()
    {
        RunReport demo = NightRun.Of(ScenarioReader.Read(Shell.Demo("cold-snap.toml")).Scenario!);
        double[] drawn = NightStrips.Of(demo, UnitStyle.Us)[0].Second!.Samples, all = demo.Series.CanGiveWithoutEnd_W;
        Assert.Equal(demo.Series.Count, drawn.Count(double.IsFinite));
        for (int i = 0; i + 6 < demo.Series.Count; i += 6)
        {
            Assert.Equal(all[i], drawn[i]);
            for (int between = 1; between < 6; between++)
                Assert.Equal(all[i] + (all[i + 6] - all[i]) * between / 6, drawn[i + between], 1e-6);
        }
    }

    // The sample's night with gas that lasts longer, beside it as it is.
    private static NightPicture Tried()
    {
        RunSeries of = SampleRun.Report.Series, s = new((of.Outside_K.Length - 1) * RunSeries.Spacing_s) { Count = of.Count };
        for (int i = 0; i < of.Count; i++)
        {
            (s.Outside_K[i], s.Inside_K[i], s.SetPoint_K[i]) = (of.Outside_K[i], Math.Max(of.Inside_K[i], 288), of.SetPoint_K[i]);
            (s.CanGiveNow_W[i], s.CanGiveWithoutEnd_W[i]) = (of.CanGiveNow_W[i] * 1.2, of.CanGiveWithoutEnd_W[i] * 1.2);
            (s.Asked_W[i], s.Given_W[i], s.Liquid_K[i], s.Propane_kg[i]) = (of.Asked_W[i] * 0.8, of.Given_W[i] * 0.8, of.Liquid_K[i] + 6, of.Propane_kg[i] + 4);
        }

        RunReport tried = SampleRun.Report with { Series = s };
        return Second.Picture with { Report = tried, Strips = NightStrips.Of(tried, UnitStyle.Us, SampleRun.Report) };
    }
}
