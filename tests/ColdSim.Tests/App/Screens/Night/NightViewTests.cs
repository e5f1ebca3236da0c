using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Screens.Night;

public class NightViewTests
{
    private static readonly NightView First = NightView.Open(SampleRun.Report, UnitStyle.Us);
    private static readonly NightView Second = First.Update(new PageMessage.NextNight(1));

    private static string Clock(NightView view) => view.Time.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void A_night_that_holds_opens_where_it_is_coldest_outside()
    {
        double[] outside = SampleRun.Report.Series.Outside_K;
        Assert.Equal(outside[First.Span.From..First.Span.To].Min(), outside[First.Minute]);
    }

    [Fact]
    public void Steps_move_by_minutes_and_rows_by_hours()
    {
        Assert.Equal(First.Minute - 10, First.Update(new PageMessage.Step(-10)).Minute);
        Assert.Equal(First.Minute + 60, First.Update(new PageMessage.Rows(1)).Minute);
    }

    [Fact]
    public void The_cursor_stays_in_its_night()
    {
        NightView start = First.Update(new PageMessage.First()), end = First.Update(new PageMessage.Last());
        Assert.Equal("17:00", Clock(start));
        Assert.Equal("11:59", Clock(end));
        Assert.Equal(start.Minute, start.Update(new PageMessage.Step(-1)).Minute);
        Assert.Equal(end.Minute, end.Update(new PageMessage.Rows(1)).Minute);
    }

    [Fact]
    public void Another_night_keeps_the_clock_time()
    {
        Assert.Equal(1, Second.Night);
        Assert.Equal(Clock(First), Clock(Second));
        Assert.Equal(First.Minute, Second.Update(new PageMessage.NextNight(-1)).Minute);
    }

    [Fact]
    public void A_clock_time_before_the_start_of_the_run_becomes_the_start()
    {
        NightView noon = Second.Update(new PageMessage.First()).Update(new PageMessage.NextNight(-1));
        Assert.Equal(0, noon.Minute);
    }

    [Fact]
    public void There_is_no_night_before_the_first_or_after_the_last()
    {
        NightView before = First.Update(new PageMessage.NextNight(-1));
        Assert.Equal((0, "this is the first night"), (before.Night, before.Notice));
        NightView after = Second.Update(new PageMessage.NextNight(1)).Update(new PageMessage.NextNight(1));
        Assert.Equal((2, "this is the last night"), (after.Night, after.Notice));
        Assert.Equal("", after.Update(new PageMessage.Step(1)).Notice);
    }

    [Fact]
    public void The_next_event_may_lie_in_the_next_night()
    {
        NightView there = First.Update(new PageMessage.NextEvent(1));
        Assert.Equal(1, there.Night);
        Assert.Equal(SampleRun.Report.Nights[1].FirstShort, there.Time);
        Assert.Equal("no earlier event in this run", there.Update(new PageMessage.NextEvent(-1)).Notice);
    }

    [Fact]
    public void All_events_can_be_walked_in_order_and_then_no_more_come()
    {
        NightView view = First;
        List<int> stops = [];
        while ((view = view.Update(new PageMessage.NextEvent(1))).Notice.Length == 0)
            stops.Add(view.Minute);
        Assert.Equal(view.AllMarks.Select(m => m.Minute).Distinct(), stops);
        Assert.Equal("no later event in this run", view.Notice);
    }

    [Fact]
    public void Units_change_and_change_back()
    {
        NightView metric = First.Update(new PageMessage.ToggleUnits());
        Assert.False(metric.Units.IsUs);
        Assert.Equal("kW", metric.Strips[0].First.Axis.Unit);
        Assert.True(metric.Update(new PageMessage.ToggleUnits()).Units.IsUs);
    }

    [Fact]
    public void The_cursor_of_the_other_pages_is_taken_over()
    {
        NightView there = First.Update(new PageMessage.Opened(new(1, Second.Minute + 60, Second.Time.AddHours(1))));
        Assert.Equal((1, Second.Minute + 60), (there.Night, there.Minute));
    }

    [Fact]
    public void A_row_of_the_event_list_can_be_gone_to()
    {
        NightView list = Second.Update(new PageMessage.ToggleList()).Update(new PageMessage.First()).Update(new PageMessage.Rows(1));
        NightView there = list.Update(new PageMessage.Choose());
        Assert.Equal(NightPanel.Curves, there.Panel);
        Assert.Equal(Second.Marks[1].Minute, there.Minute);
    }

    [Fact]
    public void An_empty_event_list_takes_every_message()
    {
        NightView list = First.Update(new PageMessage.ToggleList());
        Assert.Empty(list.Marks);
        foreach (PageMessage message in (PageMessage[])[new PageMessage.Rows(1), new PageMessage.Last(), new PageMessage.NextEvent(-1)])
            Assert.Equal(0, list.Update(message).Row);
        Assert.Equal(First.Minute, list.Update(new PageMessage.Choose()).Minute);
    }
}
