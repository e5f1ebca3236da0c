using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Arrangement;

/// <summary>How several cylinders are connected to the one regulator. SI units, pressures gauge.</summary>
public abstract record CylinderArrangement;

/// <summary>One cylinder open at a time; the next is opened by hand.</summary>
internal sealed record OneAtATime : CylinderArrangement
{
    /// <summary>Delay from the start of a shortage to the change of cylinder. [s]</summary>
    public double NoticedAfter_s { get; init; } = 1800;

    /// <summary>Shortest time between two changes. [s]</summary>
    public double BetweenWalks_s { get; init; } = 3600;

    /// <summary>Hours in which no change is made.</summary>
    public IReadOnlyList<ClockWindow> NobodyGetsUp { get; init; } = [];
}

/// <summary>An automatic changeover regulator between a service and a reserve cylinder.</summary>
/// <remarks>
/// Two first stages feed one second stage. The reserve's spring is set lower, so it passes nothing while the service side holds the
/// pressure between the stages, and helps as soon as that sags to its setting.
/// </remarks>
internal sealed record AutomaticChangeover : CylinderArrangement
{
    /// <summary>Intermediate pressure that the reserve side holds. [Pa gauge]</summary>
    public double ReserveSetting_Pa { get; init; } = 5 * Psi_Pa;

    /// <summary>Rise from that to where the reserve side shuts, and fall from it to wide open. [Pa]</summary>
    public double ReserveDroop_Pa { get; init; } = 1.5 * Psi_Pa;
}

/// <summary>All valves open on one manifold without check valves: one pressure, and vapour free to go from one to the other.</summary>
internal sealed record OpenTogether : CylinderArrangement
{
    /// <summary>Time constant with which different pressures equalise. [s]</summary>
    /// <remarks>
    /// Of the order that an excess-flow device leaves between cylinders of some 20 K difference; an assumption. Once equal,
    /// the cylinders keep one pressure, however small this is.
    /// </remarks>
    public double MeetingTime_s { get; init; } = 300;
}
