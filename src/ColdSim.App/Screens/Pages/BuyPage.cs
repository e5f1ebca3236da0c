using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Purchases;

namespace ColdSim.App.Screens.Pages;

/// <summary>Cylinders that can be bought, side by side over the scenario's weather: the verdict, the table and how to read it.</summary>
/// <remarks>The coldest nights are run at whole degrees of the person's own unit, so each unit has a comparison of its own.</remarks>
/// <param name="Scenario">The rig and the weather record.</param>
/// <param name="Units">Units to print.</param>
/// <param name="Us">The comparison in US units; its job is null until it is asked for.</param>
/// <param name="Si">The same in SI units.</param>
/// <param name="Scroll">The part of the text that is shown.</param>
internal sealed record BuyPage(
    Scenario Scenario, UnitStyle Units, Pending<PurchaseReport> Us, Pending<PurchaseReport> Si, ScrolledText Scroll) : IPage
{
    public char Key => 'b';

    public string Title => "buy";

    public bool IsInRow => false;

    public IReadOnlyList<string> Help { get; } =
    [
        "BUY",
        "  Cylinders that can be bought, for this rig over all of the",
        "  scenario's weather: coldest night fed, days a filling,",
        "  refills, money and weight to lift. For a whole winter open",
        "  it with 'coldsim view FILE --weather WINTER.csv'.",
    ];

    public IReadOnlyList<KeyBinding> Keys => Own.Value is not null ? KeyBindings.Scrolling : Refusal is not null ? [] :
    [
        new("Enter", $"compare {SetUps(Units).Count} set-ups", new PageMessage.Choose(), "Enter compare")
        {
            Cost = $"finds {SetUps(Units).Count * ColdLimits.Fills.Count} limits, some seconds",
        },
    ];

    public PageJob? DueJob => Own.DueJob;

    private string? Refusal => PurchaseText.Refusal(Scenario);

    private Pending<PurchaseReport> Own => Units.IsUs ? Us : Si;

    /// <summary>The page before anything is compared.</summary>
    public static BuyPage Of(Scenario scenario, UnitStyle units) => new(scenario, units, new(null), new(null), new());

    public Sheet Draw(int width, int height)
        => Refusal is { } refusal ? TextPage.Sentence(width, height, Scenario.Title, $"Nothing to compare: this scenario {refusal}.", Keys)
            : Own.Value is null ? TextPage.Sentence(width, height, Scenario.Title, Own.Status.Length > 0 ? Own.Status : Offer(), Keys)
            : TextPage.Draw(width, height, Scenario.Title, "cylinders to buy", Lines(), Scroll, Keys);

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.UnitsChanged units => this with { Units = units.Units },
        PageMessage.Resized size => this with { Scroll = Scroll with { Rows = TextPage.RowsOf(size.Height) } },
        // A comparison may arrive for the units that are no longer shown.
        PageMessage.Completed { Result: Compared bought }
            => With(bought.IsUs, (bought.IsUs ? Us : Si).Update(new PageMessage.Completed(bought.Report))),
        PageMessage.Choose when Own is { Value: null, Job: null } && Refusal is null => With(Units.IsUs, new(CreateJob(Scenario, Units))),
        PageMessage.Choose or PageMessage.Failed or PageMessage.Cancelled => With(Units.IsUs, Own.Update(message)),
        _ => this with { Scroll = Scroll.Update(message, Lines()) },
    };

    private BuyPage With(bool isUs, Pending<PurchaseReport> own) => isUs ? this with { Us = own } : this with { Si = own };

    private string Offer()
    {
        double days = Math.Floor((Scenario.Weather.Last - Scenario.Start).TotalDays);
        return $"Which cylinders to buy: Enter compares {SetUps(Units).Count} set-ups over the {UnitStyle.Number(days, 0)} days of this "
            + $"scenario's weather from {ClockText.DayClock(Scenario.Start)} on. For a whole winter open it with 'coldsim view FILE --weather WINTER.csv'.";
    }

    private static IReadOnlyList<SetUp> SetUps(Scenario scenario, UnitStyle units) => SetUp.For(scenario.Rig, metric: !units.IsUs);

    private IReadOnlyList<SetUp> SetUps(UnitStyle units) => SetUps(Scenario, units);

    private static PageJob CreateJob(Scenario scenario, UnitStyle units) => new(
        "Comparing cylinders that can be bought over all of the weather",
        (finished, cancel) =>
        {
            LimitAxis axis = units.IsUs ? LimitAxis.Fahrenheit : LimitAxis.Celsius;
            PurchaseReport report = PurchaseReport.Of(scenario, SetUps(scenario, units), axis, finished: finished, cancel: cancel);
            return new Compared(units.IsUs, PageJob.IfClosed(report, report.Ledgers));
        })
    {
        StepName = "set-ups",
        StepCount = SetUps(scenario, units).Count,
    };

    private IReadOnlyList<TextLine> Lines() => Own.Value is not { } report ? [] :
    [
        .. AnswerLayout.Whole(PurchaseAnswer.Of(report, Units)).Select(l => new TextLine(l.Text, l.Stressed)),
        .. PurchaseText.Sections(report, Units, Cautions.Short).SelectMany(s => (IEnumerable<TextLine>)
            [new(""), new(s.Title, true), .. s.Lines.Select(l => new TextLine(l))]),
    ];

    private sealed record Compared(bool IsUs, PurchaseReport Report);
}
