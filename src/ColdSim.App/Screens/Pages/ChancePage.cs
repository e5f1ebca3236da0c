using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>The chance of holding: night by night, what matters most, and the spread of the members over time.</summary>
/// <param name="Report">The run as it is.</param>
/// <param name="Units">Units to print.</param>
/// <param name="Chance">The members.</param>
/// <param name="Minute">The time cursor.</param>
/// <param name="AsText">Whether everything is shown as text.</param>
/// <param name="Scroll">The part of the text that is shown.</param>
internal sealed record ChancePage(RunReport Report, UnitStyle Units, Pending<ChanceReport> Chance, int Minute, bool AsText, ScrolledText Scroll) : IPage
{
    // Two cores run so many in about two seconds, whether three short nights or a fortnight.
    private const int FirstMembers = 100;
    private const int FirstMembersOfMany = 40;
    private const int Many = 7;
    private const int TimesMore = 4;
    private const int Seed = 1;

    private const int Hour = 60;
    private const int Day = 24 * Hour;

    public char Key => '7';

    public string Title => "chance";

    /// <summary>The result before more members were asked for; null where there was none.</summary>
    public ChanceReport? Before { get; init; }

    public IReadOnlyList<string> Help { get; } =
    [
        "CHANCE",
        "  The scenario run many times, each with other errors in",
        "  forecast, rig and readings, and how many of these members",
        "  hold. Options are left out:",
        "  'coldsim run FILE --members N' tries them too.",
        "  Within: where the chance lies, 95 times in 100, as far as",
        "  so few members tell; four times as many halve it.",
        "  In the strips half the members lie below the line and",
        "  eight in ten within the speckles.",
    ];

    public IReadOnlyList<KeyBinding> Keys => Chance.Value is not { } known ? KeyBindings.Start
        : AsText ? [.. KeyBindings.Scrolling, KeyBindings.AsText(true, "page")]
        :
        [
            .. Asked(known) is var members && members == known.Done ? Array.Empty<KeyBinding>() :
            [
                new(
                    "Enter", known.IsPartial ? "the rest of its members" : $"{members} members", new PageMessage.Choose(),
                    known.IsPartial ? $"Enter all {members}" : $"Enter {members} members")
                {
                    Cost = $"runs it {members} times; Esc stops that and shows what is done",
                },
            ],
            new("←→", "3 hours; with Shift or Ctrl 1", new PageMessage.Step(10), "←→ 3 h"),
            .. KeyBindings.ChoosingNights.Where(k => k.Keys != "Home End"),
            new("Home End", "beginning, end of the run", new PageMessage.Last()),
            KeyBindings.AsText(false, "page"),
        ];

    public TimeCursor? Cursor => TimeCursor.At(Report, Night, Minute);

    public PageJob? DueJob => Chance.DueJob;

    /// <summary>The whole run; its fan is not cut into nights.</summary>
    public MinuteRange Span => new(0, Math.Max(1, Report.Series.Outside_K.Length));

    /// <summary>Index of the night under the cursor.</summary>
    public int Night => Math.Max(0, Report.Nights.Select((_, i) => i).LastOrDefault(i => MinuteRange.Of(Report, i).From <= Minute));

    public static ChancePage Of(RunReport report, UnitStyle units)
        => new(report, units, new(CreateJob(report, report.Nights.Count < Many ? FirstMembers : FirstMembersOfMany)), 0, false, new());

    public Sheet Draw(int width, int height)
        => Chance.Value is not { } chance ? TextPage.Sentence(width, height, Report.Scenario.Title, Chance.Status, Keys)
            : AsText ? TextPage.Draw(width, height, Report.Scenario.Title, ChanceSheet.Which(chance), Lines(chance), Scroll, Keys)
            : ChanceSheet.Draw(this, chance, width, height);

    public IPage Update(PageMessage message)
    {
        switch (message)
        {
            case PageMessage.UnitsChanged units:
                return this with { Units = units.Units };
            case PageMessage.Resized size:
                return this with { Scroll = Scroll with { Rows = TextPage.RowsOf(size.Height) } };
            case PageMessage.Opened { At: { } at }:
                return At(at.Minute);
            case PageMessage.Completed { Result: ChanceReport chance }:
                return this with { Chance = Chance with { Value = Before?.Done > chance.Done ? Before : chance }, Before = null };
            case PageMessage.Failed or PageMessage.Cancelled when Before is not null:
                return this with { Chance = Chance with { Value = Before }, Before = null };
            case PageMessage.Failed or PageMessage.Cancelled:
                return this with { Chance = Chance.Update(message) };
        }

        if (Chance.Value is not { } known)
            return this with { Chance = Chance.Update(message) };
        return message switch
        {
            PageMessage.ToggleList => this with { AsText = !AsText },
            PageMessage.Close => this with { AsText = false },
            PageMessage.Choose => More(known),
            _ when AsText => this with { Scroll = Scroll.Update(message, Lines(known)) },
            PageMessage.Step step => At(Minute + Math.Sign(step.Minutes) * (Math.Abs(step.Minutes) > 1 ? 3 * Hour : Hour)),
            PageMessage.Rows rows => At(Minute + rows.Count * Day),
            PageMessage.Pages pages => At(Minute + pages.Count * Day),
            PageMessage.NextNight next => At(Minute + next.Direction * Day),
            PageMessage.First => At(0),
            PageMessage.Last => At(int.MaxValue),
            PageMessage.PointAt point => At(point.Minute),
            _ => this,
        };
    }

    public PageMessage? Click(int x, int y, int width, int height) => ChanceSheet.Click(this, x, y, width, height);

    private ChancePage At(int minute) => this with { Minute = Span.Clamp(minute) };

    // A larger ensemble begins with the members of a smaller one, so asking for more loses nothing.
    private ChancePage More(ChanceReport known)
    {
        int members = Asked(known);
        return members == known.Done ? this : this with { Chance = new(CreateJob(Report, members)), Before = known };
    }

    private static int Asked(ChanceReport known) => known.IsPartial ? known.Asked : Math.Min(known.Asked * TimesMore, ChanceRun.MostMembers);

    private static PageJob CreateJob(RunReport report, int members) => new(
        $"Running it {ChanceSentence.Count(members)} times with errors in forecast, coach, contents and habits",
        (finished, cancel) =>
        {
            ChanceReport chance = ChanceRun.Of(report.Scenario, [], members, Seed, finished, cancel: cancel);
            return PageJob.IfClosed(chance, chance.Ledger);
        })
    {
        StepName = "members",
        StepCount = members,
        ReturnsPartial = true,
    };

    private IReadOnlyList<TextLine> Lines(ChanceReport chance) => TextLine.Of(ChanceText.Sections(chance, Units, Cautions.Short));
}
