using ColdSim.Model.Numerics;

namespace ColdSim.Model.Supply;

/// <summary>The first stage of a regulator, or the two of an automatic changeover, into one intermediate pressure.</summary>
/// <remarks>Neither passes gas back: a stage whose inlet is below its outlet passes nothing.</remarks>
internal readonly struct FirstStages(SpringOrifice service, SpringOrifice? reserve)
{
    private const double Tolerance = 1e-10;

    // No cylinder has a higher pressure. [Pa absolute]
    private const double HighestInlet_Pa = 5e6;

    /// <summary>Intermediate pressure above which the reserve side stays shut; 0 without one. [Pa gauge]</summary>
    public double ReserveShutAbove_Pa => reserve?.LockUp_Pa ?? 0;

    /// <summary>Intermediate pressure at which the service side shuts. [Pa gauge]</summary>
    public double ServiceLockUp_Pa => service.LockUp_Pa;

    /// <summary>Intermediate pressure at which no gas flows. [Pa absolute]</summary>
    public double Highest_Pa(in FeedPressures feed, double air_Pa)
    {
        double highest_Pa = Math.Min(feed.Service_Pa, air_Pa + service.LockUp_Pa);
        return reserve is { } second && feed.Reserve_Pa > 0
            ? Math.Max(highest_Pa, Math.Min(feed.Reserve_Pa, air_Pa + second.LockUp_Pa))
            : highest_Pa;
    }

    /// <summary>Flow into an intermediate pressure. [kg/s]</summary>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="intermediate_Pa">Between the stages. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public double Flow_kg_s(in FeedPressures feed, double intermediate_Pa, double air_Pa)
        => service.Flow_kg_s(feed.Service_Pa, intermediate_Pa, air_Pa, feed.Gas_K) + Reserve_kg_s(feed, intermediate_Pa, air_Pa);

    /// <summary>Of that, what the reserve side gives. [kg/s]</summary>
    public double Reserve_kg_s(in FeedPressures feed, double intermediate_Pa, double air_Pa)
        => reserve is { } second && feed.Reserve_Pa > 0 ? second.Flow_kg_s(feed.Reserve_Pa, intermediate_Pa, air_Pa, feed.Gas_K) : 0;

    /// <summary>Least service inlet at which a flow passes into an intermediate pressure without the reserve; infinite where none does. [Pa absolute]</summary>
    public double ServiceInlet_Pa(double flow_kg_s, double intermediate_Pa, double air_Pa, double gas_K)
        => service.LeastInlet_Pa(flow_kg_s, intermediate_Pa, air_Pa, gas_K, HighestInlet_Pa);

    /// <summary>Intermediate pressure at which a flow passes; NaN where it never does. [Pa gauge]</summary>
    /// <param name="flow_kg_s">Flow. [kg/s]</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <param name="outlet">Follows it from call to call where both sides give; null where there was no call before.</param>
    public double Outlet_Pa(double flow_kg_s, in FeedPressures feed, double air_Pa, FollowedRoot? outlet = null)
    {
        if (reserve is null || feed.Reserve_Pa <= air_Pa || service.Flow_kg_s(feed.Service_Pa, air_Pa + ReserveShutAbove_Pa, air_Pa, feed.Gas_K) >= flow_kg_s)
            return service.Outlet_Pa(flow_kg_s, feed.Service_Pa, air_Pa, feed.Gas_K);
        double highest_Pa = Highest_Pa(feed, air_Pa);
        OutletOf excess = new(this, flow_kg_s, feed, air_Pa);
        if (outlet is not null && highest_Pa > air_Pa && excess.At(air_Pa) >= 0) return outlet.Root(ref excess, air_Pa, highest_Pa) - air_Pa;
        double atAir = excess.At(air_Pa);
        return atAir < 0 || highest_Pa <= air_Pa
            ? double.NaN
            : BracketedRoot.Root(ref excess, highest_Pa, excess.At(highest_Pa), air_Pa, atAir, Tolerance * highest_Pa) - air_Pa;
    }

    // Residual of the flow of both as a function of intermediate pressure.
    private readonly struct OutletOf(FirstStages stages, double flow_kg_s, FeedPressures feed, double air_Pa) : IFunction
    {
        public double At(double outlet_Pa) => stages.Flow_kg_s(feed, outlet_Pa, air_Pa) - flow_kg_s;
    }
}
