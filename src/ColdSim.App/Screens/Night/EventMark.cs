using ColdSim.App.Screens.Drawing;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>An event that has a place on the event row.</summary>
/// <param name="Minute">The sample that first shows it.</param>
/// <param name="Night">Index of its night.</param>
/// <param name="Event">What happened.</param>
internal sealed record EventMark(int Minute, int Night, ReportedEvent Event)
{
    public EventKindWords Words => EventKinds.Of(Event.Kind);

    /// <summary>All marked events of the run, in order.</summary>
    public static IReadOnlyList<EventMark> AllOf(RunReport report)
    {
        List<EventMark> marks = [];
        MinuteRange[] spans = [.. Enumerable.Range(0, report.Nights.Count).Select(n => MinuteRange.Of(report, n))];
        foreach (ReportedEvent happened in report.Events.Where(e => EventKinds.Of(e.Kind).Fold != EventFold.OnlyCounted))
        {
            int night = NightOf(report, happened.Time);
            marks.Add(new(spans[night].Clamp(MinuteRange.MinuteAt(report, happened.Time)), night, happened));
        }

        return marks;
    }

    private static int NightOf(RunReport report, DateTimeOffset time)
    {
        for (int n = report.Nights.Count - 1; n > 0; n--)
        {
            if (time >= report.Nights[n].From)
                return n;
        }

        return 0;
    }
}
