using ColdSim.Model.Furnace;
using ColdSim.Model.Site;

namespace ColdSim.Model.Engine;

/// <summary>What the people do about a failure: reset a locked-out board, give up after resets in vain, wake when inside is too cold.</summary>
/// <param name="occupancy">When they are up, and how they act.</param>
/// <param name="clock">The clock on the wall.</param>
/// <param name="warm">Whether inside is warm enough to sleep in; once it was not, it must be somewhat warmer before they sleep again.</param>
internal sealed class Occupants(Occupancy occupancy, RunClock clock, HysteresisComparator warm) : ILockoutReset
{
    private int _inVain;
    private bool _hasGivenUp;
    private double _triesAgain_s = double.NaN;

    /// <summary>Whether as many resets as they make were in vain.</summary>
    public bool GaveUp => occupancy.ResetsInVain > 0 && _inVain >= occupancy.ResetsInVain;

    /// <summary>Sets whether it is warm from the first instant. [K]</summary>
    public void Begin(double inside_K) => warm.Begin(inside_K < occupancy.WakesBelow_K ? inside_K : double.PositiveInfinity);

    /// <summary>Whether they are asleep: not up by the clock, and not kept up by the cold.</summary>
    /// <param name="time_s">Now. [s]</param>
    public bool IsAsleep(double time_s) => warm.IsHigh && !IsUpByTheClock(time_s);

    /// <summary>Whether the clock alone has them up.</summary>
    /// <param name="time_s">Now. [s]</param>
    public bool IsUpByTheClock(double time_s) => occupancy.AwakeHours.Count > 0 && ClockWindow.AnyContains(occupancy.AwakeHours, clock.At_s(time_s));

    /// <summary>When somebody who has got up has done what is to be done. [s]</summary>
    /// <param name="time_s">When they got up. [s]</param>
    public double Acts_s(double time_s) => time_s + occupancy.ResetAfter_s;

    /// <summary>When they have reset the furnace; infinite where they have given up, or never do. [s]</summary>
    /// <param name="time_s">When they got up. [s]</param>
    public double Resets_s(double time_s) => occupancy.ResetsInVain == 0 || GaveUp ? double.PositiveInfinity : Acts_s(time_s);

    /// <summary>The time of the reset by hand; infinite where nobody ever resets. [s]</summary>
    /// <param name="lockedAt_s">Time of the lockout. [s]</param>
    /// <remarks>
    /// A person awake notices after a delay; a person asleep notices on getting up, or when the cold wakes them. Whoever has reset in vain
    /// often enough leaves it until they get up the next time.
    /// </remarks>
    public double At_s(double lockedAt_s)
    {
        if (occupancy.ResetsInVain == 0) return double.PositiveInfinity;
        double noticed_s = lockedAt_s + occupancy.ResetAfter_s;
        if (!GaveUp) return !warm.IsHigh || IsUpByTheClock(noticed_s) ? noticed_s : GetsUp_s(noticed_s);
        if (double.IsNaN(_triesAgain_s)) _triesAgain_s = GetsUp_s(noticed_s);
        return _triesAgain_s;
    }

    /// <summary>Somebody resets the board; in vain until a flame has burnt.</summary>
    public void NoteReset()
    {
        if (GaveUp) NoteChange();
        _inVain++;
    }

    /// <summary>The board locks out.</summary>
    /// <returns>Whether that ends their tries: it is the first lockout after the last reset that they make in vain.</returns>
    public bool NoteLockout() => GaveUp && !_hasGivenUp && (_hasGivenUp = true);

    /// <summary>Something changed: a flame burnt, another cylinder is open, voltage is back. A reset is worth trying again.</summary>
    public void NoteChange() => (_inVain, _hasGivenUp, _triesAgain_s) = (0, false, double.NaN);

    // The next time that the clock has somebody get up; infinite without waking hours.
    private double GetsUp_s(double time_s)
    {
        double clock_s = clock.At_s(time_s), wait_s = double.PositiveInfinity;
        for (int i = 0; i < occupancy.AwakeHours.Count; i++)
        {
            double from_s = occupancy.AwakeHours[i].From_s;
            wait_s = Math.Min(wait_s, new ClockWindow(from_s, from_s).UntilEdge_s(clock_s));
        }

        return time_s + wait_s;
    }
}
