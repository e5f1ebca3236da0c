namespace ColdSim.App.Screens;

/// <summary>What a glyph on the screen means; the terminal side picks how it looks.</summary>
internal enum Ink
{
    Plain,
    Strong,
    First,
    Second,

    /// <summary>Under the time cursor.</summary>
    Pointer,
}

/// <summary>One place on a sheet.</summary>
internal readonly record struct Cell(char Glyph, Ink Ink);

/// <summary>A screen as a grid of cells, free of any terminal; what falls outside is dropped.</summary>
internal sealed class Sheet
{
    private readonly Cell[] _cells;

    public Sheet(int width, int height)
    {
        Width = Math.Max(0, width);
        Height = Math.Max(0, height);
        _cells = new Cell[Width * Height];
        Array.Fill(_cells, new Cell(' ', Ink.Plain));
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Whether who lays this on a screen may write on where its last row ends.</summary>
    public bool LastRowGoesOn { get; set; }

    public Cell this[int x, int y] => _cells[y * Width + x];

    public void Put(int x, int y, char glyph, Ink ink = Ink.Plain)
    {
        if (x >= 0 && x < Width && y >= 0 && y < Height)
            _cells[y * Width + x] = new Cell(glyph, ink);
    }

    public void Put(int x, int y, string text, Ink ink = Ink.Plain)
    {
        for (int i = 0; i < text.Length; i++)
            Put(x + i, y, text[i], ink);
    }

    /// <summary>Writes text so that it ends just before <paramref name="end"/>.</summary>
    public void PutBefore(int end, int y, string text, Ink ink = Ink.Plain) => Put(end - text.Length, y, text, ink);

    /// <summary>Lays another sheet on this one from a row down.</summary>
    public void Lay(Sheet other, int top)
    {
        for (int y = 0; y < other.Height; y++)
        {
            for (int x = 0; x < other.Width; x++)
                Put(x, top + y, other[x, y].Glyph, other[x, y].Ink);
        }
    }

    public string Row(int y) => string.Create(Width, (this, y), static (row, at) =>
    {
        for (int x = 0; x < row.Length; x++)
            row[x] = at.Item1[x, at.y].Glyph;
    });

    public override string ToString() => string.Join('\n', Enumerable.Range(0, Height).Select(y => Row(y).TrimEnd()));
}
