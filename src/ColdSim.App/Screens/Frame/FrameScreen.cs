using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace ColdSim.App.Screens.Frame;

/// <summary>Carries keys to the frame, the frame's sheet to the terminal and its jobs to other threads; nothing is decided here.</summary>
internal sealed class FrameScreen : Runnable
{
    private static readonly TimeSpan BetweenCounts = TimeSpan.FromMilliseconds(250);

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromSeconds(2);

    private readonly TerminalStyles _styles;
    private readonly bool _plain;
    private readonly JobDispatcher _jobs;
    private bool _isCounting;

    public FrameScreen(FrameView view, bool color, bool plain = false)
    {
        View = view;
        _styles = new(color);
        _plain = plain;
        _jobs = new(message => App?.Invoke(() => Take(message)));
        SetScheme(_styles.Scheme);
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;

        // The terminal's title is the person's; the toolkit would set it to this view's, which has none.
        Border.Settings &= ~BorderSettings.TerminalTitle;
    }

    public FrameView View { get; private set; }

    /// <summary>The file that the person wants to edit, for which the terminal is given away; null for none.</summary>
    public string? Editing { get; private set; }

    /// <summary>Raised with text for the terminal's clipboard.</summary>
    public event Action<string>? Copied;

    /// <summary>Raised when the mouse's buttons are to be reported, or no longer.</summary>
    public event Action<bool>? MouseReported;

    /// <summary>Draws every cell anew.</summary>
    public void Redraw()
    {
        if (App is { } app)
            app.ClearScreenNextIteration = true;
        SetNeedsDraw();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (PageKeys.Frame(key, View) is not { } message)
            return base.OnKeyDown(key);
        Take(message);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        int wheel = mouse.Flags.HasFlag(MouseFlags.WheeledUp) ? -1 : mouse.Flags.HasFlag(MouseFlags.WheeledDown) ? 1 : 0;
        if (wheel != 0)
        {
            Take(new FrameMessage.ToPage(new PageMessage.Rows(wheel)));
            return true;
        }

        if (!mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked) || mouse.Position is not System.Drawing.Point at
            || !FrameSheet.Fits(View, Viewport.Width, Viewport.Height))
        {
            return base.OnMouseEvent(mouse);
        }

        if (at.Y < FrameSheet.Rows)
        {
            if (FrameSheet.PageAt(View, at.X, Viewport.Width) is { } page)
                Take(new FrameMessage.GoTo(page.Key));
        }
        else if (View.Over is null && View.BlockingJob is null
            && View.Page.Click(at.X, at.Y - FrameSheet.Rows, Viewport.Width, Viewport.Height - FrameSheet.Rows) is { } message)
        {
            Take(new FrameMessage.ToPage(message));
        }

        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (View.Width != Viewport.Width || View.Height != Viewport.Height)
            View = View.Update(new FrameMessage.Resized(Viewport.Width, Viewport.Height));
        Sheet sheet = FrameSheet.Draw(View, Viewport.Width, Viewport.Height);
        if (_plain)
            sheet = PlainSheet.Of(sheet);
        Terminal.Gui.Drawing.Cell[,]? there = App?.Driver?.Contents;
        for (int y = 0; y < sheet.Height; y++)
        {
            string row = sheet.Row(y);
            for (int from = 0, to; from < sheet.Width; from = to)
            {
                to = from + 1;
                if (IsThere(there, sheet, from, y))
                    continue;
                CellStyle style = sheet[from, y].Style;
                while (to < sheet.Width && sheet[to, y].Style == style && !IsThere(there, sheet, to, y))
                    to++;
                SetAttribute(_styles.Of(style));
                AddStr(from, y, row[from..to]);
            }
        }

        return true;
    }

    /// <summary>Every cell is drawn, so nothing has to be cleared before; and what is there already is not sent again.</summary>
    protected override bool OnClearingViewport() => true;

    private bool IsThere(Terminal.Gui.Drawing.Cell[,]? there, Sheet sheet, int x, int y)
        => there is not null && y < there.GetLength(0) && x < there.GetLength(1)
            && there[y, x] is { Grapheme: [var glyph] } cell && glyph == sheet[x, y].Glyph && cell.Attribute == _styles.Of(sheet[x, y].Style);

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            _jobs.Dispose();
        base.Dispose(disposing);
    }

    /// <summary>Takes a message as if a key had sent it.</summary>
    public void Take(FrameMessage message)
    {
        View = View.Update(message);
        Start();
        if (View.Effect is { } effect)
        {
            View = View with { Effect = null };
            Do(effect);
        }

        SetNeedsDraw();
    }

    private void Start()
    {
        _jobs.Synchronize(View.AllJobs);
        if (_jobs.IsBusy && !_isCounting)
        {
            _isCounting = true;
            App?.AddTimeout(BetweenCounts, Count);
        }
    }

    private void Do(TerminalEffect effect)
    {
        switch (effect)
        {
            case TerminalEffect.Quit:
                App?.RequestStop();
                break;
            case TerminalEffect.Edit edit:
                Editing = edit.Path;
                App?.RequestStop();
                break;
            case TerminalEffect.Copy copy:
                Copied?.Invoke(copy.Text);
                break;
            case TerminalEffect.ReportMouse mouse:
                MouseReported?.Invoke(mouse.On);
                break;
        }
    }

    // Looks every two seconds whether a file was changed by another program; nothing is drawn for it.
    private void WatchFiles() => App?.AddTimeout(BetweenLooks, () =>
    {
        if (View is { ChangedFile: null, Work: null, Source.Stamps: { } stamps } && stamps.Changed() is { } path)
            Take(new FrameMessage.FileChanged(path));
        return true;
    });

    /// <summary>Starts what the frame lists before its first message, and looks at the files from then on.</summary>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (!newIsRunning)
            return;
        WatchFiles();
        Start();
    }

    private bool Count()
    {
        foreach (FrameMessage.JobProgressed progress in _jobs.Progress)
            Take(progress);
        return _isCounting = _jobs.IsBusy;
    }
}
