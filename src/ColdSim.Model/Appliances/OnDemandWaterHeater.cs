using ColdSim.Physics.Freezing;

namespace ColdSim.Model.Appliances;

/// <summary>A water heater that burns only while water runs, with no more gas than the water needs.</summary>
internal sealed record OnDemandWaterHeater : GasAppliance
{
    /// <summary>Water that runs through it in its hours. [kg/s]</summary>
    public required double Flow_kg_s { get; init; }

    /// <summary>Heat to the water per gross heat of gas.</summary>
    public double Efficiency_frac { get; init; } = 0.8;

    /// <summary>Water that comes in. [K]</summary>
    public double Cold_K { get; init; } = 281.15;

    /// <summary>Set point of the outlet water. [K]</summary>
    public double Hot_K { get; init; } = 313.15;

    /// <inheritdoc/>
    public override double InputAt_W(double elevation_m)
        => Math.Min(base.InputAt_W(elevation_m), Flow_kg_s * Water.SpecificHeat_J_kgK * (Hot_K - Cold_K) / Efficiency_frac);
}
