using System.Runtime.CompilerServices;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Supply;

namespace ColdSim.Model.Engine;

/// <summary>Algebraic part of a state: contents of the cylinders and flows from them, worked out once for all that need them.</summary>
/// <param name="cylinders">How many cylinders.</param>
internal sealed class AlgebraicState(int cylinders)
{
    private const double LiquidPower = 12;
    private const double VapourPower = 1.5;
    private const double Margin_frac = 1e-5;

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

    /// <summary>Highest pressure before the regulator. [Pa gauge]</summary>
    public double HighestFeed_Pa => Math.Max(Feed.Service_Pa, Feed.Reserve_Pa) - AirPressure_Pa;

    /// <summary>What that can rise to within a time in which the inputs are held and nothing is switched. [Pa gauge]</summary>
    /// <param name="ahead_s">The time. [s]</param>
    /// <remarks>
    /// Where heat comes in it comes in fastest at first. Pressure of vapour alone goes with its temperature, a saturated one with less than the
    /// twelfth power of it.
    /// </remarks>
    public double HighestFeedWithin_Pa(double ahead_s)
    {
        double rise = 0;
        for (int i = 0; i < Cylinders.Count; i++)
        {
            double warming_K = Cylinders.Warming_K_s(i) * ahead_s;
            rise = Math.Max(rise, (Cylinders.Contents[i].HasLiquid ? LiquidPower : VapourPower) * warming_K / Cylinders.Temperature_K[i]);
        }

        return (HighestFeed_Pa + AirPressure_Pa) * (1 + rise + Margin_frac) - AirPressure_Pa;
    }

    /// <summary>Part of the flow that a changeover's reserve side gives; NaN while nothing flows.</summary>
    public double Reserve_frac => Point.Flow_kg_s > 0 ? Point.Reserve_kg_s / Point.Flow_kg_s : double.NaN;

    /// <summary>Pressure in one cylinder. [Pa gauge]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double CylinderPressure_Pa(int i) => Cylinders.Contents[i].Pressure_Pa - AirPressure_Pa;
}
