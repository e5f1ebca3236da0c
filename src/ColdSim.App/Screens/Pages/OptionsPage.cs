using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>The options ranked, and the curves of two marked ones over each other.</summary>
/// <param name="Report">The run as it is.</param>
/// <param name="Units">Units to print.</param>
/// <param name="Ranked">The comparison.</param>
/// <param name="Row">The chosen row.</param>
/// <param name="Marked">Orders of the marked options, at most two; the first is A.</param>
/// <param name="Curves">The curves of the marked options that have been run.</param>
/// <param name="NextCurves">The run of a marked option that is still missing; null for none.</param>
/// <param name="Night">Index of the night whose curves are shown.</param>
/// <param name="Minute">The time cursor.</param>
/// <param name="AsText">Whether everything is shown as text.</param>
/// <param name="Scroll">The part of the text that is shown.</param>
internal sealed record OptionsPage(
    RunReport Report,
    UnitStyle Units,
    Pending<Comparison> Ranked,
    int Row,
    IReadOnlyList<int> Marked,
    IReadOnlyList<OptionCurves> Curves,
    Pending<OptionCurves>? NextCurves,
    int Night,
    int Minute,
    bool AsText,
    ScrolledText Scroll) : IPage
{
    private const string NoOptions =
        "This scenario has no [[option]] to compare with; write one into its file, as docs/comparing.md shows, and the options are shown here side by side.";

    public char Key => '3';

    public string Title => "options";

    public IReadOnlyList<string> Help { get; } =
    [
        "OPTIONS",
        "  The scenario as it is and its options, the best first.",
        "  The curves of two marked ones are drawn together below:",
        "  A without gaps, B dashed, in the night of the cursor.",
    ];

    public IReadOnlyList<KeyBinding> Keys => Ranked.Job is null ? [] : Ranked.Value is null ? KeyBindings.Start
        : AsText ? [.. KeyBindings.Scrolling, KeyBindings.AsText(true, "table")]
        :
        [
            new("↑↓", "another option", new PageMessage.Rows(1), "↑↓ option"),
            new("Space", "mark the option, or take its mark away", new PageMessage.ToggleMark(), "Space mark"),
            .. KeyBindings.OfNights,
            new("←→", "10 minutes; with Shift or Ctrl 1", new PageMessage.Step(10), "←→ 10 min"),
            KeyBindings.AsText(false, "table"),
        ];

    public TimeCursor? Cursor => TimeCursor.At(Report, Night, Minute);

    public PageJob? DueJob => Ranked.DueJob ?? NextCurves?.DueJob;

    public MinuteRange Span => MinuteRange.Of(Report, Night);

    public static OptionsPage Of(RunReport report, IReadOnlyList<ComparedOption> options, UnitStyle units) => new(
        report, units, new(options.Count == 0 ? null : CreateJob(report, options)), 0, [], [OptionCurves.Of(0, report)], null, 0, 0, false, new());

    public Sheet Draw(int width, int height)
        => Ranked.Job is null ? TextPage.Sentence(width, height, Report.Scenario.Title, NoOptions, Keys)
            : Ranked.Value is not { } comparison ? TextPage.Sentence(width, height, Report.Scenario.Title, Ranked.Status, Keys)
            : AsText ? TextPage.Draw(width, height, Report.Scenario.Title, "options", Lines(), Scroll, Keys)
            : OptionsSheet.Draw(this, comparison, width, height);

    public IPage Update(PageMessage message)
    {
        switch (message)
        {
            case PageMessage.UnitsChanged units:
                return this with { Units = units.Units };
            case PageMessage.Resized size:
                return this with { Scroll = Scroll with { Rows = TextPage.RowsOf(size.Height) } };
            case PageMessage.Opened { At: { } at }:
                return this with { Night = at.Night, Minute = at.Minute };
            case PageMessage.Completed { Result: OptionCurves curves }:
                return WithNextJob(this with { Curves = [.. Curves, curves], NextCurves = null });
            case PageMessage.Completed { Result: Comparison { Rows: var rows } }:
                return WithNextJob(this with { Ranked = Ranked.Update(message), Marked = FirstMarks(rows) });
            case PageMessage.Failed or PageMessage.Cancelled:
                return Ranked.Value is null ? this with { Ranked = Ranked.Update(message) } : this with { NextCurves = NextCurves?.Update(message) };
        }

        if (Ranked.Value is not { } comparison)
            return this with { Ranked = Ranked.Update(message) };
        return message switch
        {
            PageMessage.ToggleList => this with { AsText = !AsText },
            PageMessage.Close => this with { AsText = false },
            _ when AsText => this with { Scroll = Scroll.Update(message, Lines()) },
            PageMessage.Rows rows => To(Row + rows.Count, comparison),
            PageMessage.Pages pages => To(Row + pages.Count * 10, comparison),
            PageMessage.First => To(0, comparison),
            PageMessage.Last => To(int.MaxValue, comparison),
            PageMessage.ToggleMark => WithNextJob(this with { Marked = Toggled(comparison.Rows[Row].Order) }),
            PageMessage.Choose => this with { NextCurves = NextCurves?.Update(message) },
            PageMessage.Step step => this with { Minute = Span.Clamp(Minute + step.Minutes) },
            PageMessage.NextNight next => Other(Night + next.Direction),
            PageMessage.PointAt point => this with { Minute = Span.Clamp(point.Minute) },
            _ => this,
        };
    }

    /// <summary>The letter of a marked option; a blank for another.</summary>
    public char Letter(int order) => Marked.Count > 0 && Marked[0] == order ? 'A' : Marked.Count > 1 && Marked[1] == order ? 'B' : ' ';

    /// <summary>The curves of a marked option; null before it is run.</summary>
    public OptionCurves? CurvesOf(int place) => place < Marked.Count ? Curves.FirstOrDefault(c => c.Order == Marked[place]) : null;

    // At first the rig as it is and the best other option are marked.
    private static IReadOnlyList<int> FirstMarks(IReadOnlyList<ComparedRow> rows)
        => [0, .. rows.Where(r => r.Order != 0).Take(1).Select(r => r.Order)];

    // A third mark replaces the second.
    private IReadOnlyList<int> Toggled(int order)
        => Marked.Contains(order) ? [.. Marked.Where(m => m != order)] : Marked.Count < 2 ? [.. Marked, order] : [Marked[0], order];

    private OptionsPage To(int row, Comparison comparison) => this with { Row = Math.Clamp(row, 0, comparison.Rows.Count - 1) };

    private OptionsPage Other(int night)
    {
        if (night < 0 || night >= Report.Nights.Count)
            return this;
        OptionsPage there = this with { Night = night };
        return there with { Minute = there.Span.Clamp(Minute + (night - Night) * 24 * 60) };
    }

    /// <summary>The page with a job for the first marked option that has not been run.</summary>
    private static OptionsPage WithNextJob(OptionsPage page)
    {
        int[] missing = [.. page.Marked.Where(m => page.Curves.All(c => c.Order != m))];
        if (missing.Length == 0 || page.Ranked.Value is not { } comparison)
            return page with { NextCurves = null };
        ComparedRow row = comparison.Rows.First(r => r.Order == missing[0]);
        return page with { NextCurves = new(CreateCurvesJob(row)) };
    }

    private static PageJob CreateCurvesJob(ComparedRow row) => new(
        $"Running {row.Option.Name}",
        (_, cancel) =>
        {
            RunReport report = NightRun.Of(row.Option.Scenario, cancel);
            return OptionCurves.Of(row.Order, PageJob.IfClosed(report, report.Ledger));
        })
    {
        KeepsPageVisible = true,
    };

    private static PageJob CreateJob(RunReport report, IReadOnlyList<ComparedOption> options) => new(
        $"Running the rig as it is and {(options.Count == 1 ? "1 option" : $"{options.Count} options")}",
        (finished, cancel) =>
        {
            Comparison comparison = Comparison.Of(report.Scenario, options, finished, cancel: cancel);
            return PageJob.IfClosed(comparison, comparison.Rows.Select(r => r.Ledger));
        })
    {
        StepCount = options.Count + 1,
    };

    private IReadOnlyList<TextLine> Lines() => Ranked.Value is { } comparison ? TextLine.Of(CompareText.Sections(comparison, Units, Cautions.Short, swept: false)) : [];

    PageMessage? IPage.Click(int x, int y, int width, int height) => OptionsSheet.Click(this, x, y, width, height);
}
