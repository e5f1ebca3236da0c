namespace ColdSim.Physics.HeatTransfer;

/// <summary>Free convection on a level plate: mean Nusselt number on area over perimeter.</summary>
/// <remarks>
/// Source: McAdams 1954, as in Incropera and DeWitt's textbook. Used for a cylinder's heads, which is an approximation:
/// a head is domed. No checks: called every step.
/// </remarks>
public static class HorizontalPlate
{
    /// <summary>Cold face down or hot face up, where the chilled or warmed air leaves by itself.</summary>
    /// <param name="rayleigh">Rayleigh number, 1e4 to 1e11.</param>
    // McAdams changes law at 1e7 with a jump of 6 %; taking the larger moves the change to 4.7e6 and leaves no jump.
    public static double NusseltColdFaceDown(double rayleigh)
        => Math.Max(0.54 * Math.Sqrt(Math.Sqrt(rayleigh)), 0.15 * Math.Cbrt(rayleigh));

    /// <summary>Cold face up or hot face down, where the air has to creep round the edge.</summary>
    /// <param name="rayleigh">Rayleigh number, 1e5 to 1e11.</param>
    public static double NusseltColdFaceUp(double rayleigh) => 0.27 * Math.Sqrt(Math.Sqrt(rayleigh));
}
