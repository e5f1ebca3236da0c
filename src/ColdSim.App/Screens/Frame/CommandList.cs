using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Frame;

/// <summary>Commands to choose from: the keys of a place, or, with words typed to find them, all there are.</summary>
/// <param name="Title">What is listed.</param>
/// <param name="All">All of them.</param>
/// <param name="Finds">Whether typed words choose among them.</param>
internal sealed record CommandList(string Title, IReadOnlyList<ScreenCommand> All, bool Finds) : Overlay
{
    private const int KeyWidth = 10;
    private const int LongestFilter = 60;

    // A title above and the last row below.
    private const int Around = 2;

    /// <summary>What was typed.</summary>
    public string Filter { get; init; } = "";

    /// <summary>Which of those found is chosen.</summary>
    public int Row { get; init; }

    public override bool TakesText => Finds;

    /// <summary>Those with all the typed words: first those that begin with them as typed, then those that hold them so.</summary>
    public IReadOnlyList<ScreenCommand> Found
    {
        get
        {
            string[] words = Filter.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            bool Has(ScreenCommand command) => words.All(w => Text(command).Contains(w, StringComparison.OrdinalIgnoreCase));
            return words.Length == 0 ? All : [.. All.Where(Has).OrderBy(c => Rank(c, Filter.Trim(), words))];
        }
    }

    public static CommandList OfKeys(FrameView view) => new(
        $"keys of this page, {view.Page.Title}; Enter runs the chosen one", [.. ScreenCommand.OfPage(view), .. ScreenCommand.Everywhere.Skip(1)], Finds: false);

    public static CommandList OfAll(FrameView view) => new("find", ScreenCommand.All(view), Finds: true);

    public override void Draw(Sheet sheet, int top)
    {
        sheet.Put(0, top, CellText.Cut(Finds ? $": {Filter}" : Title, sheet.Width), CellStyle.Strong);
        if (Finds)
            sheet.Put(2 + Filter.Length, top, ' ', CellStyle.Pointer);
        IReadOnlyList<ScreenCommand> found = Found;
        int rows = Math.Max(1, sheet.Height - top - Around), first = PageElements.FirstRow(Row, rows, found.Count);
        for (int i = first; i < Math.Min(found.Count, first + rows); i++)
        {
            string line = $"{(i == Row ? '>' : ' ')} {found[i].Keys,-KeyWidth}{found[i].Words}";
            sheet.Put(0, top + 1 + i - first, CellText.Cut(line, sheet.Width), i == Row ? CellStyle.Pointer : CellStyle.Plain);
        }

        if (found.Count == 0)
            sheet.Put(2, top + 1, "Nothing has these words. Backspace takes a letter away; Esc closes this.");
        string where = found.Count > rows ? $"{Row + 1} of {found.Count}" : Finds ? "type to find" : "or press the key";
        sheet.Put(0, sheet.Height - 1, CellText.Join([where, "↑↓ choose", "Enter run it", "Esc back", Finds ? "Ctrl-Q quit" : "q quit"], "  ", sheet.Width));
    }

    public override OverlayStep Update(PageMessage message, int rows)
    {
        IReadOnlyList<ScreenCommand> found = Found;
        CommandList At(int row) => this with { Row = Math.Clamp(row, 0, Math.Max(0, found.Count - 1)) };
        return message switch
        {
            PageMessage.Close => new(null),
            PageMessage.Choose => found.Count == 0 ? new(this) : new(null, found[Row].Message),
            PageMessage.Rows by => new(At(Row + by.Count)),
            PageMessage.NextEvent by => new(At(Row + by.Direction)),
            PageMessage.Pages by => new(At(Row + by.Count * Math.Max(1, rows - Around - 1))),
            PageMessage.First => new(At(0)),
            PageMessage.Last => new(At(found.Count)),
            PageMessage.Typed typed when Filter.Length < LongestFilter => new(this with { Filter = Filter + typed.Character, Row = 0 }),
            PageMessage.Backspace when Filter.Length > 0 => new(this with { Filter = TextEdit.WithoutLast(Filter), Row = 0 }),
            _ => new(this),
        };
    }

    private static string Text(ScreenCommand command) => $"{command.Keys} {command.Words}";

    private static int Rank(ScreenCommand command, string typed, string[] words)
        => command.Words.StartsWith(typed, StringComparison.OrdinalIgnoreCase) ? 0
            : Text(command).Contains(typed, StringComparison.OrdinalIgnoreCase) ? 1
            : words.All(w => Text(command).Contains(" " + w, StringComparison.OrdinalIgnoreCase)) ? 2 : 3;
}
