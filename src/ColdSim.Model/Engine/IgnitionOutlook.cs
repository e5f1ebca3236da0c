using ColdSim.Model.Supply;

namespace ColdSim.Model.Engine;

/// <summary>Says whether the furnace would light if its valve opened now, beside all that is open already.</summary>
/// <remarks>It solves a supply of its own, so that asking changes nothing in the run.</remarks>
/// <param name="plant">Holds regulator, loads and what is open.</param>
/// <param name="ignition_Pa">Delivery pressure below which it does not ignite. [Pa gauge]</param>
internal sealed class IgnitionOutlook(Plant plant, double ignition_Pa)
{
    private readonly GasSupply _supply = new(plant.Regulator, plant.Loads);

    /// <summary>By how much its delivery pressure would be above that below which it does not ignite; negative where it would not light. [Pa]</summary>
    /// <param name="at">The algebraic state.</param>
    public double Margin_Pa(AlgebraicState at)
    {
        for (int i = 0; i < plant.Loads.Count; i++) _supply.Set(i, i == Plant.FurnaceLoad || plant.Supply.IsOpen(i));
        SupplyPoint point = _supply.At(at.Feed, at.AirPressure_Pa);
        return (point.IsFull ? plant.Loads[Plant.FurnaceLoad].FullPressure_Pa : point.Delivery_Pa) - ignition_Pa;
    }

    /// <summary>The part of a step in which it would light: the pressure taken to go evenly.</summary>
    /// <param name="before_Pa">Margin before the step. [Pa]</param>
    /// <param name="after_Pa">Margin after it. [Pa]</param>
    public static double WouldLight_frac(double before_Pa, double after_Pa)
        => before_Pa >= 0 == after_Pa >= 0 ? (after_Pa >= 0 ? 1 : 0) : Math.Max(before_Pa, after_Pa) / Math.Abs(after_Pa - before_Pa);
}
