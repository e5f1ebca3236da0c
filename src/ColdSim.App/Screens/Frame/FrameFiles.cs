using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text.Answers;

namespace ColdSim.App.Screens.Frame;

/// <summary>What the frame does with files: opening and reading again, editing, copying and writing.</summary>
internal static class FrameFiles
{
    private const string NoFile = "The demo has no file of its own; N writes a scenario, o opens one.";

    /// <summary>The frame after a wish that concerns files.</summary>
    public static FrameView Asked(FrameView view, FrameMessage message)
    {
        if (view.Source is not { Files: { } files } source || view.Report is not { } report)
            return view with { Notice = "There are no files here." };
        switch (message)
        {
            case FrameMessage.ListFiles:
                return view with { Over = FileList.Of(files, source.File, view.Units) };
            case FrameMessage.AskNew:
                return view with { Over = new NewForm(files, !view.Units.IsUs) };
            case FrameMessage.OpenFile open:
                return Working(view, Opens(files, open.Path, "Opening"));
            case FrameMessage.Start start:
                return Working(view, start.Job);
            case FrameMessage.Copy:
                string sentence = NightsAnswer.Of(report, null, view.Units).Brief;
                return view with { Effect = new TerminalEffect.Copy(sentence), Notice = $"Copied: {sentence}" };
            case FrameMessage.Export:
                int night = Math.Min(view.Cursor?.Night ?? 0, report.Nights.Count - 1);
                return Working(view, new PageJob(
                    "Writing the night's curves and the report", (done, cancel) => files.Export(report, night, source.File, view.Units, done, cancel)));
            default:
                return source.File is not { } file ? view with { Notice = NoFile }
                    : message is FrameMessage.Edit ? view with { Effect = new TerminalEffect.Edit(file) }
                    : Working(view, Opens(files, file, "Reading again"));
        }
    }

    /// <summary>The frame after its work has ended.</summary>
    public static FrameView Ended(FrameView view, FrameMessage.JobEnded ended) => ended.Message switch
    {
        PageMessage.Completed { Result: Opening opening } => Opened(view, opening),
        PageMessage.Completed { Result: string notice } => view with { Notice = notice },
        PageMessage.Failed failed when view.Over is { } over => view with { Over = over.Update(failed, view.Height - FrameSheet.Rows).Open },
        PageMessage.Failed failed => view with { Over = Failure(ended.Job, failed.Reason) },
        _ => view,
    };

    /// <summary>Where a page's job changed the scenario's files, everything is read and run again from them.</summary>
    public static FrameView Follow(FrameView view, PageMessage message)
        => message is PageMessage.Completed { Result: IFilesChanged } && view.Source is { Files: { } files, File: { } file }
            ? Working(view, Opens(files, file, "Reading again")) : view;

    /// <summary>The one way to another scenario, or to the same as its files are now: all pages anew.</summary>
    /// <remarks>Of the same scenario the page, the night, the time and what each page keeps stay.</remarks>
    public static FrameView Opened(FrameView view, Opening opening)
    {
        FrameView next = opening.Frame(view.Units);
        bool isSame = opening.File == view.Source?.File;
        next = next with
        {
            Width = view.Width,
            Height = view.Height,
            ReportsMouse = view.ReportsMouse,
            Pages = isSame ? [.. next.Pages.Select(p => view.Pages.FirstOrDefault(b => b.Key == p.Key) is { } before ? p.After(before) : p)] : next.Pages,
        };
        next = FrameView.Broadcast(next, new PageMessage.Resized(view.Width, view.Height - FrameSheet.Rows));
        if (!isSame)
            return next with { Notice = $"Opened {CellText.SingleWidth(Path.GetFileName(opening.File ?? "the demo"))}." };
        int open = Math.Max(0, next.Pages.Select(p => p.Key).ToList().IndexOf(view.Page.Key));
        TimeCursor? at = view.Cursor is { } cursor && cursor.Night < opening.Report.Nights.Count
            ? TimeCursor.InNight(opening.Report, cursor.Night, cursor) : next.Cursor;
        return FrameView.Send(next with { Open = open, Cursor = at, Notice = "Read again." }, open, new PageMessage.Opened(at));
    }

    private static PageJob Opens(IScenarioFiles files, string path, string verb)
        => new($"{verb} {CellText.SingleWidth(Path.GetFileName(path))}", (_, cancel) => files.Open(path, cancel));

    private static FrameView Working(FrameView view, PageJob job) => view with { Work = new RunningJob(job) };

    private static HelpText Failure(PageJob job, string reason) => new(
        [
            $"{job.Description}: it could not be done.",
            .. reason.Split('\n').SelectMany(l => CellText.Wrap(CellText.SingleWidth(l), Sheet.MinWidth - 2)).Select(l => $"  {l}"),
        ]);
}
