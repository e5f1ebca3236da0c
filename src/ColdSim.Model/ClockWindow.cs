using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model;

/// <summary>A span of the clock that comes again every day, such as 22:00 to 06:30; it may pass midnight.</summary>
/// <param name="From_s">Start, seconds after local midnight, 0 to 86,400.</param>
/// <param name="To_s">End, seconds after local midnight, 0 to 86,400; at or before <paramref name="From_s"/> means the next day.</param>
public readonly record struct ClockWindow(double From_s, double To_s)
{
    /// <summary>Whether the clock is inside: the start belongs to the window, the end does not.</summary>
    /// <param name="clock_s">Seconds after local midnight, 0 to 86,400.</param>
    public bool Contains(double clock_s)
        => From_s < To_s ? clock_s >= From_s && clock_s < To_s : clock_s >= From_s || clock_s < To_s;

    /// <summary>Whether the clock is inside one of several windows.</summary>
    /// <param name="windows">The windows; none means always.</param>
    /// <param name="clock_s">Seconds after local midnight, 0 to 86,400.</param>
    public static bool AnyContains(IReadOnlyList<ClockWindow> windows, double clock_s)
    {
        ArgumentNullException.ThrowIfNull(windows);
        for (int i = 0; i < windows.Count; i++)
        {
            if (windows[i].Contains(clock_s)) return true;
        }

        return windows.Count == 0;
    }

    /// <summary>Seconds until the window next opens or closes; never zero. [s]</summary>
    /// <param name="clock_s">Seconds after local midnight, 0 to 86,400.</param>
    public double UntilEdge_s(double clock_s) => Math.Min(Until(From_s, clock_s), Until(To_s, clock_s));

    private static double Until(double edge_s, double clock_s)
    {
        double wait_s = (edge_s - clock_s) % Day_s;
        return wait_s <= 0 ? wait_s + Day_s : wait_s;
    }
}
