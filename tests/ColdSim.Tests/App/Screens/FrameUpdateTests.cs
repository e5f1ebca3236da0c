using ColdSim.App.Screens;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.App.Screens;

public class FrameUpdateTests
{
    private static readonly PageWork Work = new("counting", (_, _) => "three");

    private static FrameView View(PageWork? work = null, bool text = false) => new(
        [
            new FakePage('1', "one") { Cursor = new(2, 77, DateTimeOffset.UnixEpoch) },
            new FakePage('2', "two", work, text),
            new FakePage('6', "six"),
        ],
        UnitStyle.Us);

    private static FrameMessage.Ask Ask(PageMessage message) => new(message);

    private static IReadOnlyList<PageMessage> Heard(FrameView view, int page) => ((FakePage)view.Pages[page]).Heard;

    [Fact]
    public void A_digit_turns_to_its_page_and_hands_it_the_cursors_time()
    {
        FrameView view = View().After(new FrameMessage.GoTo('6'));
        Assert.Equal(2, view.Open);
        Assert.Equal(77, Assert.IsType<PageMessage.Opened>(Assert.Single(Heard(view, 2))).At!.Minute);
    }

    [Fact]
    public void A_digit_without_a_page_does_nothing() => Assert.Equal(0, View().After(new FrameMessage.GoTo('4')).Open);

    [Fact]
    public void Only_the_open_page_hears_a_key_and_keeps_what_it_was()
    {
        FrameView view = View().After(Ask(new PageMessage.Rows(1))).After(new FrameMessage.GoTo('2')).After(Ask(new PageMessage.Rows(2))).After(new FrameMessage.GoTo('1'));
        Assert.Equal([new PageMessage.Rows(1)], Heard(view, 0).Where(m => m is PageMessage.Rows));
        Assert.Equal([new PageMessage.Rows(2)], Heard(view, 1).Where(m => m is PageMessage.Rows));
    }

    [Fact]
    public void Units_are_those_of_every_page()
    {
        FrameView view = View().After(Ask(new PageMessage.OtherUnits()));
        Assert.False(view.Units.IsUs);
        Assert.All(Enumerable.Range(0, 3), i => Assert.False(Assert.IsType<PageMessage.UnitsAre>(Assert.Single(Heard(view, i))).Units.IsUs));
    }

    [Fact]
    public void Work_begins_when_its_page_opens_and_goes_on_behind_another()
    {
        FrameView view = View(Work);
        Assert.All(view.After(Ask(new PageMessage.First())).Jobs, Assert.Null);
        view = view.After(new FrameMessage.GoTo('2'));
        Assert.Same(Work, view.Waiting!.Work);
        view = view.After(new FrameMessage.Counted(Work, 3, 4)).After(new FrameMessage.GoTo('1'));
        Assert.Null(view.Waiting);
        Assert.Equal("3 runs done, 4 s", view.Jobs[1]!.Progress);
        Assert.StartsWith("[1 one] 2 two…  6 six", FrameSheet.Draw(view, 80, 24).Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_worked_out_comes_to_its_page_even_if_another_is_open()
    {
        FrameView view = View(Work).After(new FrameMessage.GoTo('2')).After(new FrameMessage.GoTo('1'))
            .After(new FrameMessage.Ended(Work, new PageMessage.Done("three")));
        Assert.Equal(new PageMessage.Done("three"), Heard(view, 1)[^1]);
        Assert.All(view.Jobs, Assert.Null);
    }

    [Fact]
    public void Esc_stops_the_work_of_the_open_page_and_of_no_other()
    {
        FrameView away = View(Work).After(new FrameMessage.GoTo('2')).After(new FrameMessage.GoTo('1')).After(Ask(new PageMessage.Close()));
        Assert.NotNull(away.Jobs[1]);
        FrameView back = away.After(new FrameMessage.GoTo('2')).After(Ask(new PageMessage.Close()));
        Assert.IsType<PageMessage.Stopped>(Heard(back, 1)[^1]);
        Assert.Null(back.Jobs[1]);
        Assert.Equal(Heard(back, 1), Heard(back.After(new FrameMessage.Ended(Work, new PageMessage.Done("late"))), 1));
    }

    [Fact]
    public void Help_is_the_pages_own_and_what_works_everywhere()
    {
        FrameView help = View().After(Ask(new PageMessage.Turn(OpenPage.Help)));
        string text = FrameSheet.Draw(help, 80, 24).ToString();
        Assert.Contains("FAKE", text, StringComparison.Ordinal);
        Assert.Contains("EVERY PAGE", text, StringComparison.Ordinal);
        Assert.Empty(Heard(help.After(Ask(new PageMessage.Rows(1))), 0));
        Assert.Null(help.After(Ask(new PageMessage.Close())).HelpRow);
        Assert.All(FrameHelp.Everywhere(View().Pages), l => Assert.InRange(l.Length, 0, FrameSheet.LeastWidth));
    }

    [Theory]
    [InlineData("1234567", "", "1-7")]
    [InlineData("12345679", "", "1-7 9")]
    [InlineData("12345679", "F", "F1-F7 F9")]
    [InlineData("126", "", "1-2 6")]
    public void The_keys_shown_are_those_of_the_pages_there_are(string keys, string before, string told)
        => Assert.Equal(told, PageNumbers.Of([.. keys.Select(k => new FakePage(k, "page"))], before));

    [Fact]
    public void A_small_terminal_shows_that_it_is_too_small()
        => Assert.Equal("terminal too small\nnow 60x16, needs 60x17\nq quits", FrameSheet.Draw(View(), 60, 16).ToString().TrimEnd());

    [Fact]
    public void The_working_page_says_what_and_how_far()
    {
        PageWork work = new("counting to nine", (_, _) => 9) { Of = 9 };
        string text = FrameSheet.Draw(View(work).After(new FrameMessage.GoTo('2')).After(new FrameMessage.Counted(work, 4, 2)), 80, 24).ToString();
        Assert.Contains("counting to nine", text, StringComparison.Ordinal);
        Assert.Contains("4 of 9 runs done, 2 s", text, StringComparison.Ordinal);
        Assert.Contains("Esc stop", text, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_page_that_takes_text_letters_and_digits_are_text()
    {
        Assert.Equal(new FrameMessage.GoTo('3'), PageKeys.Frame(new Key('3'), text: false));
        Assert.Equal(new FrameMessage.GoTo('3'), PageKeys.Frame(Key.F3, text: true));
        Assert.Equal(Ask(new PageMessage.Typed(new('3'))), PageKeys.Frame(new Key('3'), text: true));
        Assert.Equal(Ask(new PageMessage.Typed(new('q'))), PageKeys.Frame(Key.Q, text: true));
        Assert.Equal(Ask(new PageMessage.Erase()), PageKeys.Frame(Key.Backspace, text: true));
        Assert.False(PageKeys.Quits(Key.Q, text: true));
        Assert.True(PageKeys.Quits(Key.Q.WithCtrl, text: true));
        Assert.True(PageKeys.Quits(Key.C.WithCtrl, text: true));
    }

    [Fact]
    public void Work_runs_on_another_thread_and_keys_are_answered_meanwhile()
    {
        using ManualResetEventSlim go = new();
        PageWork work = new("waiting", (finished, cancel) =>
        {
            finished.Report(1);
            go.Wait(cancel);
            return "there";
        });
        using ScreenHost host = new(View(work));
        host.Press(new Key('2'));
        Assert.Contains("waiting", host.Text, StringComparison.Ordinal);
        host.Press(Key.F6);
        Assert.Contains("page 6", host.Text, StringComparison.Ordinal);
        go.Set();
        Assert.True(host.Soon(() => Heard(host.Screen.View, 1).Any(m => m is PageMessage.Done { Figures: "there" })));
    }

    [Fact]
    public void Esc_asks_the_thread_to_stop()
    {
        using ManualResetEventSlim stopped = new();
        PageWork work = new("waiting", (_, cancel) =>
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
    public void A_fault_of_the_work_reaches_the_page()
    {
        PageWork work = new("failing", (_, _) => throw new InvalidOperationException("no luck"));
        using ScreenHost host = new(View(work));
        host.Press(new Key('2'));
        Assert.True(host.Soon(() => Heard(host.Screen.View, 1).Contains(new PageMessage.Failed("no luck"))));
    }
}
