namespace ColdSim.App.Text;

/// <summary>Dots two across and four down a cell, shown as braille patterns.</summary>
internal sealed class DotGrid(int cells, int rows)
{
    private static readonly byte[] LeftBits = [0x01, 0x02, 0x04, 0x40];
    private static readonly byte[] RightBits = [0x08, 0x10, 0x20, 0x80];

    private readonly byte[] _bits = new byte[cells * rows];

    public int Columns => cells * 2;

    public int Dots => rows * 4;

    /// <summary>Sets a dot; the row is counted from 0 at the bottom. Off the grid nothing is set.</summary>
    public void Set(int column, int dot)
    {
        if (column < 0 || column >= Columns || dot < 0 || dot >= Dots)
            return;
        int down = Dots - 1 - dot;
        _bits[down / 4 * cells + column / 2] |= (column % 2 == 0 ? LeftBits : RightBits)[down % 4];
    }

    public bool IsSet(int cell, int row) => _bits[row * cells + cell] != 0;

    public char Glyph(int cell, int row) => (char)(0x2800 + _bits[row * cells + cell]);
}
