using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Planning.Explain;
using Terminal.Gui.Input;
using Xunit;
using KeyBinding = ColdSim.App.Screens.Pages.KeyBinding;

namespace ColdSim.Tests.App.Screens.Frame;

/// <summary>One grammar of keys on all pages, from one declaration a place.</summary>
public class KeyGrammarTests
{
    private static readonly KeyBinding Costly = new("Enter", "run it", new PageMessage.Choose(), "Enter run it") { Cost = "runs it 400 times" };
    private static readonly KeyBinding Letter = new("w", "write it as a new file", new PageMessage.ToggleMark(), "w write");
    private static readonly KeyBinding Zero = new("0", "as it was", new PageMessage.First());

    private static FrameView View(bool text = false) => new(
        [
            new FakePage('1', "one") { Keys = [Letter, Zero], Cursor = new(0, 77, DateTimeOffset.UnixEpoch) },
            new FakePage('2', "two", TakesText: text) { Keys = [Costly] },
            new FakePage('a', "tenth") { Places = [new("", "wind, 5 mph", new PageMessage.Rows(3))] },
        ],
        UnitStyle.Us);

    private static FrameView Nights() => new([new NightPage(NightView.Open(SampleRun.Report, UnitStyle.Us)), new FakePage('2', "two")], UnitStyle.Us) { Report = SampleRun.Report };

    private static FrameView Pressed(FrameView view, params Key[] keys)
    {
        foreach (Key key in keys)
            view = PageKeys.Frame(key, view) is { } message ? view.Update(message) : view;
        return view;
    }

    private static Key[] Typed(string text) => [.. text.Select(c => new Key(c))];

    private static IReadOnlyList<PageMessage> Heard(FrameView view, int page) => ((FakePage)view.Pages[page]).Heard;

    private static string Drawn(FrameView view) => FrameSheet.Draw(view, 80, 24).ToString();

    [Fact]
    public void A_letter_or_digit_that_the_page_declares_does_what_it_says()
    {
        Assert.Equal([new PageMessage.ToggleMark(), new PageMessage.First()], Heard(Pressed(View(), new Key('w'), new Key('0')), 0));
        Assert.Null(PageKeys.Frame(new Key('w'), View() with { Open = 1 }));
        Assert.Equal(new FrameMessage.GoTo('2'), PageKeys.Frame(new Key('2'), View()));
        Assert.Equal(new FrameMessage.GoTo('3'), PageKeys.Frame(Key.F3, View()));
    }

    [Fact]
    public void A_page_without_a_digit_is_reached_as_a_neighbour_and_by_its_name()
    {
        Assert.Equal(2, Pressed(View(), new Key(']'), new Key(']')).Open);
        Assert.Equal(2, Pressed(View(), new Key('[')).Open);
        Assert.Equal(2, Pressed(View(), [new Key(':'), .. Typed("tenth"), Key.Enter]).Open);
    }

    [Fact]
    public void On_a_page_that_takes_text_letters_and_digits_are_text()
    {
        FrameView form = View(text: true) with { Open = 1 };
        foreach (char c in "3q:/?[u")
            Assert.Equal(new FrameMessage.ToPage(new PageMessage.Typed(new(c))), PageKeys.Frame(new Key(c), form));
        Assert.Equal(new FrameMessage.ToPage(new PageMessage.Backspace()), PageKeys.Frame(Key.Backspace, form));
        Assert.Equal(new FrameMessage.Help(), PageKeys.Frame(Key.F1, form));
        Assert.Equal(new FrameMessage.Quit(), PageKeys.Frame(Key.Q.WithCtrl, form));
        Assert.Equal(new FrameMessage.Quit(), PageKeys.Frame(Key.C.WithCtrl, form));
    }

    [Fact]
    public void The_keys_of_the_place_are_listed_and_the_chosen_one_runs()
    {
        FrameView list = Pressed(View(), new Key('?'));
        Assert.Contains("> w         write it as a new file", Drawn(list), StringComparison.Ordinal);
        FrameView run = Pressed(list, Key.CursorDown, Key.Enter);
        Assert.Null(run.Over);
        Assert.Equal([new PageMessage.First()], Heard(run, 0));
        Assert.Equal([new PageMessage.ToggleMark()], Heard(Pressed(list, new Key('w')), 0));
        Assert.Null(Pressed(list, Key.Esc).Over);
        Assert.Empty(Heard(Pressed(list, Key.Esc), 0));
    }

    [Fact]
    public void The_palette_finds_keys_pages_nights_and_places_by_any_of_their_words()
    {
        FrameView found = Pressed(View(), [new Key('/'), .. Typed("mph wind")]);
        Assert.Equal("wind, 5 mph", Assert.Single(((CommandList)found.Over!).Found).Words);
        FrameView there = Pressed(found, Key.Enter);
        Assert.Equal((2, null), (there.Open, there.Over));
        Assert.Equal(new PageMessage.Rows(3), Heard(there, 2)[^1]);

        FrameView night = Pressed(Nights(), [new Key(':'), .. Typed("night 3"), Key.Enter]);
        Assert.Equal(2, ((NightPage)night.Page).View.Night);
        Assert.Equal(2, night.Cursor!.Night);

        Assert.StartsWith("night 3,", ((CommandList)Pressed(Nights(), [new Key(':'), .. Typed("night 3")]).Over!).Found[0].Words, StringComparison.Ordinal);
        FrameView none = Pressed(View(), [new Key(':'), .. Typed("zzz")]);
        Assert.Contains("Nothing has these words", Drawn(none), StringComparison.Ordinal);
        Assert.NotNull(Pressed(none, Key.Enter).Over);
        Assert.Equal("zz", ((CommandList)Pressed(none, Key.Backspace).Over!).Filter);
    }

    [Fact]
    public void Every_key_of_every_page_can_be_found()
    {
        FrameView view = new Opening(Explained.Demo.Report, [], TimeProvider.System).Frame(UnitStyle.Us);
        foreach (IPage page in view.Pages)
        {
            FrameView open = view with { Open = view.Pages.ToList().IndexOf(page) };
            string help = string.Join('\n', HelpText.Of(open).Lines);
            foreach (KeyBinding key in page.Keys)
            {
                Assert.Contains(ScreenCommand.All(open), c => c.Keys == key.Keys && c.Words.StartsWith(key.Words, StringComparison.Ordinal));
                Assert.Contains($"  {key.Keys}", help, StringComparison.Ordinal);
            }

            Assert.Equal(page.Keys.Count, page.Keys.Select(k => k.Keys).Distinct().Count());
            Assert.Empty(page.Keys.Select(k => k.Keys).Where(k => k.Length == 1).Intersect(ScreenCommand.Everywhere.Select(c => c.Keys)));
        }
    }

    [Fact]
    public void A_job_that_a_page_starts_when_it_is_opened_is_said_in_the_palette()
    {
        PageJob job = new("Running it many times", (_, _) => "");
        FrameView view = new([new FakePage('1', "one"), new FakePage('2', "two", job)], UnitStyle.Us);
        Assert.Contains(ScreenCommand.All(view), c => c.Words == "page two: running it many times");
    }

    [Fact]
    public void Enter_says_what_a_costly_job_costs_before_it_starts_it()
    {
        FrameView asked = Pressed(View(), new Key('2'), Key.Enter);
        Assert.DoesNotContain(new PageMessage.Choose(), Heard(asked, 1));
        Assert.Contains("Runs it 400 times. Enter again starts it, Esc does not.", Drawn(asked), StringComparison.Ordinal);
        Assert.Contains(new PageMessage.Choose(), Heard(Pressed(asked, Key.Enter), 1));
        FrameView left = Pressed(asked, Key.Esc);
        Assert.DoesNotContain("400", Drawn(left), StringComparison.Ordinal);
        Assert.DoesNotContain(new PageMessage.Choose(), Heard(Pressed(left, Key.CursorDown, Key.Enter), 1));
    }

    [Fact]
    public void Esc_backs_out_to_the_first_page_and_never_quits()
    {
        FrameView view = Nights();
        FrameView list = Pressed(view, new Key('l'));
        Assert.Equal(NightPanel.Curves, ((NightPage)Pressed(list, Key.Esc).Page).View.Panel);
        FrameView other = new Opening(Explained.Demo.Report, [], TimeProvider.System).Frame(UnitStyle.Us) with { Open = 2 };
        Assert.Equal(0, Pressed(other, Key.Esc).Open);
        Assert.Null(Pressed(view, Key.Esc, Key.Esc, Key.Esc).Effect);
        Assert.IsType<TerminalEffect.Quit>(Pressed(view, Key.Q).Effect);
    }

    [Fact]
    public void The_chosen_night_and_time_are_those_of_every_page()
    {
        RunReport report = SampleRun.Report;
        FrameView view = new([new NightPage(NightView.Open(report, UnitStyle.Us)), OptionsPage.Of(report, [], UnitStyle.Us), ChancePage.Of(report, UnitStyle.Us)], UnitStyle.Us) { Report = report };
        view = Pressed(view, Key.N, Key.CursorDown);
        TimeCursor chosen = view.Cursor!;
        Assert.Equal(1, chosen.Night);
        Assert.Equal(chosen, Pressed(view, new Key('7')).Page.Cursor);
        Assert.Equal(chosen, Pressed(view, new Key('3')).Page.Cursor);
        FrameView later = Pressed(view, new Key('3'), Key.N);
        Assert.Equal(later.Page.Cursor, Pressed(later, new Key('1')).Page.Cursor);
    }

    [Fact]
    public void Help_is_the_keys_of_the_place_how_to_read_it_and_what_works_everywhere()
    {
        FrameView help = View().Update(new FrameMessage.Help());
        string text = string.Join('\n', ((HelpText)help.Over!).Lines);
        Assert.Contains("write it as a new file", Drawn(help), StringComparison.Ordinal);
        foreach (string part in (string[])["KEYS OF THIS PAGE, ONE", "write it as a new file", "FAKE", "EVERY PAGE"])
            Assert.Contains(part, text, StringComparison.Ordinal);
        Assert.Empty(Heard(help.Update(new FrameMessage.ToPage(new PageMessage.Rows(1))), 0));
        Assert.Null(Pressed(help, Key.Esc).Over);
        Assert.All(((HelpText)help.Over!).Lines, l => Assert.InRange(l.Length, 0, Sheet.MinWidth));
    }

    [Fact]
    public void An_overlay_can_be_drawn_at_any_size()
    {
        foreach (FrameView view in (FrameView[])[Pressed(Nights(), new Key('?')), Pressed(Nights(), new Key(':')), Pressed(Nights(), Key.F1)])
        {
            foreach (int height in (int[])[1, 3, 10, 17, 24])
            {
                foreach (int width in (int[])[1, 40, 60, 80])
                    view.Over!.Draw(new Sheet(width, height), FrameSheet.Rows);
            }
        }
    }

    [Fact]
    public void The_mouse_is_left_to_the_terminal_until_it_is_asked_for()
    {
        FrameView view = View();
        Assert.False(view.ReportsMouse);
        Assert.Equal(new TerminalEffect.ReportMouse(true), Pressed(view, Key.M).Effect);
        Assert.Equal(new TerminalEffect.ReportMouse(false), Pressed(Pressed(view, Key.M) with { Effect = null }, Key.M).Effect);
    }
}
