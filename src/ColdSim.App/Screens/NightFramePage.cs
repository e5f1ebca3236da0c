using ColdSim.App.Screens.Frame;
using ColdSim.Planning.Freezing;

namespace ColdSim.App.Screens;

/// <summary>The nights as a page of the frame.</summary>
/// <param name="View">What is shown.</param>
/// <param name="Left">How long is left when the furnace stops where the cursor stands; null while nobody asks.</param>
internal sealed record NightFramePage(NightView View, Figures<HeatStop>? Left = null) : IPage
{
    public char Key => '1';

    public string Title => "nights";

    public IReadOnlyList<string>? Help => null;

    public PageWork? Wanted => Left?.Wanted;

    public FrameCursor Cursor => new(View.Night, View.Minute, View.Time);

    FrameCursor? IPage.Cursor => Cursor;

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = NightPage.Draw(View, width, height);
        ScreenPlan plan = ScreenPlan.For(width, height);
        if (Left is not null && plan.Fits)
            HeatStopBand.Draw(sheet, plan.Side, View, Left);
        return sheet;
    }

    public IPage After(PageMessage message) => message switch
    {
        PageMessage.HeatStops => Asked(),
        PageMessage.Stopped => this with { Left = null },
        PageMessage.Done or PageMessage.Failed => this with { Left = Left?.After(message) },
        PageMessage.Close when Left is not null => this with { Left = null },
        _ => Moved(View.After(message)),
    };

    public PageMessage? Click(int x, int y, int width, int height)
    {
        ScreenPlan plan = ScreenPlan.For(width, height, CylinderAtCursor.Rows(View));
        int column = x - plan.Place.Left;
        return View.Page == OpenPage.Curves && plan.Fits && column >= 0 && column < plan.Place.Columns && y <= plan.ClockRow
            ? new PageMessage.PointAt(View.Span.MinuteOf(column, plan.Place.Columns)) : null;
    }

    // An answer belongs to its instant.
    private NightFramePage Moved(NightView view)
        => this with { View = view, Left = view.Minute == View.Minute && view.Page == OpenPage.Curves ? Left : null };

    private NightFramePage Asked()
        => View.Page != OpenPage.Curves || Left is { Failed: "" } ? this
            : View.Report.Scenario.Rig.Furnace is null ? this with { View = View with { Notice = "this rig has no furnace that could stop" } }
            : this with { Left = new(HeatStopWork.At(View.Report.Scenario, View.Time)) };
}
