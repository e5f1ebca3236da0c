using System.Text;
using ColdSim.App.Text;
using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>Writes lines to another writer with whatever they quote from outside made visible; text without a line's end is our own and goes through as it is.</summary>
internal sealed class VisibleWriter : TextWriter
{
    private readonly TextWriter _to;

    public VisibleWriter(TextWriter to) => (_to, CoreNewLine) = (to, to.NewLine.ToCharArray());

    /// <summary>Rows of a terminal of 80 columns that its lines have taken.</summary>
    public int Rows { get; private set; }

    public override Encoding Encoding => _to.Encoding;

    public override void Write(char value) => _to.Write(value);

    public override void Write(string? value) => _to.Write(value);

    public override void Write(char[] buffer, int index, int count) => _to.Write(buffer, index, count);

    public override void WriteLine(string? value)
    {
        string? line = value is null ? null : VisibleText.Of(value);
        Rows += 1 + Math.Max(0, (line?.Length ?? 0) - 1) / Wrap.Columns;
        _to.WriteLine(line);
    }

    public override void Flush() => _to.Flush();
}
