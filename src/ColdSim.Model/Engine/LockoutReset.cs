using ColdSim.Model.Furnace;
using ColdSim.Model.Site;

namespace ColdSim.Model.Engine;

/// <summary>Time of the reset by hand after a lockout.</summary>
internal sealed class LockoutReset(Occupancy occupancy, RunClock clock) : ILockoutReset
{
    /// <summary>The time of the reset; infinite without waking hours. [s]</summary>
    /// <param name="lockedAt_s">Time of the lockout. [s]</param>
    /// <remarks>A person awake notices after a delay; a person asleep notices on getting up.</remarks>
    public double At_s(double lockedAt_s)
    {
        double noticed_s = lockedAt_s + occupancy.ResetAfter_s;
        double clock_s = clock.At_s(noticed_s);
        double wait_s = double.PositiveInfinity;
        for (int i = 0; i < occupancy.AwakeHours.Count; i++)
        {
            ClockWindow awake = occupancy.AwakeHours[i];
            if (awake.Contains(clock_s)) return noticed_s;
            wait_s = Math.Min(wait_s, new ClockWindow(awake.From_s, awake.From_s).UntilEdge_s(clock_s));
        }

        return noticed_s + wait_s;
    }
}
