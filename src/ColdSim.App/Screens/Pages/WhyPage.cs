using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Why gas is short: the shortage under the nights' cursor, else the first, else by how much it holds.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">To print.</param>
/// <param name="Whole">The first shortage with limits and remedies, or by how much it holds.</param>
/// <param name="Later">A later shortage, its chain of cause only; null while none is asked for.</param>
/// <param name="At">Where the later one begins.</param>
/// <param name="Under">Whether a shortage is under the cursor.</param>
/// <param name="Scroll">What is seen.</param>
internal sealed record WhyPage(
    RunReport Report, UnitStyle Units, Figures<Explanation> Whole, Figures<Explanation>? Later, DateTimeOffset? At, bool Under, ScrolledText Scroll) : IPage
{
    public char Key => '4';

    public string Title => "why";

    public IReadOnlyList<string> Help { get; } =
    [
        "WHY",
        "  The shortage under the cursor of the nights, or within an",
        "  hour of it; else the first one; where nothing is short,",
        "  how close it comes. Which limit binds and what would have",
        "  held is found for the first shortage only.",
        "  Enter                 the first shortage",
        "  Up, Down, PgUp, PgDn  scroll",
        "  Tab, Shift-Tab        next, previous part",
        "  Left, Right           aside, where the screen is narrow",
    ];

    public PageWork? Wanted => Own.Wanted;

    private Figures<Explanation> Own => Later ?? Whole;

    public static WhyPage Of(RunReport report, UnitStyle units)
        => new(report, units, new(Work(report, null)), null, null, false, new());

    public Sheet Draw(int width, int height)
        => Own.Value is null ? TextPage.Sentence(width, height, Report.Scenario.Title, Own.Say, "Enter start")
            : TextPage.Draw(width, height, Report.Scenario.Title, Which(), Lines(), Scroll, Later is null ? [] : ["Enter first shortage"]);

    public IPage After(PageMessage message) => message switch
    {
        PageMessage.UnitsAre units => this with { Units = units.Units },
        PageMessage.Sized sized => this with { Scroll = Scroll with { Rows = TextPage.RowsOf(sized.Height) } },
        PageMessage.Opened { At: { } at } => On(at.Time),
        PageMessage.Choose when Own is { Value: not null } && Later is not null
            => this with { Later = null, At = null, Under = false, Scroll = Scroll with { First = 0 } },
        PageMessage.Done { Figures: Explanation { AtTime: var atTime } } => atTime ? this with { Later = Later?.After(message) } : this with { Whole = Whole.After(message) },
        PageMessage.Failed or PageMessage.Stopped or PageMessage.Choose
            => Later is null ? this with { Whole = Whole.After(message) } : this with { Later = Later.After(message) },
        _ => this with { Scroll = Scroll.After(message, Lines()) },
    };

    private WhyPage On(DateTimeOffset time)
    {
        DateTimeOffset? under = Shortages.At(Report, time), first = Shortages.First(Report);
        if (under is null || under == first)
            return this with { Later = null, At = null, Under = under is not null, Scroll = Later is null ? Scroll : Scroll with { First = 0 } };
        return under == At ? this with { Under = true }
            : this with { Later = new(Work(Report, under)), At = under, Under = true, Scroll = Scroll with { First = 0 } };
    }

    private static PageWork Work(RunReport report, DateTimeOffset? at) => new(
        at is { } time ? $"Explaining how it stands on {ClockText.DayClock(time)}"
            : Shortages.First(report) is { } first ? $"Finding why gas runs short on {ClockText.DayClock(first)}, and what would have held" : "Finding how close it comes",
        (finished, cancel) =>
        {
            try
            {
                return Explanation.Of(report.Scenario, at, () => finished.Report(1), cancel: cancel);
            }
            catch (LedgerOpenException)
            {
                throw new InvalidOperationException(PageFaults.Ledger);
            }
        });

    private string Which() => At is { } at ? $"the shortage of {ClockText.DayClock(at)}"
        : Shortages.First(Report) is null ? (Report.Summary.FlatAt is null ? "nothing is short" : "no gas is short; the battery goes flat") : Under ? "the first shortage, under the cursor" : "the first shortage; none near the cursor";

    private IReadOnlyList<TextLine> Lines()
    {
        if (Own.Value is not { } explanation)
            return [];
        IReadOnlyList<TextSection> all = ExplainText.Sections(explanation, Units, Cautions.Short);
        return TextLine.Of([all[0] with { Title = "In one sentence" }, .. all.Skip(1)]);
    }
}
