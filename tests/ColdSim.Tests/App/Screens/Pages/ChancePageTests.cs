using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Planning.Ensemble;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Pages;

public class ChancePageTests
{
    private static readonly ChanceReport Hundred = Made(100, 100);

    private static readonly ChanceReport Some = Made(37, 100);

    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 40 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_chance_looks_like_this(int width, int height)
    {
        IPage page = Loaded(Opened.Update(new PageMessage.Opened(new(1, 26 * 60, SampleRun.Start.AddHours(26)))));
        Snapshot.Match(page.Draw(width, height - FrameSheet.Rows).ToString(), SnapshotNameExtension.Create(width, height));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_part_of_the_members_looks_like_this_in_metric_units(int width, int height)
        => Snapshot.Match(
            Opened.Update(new PageMessage.Completed(Some)).Update(new PageMessage.UnitsChanged(UnitStyle.Si)).Draw(width, height - FrameSheet.Rows).ToString(),
            SnapshotNameExtension.Create(width, height));

    [Fact]
    public void The_help_looks_like_this()
    {
        FrameView view = new([Opened], UnitStyle.Us);
        Snapshot.Match(FrameSheet.Draw(view.Update(new FrameMessage.Help()), 80, 24).ToString());
    }

    [Fact]
    public void A_hundred_members_are_asked_for_first_and_enter_asks_for_four_times_as_many()
    {
        Assert.Equal(100, Opened.DueJob!.StepCount);
        ChancePage more = (ChancePage)Loaded(Opened).Update(new PageMessage.Choose());
        Assert.Equal(400, more.DueJob!.StepCount);
        Assert.Equal(400, ((ChancePage)Loaded(more)).Chance.Value!.Done);
    }

    [Fact]
    public void A_part_is_marked_as_such_and_enter_asks_for_all()
    {
        IPage part = Opened.Update(new PageMessage.Completed(Some));
        string text = part.Draw(80, 23).ToString();
        Assert.Contains("only 37 of 100 members", text, StringComparison.Ordinal);
        Assert.Contains("Interrupted after 37 of 100 members", text, StringComparison.Ordinal);
        Assert.Equal(100, part.Update(new PageMessage.Choose()).DueJob!.StepCount);
    }

    [Fact]
    public void A_result_is_kept_when_a_larger_ensemble_is_cancelled()
    {
        IPage more = Loaded(Opened).Update(new PageMessage.Choose());
        foreach (PageMessage end in (PageMessage[])[new PageMessage.Cancelled(), new PageMessage.Failed("no luck"), new PageMessage.Completed(Some)])
        {
            ChancePage after = (ChancePage)more.Update(end);
            Assert.Null(after.DueJob);
            Assert.Equal(100, after.Chance.Value!.Done);
        }
    }

    [Fact]
    public void Esc_gives_the_part_that_is_done()
    {
        using ManualResetEventSlim begun = new();
        PageJob slow = new(
            "running members",
            (_, cancel) =>
            {
                begun.Set();
                cancel.WaitHandle.WaitOne();
                return Some;
            })
        {
            ReturnsPartial = true,
        };
        using ScreenHost host = new(new FrameView([new FakePage('1', "one"), Opened with { Chance = new(slow) }], UnitStyle.Us));
        host.Press(new Terminal.Gui.Input.Key('7'));
        Assert.True(begun.Wait(TimeSpan.FromSeconds(10)));
        Assert.Contains("Esc stop and show what is done", host.Text, StringComparison.Ordinal);
        host.Press(Terminal.Gui.Input.Key.Esc);
        Assert.True(host.Soon(() => host.Text.Contains("only 37 of 100 members", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_ensemble_stopped_before_the_first_member_says_so()
    {
        IPage stopped = Opened.Update(new PageMessage.Cancelled());
        Assert.Contains("Enter starts it again", stopped.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Same(Opened.Chance.Job, Opened.DueJob);
        Assert.NotNull(stopped.Update(new PageMessage.Choose()).DueJob);
    }

    [Fact]
    public void A_job_runs_as_many_members_as_it_says()
    {
        ColdSim.Planning.Nights.RunReport demo = ColdSim.Tests.Planning.Explain.Explained.Demo.Report;
        using CancellationTokenSource soon = new();
        PageJob job = ChancePage.Of(demo, UnitStyle.Us).DueJob!;
        ChanceReport chance = Assert.IsType<ChanceReport>(job.Run(new Stopping(soon), soon.Token));
        Assert.Equal(job.StepCount, chance.Asked);
        Assert.InRange(chance.Done, 1, 99);
    }

    /// <summary>Cancels the members once one of them is done.</summary>
    private sealed class Stopping(CancellationTokenSource source) : IProgress<int>
    {
        public void Report(int value) => source.Cancel();
    }

    [Fact]
    public void The_cursor_goes_by_hours_and_nights_and_its_night_is_marked()
    {
        ChancePage page = (ChancePage)Loaded(Opened);
        Assert.Equal(180, At(page.Update(new PageMessage.Step(10))));
        Assert.Equal(60, At(page.Update(new PageMessage.Step(1))));
        Assert.Equal(24 * 60, At(page.Update(new PageMessage.Rows(1))));
        Assert.Equal(0, At(page.Update(new PageMessage.NextNight(-1))));
        IPage last = page.Update(new PageMessage.Last());
        Assert.Equal(2, ((ChancePage)last).Night);
        Assert.Contains(">Sat 17 Jan", last.Draw(80, 23).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_click_into_the_strips_puts_the_cursor_there()
    {
        IPage page = Loaded(Opened);
        PageMessage.PointAt point = Assert.IsType<PageMessage.PointAt>(page.Click(PlotArea.LeftMargin + 28, 16, 80, 23));
        Assert.InRange(point.Minute, 30 * 60, 37 * 60);
        Assert.Null(page.Click(3, 16, 80, 23));
        Assert.Null(page.Click(40, 3, 80, 23));
    }

    [Fact]
    public void Without_a_coach_only_propane_is_drawn()
    {
        ChanceReport bare = Hundred with { Fan = [.. Hundred.Fan.Select(p => p with { Inside_K = null })] };
        string text = Opened.Update(new PageMessage.Completed(bare)).Draw(80, 23).ToString();
        Assert.Contains("left", text, StringComparison.Ordinal);
        Assert.DoesNotContain("inside", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_can_be_drawn_at_any_size_in_any_state()
    {
        IPage loaded = Loaded(Opened);
        foreach (IPage state in (IPage[])
        [
            Opened, loaded, loaded.Update(new PageMessage.ToggleList()), Opened.Update(new PageMessage.Completed(Some)),
            Opened.Update(new PageMessage.Completed(Hundred with { Fan = [], Influences = [] })), Opened.Update(new PageMessage.Failed("why")),
        ])
        {
            foreach (int height in (int[])[0, 1, 5, 16, 20, 23, 39, 60])
            {
                foreach (int width in (int[])[0, 1, 59, 60, 80, 120, 200])
                    Assert.Equal(height, state.Draw(width, height).Height);
            }
        }
    }

    [Fact]
    public void Help_fits_the_least_width() => Assert.All(Opened.Help, l => Assert.InRange(l.Length, 0, FrameSheet.MinWidth));

    [Fact]
    public void A_fan_is_drawn_on_straight_lines_between_its_points()
    {
        FanPoint[] fan = [new(0, null, new(1, 2, 3)), new(3600, null, new(2, 3, 4)), new(7200, null, new(2, 5, 4))];
        double[] half = ChanceSheet.FanEdge(fan, p => p.Left_kg.Median, 200);
        Assert.Equal(2, half[0]);
        Assert.Equal(2.5, half[30], 9);
        Assert.Equal(4, half[90], 9);
        Assert.Equal(5, half[120]);
        Assert.True(double.IsNaN(half[121]));
        Assert.All(ChanceSheet.FanEdge(fan, p => p.Inside_K?.Median, 200), v => Assert.True(double.IsNaN(v)));
    }

    [Fact]
    public void A_band_has_dots_between_its_edges_and_nowhere_else()
    {
        double[] low = [.. Enumerable.Repeat(4.0, 60)], high = [.. Enumerable.Repeat(6.0, 60)];
        ValueAxis axis = new(0, 10, "lb");
        DotGrid grid = new(10, 10);
        StrokeDrawing.DrawCurve(grid, new Curve("band", high, v => v, axis, Stroke.Band, CellStyle.GasLeft) { Lower = low }.Columns(new(0, 60), grid.Columns), axis, Stroke.Band);
        for (int row = 0; row < 10; row++)
            Assert.Equal(row is 4 or 5, grid.IsSet(3, row));
    }

    private static ChancePage Opened { get; } = ChancePage.Of(SampleRun.Report, UnitStyle.Us);

    private static int At(IPage page) => ((ChancePage)page).Minute;

    /// <summary>The page with as many invented members as it wants.</summary>
    private static IPage Loaded(IPage page)
    {
        while (page.DueJob is { } job)
            page = page.Update(new PageMessage.Completed(Made(job.StepCount!.Value, job.StepCount.Value)));
        return page;
    }

    // The sample's curves with a spread that grows with time, as invented as they are.
    private static ChanceReport Made(int done, int asked)
    {
        RunSeries series = SampleRun.Report.Series;
        return HandChances.Report with
        {
            Scenario = SampleRun.Report.Scenario,
            Asked = asked,
            Done = done,
            AllNights = new(done / 3, done),
            Nights =
            [
                new(SampleRun.Report.Nights[0], new(done, done), new(8.9, 9.4, 9.8)),
                new(SampleRun.Report.Nights[1], new(done / 2, done), new(4.1, 5.2, 6)),
                new(SampleRun.Report.Nights[2], new(done / 3, done), new(0, 1.1, 2.4)),
            ],
            Dry = new(SampleRun.Start.AddHours(57.5), null, null),
            RunsDry = new(done / 8, done),
            Options = [],
            Fan = [.. Enumerable.Range(0, series.Count / 60).Select(h => Point(series, h))],
        };
    }

    private static FanPoint Point(RunSeries series, int hour)
    {
        (double left, double inside, double off) = (series.Propane_kg[hour * 60], series.Inside_K[hour * 60], Math.Sqrt(hour / 60.0));
        return new(hour * 3600.0, new(inside - 3 * off, inside, inside + off), new(Math.Max(0, left - 2 * off), left, left + 2 * off));
    }
}
