using ColdSim.App.Screens.Frame;

namespace ColdSim.App.Screens;

/// <summary>The nights as a page of the frame.</summary>
internal sealed record NightFramePage(NightView View) : IPage
{
    public char Key => '1';

    public string Title => "nights";

    public IReadOnlyList<string>? Help => null;

    public FrameCursor Cursor => new(View.Night, View.Minute, View.Time);

    FrameCursor? IPage.Cursor => Cursor;

    public Sheet Draw(int width, int height) => NightPage.Draw(View, width, height);

    public IPage After(PageMessage message) => new NightFramePage(View.After(message));

    public PageMessage? Click(int x, int y, int width, int height)
    {
        ScreenPlan plan = ScreenPlan.For(width, height, CylinderAtCursor.Rows(View));
        int column = x - plan.Place.Left;
        return View.Page == OpenPage.Curves && plan.Fits && column >= 0 && column < plan.Place.Columns && y <= plan.ClockRow
            ? new PageMessage.PointAt(View.Span.MinuteOf(column, plan.Place.Columns)) : null;
    }
}
