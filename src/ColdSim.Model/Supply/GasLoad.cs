namespace ColdSim.Model.Supply;

/// <summary>What one appliance takes at the regulator's outlet. SI units.</summary>
/// <param name="Full_kg_s">Gas at full delivery pressure. [kg/s]</param>
/// <param name="FullPressure_Pa">Delivery pressure from which it takes that. [Pa gauge]</param>
public readonly record struct GasLoad(double Full_kg_s, double FullPressure_Pa)
{
    /// <summary>Part of its full gas that it takes at a delivery pressure.</summary>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <remarks>
    /// The appliance's own regulator holds the burner pressure while it can; below, burner orifice and open valve together are a
    /// hole, and flow goes with the square root of the gauge pressure.
    /// </remarks>
    public double Taken_frac(double delivery_Pa)
        => delivery_Pa >= FullPressure_Pa ? 1 : delivery_Pa <= 0 ? 0 : Math.Sqrt(delivery_Pa / FullPressure_Pa);
}

/// <summary>What flows and at which delivery pressure. SI units.</summary>
/// <param name="Flow_kg_s">All appliances together. [kg/s]</param>
/// <param name="Delivery_Pa">Delivery pressure, or NaN where it is full and was not asked for. [Pa gauge]</param>
/// <param name="Reserve_kg_s">Of the flow, what the reserve side of a changeover gives. [kg/s]</param>
public readonly record struct SupplyPoint(double Flow_kg_s, double Delivery_Pa, double Reserve_kg_s = 0)
{
    /// <summary>Whether every appliance gets all it takes.</summary>
    public bool IsFull => double.IsNaN(Delivery_Pa);
}
