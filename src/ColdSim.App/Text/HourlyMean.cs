namespace ColdSim.App.Text;

/// <summary>The mean over the hour around each minute, in which a burner's cycles even out.</summary>
internal static class HourlyMean
{
    private const int HalfHour = 30;

    /// <param name="samples">One a minute.</param>
    /// <param name="count">How many of them are filled; beyond them there is no mean.</param>
    public static double[] Of(double[] samples, int count)
    {
        count = Math.Min(count, samples.Length);
        double[] means = new double[samples.Length];
        Array.Fill(means, double.NaN);
        double sum = 0;
        int from = 0, to = 0;
        for (int i = 0; i < count; i++)
        {
            while (to < Math.Min(count, i + HalfHour + 1))
                sum += samples[to++];
            while (from < i - HalfHour)
                sum -= samples[from++];
            means[i] = sum / (to - from);
        }

        return means;
    }
}
