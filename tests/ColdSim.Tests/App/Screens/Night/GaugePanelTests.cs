using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.App.Screens.Night;

public class GaugePanelTests
{
    private static readonly Lazy<RunReport> Changeover = new(
        () => NightRun.Of(ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "changeover.toml")).Scenario! with { Nights = 1 }));

    private static NightPage Opened(UnitStyle units) => (NightPage)new NightPage(NightView.Open(Changeover.Value, units)).Update(new PageMessage.ToggleGauges());

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void It_shows_what_the_command_shows_at_the_cursor_s_time_in_both_units(bool us)
    {
        UnitStyle units = us ? UnitStyle.Us : UnitStyle.Si;
        NightPage page = Opened(units);
        ExpectedReadings expected = ExpectedReadings.Of(Changeover.Value, page.View.Time, null);
        string[] drawn = page.Draw(80, 30).ToString().Split('\n');
        Assert.All(ExpectedTable.Lines(expected.Chosen, expected, units), line => Assert.Contains(line, drawn.Select(d => d.TrimEnd())));
        ExpectedCylinder other = Assert.Single(expected.Cylinders, c => c.Place != expected.Chosen.Place);
        Assert.Contains(ExpectedTable.Brief(other, units), drawn.Select(d => d.TrimEnd()));
    }

    [Fact]
    public void It_follows_the_cursor_and_stays_open_on_the_way()
    {
        NightPage page = Opened(UnitStyle.Us), later = (NightPage)page.Update(new PageMessage.Step(-120));
        Assert.Equal(NightPanel.Gauges, later.View.Panel);
        Assert.Equal(page.View.Minute - 120, later.View.Minute);
        Assert.NotEqual(page.Draw(80, 30).ToString(), later.Draw(80, 30).ToString());
    }

    [Fact]
    public void The_same_key_and_Esc_go_back_to_the_curves()
    {
        FrameView frame = new([new NightPage(NightView.Open(Changeover.Value, UnitStyle.Us)), new FakePage('2', "two")], UnitStyle.Us) { Report = Changeover.Value };
        Assert.False(Opened(UnitStyle.Us).IsAtRest);
        Assert.Equal(NightPanel.Curves, ((NightPage)Opened(UnitStyle.Us).Update(new PageMessage.ToggleGauges())).View.Panel);
        FrameView open = Pressed(frame, new Key('g'));
        Assert.Equal(NightPanel.Gauges, ((NightPage)open.Page).View.Panel);
        Assert.Equal(NightPanel.Curves, ((NightPage)Pressed(open, Key.Esc).Page).View.Panel);
    }

    [Fact]
    public void On_a_small_screen_the_scale_and_the_level_are_left()
    {
        string drawn = Opened(UnitStyle.Us).Draw(Sheet.MinWidth, Sheet.MinHeight).ToString();
        Assert.Contains("scale, cylinder and all, lb", drawn, StringComparison.Ordinal);
        Assert.Contains("level, % of the height", drawn, StringComparison.Ordinal);
        Assert.Contains("more on a taller screen", drawn, StringComparison.Ordinal);
    }

    private static FrameView Pressed(FrameView view, Key key) => PageKeys.Frame(key, view) is { } message ? view.Update(message) : view;
}
