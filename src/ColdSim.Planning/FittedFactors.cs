using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;

namespace ColdSim.Planning;

/// <summary>The parameters of a rig that readings can identify.</summary>
public enum FitKind
{
    /// <summary>A factor on every conductance of the coach's envelope; in its logarithm.</summary>
    HeatLoss,

    /// <summary>A factor on the leakage area, doors that open included; in its logarithm.</summary>
    Infiltration,

    /// <summary>Gas that other appliances take all the time, as gross heat. [W]</summary>
    BaseUse,

    /// <summary>Part of the wind that reaches the cylinder.</summary>
    WindExposure,
}

/// <summary>The factors that a fit found, to be applied to a rig. Compared by value.</summary>
public sealed record FittedFactors
{
    /// <summary>Nothing changed.</summary>
    public static FittedFactors None { get; } = new();

    // Logarithm of a factor of 20: a fit through readings that are grossly wrong would try any, and the relations would not hold for it.
    private const double Farthest = 3;
    private const double MostLeakage_cm2 = 10_000;

    /// <summary>Factor on the envelope's conductances.</summary>
    public double HeatLoss { get; init; } = 1;

    /// <summary>Factor on the leakage area.</summary>
    public double Infiltration { get; init; } = 1;

    /// <summary>Gas of other appliances, as gross heat; may be below zero, where the scenario's draws are too high. [W]</summary>
    public double BaseUse_W { get; init; }

    /// <summary>Part of the wind that reaches the cylinder; null leaves the scenario's.</summary>
    public double? WindExposure_frac { get; init; }

    /// <summary>What was estimated, in the order of <see cref="Covariance"/>.</summary>
    public IReadOnlyList<FitKind> Estimated { get; init; } = [];

    /// <summary>Covariance of the estimates, in their own coordinates (see <see cref="FitKind"/>), row by row.</summary>
    public IReadOnlyList<double> Covariance { get; init; } = [];

    /// <summary>A value in its own coordinate.</summary>
    /// <param name="kind">The parameter.</param>
    public double Coordinate(FitKind kind) => kind switch
    {
        FitKind.HeatLoss => Math.Log(HeatLoss),
        FitKind.Infiltration => Math.Log(Infiltration),
        FitKind.BaseUse => BaseUse_W,
        FitKind.WindExposure => WindExposure_frac ?? double.NaN,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    /// <summary>The same with one value changed.</summary>
    /// <param name="kind">The parameter.</param>
    /// <param name="coordinate">Its value in its own coordinate.</param>
    public FittedFactors With(FitKind kind, double coordinate) => kind switch
    {
        FitKind.HeatLoss => this with { HeatLoss = Math.Exp(Math.Clamp(coordinate, -Farthest, Farthest)) },
        FitKind.Infiltration => this with { Infiltration = Math.Exp(Math.Clamp(coordinate, -Farthest, Farthest)) },
        FitKind.BaseUse => this with { BaseUse_W = coordinate },
        FitKind.WindExposure => this with { WindExposure_frac = Math.Clamp(coordinate, 0, 1) },
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    /// <summary>The rig with the factors applied.</summary>
    /// <param name="rig">The rig as the scenario describes it.</param>
    /// <remarks>A base use below zero cannot be burnt; it is left out here.</remarks>
    public Rig Over(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        CoachSpecification? coach = rig.Coach is not { } c ? null : c with
        {
            HeatLoss = [.. c.HeatLoss.Select(i => i with { Conductance_W_K = HeatLoss * i.Conductance_W_K })],
            GroundConductance_W_K = HeatLoss * c.GroundConductance_W_K,
            LeakageArea_cm2 = Math.Min(Infiltration * c.LeakageArea_cm2, MostLeakage_cm2),
        };
        return rig with
        {
            Coach = coach,
            Appliances = BaseUse_W > 0 ? [.. rig.Appliances, new ConstantDraw { Name = "other appliances, fitted", Input_W = BaseUse_W }] : rig.Appliances,
            Cylinders = WindExposure_frac is not { } wind ? rig.Cylinders
                : [.. rig.Cylinders.Select(x => x with { Surroundings = x.Surroundings with { WindExposure_frac = wind } })],
        };
    }
}

/// <summary>A fit that a scenario carries.</summary>
/// <param name="Factors">What was found.</param>
/// <param name="Before">The rig without it.</param>
public sealed record ScenarioFit(FittedFactors Factors, Rig Before);
