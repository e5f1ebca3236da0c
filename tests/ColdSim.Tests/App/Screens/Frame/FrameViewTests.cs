using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.App.Screens.Frame;

public class FrameViewTests
{
    private static readonly PageJob Job = new("counting", (_, _) => "three");

    private static FrameView View(PageJob? work = null, bool text = false) => new(
        [
            new FakePage('1', "one") { Cursor = new(2, 77, DateTimeOffset.UnixEpoch) },
            new FakePage('2', "two", work, text),
            new FakePage('6', "six"),
        ],
        UnitStyle.Us);

    private static FrameMessage.ToPage Ask(PageMessage message) => new(message);

    private static IReadOnlyList<PageMessage> Heard(FrameView view, int page) => ((FakePage)view.Pages[page]).Heard;

    [Fact]
    public void A_digit_opens_its_page_and_sends_it_the_time_cursor()
    {
        FrameView view = View().Update(new FrameMessage.GoTo('6'));
        Assert.Equal(2, view.Open);
        Assert.Equal(77, Assert.IsType<PageMessage.Opened>(Assert.Single(Heard(view, 2))).At!.Minute);
    }

    [Fact]
    public void A_digit_without_a_page_does_nothing() => Assert.Equal(0, View().Update(new FrameMessage.GoTo('4')).Open);

    [Fact]
    public void Only_the_open_page_hears_a_key_and_keeps_what_it_was()
    {
        FrameView view = View().Update(Ask(new PageMessage.Rows(1))).Update(new FrameMessage.GoTo('2')).Update(Ask(new PageMessage.Rows(2))).Update(new FrameMessage.GoTo('1'));
        Assert.Equal([new PageMessage.Rows(1)], Heard(view, 0).Where(m => m is PageMessage.Rows));
        Assert.Equal([new PageMessage.Rows(2)], Heard(view, 1).Where(m => m is PageMessage.Rows));
    }

    [Fact]
    public void Units_are_those_of_every_page()
    {
        FrameView view = View().Update(Ask(new PageMessage.ToggleUnits()));
        Assert.False(view.Units.IsUs);
        Assert.All(Enumerable.Range(0, 3), i => Assert.False(Assert.IsType<PageMessage.UnitsChanged>(Assert.Single(Heard(view, i))).Units.IsUs));
    }

    [Fact]
    public void A_job_starts_when_its_page_opens_and_goes_on_behind_another()
    {
        FrameView view = View(Job);
        Assert.All(view.Update(Ask(new PageMessage.First())).Jobs, Assert.Null);
        view = view.Update(new FrameMessage.GoTo('2'));
        Assert.Same(Job, view.BlockingJob!.Job);
        view = view.Update(new FrameMessage.JobProgressed(Job, 3, 4)).Update(new FrameMessage.GoTo('1'));
        Assert.Null(view.BlockingJob);
        Assert.Equal("3 runs done, 4 s", view.Jobs[1]!.Progress);
        Assert.StartsWith("[1 one] 2 two…  6 six", FrameSheet.Draw(view, 80, 24).Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_worked_out_comes_to_its_page_even_if_another_is_open()
    {
        FrameView view = View(Job).Update(new FrameMessage.GoTo('2')).Update(new FrameMessage.GoTo('1'))
            .Update(new FrameMessage.JobEnded(Job, new PageMessage.Completed("three")));
        Assert.Equal(new PageMessage.Completed("three"), Heard(view, 1)[^1]);
        Assert.All(view.Jobs, Assert.Null);
    }

    [Fact]
    public void Esc_cancels_the_job_of_the_open_page_and_of_no_other()
    {
        FrameView away = View(Job).Update(new FrameMessage.GoTo('2')).Update(new FrameMessage.GoTo('1')).Update(Ask(new PageMessage.Close()));
        Assert.NotNull(away.Jobs[1]);
        FrameView back = away.Update(new FrameMessage.GoTo('2')).Update(Ask(new PageMessage.Close()));
        Assert.IsType<PageMessage.Cancelled>(Heard(back, 1)[^1]);
        Assert.Null(back.Jobs[1]);
        Assert.Equal(Heard(back, 1), Heard(back.Update(new FrameMessage.JobEnded(Job, new PageMessage.Completed("late"))), 1));
    }

    [Theory]
    [InlineData("1234567", "", "1-7")]
    [InlineData("12345679", "", "1-7 9")]
    [InlineData("12345679", "F", "F1-F7 F9")]
    [InlineData("126", "", "1-2 6")]
    public void The_keys_shown_are_those_of_the_pages_there_are(string keys, string before, string shown)
        => Assert.Equal(shown, FrameSheet.PageNumbers([.. keys.Select(k => new FakePage(k, "page"))], before));

    [Fact]
    public void A_small_terminal_shows_the_size_that_is_needed()
        => Assert.Equal("terminal too small\nnow 60x16, needs 60x17\nq quits", FrameSheet.Draw(View(), 60, 16).ToString().TrimEnd());

    [Fact]
    public void A_running_job_is_shown_with_its_progress()
    {
        PageJob work = new("counting to nine", (_, _) => 9) { StepCount = 9 };
        string text = FrameSheet.Draw(View(work).Update(new FrameMessage.GoTo('2')).Update(new FrameMessage.JobProgressed(work, 4, 2)), 80, 24).ToString();
        Assert.Contains("counting to nine", text, StringComparison.Ordinal);
        Assert.Contains("4 of 9 runs done, 2 s", text, StringComparison.Ordinal);
        Assert.Contains("Esc stop", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_runs_on_another_thread_and_keys_are_answered_meanwhile()
    {
        using ManualResetEventSlim go = new();
        PageJob work = new("waiting", (finished, cancel) =>
        {
            finished.Report(1);
            go.Wait(cancel);
            return "there";
        });
        using ScreenHost host = new(View(work));
        host.Press(new Key('2'));
        Assert.Contains("waiting", host.Text, StringComparison.Ordinal);
        host.Press(new Key('6'));
        Assert.Contains("page 6", host.Text, StringComparison.Ordinal);
        go.Set();
        Assert.True(host.Soon(() => Heard(host.Screen.View, 1).Any(m => m is PageMessage.Completed { Result: "there" })));
    }

    [Fact]
    public void Esc_asks_the_thread_to_stop()
    {
        using ManualResetEventSlim stopped = new();
        PageJob work = new("waiting", (_, cancel) =>
        {
            cancel.WaitHandle.WaitOne();
            stopped.Set();
            cancel.ThrowIfCancellationRequested();
            return "never";
        });
        using ScreenHost host = new(View(work));
        host.Press(new Key('2'), Key.Esc);
        Assert.True(stopped.Wait(TimeSpan.FromSeconds(10)));
        Assert.Null(host.Screen.View.Jobs[1]);
    }

    [Fact]
    public void A_failed_job_is_reported_to_its_page()
    {
        PageJob work = new("failing", (_, _) => throw new InvalidOperationException("no luck"));
        using ScreenHost host = new(View(work));
        host.Press(new Key('2'));
        Assert.True(host.Soon(() => Heard(host.Screen.View, 1).Contains(new PageMessage.Failed("no luck"))));
    }
}
