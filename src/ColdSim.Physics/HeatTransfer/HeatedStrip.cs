namespace ColdSim.Physics.HeatTransfer;

/// <summary>An evenly heated strip of a thin wall between unheated ones, into which its heat spreads.</summary>
/// <remarks>
/// Fin equation on both sides of the strip's edge, the same temperature and heat flow at it, no flow through the middle of either strip; closed form. No
/// checks: called every step.
/// </remarks>
/// <param name="Beside_W_mK">Heat over one edge into the unheated strip, for each metre of edge and each kelvin of the heated strip's mean excess. [W/(m·K)]</param>
/// <param name="MiddleOverMean">Excess in the middle of the heated strip over its mean excess.</param>
internal readonly record struct HeatedStrip(double Beside_W_mK, double MiddleOverMean)
{
    // Below it the closed form loses digits; two terms of the series are exact to 3e-8 of their value there.
    private const double Short = 0.02;

    /// <summary>The strip of a wall.</summary>
    /// <param name="heated_W_m2K">All that takes heat from the heated strip in proportion to its excess, above 0. [W/(m²·K)]</param>
    /// <param name="beside_W_m2K">All that takes heat from the unheated strip in proportion to its excess. [W/(m²·K)]</param>
    /// <param name="sheet_W_K">Conductivity of the wall times its thickness. [W/K]</param>
    /// <param name="heated_m">Half the width of the heated strip, above 0. [m]</param>
    /// <param name="beside_m">Half the width of the unheated strip. [m]</param>
    public static HeatedStrip Of(double heated_W_m2K, double beside_W_m2K, double sheet_W_K, double heated_m, double beside_m)
    {
        double mHeated = Math.Sqrt(heated_W_m2K / sheet_W_K), x = mHeated * heated_m, heatedSlope = mHeated * Math.Tanh(x);
        double mBeside = Math.Sqrt(beside_W_m2K / sheet_W_K), besideSlope = mBeside * Math.Tanh(mBeside * beside_m);
        if (besideSlope <= 0) return new HeatedStrip(0, 1);

        // The edge is this part of the way from an edge without flow to one that is held cold.
        double cold = besideSlope / (heatedSlope + besideSlope), warm = heatedSlope / (heatedSlope + besideSlope);
        double square = x * x;
        double mean = x < Short ? square / 3 * (1 - 0.4 * square) : 1 - Math.Tanh(x) / x;
        double middle = x < Short ? square / 2 * (1 - 5 * square / 12) : 1 - 1 / Math.Cosh(x);
        double strip = warm + cold * mean;
        return new HeatedStrip(sheet_W_K * cold * heatedSlope / strip, (warm + cold * middle) / strip);
    }
}
