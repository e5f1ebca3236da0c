using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Plan;
using ColdSim.App.Screens.Tries;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;

namespace ColdSim.Tests.App.Screens.Tries;

/// <summary>A scenario in a folder of its own, opened by the real command, and driven by keys without a terminal.</summary>
internal sealed class Bench : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public Bench(string demo = "cold-snap.toml", Func<string, string>? edit = null)
    {
        foreach (string file in Directory.EnumerateFiles(DocPage.Scenarios))
            File.Copy(file, System.IO.Path.Combine(_folder, System.IO.Path.GetFileName(file)));
        Path = System.IO.Path.Combine(_folder, demo);
        if (edit is not null)
            File.WriteAllText(Path, edit(File.ReadAllText(Path)));
        Opening? opened = null;
        Shell shell = new() { Terminal = true, Screen = (opening, _, _) => { opened = opening; return 0; } };
        if (shell.Run("view", Path) != 0)
            throw new InvalidOperationException(shell.Error);
        View = Settled(opened!.Frame(UnitStyle.Us).Update(new FrameMessage.Resized(80, 24)));
    }

    public string Path { get; }

    public FrameView View { get; private set; }

    public PlanPage Page => (PlanPage)View.Pages[0];

    public TryState Try => Page.Try!;

    public IReadOnlyList<KeyChange> Changes => Try.Bench.Changes(Try.Now, UnitStyle.Us);

    public string Beside(string name) => System.IO.Path.Combine(_folder, name);

    public string Drawn(int width = 80, int height = 24) => FrameSheet.Draw(View, width, height).ToString();

    /// <summary>Sends messages to the open page, each once the one before has come through.</summary>
    public Bench Send(params PageMessage[] messages)
    {
        foreach (PageMessage message in messages)
            View = Settled(View.Update(new FrameMessage.ToPage(message)));
        return this;
    }

    public Bench Send(FrameMessage message)
    {
        View = Settled(View.Update(message));
        return this;
    }

    public Bench Open(char page) => Send(new FrameMessage.GoTo(page));

    /// <summary>Opens the list and chooses an adjustment by its name.</summary>
    public Bench Choose(string id)
    {
        if (!Try.IsOpen)
            Send(new PageMessage.ToggleTry());
        int at = Try.Bench.Adjustments.ToList().FindIndex(a => a.Id == id);
        return Send(new PageMessage.Rows(at - Try.Row));
    }

    public Bench Turn(string id, int steps = 1)
    {
        Choose(id);
        for (int i = 0; i < Math.Abs(steps); i++)
            Send(new PageMessage.Step(10 * Math.Sign(steps)));
        return this;
    }

    public Bench Type(string text) => Send([.. text.EnumerateRunes().Select(r => new PageMessage.Typed(r))]);

    /// <summary>The same scenario with what is tried, in a file, run by the real command.</summary>
    public RunReport FromTheShell(string? path = null)
    {
        if (path is null)
        {
            path = Beside("as-tried.toml");
            File.WriteAllText(path, Try.Bench.Draft.WrittenWith(Changes));
        }

        return NightRun.Of(ScenarioReader.Read(path).Scenario!);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Works out what is worked out beside the plan too.</summary>
    public void WorkOut()
    {
        while (View.Jobs[View.Open] is { } running)
            View = View.Update(new FrameMessage.JobEnded(running.Job, new PageMessage.Completed(running.Job.Run(new Progress<int>(), CancellationToken.None))));
    }

    // All but what is worked out beside the plan, which takes thirty runs a key and changes no verdict.
    private static FrameView Settled(FrameView view)
    {
        while (view.Jobs[view.Open] is { } running && running.Job.Description != PlanJobs.InsightDescription)
        {
            PageMessage ended;
            try
            {
                ended = new PageMessage.Completed(running.Job.Run(new Progress<int>(), CancellationToken.None));
            }
            catch (Exception e) when (e is InvalidOperationException or IOException)
            {
                ended = new PageMessage.Failed(e.Message);
            }

            view = view.Update(new FrameMessage.JobEnded(running.Job, ended));
        }

        return view;
    }
}
