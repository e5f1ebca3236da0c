using ColdSim.Model.Appliances;
using ColdSim.Model.Furnace;

namespace ColdSim.Model.Engine;

/// <summary>Watches whether what is asked for is given.</summary>
internal sealed class SupplyWatch(double undersupplied_frac)
{
    // Supply must come back a little further than it fell, or rounding would end and begin the same shortage.
    private const double Recovery_frac = 0.005;

    /// <summary>Whether an appliance is undersupplied.</summary>
    public bool Undersupplied { get; private set; }

    /// <summary>How far supply is past the point where the state changes; above 0 it does. Only of flow, not of waiting.</summary>
    public double EventValue_frac(double worst_frac)
        => Undersupplied ? worst_frac - Math.Min(1, undersupplied_frac + Recovery_frac) : undersupplied_frac - worst_frac;

    /// <summary>Takes in how it stands.</summary>
    /// <param name="waiting">Whether an appliance waits for gas to be lit.</param>
    /// <param name="worst_frac">The smallest part of its gas that an open appliance gets.</param>
    /// <returns>Whether undersupply began or ended.</returns>
    public bool Update(bool waiting, double worst_frac)
    {
        bool before = Undersupplied;
        if (waiting) Undersupplied = true;
        else if (Undersupplied) Undersupplied = worst_frac < Math.Min(1, undersupplied_frac + Recovery_frac);
        else Undersupplied = worst_frac < undersupplied_frac;
        return Undersupplied != before;
    }

    /// <summary>Whether anything waits for gas.</summary>
    public static bool Waiting(bool calls, FurnaceControl? furnace, ApplianceControl[] appliances)
    {
        if (calls && furnace is { WantsGas: true, IsLit: false }) return true;
        foreach (ApplianceControl appliance in appliances)
        {
            if (appliance.WantsGas) return true;
        }

        return false;
    }
}
