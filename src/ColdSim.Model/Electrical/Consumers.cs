namespace ColdSim.Model.Electrical;

/// <summary>The places of those who draw from the 12 V side: the furnace's fan, the blankets, then the loads in their order.</summary>
public static class Consumers
{
    /// <summary>The furnace's fan.</summary>
    public const int Fan = 0;

    /// <summary>All blankets on the battery.</summary>
    public const int Blankets = 1;

    /// <summary>The first of the loads.</summary>
    public const int FirstLoad = 2;

    /// <summary>How many places; none without a battery.</summary>
    /// <param name="power">The 12 V side, or null.</param>
    public static int Count(PowerSpecification? power) => power is null ? 0 : FirstLoad + power.Loads.Count;

    /// <summary>What a place is called.</summary>
    /// <param name="power">The 12 V side.</param>
    /// <param name="place">The place.</param>
    public static string NameOf(PowerSpecification power, int place)
    {
        ArgumentNullException.ThrowIfNull(power);
        return place switch { Fan => "furnace fan", Blankets => "blankets", _ => power.Loads[place - FirstLoad].Name };
    }
}
