using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>Several readings of one cylinder as one.</summary>
/// <remarks>
/// Generalised least squares for one unknown: m = 1ᵀC⁻¹x / 1ᵀC⁻¹1, u² = 1 / 1ᵀC⁻¹1. C_ij sums the products of both readings' changes over the
/// errors that they share; without shared errors this is the mean weighted by inverse variance.
/// </remarks>
public sealed class CombinedEstimate
{
    /// <summary>Two readings disagree when they differ by more than this many standard uncertainties of their difference.</summary>
    public const double Beyond = 2;

    private CombinedEstimate(IReadOnlyList<ContentsEstimate> estimates, Matrix<double> covariance)
    {
        Estimates = estimates;
        int n = estimates.Count;
        Vector<double> ones = Vector<double>.Build.Dense(n, 1);
        Vector<double> values = Vector<double>.Build.Dense(n, i => estimates[i].Mass_kg);
        Vector<double> solved = covariance.Cholesky().Solve(ones);
        double information = solved.Sum();
        Weights = [.. (solved / information)];
        Mass_kg = Weights.Select((w, i) => w * values[i]).Sum();
        Uncertainty_kg = Math.Sqrt(1 / information);
        Disagreement = Worst(estimates, covariance);
        Repetition = estimates.Count > 1 ? Gauges.Repetition.Of(estimates, covariance, Weights, Uncertainty_kg) : null;
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<ContentsEstimate> Estimates { get; }

    /// <summary>What each counts; together one. A reading that mostly repeats another's error may count less than nothing.</summary>
    public IReadOnlyList<double> Weights { get; }

    /// <summary>Propane, liquid and vapour.</summary>
    public Mass Mass => Mass.FromKilograms(Mass_kg);

    public Mass StandardUncertainty => Mass.FromKilograms(Uncertainty_kg);

    /// <summary>The two readings that differ most beyond their errors; null where all agree.</summary>
    public Disagreement? Disagreement { get; }

    /// <summary>Which reading to repeat; null for one reading alone.</summary>
    internal Repetition? Repetition { get; }

    internal double Mass_kg { get; }

    internal double Uncertainty_kg { get; }

    /// <summary>Combines readings.</summary>
    /// <param name="estimates">At least one; each must have an error of its own.</param>
    /// <exception cref="ImpossibleReadingException">Readings without an error of their own cannot be weighed against each other.</exception>
    public static CombinedEstimate Of(IReadOnlyList<ContentsEstimate> estimates)
    {
        ArgumentNullException.ThrowIfNull(estimates);
        ArgumentOutOfRangeException.ThrowIfZero(estimates.Count);
        if (estimates.Any(e => e.Shares.Where(s => !s.Input.Shared).All(s => s.Change_kg == 0)))
            throw new ImpossibleReadingException("a reading without an error of its own cannot be combined with others");
        Matrix<double> covariance = Matrix<double>.Build.Dense(
            estimates.Count, estimates.Count, (i, j) => i == j ? estimates[i].Uncertainty_kg * estimates[i].Uncertainty_kg : Covariance(estimates[i], estimates[j]));
        return new CombinedEstimate(estimates, covariance);
    }

    private static double Covariance(ContentsEstimate a, ContentsEstimate b)
    {
        double sum = 0;
        foreach (ErrorShare one in a.Shares.Where(s => s.Input.Shared))
        {
            foreach (ErrorShare other in b.Shares)
            {
                if (other.Input.Shared && other.Input.Name == one.Input.Name)
                    sum += one.Change_kg * other.Change_kg;
            }
        }

        return sum;
    }

    private static Disagreement? Worst(IReadOnlyList<ContentsEstimate> estimates, Matrix<double> c)
    {
        Disagreement? worst = null;
        for (int i = 0; i < estimates.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (ContentsEstimate more, ContentsEstimate less) = estimates[i].Mass_kg > estimates[j].Mass_kg
                    ? (estimates[i], estimates[j]) : (estimates[j], estimates[i]);
                double gap_kg = more.Mass_kg - less.Mass_kg;
                double times = gap_kg / Math.Sqrt(c[i, i] + c[j, j] - 2 * c[i, j]);
                if (times > Beyond && times > (worst?.Times ?? 0))
                    worst = Explained(more, less, gap_kg, times);
            }
        }

        return worst;
    }

    // The likeliest reason is the error that needs the fewest of its own standard uncertainties to close the gap.
    private static Disagreement Explained(ContentsEstimate more, ContentsEstimate less, double gap_kg, double times)
    {
        Dictionary<string, (StatedError Input, double Change_kg)> opening = [];
        foreach (ErrorShare share in more.Shares)
            opening[Key(share, more)] = (share.Input, share.Change_kg);
        foreach (ErrorShare share in less.Shares)
        {
            string key = Key(share, less);
            opening[key] = (share.Input, (opening.TryGetValue(key, out var had) ? had.Change_kg : 0) - share.Change_kg);
        }

        (string key2, (StatedError input, double change_kg)) = opening.MaxBy(p => Math.Abs(p.Value.Change_kg));
        string reading = input.Shared ? "" : key2[(key2.IndexOf('|', StringComparison.Ordinal) + 1)..];
        return new Disagreement(more.Reading, less.Reading, Mass.FromKilograms(gap_kg), times, input, reading, -gap_kg / change_kg);
    }

    private static string Key(ErrorShare share, ContentsEstimate of) => share.Input.Shared ? share.Input.Name : $"{share.Input.Name}|{of.Reading}";
}

/// <summary>Two readings that differ beyond their errors.</summary>
/// <param name="More">The reading that means more propane.</param>
/// <param name="Less">The reading that means less.</param>
/// <param name="Gap">By how much they differ.</param>
/// <param name="Times">That in standard uncertainties of the difference.</param>
/// <param name="Cause">The input that could explain it with the fewest of its own standard uncertainties.</param>
/// <param name="CauseReading">The reading it belongs to; empty where it is shared.</param>
/// <param name="CauseTimes">How far it would have to be off, signed, in its own standard uncertainties.</param>
public sealed record Disagreement(
    string More, string Less, Mass Gap, double Times, StatedError Cause, string CauseReading, double CauseTimes);
