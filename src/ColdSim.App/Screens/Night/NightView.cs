using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>What is open on the page of the nights.</summary>
internal enum NightPanel
{
    Curves,
    Events,

    /// <summary>What scale, level, pressure gauge and echo should show at the time cursor.</summary>
    Gauges,
}

/// <summary>All that the page of the nights shows.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">The units a person reads.</param>
/// <param name="AllMarks">The marked events of the run.</param>
/// <param name="Strips">The strips in these units.</param>
/// <param name="Night">Index of the night.</param>
/// <param name="Minute">The time cursor, as a sample of the run.</param>
/// <param name="Panel">What is open.</param>
/// <param name="Row">The chosen row of the event list.</param>
/// <param name="Notice">An answer to the last key, gone with the next.</param>
internal sealed record NightView(
    RunReport Report,
    UnitStyle Units,
    IReadOnlyList<EventMark> AllMarks,
    IReadOnlyList<Strip> Strips,
    int Night,
    int Minute,
    NightPanel Panel = NightPanel.Curves,
    int Row = 0,
    string Notice = "")
{
    private const int RowsOfAPage = 10;

    public NightReport Current => Report.Nights[Night];

    public IReadOnlyList<EventMark> Marks => [.. AllMarks.Where(m => m.Night == Night)];

    /// <summary>The night as it is drawn.</summary>
    public NightPicture Picture => new(Report, Strips, AllMarks, Night, Minute);

    public MinuteRange Span => MinuteRange.Of(Report, Night);

    public DateTimeOffset Time => TimeAt(Minute);

    public DateTimeOffset TimeAt(int minute) => Report.Scenario.Start.AddMinutes(minute);

    public NightView WithUnits(UnitStyle units) => this with { Units = units, Strips = NightStrips.Of(Report, units) };

    /// <summary>Opens on the first night, where it first failed or ran short, or else where it was coldest outside.</summary>
    public static NightView Open(RunReport report, UnitStyle units)
        => new NightView(report, units, EventMark.AllOf(report), NightStrips.Of(report, units), 0, 0).On(0);

    /// <summary>Another night, where it first failed or ran short, or else where it was coldest outside.</summary>
    public NightView On(int night)
    {
        MinuteRange span = MinuteRange.Of(Report, night);
        int minute = (Report.Nights[night].FirstFailure ?? Report.Nights[night].FirstShort) is DateTimeOffset first
            ? MinuteRange.MinuteAt(Report, first)
            : Enumerable.Range(span.From, span.Length).MinBy(m => Report.Series.Outside_K[m]);
        return this with { Night = night, Minute = span.Clamp(minute), Panel = NightPanel.Curves, Row = 0, Notice = "" };
    }

    /// <summary>The view after a message.</summary>
    public NightView Update(PageMessage message)
    {
        NightView view = this with { Notice = "" };
        return message switch
        {
            PageMessage.ToggleUnits => view.WithUnits(view.Units.IsUs ? UnitStyle.Si : UnitStyle.Us),
            PageMessage.UnitsChanged units => view.WithUnits(units.Units),
            PageMessage.ToggleList => WithList(view),
            PageMessage.ToggleGauges => view.Panel == NightPanel.Gauges ? Close(view) : view with { Panel = NightPanel.Gauges, Row = 0 },
            PageMessage.Close => Close(view),
            PageMessage.NextNight next => OtherNight(view, view.Night + next.Direction),
            PageMessage.Opened { At: { } at } => ToCursor(view, at),
            _ => view.Panel == NightPanel.Events ? OnEvents(view, message) : OnCurves(view, message),
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

    private static NightView OnEvents(NightView view, PageMessage message)
    {
        IReadOnlyList<EventMark> marks = view.Marks;
        NightView Chosen(int row) => view with { Row = Math.Clamp(row, 0, Math.Max(0, marks.Count - 1)) };
        return message switch
        {
            PageMessage.Rows rows => Chosen(view.Row + rows.Count),
            PageMessage.Pages pages => Chosen(view.Row + pages.Count * RowsOfAPage),
            PageMessage.NextEvent next => Chosen(view.Row + next.Direction),
            PageMessage.First => Chosen(0),
            PageMessage.Last => Chosen(marks.Count - 1),
            PageMessage.Choose when marks.Count > 0 => Close(At(view, marks[view.Row].Minute)),
            PageMessage.Choose => Close(view),
            _ => view,
        };
    }

    private static NightView At(NightView view, int minute) => view with { Minute = view.Span.Clamp(minute) };

    private static NightView Close(NightView view) => view with { Panel = NightPanel.Curves, Row = 0 };

    private static NightView ToCursor(NightView view, TimeCursor at)
        => At(at.Night == view.Night ? view : Close(view) with { Night = Math.Clamp(at.Night, 0, view.Report.Nights.Count - 1) }, at.Minute);

    private static NightView WithList(NightView view)
    {
        if (view.Panel == NightPanel.Events)
            return Close(view);
        IReadOnlyList<EventMark> marks = view.Marks;
        int nearest = marks.Count == 0 ? 0 : Enumerable.Range(0, marks.Count).MinBy(i => Math.Abs(marks[i].Minute - view.Minute));
        return view with { Panel = NightPanel.Events, Row = nearest };
    }

    private static NightView OtherNight(NightView view, int night)
    {
        if (night < 0 || night >= view.Report.Nights.Count)
            return view with { Notice = night < 0 ? "this is the first night" : "this is the last night" };
        TimeSpan day = TimeSpan.FromDays(night - view.Night);
        NightView there = view with { Night = night, Row = 0 };
        return At(there, MinuteRange.MinuteAt(view.Report, view.Time + day));
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
