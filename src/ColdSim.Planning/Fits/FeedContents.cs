using ColdSim.Model;
using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Fits;

/// <summary>What the cylinders of a rig of several hold when a run through a gap of a log begins.</summary>
/// <remarks>
/// What the history says, but the one in use has at least what it gives and a quarter of its filling, so that hours in which gas was short are
/// not simulated.
/// </remarks>
internal static class FeedContents
{
    private const double Spare_frac = 0.25;

    /// <summary>Contents of each cylinder. [kg]</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feeds">Which of its cylinders fed when.</param>
    /// <param name="gap">Place of the gap.</param>
    /// <param name="inUse">Place of the cylinder in use.</param>
    public static double[] Of(Rig rig, FeedHistory feeds, int gap, int inUse)
    {
        double[] held_kg = [.. feeds.Held_kg[gap]];
        double use_kg = feeds.Use_kg.Count > 0 ? feeds.Use_kg[gap] : 0;
        double wanted_kg = use_kg + Spare_frac * rig.Cylinders[inUse].LegalFill_kg;
        if (!feeds.Together)
        {
            held_kg[inUse] = Math.Max(held_kg[inUse], wanted_kg);
            return held_kg;
        }

        double more_kg = Math.Max(0, wanted_kg - held_kg.Sum()) / held_kg.Length;
        return [.. held_kg.Select(h => h + more_kg)];
    }
}
