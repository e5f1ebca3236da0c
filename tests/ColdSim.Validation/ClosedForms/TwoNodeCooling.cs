using ColdSim.Model.Coach;

namespace ColdSim.Validation.ClosedForms;

/// <summary>Inside air of a coach of two nodes that cools from one temperature in constant air: a sum of two exponentials.</summary>
internal sealed class TwoNodeCooling
{
    private readonly double _fast_1_s, _slow_1_s, _fast_K, _slow_K, _end_K;

    public TwoNodeCooling(CoachSpecification coach, double outside_K)
    {
        double loss = coach.HeatLoss.Sum(h => h.Conductance_W_K), coupling = coach.Coupling_W_K;
        double air = coach.AirCapacity_J_K, rest = coach.FurnishingsCapacity_J_K;
        _end_K = outside_K + coach.InternalGains_W / loss;
        // The roots of the characteristic polynomial of air' = −(H + G)/Ca · air + G/Ca · rest, rest' = G/Cm · (air − rest).
        double trace = (loss + coupling) / air + coupling / rest, product = loss * coupling / (air * rest);
        double root = Math.Sqrt(trace * trace / 4 - product);
        _fast_1_s = trace / 2 + root;
        _slow_1_s = product / _fast_1_s;
        double above_K = coach.InitialTemperature_K!.Value - _end_K, slope_K_s = -loss / air * above_K;
        _fast_K = -(slope_K_s + _slow_1_s * above_K) / (_fast_1_s - _slow_1_s);
        _slow_K = above_K - _fast_K;
    }

    /// <summary>Inside air after a time. [K]</summary>
    public double At_K(double seconds) => _end_K + _fast_K * Math.Exp(-_fast_1_s * seconds) + _slow_K * Math.Exp(-_slow_1_s * seconds);
}
