using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What one reading says is in a cylinder.</summary>
public sealed class ContentsEstimate
{
    internal ContentsEstimate(string reading, double mass_kg, IReadOnlyList<ErrorShare> shares)
    {
        Reading = reading;
        Mass_kg = mass_kg;
        Shares = shares;
        Uncertainty_kg = Math.Sqrt(shares.Sum(s => s.Change_kg * s.Change_kg));
    }

    /// <summary>What the reading is called.</summary>
    public string Reading { get; }

    /// <summary>Propane, liquid and vapour.</summary>
    public Mass Mass => Mass.FromKilograms(Mass_kg);

    /// <summary>Its standard uncertainty: the root of the sum of squares of the shares.</summary>
    public Mass StandardUncertainty => Mass.FromKilograms(Uncertainty_kg);

    /// <summary>What each stated error makes of it.</summary>
    public IReadOnlyList<ErrorShare> Shares { get; }

    internal double Mass_kg { get; }

    internal double Uncertainty_kg { get; }
}
