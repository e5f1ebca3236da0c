using ColdSim.Files;

namespace ColdSim.App.Screens.Drawing;

/// <summary>One character on a sheet and how it looks.</summary>
/// <param name="Glyph">The character.</param>
/// <param name="Style">What it means.</param>
/// <param name="Plain">What stands for it on a terminal of plain characters; 0 for what <see cref="PlainSheet"/> has for its glyph.</param>
internal readonly record struct Cell(char Glyph, CellStyle Style, char Plain = '\0');

/// <summary>A screen as a grid of cells, free of any terminal; what falls outside is dropped.</summary>
internal sealed class Sheet
{
    /// <summary>The fewest columns that a page is drawn for.</summary>
    public const int MinWidth = 60;

    /// <summary>The fewest rows that a page is drawn for.</summary>
    public const int MinHeight = 16;

    private readonly Cell[] _cells;

    public Sheet(int width, int height)
    {
        Width = Math.Max(0, width);
        Height = Math.Max(0, height);
        _cells = new Cell[Width * Height];
        Array.Fill(_cells, new Cell(' ', CellStyle.Plain));
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Whether the frame may continue the last row with its own keys.</summary>
    public bool LastRowContinues { get; set; }

    public Cell this[int x, int y] => _cells[y * Width + x];

    /// <summary>Whether a place is on the sheet.</summary>
    public bool Contains(int x, int y) => x >= 0 && x < Width && y >= 0 && y < Height;

    /// <summary>Whether there is room at a place and nothing in it.</summary>
    public bool IsBlank(int x, int y) => Contains(x, y) && this[x, y].Glyph == ' ';

    public void Put(int x, int y, char glyph, CellStyle style = CellStyle.Plain, char plain = '\0')
    {
        if (Contains(x, y))
            _cells[y * Width + x] = new Cell(VisibleText.Of(glyph), style, plain);
    }

    public void Put(int x, int y, string text, CellStyle style = CellStyle.Plain)
    {
        for (int i = 0; i < text.Length; i++)
            Put(x + i, y, text[i], style);
    }

    /// <summary>Writes text so that it ends just before <paramref name="end"/>.</summary>
    public void PutBefore(int end, int y, string text, CellStyle style = CellStyle.Plain) => Put(end - text.Length, y, text, style);

    /// <summary>Lays another sheet on this one from a row down and a column on.</summary>
    public void Overlay(Sheet other, int top, int left = 0)
    {
        for (int y = 0; y < other.Height; y++)
        {
            for (int x = 0; x < other.Width; x++)
                Put(left + x, top + y, other[x, y].Glyph, other[x, y].Style, other[x, y].Plain);
        }
    }

    public string Row(int y) => string.Create(Width, (this, y), static (row, at) =>
    {
        for (int x = 0; x < row.Length; x++)
            row[x] = at.Item1[x, at.y].Glyph;
    });

    public override string ToString() => string.Join('\n', Enumerable.Range(0, Height).Select(y => Row(y).TrimEnd()));
}
