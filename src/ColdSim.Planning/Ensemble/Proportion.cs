namespace ColdSim.Planning.Ensemble;

/// <summary>A proportion of members, with the confidence interval of the probability.</summary>
/// <param name="Count">Those that do.</param>
/// <param name="Of">The number of cases in all.</param>
/// <remarks>The interval is Wilson's (1927) at 95 %: it stays between 0 and 1, and is not empty where none or all do.</remarks>
public sealed record Proportion(int Count, int Of)
{
    // Two-sided 95 % of the normal distribution.
    private const double Z = 1.959963984540054;

    /// <summary>The part itself.</summary>
    public double Chance_frac => (double)Count / Of;

    /// <summary>Lower end of the interval.</summary>
    public double Low_frac => Count == 0 ? 0 : Middle - Half;

    /// <summary>Upper end of the interval.</summary>
    public double High_frac => Count == Of ? 1 : Middle + Half;

    private double Middle => (Chance_frac + Z * Z / (2 * Of)) / (1 + Z * Z / Of);

    private double Half => Z / (1 + Z * Z / Of) * Math.Sqrt(Chance_frac * (1 - Chance_frac) / Of + Z * Z / (4.0 * Of * Of));
}
