using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace ColdSim.App.Screens;

/// <summary>Carries keys to the view and the view's sheet to the terminal; nothing is decided here.</summary>
internal sealed class NightScreen : Runnable
{
    private readonly InkColors _inks;

    public NightScreen(NightView view, bool color)
    {
        View = view;
        _inks = new(color);
        SetScheme(_inks.Scheme);
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
    }

    public NightView View { get; private set; }

    protected override bool OnKeyDown(Key key)
    {
        if (NightKeys.Quits(key))
            App?.RequestStop();
        else if (NightKeys.Message(key) is NightMessage message)
            Take(message);
        else
            return key == Key.Esc || base.OnKeyDown(key);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked) || mouse.Position is not System.Drawing.Point at || View.Page != OpenPage.Curves)
            return base.OnMouseEvent(mouse);
        ScreenPlan plan = ScreenPlan.For(Viewport.Width, Viewport.Height);
        int column = at.X - plan.Place.Left;
        if (plan.Fits && column >= 0 && column < plan.Place.Columns && at.Y <= plan.ClockRow)
            Take(new NightMessage.PointAt(View.Span.MinuteOf(column, plan.Place.Columns)));
        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        Sheet sheet = NightPage.Draw(View, Viewport.Width, Viewport.Height);
        for (int y = 0; y < sheet.Height; y++)
        {
            string row = sheet.Row(y);
            for (int from = 0, to; from < sheet.Width; from = to)
            {
                Ink ink = sheet[from, y].Ink;
                for (to = from + 1; to < sheet.Width && sheet[to, y].Ink == ink;)
                    to++;
                SetAttribute(_inks.Of(ink));
                AddStr(from, y, row[from..to]);
            }
        }

        return true;
    }

    private void Take(NightMessage message)
    {
        View = View.After(message);
        SetNeedsDraw();
    }
}
