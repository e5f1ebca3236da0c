using Terminal.Gui.Drivers;

namespace ColdSim.App.Screens.Loop;

/// <summary>The toolkit's input, asleep in the kernel while nobody types; the toolkit's own looks fifty times a second.</summary>
/// <param name="arrived">Called on the input's thread after input was handed over.</param>
internal sealed class WaitingInput(Action arrived) : AnsiInput
{
    // Nothing but the end waits for this: input itself ends the wait at once.
    private const int LookForEndMilliseconds = 50;

    private volatile bool _ended;
    private bool _handedOver;

    /// <summary>Lets the input's thread go.</summary>
    public void End() => _ended = true;

    /// <inheritdoc/>
    public override bool Peek()
    {
        if (_handedOver)
            arrived();
        _handedOver = false;
        while (!_ended)
        {
            if (InputWait.Until(LookForEndMilliseconds))
                return _handedOver = base.Peek();
        }

        return false;
    }
}
