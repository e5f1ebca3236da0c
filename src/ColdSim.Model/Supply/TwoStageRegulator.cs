using ColdSim.Model.Numerics;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Supply;

/// <summary>Two spring-loaded orifices in series, from cylinder pressure to delivery pressure.</summary>
/// <remarks>
/// What passes the first stage passes the second; the intermediate pressure is the one at which both agree. As the cylinder's
/// pressure falls the first stage opens wide, then the second, and from there on delivery pressure falls with every further loss.
/// </remarks>
public sealed class TwoStageRegulator
{
    // Ratings are stated for gas near this temperature; flow goes with one over its square root only.
    private const double RatingGas_K = 288.15;

    private readonly SpringOrifice _first;
    private readonly SpringOrifice _second;

    /// <summary>Sizes both orifices from the rating.</summary>
    /// <param name="specification">The plate.</param>
    /// <param name="heatingValue_J_kg">Gross heat of the gas. [J/kg]</param>
    public TwoStageRegulator(RegulatorSpecification specification, double heatingValue_J_kg)
    {
        ArgumentNullException.ThrowIfNull(specification);
        double rated_kg_s = specification.RatedFlow_W / heatingValue_J_kg;
        double sea_Pa = StandardAtmosphere.SeaLevel_Pa;
        _first = new SpringOrifice(specification.Intermediate_Pa, specification.IntermediateDroop_Pa, rated_kg_s,
            sea_Pa + specification.RatedInlet_Pa, sea_Pa, RatingGas_K);
        _second = new SpringOrifice(specification.SetPoint_Pa, specification.Droop_Pa, rated_kg_s,
            sea_Pa + specification.Intermediate_Pa - specification.IntermediateDroop_Pa, sea_Pa, RatingGas_K);
    }

    /// <summary>Delivery pressure at which no gas flows. [Pa gauge]</summary>
    public double LockUp_Pa => _second.LockUp_Pa;

    /// <summary>Gas that flows at a delivery pressure: the most that appliances can have there. [kg/s]</summary>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="cylinder_Pa">Cylinder pressure. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public double Flow_kg_s(double delivery_Pa, double cylinder_Pa, double air_Pa, double gas_K)
    {
        double low_Pa = air_Pa + delivery_Pa;
        double high_Pa = Math.Min(cylinder_Pa, air_Pa + _first.LockUp_Pa);
        if (high_Pa <= low_Pa || delivery_Pa >= LockUp_Pa) return 0;
        StageDifference difference = new(_first, _second, cylinder_Pa, low_Pa, air_Pa, gas_K);
        double atLow = difference.At(low_Pa), atHigh = difference.At(high_Pa);
        double intermediate_Pa = FalsePosition.Root(ref difference, low_Pa, atLow, high_Pa, atHigh, 1e-13 * high_Pa);

        // The smaller of the two: near equal pressures one of them is a difference of large numbers.
        return Math.Min(
            _first.Flow_kg_s(cylinder_Pa, intermediate_Pa, air_Pa, gas_K),
            _second.Flow_kg_s(intermediate_Pa, low_Pa, air_Pa, gas_K));
    }

    /// <summary>Delivery pressure at a flow; NaN where the flow does not pass. [Pa gauge]</summary>
    /// <param name="flow_kg_s">Flow, above 0. [kg/s]</param>
    /// <param name="cylinder_Pa">Cylinder pressure. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public double Delivery_Pa(double flow_kg_s, double cylinder_Pa, double air_Pa, double gas_K)
    {
        double intermediate_Pa = _first.Outlet_Pa(flow_kg_s, cylinder_Pa, air_Pa, gas_K);
        return double.IsNaN(intermediate_Pa)
            ? double.NaN
            : _second.Outlet_Pa(flow_kg_s, air_Pa + intermediate_Pa, air_Pa, gas_K);
    }

    /// <summary>The one delivery pressure at which what passes is what appliances take; they take less than all. [Pa gauge]</summary>
    /// <param name="appliances">What they take, and its inverse.</param>
    /// <param name="cylinder_Pa">Cylinder pressure, above air pressure. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    /// <remarks>
    /// Followed over the intermediate pressure: it fixes what passes the first stage, that fixes the delivery pressure at which the
    /// appliances take just so much, and the two fix what passes the second stage, which must be the same.
    /// </remarks>
    internal double MeetingDelivery_Pa(GasSupply appliances, double cylinder_Pa, double air_Pa, double gas_K)
    {
        double high_Pa = Math.Min(cylinder_Pa, air_Pa + _first.LockUp_Pa);
        Meeting meeting = new(this, appliances, cylinder_Pa, air_Pa, gas_K);
        double intermediate_Pa = FalsePosition.Root(
            ref meeting, high_Pa, meeting.At(high_Pa), air_Pa, meeting.At(air_Pa), 1e-14 * high_Pa);
        return appliances.DeliveryTaking_Pa(_first.Flow_kg_s(cylinder_Pa, intermediate_Pa, air_Pa, gas_K));
    }

    // What passes the second stage less what passes the first, over the pressure between them.
    private readonly struct Meeting(
        TwoStageRegulator regulator, GasSupply appliances, double cylinder_Pa, double air_Pa, double gas_K) : IFunction
    {
        public double At(double intermediate_Pa)
        {
            double flow_kg_s = regulator._first.Flow_kg_s(cylinder_Pa, intermediate_Pa, air_Pa, gas_K);
            double delivery_Pa = appliances.DeliveryTaking_Pa(flow_kg_s);
            return regulator._second.Flow_kg_s(intermediate_Pa, air_Pa + delivery_Pa, air_Pa, gas_K) - flow_kg_s;
        }
    }

    /// <summary>Least cylinder pressure at which a flow passes at a delivery pressure; infinite where none does. [Pa absolute]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public double SufficientInlet_Pa(double flow_kg_s, double delivery_Pa, double air_Pa, double gas_K)
    {
        double low_Pa = air_Pa + delivery_Pa;
        if (flow_kg_s <= 0) return low_Pa;
        InletOf second = new(_second, flow_kg_s, low_Pa, air_Pa, gas_K);
        double intermediate_Pa = second.Least_Pa(air_Pa + _first.LockUp_Pa);
        return double.IsInfinity(intermediate_Pa)
            ? intermediate_Pa
            : new InletOf(_first, flow_kg_s, intermediate_Pa, air_Pa, gas_K).Least_Pa(HighestInlet_Pa);
    }

    private const double HighestInlet_Pa = 5e6;

    // How far a stage's flow exceeds the wanted one, over its inlet pressure.
    private readonly struct InletOf(SpringOrifice stage, double flow_kg_s, double outlet_Pa, double air_Pa, double gas_K) : IFunction
    {
        public double At(double inlet_Pa) => stage.Flow_kg_s(inlet_Pa, outlet_Pa, air_Pa, gas_K) - flow_kg_s;

        public double Least_Pa(double highest_Pa)
        {
            InletOf f = this;
            double atHighest = f.At(highest_Pa);
            return atHighest < 0
                ? double.PositiveInfinity
                : FalsePosition.Root(ref f, outlet_Pa, -flow_kg_s, highest_Pa, atHighest, 1e-12 * highest_Pa);
        }
    }

    // Positive where the first stage passes more than the second: falls as the pressure between them rises.
    private readonly struct StageDifference(
        SpringOrifice first, SpringOrifice second, double cylinder_Pa, double low_Pa, double air_Pa, double gas_K) : IFunction
    {
        public double At(double intermediate_Pa)
            => first.Flow_kg_s(cylinder_Pa, intermediate_Pa, air_Pa, gas_K) - second.Flow_kg_s(intermediate_Pa, low_Pa, air_Pa, gas_K);
    }
}
