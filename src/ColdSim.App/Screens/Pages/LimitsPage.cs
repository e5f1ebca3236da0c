using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Screens.Pages;

/// <summary>The coldest night through which this rig gets its gas: sentence, table and chart.</summary>
/// <remarks>Limits are run at whole degrees of the person's own unit, so each unit has a chart of its own.</remarks>
internal sealed record LimitsPage(
    string Title, UnitStyle Units, Pending<LimitChart> Us, Pending<LimitChart> Si, ScrolledText Scroll) : IPage
{
    private const string NoFurnace =
        "Limits are the nights through which a furnace is fed, and this scenario has none: "
        + "write a [furnace] table into its file, with [coach] and [thermostat].";

    public char Key => '5';

    string IPage.Title => "limits";

    public IReadOnlyList<string> Help { get; } =
    [
        "LIMITS",
        "  The coldest night's low at which this rig's furnace is",
        "  still fed, by fill, blanket and cylinders. They are found",
        "  when the page is first opened, for each unit on its own.",
    ];

    public IReadOnlyList<KeyBinding> Keys => Own.Value is not null ? KeyBindings.Scrolling : Own.Job is null ? [] : KeyBindings.Start;

    public PageJob? DueJob => Own.DueJob;

    private Pending<LimitChart> Own => Units.IsUs ? Us : Si;

    public static LimitsPage Of(Scenario scenario, UnitStyle units) => new(
        scenario.Title, units, new(CreateJob(scenario, LimitAxis.Fahrenheit)), new(CreateJob(scenario, LimitAxis.Celsius)), new());

    public Sheet Draw(int width, int height)
        => Own.Job is null ? TextPage.Sentence(width, height, Title, NoFurnace, Keys)
            : Own.Value is null ? TextPage.Sentence(width, height, Title, Own.Status, Keys)
            : TextPage.Draw(width, height, Title, "limits of this rig", Lines(width), Scroll, Keys);

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.UnitsChanged units => this with { Units = units.Units },
        PageMessage.Resized size => this with { Scroll = Scroll with { Rows = TextPage.RowsOf(size.Height) } },
        // A chart may arrive for the unit that is no longer shown.
        PageMessage.Completed { Result: LimitChart { Axis: var axis } }
            => axis == LimitAxis.Fahrenheit ? this with { Us = Us.Update(message) } : this with { Si = Si.Update(message) },
        PageMessage.Completed or PageMessage.Failed or PageMessage.Cancelled or PageMessage.Choose
            => Units.IsUs ? this with { Us = Us.Update(message) } : this with { Si = Si.Update(message) },
        _ => this with { Scroll = Scroll.Update(message, Lines(Sheet.MinWidth)) },
    };

    private static PageJob? CreateJob(Scenario scenario, LimitAxis axis) => scenario.Rig.Furnace is null ? null : new(
        "Finding the coldest night that this rig is fed through, by fill and set-up",
        (finished, cancel) =>
        {
            LimitChart chart = LimitChart.Of(scenario, axis, LimitChart.UsualFills, finished, cancel: cancel);
            return PageJob.IfClosed(chart, chart.Cells.Select(c => c.Ledger).OfType<LedgerBalance>());
        })
    {
        StepName = "limits",
        StepCount = (LimitChart.UsualFills.Count + 1) * RigVariant.Of(scenario.Rig).Count,
    };

    /// <summary>The text with its picture as wide as the page; how many lines there are does not depend on the width.</summary>
    private IReadOnlyList<TextLine> Lines(int width)
    {
        if (Own.Value is not { } chart)
            return [];
        if (!LimitScale.Found(chart.Cells).Any())
            return TextLine.Of(LimitText.Sections(chart, Units, Cautions.Short));
        Sheet picture = LimitStrip.Draw(chart, Units, width);
        string[] rows = [.. Enumerable.Range(0, picture.Height).Select(picture.Row)];
        TextLine[] lines = [.. TextLine.Of(LimitText.Sections(chart, Units, Cautions.Short, rows))];
        int top = Array.FindIndex(lines, l => l.Heading && l.Text == LimitText.Drawn) + 1;
        for (int row = 0; row < picture.Height; row++)
            lines[top + row] = lines[top + row] with { Picture = picture, PictureRow = row };
        return lines;
    }
}
