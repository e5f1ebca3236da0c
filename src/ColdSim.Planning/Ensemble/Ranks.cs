namespace ColdSim.Planning.Ensemble;

/// <summary>Spearman's rank correlation and percentiles.</summary>
internal static class Ranks
{
    /// <summary>How far two go up and down together by their ranks, -1 to 1; NaN where one does not move.</summary>
    public static double Correlation(double[] a, double[] b)
    {
        double[] x = Of(a), y = Of(b);
        double middle = (a.Length + 1) / 2.0, xx = 0, yy = 0, xy = 0;
        for (int i = 0; i < x.Length; i++)
        {
            (double dx, double dy) = (x[i] - middle, y[i] - middle);
            xx += dx * dx;
            yy += dy * dy;
            xy += dx * dy;
        }

        return xy / Math.Sqrt(xx * yy);
    }

    /// <summary>The least value that at least this part of all do not exceed; NaN without values.</summary>
    /// <param name="sorted">In ascending order.</param>
    /// <param name="part">0 to 1.</param>
    public static double Percentile(double[] sorted, double part)
        => sorted.Length == 0 ? double.NaN : sorted[Math.Clamp((int)Math.Ceiling(part * sorted.Length - 1e-9) - 1, 0, sorted.Length - 1)];

    // Values alike share the mean of their ranks.
    private static double[] Of(double[] values)
    {
        int[] order = [.. Enumerable.Range(0, values.Length)];
        Array.Sort([.. values], order);
        double[] ranks = new double[values.Length];
        for (int i = 0; i < order.Length;)
        {
            int j = i;
            while (j + 1 < order.Length && values[order[j + 1]] == values[order[i]]) j++;
            for (int k = i; k <= j; k++) ranks[order[k]] = (i + j) / 2.0 + 1;
            i = j + 1;
        }

        return ranks;
    }
}
