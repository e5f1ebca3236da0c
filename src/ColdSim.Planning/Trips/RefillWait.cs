using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>How long a refill can be put off.</summary>
public enum WaitKind
{
    /// <summary>Without it no night goes worse.</summary>
    NotNeeded,

    /// <summary>It can wait until a later day.</summary>
    CanWait,

    /// <summary>On the next open day at that stop it would be too late.</summary>
    CannotWait,

    /// <summary>There is no later open day at that stop.</summary>
    NoLaterDay,

    /// <summary>It is refused, so there is nothing to wait for.</summary>
    Refused,

    /// <summary>The books of a run with it moved do not close, so nothing may be said.</summary>
    NotKnown,
}

/// <summary>The latest day to which a refill can be put off, found by running the trip with it moved, all else as planned.</summary>
/// <param name="Kind">How it is.</param>
/// <param name="Latest">The latest instant at which it is early enough; null where there is none but its own.</param>
/// <param name="Next">The next open day, on which it would be too late; null where the stop ends before.</param>
/// <param name="Worse">The first night that then goes worse than planned; null where there is none.</param>
public sealed record RefillWait(WaitKind Kind, DateTimeOffset? Latest = null, DateTimeOffset? Next = null, NightReport? Worse = null);
