using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Frame;

/// <summary>The pages, which of them is open, and the jobs that run for them.</summary>
/// <param name="Pages">In the order of their keys.</param>
/// <param name="Units">The units of all pages.</param>
internal sealed record FrameView(IReadOnlyList<IPage> Pages, UnitStyle Units)
{
    /// <summary>Index of the open page.</summary>
    public int Open { get; init; }

    /// <summary>What lies over the open page; null for nothing.</summary>
    public Overlay? Over { get; init; }

    /// <summary>The run that the pages speak of; null where they speak of none.</summary>
    public RunReport? Report { get; init; }

    /// <summary>The chosen night and time, the same on all pages.</summary>
    public TimeCursor? Cursor { get; init; } = Pages.Select(p => p.Cursor).FirstOrDefault(c => c is not null);

    /// <summary>The key that was pressed once and is costly, so that it is asked whether to go on; null for none.</summary>
    public KeyBinding? Asked { get; init; }

    /// <summary>Whether mouse buttons are reported; otherwise a drag selects text.</summary>
    public bool ReportsMouse { get; init; }

    /// <summary>What the screen was opened on; null where there is nothing to open again.</summary>
    public Opening? Source { get; init; }

    /// <summary>The file that was changed by another program since it was read; null for none.</summary>
    public string? ChangedFile { get; init; }

    /// <summary>An answer to the last key, gone with the next.</summary>
    public string Notice { get; init; } = "";

    /// <summary>Work for the frame itself: opening a file, writing one.</summary>
    public RunningJob? Work { get; init; }

    /// <summary>The job of the overlay.</summary>
    public RunningJob? OverJob { get; init; }

    /// <summary>All jobs that run.</summary>
    public IReadOnlyList<RunningJob?> AllJobs => [.. Jobs, Work, OverJob];

    /// <summary>What the terminal is to do; null for nothing.</summary>
    public TerminalEffect? Effect { get; init; }

    /// <summary>Columns of the screen.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Rows of the screen.</summary>
    public int Height { get; init; } = 24;

    /// <summary>The job that runs for each page, in the order of the pages.</summary>
    public IReadOnlyList<RunningJob?> Jobs { get; init; } = new RunningJob?[Pages.Count];

    public IPage Page => Pages[Open];

    /// <summary>Whether typed characters are text.</summary>
    public bool TakesText => Over?.TakesText ?? Page.TakesText;

    /// <summary>The job that is shown instead of the open page; null for none.</summary>
    public RunningJob? BlockingJob => Jobs[Open] is { Job.KeepsPageVisible: false } running ? running : null;

    /// <summary>The frame after a message. A job to run is only listed in <see cref="Jobs"/>; nothing runs here.</summary>
    public FrameView Update(FrameMessage message) => WithJobs(WithCursor(WithRun(OverPage(this, message))));

    /// <summary>Makes the pages of another run, given those there are; null where there is only ever one run.</summary>
    public Func<RunReport, FrameView, IReadOnlyList<IPage>>? PagesOf { get; init; }

    /// <summary>All pages speak of the run that the first one shows; what the others worked out of another is forgotten.</summary>
    private static FrameView WithRun(FrameView view)
    {
        if (view.PagesOf is not { } make || view.Pages[0] is not IRunPage { Report: var shown } || shown == view.Report)
            return view;
        IReadOnlyList<IPage> before = view.Pages, pages = make(shown, view);
        int open = Math.Max(0, pages.ToList().FindIndex(p => p.Key == view.Page.Key));
        FrameView after = view with
        {
            Report = shown,
            Pages = pages,
            Open = open,
            Jobs = [.. pages.Select(p => before.ToList().IndexOf(p) is >= 0 and int at ? view.Jobs[at] : null)],
        };
        after = Broadcast(after, new PageMessage.Resized(view.Width, view.Height - FrameSheet.Rows));
        return open == 0 ? after : Send(after, open, new PageMessage.Opened(view.Cursor));
    }

    /// <summary>An overlay takes what it uses; another key closes it and does what it does on the page.</summary>
    private static FrameView OverPage(FrameView view, FrameMessage message)
    {
        if (view.Over is not { } over || IsFromOutside(message) || message is FrameMessage.Quit)
            return Changed(view, message);
        if (message is not FrameMessage.ToPage input || (!over.TakesText && !IsForList(input.Message)))
            return Changed(view with { Over = null }, message);
        OverlayStep step = over.Update(input.Message, view.Height - FrameSheet.Rows);
        FrameView after = view with { Over = step.Open };
        return step.Then is { } then ? Changed(after, then) : after;
    }

    private static bool IsFromOutside(FrameMessage message)
        => message is FrameMessage.Resized or FrameMessage.JobProgressed or FrameMessage.JobEnded or FrameMessage.FileChanged or FrameMessage.Say;

    private static bool IsForList(PageMessage message) => message is PageMessage.Rows or PageMessage.Pages or PageMessage.First or PageMessage.Last
        or PageMessage.Choose or PageMessage.Close or PageMessage.NextEvent or PageMessage.Step or PageMessage.Backspace;

    private static FrameView Changed(FrameView before, FrameMessage message)
    {
        FrameView view = IsFromOutside(message) ? before : before with { Asked = null, Notice = "" };
        return message switch
        {
            FrameMessage.ListFiles or FrameMessage.AskNew or FrameMessage.OpenFile or FrameMessage.Reload or FrameMessage.Edit or FrameMessage.Copy or FrameMessage.Export
                or FrameMessage.Start => FrameFiles.Asked(view, message),
            FrameMessage.FileChanged changed => view with { ChangedFile = changed.Path },
            FrameMessage.Say say => view with { Notice = say.Text },
            FrameMessage.GoTo go => Opened(view, go.Key),
            FrameMessage.ToNeighbour to => Opened(view, view.Pages[(view.Open + to.Direction + view.Pages.Count) % view.Pages.Count].Key),
            FrameMessage.ToNight to => InNight(view, to.Night),
            FrameMessage.OnPage on => Send(Opened(view, on.Key), view.Pages.Select(p => p.Key).ToList().IndexOf(on.Key), on.Message),
            FrameMessage.ListKeys => view with { Over = CommandList.OfKeys(view) },
            FrameMessage.Find => view with { Over = CommandList.OfAll(view) },
            FrameMessage.Help => view with { Over = HelpText.Of(view) },
            FrameMessage.ToggleMouse => view with { ReportsMouse = !view.ReportsMouse, Effect = new TerminalEffect.ReportMouse(!view.ReportsMouse) },
            FrameMessage.Quit => view with { Effect = new TerminalEffect.Quit() },
            FrameMessage.ToPage input => ToPage(view, before.Asked, input.Message),
            FrameMessage.Resized size => Broadcast(
                view with { Width = size.Width, Height = size.Height }, new PageMessage.Resized(size.Width, size.Height - FrameSheet.Rows)),
            FrameMessage.JobProgressed progress => view with
            {
                Jobs = [.. view.Jobs.Select(j => j?.Job == progress.Job ? j with { Done = progress.Done, Seconds = progress.Seconds } : j)],
            },
            FrameMessage.JobEnded ended when view.Work?.Job == ended.Job => FrameFiles.Ended(view with { Work = null }, ended),
            FrameMessage.JobEnded ended when view.OverJob?.Job == ended.Job => view with { Over = view.Over?.Update(ended.Message, view.Height - FrameSheet.Rows).Open },
            FrameMessage.JobEnded ended => IndexOf(view, ended.Job) is >= 0 and int at ? FrameFiles.Follow(Send(view, at, ended.Message), ended.Message) : view,
            _ => view,
        };
    }

    private static FrameView ToPage(FrameView view, KeyBinding? asked, PageMessage message)
    {
        if (message is PageMessage.ToggleUnits)
            return WithUnits(view, view.Units.IsUs ? UnitStyle.Si : UnitStyle.Us);
        if (message is PageMessage.Close)
            return asked is not null ? view : Closed(view, message);
        if (asked is null && view.BlockingJob is null && message is PageMessage.Choose
            && view.Page.Keys.FirstOrDefault(k => k is { Message: PageMessage.Choose, Cost.Length: > 0 }) is { } costly)
        {
            return view with { Asked = costly };
        }

        return Send(view, view.Open, message);
    }

    /// <summary>Esc stops the page's job, else closes what is open on the page, else goes back to the first page.</summary>
    private static FrameView Closed(FrameView view, PageMessage message)
    {
        if (view.Jobs[view.Open] is { Job.IsUnasked: false } running)
        {
            return running.Job.ReturnsPartial ? view with { Jobs = [.. view.Jobs.Select(j => j == running ? j with { Stopping = true } : j)] }
                : Send(view, view.Open, new PageMessage.Cancelled());
        }

        if (view.Work is not null)
            return view with { Work = null, Notice = "Stopped." };
        FrameView closed = Send(view, view.Open, message);
        return closed.Page.Equals(view.Page) ? Opened(view, view.Pages[0].Key) : closed;
    }

    /// <summary>The cursor is that of the open page, where it has one.</summary>
    private static FrameView WithCursor(FrameView view) => view.Page.Cursor is { } at && at != view.Cursor ? view with { Cursor = at } : view;

    private static FrameView InNight(FrameView view, int night)
    {
        if (view.Report is not { } report)
            return view;
        TimeCursor at = TimeCursor.InNight(report, Math.Clamp(night, 0, report.Nights.Count - 1), view.Cursor);
        int page = view.Page.Cursor is not null ? view.Open : Math.Max(0, view.Pages.ToList().FindIndex(p => p.Cursor is not null));
        return Send(view with { Open = page, Cursor = at }, page, new PageMessage.Opened(at));
    }

    /// <summary>A page's job starts while the page is open and goes on behind other pages.</summary>
    private static FrameView WithJobs(FrameView view)
    {
        RunningJob?[] jobs = new RunningJob?[view.Pages.Count];
        for (int i = 0; i < jobs.Length; i++)
        {
            if (view.Pages[i].DueJob is { } due)
                jobs[i] = view.Jobs[i]?.Job == due ? view.Jobs[i] : i == view.Open ? new RunningJob(due) : null;
        }

        RunningJob? over = view.Over?.DueJob is not { } job ? null : view.OverJob?.Job == job ? view.OverJob : new RunningJob(job);
        return view with { Jobs = jobs, OverJob = over };
    }

    private static FrameView Opened(FrameView view, char key)
    {
        int at = view.Pages.Select(p => p.Key).ToList().IndexOf(key);
        if (at < 0)
            return view;
        return at == view.Open ? view : Send(view with { Open = at }, at, new PageMessage.Opened(view.Cursor));
    }

    private static FrameView WithUnits(FrameView view, UnitStyle units)
        => Broadcast(view with { Units = units }, new PageMessage.UnitsChanged(units));

    internal static FrameView Broadcast(FrameView view, PageMessage message)
        => view with { Pages = [.. view.Pages.Select(p => p.Update(message))] };

    internal static FrameView Send(FrameView view, int at, PageMessage message)
        => view with { Pages = [.. view.Pages.Select((p, i) => i == at ? p.Update(message) : p)] };

    private static int IndexOf(FrameView view, PageJob job) => view.Jobs.Select(j => j?.Job).ToList().IndexOf(job);
}
