namespace ColdSim.Model.Electrical;

/// <summary>What a battery may be charged with by its temperature.</summary>
/// <remarks>
/// Lithium iron phosphate (makers' sheets, from memory): nothing below freezing, 5 to 10 % of capacity an hour from 0 to 5 °C, rising
/// to its own bulk current at 10 °C. Lead-acid: in proportion to what it can give (assumption).
/// </remarks>
public static class ColdCharging
{
    private const double Zero_K = 273.15;
    private const double AtZero_1_h = 0.05;
    private const double AtFive_1_h = 0.1;

    /// <summary>Most that it takes, per rated charge. [1/h]</summary>
    /// <param name="chemistry">What it is made of.</param>
    /// <param name="bulk_1_h">What it takes when warm. [1/h]</param>
    /// <param name="battery_K">Temperature of the battery. [K]</param>
    public static double Most_1_h(BatteryChemistry chemistry, double bulk_1_h, double battery_K)
    {
        if (chemistry != BatteryChemistry.LithiumIronPhosphate) return bulk_1_h * Math.Min(1, ColdCapacity.Part_frac(battery_K));
        double t_C = battery_K - Zero_K;
        return t_C switch
        {
            < 0 => 0,
            < 5 => Math.Min(bulk_1_h, AtZero_1_h + (t_C / 5 * (AtFive_1_h - AtZero_1_h))),
            < 10 => Math.Min(bulk_1_h, AtFive_1_h + ((t_C - 5) / 5 * Math.Max(0, bulk_1_h - AtFive_1_h))),
            _ => bulk_1_h,
        };
    }
}
