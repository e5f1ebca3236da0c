using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;

namespace ColdSim.App.Screens;

/// <summary>What a message makes of a view. Pure.</summary>
internal static class NightUpdate
{
    private const int RowsOfAPage = 10;

    public static NightView After(this NightView view, PageMessage message)
    {
        view = view with { Notice = "" };
        return message switch
        {
            PageMessage.OtherUnits => view.In(view.Units.IsUs ? UnitStyle.Si : UnitStyle.Us),
            PageMessage.UnitsAre units => view.In(units.Units),
            PageMessage.Turn turn => view.Page == turn.Page ? Close(view) : Open(view, turn.Page),
            PageMessage.Close => Close(view),
            PageMessage.NextNight next => OtherNight(view, view.Night + next.Direction),
            _ => view.Page switch
            {
                OpenPage.Help => OnHelp(view, message),
                OpenPage.Events => OnEvents(view, message),
                _ => OnCurves(view, message),
            },
        };
    }

    private static NightView OnCurves(NightView view, PageMessage message) => message switch
    {
        PageMessage.Step step => At(view, view.Minute + step.Minutes),
        PageMessage.Rows rows => At(view, view.Minute + rows.Count * 60),
        PageMessage.Pages pages => At(view, view.Minute + pages.Count * 60),
        PageMessage.First => At(view, view.Span.From),
        PageMessage.Last => At(view, view.Span.To - 1),
        PageMessage.PointAt point => At(view, point.Minute),
        PageMessage.NextEvent next => OtherEvent(view, next.Direction),
        _ => view,
    };

    private static NightView OnHelp(NightView view, PageMessage message) => message switch
    {
        PageMessage.Rows rows => Scrolled(view, view.Row + rows.Count),
        PageMessage.Pages pages => Scrolled(view, view.Row + pages.Count * RowsOfAPage),
        PageMessage.First => Scrolled(view, 0),
        PageMessage.Last => Scrolled(view, HelpPage.Lines.Count),
        _ => view,
    };

    private static NightView Scrolled(NightView view, int row)
        => view with { Row = Math.Clamp(row, 0, HelpPage.Lines.Count - 1) };

    private static NightView OnEvents(NightView view, PageMessage message)
    {
        IReadOnlyList<EventMark> marks = view.Marks;
        NightView To(int row) => view with { Row = Math.Clamp(row, 0, Math.Max(0, marks.Count - 1)) };
        return message switch
        {
            PageMessage.Rows rows => To(view.Row + rows.Count),
            PageMessage.Pages pages => To(view.Row + pages.Count * RowsOfAPage),
            PageMessage.NextEvent next => To(view.Row + next.Direction),
            PageMessage.First => To(0),
            PageMessage.Last => To(marks.Count - 1),
            PageMessage.Choose when marks.Count > 0 => Close(At(view, marks[view.Row].Minute)),
            PageMessage.Choose => Close(view),
            _ => view,
        };
    }

    private static NightView At(NightView view, int minute) => view with { Minute = view.Span.Clamp(minute) };

    private static NightView Close(NightView view) => view with { Page = OpenPage.Curves, Row = 0 };

    private static NightView Open(NightView view, OpenPage page)
    {
        if (page != OpenPage.Events)
            return view with { Page = page, Row = 0 };
        IReadOnlyList<EventMark> marks = view.Marks;
        int nearest = marks.Count == 0 ? 0 : Enumerable.Range(0, marks.Count).MinBy(i => Math.Abs(marks[i].Minute - view.Minute));
        return view with { Page = page, Row = nearest };
    }

    private static NightView OtherNight(NightView view, int night)
    {
        if (night < 0 || night >= view.Report.Nights.Count)
            return view with { Notice = night < 0 ? "this is the first night" : "this is the last night" };
        TimeSpan day = TimeSpan.FromDays(night - view.Night);
        NightView there = view with { Night = night, Row = 0 };
        return At(there, NightSpan.MinuteAt(view.Report, view.Time + day));
    }

    private static NightView OtherEvent(NightView view, int direction)
    {
        IReadOnlyList<EventMark> marks = view.AllMarks;
        EventMark? next = direction > 0
            ? marks.FirstOrDefault(m => m.Minute > view.Minute)
            : marks.LastOrDefault(m => m.Minute < view.Minute);
        return next is null
            ? view with { Notice = direction > 0 ? "no later event in this run" : "no earlier event in this run" }
            : view with { Night = next.Night, Minute = next.Minute };
    }
}
