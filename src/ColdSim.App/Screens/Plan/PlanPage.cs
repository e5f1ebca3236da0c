using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>The whole plan: verdict, a row a night, the chosen night; Enter goes into that night.</summary>
/// <param name="Nights">The nights with their cursor, which Enter opens.</param>
/// <param name="IsInNight">Whether a night is open.</param>
internal sealed record PlanPage(NightPage Nights, bool IsInNight = false) : IPage, IRunPage
{
    private Pending<PlanInsight>? _insight;

    public char Key => '1';

    /// <summary>The verdict is in its name, so that every page shows it.</summary>
    public string Title => PlanWords.Holds(Report) ? "plan: holds" : "plan: FAILS";

    IReadOnlyList<string> IPage.Help => IsInNight ? Nights.Help : PlanHelp.Lines;

    /// <summary>The run that is shown.</summary>
    public RunReport Report => View.Report;

    /// <summary>The run without what is tried; null where nothing is tried.</summary>
    public RunReport? AsItIs { get; init; }

    /// <summary>The units to print.</summary>
    public UnitStyle Units => View.Units;

    /// <summary>The chosen night, and the time cursor in it.</summary>
    public NightView View => Nights.View;

    /// <summary>What is worked out beside it; null while it is not there.</summary>
    public PlanInsight? Insight => _insight?.Value;

    /// <summary>What would make all nights hold; null while that is closed.</summary>
    public RemedyList? Help { get; init; }

    TimeCursor? IPage.Cursor => Nights.Cursor;

    (int Width, int Height) IPage.Least => IsInNight ? (Sheet.MinWidth, Sheet.MinHeight) : (PlanLayout.MinWidth, PlanLayout.MinHeight);

    public PageJob? DueJob => IsInNight && Nights.DueJob is { } job ? job : Help?.Found.DueJob ?? _insight?.DueJob;

    public IReadOnlyList<KeyBinding> Keys => IsInNight ? Nights.Keys : PlanKeys.Of(this);

    /// <summary>The page on the first night that fails, else on the tightest.</summary>
    public static PlanPage Of(RunReport report, UnitStyle units)
        => new PlanPage(new NightPage(NightView.Open(report, units).On(PlanWords.FirstNight(report)))).WithInsight();

    public Sheet Draw(int width, int height) => IsInNight ? Nights.Draw(width, height) : PlanSheet.Draw(this, width, height);

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.Completed { Result: PlanInsight } => this with { _insight = _insight?.Update(message) },
        PageMessage.Completed { Result: Remedies } when Help is not null => this with { Help = Help.Update(message) },
        PageMessage.UnitsChanged => (this with { Nights = (NightPage)Nights.Update(message), Help = null }).WithInsight(),
        PageMessage.Close when IsInNight && Nights.IsAtRest => this with { IsInNight = false },
        PageMessage.Opened => this with { Nights = (NightPage)Nights.Update(message) },
        _ when IsInNight => this with { Nights = (NightPage)Nights.Update(message) },
        PageMessage.Failed or PageMessage.Cancelled => Help is { Found.DueJob: not null } ? this with { Help = Help.Update(message) } : this with { _insight = _insight?.Update(message) },
        _ when Help is not null => OnHelp(Help, message),
        _ => OnNights(message),
    };

    PageMessage? IPage.Click(int x, int y, int width, int height)
        => IsInNight ? Nights.Click(x, y, width, height) : Help is null ? PlanSheet.Click(this, x, y, width, height) : null;

    private PlanPage WithInsight() => this with { _insight = new(PlanJobs.Insight(Report, Units)) };

    private PlanPage OnHelp(RemedyList help, PageMessage message) => message switch
    {
        PageMessage.Close or PageMessage.AskRemedies => this with { Help = null },
        _ => this with { Help = help.Update(message) },
    };

    private PlanPage OnNights(PageMessage message) => message switch
    {
        PageMessage.AskRemedies => this with { Help = new(new(PlanJobs.Remedies(Report, Units))) },
        PageMessage.Choose => this with { IsInNight = true },
        PageMessage.Rows rows => On(View.Night + rows.Count),
        PageMessage.NextNight next => On(View.Night + next.Direction),
        PageMessage.Pages pages => On(View.Night + 7 * pages.Count),
        PageMessage.First => On(0),
        PageMessage.Last => On(Report.Nights.Count - 1),
        PageMessage.Step or PageMessage.PointAt or PageMessage.NextEvent => this with { Nights = (NightPage)Nights.Update(message) },
        _ => this,
    };

    private PlanPage On(int night) => this with { Nights = new(View.On(Math.Clamp(night, 0, Report.Nights.Count - 1))) };
}
