namespace ColdSim.Model.Cylinder;

/// <summary>How a cylinder exchanges heat with what is around it: Q = G (T_environment − T). SI units.</summary>
/// <remarks>
/// Air, surroundings, sky, sun and frost's latent heat are folded into one environment temperature, as in a sol-air temperature.
/// </remarks>
/// <param name="Conductance_W_K">G, liquid and shell to outside. [W/K]</param>
/// <param name="Environment_K">The temperature at which no heat flows. [K]</param>
/// <param name="FrostFlux_kg_m2s">Frost deposited, or sublimed and melted if negative. [kg/(m²·s)]</param>
/// <param name="FrostDensity_kg_m3">Density at which it is laid down. [kg/m³]</param>
/// <param name="BlanketShare_frac">Part of a blanket's heat that goes into liquid and shell; the rest goes out through its insulation.</param>
public readonly record struct HeatCoupling(
    double Conductance_W_K, double Environment_K, double FrostFlux_kg_m2s = 0, double FrostDensity_kg_m3 = 0,
    double BlanketShare_frac = 0)
{
    /// <summary>Heat into liquid and shell at a temperature, without a blanket's. [W]</summary>
    public double Heat_W(double temperature_K) => Conductance_W_K * (Environment_K - temperature_K);

    /// <summary>Heat into liquid and shell at a temperature, while a blanket makes some. [W]</summary>
    public double Heat_W(double temperature_K, double blanket_W)
        => Conductance_W_K * (Environment_K - temperature_K) + BlanketShare_frac * blanket_W;
}
