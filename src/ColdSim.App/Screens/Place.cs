namespace ColdSim.App.Screens;

/// <summary>Where the common time axis lies, and what stands on its left and right.</summary>
/// <param name="Left">First column of the plots.</param>
/// <param name="Columns">How many there are.</param>
internal readonly record struct Place(int Left, int Columns)
{
    /// <summary>Room for "160,000 BTU/h" and a bracket.</summary>
    public const int LeftMargin = 14;

    /// <summary>A bracket, a blank and room for a key and "pressure".</summary>
    public const int RightMargin = 14;

    /// <summary>First column after the plots.</summary>
    public int Right => Left + Columns;
}
