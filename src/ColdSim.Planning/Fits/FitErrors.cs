using ColdSim.Planning.Logs;
using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Fits;

/// <summary>One cause of a difference between the observations and the simulator with the right parameters.</summary>
internal interface IFitErrors
{
    /// <summary>Adds its part of the observations' covariance, each in its own unit.</summary>
    /// <param name="covariance">Receives it; a row and a column for each observation, in their order.</param>
    /// <param name="predicted">What the simulator says at the observations, for errors that grow with the use.</param>
    void AddTo(Matrix<double> covariance, FitPrediction predicted);
}

/// <summary>Errors of the contents in a log of one cylinder; the rows of the log are the first observations.</summary>
/// <remarks>
/// The sum of: the readings' own errors with what they share; half a burner cycle, the resolution of a simulated mass; a random walk for what a
/// day brings that the model does not know (doors, cooking, visitors); the model's lasting error; and, for each stretch between fillings, an
/// unknown start, which removes whatever is common to all of its readings.
/// </remarks>
internal sealed class ContentsErrors(UseLog log, IReadOnlyList<FitStretch> stretches) : IFitErrors
{
    private const double Day_s = 86_400;
    private const double UnknownStart_kg = 20;

    /// <inheritdoc/>
    public void AddTo(Matrix<double> covariance, FitPrediction predicted)
    {
        int n = log.Rows.Count;
        Matrix<double> readings = log.Covariance();
        double[] used = new double[n], walked = new double[n];
        foreach (FitStretch stretch in stretches)
        {
            int first = stretch.FirstRow;
            for (int i = first + 1; i < stretch.EndRow; i++)
            {
                double days = Math.Max((log.Rows[i].Reading.Time - log.Rows[i - 1].Reading.Time).TotalSeconds, 1) / Day_s;
                double use_kg = predicted.Values[i - 1] - predicted.Values[i];
                used[i] = predicted.Values[first] - predicted.Values[i];
                walked[i] = walked[i - 1] + LogPrediction.Day_frac * LogPrediction.Day_frac * use_kg * use_kg / days;
            }

            for (int i = first; i < stretch.EndRow; i++)
            {
                for (int j = first; j < stretch.EndRow; j++)
                    readings[i, j] += UnknownStart_kg * UnknownStart_kg + walked[Math.Min(i, j)];
            }
        }

        for (int i = 0; i < n; i++)
        {
            readings[i, i] += 0.25 * predicted.Cycle_kg * predicted.Cycle_kg;
            for (int j = 0; j < n; j++)
                covariance[i, j] += readings[i, j] + LogPrediction.Lasting_frac * LogPrediction.Lasting_frac * used[i] * used[j];
        }
    }
}
