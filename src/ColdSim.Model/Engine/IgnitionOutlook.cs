using ColdSim.Model.Supply;

namespace ColdSim.Model.Engine;

/// <summary>Says whether the furnace would light if its valve opened now, beside all that is open already.</summary>
/// <remarks>It solves a supply of its own, so that asking changes nothing in the run.</remarks>
/// <param name="plant">Holds regulator, loads and what is open.</param>
/// <param name="ignition_Pa">Delivery pressure below which it does not ignite. [Pa gauge]</param>
internal sealed class IgnitionOutlook(Plant plant, double ignition_Pa)
{
    private readonly GasSupply _supply = new(plant.Regulator, plant.Loads);

    /// <summary>Whether it would light.</summary>
    /// <param name="at">The algebraic state.</param>
    public bool WouldLight(AlgebraicState at)
    {
        for (int i = 0; i < plant.Loads.Count; i++) _supply.Set(i, i == Plant.FurnaceLoad || plant.Supply.IsOpen(i));
        SupplyPoint point = _supply.At(at.Feed, at.AirPressure_Pa);
        return point.IsFull || point.Delivery_Pa >= ignition_Pa;
    }
}
