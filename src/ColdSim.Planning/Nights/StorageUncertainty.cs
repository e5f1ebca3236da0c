using ColdSim.Model.Coach;
using ColdSim.Planning.Quick;

namespace ColdSim.Planning.Nights;

/// <summary>How well is known what a coach stores, within a factor of two from the least to the most, and how closely it follows its air.</summary>
/// <remarks>No measured coach is published; the coupling's range is that of light buildings, docs/model.md part 4.</remarks>
internal static class StorageUncertainty
{
    /// <summary>The most storage over the least.</summary>
    public const double Ratio = 2;

    // Per floor area, of which the default is about the middle. [W/(m²·K)]
    private const double LeastCoupling_W_m2K = 9, MostCoupling_W_m2K = 25;

    private static readonly double Up = Math.Sqrt(Ratio);
    private static readonly double Loose = LeastCoupling_W_m2K / GradedCoach.Coupling_W_m2K;
    private static readonly double Tight = MostCoupling_W_m2K / GradedCoach.Coupling_W_m2K;

    /// <summary>Factors of stored heat and of the coupling at the corners of the range.</summary>
    public static IReadOnlyList<(double Storage, double Coupling)> Corners { get; } = [(1 / Up, Loose), (1 / Up, Tight), (Up, Loose), (Up, Tight)];

    /// <summary>A coach that stores and follows by so much more.</summary>
    /// <param name="coach">The coach.</param>
    /// <param name="corner">Factors of stored heat and of the coupling.</param>
    public static CoachSpecification At(CoachSpecification coach, (double Storage, double Coupling) corner)
    {
        ArgumentNullException.ThrowIfNull(coach);
        return coach with
        {
            AirCapacity_J_K = coach.AirCapacity_J_K * corner.Storage,
            FurnishingsCapacity_J_K = coach.FurnishingsCapacity_J_K * corner.Storage,
            Coupling_W_K = coach.Coupling_W_K * corner.Coupling,
        };
    }
}
