using ColdSim.Model;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Units;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>How a bay, a pipe or a tank fared in a night.</summary>
/// <param name="Name">Name of the water.</param>
/// <param name="Lowest">Its lowest temperature.</param>
/// <param name="MostIce">The largest part of its water that was ice.</param>
/// <param name="FreezesAt">When its water first began to freeze; null where it did not.</param>
/// <param name="SolidAt">When it was first ice through and through; null where it was not.</param>
public sealed record WaterReport(string Name, Temperature Lowest, Ratio MostIce, DateTimeOffset? FreezesAt, DateTimeOffset? SolidAt)
{
    /// <summary>Whether it holds water; a bay is only air.</summary>
    public bool HoldsWater { get; init; }

    /// <summary>Whether something heats its surroundings.</summary>
    public bool Heated { get; init; }

    /// <summary>
    /// Outside air at which pipes in places without heat were seen to freeze: about 20 °F, as the University of Illinois' tests are widely
    /// quoted. An alert, never a check. [K]
    /// </summary>
    public const double Alert_K = (20 + ConversionFactors.ZeroFahrenheit_R) / 1.8;

    /// <summary>Whether a node of the rig's water lies inside a coach with a furnace, or where a duct brings the furnace's heat.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="place">Its place among the rig's water.</param>
    public static bool IsHeated(Rig rig, int place)
    {
        ArgumentNullException.ThrowIfNull(rig);
        if (rig.Coach is null) return false;
        ThermalNode node = rig.Water[place];
        if (rig.Furnace is not null && (node.Duct_frac > 0 || (node.Bay >= 0 && rig.Water[node.Bay].Duct_frac > 0))) return true;
        return node.Bay < 0 && node.Outside_W_K <= 0;
    }

    /// <summary>The same place over several nights.</summary>
    /// <param name="nights">Night by night.</param>
    public static WaterReport Over(IReadOnlyList<WaterReport> nights)
    {
        ArgumentNullException.ThrowIfNull(nights);
        return nights[0] with
        {
            Lowest = nights.MinBy(n => n.Lowest.Kelvins)!.Lowest,
            MostIce = nights.MaxBy(n => n.MostIce.Percent)!.MostIce,
            FreezesAt = nights.Select(n => n.FreezesAt).FirstOrDefault(t => t is not null),
            SolidAt = nights.Select(n => n.SolidAt).FirstOrDefault(t => t is not null),
        };
    }
}
