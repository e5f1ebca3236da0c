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

    /// <summary>Density; 0 without frost. [kg/m³]</summary>
    public double Density_kg_m3 => Thickness_m > 0 ? Mass_kg_m2 / Thickness_m : 0;

    /// <summary>The layer after a time of steady growth, settling or loss.</summary>
    /// <param name="coupling">What arrives or leaves, and what of it goes inward.</param>
    /// <param name="time_s">How long. [s]</param>
    /// <remarks>
    /// What arrives and does not go inward is laid on top, light. Where more goes inward than arrives the surface gives it up, and what goes away
    /// leaves the layer as dense as it is: a layer that is gone has no thickness.
    /// </remarks>
    public FrostLayer After(in HeatCoupling coupling, double time_s)
    {
        double change_kg_m2 = coupling.FrostFlux_kg_m2s * time_s, mass_kg_m2 = Mass_kg_m2 + change_kg_m2;
        if (mass_kg_m2 <= 0) return default;
        double onTop_kg_m2 = change_kg_m2 - coupling.FrostInward_kg_m2s * time_s;
        double thickness_m = Thickness_m + onTop_kg_m2 / (onTop_kg_m2 > 0 ? Frost.LaidDensity_kg_m3 : Density_kg_m3 > 0 ? Density_kg_m3 : Frost.LaidDensity_kg_m3);

        // Frost keeps between the density that it is laid down at and that of the oldest.
        return new FrostLayer(mass_kg_m2, Math.Clamp(thickness_m, mass_kg_m2 / Densest_kg_m3, mass_kg_m2 / Frost.LaidDensity_kg_m3));
    }

    // A layer that was given denser stays as it is.
    private double Densest_kg_m3 => Math.Max(Frost.LargestDensity_kg_m3, Density_kg_m3);
}
