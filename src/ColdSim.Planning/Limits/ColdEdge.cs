namespace ColdSim.Planning.Limits;

/// <summary>What a trial of one step says of the limit.</summary>
/// <param name="Holds">Whether the step holds.</param>
/// <param name="Pressure_Pa">Of one that holds: pressure above that of a limit; NaN where it is not known. [Pa]</param>
/// <param name="Gas_kg">Of one that holds: gas above that of a limit; NaN where it is not known. [kg]</param>
/// <param name="Steps">How many steps away the limit is expected, above zero, by this trial alone.</param>
internal readonly record struct StepTrial(bool Holds, double Pressure_Pa, double Gas_kg, double Steps);

/// <summary>Finds the last step that holds on an axis from warm to cold.</summary>
/// <remarks>
/// What it gives was tried: the step holds and so do the <see cref="Guard"/> warmer ones next to it, and the next colder one does not.
/// Where holding comes and goes with single cycles of the burner, that keeps to the warm side. What each trial says of the distance to the limit, and the
/// secant through two that hold, decide only where to look next.
/// </remarks>
internal sealed class ColdEdge(Func<int, StepTrial> trial, int steps)
{
    /// <summary>Steps on the warm side that must hold too.</summary>
    public const int Guard = 2;

    private const int LongestStride = 24;

    private readonly SortedDictionary<int, StepTrial> _tried = [];

    /// <summary>The step; -1 where the warmest does not hold.</summary>
    /// <param name="guess">Where to look first.</param>
    public int Find(int guess)
    {
        int next = Math.Clamp(guess, 0, steps), warm = -1, cold = steps + 1;
        while (true)
        {
            for (int looks = 0; cold - warm > 1; looks++)
            {
                int before = cold - warm;
                if (Holds(next)) warm = next;
                else cold = next;

                // An expectation that did not halve the bracket twice running gives way to the middle.
                next = looks % 3 == 2 && warm >= 0 && cold <= steps && 2 * (cold - warm) > before ? (warm + cold) / 2 : Next(warm, cold);
            }

            int gap = Enumerable.Range(1, Guard).Select(k => warm - k).FirstOrDefault(s => s >= 0 && !Holds(s), -1);
            if (gap < 0) return warm;
            (warm, cold) = (-1, gap);
            next = Next(warm, cold);
        }
    }

    private int Next(int warm, int cold)
    {
        if (cold - warm <= 1) return warm;
        double ahead = warm >= 0 ? Ahead(warm) : double.PositiveInfinity;
        double behind = _tried.TryGetValue(cold, out StepTrial colder) ? colder.Steps : double.PositiveInfinity;
        return Math.Clamp(ahead <= behind ? warm + Stride(ahead) : cold - Stride(behind), warm + 1, cold - 1);
    }

    // Steps from one that holds to the limit, by the secant through it and the next warmer one that was tried.
    private double Ahead(int warm)
    {
        StepTrial at = _tried[warm];
        foreach ((int step, StepTrial other) in _tried.Reverse())
        {
            if (step >= warm || !other.Holds) continue;
            int apart = warm - step;
            return Math.Min(Secant(at.Pressure_Pa, other.Pressure_Pa, apart), Secant(at.Gas_kg, other.Gas_kg, apart));
        }

        return at.Steps;
    }

    private static double Secant(double at, double before, int apart) => before > at ? at / (before - at) * apart : double.PositiveInfinity;

    private static int Stride(double ahead) => ahead < LongestStride ? Math.Max(1, (int)ahead) : LongestStride;

    private bool Holds(int step)
    {
        if (!_tried.TryGetValue(step, out StepTrial tried)) _tried[step] = tried = trial(step);
        return tried.Holds;
    }
}
