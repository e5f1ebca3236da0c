using ColdSim.Model;
using ColdSim.Model.Nodes;

namespace ColdSim.Planning.Nights;

/// <summary>Whether water stands where something heats it.</summary>
public static class WaterPlaces
{
    /// <summary>
    /// Outside air at which pipes in places without heat were seen to freeze: about 20 °F, as the University of Illinois' tests are widely
    /// quoted. An alert, never a check. [K]
    /// </summary>
    public const double Alert_K = (20 + 459.67) / 1.8;

    /// <summary>Whether a node of the rig's water lies inside a coach with a furnace, or where a duct brings the furnace's heat.</summary>
    /// <param name="rig">What stands there.</param>
    /// <param name="place">Its place among the rig's water.</param>
    public static bool IsHeated(Rig rig, int place)
    {
        ArgumentNullException.ThrowIfNull(rig);
        if (rig.Coach is null) return false;
        ThermalNode node = rig.Water[place];
        if (rig.Furnace is not null && (node.Duct_frac > 0 || (node.Bay >= 0 && rig.Water[node.Bay].Duct_frac > 0))) return true;
        return node.Bay < 0 && node.Outside_W_K <= 0;
    }
}
