using System.Runtime.CompilerServices;

namespace ColdSim.Model.Supply;

/// <summary>Regulator and open appliances together: the delivery pressure at which regulator flow and appliance flow balance.</summary>
/// <remarks>
/// The regulator passes less the higher the delivery pressure, the appliances take more: they balance at one pressure. While the
/// cylinder's pressure is clearly above the least that feeds everything, the demand is met and nothing is solved.
/// </remarks>
internal sealed class GasSupply
{
    // Above the least sufficient pressure by this much nothing needs solving; covers the drift allowed before it is found again.
    private const double ClearlyAbove = 1.05;

    private readonly TwoStageRegulator _regulator;
    private readonly GasLoad[] _loads;
    private readonly bool[] _open;
    private double _demand_kg_s;
    private double _fullPressure_Pa, _leastFullPressure_Pa, _perRootOfAll;

    // Valves open and shut a thousand times in a run, between a few demands: what is known of each is kept.
    private readonly KnownDemand[] _known = new KnownDemand[16];
    private KnownDemand _now;
    private int _forgetNext;

    // While it was full at the last call that is asked first, which needs one orifice less.
    private bool _wasFull;

    /// <summary>Connects appliances to a regulator, all shut.</summary>
    /// <param name="regulator">The regulator that feeds them.</param>
    /// <param name="loads">The appliances, in an order the caller keeps.</param>
    public GasSupply(TwoStageRegulator regulator, IReadOnlyList<GasLoad> loads)
    {
        ArgumentNullException.ThrowIfNull(regulator);
        ArgumentNullException.ThrowIfNull(loads);
        _regulator = regulator;
        _loads = [.. loads];
        _open = new bool[_loads.Length];
        for (int i = 0; i < _known.Length; i++) _known[i] = new KnownDemand();
        _now = _known[0];
    }

    /// <summary>Demand: gas that the open appliances take at full delivery pressure. [kg/s]</summary>
    public double Demand_kg_s => _demand_kg_s;

    /// <summary>Gives an appliance another full flow.</summary>
    /// <param name="load">Its place in the list.</param>
    /// <param name="full_kg_s">Gas at full delivery pressure. [kg/s]</param>
    /// <returns>Whether it changed.</returns>
    public bool SetFull(int load, double full_kg_s)
    {
        if (_loads[load].Full_kg_s == full_kg_s) return false;
        _loads[load] = _loads[load] with { Full_kg_s = full_kg_s };
        if (!_open[load]) return true;
        _open[load] = false;
        return Set(load, true);
    }

    /// <summary>Opens or shuts an appliance's valve.</summary>
    /// <param name="load">Its place in the list.</param>
    /// <param name="open">Open or shut.</param>
    /// <returns>Whether it moved.</returns>
    public bool Set(int load, bool open)
    {
        if (_open[load] == open) return false;
        _open[load] = open;
        double perRoot = 0;
        (_demand_kg_s, _fullPressure_Pa, _leastFullPressure_Pa) = (0, 0, double.PositiveInfinity);
        for (int i = 0; i < _loads.Length; i++)
        {
            if (!_open[i]) continue;
            _demand_kg_s += _loads[i].Full_kg_s;
            _fullPressure_Pa = Math.Max(_fullPressure_Pa, _loads[i].FullPressure_Pa);
            _leastFullPressure_Pa = Math.Min(_leastFullPressure_Pa, _loads[i].FullPressure_Pa);
            perRoot += _loads[i].Full_kg_s / Math.Sqrt(_loads[i].FullPressure_Pa);
        }

        _perRootOfAll = 1 / perRoot;

        if (_demand_kg_s > 0) _now = Known(_demand_kg_s, _fullPressure_Pa);
        return true;
    }

    private KnownDemand Known(double demand_kg_s, double delivery_Pa)
    {
        foreach (KnownDemand known in _known)
        {
            if (known.IsFor(demand_kg_s, delivery_Pa)) return known;
        }

        KnownDemand next = _known[_forgetNext];
        _forgetNext = (_forgetNext + 1) % _known.Length;
        next.Begin(demand_kg_s, delivery_Pa);
        return next;
    }

    /// <summary>Whether an appliance's valve is open.</summary>
    public bool IsOpen(int load) => _open[load];

    /// <summary>Flow and delivery pressure at the regulator's inlet pressures.</summary>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public SupplyPoint At(in FeedPressures feed, double air_Pa)
    {
        if (_demand_kg_s <= 0) return new SupplyPoint(0, double.NaN);
        return feed.Service_Pa > ClearlyAbove * _now.SufficientInlet_Pa(_regulator, feed.Gas_K, air_Pa) ? new SupplyPoint(_demand_kg_s, double.NaN) : Solve(feed, air_Pa);
    }

    /// <summary>Flow to one open appliance at a supply point. [kg/s]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Taken_kg_s(int load, in SupplyPoint point)
        => !_open[load] ? 0 : point.IsFull ? _loads[load].Full_kg_s : _loads[load].Full_kg_s * _loads[load].Satisfied_frac(point.Delivery_Pa);

    /// <summary>Smallest satisfied fraction of any open appliance; 1 where none is open.</summary>
    public double LowestSatisfied_frac(in SupplyPoint point)
    {
        double worst = 1;
        if (point.IsFull) return worst;
        for (int i = 0; i < _loads.Length; i++)
        {
            if (_open[i]) worst = Math.Min(worst, _loads[i].Satisfied_frac(point.Delivery_Pa));
        }

        return worst;
    }

    /// <summary>Delivery pressure at a supply point, also where it is full. [Pa gauge]</summary>
    /// <param name="point">What <see cref="At"/> gave.</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public double Delivery_Pa(in SupplyPoint point, in FeedPressures feed, double air_Pa)
    {
        if (!point.IsFull) return point.Delivery_Pa;
        double highest_Pa = Math.Max(0, Math.Min(_regulator.LockUp_Pa, Math.Max(feed.Service_Pa, feed.Reserve_Pa) - air_Pa));
        return point.Flow_kg_s <= 0 ? highest_Pa : _regulator.Delivery_Pa(point.Flow_kg_s, feed, air_Pa);
    }

    /// <summary>Delivery pressure at which the open appliances together take a flow. [Pa gauge]</summary>
    /// <param name="flow_kg_s">Flow; beyond the whole demand the same law is continued, so that a solver meets no bend there. [kg/s]</param>
    internal double DeliveryAtFlow_Pa(double flow_kg_s)
    {
        if (flow_kg_s >= _demand_kg_s)
        {
            double times = flow_kg_s / _demand_kg_s;
            return times * times * _fullPressure_Pa;
        }

        // Where the pressure is below all full pressures, one root does.
        double rootOfAll = flow_kg_s * _perRootOfAll;
        if (rootOfAll * rootOfAll <= _leastFullPressure_Pa) return rootOfAll * rootOfAll;

        // Below their full pressures appliances take in proportion to the root of the pressure. One that would be full at the
        // pressure so found takes its full gas and leaves the sum; few appliances, so this settles in few passes.
        double delivery_Pa = 0;
        while (true)
        {
            double full_kg_s = 0, perRoot = 0;
            for (int i = 0; i < _loads.Length; i++)
            {
                if (!_open[i]) continue;
                if (_loads[i].FullPressure_Pa <= delivery_Pa) full_kg_s += _loads[i].Full_kg_s;
                else perRoot += _loads[i].Full_kg_s / Math.Sqrt(_loads[i].FullPressure_Pa);
            }

            if (perRoot <= 0) return delivery_Pa;
            double root = Math.Max(0, flow_kg_s - full_kg_s) / perRoot;
            if (root * root <= delivery_Pa) return delivery_Pa;
            delivery_Pa = NextFullBelow_Pa(delivery_Pa, root * root, out bool none);
            if (none) return root * root;
        }
    }

    // The lowest full pressure above one pressure and not above another.
    private double NextFullBelow_Pa(double above_Pa, double upTo_Pa, out bool none)
    {
        double next_Pa = double.PositiveInfinity;
        for (int i = 0; i < _loads.Length; i++)
        {
            if (_open[i] && _loads[i].FullPressure_Pa > above_Pa && _loads[i].FullPressure_Pa <= upTo_Pa)
                next_Pa = Math.Min(next_Pa, _loads[i].FullPressure_Pa);
        }

        none = double.IsPositiveInfinity(next_Pa);
        return next_Pa;
    }

    private SupplyPoint Solve(in FeedPressures feed, double air_Pa)
    {
        if (Math.Max(feed.Service_Pa, feed.Reserve_Pa) <= air_Pa) return new SupplyPoint(0, 0);
        if (_wasFull && _regulator.ClearlyPasses(_demand_kg_s, _fullPressure_Pa, feed, air_Pa, _now.FirstOutlet, out double reserveOfFull_kg_s))
            return new SupplyPoint(_demand_kg_s, double.NaN, reserveOfFull_kg_s);
        double delivery_Pa = _regulator.BalancedDelivery_Pa(this, feed, air_Pa, _now.Intermediate, out double reserve_kg_s);
        _wasFull = delivery_Pa >= _fullPressure_Pa;
        if (_wasFull)
            return new SupplyPoint(_demand_kg_s, double.NaN, _regulator.Reserve_kg_s(_demand_kg_s, feed, air_Pa));

        // The appliances' flow counts: a stage wide open at sonic speed passes the same into many pressures, and only one of them balances.
        double flow_kg_s = Taken_kg_s(delivery_Pa);
        return new SupplyPoint(flow_kg_s, delivery_Pa, Math.Min(flow_kg_s, reserve_kg_s));
    }

    private double Taken_kg_s(double delivery_Pa)
    {
        double sum_kg_s = 0;
        for (int i = 0; i < _loads.Length; i++)
        {
            if (_open[i]) sum_kg_s += _loads[i].Full_kg_s * _loads[i].Satisfied_frac(delivery_Pa);
        }

        return sum_kg_s;
    }
}
