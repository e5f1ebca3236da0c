using ColdSim.App.Text;

namespace ColdSim.App.Screens.Frame;

/// <summary>The pages, which of them is open, and what is being worked out for them.</summary>
/// <param name="Pages">In the order of their keys.</param>
/// <param name="Units">The units of all pages.</param>
internal sealed record FrameView(IReadOnlyList<IPage> Pages, UnitStyle Units)
{
    /// <summary>Place of the open page.</summary>
    public int Open { get; init; }

    /// <summary>First row of the help; null while it is closed.</summary>
    public int? HelpRow { get; init; }

    /// <summary>Columns of the screen.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Rows of the screen.</summary>
    public int Height { get; init; } = 24;

    /// <summary>What is being worked out, a place a page.</summary>
    public IReadOnlyList<PageJob?> Jobs { get; init; } = new PageJob?[Pages.Count];

    public IPage Page => Pages[Open];

    /// <summary>What keeps the open page from being seen; null for nothing.</summary>
    public PageJob? Waiting => Jobs[Open] is { Work.InPlace: false } job ? job : null;
}
