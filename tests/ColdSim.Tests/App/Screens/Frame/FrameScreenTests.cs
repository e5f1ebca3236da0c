using System.Drawing;
using System.Text.RegularExpressions;
using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Night;
using ColdSim.App.Text;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Xunit;

namespace ColdSim.Tests.App.Screens.Frame;

public partial class FrameScreenTests
{
    /// <summary>Any code that picks a colour; 39 and 49, back to the terminal's own, pick none.</summary>
    [GeneratedRegex(@"\e\[(\d+;)*(3[0-8]|4[0-8]|9\d|10\d)(;\d+)*m")]
    private static partial Regex AnyColor { get; }

    [GeneratedRegex(@"\e\[(\d+;)*[34]8(;\d+)*m")]
    private static partial Regex BeyondSixteenColors { get; }

    private static ScreenHost Open(bool color = true, int columns = 80, int rows = 24)
        => new(new FrameView([new NightPage(NightView.Open(SampleRun.Report, UnitStyle.Us))], UnitStyle.Us), color, columns, rows);

    private static NightView Night(ScreenHost host) => ((NightPage)host.Screen.View.Page).View;

    [Fact]
    public void The_terminal_shows_the_sheet_cell_by_cell()
    {
        using ScreenHost host = Open();
        Assert.Equal(FrameSheet.Draw(host.Screen.View, 80, 24).ToString(), host.Text.TrimEnd('\n'));
    }

    [Fact]
    public void A_cursor_key_sends_under_one_and_a_half_kilobytes_of_eighty_columns_by_twenty_four()
    {
        using ScreenHost host = Open();
        int whole = host.LastSent.Length;
        List<int> sent = [];
        for (int i = 0; i < 20; i++)
            sent.Add(host.Press(Key.CursorRight).LastSent.Length);
        Assert.InRange(sent.Average(), 1, Math.Min(1500, whole / 3));
    }

    [Fact]
    public void What_is_drawn_in_parts_is_the_sheet_and_all_of_it_comes_back_after_the_terminal_was_cleared()
    {
        using ScreenHost host = Open();
        host.Press(Key.CursorRight, Key.Tab, Key.L, Key.CursorDown, Key.Esc, Key.U);
        Assert.Equal(FrameSheet.Draw(host.Screen.View, 80, 24).ToString(), host.Text.TrimEnd('\n'));
        host.App.Driver!.ClearContents();
        host.Screen.Redraw();
        host.App.LayoutAndDraw();
        Assert.Equal(FrameSheet.Draw(host.Screen.View, 80, 24).ToString(), host.Text.TrimEnd('\n'));
        Assert.InRange(host.LastSent.Length, 80 * 20, int.MaxValue);
    }

    [Fact]
    public void Keys_move_the_cursor_and_the_readout_follows()
    {
        using ScreenHost host = Open();
        int minute = Night(host).Minute;
        string before = host.Text;
        host.Press(Key.CursorRight);
        Assert.Equal(minute + 10, Night(host).Minute);
        Assert.NotEqual(before, host.Text);
        Assert.Contains(CursorWords.Time(Night(host)), host.Text, StringComparison.Ordinal);
        host.Press(Key.CursorLeft.WithShift, Key.CursorLeft.WithCtrl, Key.CursorUp, Key.PageDown, Key.CursorDown);
        Assert.Equal(minute + 10 - 2 + 60, Night(host).Minute);
        host.Press(Key.End, Key.Home);
        Assert.Equal(0, Night(host).Minute);
    }

    [Fact]
    public void Events_nights_and_units_have_their_keys()
    {
        using ScreenHost host = Open();
        host.Press(Key.Tab);
        Assert.Contains("22:58 supply falls short of demand, now", host.Text, StringComparison.Ordinal);
        host.Press(Key.Tab, Key.Tab.WithShift);
        Assert.Equal(SampleRun.Report.Nights[1].FirstShort, Night(host).Time);
        host.Press(Key.N);
        Assert.Contains("night 3 of 3", host.Text, StringComparison.Ordinal);
        host.Press(Key.P, Key.P, Key.U);
        Assert.Contains("night 1 of 3", host.Text, StringComparison.Ordinal);
        Assert.Contains("mbar", host.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_opens_and_closes()
    {
        using ScreenHost host = Open();
        string before = host.Text;
        host.Press(Key.F1);
        Assert.Contains("KEYS", host.Text, StringComparison.Ordinal);
        host.Press(Key.End);
        Assert.Contains("licensed technician", host.Text, StringComparison.Ordinal);
        host.Press(Key.Esc);
        Assert.Equal(before, host.Text);
    }

    [Fact]
    public void Esc_does_not_quit_and_the_quit_keys_do()
    {
        using ScreenHost host = Open();
        host.Press(Key.Esc, Key.Esc);
        Assert.False(host.Screen.StopRequested);
        foreach (Key key in (Key[])[Key.Q, Key.Q.WithCtrl, Key.C.WithCtrl, Key.Q.WithAlt])
            Assert.IsType<FrameMessage.Quit>(PageKeys.Frame(key, host.Screen.View));
        host.Press(Key.Q);
        Assert.True(host.Screen.StopRequested);
    }

    [Fact]
    public void The_event_list_leads_to_an_event()
    {
        using ScreenHost host = Open();
        host.Press(Key.N, Key.L, Key.Home);
        Assert.Contains("> Fri 22:58", host.Text, StringComparison.Ordinal);
        host.Press(Key.Enter);
        Assert.Equal(SampleRun.Report.Nights[1].FirstShort, Night(host).Time);
    }

    [Fact]
    public void A_click_puts_the_cursor_there()
    {
        using ScreenHost host = Open();
        host.App.InjectSequence(InputInjectionExtensions.LeftButtonClick(new Point(PlotArea.LeftMargin, 5)));
        Assert.InRange(Night(host).Minute, 0, 22);
        int minute = Night(host).Minute;
        host.App.InjectSequence(InputInjectionExtensions.LeftButtonClick(new Point(2, 5)));
        Assert.Equal(minute, Night(host).Minute);
    }

    [Fact]
    public void Resizing_draws_anew_and_a_small_terminal_shows_the_size_that_is_needed()
    {
        using ScreenHost host = Open();
        host.Resize(120, 40);
        Assert.Equal(FrameSheet.Draw(host.Screen.View, 120, 40).ToString(), host.Text.TrimEnd('\n'));
        host.Resize(50, 12);
        Assert.StartsWith("terminal too small", host.Text, StringComparison.Ordinal);
        host.Resize(80, 24);
        Assert.Contains("kept up", host.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void With_colour_only_the_sixteen_are_used()
    {
        using ScreenHost host = Open();
        Assert.Matches(AnyColor, host.Ansi);
        Assert.DoesNotMatch(BeyondSixteenColors, host.Ansi);
    }

    [Fact]
    public void Without_colour_no_code_picks_one()
    {
        using ScreenHost host = Open(color: false);
        Assert.DoesNotMatch(AnyColor, host.Ansi);
        host.Press(new Key('?'));
        Assert.DoesNotMatch(AnyColor, host.Ansi);
    }

    [Fact]
    public void Without_a_terminal_the_screen_refuses()
    {
        if (!Console.IsInputRedirected && !Console.IsOutputRedirected)
            return;
        Assert.Equal(2, ScreenProgram.Show(new(SampleRun.Report, [], TimeProvider.System), UnitStyle.Us, color: true));
    }
}
