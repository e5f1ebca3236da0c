using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Screens.Pages;

/// <summary>The coldest night this rig is fed through: sentence, table and chart.</summary>
/// <remarks>Limits are run at whole degrees of the person's own unit, so each unit has a chart of its own.</remarks>
internal sealed record LimitsPage(string Title, UnitStyle Units, Figures<LimitChart> Us, Figures<LimitChart> Si, ScrolledText Scroll) : IPage
{
    private const string NoFurnace =
        "Limits are the nights through which a furnace is fed, and this scenario has none: write a [furnace] table into its file, with [coach] and [thermostat].";

    public char Key => '5';

    string IPage.Title => "limits";

    public IReadOnlyList<string> Help { get; } =
    [
        "LIMITS",
        "  The coldest night's low at which this rig's furnace is",
        "  still fed, by fill, blanket and cylinders. They are found",
        "  when the page is first opened, for each unit on its own.",
        "  Up, Down, PgUp, PgDn  scroll",
        "  Tab, Shift-Tab        next, previous part",
        "  Left, Right           aside, where the screen is narrow",
        "  Enter                 starts again after a stop",
    ];

    public PageWork? Wanted => Own.Wanted;

    private Figures<LimitChart> Own => Units.IsUs ? Us : Si;

    public static LimitsPage Of(Scenario scenario, UnitStyle units) => new(
        scenario.Title, units, new(Work(scenario, LimitAxis.Fahrenheit)), new(Work(scenario, LimitAxis.Celsius)), new());

    public Sheet Draw(int width, int height)
        => Own.Work is null ? TextPage.Sentence(width, height, Title, NoFurnace)
            : Own.Value is null ? TextPage.Sentence(width, height, Title, Own.Say, "Enter start")
            : TextPage.Draw(width, height, Title, "limits of this rig", Lines(), Scroll);

    public IPage After(PageMessage message) => message switch
    {
        PageMessage.UnitsAre units => this with { Units = units.Units },
        PageMessage.Sized sized => this with { Scroll = Scroll with { Rows = TextPage.RowsOf(sized.Height) } },
        // A chart may come for the unit that is not shown any more.
        PageMessage.Done { Figures: LimitChart { Axis: var axis } } => axis == LimitAxis.Fahrenheit ? this with { Us = Us.After(message) } : this with { Si = Si.After(message) },
        PageMessage.Done or PageMessage.Failed or PageMessage.Stopped or PageMessage.Choose
            => Units.IsUs ? this with { Us = Us.After(message) } : this with { Si = Si.After(message) },
        _ => this with { Scroll = Scroll.After(message, Lines()) },
    };

    private static PageWork? Work(Scenario scenario, LimitAxis axis) => scenario.Rig.Furnace is null ? null : new(
        "Finding the coldest night that this rig is fed through, by fill and set-up",
        (finished, cancel) =>
        {
            LimitChart chart = LimitChart.Of(scenario, axis, LimitChart.UsualFills, finished, cancel: cancel);
            return PageFaults.IfClosed(chart, chart.Cells.Select(c => c.Ledger).OfType<LedgerBalance>());
        })
    {
        Parts = "limits",
        Of = LimitChart.UsualFills.Count * SetUp.Of(scenario.Rig).Count,
    };

    // The title stands in the head already.
    private IReadOnlyList<TextLine> Lines()
    {
        if (Own.Value is not { } chart)
            return [];
        IReadOnlyList<TextSection> all = LimitText.Sections(chart, Units, Cautions.Short);
        return TextLine.Of([all[0] with { Title = "In one sentence" }, .. all.Skip(1)]);
    }
}
