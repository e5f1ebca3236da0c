using ColdSim.Model.Engine;

namespace ColdSim.Planning.Trips;

/// <summary>What came of a refill in a run.</summary>
/// <param name="Refill">What was planned.</param>
/// <param name="Before">How the cylinder stood.</param>
/// <param name="After">How it stands; as before where it was refused.</param>
/// <param name="Refused">Whether the station refused it, the cylinder being past its requalification date.</param>
public sealed record RefillOutcome(Refill Refill, CylinderState Before, FilledCylinder After, bool Refused)
{
    /// <summary>Gas bought: what was pumped in, or what came in the exchange cylinder. [kg]</summary>
    public double Bought_kg => Refused ? 0 : Refill.Kind == RefillKind.Exchange ? After.Propane_kg : After.Propane_kg - Before.Propane_kg;

    /// <summary>Gas left behind in a cylinder given in exchange. [kg]</summary>
    public double LeftBehind_kg => !Refused && Refill.Kind == RefillKind.Exchange ? Before.Propane_kg : 0;

    /// <summary>What was paid; null where no price is given.</summary>
    public double? Paid => Refill.Price is not { } price ? null : Refused || Bought_kg <= 0 ? 0 : price.Of(Bought_kg);
}
