using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Which shortage a person means who stands at a time.</summary>
internal static class Shortages
{
    private static readonly TimeSpan Near = TimeSpan.FromHours(1);

    /// <summary>The beginning of the shortage that a time lies in or within an hour of; null where there is none.</summary>
    public static DateTimeOffset? At(RunReport report, DateTimeOffset time)
    {
        DateTimeOffset? nearest = null;
        TimeSpan least = TimeSpan.MaxValue;
        foreach ((DateTimeOffset from, DateTimeOffset to) in Of(report))
        {
            TimeSpan away = time < from ? from - time : time > to ? time - to : TimeSpan.Zero;
            if (away < least)
                (nearest, least) = (from, away);
        }

        return least <= Near ? nearest : null;
    }

    /// <summary>The shortage that is explained whole: the first of a night that does not hold; null where all hold.</summary>
    public static DateTimeOffset? First(RunReport report) => report.Nights.FirstOrDefault(n => n.Verdict != Verdict.Holds)?.FirstShort;

    private static IEnumerable<(DateTimeOffset From, DateTimeOffset To)> Of(RunReport report)
    {
        DateTimeOffset? from = null;
        foreach (ReportedEvent e in report.Events)
        {
            if (e.Kind == ReportedKind.ShortBegins)
            {
                from ??= e.Time;
            }
            else if (e.Kind == ReportedKind.ShortEnds && from is { } begun)
            {
                yield return (begun, e.Time);
                from = null;
            }
        }

        if (from is { } open)
            yield return (open, report.Nights[^1].To);
    }
}
