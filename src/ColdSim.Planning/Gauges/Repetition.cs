using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Gauges;

/// <summary>Why a reading is the one to repeat.</summary>
internal enum RepeatReason
{
    /// <summary>It is clearly off what all others together say.</summary>
    Outlier,

    /// <summary>Read once more it narrows the result more than any other.</summary>
    Narrows,

    /// <summary>None: an error that readings share makes most of what is left.</summary>
    SharedError,
}

/// <summary>Which one of several readings to repeat, and what that would bring.</summary>
/// <remarks>
/// Left out one at a time: each reading against the combination of all others, in standard uncertainties of that difference, with the errors that they
/// share counted on both sides. A repetition has errors of its own anew and shares the rest with every reading; the uncertainty of all with it follows
/// from the same least squares as <see cref="CombinedEstimate"/>.
/// </remarks>
internal sealed record Repetition
{
    /// <summary>A reading is an outlier beyond this many standard uncertainties of its difference from all others together.</summary>
    public const double Outlier = 3;

    // A gain below this is not worth a second walk to the cylinder: an assumption.
    private const double Gain_frac = 0.05;

    /// <summary>Why.</summary>
    public required RepeatReason Reason { get; init; }

    /// <summary>Place of the reading to repeat among all; that of the best one also where no repetition gains much.</summary>
    public required int Reading { get; init; }

    /// <summary>The error shared by readings that makes most of the combined uncertainty; null where none is shared.</summary>
    public required StatedError? Shared { get; init; }

    /// <summary>Standard uncertainty of all together if each one in turn were read once more. [kg]</summary>
    public required IReadOnlyList<double> Repeated_kg { get; init; }

    /// <summary>How far each is from all others together, signed, in standard uncertainties of that difference.</summary>
    public required IReadOnlyList<double> FromOthers { get; init; }

    /// <summary>Finds it.</summary>
    /// <param name="estimates">Two readings or more.</param>
    /// <param name="covariance">Of their masses. [kg²]</param>
    /// <param name="weights">What each counts; together one.</param>
    /// <param name="uncertainty_kg">Standard uncertainty of all together. [kg]</param>
    public static Repetition Of(
        IReadOnlyList<ContentsEstimate> estimates, Matrix<double> covariance, IReadOnlyList<double> weights, double uncertainty_kg)
    {
        int[] all = [.. Enumerable.Range(0, estimates.Count)];
        double[] repeated_kg = [.. all.Select(i => Repeated(estimates[i], covariance, i))];
        double[] fromOthers = [.. all.Select(i => OffOthers(estimates, covariance, i))];

        // Of two readings each is as far from the other: the less certain one is then the likelier to be wrong.
        int furthest = all.OrderByDescending(i => Math.Round(Math.Abs(fromOthers[i]), 9))
            .ThenByDescending(i => estimates[i].Uncertainty_kg).First();
        bool isOutlier = Math.Abs(fromOthers[furthest]) > Outlier;
        int best = all.OrderBy(i => Math.Round(repeated_kg[i], 12)).First();
        bool gains = repeated_kg[best] < (1 - Gain_frac) * uncertainty_kg;
        return new()
        {
            Reason = isOutlier ? RepeatReason.Outlier : gains ? RepeatReason.Narrows : RepeatReason.SharedError,
            Reading = isOutlier ? furthest : best,
            Shared = MostShared(estimates, weights),
            Repeated_kg = repeated_kg,
            FromOthers = fromOthers,
        };
    }

    private static double Repeated(ContentsEstimate estimate, Matrix<double> covariance, int place)
    {
        int n = covariance.RowCount;
        double sharedVariance = estimate.Shares.Where(s => s.Input.Shared).Sum(s => s.Change_kg * s.Change_kg);
        Matrix<double> with = Matrix<double>.Build.Dense(n + 1, n + 1, (i, j) =>
            i < n && j < n ? covariance[i, j]
            : i == n && j == n ? covariance[place, place]
            : Math.Min(i, j) == place ? sharedVariance
            : covariance[place, Math.Min(i, j)]);
        return Math.Sqrt(1 / with.Cholesky().Solve(Vector<double>.Build.Dense(n + 1, 1)).Sum());
    }

    private static double OffOthers(IReadOnlyList<ContentsEstimate> estimates, Matrix<double> covariance, int place)
    {
        int[] others = [.. Enumerable.Range(0, estimates.Count).Where(i => i != place)];
        Matrix<double> of = Matrix<double>.Build.Dense(others.Length, others.Length, (i, j) => covariance[others[i], others[j]]);
        Vector<double> solved = of.Cholesky().Solve(Vector<double>.Build.Dense(others.Length, 1));
        Vector<double> weights = solved / solved.Sum();
        double mean_kg = 0, withOthers = 0;
        for (int i = 0; i < others.Length; i++)
        {
            mean_kg += weights[i] * estimates[others[i]].Mass_kg;
            withOthers += weights[i] * covariance[place, others[i]];
        }

        double variance = covariance[place, place] + 1 / solved.Sum() - 2 * withOthers;
        return (estimates[place].Mass_kg - mean_kg) / Math.Sqrt(variance);
    }

    private static StatedError? MostShared(IReadOnlyList<ContentsEstimate> estimates, IReadOnlyList<double> weights)
        => estimates.SelectMany((e, i) => e.Shares.Where(s => s.Input.Shared).Select(s => (s.Input, Change_kg: weights[i] * s.Change_kg)))
            .GroupBy(s => s.Input.Name).Select(g => (g.First().Input, Change_kg: Math.Abs(g.Sum(s => s.Change_kg))))
            .Where(s => s.Change_kg > 0).OrderByDescending(s => s.Change_kg).Select(s => s.Input).FirstOrDefault();
}
