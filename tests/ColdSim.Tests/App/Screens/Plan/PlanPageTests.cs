using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Plan;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.App.Commands;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;
using ClockText = ColdSim.App.Text.ClockText;

namespace ColdSim.Tests.App.Screens.Plan;

public class PlanPageTests
{
    private static readonly RunReport Demo = NightRun.Of(ScenarioReader.Read(Shell.Demo("cold-snap.toml")).Scenario!);
    private static readonly IReadOnlyList<NightMargin> Margins = NightMargins.Of(Demo, AmountGrid.Us);

    private static FrameView Open() => Settled(new Opening(Demo, [], TimeProvider.System).Frame(UnitStyle.Us));

    /// <summary>The frame once what its open page works out is there.</summary>
    private static FrameView Settled(FrameView view)
    {
        view = view.Update(new FrameMessage.Resized(80, 24));
        while (view.Jobs[view.Open] is { } running)
            view = view.Update(new FrameMessage.JobEnded(running.Job, new PageMessage.Completed(running.Job.Run(new Progress<int>(), CancellationToken.None))));
        return view;
    }

    private static FrameView After(FrameView view, params PageMessage[] messages)
        => Settled(messages.Aggregate(view, (v, m) => v.Update(new FrameMessage.ToPage(m))));

    private static PlanPage Page(FrameView view) => (PlanPage)view.Pages[0];

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(40, 10)]
    public void The_plan_of_the_demo(int width, int height)
        => FrameSheet.Draw(Open(), width, height).ToString().MatchSnapshot(SnapshotNameExtension.Create($"{width}x{height}"));

    [Fact]
    public void It_opens_on_the_first_night_that_fails()
    {
        Assert.Equal(1, Page(Open()).View.Night);
        Assert.Equal(Demo.Nights[1].FirstFailure!.Value, Page(Open()).View.Time, TimeSpan.FromMinutes(1));
    }

    [Theory]
    [InlineData(40, 10)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 60)]
    public void Every_size_says_first_that_it_fails_and_shows_every_night_with_its_outcome(int width, int height)
    {
        Sheet sheet = FrameSheet.Draw(Open(), width, height);
        Assert.Contains("FAILS", sheet.Row(0), StringComparison.Ordinal);
        Assert.Contains("FAILS", sheet.Row(height >= 15 ? 2 : 1), StringComparison.Ordinal);
        string[] rows = [.. Enumerable.Range(0, height).Select(sheet.Row)];
        foreach (NightReport night in Demo.Nights)
        {
            string row = Assert.Single(rows, r => r[2..].StartsWith(ClockText.NightShort(night), StringComparison.Ordinal));
            Assert.Contains(night.Verdict == Verdict.Holds ? "holds" : "FAILS", row, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_night_that_fails_differs_without_colour()
    {
        Sheet sheet = FrameSheet.Draw(Open(), 80, 24);
        int[] nights = [.. Enumerable.Range(0, 24).Where(y => Demo.Nights.Any(n => sheet.Row(y)[2..].StartsWith(ClockText.NightShort(n), StringComparison.Ordinal)))];
        Assert.Equal(3, nights.Length);
        Assert.Equal([CellStyle.Plain, CellStyle.Strong, CellStyle.Strong], nights.Select(y => sheet[2, y].Style));
        Assert.All(nights[1..], y => Assert.Equal(CellStyle.StrongPointer, sheet[sheet.Row(y).IndexOf("FAILS", StringComparison.Ordinal), y].Style));
        Assert.Equal('>', sheet[0, nights[1]].Glyph);
    }

    [Theory]
    [InlineData(80)]
    [InlineData(100)]
    public void No_text_is_cut_at_eighty_columns(int width)
    {
        string drawn = FrameSheet.Draw(Open(), width, 24).ToString();
        Assert.DoesNotContain("…", drawn, StringComparison.Ordinal);
        Assert.Contains("below freezing about 06:35 and to 29 °F", drawn.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Matches(@"FAILS: gas short 03:44\s+for \d h", drawn);
    }

    [Fact]
    public void What_is_not_known_yet_is_shown_as_dots()
    {
        FrameView view = new Opening(Demo, [], TimeProvider.System).Frame(UnitStyle.Us).Update(new FrameMessage.Resized(80, 24));
        Assert.Equal(3, FrameSheet.Draw(view, 80, 24).ToString().Split('\n').Count(l => l.Contains(" Jan ", StringComparison.Ordinal) && l.Contains('…')));
    }

    [Fact]
    public void A_night_may_be_so_much_colder_and_no_more()
    {
        double colder_K = Margins[0].Colder_K!.Value;
        Assert.Null(Margins[1].Colder_K);
        Assert.Equal(Verdict.Holds, Run(colder_K));
        Assert.NotEqual(Verdict.Holds, Run(colder_K + AmountGrid.Us.WeatherDegree_K));

        static Verdict Run(double colder)
            => NightRun.Of(InputErrors.InWeather(Demo.Scenario, -colder, 1)).Nights[0].Verdict;
    }

    [Fact]
    public void Up_and_down_choose_the_night_and_enter_opens_it_until_esc()
    {
        FrameView view = After(Open(), new PageMessage.Rows(1));
        Assert.Equal(2, Page(view).View.Night);
        Assert.Equal(2, Page(After(view, new PageMessage.Rows(5))).View.Night);
        view = After(view, new PageMessage.Choose());
        Assert.Contains("delivery", FrameSheet.Draw(view, 80, 24).ToString(), StringComparison.Ordinal);
        view = After(view, new PageMessage.ToggleList(), new PageMessage.Close());
        Assert.True(Page(view).IsInNight);
        Assert.False(Page(After(view, new PageMessage.Close())).IsInNight);
    }

    [Fact]
    public void One_key_shows_what_would_make_all_nights_hold()
    {
        FrameView view = After(Open(), new PageMessage.AskRemedies());
        string drawn = FrameSheet.Draw(view, 80, 24).ToString();
        Assert.Contains("> Second full 40 lb cylinder on a changeover: holds", drawn, StringComparison.Ordinal);
        Assert.Contains("FAILS", FrameSheet.Draw(view, 40, 10).ToString(), StringComparison.Ordinal);
        Assert.Contains("Second full 40 lb", FrameSheet.Draw(view, 40, 10).ToString(), StringComparison.Ordinal);
        Assert.Null(Page(After(view, new PageMessage.Close())).Help);
    }

    [Fact]
    public void Esc_does_not_stop_what_is_worked_out_unasked()
    {
        FrameView view = new Opening(Demo, [], TimeProvider.System).Frame(UnitStyle.Us).Update(new FrameMessage.Resized(80, 24));
        RunningJob? before = view.Jobs[0];
        Assert.NotNull(before);
        Assert.Same(before, view.Update(new FrameMessage.ToPage(new PageMessage.Close())).Jobs[0]);
    }

    [Fact]
    public void A_click_chooses_a_night_or_a_time()
    {
        FrameView view = Open();
        Sheet sheet = FrameSheet.Draw(view, 80, 24);
        int third = Enumerable.Range(0, 24).Last(y => sheet.Row(y)[2..].StartsWith("Thu 14 Jan", StringComparison.Ordinal));
        Assert.Equal(new PageMessage.Rows(1), view.Page.Click(5, third - FrameSheet.Rows, 80, 23));
        Assert.IsType<PageMessage.PointAt>(view.Page.Click(40, third + 3, 80, 23));
    }
}
