using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace ColdSim.App.Screens.Loop;

/// <summary>The toolkit's output as one update: a terminal that knows synchronised output shows all of it at once or nothing yet.</summary>
/// <remarks>Private mode 2026 of the terminal working group's synchronised output; a terminal that does not know it ignores it.</remarks>
internal sealed class SynchronizedOutput() : AnsiOutput(AppModel.FullScreen), IOutput
{
    private const string Begin = "\x1b[?2026h", End = "\x1b[?2026l";

    private bool _isCursorHidden;

    /// <summary>Hides the cursor anew at its next turn: what the terminal shows is not known.</summary>
    public void Forget() => _isCursorHidden = false;

    // The toolkit hides the hidden cursor at every turn of its loop, which would send something all the time.
    void IOutput.SetCursor(Cursor cursor)
    {
        if (!cursor.IsVisible && _isCursorHidden)
            return;
        _isCursorHidden = !cursor.IsVisible;
        SetCursor(cursor);
    }

    /// <inheritdoc/>
    public override void Write(IOutputBuffer buffer)
    {
        if (!Array.Exists(buffer.DirtyLines, dirty => dirty))
            return;
        Write(Begin);
        base.Write(buffer);
        Write(End);
    }
}
