using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Physics.Propane;

namespace ColdSim.Planning.Trips;

/// <summary>How much goes into a cylinder, and how it stands afterwards.</summary>
/// <remarks>
/// The two limits are not the same: 80 % of the volume weighs more the colder the liquid is, and below about 40 °F more than 42 % of
/// the water capacity. Both are taken at the temperature of the mixture, which is what a stop valve or a scale sees.
/// </remarks>
public static class Filling
{
    /// <summary>Part of the volume at which a filling by volume stops.</summary>
    public const double VolumeLimit_frac = 0.80;

    // Less than that is neither pumped nor seen on a scale.
    private const double Least_kg = 1e-6;

    /// <summary>Propane in a volume whose liquid stands at a part of it, the vapour above included. [kg]</summary>
    /// <param name="volume_m3">The volume. [m³]</param>
    /// <param name="liquid_frac">The part.</param>
    /// <param name="t_K">Temperature of both. [K]</param>
    public static double AtVolume_kg(double volume_m3, double liquid_frac, double t_K)
        => volume_m3 * (liquid_frac * PropaneSaturation.LiquidDensity_kg_m3(t_K) + (1 - liquid_frac) * PropaneSaturation.VapourDensity_kg_m3(t_K));

    /// <summary>Fills a cylinder.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="before">How it stands.</param>
    /// <param name="asked_kg">What is asked for; null for as much as the limit lets in. [kg]</param>
    /// <param name="limit">Where the filling stops.</param>
    /// <param name="supply_K">How warm the liquid comes. [K]</param>
    public static FilledCylinder Of(CylinderSpecification cylinder, CylinderState before, double? asked_kg, FillLimit limit, double supply_K)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(before);
        double room_kg = limit == FillLimit.Weight
            ? cylinder.LegalFill_kg - before.Propane_kg
            : RoomByVolume_kg(cylinder, before, supply_K);
        if (room_kg <= Least_kg) return AlgebraicState(cylinder, before.Propane_kg, before.Liquid_K, FillingEnd.Full);
        FillingEnd end = asked_kg <= room_kg ? FillingEnd.Amount : limit == FillLimit.Weight ? FillingEnd.Weight : FillingEnd.Volume;
        double added_kg = Math.Min(room_kg, asked_kg ?? room_kg);
        double t_K = Mixing.Temperature_K(cylinder, before.Propane_kg, before.Liquid_K, added_kg, supply_K);
        return AlgebraicState(cylinder, before.Propane_kg + added_kg, t_K, end);
    }

    /// <summary>A cylinder with a mass in it at a temperature, looked at as after a filling.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="propane_kg">What is in it. [kg]</param>
    /// <param name="t_K">How warm it is. [K]</param>
    /// <param name="end">What ended the filling.</param>
    public static FilledCylinder AlgebraicState(CylinderSpecification cylinder, double propane_kg, double t_K, FillingEnd end)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        double over_kg = propane_kg - cylinder.LegalFill_kg;
        return new FilledCylinder(
            propane_kg, t_K, Liquid_frac(cylinder, propane_kg, t_K), over_kg > Least_kg ? over_kg : 0,
            LiquidFull_K(propane_kg, cylinder.Volume_m3), end);
    }

    /// <summary>Temperature at which the liquid of a mass fills a volume; infinite beyond the model's range. [K]</summary>
    /// <param name="propane_kg">The mass. [kg]</param>
    /// <param name="volume_m3">The volume. [m³]</param>
    public static double LiquidFull_K(double propane_kg, double volume_m3)
    {
        double low_K = SaturationTable.Lowest_K, high_K = SaturationTable.Highest_K;
        if (propane_kg * SaturationTable.At(high_K).LiquidVolume_m3_kg < volume_m3) return double.PositiveInfinity;
        while (high_K - low_K > 1e-6)
        {
            double middle_K = 0.5 * (low_K + high_K);
            if (propane_kg * SaturationTable.At(middle_K).LiquidVolume_m3_kg < volume_m3) low_K = middle_K;
            else high_K = middle_K;
        }

        return high_K;
    }

    private static double Liquid_frac(CylinderSpecification cylinder, double propane_kg, double t_K)
        => CylinderContents.Of(propane_kg, cylinder.Volume_m3, t_K).LiquidVolume_m3 / cylinder.Volume_m3;

    // What is added also warms or cools what was there, and so moves the level that it is stopped at.
    private static double RoomByVolume_kg(CylinderSpecification cylinder, CylinderState before, double supply_K)
    {
        if (Liquid_frac(cylinder, before.Propane_kg, before.Liquid_K) >= VolumeLimit_frac) return 0;
        double low_kg = 0, high_kg = cylinder.Volume_m3 * PropaneSaturation.LiquidDensity_kg_m3(SaturationTable.Lowest_K);
        while (high_kg - low_kg > Least_kg * 1e-3)
        {
            double middle_kg = 0.5 * (low_kg + high_kg);
            double t_K = Mixing.Temperature_K(cylinder, before.Propane_kg, before.Liquid_K, middle_kg, supply_K);
            if (Liquid_frac(cylinder, before.Propane_kg + middle_kg, t_K) < VolumeLimit_frac) low_kg = middle_kg;
            else high_kg = middle_kg;
        }

        return low_kg;
    }
}
