namespace ColdSim.Physics.Fluids;

/// <summary>Short fits of both saturated densities, used only to start the exact solution.</summary>
/// <remarks>With θ = 1 − T/Tc: ρ′ = ρc (1 + Σ n θ^t) and ρ″ = ρc exp(Tc/T Σ n θ^t). Nothing in the model uses them directly.</remarks>
internal sealed class DensityFit(double tc_K, double rhoc_kg_m3, (double N, double T)[] liquid, (double N, double T)[] vapour)
{
    public double Liquid_kg_m3(double t_K) => rhoc_kg_m3 * (1 + Sum(liquid, t_K));

    public double Vapour_kg_m3(double t_K) => rhoc_kg_m3 * Math.Exp(tc_K / t_K * Sum(vapour, t_K));

    private double Sum((double N, double T)[] terms, double t_K)
    {
        double theta = 1 - t_K / tc_K, sum = 0;
        foreach ((double n, double t) in terms) sum += n * Math.Pow(theta, t);
        return sum;
    }
}
