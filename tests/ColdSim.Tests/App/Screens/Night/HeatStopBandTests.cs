using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using Snapshooter;
using Snapshooter.Xunit;
using Terminal.Gui.Input;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.App.Screens.Night;

public class HeatStopBandTests
{
    private static readonly FrameMessage Ask = new FrameMessage.ToPage(new PageMessage.AskHeatStop());

    // Invented, as are the nights.
    private static CoolDown Stop(DateTimeOffset at) => new()
    {
        At = at,
        Outside = Temperature.FromKelvins(255),
        Inside = Temperature.FromKelvins(289),
        FiftyAfter = Duration.FromMinutes(80),
        FreezingAfter = Duration.FromMinutes(345),
        FiftyEarliest = Duration.FromMinutes(60),
        FiftyLatest = Duration.FromMinutes(110),
        FreezingEarliest = Duration.FromMinutes(250),
        FreezingLatest = Duration.FromMinutes(440),
        Water =
        [
            new("fresh-water tank", Duration.FromHours(11), null),
            new("pipe under the sink", Duration.FromHours(7), Duration.FromHours(9)),
            new("kettle", null, null),
        ],
        Watched = Duration.FromDays(3),
    };

    private static FrameView View(RunReport? report = null, UnitStyle? units = null)
        => new([new NightPage(NightView.Open(report ?? SampleRun.Report, units ?? UnitStyle.Us)), new FakePage('2', "two")], units ?? UnitStyle.Us);

    private static NightPage Nights(FrameView view) => (NightPage)view.Pages[0];

    /// <summary>The frame with an invented answer.</summary>
    private static FrameView Answered(FrameView view)
        => view.Update(new FrameMessage.JobEnded(view.Jobs[0]!.Job, new PageMessage.Completed(Stop(Nights(view).View.Time))));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_answer_looks_like_this(int width, int height)
        => Snapshot.Match(FrameSheet.Draw(Answered(View().Update(Ask)), width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void The_whole_sentence_is_there_on_the_least_terminal_in_both_units()
    {
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            string text = FrameSheet.Draw(Answered(View(units: units).Update(Ask)), FrameSheet.MinWidth, FrameSheet.MinHeight).ToString();
            Assert.Contains("3 days.", text, StringComparison.Ordinal);
            Assert.Contains("Esc close", text, StringComparison.Ordinal);
            Assert.Contains(units.WholeTemperature(283.15), text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void It_is_asked_for_at_the_cursor_and_worked_out_beside_the_curves()
    {
        FrameView asked = View().Update(Ask);
        Assert.Null(asked.BlockingJob);
        Assert.Contains("Working out", FrameSheet.Draw(asked, 80, 24).ToString(), StringComparison.Ordinal);
        Assert.Equal(Nights(asked).View.Time, ((CoolDown)asked.Jobs[0]!.Job.Run(new Progress<int>(), CancellationToken.None)).At);
    }

    [Fact]
    public void Esc_stops_it_and_Esc_closes_it()
    {
        FrameMessage esc = new FrameMessage.ToPage(new PageMessage.Close());
        FrameView asked = View().Update(Ask);
        Assert.Null(Nights(asked.Update(esc)).CoolDown);
        Assert.All(asked.Update(esc).Jobs, Assert.Null);
        Assert.Null(Nights(Answered(asked).Update(esc)).CoolDown);
    }

    [Fact]
    public void An_answer_goes_with_its_instant_and_stays_while_another_page_is_open()
    {
        FrameView answered = Answered(View().Update(Ask));
        Assert.NotNull(Nights(answered.Update(new FrameMessage.GoTo('2')).Update(new FrameMessage.GoTo('1'))).CoolDown);
        Assert.NotNull(Nights(answered.Update(new FrameMessage.ToPage(new PageMessage.ToggleUnits()))).CoolDown);
        Assert.Null(Nights(answered.Update(new FrameMessage.ToPage(new PageMessage.Step(10)))).CoolDown);
        FrameView moved = View().Update(Ask).Update(new FrameMessage.ToPage(new PageMessage.Step(10)));
        Assert.All(moved.Jobs, Assert.Null);
    }

    [Fact]
    public void An_instant_outside_the_weather_is_reported_and_can_be_asked_again()
    {
        Scenario scenario = SampleRun.Report.Scenario with { Weather = new WeatherSeries([new(SampleRun.Start.AddHours(-1), 260), new(SampleRun.Start.AddMinutes(10), 255)], new WeatherDefaults(), new()) };
        using ScreenHost host = new(View(SampleRun.Report with { Scenario = scenario }));
        host.Press(new Key('f'));
        Assert.True(host.Soon(() => Nights(host.Screen.View).CoolDown?.Failure.Length > 0));
        Assert.Contains("nothing is known of the weather", host.Press().Text, StringComparison.Ordinal);
        host.Press(new Key('f'));
        Assert.True(host.Soon(() => Nights(host.Screen.View).CoolDown?.Failure.Length > 0));
    }

    [Fact]
    public void A_key_asks_and_the_answer_arrives_from_another_thread()
    {
        using ScreenHost host = new(View());
        host.Press(new Key('f'));
        Assert.True(host.Soon(() => host.Text.Contains("If the furnace stops on", StringComparison.Ordinal)));
    }

    [Fact]
    public void Without_a_furnace_there_is_nothing_to_stop()
    {
        NightPage page = (NightPage)new NightPage(NightView.Open(SampleRun.WithoutCoach, UnitStyle.Us)).Update(new PageMessage.AskHeatStop());
        Assert.Null(page.DueJob);
        Assert.Contains("no furnace that could stop", page.Draw(80, 23).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_can_be_drawn_at_any_size()
    {
        NightPage page = Nights(Answered(View().Update(Ask)));
        foreach (int height in (int[])[0, 1, 5, 16, 23, 60])
        {
            foreach (int width in (int[])[0, 1, 59, 60, 200])
                Assert.Equal(height, page.Draw(width, height).Height);
        }
    }
}
