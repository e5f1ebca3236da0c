using ColdSim.Files.Quantities;
using ColdSim.Model.Site;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[people]</c>: who is there, and when they are up.</summary>
internal static class PeopleSection
{
    private static readonly QuantityKey ResetAfter = new("reset_after", Dimension.Duration, "0 s", "24 h");

    private static readonly QuantityKey Carries = new("carries", Dimension.Mass, "1 kg", "200 kg");

    // Sensible heat of one person at rest; common practice.
    private const double Person_W = 75;

    /// <summary>Who is up when, how many there are, the heat of those who are there [W] and what one of them can carry. [kg]</summary>
    /// <param name="section">The table.</param>
    /// <param name="furnace">Whether there is a furnace for somebody to reset.</param>
    public static (Occupancy Occupancy, int Count, double Heat_W, double Carries_kg) Read(SectionReader section, bool furnace)
    {
        Occupancy defaults = new();
        if (furnace && !section.Has("awake"))
            section.Reading.Assume($"people: awake not given, taken as 06:30-22:30, when somebody resets a locked-out furnace");
        Occupancy occupancy = new()
        {
            AwakeHours = section.Spans("awake") ?? defaults.AwakeHours,
            ResetAfter_s = section.Get(ResetAfter, defaults.ResetAfter_s),
        };
        int count = section.Whole("count", 0, 20) ?? 0;
        double carries_kg = section.Get(Carries, Trip.UsualCarry_kg);
        section.Finish();
        return (occupancy, count, count * Person_W, carries_kg);
    }
}
