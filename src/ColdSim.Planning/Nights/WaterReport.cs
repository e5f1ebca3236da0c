using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>How a bay, a pipe or a tank fared in a night.</summary>
/// <param name="Name">Which.</param>
/// <param name="Lowest">Its lowest temperature.</param>
/// <param name="MostIce">The largest part of its water that was ice.</param>
/// <param name="FreezesAt">When its water first began to freeze; null where it did not.</param>
/// <param name="SolidAt">When it was first ice through and through; null where it was not.</param>
public sealed record WaterReport(string Name, Temperature Lowest, Ratio MostIce, DateTimeOffset? FreezesAt, DateTimeOffset? SolidAt)
{
    /// <summary>Whether it holds water; a bay is only air.</summary>
    public bool HoldsWater { get; init; }

    /// <summary>Whether something heats the place where it stands.</summary>
    public bool Heated { get; init; }

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
