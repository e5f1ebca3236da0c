using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Why gas is short: the shortage under the nights' cursor, else the first, else by how much it holds.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">Units to print.</param>
/// <param name="First">The first shortage with limits and actions, or by how much it holds.</param>
/// <param name="InOtherUnits">The same with the amounts that can be set or bought in the other units.</param>
/// <param name="Later">A later shortage, its chain of cause only; null while none is asked for.</param>
/// <param name="At">Where the later one begins.</param>
/// <param name="IsUnderCursor">Whether a shortage is under the cursor.</param>
/// <param name="Scroll">The part of the text that is shown.</param>
internal sealed record WhyPage(
    RunReport Report, UnitStyle Units, Pending<Explanation> First, Pending<Explanation> InOtherUnits, Pending<Explanation>? Later,
    DateTimeOffset? At, bool IsUnderCursor, ScrolledText Scroll) : IPage
{
    private static readonly TimeSpan Near = TimeSpan.FromHours(1);

    public char Key => '4';

    public string Title => "why";

    public IReadOnlyList<string> Help { get; } =
    [
        "WHY",
        "  The shortage under the cursor of the nights, or within an",
        "  hour of it; else the first one; where nothing is short,",
        "  how close it comes. The binding limit and what would have",
        "  held is found for the first shortage only.",
    ];

    public IReadOnlyList<KeyBinding> Keys => Shown.Value is null ? KeyBindings.Start : Later is null ? KeyBindings.Scrolling
        : [.. KeyBindings.Scrolling, new("Enter", "the first shortage", new PageMessage.Choose(), "Enter first shortage")];

    public PageJob? DueJob => Shown.DueJob;

    private Pending<Explanation> Shown => Later ?? First;

    public static WhyPage Of(RunReport report, UnitStyle units)
        => new(
            report, units, new(CreateJob(report, units, null)), new(CreateJob(report, units.IsUs ? UnitStyle.Si : UnitStyle.Us, null)), null, null, false, new());

    public Sheet Draw(int width, int height)
        => Shown.Value is null ? TextPage.Sentence(width, height, Report.Scenario.Title, Shown.Status, Keys)
            : TextPage.Draw(width, height, Report.Scenario.Title, Which(), Lines(), Scroll, Keys);

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.UnitsChanged units when units.Units.IsUs != Units.IsUs => this with { Units = units.Units, First = InOtherUnits, InOtherUnits = First },
        PageMessage.Resized size => this with { Scroll = Scroll with { Rows = TextPage.RowsOf(size.Height) } },
        PageMessage.Opened { At: { } at } => On(at.Time),
        PageMessage.Choose when Shown is { Value: not null } && Later is not null
            => this with { Later = null, At = null, IsUnderCursor = false, Scroll = Scroll with { First = 0 } },
        // An explanation may arrive for the units that are no longer shown.
        PageMessage.Completed { Result: Explanation { AtTime: false } explained } when explained.Grid != Units.Grid
            => this with { InOtherUnits = InOtherUnits.Update(message) },
        PageMessage.Completed { Result: Explanation { AtTime: var atTime } } => atTime ? this with { Later = Later?.Update(message) } : this with { First = First.Update(message) },
        PageMessage.Failed or PageMessage.Cancelled or PageMessage.Choose
            => Later is null ? this with { First = First.Update(message) } : this with { Later = Later.Update(message) },
        _ => this with { Scroll = Scroll.Update(message, Lines()) },
    };

    private WhyPage On(DateTimeOffset time)
    {
        DateTimeOffset? under = ShortageAt(Report, time), first = FirstShortage(Report);
        if (under is null || under == first)
            return this with { Later = null, At = null, IsUnderCursor = under is not null, Scroll = Later is null ? Scroll : Scroll with { First = 0 } };
        return under == At ? this with { IsUnderCursor = true }
            : this with { Later = new(CreateJob(Report, Units, under)), At = under, IsUnderCursor = true, Scroll = Scroll with { First = 0 } };
    }

    private static PageJob CreateJob(RunReport report, UnitStyle units, DateTimeOffset? at) => new(
        at is { } time ? $"Explaining the state on {ClockText.DayClock(time)}"
            : report.Summary.FirstFailure is { } first
                ? $"Finding why {VerdictWords.Clause(report.Summary.Verdict)} on {ClockText.DayClock(first)}, and what would have held" : "Finding how close it comes",
        (finished, cancel) =>
        {
            try
            {
                return at is null ? Explanation.Of(report, units.Grid, () => finished.Report(1), cancel: cancel)
                    : Explanation.Of(report.Scenario, units.Grid, at, () => finished.Report(1), cancel: cancel);
            }
            catch (LedgerOpenException)
            {
                throw new InvalidOperationException(PageJob.OpenLedger);
            }
        });

    private string Which() => At is { } at ? $"the shortage of {ClockText.DayClock(at)}"
        : FirstShortage(Report) is null ? (Report.Summary.Verdict == Verdict.Holds ? "nothing is short" : $"no gas is short first; {VerdictWords.Clause(Report.Summary.Verdict)}") : IsUnderCursor ? "the first shortage, under the cursor" : "the first shortage; none near the cursor";

    private IReadOnlyList<TextLine> Lines() => Shown.Value is { } explanation ? TextLine.Of(ExplainText.Sections(explanation, Units, Cautions.Short)) : [];

    /// <summary>The beginning of the shortage that a time lies in or within an hour of; null where there is none.</summary>
    private static DateTimeOffset? ShortageAt(RunReport report, DateTimeOffset time)
    {
        DateTimeOffset? nearest = null;
        TimeSpan least = TimeSpan.MaxValue;
        foreach ((DateTimeOffset from, DateTimeOffset to) in Shortages(report))
        {
            TimeSpan away = time < from ? from - time : time > to ? time - to : TimeSpan.Zero;
            if (away < least)
                (nearest, least) = (from, away);
        }

        return least <= Near ? nearest : null;
    }

    /// <summary>The shortage that is explained in full: that of the first night that does not hold; null where gas is not what failed it.</summary>
    internal static DateTimeOffset? FirstShortage(RunReport report)
        => report.Nights.FirstOrDefault(n => n.Verdict != Verdict.Holds) is { Verdict: Verdict.GasShort or Verdict.GasGone } night ? night.FirstShort : null;

    private static IEnumerable<(DateTimeOffset From, DateTimeOffset To)> Shortages(RunReport report)
    {
        DateTimeOffset? from = null;
        foreach (ReportedEvent e in report.Events)
        {
            if (e.Kind == ReportedKind.ShortBegins)
            {
                from ??= e.Time;
            }
            else if (EventKinds.EndsShortage(e.Kind) && from is { } begun)
            {
                yield return (begun, e.Time);
                from = null;
            }
        }

        if (from is { } open)
            yield return (open, report.Nights[^1].To);
    }
}
