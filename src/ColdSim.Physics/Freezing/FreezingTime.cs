namespace ColdSim.Physics.Freezing;

/// <summary>Closed forms for the time until water is at freezing and until it is ice. SI units.</summary>
/// <remarks>What the step loop is checked against; it does not use them, because weather changes while a pipe cools.</remarks>
internal static class FreezingTime
{
    /// <summary>Time for something of one temperature to cool to freezing in steady cold air: (C/G)·ln((T₀ − Tₐ)/(T_f − Tₐ)). [s]</summary>
    /// <param name="capacity_J_K">Heat capacity. [J/K]</param>
    /// <param name="conductance_W_K">To the air. [W/K]</param>
    /// <param name="from_K">Where it starts, above freezing. [K]</param>
    /// <param name="air_K">The air, below freezing. [K]</param>
    /// <returns>Infinite where the air is not below freezing.</returns>
    public static double ToFreezing_s(double capacity_J_K, double conductance_W_K, double from_K, double air_K)
        => air_K >= Water.Freezing_K
            ? double.PositiveInfinity
            : capacity_J_K / conductance_W_K * Math.Log((from_K - air_K) / (Water.Freezing_K - air_K));

    /// <summary>Plank's time to freeze a long round body of water through, from freezing: (ρL/ΔT)·(D/4h + D²/16k). [s]</summary>
    /// <param name="diameter_m">Of the water. [m]</param>
    /// <param name="film_W_m2K">Outside, on the water's own surface. [W/(m²·K)]</param>
    /// <param name="air_K">The air, below freezing. [K]</param>
    /// <returns>Infinite where the air is not below freezing.</returns>
    public static double RoundThrough_s(double diameter_m, double film_W_m2K, double air_K)
        => Through_s(diameter_m / (4 * film_W_m2K) + diameter_m * diameter_m / (16 * Water.IceConductivity_W_mK), air_K);

    /// <summary>Plank's time to freeze a slab through from both sides: (ρL/ΔT)·(D/2h + D²/8k). [s]</summary>
    /// <param name="thickness_m">Of the slab. [m]</param>
    /// <param name="film_W_m2K">On both faces. [W/(m²·K)]</param>
    /// <param name="air_K">The air, below freezing. [K]</param>
    /// <returns>Infinite where the air is not below freezing.</returns>
    public static double SlabThrough_s(double thickness_m, double film_W_m2K, double air_K)
        => Through_s(thickness_m / (2 * film_W_m2K) + thickness_m * thickness_m / (8 * Water.IceConductivity_W_mK), air_K);

    private static double Through_s(double resistance, double air_K)
        => air_K >= Water.Freezing_K
            ? double.PositiveInfinity
            : Water.Density_kg_m3 * Water.LatentHeat_J_kg / (Water.Freezing_K - air_K) * resistance;
}
