using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Tries;

/// <summary>The question what a try is saved as, while it is open.</summary>
/// <param name="As">As what.</param>
/// <param name="Name">The name as far as it is typed.</param>
internal sealed record SavePrompt(SaveAs As, string Name)
{
    private const int LongestName = 60;

    /// <summary>The saving, once it was asked for.</summary>
    public Pending<SavedTry>? Saving { get; init; }

    /// <summary>The question as a line.</summary>
    public string Line => Saving is { DueJob: not null } ? "saving…" : As switch
    {
        SaveAs.Option => $"Save as option: {Name}_",
        SaveAs.Scenario => "Save into the scenario itself, its comments kept.",
        _ => $"Write a new scenario: {Name}_",
    };

    /// <summary>The prompt after a message; null where it closes.</summary>
    /// <param name="message">The message.</param>
    /// <param name="save">Makes the job that saves it.</param>
    public SavePrompt? Update(PageMessage message, Func<SaveAs, string, PageJob> save) => message switch
    {
        _ when Saving is { DueJob: not null } => this,
        PageMessage.Close => null,
        PageMessage.NextEvent when As != SaveAs.NewFile => this with { As = As == SaveAs.Option ? SaveAs.Scenario : SaveAs.Option },
        PageMessage.Typed typed when As != SaveAs.Scenario && Name.Length < LongestName => this with { Name = Name + typed.Character },
        PageMessage.Backspace when As != SaveAs.Scenario && Name.Length > 0 => this with { Name = Name[..^1] },
        PageMessage.Choose when As == SaveAs.Scenario || Name.Trim().Length > 0 => this with { Saving = new(save(As, Name.Trim())) },
        _ => this,
    };
}
