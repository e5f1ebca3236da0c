namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The key <c>grade</c>: heat loss per metre of length, infiltration included, where nothing better is known.</summary>
/// <remarks>From computed archetypes of trailers and motorhomes of 5 to 10 m, good to about 30 %.</remarks>
internal static class CoachGrade
{
    private const double Good_W_mK = 15;
    private const double Ordinary_W_mK = 20;
    private const double Leaky_W_mK = 26;

    /// <summary>W/K per metre of length; null where it is not given.</summary>
    public static double? Read(SectionReader section)
    {
        double? perMetre = section.Choice("grade", ("good", Good_W_mK), ("ordinary", Ordinary_W_mK), ("leaky", Leaky_W_mK));
        if (perMetre is not null)
            section.Reading.Assume($"coach: heat loss taken as {perMetre} W/K per metre of length, a rule of thumb good to 30 %");
        return perMetre;
    }
}
