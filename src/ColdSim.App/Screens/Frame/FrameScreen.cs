using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace ColdSim.App.Screens.Frame;

/// <summary>Carries keys to the frame, the frame's sheet to the terminal and its work to other threads; nothing is decided here.</summary>
internal sealed class FrameScreen : Runnable
{
    private static readonly TimeSpan BetweenCounts = TimeSpan.FromMilliseconds(250);

    private readonly InkColors _inks;
    private readonly FrameJobs _jobs;
    private bool _counting;

    public FrameScreen(FrameView view, bool color)
    {
        View = view;
        _inks = new(color);
        _jobs = new(message => App?.Invoke(() => Take(message)));
        SetScheme(_inks.Scheme);
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
    }

    public FrameView View { get; private set; }

    protected override bool OnKeyDown(Key key)
    {
        bool text = View.Page.TakesText && View.HelpRow is null;
        if (PageKeys.Quits(key, text))
            App?.RequestStop();
        else if (PageKeys.Frame(key, text) is FrameMessage message)
            Take(message);
        else
            return key == Key.Esc || base.OnKeyDown(key);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked) || mouse.Position is not System.Drawing.Point at
            || !FrameSheet.Fits(Viewport.Width, Viewport.Height))
        {
            return base.OnMouseEvent(mouse);
        }

        if (at.Y < FrameSheet.Rows)
        {
            if (FrameSheet.PageAt(View, at.X, Viewport.Width) is { } page)
                Take(new FrameMessage.GoTo(page.Key));
        }
        else if (View.HelpRow is null && View.Waiting is null
            && View.Page.Click(at.X, at.Y - FrameSheet.Rows, Viewport.Width, Viewport.Height - FrameSheet.Rows) is { } message)
        {
            Take(new FrameMessage.Ask(message));
        }

        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (View.Width != Viewport.Width || View.Height != Viewport.Height)
            View = View.After(new FrameMessage.Resized(Viewport.Width, Viewport.Height));
        Sheet sheet = FrameSheet.Draw(View, Viewport.Width, Viewport.Height);
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

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            _jobs.Dispose();
        base.Dispose(disposing);
    }

    private void Take(FrameMessage message)
    {
        View = View.After(message);
        _jobs.Follow(View.Jobs);
        if (_jobs.Any && !_counting)
        {
            _counting = true;
            App?.AddTimeout(BetweenCounts, Count);
        }

        SetNeedsDraw();
    }

    private bool Count()
    {
        foreach (FrameMessage.Counted counted in _jobs.Counts)
            Take(counted);
        return _counting = _jobs.Any;
    }
}
