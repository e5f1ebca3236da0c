using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>A refill as it changes the cylinders between two legs.</summary>
/// <param name="refill">What is planned.</param>
/// <param name="refused">Whether it is refused.</param>
/// <param name="tell">Told what came of it, or null.</param>
internal sealed class RefillAct(Refill refill, bool refused, Action<RefillOutcome>? tell) : ILegTransition
{
    /// <inheritdoc/>
    public IReadOnlyList<int> Cylinders { get; } = refused ? [] : [refill.Cylinder];

    /// <inheritdoc/>
    public RigState After(RigState before, Rig rig, double air_K)
    {
        CylinderState cylinder = before.Cylinders[refill.Cylinder];
        FilledCylinder after = Filled(rig.Cylinders[refill.Cylinder], cylinder, air_K);
        tell?.Invoke(new RefillOutcome(refill, cylinder, after, refused));
        if (refused) return before;
        CylinderState[] cylinders = [.. before.Cylinders];
        FrostLayer frost = refill.Kind == RefillKind.Exchange ? default : cylinder.Frost;
        cylinders[refill.Cylinder] = new CylinderState(after.Propane_kg, after.Liquid_K, frost);
        return before with { Cylinders = cylinders };
    }

    // An exchange cylinder has stood in its cage outside.
    private FilledCylinder Filled(CylinderSpecification cylinder, CylinderState before, double air_K)
        => refused ? Filling.AlgebraicState(cylinder, before.Propane_kg, before.Liquid_K, FillingEnd.Full)
            : refill.Kind == RefillKind.Exchange ? Filling.AlgebraicState(cylinder, refill.ExchangeFill_kg, air_K, FillingEnd.Amount)
            : Filling.Of(cylinder, before, refill.Asked_kg, refill.Limit, refill.Supply_K ?? air_K);
}
