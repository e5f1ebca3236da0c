using ColdSim.App.Screens;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;
using ColdSim.Tests.Planning.Explain;
using Snapshooter;
using Snapshooter.Xunit;
using Terminal.Gui.Input;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.App.Screens;

public class HeatStopBandTests
{
    private static readonly FrameMessage Ask = new FrameMessage.Ask(new PageMessage.HeatStops());

    // Invented, as are the nights.
    private static HeatStop Stop(DateTimeOffset at) => new()
    {
        At = at,
        Outside = Temperature.FromKelvins(255),
        Inside = Temperature.FromKelvins(289),
        FiftyAfter = Duration.FromMinutes(80),
        FreezingAfter = Duration.FromMinutes(345),
        Water =
        [
            new("fresh-water tank", Duration.FromHours(11), null),
            new("pipe under the sink", Duration.FromHours(7), Duration.FromHours(9)),
            new("kettle", null, null),
        ],
        Watched = Duration.FromDays(3),
    };

    private static FrameView View(UnitStyle? units = null)
        => new([new NightFramePage(NightView.Open(SampleRun.Report, units ?? UnitStyle.Us)), new FakePage('2', "two")], units ?? UnitStyle.Us);

    private static NightFramePage Nights(FrameView view) => (NightFramePage)view.Pages[0];

    /// <summary>The frame after what it wants is worked out, here and now.</summary>
    private static FrameView Answered(FrameView view)
    {
        return view.After(new FrameMessage.Ended(view.Jobs[0]!.Work, new PageMessage.Done(Stop(Nights(view).View.Time))));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_answer_looks_like_this(int width, int height)
        => Snapshot.Match(FrameSheet.Draw(Answered(View().After(Ask)), width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void The_whole_sentence_is_there_on_the_least_terminal_in_both_units()
    {
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            string text = FrameSheet.Draw(Answered(View(units: units).After(Ask)), FrameSheet.LeastWidth, FrameSheet.LeastHeight).ToString();
            Assert.Contains("3 days.", text, StringComparison.Ordinal);
            Assert.Contains("Esc close", text, StringComparison.Ordinal);
            Assert.Contains(units.Temperature(283.15), text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Heat_stop_is_asked_for_at_the_cursor_and_worked_out_beside_the_curves()
    {
        FrameView asked = View().After(Ask);
        Assert.Null(asked.Waiting);
        Assert.Contains("Working out", FrameSheet.Draw(asked, 80, 24).ToString(), StringComparison.Ordinal);
        Assert.Equal(Nights(asked).View.Time, Nights(Answered(asked)).Left!.Value!.At);
    }

    [Fact]
    public void Esc_stops_it_and_Esc_closes_it()
    {
        FrameMessage esc = new FrameMessage.Ask(new PageMessage.Close());
        FrameView asked = View().After(Ask);
        Assert.Null(Nights(asked.After(esc)).Left);
        Assert.All(asked.After(esc).Jobs, Assert.Null);
        Assert.Null(Nights(Answered(asked).After(esc)).Left);
    }

    [Fact]
    public void An_answer_goes_with_its_instant_and_stays_while_another_page_is_open()
    {
        FrameView answered = Answered(View().After(Ask));
        Assert.NotNull(Nights(answered.After(new FrameMessage.GoTo('2')).After(new FrameMessage.GoTo('1'))).Left);
        Assert.NotNull(Nights(answered.After(new FrameMessage.Ask(new PageMessage.OtherUnits()))).Left);
        Assert.Null(Nights(answered.After(new FrameMessage.Ask(new PageMessage.Step(10)))).Left);
        FrameView moved = View().After(Ask).After(new FrameMessage.Ask(new PageMessage.Step(10)));
        Assert.All(moved.Jobs, Assert.Null);
    }

    [Fact]
    public void An_instant_outside_the_run_is_refused_and_can_be_asked_again()
    {
        NightView view = NightView.Open(SampleRun.Report, UnitStyle.Us);
        PageWork late = HeatStopWork.At(SampleRun.Report.Scenario, SampleRun.Start.AddYears(1));
        using ScreenHost host = new(new([new NightFramePage(view, new(late))], UnitStyle.Us));
        host.Press(new Key('w'));
        Assert.True(host.Soon(() => Nights(host.Screen.View).Left?.Failed.Length > 0));
        Assert.Contains("nothing is known of the weather", host.Press().Text, StringComparison.Ordinal);
        host.Press(new Key('w'));
        Assert.Equal("", Nights(host.Screen.View).Left?.Failed);
    }

    [Fact]
    public void A_key_asks_and_the_answer_arrives_from_another_thread()
    {
        using ScreenHost host = new(new([new NightFramePage(NightView.Open(Explained.Demo.Report, UnitStyle.Us))], UnitStyle.Us));
        host.Press(new Key('w'));
        Assert.True(host.Soon(() => host.Text.Contains("inside is at 50 °F after", StringComparison.Ordinal)));
    }

    [Fact]
    public void Without_a_furnace_there_is_nothing_to_stop()
    {
        NightFramePage page = (NightFramePage)new NightFramePage(NightView.Open(SampleRun.WithoutCoach, UnitStyle.Us)).After(new PageMessage.HeatStops());
        Assert.Null(page.Wanted);
        Assert.Contains("no furnace that could stop", page.Draw(80, 23).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_can_be_drawn_at_any_size()
    {
        NightFramePage page = Nights(Answered(View().After(Ask)));
        foreach (int height in (int[])[0, 1, 5, 16, 23, 60])
        {
            foreach (int width in (int[])[0, 1, 59, 60, 200])
                Assert.Equal(height, page.Draw(width, height).Height);
        }
    }
}
