namespace ColdSim.Physics.HeatTransfer;

/// <summary>A wall heated evenly over its height whose root is in liquid, as the wall of a tank under a heating blanket does.</summary>
/// <remarks>
/// Straight fin of even thickness, its tip insulated, with an even source and even losses over its height, on a root that goes on as a long fin between
/// the liquid and outside. The excess over the wetted wall is θ∞ [1 − β cosh(m(L − x))/cosh(mL)]; closed form of the fin equation, found in every heat-transfer textbook
/// (Incropera and DeWitt). No checks: called every step.
/// </remarks>
/// <param name="ToRoot_W_mK">Heat into the wetted wall, for each metre of liquid line and each kelvin by which the mean is above wetted wall far from the line. [W/(m·K)]</param>
/// <param name="TipOverMean">Excess at the tip over the mean excess: 1.5 for a short fin on a cold root, 1 for a long one.</param>
internal readonly record struct HeatedFin(double ToRoot_W_mK, double TipOverMean)
{
    // Below it the closed form loses digits; the series is exact to 1e-8 there.
    private const double Short = 0.02;

    /// <summary>The fin of a wall.</summary>
    /// <param name="h_W_m2K">Coefficient of all that takes heat in proportion to the excess, on both faces together, W/(m² K).</param>
    /// <param name="conductivity_W_mK">Conductivity of the wall, W/(m K).</param>
    /// <param name="thickness_m">Wall thickness, m.</param>
    /// <param name="length_m">Length of the fin from root to tip, m, above 0.</param>
    /// <param name="rootFilm_W_m2K">Film between the wetted wall below the root and the liquid, W/(m² K).</param>
    public static HeatedFin Of(double h_W_m2K, double conductivity_W_mK, double thickness_m, double length_m, double rootFilm_W_m2K)
    {
        double sheet_W_K = conductivity_W_mK * thickness_m, x = Math.Sqrt(h_W_m2K / sheet_W_K) * length_m;
        double mean, tip;
        if (x < Short)
        {
            (mean, tip) = (1.0 / 3 - x * x / 45, 0.5 - x * x / 24);
        }
        else
        {
            double tanh = Math.Tanh(x);
            (mean, tip) = ((x / tanh - 1) / (x * x), (1 - 1 / Math.Cosh(x)) / (x * tanh));
        }

        double rootResistance = 1 / Math.Sqrt(sheet_W_K * (rootFilm_W_m2K + h_W_m2K)), alongResistance = length_m / sheet_W_K;
        double meanResistance = rootResistance + alongResistance * mean;
        return new HeatedFin(1 / meanResistance, (rootResistance + alongResistance * tip) / meanResistance);
    }
}
