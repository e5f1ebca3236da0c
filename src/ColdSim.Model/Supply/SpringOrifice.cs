using ColdSim.Model.Numerics;
using ColdSim.Physics.Flow;

namespace ColdSim.Model.Supply;

/// <summary>One stage of a regulator: an orifice that a spring opens as the pressure behind it falls.</summary>
/// <remarks>
/// Flow by the compressible orifice law on absolute pressures, choked or not; opening linear in gauge pressure from lock-up (shut)
/// to wide open. A stage that is wide open is no regulator any more, only a hole. What is before it may lose pressure (a pigtail: turbulent flow of a
/// gas, the fall of the squared pressure goes with the squared flow), and it may shut below a least inlet.
/// </remarks>
internal readonly struct SpringOrifice
{
    // A furnace takes about an eighth of what its regulator is rated for.
    private const double RegulatedStart = 0.125;
    private const double RegulatedTolerance = 1e-3;
    private const double BracketTolerance_frac = 1e-8;
    private const int MostPasses = 12;

    // One that shuts below its least inlet does so over this part of it, so that nothing jumps.
    private const double ShuttingPart = 0.1;

    private readonly double _area_m2;
    private readonly double _lockUp_Pa;
    private readonly double _wideOpen_Pa;
    private readonly double _least_Pa;
    private readonly double _lossPerSquaredFlow;

    /// <summary>Sizes the orifice so that it passes a flow wide open.</summary>
    /// <param name="setPoint_Pa">Outlet set point. [Pa gauge]</param>
    /// <param name="droop_Pa">From set point up to lock-up and down to wide open. [Pa]</param>
    /// <param name="rated_kg_s">Flow it passes wide open. [kg/s]</param>
    /// <param name="ratedInlet_Pa">Inlet at that flow. [Pa absolute]</param>
    /// <param name="seaLevel_Pa">Air pressure at which the rating holds. [Pa]</param>
    /// <param name="gas_K">Gas temperature at which the rating holds. [K]</param>
    /// <param name="least_Pa">Inlet below which it shuts; 0 where it never does. [Pa gauge]</param>
    /// <param name="loss_Pa">Pressure lost before it at the rated flow and inlet. [Pa]</param>
    public SpringOrifice(
        double setPoint_Pa, double droop_Pa, double rated_kg_s, double ratedInlet_Pa, double seaLevel_Pa, double gas_K, double least_Pa = 0, double loss_Pa = 0)
    {
        _least_Pa = least_Pa;
        _lossPerSquaredFlow = loss_Pa * (2 * ratedInlet_Pa + loss_Pa) / (rated_kg_s * rated_kg_s * gas_K);
        _lockUp_Pa = setPoint_Pa + droop_Pa;
        _wideOpen_Pa = setPoint_Pa - droop_Pa;
        _area_m2 = rated_kg_s / Orifice.MassFlux_kg_m2s(ratedInlet_Pa, gas_K, seaLevel_Pa + _wideOpen_Pa);
    }

    private SpringOrifice(double area_m2, double lockUp_Pa, double wideOpen_Pa, double least_Pa, double lossPerSquaredFlow = 0)
        => (_area_m2, _lockUp_Pa, _wideOpen_Pa, _least_Pa, _lossPerSquaredFlow) = (area_m2, lockUp_Pa, wideOpen_Pa, least_Pa, lossPerSquaredFlow);

    /// <summary>The same orifice behind another spring.</summary>
    /// <param name="setPoint_Pa">Outlet set point. [Pa gauge]</param>
    /// <param name="droop_Pa">From set point up to lock-up and down to wide open. [Pa]</param>
    public SpringOrifice WithSpring(double setPoint_Pa, double droop_Pa)
        => new(_area_m2, setPoint_Pa + droop_Pa, setPoint_Pa - droop_Pa, _least_Pa, _lossPerSquaredFlow);

    /// <summary>Outlet pressure at which it shuts. [Pa gauge]</summary>
    public double LockUp_Pa => _lockUp_Pa;

    /// <summary>Whether pressure is lost before it.</summary>
    public bool HasLoss => _lossPerSquaredFlow > 0;

    /// <summary>The stage at one inlet, without what is lost before it.</summary>
    /// <param name="inlet_Pa">Before it. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure, on which the spring works. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public FedOrifice FedBy(double inlet_Pa, double air_Pa, double gas_K)
        => new(air_Pa + _lockUp_Pa, _lockUp_Pa - _wideOpen_Pa, Area_m2(inlet_Pa, air_Pa), inlet_Pa, gas_K);

    /// <summary>Flow at given pressures. [kg/s]</summary>
    /// <param name="inlet_Pa">Before it. [Pa absolute]</param>
    /// <param name="outlet_Pa">Behind it. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure, on which the spring works. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public double Flow_kg_s(double inlet_Pa, double outlet_Pa, double air_Pa, double gas_K)
    {
        double opening = Opening(outlet_Pa - air_Pa);
        if (opening <= 0) return 0;
        if (_lossPerSquaredFlow <= 0) return opening * Area_m2(inlet_Pa, air_Pa) * Orifice.MassFlux_kg_m2s(inlet_Pa, gas_K, outlet_Pa);
        if (inlet_Pa <= outlet_Pa) return 0;

        // Sonic and unshut, it passes in proportion to what is left before it: then the loss has a closed form.
        double open_m2 = opening * _area_m2, sonic = open_m2 * Orifice.ChokedFlowFunction;
        double sonicEnd_Pa = inlet_Pa / Math.Sqrt(1 + _lossPerSquaredFlow * sonic * sonic / Orifice.GasConstant_J_kgK);
        if (outlet_Pa <= Orifice.CriticalRatio * sonicEnd_Pa && sonicEnd_Pa - air_Pa >= _least_Pa)
            return sonic * Orifice.Scale_kg_m2s(sonicEnd_Pa, gas_K);

        // Nothing is lost beyond what the flow from the full inlet would lose, so the end of the pigtail lies between the two.
        PigtailEnd excess = new(this, opening, inlet_Pa, outlet_Pa, air_Pa, gas_K);
        double lowest_Pa = Math.Sqrt(Math.Max(outlet_Pa * outlet_Pa, inlet_Pa * inlet_Pa - SquaredLoss(opening * Area_m2(inlet_Pa, air_Pa) * Orifice.MassFlux_kg_m2s(inlet_Pa, gas_K, outlet_Pa), gas_K)));
        double end_Pa = BracketedRoot.Root(ref excess, lowest_Pa, excess.At(lowest_Pa), inlet_Pa, excess.At(inlet_Pa), 1e-12 * inlet_Pa);
        return opening * Area_m2(end_Pa, air_Pa) * Orifice.MassFlux_kg_m2s(end_Pa, gas_K, outlet_Pa);
    }

    /// <summary>
    /// The square of the flow, in kg²/s², of a stage that neither loses pressure before it nor shuts below a least inlet; negative where the outlet's pressure is
    /// higher, as if the gas flowed back through the open hole, so that a solver meets no bend.
    /// </summary>
    /// <param name="inlet_Pa">Before it. [Pa absolute]</param>
    /// <param name="outlet_Pa">Behind it. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure, on which the spring works. [Pa]</param>
    /// <param name="perPressure">Mass flux per pressure before a hole without what the ratio of pressures does, 1/√(R T), in s/m.</param>
    public double SquaredFlow(double inlet_Pa, double outlet_Pa, double air_Pa, double perPressure)
    {
        if (outlet_Pa > inlet_Pa)
        {
            double back_kg_s = _area_m2 * outlet_Pa * perPressure;
            return -back_kg_s * back_kg_s * Orifice.SquaredFlowFunction(inlet_Pa / outlet_Pa);
        }

        double open_kg_s = Opening(outlet_Pa - air_Pa) * _area_m2 * inlet_Pa * perPressure;
        return open_kg_s * open_kg_s * Orifice.SquaredFlowFunction(outlet_Pa / inlet_Pa);
    }

    /// <summary>Outlet pressure at which it passes a flow, wide open or not; NaN where it never does. [Pa gauge]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="inlet_Pa">Before it. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    /// <param name="tolerance_frac">How well it is known where the stage regulates, as part of its band.</param>
    public double Outlet_Pa(double flow_kg_s, double inlet_Pa, double air_Pa, double gas_K, double tolerance_frac = RegulatedTolerance)
    {
        if (_lossPerSquaredFlow > 0)
        {
            double squared = inlet_Pa * inlet_Pa - SquaredLoss(flow_kg_s, gas_K);
            return squared <= 0 ? double.NaN : WithoutLoss().Outlet_Pa(flow_kg_s, Math.Sqrt(squared), air_Pa, gas_K, tolerance_frac);
        }

        double regulated_Pa = RegulatedOutlet_Pa(flow_kg_s, inlet_Pa, air_Pa, gas_K, tolerance_frac);
        if (!double.IsNaN(regulated_Pa)) return regulated_Pa;
        double wideOpen_Pa = WideOpenOutlet_Pa(flow_kg_s, inlet_Pa, air_Pa, gas_K) - air_Pa;
        if (wideOpen_Pa >= 0 && wideOpen_Pa <= _wideOpen_Pa) return wideOpen_Pa;
        double highest_Pa = Math.Min(inlet_Pa, air_Pa + _lockUp_Pa);
        OutletOf excess = new(this, flow_kg_s, inlet_Pa, air_Pa, gas_K);
        double atAir = excess.At(air_Pa);
        return atAir < 0 || highest_Pa <= air_Pa
            ? double.NaN
            : BracketedRoot.Root(ref excess, highest_Pa, excess.At(highest_Pa), air_Pa, atAir, Math.Min(BracketTolerance_frac, tolerance_frac) * highest_Pa) - air_Pa;
    }

    /// <summary>Least inlet pressure at which it passes a flow; infinite where none does. [Pa absolute]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="outlet_Pa">Behind it. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    /// <param name="highest_Pa">The highest inlet that counts. [Pa absolute]</param>
    public double LeastInlet_Pa(double flow_kg_s, double outlet_Pa, double air_Pa, double gas_K, double highest_Pa)
    {
        if (_lossPerSquaredFlow > 0)
        {
            double end_Pa = WithoutLoss().LeastInlet_Pa(flow_kg_s, outlet_Pa, air_Pa, gas_K, highest_Pa);
            return Math.Sqrt(end_Pa * end_Pa + SquaredLoss(flow_kg_s, gas_K));
        }

        InletOf excess = new(this, flow_kg_s, outlet_Pa, air_Pa, gas_K);
        double atHighest = excess.At(highest_Pa);
        return atHighest < 0
            ? double.PositiveInfinity
            : BracketedRoot.Root(ref excess, outlet_Pa, -flow_kg_s, highest_Pa, atHighest, 1e-12 * highest_Pa);
    }

    // Outlet at which it passes a flow wide open; NaN where the flow is sonic, because then many do. [Pa absolute]
    private double WideOpenOutlet_Pa(double flow_kg_s, double inlet_Pa, double air_Pa, double gas_K)
    {
        double value = flow_kg_s / (Area_m2(inlet_Pa, air_Pa) * Orifice.Scale_kg_m2s(inlet_Pa, gas_K));
        return value < Orifice.ChokedFlowFunction ? inlet_Pa * Orifice.PressureRatio(value) : double.NaN;
    }

    // While the stage regulates: the spring's band is narrow against the pressures, so the orifice hardly feels it and two or three
    // passes settle the value. NaN where it is wide open, and where an inlet near lock-up keeps the passes from settling.
    private double RegulatedOutlet_Pa(double flow_kg_s, double inlet_Pa, double air_Pa, double gas_K, double tolerance_frac)
    {
        double band_Pa = _lockUp_Pa - _wideOpen_Pa;
        double outlet_Pa = _lockUp_Pa - RegulatedStart * band_Pa, last_Pa = double.NaN, lastMove_Pa = double.NaN;
        double scale_kg_s = Area_m2(inlet_Pa, air_Pa) * Orifice.Scale_kg_m2s(inlet_Pa, gas_K), perInlet = 1 / inlet_Pa;
        for (int i = 0; i < MostPasses; i++)
        {
            double full_kg_s = scale_kg_s * Orifice.FlowFunction((air_Pa + outlet_Pa) * perInlet);
            double opening = flow_kg_s / full_kg_s;
            if (!(opening < 1)) return double.NaN;
            double move_Pa = _lockUp_Pa - band_Pa * opening - outlet_Pa;
            if (Math.Abs(move_Pa) < tolerance_frac * band_Pa) return outlet_Pa + move_Pa;

            // From the third pass on along the secant of what the passes move it by.
            double next_Pa = i < 2 ? outlet_Pa + move_Pa : outlet_Pa - move_Pa * (outlet_Pa - last_Pa) / (move_Pa - lastMove_Pa);
            (last_Pa, lastMove_Pa, outlet_Pa) = (outlet_Pa, move_Pa, next_Pa);
        }

        return double.NaN;
    }

    // Residual of the flow as a function of outlet pressure.
    private readonly struct OutletOf(SpringOrifice stage, double flow_kg_s, double inlet_Pa, double air_Pa, double gas_K) : IFunction
    {
        public double At(double outlet_Pa) => stage.Flow_kg_s(inlet_Pa, outlet_Pa, air_Pa, gas_K) - flow_kg_s;
    }

    // Residual of the flow as a function of inlet pressure.
    private readonly struct InletOf(SpringOrifice stage, double flow_kg_s, double outlet_Pa, double air_Pa, double gas_K) : IFunction
    {
        public double At(double inlet_Pa) => stage.Flow_kg_s(inlet_Pa, outlet_Pa, air_Pa, gas_K) - flow_kg_s;
    }

    // Residual of the squared pressure that is left at the end of the pigtail.
    private readonly struct PigtailEnd(SpringOrifice stage, double opening, double inlet_Pa, double outlet_Pa, double air_Pa, double gas_K) : IFunction
    {
        public double At(double end_Pa)
        {
            double flow_kg_s = opening * stage.Area_m2(end_Pa, air_Pa) * Orifice.MassFlux_kg_m2s(end_Pa, gas_K, outlet_Pa);
            return inlet_Pa * inlet_Pa - end_Pa * end_Pa - stage.SquaredLoss(flow_kg_s, gas_K);
        }
    }

    private double SquaredLoss(double flow_kg_s, double gas_K) => _lossPerSquaredFlow * flow_kg_s * flow_kg_s * gas_K;

    private SpringOrifice WithoutLoss() => new(_area_m2, _lockUp_Pa, _wideOpen_Pa, _least_Pa);

    // Of the orifice, what is open at an inlet.
    private double Area_m2(double inlet_Pa, double air_Pa)
        => _least_Pa <= 0 ? _area_m2 : _area_m2 * Math.Clamp(1 - (_least_Pa - (inlet_Pa - air_Pa)) / (ShuttingPart * _least_Pa), 0, 1);

    private double Opening(double outlet_Pa) => Math.Clamp((_lockUp_Pa - outlet_Pa) / (_lockUp_Pa - _wideOpen_Pa), 0, 1);
}
