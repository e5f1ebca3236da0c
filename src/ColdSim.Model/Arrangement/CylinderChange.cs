using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Arrangement;

/// <summary>A change of cylinder by hand once gas is short: when, and to which one.</summary>
internal sealed class CylinderChange(OneAtATime by, int count)
{
    // Walking there and trying a valve take this long, whatever is said: walks at one instant would have no end.
    private const double Walk_s = Minute_s;

    private double _shortSince_s = double.NaN;
    private double _changed_s = double.NegativeInfinity;
    private double _ready_s;

    /// <summary>Time of the change; infinite while nothing is short. [s]</summary>
    public double At_s { get; private set; } = double.PositiveInfinity;

    /// <summary>Number of changes made.</summary>
    public int CylinderChanges { get; private set; }

    /// <summary>Updates the time of the change.</summary>
    /// <param name="isShort">Whether gas is short.</param>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="startClock_s">The clock at time 0, seconds after midnight. [s]</param>
    /// <param name="cold">Whether the cold keeps somebody up, whatever the hour.</param>
    public void Watch(bool isShort, double time_s, double startClock_s, bool cold)
    {
        if (!isShort)
        {
            _shortSince_s = double.NaN;
            At_s = double.PositiveInfinity;
            return;
        }

        if (!double.IsNaN(_shortSince_s)) return;
        _shortSince_s = time_s;
        _ready_s = Math.Max(time_s + Math.Max(Walk_s, by.NoticedAfter_s), _changed_s + by.BetweenWalks_s);
        At_s = cold ? _ready_s : WhenUp_s(_ready_s, startClock_s);
    }

    /// <summary>The cold has woken somebody: a change that waits for the morning is made before.</summary>
    /// <param name="time_s">When they are at the cylinders. [s]</param>
    public void Wake(double time_s)
    {
        if (!double.IsNaN(_shortSince_s)) At_s = Math.Min(At_s, Math.Max(_ready_s, time_s));
    }

    /// <summary>The next cylinder in order that still has liquid; -1 where none has. Counts the change.</summary>
    /// <param name="open">The one open now.</param>
    /// <param name="hasLiquid">Which have liquid.</param>
    /// <param name="time_s">Now. [s]</param>
    public int Next(int open, bool[] hasLiquid, double time_s)
    {
        _shortSince_s = double.NaN;
        At_s = double.PositiveInfinity;
        for (int i = 1; i < count; i++)
        {
            int next = (open + i) % count;
            if (!hasLiquid[next]) continue;
            CylinderChanges++;
            _changed_s = time_s;
            return next;
        }

        return -1;
    }

    // Later than the hours in which nobody gets up, which may follow each other.
    private double WhenUp_s(double time_s, double startClock_s)
    {
        for (int i = 0; i <= by.NobodyGetsUp.Count; i++)
        {
            double clock_s = Math.Round((startClock_s + time_s) % Day_s, 6) % Day_s;
            bool asleep = false;
            for (int k = 0; k < by.NobodyGetsUp.Count; k++)
            {
                ClockWindow window = by.NobodyGetsUp[k];
                if (!window.Contains(clock_s)) continue;
                time_s += new ClockWindow(window.To_s, window.To_s).UntilEdge_s(clock_s);
                asleep = true;
                break;
            }

            if (!asleep) return time_s;
        }

        return double.PositiveInfinity;
    }
}
