using ColdSim.Model;

namespace ColdSim.Planning.Fits;

/// <summary>Prior of a parameter: a normal distribution in its own coordinate.</summary>
/// <param name="Kind">The parameter.</param>
/// <param name="Middle">Its middle.</param>
/// <param name="Spread">Its standard deviation.</param>
/// <remarks>
/// Assumptions, all of them. Heat loss: a coach that was not measured is good to 30 %. Leakage: two thirds to one and a half
/// times as computed, and a tenth more for doors that open.
/// Base use: a pilot light or two, hot water and cooking. Shelter: two tenths either way.
/// </remarks>
internal sealed record FitPrior(FitKind Kind, double Middle, double Spread)
{
    /// <summary>The priors of all parameters that this rig has.</summary>
    /// <param name="rig">The rig without any fit.</param>
    public static IReadOnlyList<FitPrior> Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        List<FitPrior> priors = [new(FitKind.HeatLoss, 0, 0.3)];
        if (rig.Coach is { LeakageArea_cm2: > 0 })
            priors.Add(new(FitKind.Infiltration, 0.1, 0.4));
        priors.Add(new(FitKind.BaseUse, 150, 100));
        if (rig.Cylinders[0].Surroundings is { FixedConductance_W_K: null, FixedConvection_W_m2K: null } s)
            priors.Add(new(FitKind.WindExposure, s.WindExposure_frac, 0.2));
        return priors;
    }
}
