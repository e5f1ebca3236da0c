namespace ColdSim.Model.Arrangement;

/// <summary>What stands before the regulator. SI units, pressures absolute.</summary>
/// <param name="Service_Pa">On its inlet, or on the service side of a changeover. [Pa]</param>
/// <param name="Reserve_Pa">On the reserve side of a changeover; 0 without one. [Pa]</param>
/// <param name="Gas_K">Temperature of the gas that the service side gives. [K]</param>
/// <remarks>The reserve's gas is taken at the service's temperature: it enters orifice flow as a square root only.</remarks>
public readonly record struct FeedPressures(double Service_Pa, double Reserve_Pa, double Gas_K);
