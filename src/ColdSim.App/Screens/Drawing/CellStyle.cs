namespace ColdSim.App.Screens.Drawing;

/// <summary>What a glyph on the screen means; the terminal decides how it looks.</summary>
internal enum CellStyle
{
    Plain,
    Strong,

    /// <summary>Under the time cursor, or the chosen row.</summary>
    Pointer,

    /// <summary>That a night fails.</summary>
    StrongPointer,

    // The quantities of curves and ruled lines.
    Inside,
    Outside,
    SetPoint,
    Freezing,
    Demand,
    Supply,
    Shortage,
    Liquid,
    GasLeft,
    Charge,
    PowerDrawn,
    PowerGiven,
}
