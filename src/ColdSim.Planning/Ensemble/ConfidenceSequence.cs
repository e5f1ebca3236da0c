using MathNet.Numerics;

namespace ColdSim.Planning.Ensemble;

/// <summary>A probability's confidence interval that may be looked at after every trial: with 95 % all of them hold at once.</summary>
/// <remarks>
/// The mixture likelihood ratio of Robbins (1970) with a uniform prior: the binomial likelihood's mean over all probabilities, beside that at one of them. Under
/// the true probability this ratio is a martingale of mean one, so that by Ville's inequality it ever reaches 20 with a chance of at most a
/// twentieth. A probability is in the interval as long as its ratio is below 20, and a trial may be stopped as soon as the wanted one is not.
/// </remarks>
/// <param name="Count">Those that hold.</param>
/// <param name="Of">The number of trials so far.</param>
internal readonly record struct ConfidenceSequence(int Count, int Of)
{
    private const double Ratio = 20;
    private const int Halvings = 60;

    /// <summary>Lower end of the interval.</summary>
    public double Low_frac => Count == 0 ? 0 : Edge(0, (double)Count / Of);

    /// <summary>Upper end of the interval.</summary>
    public double High_frac => Count == Of ? 1 : Edge(1, (double)Count / Of);

    /// <summary>Where a probability lies: -1 below the interval, 1 above it, 0 within it.</summary>
    public int Place(double chance_frac) => Excludes(chance_frac) ? Math.Sign(chance_frac - (double)Count / Of) : 0;

    private bool Excludes(double chance_frac)
    {
        if (Of == 0) return false;
        double likelihood = Weighted(Count, Math.Log(chance_frac)) + Weighted(Of - Count, Math.Log(1 - chance_frac));
        return SpecialFunctions.BetaLn(Count + 1, Of - Count + 1) - likelihood >= Math.Log(Ratio);
    }

    // No trials of a kind say nothing, however unlikely one would be.
    private static double Weighted(int trials, double log) => trials == 0 ? 0 : trials * log;

    private double Edge(double outside, double inside)
    {
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (outside + inside);
            if (Excludes(middle)) outside = middle;
            else inside = middle;
        }

        return inside;
    }
}
