using ColdSim.Model.Numerics;

namespace ColdSim.Model.Supply;

/// <summary>The first stage of a regulator, or the two of an automatic changeover, into one intermediate pressure.</summary>
/// <remarks>Neither passes gas back: a stage whose inlet is below its outlet passes nothing.</remarks>
internal sealed class FirstStages(SpringOrifice service, SpringOrifice? reserve)
{
    private const double Tolerance = 1e-10;

    // Of the reserve's band where it gives all: as well as where both give.
    private const double AloneTolerance_frac = 1e-13;

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
        if (reserve is null || feed.Reserve_Pa <= air_Pa) return service.Outlet_Pa(flow_kg_s, feed.Service_Pa, air_Pa, feed.Gas_K);
        FedStages fed = FedBy(feed, air_Pa);
        double shut_Pa = air_Pa + ReserveShutAbove_Pa;
        if (fed.Service_kg_s(shut_Pa) >= (1 - Tolerance) * flow_kg_s) return service.Outlet_Pa(flow_kg_s, feed.Service_Pa, air_Pa, feed.Gas_K);

        if (feed.Service_Pa < shut_Pa && fed.Reserve_kg_s(feed.Service_Pa) >= flow_kg_s)
            return reserve.Value.Outlet_Pa(flow_kg_s, feed.Reserve_Pa, air_Pa, feed.Gas_K, AloneTolerance_frac);

        // Both give. By the root of the pressure that the service side loses there is no bend where that is little.
        OutletOf excess = new(fed, flow_kg_s, feed.Service_Pa);
        double least = Math.Sqrt(Math.Max(0, feed.Service_Pa - shut_Pa)), most = Math.Sqrt(Math.Max(0, feed.Service_Pa - air_Pa));
        double root = outlet is null ? double.NaN : outlet.Follow(ref excess, least, most);
        if (double.IsNaN(root))
        {
            double atMost = excess.At(most);
            if (!(atMost >= -Tolerance * flow_kg_s)) return double.NaN;
            if (atMost <= 0) return feed.Service_Pa - most * most - air_Pa;
            root = outlet is null
                ? BracketedRoot.Root(ref excess, least, excess.At(least), most, atMost, Tolerance * most)
                : outlet.Bracketed(ref excess, least, most);
        }

        return feed.Service_Pa - root * root - air_Pa;
    }

    /// <summary>The same at one feed, for many intermediate pressures.</summary>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public FedStages FedBy(in FeedPressures feed, double air_Pa)
    {
        bool hasReserve = reserve is not null && feed.Reserve_Pa > 0;
        return service.HasLoss || reserve is { HasLoss: true }
            ? new FedStages(this, feed, air_Pa)
            : new FedStages(
                service.FedBy(feed.Service_Pa, air_Pa, feed.Gas_K), hasReserve ? reserve!.Value.FedBy(feed.Reserve_Pa, air_Pa, feed.Gas_K) : default);
    }

    /// <summary>Flow of the service side into an intermediate pressure. [kg/s]</summary>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="intermediate_Pa">Between the stages. [Pa absolute]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    internal double Service_kg_s(in FeedPressures feed, double intermediate_Pa, double air_Pa)
        => service.Flow_kg_s(feed.Service_Pa, intermediate_Pa, air_Pa, feed.Gas_K);

    // Residual of the flow of both as a function of the root of what the pressure falls by in the service side.
    private readonly struct OutletOf(FedStages stages, double flow_kg_s, double service_Pa) : IFunction
    {
        public double At(double root) => stages.Flow_kg_s(service_Pa - root * root) - flow_kg_s;
    }
}
