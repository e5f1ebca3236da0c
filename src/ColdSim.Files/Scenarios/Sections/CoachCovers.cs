using ColdSim.Files.Quantities;
using ColdSim.Model;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[coach.covers]</c>: what covers over windows save while they are up.</summary>
internal static class CoachCovers
{
    private static readonly QuantityKey Saves = new("saves", Dimension.Conductance, "0.1 W/K", "500 W/K");

    /// <summary>What they save [W/K] and when; nothing where there are none.</summary>
    /// <param name="section">The table.</param>
    /// <param name="loss_W_K">What the coach loses without them. [W/K]</param>
    public static (double Saves_W_K, IReadOnlyList<ClockWindow> Hours) Read(SectionReader section, double loss_W_K)
    {
        double saves_W_K = section.Present ? section.Require(Saves) : section.Get(Saves, 0);
        IReadOnlyList<ClockWindow> hours = section.Spans("hours") ?? [];
        section.Finish();
        if (!section.Present)
            return (0, []);
        if (saves_W_K >= loss_W_K)
            section.Report("saves", "the covers save as much as the whole coach loses", $"accepted: less than {loss_W_K:0.#} W/K");
        if (!section.Has("hours"))
            section.Reading.Assume($"covers: hours not given, taken as always up");
        return (saves_W_K, hours);
    }
}
