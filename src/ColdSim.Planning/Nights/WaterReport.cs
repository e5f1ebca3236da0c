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
}
