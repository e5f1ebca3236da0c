namespace ColdSim.Model.Engine;

/// <summary>How each cylinder warmed or cooled since its inputs were last set, to say how warm it will be in the middle of the time for which they are set next.</summary>
/// <remarks>
/// Over minutes the burner goes on and off, and the present rate says less of what comes than the mean of the last minutes; over seconds it says all. Between
/// the two the one goes over into the other, so that short steps keep their order.
/// </remarks>
/// <param name="cylinders">How many cylinders.</param>
internal sealed class WarmingTrend(int cylinders)
{
    // A burner's cycle is some ten minutes: half of it ahead, the trend counts alone.
    private const double Alone_s = 300;

    // A trend of longer ago, or one that goes further than this, is none.
    private const double Longest_s = 1200, Farthest_K = 5;

    private readonly double[] _began_K = new double[cylinders];
    private double _began_s = double.NegativeInfinity;

    /// <summary>Temperature of a cylinder some time ahead. [K]</summary>
    /// <param name="cylinder">Its place.</param>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="now_K">Its temperature now. [K]</param>
    /// <param name="byRate_K">What the present rate alone would make of it. [K]</param>
    /// <param name="ahead_s">How far ahead. [s]</param>
    public double Ahead_K(int cylinder, double time_s, double now_K, double byRate_K, double ahead_s)
    {
        double since_s = time_s - _began_s;
        if (!(since_s > 0 && since_s <= Longest_s)) return byRate_K;
        double trend_K = Math.Clamp((now_K - _began_K[cylinder]) * (ahead_s / since_s), -Farthest_K, Farthest_K), part = Math.Min(1, ahead_s / Alone_s);
        return byRate_K + part * (now_K + trend_K - byRate_K);
    }

    /// <summary>Begins anew with the temperatures now.</summary>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="cylinder_K">Temperature of each cylinder. [K]</param>
    public void Begin(double time_s, ReadOnlySpan<double> cylinder_K)
    {
        cylinder_K.CopyTo(_began_K);
        _began_s = time_s;
    }
}
