using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Frame;

/// <summary>The pages, which of them is open, and the jobs that run for them.</summary>
/// <param name="Pages">In the order of their keys.</param>
/// <param name="Units">The units of all pages.</param>
internal sealed record FrameView(IReadOnlyList<IPage> Pages, UnitStyle Units)
{
    private const int RowsOfAPage = 10;

    /// <summary>Index of the open page.</summary>
    public int Open { get; init; }

    /// <summary>First row of the help; null while it is closed.</summary>
    public int? HelpRow { get; init; }

    /// <summary>Columns of the screen.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Rows of the screen.</summary>
    public int Height { get; init; } = 24;

    /// <summary>The job that runs for each page, in the order of the pages.</summary>
    public IReadOnlyList<RunningJob?> Jobs { get; init; } = new RunningJob?[Pages.Count];

    public IPage Page => Pages[Open];

    /// <summary>The job that is shown instead of the open page; null for none.</summary>
    public RunningJob? BlockingJob => Jobs[Open] is { Job.KeepsPageVisible: false } running ? running : null;

    /// <summary>The frame after a message. A job to run is only listed in <see cref="Jobs"/>; nothing runs here.</summary>
    public FrameView Update(FrameMessage message) => WithJobs(Changed(this, message));

    private static FrameView Changed(FrameView view, FrameMessage message) => message switch
    {
        FrameMessage.GoTo go => Opened(view, go.Key),
        FrameMessage.ToPage { Message: PageMessage.ToggleUnits } => WithUnits(view, view.Units.IsUs ? UnitStyle.Si : UnitStyle.Us),
        FrameMessage.ToPage { Message: PageMessage.ToggleHelp } when view.Page.Help is not null
            => view with { HelpRow = view.HelpRow is null ? 0 : null },
        FrameMessage.ToPage input when view.HelpRow is { } row => OnHelp(view, row, input.Message),
        FrameMessage.ToPage { Message: PageMessage.Close } when view.Jobs[view.Open] is { Job.ReturnsPartial: true } running
            => view with { Jobs = [.. view.Jobs.Select(j => j == running ? j with { Stopping = true } : j)] },
        FrameMessage.ToPage { Message: PageMessage.Close } when view.Jobs[view.Open] is not null => Send(view, view.Open, new PageMessage.Cancelled()),
        FrameMessage.ToPage input => Send(view, view.Open, input.Message),
        FrameMessage.Resized size => Broadcast(view with { Width = size.Width, Height = size.Height }, new PageMessage.Resized(size.Width, size.Height - FrameSheet.Rows)),
        FrameMessage.JobProgressed progress => view with { Jobs = [.. view.Jobs.Select(j => j?.Job == progress.Job ? j with { Done = progress.Done, Seconds = progress.Seconds } : j)] },
        FrameMessage.JobEnded ended => IndexOf(view, ended.Job) is >= 0 and int at ? Send(view, at, ended.Message) : view,
        _ => view,
    };

    /// <summary>A page's job starts while the page is open and goes on behind other pages.</summary>
    private static FrameView WithJobs(FrameView view)
    {
        RunningJob?[] jobs = new RunningJob?[view.Pages.Count];
        for (int i = 0; i < jobs.Length; i++)
        {
            if (view.Pages[i].DueJob is { } due)
                jobs[i] = view.Jobs[i]?.Job == due ? view.Jobs[i] : i == view.Open ? new RunningJob(due) : null;
        }

        return view with { Jobs = jobs };
    }

    private static FrameView Opened(FrameView view, char key)
    {
        int at = view.Pages.Select(p => p.Key).ToList().IndexOf(key);
        if (at < 0)
            return view;
        TimeCursor? cursor = view.Pages.Select(p => p.Cursor).FirstOrDefault(c => c is not null);
        return at == view.Open ? view with { HelpRow = null }
            : Send(view with { Open = at, HelpRow = null }, at, new PageMessage.Opened(cursor));
    }

    private static FrameView WithUnits(FrameView view, UnitStyle units)
        => Broadcast(view with { Units = units }, new PageMessage.UnitsChanged(units));

    private static FrameView Broadcast(FrameView view, PageMessage message)
        => view with { Pages = [.. view.Pages.Select(p => p.Update(message))] };

    private static FrameView Send(FrameView view, int at, PageMessage message)
        => view with { Pages = [.. view.Pages.Select((p, i) => i == at ? p.Update(message) : p)] };

    private static int IndexOf(FrameView view, PageJob job) => view.Jobs.Select(j => j?.Job).ToList().IndexOf(job);

    private static FrameView OnHelp(FrameView view, int row, PageMessage message)
    {
        FrameView At(int to) => view with { HelpRow = Math.Clamp(to, 0, Math.Max(0, FrameSheet.HelpLines(view).Count - FrameSheet.HelpRows(view.Height))) };
        return message switch
        {
            PageMessage.Close => view with { HelpRow = null },
            PageMessage.Rows rows => At(row + rows.Count),
            PageMessage.Pages pages => At(row + pages.Count * RowsOfAPage),
            PageMessage.First => At(0),
            PageMessage.Last => At(int.MaxValue),
            _ => view,
        };
    }
}
