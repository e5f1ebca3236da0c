namespace ColdSim.Model.Supply;

/// <summary>Operating point of the supply: flow and delivery pressure. SI units.</summary>
/// <param name="Flow_kg_s">All appliances together. [kg/s]</param>
/// <param name="Delivery_Pa">Delivery pressure, or NaN where the demand is met in full and it was not solved for. [Pa gauge]</param>
/// <param name="Reserve_kg_s">Of the flow, what the reserve side of a changeover gives. [kg/s]</param>
internal readonly record struct SupplyPoint(double Flow_kg_s, double Delivery_Pa, double Reserve_kg_s = 0)
{
    /// <summary>Whether every appliance gets all it takes.</summary>
    public bool IsFull => double.IsNaN(Delivery_Pa);
}

/// <summary>Inlet pressures of the regulator and temperature of the gas. SI units, pressures absolute.</summary>
/// <param name="Service_Pa">On its inlet, or on the service side of a changeover. [Pa]</param>
/// <param name="Reserve_Pa">On the reserve side of a changeover; 0 without one. [Pa]</param>
/// <param name="Gas_K">Temperature of the gas that the service side gives. [K]</param>
/// <remarks>The reserve's gas counts at the service's temperature: it enters orifice flow as a square root only.</remarks>
internal readonly record struct FeedPressures(double Service_Pa, double Reserve_Pa, double Gas_K);
