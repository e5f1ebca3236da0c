using ColdSim.App.Text;

namespace ColdSim.App.Screens.Frame;

/// <summary>What a message makes of the frame. Pure: what has to be worked out is only written into <see cref="FrameView.Jobs"/>.</summary>
internal static class FrameUpdate
{
    private const int RowsOfAPage = 10;

    public static FrameView After(this FrameView view, FrameMessage message) => Settled(message switch
    {
        FrameMessage.GoTo go => Turned(view, go.Key),
        FrameMessage.Ask { Message: PageMessage.OtherUnits } => In(view, view.Units.IsUs ? UnitStyle.Si : UnitStyle.Us),
        FrameMessage.Ask { Message: PageMessage.Turn { Page: OpenPage.Help } } when view.Page.Help is not null
            => view with { HelpRow = view.HelpRow is null ? 0 : null },
        FrameMessage.Ask ask when view.HelpRow is { } row => OnHelp(view, row, ask.Message),
        FrameMessage.Ask { Message: PageMessage.Close } when view.Jobs[view.Open] is { Work.GivesPart: true } job
            => view with { Jobs = [.. view.Jobs.Select(j => j == job ? j with { Stopping = true } : j)] },
        FrameMessage.Ask { Message: PageMessage.Close } when view.Jobs[view.Open] is not null => Told(view, view.Open, new PageMessage.Stopped()),
        FrameMessage.Ask ask => Told(view, view.Open, ask.Message),
        FrameMessage.Resized size => Everywhere(view with { Width = size.Width, Height = size.Height }, new PageMessage.Sized(size.Width, size.Height - FrameSheet.Rows)),
        FrameMessage.Counted counted => view with { Jobs = [.. view.Jobs.Select(j => j?.Work == counted.Work ? j with { Done = counted.Done, Seconds = counted.Seconds } : j)] },
        FrameMessage.Ended ended => PlaceOf(view, ended.Work) is >= 0 and int at ? Told(view, at, ended.Message) : view,
        _ => view,
    });

    /// <summary>A page's work begins while the page is open and goes on behind other pages.</summary>
    private static FrameView Settled(FrameView view)
    {
        PageJob?[] jobs = new PageJob?[view.Pages.Count];
        for (int i = 0; i < jobs.Length; i++)
        {
            if (view.Pages[i].Wanted is { } wanted)
                jobs[i] = view.Jobs[i]?.Work == wanted ? view.Jobs[i] : i == view.Open ? new PageJob(wanted) : null;
        }

        return view with { Jobs = jobs };
    }

    private static FrameView Turned(FrameView view, char key)
    {
        int at = view.Pages.Select(p => p.Key).ToList().IndexOf(key);
        if (at < 0)
            return view;
        FrameCursor? cursor = view.Pages.Select(p => p.Cursor).FirstOrDefault(c => c is not null);
        return at == view.Open ? view with { HelpRow = null }
            : Told(view with { Open = at, HelpRow = null }, at, new PageMessage.Opened(cursor));
    }

    private static FrameView In(FrameView view, UnitStyle units)
        => Everywhere(view with { Units = units }, new PageMessage.UnitsAre(units));

    private static FrameView Everywhere(FrameView view, PageMessage message)
        => view with { Pages = [.. view.Pages.Select(p => p.After(message))] };

    private static FrameView Told(FrameView view, int at, PageMessage message)
        => view with { Pages = [.. view.Pages.Select((p, i) => i == at ? p.After(message) : p)] };

    private static int PlaceOf(FrameView view, PageWork work) => view.Jobs.Select(j => j?.Work).ToList().IndexOf(work);

    private static FrameView OnHelp(FrameView view, int row, PageMessage message)
    {
        FrameView At(int to) => view with { HelpRow = Math.Clamp(to, 0, Math.Max(0, FrameHelp.Lines(view).Count - FrameHelp.RowsOf(view.Height))) };
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
