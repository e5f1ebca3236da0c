using ColdSim.Model.Appliances;
using ColdSim.Model.Furnace;

namespace ColdSim.Model.Engine;

/// <summary>Detects undersupply, with hysteresis.</summary>
internal sealed class SupplyWatch(double undersupplied_frac)
{
    // Supply must come back a little further than it fell, or rounding would end and begin the same shortage.
    private const double Recovery_frac = 0.005;

    /// <summary>Whether an appliance is undersupplied.</summary>
    public bool Undersupplied { get; private set; }

    /// <summary>Event function of the satisfied fraction; above 0 the state changes. Waiting to be lit is not part of it.</summary>
    public double EventValue_frac(double lowest_frac)
        => Undersupplied ? lowest_frac - Math.Min(1, undersupplied_frac + Recovery_frac) : undersupplied_frac - lowest_frac;

    /// <summary>Updates whether an appliance is undersupplied.</summary>
    /// <param name="waiting">Whether an appliance waits for gas to be lit.</param>
    /// <param name="lowest_frac">Smallest satisfied fraction of an open appliance.</param>
    /// <returns>Whether undersupply began or ended.</returns>
    public bool Update(bool waiting, double lowest_frac)
    {
        bool before = Undersupplied;
        if (waiting) Undersupplied = true;
        else if (Undersupplied) Undersupplied = lowest_frac < Math.Min(1, undersupplied_frac + Recovery_frac);
        else Undersupplied = lowest_frac < undersupplied_frac;
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
