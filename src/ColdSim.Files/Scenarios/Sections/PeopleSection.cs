using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Site;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[people]</c>: who is there, and when they are up.</summary>
internal static class PeopleSection
{
    private static readonly Occupancy Usual = new();

    // Sensible heat of one person at rest; common practice.
    private const double Person_W = 75;

    private static readonly SpansKey Awake = new("awake", KeyDefault.Of(ClockText.Written(Usual.AwakeHours[0])), "when somebody can reset a locked-out furnace")
    {
        Assumed = "people: awake not given; assumed {value}, when somebody resets a locked-out furnace",
    };

    private static readonly QuantityKey ResetAfter = new(
        "reset_after", Dimension.Duration, "0 s", "24 h", KeyDefault.Of(Usual.ResetAfter_s, "min"), "how long until somebody awake has done so");

    private static readonly WholeKey Resets = new(
        "resets", 0, 20, KeyDefault.Of(Usual.ResetsInVain), "how often somebody resets in vain before leaving it until something changes; 0: nobody ever does");

    private static readonly QuantityKey WakesBelow = new(
        "wakes_below", Dimension.Temperature, "-60 °C", "30 °C", KeyDefault.Of(Usual.WakesBelow_K, "°F"),
        "inside air below which somebody asleep wakes, and resets the furnace or changes cylinders as by day")
    {
        Assumed = ScenarioKey.NotGiven + ": below it somebody asleep wakes and acts",
        Usual = new("-5 °C", "16 °C", UnusualValue.OurChoice) { Hint = " (23 to 61 °F)" },
    };

    private static readonly WholeKey Count = new("count", 0, 20, KeyDefault.Of(0), $"people inside, who warm it by {NumberShown.Of(Person_W)} W each")
    {
        Usual = new(null, "10", UnusualValue.CommonPractice),
    };

    private static readonly QuantityKey Carries = new(
        "carries", Dimension.Mass, "1 kg", "200 kg", KeyDefault.Of(Trip.UsualCarry_kg, "kg"),
        "what one of them can carry; the default is the load constant of the [NIOSH lifting equation](sources.md#niosh-lifting-equation), which holds under the best conditions only");

    public static readonly ScenarioSection Declared = new(
        "people", TableForm.One, "who is there, and when they are up", [Awake, ResetAfter, Resets, WakesBelow, Count, Carries]);

    /// <summary>Who is up when, how many there are, the heat of those who are there [W] and what one of them can carry. [kg]</summary>
    /// <param name="section">The table.</param>
    /// <param name="furnace">Whether there is a furnace for somebody to reset.</param>
    public static (Occupancy Occupancy, int Count, double Heat_W, double Carries_kg) Read(SectionReader section, bool furnace)
    {
        if (furnace)
        {
            section.Assume(Awake, "people");
            section.Assume(WakesBelow, "people");
        }

        Occupancy occupancy = new()
        {
            AwakeHours = section.Get(Awake) ?? Usual.AwakeHours,
            ResetAfter_s = section.GetOrDefault(ResetAfter),
            ResetsInVain = section.GetOrDefault(Resets),
            WakesBelow_K = section.GetOrDefault(WakesBelow),
        };
        int count = section.GetOrDefault(Count);
        double carries_kg = section.GetOrDefault(Carries);
        section.Finish();
        return (occupancy, count, count * Person_W, carries_kg);
    }
}
