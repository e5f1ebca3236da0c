using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Snapshooter;
using Snapshooter.Xunit;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.App.Screens.Pages;

public class PowerPageTests
{
    private static readonly Lazy<RunReport> Story = new(() => NightRun.Of(
        ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "battery-first.toml")).Scenario!));

    private static IPage Page(UnitStyle units) => Assert.Single(PowerPage.Of(Story.Value, units));

    private static FrameView Frame(UnitStyle units) => new([Page(units).Update(new PageMessage.NextNight(1))], units);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_night_that_runs_flat_looks_like_this(int width, int height)
        => Snapshot.Match(FrameSheet.Draw(Frame(UnitStyle.Us), width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Theory]
    [InlineData(60, 17)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Every_figure_is_shown_whole_at_the_usual_sizes_in_both_units(int width, int height)
    {
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            string text = FrameSheet.Draw(Frame(units), width, height).ToString();
            foreach (string words in (string[])["> Wed 13 Jan flat", "the battery goes flat on ", "Charge: lowest ", "Voltage: gone from ", "generator 0 Wh.", "furnace fan", "blankets", "boards and detectors", "lights", "9 pages"])
                Assert.Contains(words, text, StringComparison.Ordinal);
            Assert.DoesNotContain("…", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_rig_without_a_battery_has_no_such_page() => Assert.Empty(PowerPage.Of(SampleRun.Report, UnitStyle.Us));

    [Fact]
    public void The_page_opens_in_the_night_of_the_cursor_and_stays_within_the_run()
    {
        PowerPage page = (PowerPage)Page(UnitStyle.Us).Update(new PageMessage.Opened(new(1, 0, Story.Value.Scenario.Start)));
        Assert.Equal(1, page.Night);
        Assert.Equal(1, ((PowerPage)page.Update(new PageMessage.NextNight(1))).Night);
        Assert.Equal(0, ((PowerPage)page.Update(new PageMessage.Rows(-1)).Update(new PageMessage.NextNight(-1))).Night);
    }

    [Fact]
    public void Each_night_has_what_was_drawn_the_lowest_charge_and_how_long_voltage_was_gone()
    {
        IReadOnlyList<string> lines = PowerSheet.Nights([Drew(100, 0, 100), Drew(50, 0, 0)], 1, 0, 2);
        Assert.Equal(3, lines.Count);
        Assert.Matches(@"^  \S.* 200 +\d+ %", lines[1]);
        Assert.Matches(@"^> \S.* 50 +\d+ %", lines[2]);
        Assert.Equal(lines[2], PowerSheet.Nights([Drew(100, 0, 100), Drew(50, 0, 0)], 1, 1, 1)[1]);
    }

    [Fact]
    public void What_came_in_and_how_long_the_generator_ran_is_reported()
    {
        NightReport night = Drew(100, 0, 0);
        night = night with { Power = night.Power! with { Generator = Energy.FromWattHours(1500), GeneratorTime = Duration.FromHours(2) } };
        Assert.Equal("Given: solar 0 Wh, shore 0 Wh, generator 1500 Wh in 2 h.", PowerSheet.Words(night)[^1]);
    }

    [Fact]
    public void Everything_can_be_drawn_at_any_size()
    {
        foreach (int height in (int[])[0, 1, 2, 5, 12, 16, 23, 60])
        {
            foreach (int width in (int[])[0, 1, 20, 59, 80, 200])
                Assert.Equal(height, Page(UnitStyle.Us).Draw(width, height).Height);
        }
    }

    private static NightReport Drew(params double[] drawn_Wh)
    {
        NightReport night = Story.Value.Nights[0];
        return night with { Power = night.Power! with { Drawn = [.. drawn_Wh.Select((d, i) => new NightDraw($"load {i}", Energy.FromWattHours(d)))] } };
    }
}
