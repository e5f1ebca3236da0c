using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Tries;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>Saving what is tried: the question, the job, and the page after it.</summary>
internal static class PlanSaving
{
    private const int LongestName = 60;

    /// <summary>Opens the question.</summary>
    public static PlanPage Ask(PlanPage page, PageMessage message)
    {
        if (page.Try is not { } tried || page.Files is not { } files)
            return page with { Notice = "This scenario cannot be saved here." };
        if (tried.Now.IsNone)
            return page with { Notice = "Nothing is tried yet; t opens what can be." };
        if (tried.IsWorking)
            return page with { Notice = "It is still being run." };
        if (message is PageMessage.WriteTry)
            return page with { Saving = new(SaveAs.NewFile, files.NewName) };
        string words = AdjustmentList.Words(tried.Bench.Adjustments, tried.Place);
        return page with { Saving = new(SaveAs.Option, words[..Math.Min(words.Length, LongestName)].Trim()) };
    }

    /// <summary>The page after a message to the question.</summary>
    public static PlanPage Update(PlanPage page, SavePrompt prompt, PageMessage message)
        => page with { Saving = prompt.Update(message, (saveAs, name) => Job(page, saveAs, name)) };

    /// <summary>The page after the saving; what is in the scenario itself is no longer a try.</summary>
    public static PlanPage Saved(PlanPage page, SavedTry saved)
    {
        PlanPage after = page with { Saving = null, Notice = saved.Words };
        if (page.Try is not { } tried || page.Files is not { } files || saved.As == SaveAs.NewFile)
            return after;
        Workbench bench = tried.Bench with { Draft = files.Open(saved.Text) };
        if (saved.As == SaveAs.Option)
            return after with { Try = tried with { Bench = bench } };
        string title = bench.AsItIs.Scenario.Title;
        RunReport report = tried.Shown.Report! with { Scenario = tried.Shown.Report!.Scenario with { Title = title } };
        return after.With(TryState.Of(bench.On(report)) with { IsOpen = tried.IsOpen, Row = Math.Min(tried.Row, tried.Bench.Adjustments.Count - 1), Units = tried.Units, Night = tried.Night });
    }

    private static PageJob Job(PlanPage page, SaveAs saveAs, string name)
    {
        (TryState tried, TryFiles files) = (page.Try!, page.Files!);
        return new("Saving what is tried", (_, _) => files.Save(tried.Bench.Draft, tried.Bench.Changes(tried.Now, tried.Units), saveAs, name)) { KeepsPageVisible = true, IsUnasked = true };
    }
}
