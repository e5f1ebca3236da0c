using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Tries;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>The whole plan: verdict, a row a night, the chosen night, and what can be tried; Enter goes into that night.</summary>
/// <param name="Nights">The nights with their cursor, which Enter opens.</param>
/// <param name="IsInNight">Whether a night is open.</param>
internal sealed record PlanPage(NightPage Nights, bool IsInNight = false) : IPage, IRunPage
{
    private Pending<PlanInsight>? _insight;

    public char Key => '1';

    /// <summary>The verdict is in its name, so that every page shows it.</summary>
    public string Title => PlanWords.Holds(Report) ? "plan: holds" : "plan: FAILS";

    IReadOnlyList<string> IPage.Help => IsInNight ? Nights.Help : PlanHelp.Lines;

    public IReadOnlyList<KeyBinding> Keys => IsInNight ? Nights.Keys : PlanKeys.Of(this);

    /// <summary>The run that is shown.</summary>
    public RunReport Report => View.Report;

    /// <summary>The run without what is tried; null where nothing is tried.</summary>
    public RunReport? AsItIs => Try is { Shown.Settings.IsNone: false } tried ? tried.Bench.AsItIs : null;

    /// <summary>The units to print.</summary>
    public UnitStyle Units => View.Units;

    /// <summary>The chosen night, and the time cursor in it.</summary>
    public NightView View => Nights.View;

    /// <summary>What is worked out beside it; null while it is not there.</summary>
    public PlanInsight? Insight => _insight?.Value;

    /// <summary>What would make all nights hold; null while that is closed.</summary>
    public RemedyList? Help { get; init; }

    /// <summary>What is tried; null where nothing can be.</summary>
    public TryState? Try { get; init; }

    /// <summary>Where tries are saved; null where they cannot be.</summary>
    public TryFiles? Files { get; init; }

    /// <summary>The question as what a try is saved; null while nobody asks.</summary>
    public SavePrompt? Saving { get; init; }

    /// <summary>An answer to the last key; empty for none.</summary>
    public string Notice { get; init; } = "";

    /// <summary>What is said below the verdict: a question, an answer to the last key, or what a try changes; empty for nothing.</summary>
    public string Said => Saving is not null ? Saving.Line : Notice.Length > 0 ? Notice
        : Try is not { } tried ? "" : tried.Search?.DueJob is { } search ? $"{search.Description}…"
        : string.Join(". ", ((string[])[tried.IsWorking ? "Working…" : tried.Difference.Length > 0 ? $"As tried: {tried.Difference}" : "", tried.Notice]).Where(s => s.Length > 0));

    TimeCursor? IPage.Cursor => Nights.Cursor;

    (int Width, int Height) IPage.Least => IsInNight ? (Sheet.MinWidth, Sheet.MinHeight) : (PlanLayout.MinWidth, PlanLayout.MinHeight);

    bool IPage.TakesText => !IsInNight && (Saving is not null || Try is { IsOpen: true, Entry.Length: > 0 });

    bool IPage.TakesNumbers => !IsInNight && Help is null && Try is { IsOpen: true };

    public PageJob? DueJob
        => Saving?.Saving?.DueJob ?? Try?.DueJob ?? (IsInNight && Nights.DueJob is { } job ? job : Help?.Found.DueJob ?? _insight?.DueJob);

    /// <summary>The page on the first night that fails, else on the tightest.</summary>
    public static PlanPage Of(RunReport report, UnitStyle units)
        => new PlanPage(new NightPage(NightView.Open(report, units).On(PlanWords.FirstNight(report)))).WithInsight();

    public Sheet Draw(int width, int height) => IsInNight ? Nights.Draw(width, height) : PlanSheet.Draw(this, width, height);

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.Completed { Result: PlanInsight } => this with { _insight = _insight?.Update(message) },
        PageMessage.Completed { Result: Remedies } => this with { Help = Help?.Update(message) },
        PageMessage.Completed { Result: TriedRun or FoundLeast } => Tried(message),
        PageMessage.Completed { Result: SavedTry saved } => PlanSaving.Saved(this, saved),
        PageMessage.UnitsChanged units => (this with { Nights = (NightPage)Nights.Update(message), Help = null, Try = Try is null ? null : Try with { Units = units.Units } }).WithInsight(),
        PageMessage.Close when IsInNight && Nights.IsAtRest => this with { IsInNight = false },
        PageMessage.Resized => this,
        PageMessage.Opened => this with { Nights = (NightPage)Nights.Update(message) },
        _ when IsInNight => this with { Nights = (NightPage)Nights.Update(message) },
        PageMessage.Failed or PageMessage.Cancelled => Ended(message),
        _ when Saving is not null => PlanSaving.Update(this, Saving, message),
        _ when Help is not null => OnHelp(Help, message),
        _ => OnPlan(this with { Notice = "" }, message),
    };

    PageMessage? IPage.Click(int x, int y, int width, int height)
        => IsInNight ? Nights.Click(x, y, width, height) : Help is null ? PlanSheet.Click(this, x, y, width, height) : null;

    /// <summary>After the same files were read again, what is tried is tried again.</summary>
    IPage IPage.After(IPage before)
    {
        if (before is not PlanPage { Try: { } was } old || Try is not { } now)
            return this;
        now = now with { IsOpen = was.IsOpen, Row = Math.Min(was.Row, now.Bench.Adjustments.Count - 1), Night = was.Night };
        return this with { Notice = old.Notice, Try = was.Now.IsNone ? now : now.Trying(was.Now) };
    }

    /// <summary>The page with another state of what is tried; its run is shown as soon as it is there.</summary>
    internal PlanPage With(TryState tried)
    {
        PlanPage page = this with { Try = tried };
        if (tried.Shown.Report is not { } report || report == Report)
            return page;
        NightView view = NightView.Open(report, Units);
        int night = Math.Min(View.Night, report.Nights.Count - 1);
        view = view with { Night = night, Minute = MinuteRange.Of(report, night).Clamp(View.Minute) };
        return (page with { Nights = new NightPage(view), Help = null }).WithInsight();
    }

    private PlanPage WithInsight() => this with { _insight = new(PlanJobs.Insight(Report, Units)) };

    private PlanPage Ended(PageMessage message)
        => Saving?.Saving?.DueJob is not null ? this with { Saving = null, Notice = message is PageMessage.Failed failed ? failed.Reason : "" }
            : Try?.DueJob is not null ? Tried(message)
            : Help is { Found.DueJob: not null } ? this with { Help = Help.Update(message) }
            : this with { _insight = _insight?.Update(message) };

    private PlanPage Tried(PageMessage message) => Try is null ? this : With((Try with { Night = View.Night, Units = Units }).Update(message));

    private PlanPage OnHelp(RemedyList help, PageMessage message) => message switch
    {
        PageMessage.Close or PageMessage.AskRemedies => this with { Help = null },
        PageMessage.Choose when help.Chosen is { } action && Try is not null => RemedySettings.Of(action, Try with { Night = View.Night, Units = Units }) is { } settings
            ? With((Try with { Night = View.Night, Units = Units }).Trying(settings)) with { Help = null }
            : this with { Help = null, Notice = "That is none of what can be turned here; write it into the file." },
        _ => this with { Help = help.Update(message) },
    };

    private static PlanPage OnPlan(PlanPage page, PageMessage message) => message switch
    {
        PageMessage.AskRemedies => page with { Help = new(new(PlanJobs.Remedies(page.Report, page.Units))), Try = page.Try is { } tried ? tried with { IsOpen = false } : null },
        PageMessage.SaveTry or PageMessage.WriteTry => PlanSaving.Ask(page, message),
        PageMessage.ToggleTry or PageMessage.UndoTry or PageMessage.ResetTry => page.Tried(message),
        _ when page.Try is { IsOpen: true } && message is not (PageMessage.NextNight or PageMessage.NextEvent or PageMessage.PointAt) => page.Tried(message),
        _ => page.OnNights(message),
    };

    private PlanPage OnNights(PageMessage message) => message switch
    {
        PageMessage.Choose => this with { IsInNight = true },
        PageMessage.Rows rows => On(View.Night + rows.Count),
        PageMessage.NextNight next => On(View.Night + next.Direction),
        PageMessage.Pages pages => On(View.Night + 7 * pages.Count),
        PageMessage.First => On(0),
        PageMessage.Last => On(Report.Nights.Count - 1),
        PageMessage.Step or PageMessage.PointAt or PageMessage.NextEvent => this with { Nights = (NightPage)Nights.Update(message) },
        _ => this,
    };

    private PlanPage On(int night)
    {
        int at = Math.Clamp(night, 0, Report.Nights.Count - 1);
        return this with { Nights = new(View.On(at)), Try = Try is { } tried ? tried with { Night = at } : null };
    }
}
