using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>Frost on the cold wall, per area of wall.</summary>
/// <param name="Mass_kg_m2">Frost. [kg/m²]</param>
/// <param name="Thickness_m">Depth. [m]</param>
public readonly record struct FrostLayer(double Mass_kg_m2, double Thickness_m)
{
    /// <summary>Resistance of the layer. [m²·K/W]</summary>
    public double Resistance_m2K_W
        => Thickness_m <= 0 ? 0 : Thickness_m / Frost.Conductivity_W_mK(Mass_kg_m2 / Thickness_m);

    /// <summary>The layer after a time of steady growth, or of loss.</summary>
    /// <param name="coupling">Flux and density of what is laid down.</param>
    /// <param name="time_s">How long. [s]</param>
    /// <remarks>What goes away goes at the layer's own density, so a layer that is gone has no thickness.</remarks>
    public FrostLayer After(in HeatCoupling coupling, double time_s)
    {
        double change_kg_m2 = coupling.FrostFlux_kg_m2s * time_s;
        double mass_kg_m2 = Mass_kg_m2 + change_kg_m2;
        if (mass_kg_m2 <= 0) return default;
        return change_kg_m2 > 0
            ? new FrostLayer(mass_kg_m2, Thickness_m + change_kg_m2 / coupling.FrostDensity_kg_m3)
            : new FrostLayer(mass_kg_m2, Thickness_m * mass_kg_m2 / Mass_kg_m2);
    }
}
