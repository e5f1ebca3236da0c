namespace ColdSim.App.Text;

/// <summary>A table before it is set: the headings of its columns and the cells of its rows.</summary>
internal sealed record TextGrid(IReadOnlyList<TextColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);
