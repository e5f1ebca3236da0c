using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Physics.Propane;

namespace ColdSim.Planning.Trips;

/// <summary>How much goes into a cylinder, and its state afterwards.</summary>
/// <remarks>
/// The two limits are not the same: 80 % of the volume weighs more the colder the liquid is, and below about 40 °F more than 42 % of
/// the water capacity. Both apply at the temperature of the mixture, which is what a stop valve or a scale sees.
/// </remarks>
internal static class Filling
{
    /// <summary>Part of the volume at which a filling by volume stops.</summary>
    public const double VolumeLimit_frac = 0.80;

    private const int MostMixingIterations = 60;

    // A smaller mass is neither pumped nor visible on a scale.
    private const double Least_kg = 1e-6;

    /// <summary>Propane in a volume of which a fraction is liquid, the vapour above included. [kg]</summary>
    /// <param name="volume_m3">The volume. [m³]</param>
    /// <param name="liquid_frac">The fraction.</param>
    /// <param name="t_K">Temperature of both. [K]</param>
    public static double AtVolume_kg(double volume_m3, double liquid_frac, double t_K)
        => volume_m3 * (liquid_frac * PropaneSaturation.LiquidDensity_kg_m3(t_K) + (1 - liquid_frac) * PropaneSaturation.VapourDensity_kg_m3(t_K));

    /// <summary>Fills a cylinder.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="before">Its state before.</param>
    /// <param name="asked_kg">The requested mass; null for as much as the limit lets in. [kg]</param>
    /// <param name="limit">Where the filling stops.</param>
    /// <param name="supply_K">How warm the liquid comes. [K]</param>
    public static FilledCylinder Of(CylinderSpecification cylinder, CylinderState before, double? asked_kg, FillLimit limit, double supply_K)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(before);
        double room_kg = limit == FillLimit.Weight
            ? cylinder.LegalFill_kg - before.Propane_kg
            : RoomByVolume_kg(cylinder, before, supply_K);
        if (room_kg <= Least_kg) return StateWith(cylinder, before.Propane_kg, before.Liquid_K, FillingEnd.Full);
        FillingEnd end = asked_kg <= room_kg ? FillingEnd.Amount : limit == FillLimit.Weight ? FillingEnd.Weight : FillingEnd.Volume;
        double added_kg = Math.Min(room_kg, asked_kg ?? room_kg);
        double t_K = MixedTemperature_K(cylinder, before.Propane_kg, before.Liquid_K, added_kg, supply_K);
        return StateWith(cylinder, before.Propane_kg + added_kg, t_K, end);
    }

    /// <summary>The state of a cylinder that holds a mass at a temperature.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="propane_kg">What is in it. [kg]</param>
    /// <param name="t_K">How warm it is. [K]</param>
    /// <param name="end">What ended the filling.</param>
    public static FilledCylinder StateWith(CylinderSpecification cylinder, double propane_kg, double t_K, FillingEnd end)
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

    /// <summary>Temperature once a mass of liquid has come in and all is mixed. [K]</summary>
    /// <remarks>
    /// Energy balance of the closed cylinder, shell included, with the enthalpy of what comes in. Nothing is vented; the pump's work and the
    /// heat through the wall during filling are neglected, both of the order of a tenth of a kelvin.
    /// </remarks>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="before_kg">What was in it. [kg]</param>
    /// <param name="before_K">How warm it was. [K]</param>
    /// <param name="added_kg">What comes in. [kg]</param>
    /// <param name="added_K">How warm that is. [K]</param>
    public static double MixedTemperature_K(CylinderSpecification cylinder, double before_kg, double before_K, double added_kg, double added_K)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        if (!(added_kg > 0)) return before_K;
        double shell_J_K = cylinder.MetalMass_kg * cylinder.MetalHeat_J_kgK;
        double energy_J = CylinderContents.Of(before_kg, cylinder.Volume_m3, before_K).InternalEnergy_J + shell_J_K * before_K
            + added_kg * SaturationTable.At(added_K).LiquidEnthalpy_J_kg;
        double t_K = before_K;
        for (int i = 0; i < MostMixingIterations; i++)
        {
            CylinderContents contents = CylinderContents.Of(before_kg + added_kg, cylinder.Volume_m3, t_K);
            double step_K = (energy_J - contents.InternalEnergy_J - shell_J_K * t_K) / (contents.HeatCapacity_J_K + shell_J_K);
            t_K += Math.Clamp(step_K, -20, 20);
            if (Math.Abs(step_K) < 1e-10) break;
        }

        return t_K;
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
            double t_K = MixedTemperature_K(cylinder, before.Propane_kg, before.Liquid_K, middle_kg, supply_K);
            if (Liquid_frac(cylinder, before.Propane_kg + middle_kg, t_K) < VolumeLimit_frac) low_kg = middle_kg;
            else high_kg = middle_kg;
        }

        return low_kg;
    }
}

/// <summary>What ended a filling.</summary>
public enum FillingEnd
{
    /// <summary>The requested mass is in.</summary>
    Amount,

    /// <summary>80 % of the volume is liquid.</summary>
    Volume,

    /// <summary>The legal weight is reached.</summary>
    Weight,

    /// <summary>It was at its limit before.</summary>
    Full,
}

/// <summary>A cylinder after a filling, or the one that came in an exchange. SI units.</summary>
/// <param name="Propane_kg">Propane in it. [kg]</param>
/// <param name="Liquid_K">Its temperature, old and new mixed. [K]</param>
/// <param name="Liquid_frac">Part of its volume that is liquid.</param>
/// <param name="OverWeight_kg">By how much it is over the legal weight; 0 where it is not. [kg]</param>
/// <param name="LiquidFull_K">Temperature at which the liquid would fill it; infinite where that is beyond the model's range. [K]</param>
/// <param name="End">What ended the filling.</param>
public readonly record struct FilledCylinder(
    double Propane_kg, double Liquid_K, double Liquid_frac, double OverWeight_kg, double LiquidFull_K, FillingEnd End)
{
    /// <summary>Whether it holds more than the legal weight.</summary>
    public bool IsOverWeight => OverWeight_kg > 0;
}
