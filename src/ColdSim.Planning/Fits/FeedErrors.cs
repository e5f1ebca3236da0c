using ColdSim.Planning.Logs;
using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Fits;

/// <summary>Errors of the contents in a log of several cylinders; the rows of the log are the first observations.</summary>
/// <remarks>
/// As <see cref="ContentsErrors"/> for one cylinder, where what a day brings is shared by whatever fed on it. Besides: in a gap in which two
/// cylinders may have given gas, what one gave less the other gave more, by half of the use, so that their sum alone is compared; and where
/// all are open together, by <see cref="FeedTracker.Share_frac"/> of it.
/// </remarks>
internal sealed class FeedErrors(UseLog log, FeedHistory feeds, FeedRows rows) : IFitErrors
{
    private const double UnknownStart_kg = 20;

    /// <inheritdoc/>
    public void AddTo(Matrix<double> covariance, FitPrediction predicted)
    {
        int n = log.Rows.Count;
        Matrix<double> errors = log.Covariance();
        double[] used_kg = [.. Enumerable.Range(0, n).Select(i => Used_kg(i, predicted))];
        for (int i = 0; i < n; i++)
        {
            errors[i, i] += 0.25 * predicted.Cycle_kg * predicted.Cycle_kg;
            for (int j = 0; j < n; j++)
            {
                errors[i, j] += Shared(i, j, predicted) + LogPrediction.Lasting_frac * LogPrediction.Lasting_frac * used_kg[i] * used_kg[j];
                covariance[i, j] += errors[i, j];
            }
        }
    }

    private double Shared(int i, int j, FitPrediction predicted)
    {
        (int c, int d) = (log.Rows[i].Reading.Cylinder, log.Rows[j].Reading.Cylinder);
        double sum = c == d && rows.FirstGap(i) == rows.FirstGap(j) ? UnknownStart_kg * UnknownStart_kg : 0;
        for (int g = Math.Max(rows.FirstGap(i), rows.FirstGap(j)); g < Math.Min(rows.EndGap(i), rows.EndGap(j)); g++)
        {
            FeedGap gap = feeds.Gaps[g];
            double days = Math.Max((gap.To - gap.From).TotalDays, 1.0 / 86_400), use_kg = predicted.Given_kg[g].Sum();
            double divided_kg = (feeds.Together ? FeedTracker.Share_frac : FeedTracker.Divided_frac) * use_kg;
            sum += LogPrediction.Day_frac * LogPrediction.Day_frac * predicted.Given_kg[g][c] * predicted.Given_kg[g][d] / days
                + rows.Division(i, j, g) * divided_kg * divided_kg;
        }

        return sum;
    }

    private double Used_kg(int row, FitPrediction predicted)
    {
        double sum_kg = 0;
        for (int g = rows.FirstGap(row); g < rows.EndGap(row); g++)
            sum_kg += predicted.Given_kg[g][log.Rows[row].Reading.Cylinder];
        return sum_kg;
    }
}
