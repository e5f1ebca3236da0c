namespace ColdSim.Planning.Quick;

/// <summary>How well a coach keeps its heat, where nobody has measured it.</summary>
public enum CoachGrade
{
    /// <summary>Double panes, closed belly, no slides.</summary>
    Good,

    /// <summary>Single panes, one slide or none.</summary>
    Ordinary,

    /// <summary>Several slides, or old.</summary>
    Leaky,
}

/// <summary>A coach from its length and grade alone.</summary>
/// <remarks>
/// Whole heat loss, draughts included, per metre of length. The numbers were computed for typical builds from areas and U-values,
/// not measured: no measured heat loss of a coach is published. Take them as ±30 %. Docs: commands.md.
/// </remarks>
public static class GradedCoach
{
    /// <summary>Outside width from which a floor area is computed. [m]</summary>
    public const double Width_m = 2.4;

    /// <summary>How far from these numbers a real coach may well be.</summary>
    public const double Uncertainty_frac = 0.3;

    /// <summary>Heat capacity of the air and what follows it at once, per floor area: about five times the air alone. [J/(m²·K)]</summary>
    public const double AirCapacity_J_m2K = 15_000;

    /// <summary>Heat capacity of what follows slowly, per floor area: a light interior. [J/(m²·K)]</summary>
    public const double FurnishingsCapacity_J_m2K = 80_000;

    /// <summary>Between the two, per floor area: the middle of 9 to 25. [W/(m²·K)]</summary>
    public const double Coupling_W_m2K = 16;

    /// <summary>Heat loss per metre of length. [W/(m·K)]</summary>
    public static double HeatLoss_W_mK(CoachGrade grade) => grade switch
    {
        CoachGrade.Good => 15,
        CoachGrade.Ordinary => 20,
        CoachGrade.Leaky => 26,
        _ => throw new ArgumentOutOfRangeException(nameof(grade), grade, "Not a grade."),
    };

    /// <summary>The coach of that grade and length.</summary>
    /// <param name="grade">How well it keeps its heat.</param>
    /// <param name="length_m">Outside length. [m]</param>
    public static Model.Coach.CoachSpecification Of(CoachGrade grade, double length_m)
    {
        double floor_m2 = length_m * Width_m;
        return new()
        {
            HeatLoss = [new("whole coach, draughts included", HeatLoss_W_mK(grade) * length_m)],
            AirCapacity_J_K = AirCapacity_J_m2K * floor_m2,
            FurnishingsCapacity_J_K = FurnishingsCapacity_J_m2K * floor_m2,
            Coupling_W_K = Coupling_W_m2K * floor_m2,
        };
    }
}
