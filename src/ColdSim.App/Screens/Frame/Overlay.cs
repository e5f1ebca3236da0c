using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Frame;

/// <summary>Something that lies over the open page until it is closed.</summary>
internal abstract record Overlay
{
    /// <summary>Whether typed characters go to it. Where they do not, a key that it does not use closes it and does what it does on the page.</summary>
    public virtual bool TakesText => false;

    /// <summary>The job whose result it needs: the same object until the result is there; null while it needs none.</summary>
    public virtual PageJob? DueJob => null;

    /// <summary>Draws it on a sheet from a row down to the last.</summary>
    public abstract void Draw(Sheet sheet, int top);

    /// <summary>What follows from a message.</summary>
    /// <param name="message">The message.</param>
    /// <param name="rows">Rows that it is drawn in.</param>
    public abstract OverlayStep Update(PageMessage message, int rows);
}

/// <summary>What follows from a message to an overlay.</summary>
/// <param name="Open">The overlay; null where it closes.</param>
/// <param name="Then">A message to the frame after that; null for none.</param>
internal readonly record struct OverlayStep(Overlay? Open, FrameMessage? Then = null);
