using System.Text;
using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>Writes lines to another writer with whatever they quote from outside made visible; text without a line's end is our own and goes through as it is.</summary>
internal sealed class VisibleWriter : TextWriter
{
    private readonly TextWriter _to;

    public VisibleWriter(TextWriter to) => (_to, CoreNewLine) = (to, to.NewLine.ToCharArray());

    public override Encoding Encoding => _to.Encoding;

    public override void Write(char value) => _to.Write(value);

    public override void Write(string? value) => _to.Write(value);

    public override void Write(char[] buffer, int index, int count) => _to.Write(buffer, index, count);

    public override void WriteLine(string? value) => _to.WriteLine(value is null ? null : VisibleText.Of(value));

    public override void Flush() => _to.Flush();
}
