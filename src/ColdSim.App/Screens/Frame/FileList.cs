using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Frame;

/// <summary>The scenario files of a folder, each with its verdict, which is worked out while the list is open: the chosen one's first.</summary>
/// <param name="Files">Reads and runs them.</param>
/// <param name="Paths">The files.</param>
/// <param name="Units">Units of the verdicts.</param>
internal sealed record FileList(IScenarioFiles Files, IReadOnlyList<string> Paths, UnitStyle Units) : Overlay
{
    private const int NameWidth = 26;

    // A title above, and below it a blank row, the chosen one's verdict in two rows, and the last row.
    private const int Around = 5;

    /// <summary>Which one is chosen.</summary>
    public int Row { get; init; }

    /// <summary>The verdict of each file that was run.</summary>
    public IReadOnlyDictionary<string, string> Verdicts { get; init; } = new Dictionary<string, string>();

    public override PageJob? DueJob => Running?.Job;

    private (string Path, PageJob Job)? Running { get; init; }

    public static FileList Of(IScenarioFiles files, string? open, UnitStyle units)
    {
        IReadOnlyList<string> paths = files.Beside(open);
        int at = open is null ? 0 : Math.Max(0, paths.ToList().FindIndex(p => Path.GetFullPath(p) == Path.GetFullPath(open)));
        return new FileList(files, paths, units) { Row = at }.WithJob();
    }

    public override void Draw(Sheet sheet, int top)
    {
        string title = Paths.Count == 0 ? "open: there is no scenario file in this folder; N asks for a new one" : $"open: {Folder}";
        sheet.Put(0, top, CellText.Cut(title, sheet.Width), CellStyle.Strong);
        int rows = Math.Max(1, sheet.Height - top - Around), first = PageElements.FirstRow(Row, rows, Paths.Count);
        for (int i = first; i < Math.Min(Paths.Count, first + rows); i++)
        {
            string name = CellText.Cut(CellText.SingleWidth(Path.GetFileName(Paths[i])), NameWidth);
            string line = $"{(i == Row ? '>' : ' ')} {name,-NameWidth}  {Shown(Paths[i])}";
            sheet.Put(0, top + 1 + i - first, CellText.Cut(line, sheet.Width), i == Row ? CellStyle.Pointer : CellStyle.Plain);
        }

        if (Paths.Count > 0)
            PageElements.Paragraph(sheet, sheet.Height - 3, Shown(Paths[Row]), 2, CellStyle.Strong);
        string[] where = Paths.Count > rows ? [$"{Row + 1} of {Paths.Count}"] : [];
        sheet.Put(0, sheet.Height - 1, CellText.Join([.. where, "↑↓ choose", "Enter open it", "Esc back", "q quit"], "  ", sheet.Width));
    }

    public override OverlayStep Update(PageMessage message, int rows)
    {
        FileList At(int row) => (this with { Row = Math.Clamp(row, 0, Math.Max(0, Paths.Count - 1)) }).WithJob();
        return message switch
        {
            PageMessage.Close => new(null),
            PageMessage.Choose => Paths.Count == 0 ? new(this) : new(null, new FrameMessage.OpenFile(Paths[Row])),
            PageMessage.Rows by => new(At(Row + by.Count)),
            PageMessage.NextEvent by => new(At(Row + by.Direction)),
            PageMessage.Pages by => new(At(Row + by.Count * Math.Max(1, rows - Around - 1))),
            PageMessage.First => new(At(0)),
            PageMessage.Last => new(At(Paths.Count)),
            PageMessage.Completed { Result: string verdict } => new(Told(verdict)),
            PageMessage.Failed failed => new(Told(failed.Reason)),
            _ => new(this),
        };
    }

    private string Folder => Path.GetDirectoryName(Path.GetFullPath(Paths[0])) ?? "";

    private string Shown(string path)
        => Verdicts.TryGetValue(path, out string? verdict) ? CellText.SingleWidth(verdict) : Running?.Path == path ? "running…" : "…";

    private FileList Told(string verdict) => Running is not { } ran ? this
        : (this with { Verdicts = new Dictionary<string, string>(Verdicts) { [ran.Path] = verdict.Split('\n')[0] }, Running = null }).WithJob();

    private FileList WithJob()
    {
        IEnumerable<string> chosenFirst = Paths.Skip(Row).Concat(Paths.Take(Row));
        if (Running is not null || chosenFirst.FirstOrDefault(p => !Verdicts.ContainsKey(p)) is not { } next)
            return this;
        (IScenarioFiles files, UnitStyle units) = (Files, Units);
        return this with { Running = (next, new PageJob($"Running {Path.GetFileName(next)}", (_, cancel) => files.Verdict(next, units, cancel))) };
    }
}
