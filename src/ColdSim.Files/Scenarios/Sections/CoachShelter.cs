using ColdSim.Physics.Flow;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The words of the key <c>shelter</c>.</summary>
internal static class CoachShelter
{
    public static readonly IReadOnlyList<(string Word, ShelterClass Value)> Words =
    [
        ("none", ShelterClass.None),
        ("isolated", ShelterClass.Isolated),
        ("scattered", ShelterClass.AcrossTheRoad),
        ("surrounded", ShelterClass.Surrounded),
        ("adjacent", ShelterClass.Adjacent),
    ];
}
