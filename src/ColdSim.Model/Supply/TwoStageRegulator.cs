using ColdSim.Model.Numerics;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Supply;

/// <summary>Two spring-loaded orifices in series, from cylinder pressure to delivery pressure.</summary>
/// <remarks>
/// What passes the first stage passes the second; the intermediate pressure is the one at which both agree. As the cylinder's
/// pressure falls the first stage opens wide, then the second, and from there on delivery pressure falls with every further loss.
/// </remarks>
internal sealed class TwoStageRegulator
{
    // Ratings are stated for gas near this temperature; flow goes with one over its square root only.
    private const double RatingGas_K = 288.15;

    // The pressure between the stages is known to a part in a thousand of its band where one stage regulates it.
    private const double Clearly = 1.01;

    private readonly FirstStages _first;
    private readonly SpringOrifice _second;

    // Low pressure: the gas hardly thins, so what hose and pipe lose goes with the squared flow.
    private readonly double _hosePerSquaredFlow;

    /// <summary>Sizes the orifices from the rating.</summary>
    /// <param name="specification">Rating on its plate.</param>
    /// <param name="heatingValue_J_kg">Gross heat of the gas. [J/kg]</param>
    /// <param name="reserve">Set point and droop of a changeover's reserve side. [Pa gauge, Pa] Null for a regulator with one inlet.</param>
    public TwoStageRegulator(RegulatorSpecification specification, double heatingValue_J_kg, (double SetPoint_Pa, double Droop_Pa)? reserve = null)
    {
        ArgumentNullException.ThrowIfNull(specification);
        double rated_kg_s = specification.RatedFlow_W / heatingValue_J_kg;
        double sea_Pa = StandardAtmosphere.SeaLevel_Pa;
        double rated_Pa = sea_Pa + specification.RatedInlet_Pa;
        double least_Pa = specification.ShutsBelowMinimum ? specification.MinimumInletOf_Pa(reserve is not null) : 0;
        _hosePerSquaredFlow = specification.HoseLoss_Pa / (rated_kg_s * rated_kg_s);

        // Both inlets of a changeover are one body's: the rating says how large they are, and only the springs differ.
        SpringOrifice service = new(
            specification.Intermediate_Pa, specification.IntermediateDroop_Pa, rated_kg_s, rated_Pa, sea_Pa, RatingGas_K, least_Pa, specification.PigtailLoss_Pa);
        _first = new FirstStages(service, reserve is { } second ? service.WithSpring(second.SetPoint_Pa, second.Droop_Pa) : null);
        _second = new SpringOrifice(specification.SetPoint_Pa, specification.Droop_Pa, rated_kg_s,
            sea_Pa + specification.Intermediate_Pa - specification.IntermediateDroop_Pa, sea_Pa, RatingGas_K);
    }

    /// <summary>Delivery pressure at which no gas flows. [Pa gauge]</summary>
    public double LockUp_Pa => _second.LockUp_Pa;

    /// <summary>Pressure lost between the regulator and the appliances at a flow. [Pa]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    public double HoseLoss_Pa(double flow_kg_s) => _hosePerSquaredFlow * flow_kg_s * flow_kg_s;

    /// <summary>Gas that flows at a delivery pressure: the most that appliances can have there. [kg/s]</summary>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public double Flow_kg_s(double delivery_Pa, in FeedPressures feed, double air_Pa)
    {
        double low_Pa = air_Pa + delivery_Pa;
        double high_Pa = _first.Highest_Pa(feed, air_Pa);
        if (high_Pa <= low_Pa || delivery_Pa >= LockUp_Pa) return 0;
        StageDifference difference = new(this, feed, low_Pa, air_Pa);
        double atLow = difference.At(low_Pa), atHigh = difference.At(high_Pa);
        double intermediate_Pa = BracketedRoot.Root(ref difference, low_Pa, atLow, high_Pa, atHigh, 1e-13 * high_Pa);

        // The smaller of the two: near equal pressures one of them is a difference of large numbers.
        double first_kg_s = _first.Flow_kg_s(feed, intermediate_Pa, air_Pa);
        return Math.Min(first_kg_s, _second.Flow_kg_s(intermediate_Pa, low_Pa + HoseLoss_Pa(first_kg_s), air_Pa, feed.Gas_K));
    }

    /// <summary>Delivery pressure at a flow; NaN where the flow does not pass. [Pa gauge]</summary>
    /// <param name="flow_kg_s">Flow, above 0. [kg/s]</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public double Delivery_Pa(double flow_kg_s, in FeedPressures feed, double air_Pa)
    {
        double intermediate_Pa = _first.Outlet_Pa(flow_kg_s, feed, air_Pa);
        return double.IsNaN(intermediate_Pa)
            ? double.NaN
            : _second.Outlet_Pa(flow_kg_s, air_Pa + intermediate_Pa, air_Pa, feed.Gas_K) - HoseLoss_Pa(flow_kg_s);
    }

    /// <summary>Of a flow that passes, what the reserve side of a changeover gives; 0 without one. [kg/s]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public double Reserve_kg_s(double flow_kg_s, in FeedPressures feed, double air_Pa)
    {
        if (feed.Reserve_Pa <= 0 || flow_kg_s <= 0) return 0;
        double intermediate_Pa = _first.Outlet_Pa(flow_kg_s, feed, air_Pa);
        return double.IsNaN(intermediate_Pa) ? 0 : Math.Min(flow_kg_s, _first.Reserve_kg_s(feed, air_Pa + intermediate_Pa, air_Pa));
    }

    /// <summary>Whether a flow clearly passes at a delivery pressure.</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="intermediate">Follows the pressure between the stages from call to call.</param>
    /// <param name="reserve_kg_s">Of the flow, what the reserve side of a changeover gives. [kg/s]</param>
    internal bool ClearlyPasses(double flow_kg_s, double delivery_Pa, in FeedPressures feed, double air_Pa, FollowedRoot intermediate, out double reserve_kg_s)
    {
        reserve_kg_s = 0;
        double between_Pa = air_Pa + _first.Outlet_Pa(flow_kg_s, feed, air_Pa, intermediate);
        if (!(_second.Flow_kg_s(between_Pa, air_Pa + delivery_Pa + HoseLoss_Pa(flow_kg_s), air_Pa, feed.Gas_K) > Clearly * flow_kg_s)) return false;
        reserve_kg_s = Math.Min(flow_kg_s, _first.Reserve_kg_s(feed, between_Pa, air_Pa));
        return true;
    }

    /// <summary>The delivery pressure at which regulator flow and appliance flow balance, where the demand is not met in full. [Pa gauge]</summary>
    /// <param name="appliances">Flow of the open appliances by delivery pressure, and its inverse.</param>
    /// <param name="feed">Before the regulator, above air pressure.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="intermediate">Follows the pressure between the stages from call to call.</param>
    /// <param name="reserve_kg_s">What the reserve side of a changeover gives there. [kg/s]</param>
    /// <remarks>
    /// Solved for the intermediate pressure: it fixes what passes the first stage, that fixes the delivery pressure at which the
    /// appliances take just so much, and the two fix what passes the second stage, which must be the same.
    /// </remarks>
    internal double BalancedDelivery_Pa(GasSupply appliances, in FeedPressures feed, double air_Pa, FollowedRoot intermediate, out double reserve_kg_s)
    {
        double high_Pa = _first.Highest_Pa(feed, air_Pa);
        FedStages first = _first.FedBy(feed, air_Pa);
        FlowImbalance imbalance = new(this, first, appliances, 1 / Math.Sqrt(Orifice.GasConstant_J_kgK * feed.Gas_K), air_Pa);
        double intermediate_Pa = intermediate.Root(ref imbalance, air_Pa, high_Pa);
        reserve_kg_s = first.Reserve_kg_s(intermediate_Pa);
        return appliances.DeliveryAtFlow_Pa(first.Service_kg_s(intermediate_Pa) + reserve_kg_s);
    }

    // Residual: flow of the second stage less that of the first, both squared, as a function of the pressure between them: where all three orifices
    // are open and little pressure is left, squares of flows go with differences of pressure, and the root is nearly a straight line's.
    private readonly struct FlowImbalance(TwoStageRegulator regulator, FedStages first, GasSupply appliances, double perPressure, double air_Pa) : IFunction
    {
        public double At(double intermediate_Pa)
        {
            double flow_kg_s = first.Flow_kg_s(intermediate_Pa);
            double outlet_Pa = air_Pa + appliances.DeliveryAtFlow_Pa(flow_kg_s) + regulator.HoseLoss_Pa(flow_kg_s);
            return regulator._second.SquaredFlow(intermediate_Pa, outlet_Pa, air_Pa, perPressure) - flow_kg_s * flow_kg_s;
        }
    }

    /// <summary>Least pressure on the (service) inlet at which a flow passes at a delivery pressure; infinite where none does. [Pa absolute]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public double SufficientInlet_Pa(double flow_kg_s, double delivery_Pa, double air_Pa, double gas_K)
    {
        double low_Pa = air_Pa + delivery_Pa + HoseLoss_Pa(flow_kg_s);
        if (flow_kg_s <= 0) return low_Pa;
        double intermediate_Pa = _second.LeastInlet_Pa(flow_kg_s, low_Pa, air_Pa, gas_K, air_Pa + _first.ServiceLockUp_Pa);
        return double.IsInfinity(intermediate_Pa)
            ? intermediate_Pa
            : _first.ServiceInlet_Pa(flow_kg_s, intermediate_Pa, air_Pa, gas_K);
    }

    /// <summary>The same, with the reserve side of a changeover still shut. [Pa absolute]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    internal double SufficientAlone_Pa(double flow_kg_s, double delivery_Pa, double air_Pa, double gas_K)
    {
        double inlet_Pa = SufficientInlet_Pa(flow_kg_s, delivery_Pa, air_Pa, gas_K);
        return _first.ReserveShutAbove_Pa > 0 && double.IsFinite(inlet_Pa)
            ? Math.Max(inlet_Pa, _first.ServiceInlet_Pa(flow_kg_s, air_Pa + _first.ReserveShutAbove_Pa, air_Pa, gas_K))
            : inlet_Pa;
    }

    // Positive where the first stage passes more than the second: falls as the pressure between them rises.
    private readonly struct StageDifference(TwoStageRegulator regulator, FeedPressures feed, double low_Pa, double air_Pa) : IFunction
    {
        public double At(double intermediate_Pa)
        {
            double first_kg_s = regulator._first.Flow_kg_s(feed, intermediate_Pa, air_Pa);
            return first_kg_s - regulator._second.Flow_kg_s(intermediate_Pa, low_Pa + regulator.HoseLoss_Pa(first_kg_s), air_Pa, feed.Gas_K);
        }
    }
}
