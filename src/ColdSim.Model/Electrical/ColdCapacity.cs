namespace ColdSim.Model.Electrical;

/// <summary>How much of its rated charge a battery can give by its temperature.</summary>
/// <remarks>
/// Source: the capacity table of the battery model in NREL's System Advisor Model, the same for lead-acid and lithium there:
/// 65 % at −15 °C, 85 % at 0 °C, 100 % at 25 °C, 104 % at 40 °C. Linear between; colder than −15 °C it goes on along the first
/// slope (assumption) down to nothing.
/// </remarks>
public static class ColdCapacity
{
    private const double Zero_K = 273.15;

    /// <summary>Part of the rated charge, 0 to 1.04.</summary>
    /// <param name="battery_K">Temperature of the battery. [K]</param>
    public static double Part_frac(double battery_K)
    {
        double t_C = battery_K - Zero_K;
        return t_C switch
        {
            < 0 => Math.Max(0, 0.85 + (t_C * (0.20 / 15))),
            < 25 => 0.85 + (t_C * (0.15 / 25)),
            < 40 => 1 + ((t_C - 25) * (0.04 / 15)),
            _ => 1.04,
        };
    }
}
