using ColdSim.Planning.Logs;
using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Fits;

/// <summary>How far the readings may stand off the simulator though its parameters are right.</summary>
/// <remarks>
/// The sum of: the readings' own errors with what they share; half a burner cycle, for a simulated mass is as fine as that; what a day
/// brings that nobody told the model (doors, cooking, company), a random walk; what the model gets wrong all the time; and, for each
/// stretch between fillings, a start that nobody knows, which takes away whatever sits alike in all of its readings.
/// </remarks>
public static class FitErrors
{
    /// <summary>Standard deviation of one day's use about the model, as part of it.</summary>
    public const double Day_frac = 0.04;

    /// <summary>The same of all days together.</summary>
    public const double Lasting_frac = 0.06;

    private const double Day_s = 86_400;
    private const double UnknownStart_kg = 20;

    internal static Matrix<double> Of(UseLog log, FitRun run, FitPrediction predicted)
    {
        int n = log.Rows.Count;
        Matrix<double> c = log.Covariance();
        double[] used = new double[n], walked = new double[n];
        foreach ((int first, int end) in run.Stretches)
        {
            for (int i = first + 1; i < end; i++)
            {
                double days = Math.Max((log.Rows[i].Reading.Time - log.Rows[i - 1].Reading.Time).TotalSeconds, 1) / Day_s;
                double use_kg = predicted.Mass_kg[i - 1] - predicted.Mass_kg[i];
                used[i] = predicted.Mass_kg[first] - predicted.Mass_kg[i];
                walked[i] = walked[i - 1] + Day_frac * Day_frac * use_kg * use_kg / days;
            }

            for (int i = first; i < end; i++)
            {
                for (int j = first; j < end; j++)
                    c[i, j] += UnknownStart_kg * UnknownStart_kg + walked[Math.Min(i, j)];
            }
        }

        for (int i = 0; i < n; i++)
        {
            c[i, i] += 0.25 * predicted.Cycle_kg * predicted.Cycle_kg;
            for (int j = 0; j < n; j++)
                c[i, j] += Lasting_frac * Lasting_frac * used[i] * used[j];
        }

        return c;
    }
}
