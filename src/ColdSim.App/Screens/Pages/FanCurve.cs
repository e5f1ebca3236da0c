using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Screens.Pages;

/// <summary>One edge of a fan as samples a minute, with straight lines between its points.</summary>
internal static class FanCurve
{
    private const double Minute_s = 60;

    /// <summary>NaN where the fan has nothing.</summary>
    public static double[] Of(IReadOnlyList<FanPoint> fan, Func<FanPoint, double?> edge, int samples)
    {
        double[] curve = new double[samples];
        Array.Fill(curve, double.NaN);
        for (int i = 0; i < fan.Count; i++)
        {
            double from = edge(fan[i]) ?? double.NaN, to = i + 1 < fan.Count ? edge(fan[i + 1]) ?? double.NaN : from;
            double apart_s = i + 1 < fan.Count ? fan[i + 1].Time_s - fan[i].Time_s : Minute_s;
            for (int m = (int)Math.Ceiling(fan[i].Time_s / Minute_s - 1e-9); m < samples && m * Minute_s < fan[i].Time_s + apart_s - 1e-9; m++)
            {
                double part = (m * Minute_s - fan[i].Time_s) / apart_s;
                curve[m] = double.IsNaN(to) ? from : from + part * (to - from);
            }
        }

        return curve;
    }
}
