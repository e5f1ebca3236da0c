namespace ColdSim.Planning.Harms;

/// <summary>The term of the scale of harm that decides between two.</summary>
public enum HarmTerm
{
    /// <summary>None: they are the same to the precision of the scale.</summary>
    None,

    /// <summary>Hours with frozen water, or with inside below freezing.</summary>
    FreezingHours,

    /// <summary>The lowest temperature below freezing.</summary>
    Lowest,

    /// <summary>Hours without heat while the thermostat called.</summary>
    NoHeatHours,

    /// <summary>Kelvin-hours below the set point.</summary>
    ColdKelvinHours,

    /// <summary>Minutes short of gas.</summary>
    ShortMinutes,
}

/// <summary>The order of harm: the first term that differs decides.</summary>
/// <remarks>Each value is rounded before it is compared, so that no rank rests on what the model cannot know.</remarks>
internal sealed class HarmOrder : IComparer<Harm>
{
    /// <summary>Steps to which the terms are rounded: hours, kelvin, kelvin-hours, minutes.</summary>
    public const double HoursStep = 0.1, LowestStep_K = 1, KelvinHoursStep = 1, MinutesStep = 1;

    /// <summary>The one there is; it has no state.</summary>
    public static HarmOrder Only { get; } = new();

    /// <summary>Compares two; above 0 where the first is the worse.</summary>
    public int Compare(Harm x, Harm y) => Decide(x, y).Sign;

    /// <summary>Compares two, and says by what.</summary>
    /// <returns>The term that decides, and a sign: above 0 where the first is the worse.</returns>
    public static (HarmTerm Term, int Sign) Decide(in Harm a, in Harm b)
    {
        if (Sign(a.FreezingHours, b.FreezingHours, HoursStep) is not 0 and int hours) return (HarmTerm.FreezingHours, hours);
        if (Sign(b.LowestFreezing_K - Harm.Freezing_K, a.LowestFreezing_K - Harm.Freezing_K, LowestStep_K) is not 0 and int lowest)
            return (HarmTerm.Lowest, lowest);
        if (Sign(a.NoHeatHours, b.NoHeatHours, HoursStep) is not 0 and int heat) return (HarmTerm.NoHeatHours, heat);
        if (Sign(a.ColdKelvinHours, b.ColdKelvinHours, KelvinHoursStep) is not 0 and int cold) return (HarmTerm.ColdKelvinHours, cold);
        return Sign(a.ShortMinutes, b.ShortMinutes, MinutesStep) is not 0 and int minutes ? (HarmTerm.ShortMinutes, minutes) : (HarmTerm.None, 0);
    }

    private static int Sign(double a, double b, double step) => Math.Round(a / step).CompareTo(Math.Round(b / step));
}
