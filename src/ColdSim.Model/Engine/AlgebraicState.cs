using ColdSim.Model.Arrangement;
using ColdSim.Model.Supply;

namespace ColdSim.Model.Engine;

/// <summary>Algebraic part of a state: contents of the cylinders and flows from them, worked out once for all that need them.</summary>
/// <param name="cylinders">How many cylinders.</param>
internal sealed class AlgebraicState(int cylinders)
{
    /// <summary>State of the cylinders.</summary>
    public CylinderStates Cylinders { get; } = new(cylinders);

    /// <summary>Inlet pressures of the regulator.</summary>
    public FeedPressures Feed { get; set; }

    /// <summary>Flow through the regulator and its delivery pressure.</summary>
    public SupplyPoint Point { get; set; }

    /// <summary>Air pressure. [Pa]</summary>
    public double AirPressure_Pa { get; set; }

    /// <summary>Pressure before the regulator, of the service side where there are two. [Pa gauge]</summary>
    public double FeedPressure_Pa => Feed.Service_Pa - AirPressure_Pa;

    /// <summary>Part of the flow that a changeover's reserve side gives; NaN while nothing flows.</summary>
    public double Reserve_frac => Point.Flow_kg_s > 0 ? Point.Reserve_kg_s / Point.Flow_kg_s : double.NaN;

    /// <summary>Pressure in one cylinder. [Pa gauge]</summary>
    public double CylinderPressure_Pa(int i) => Cylinders.Contents[i].Pressure_Pa - AirPressure_Pa;
}
