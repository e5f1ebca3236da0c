using System.Text;
using ColdSim.App.Text;
using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>
/// Writes lines to another writer, no wider than a terminal and with whatever they quote from outside made visible; text without a line's end is our own
/// and goes through as it is.
/// </summary>
internal sealed class VisibleWriter : TextWriter
{
    // What a line begins with that is there to be copied and run.
    private const string Program = "coldsim ";

    private readonly TextWriter _to;
    private readonly int _columns;

    public VisibleWriter(TextWriter to, int columns) => (_to, _columns, CoreNewLine) = (to, columns, to.NewLine.ToCharArray());

    /// <summary>Rows of a terminal of 80 columns that its lines have taken.</summary>
    public int Rows { get; private set; }

    public override Encoding Encoding => _to.Encoding;

    public override void Write(char value) => _to.Write(value);

    public override void Write(string? value) => _to.Write(value);

    public override void Write(char[] buffer, int index, int count) => _to.Write(buffer, index, count);

    public override void WriteLine(string? value)
    {
        string? visible = value is null ? null : VisibleText.Of(value);
        if (visible is null || visible.Length <= _columns)
        {
            Rows += 1 + Math.Max(0, (visible?.Length ?? 0) - 1) / Wrap.Columns;
            _to.WriteLine(visible);
            return;
        }

        // What goes on from the line above is set in by two more columns than where it began.
        string margin = visible[..^visible.TrimStart(' ').Length];
        bool command = visible.AsSpan(margin.Length).StartsWith(Program, StringComparison.Ordinal);
        string goesOn = command ? " \\" : "";
        IReadOnlyList<string> lines = Wrap.Lines(visible, _columns - goesOn.Length, margin, margin + "  ");
        Rows += lines.Count;
        for (int i = 0; i < lines.Count; i++)
            _to.WriteLine(i < lines.Count - 1 ? lines[i] + goesOn : lines[i]);
    }

    public override void Flush() => _to.Flush();
}
