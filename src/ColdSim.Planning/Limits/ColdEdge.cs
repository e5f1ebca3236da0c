namespace ColdSim.Planning.Limits;

/// <summary>Finds the last step that holds on an axis from warm to cold.</summary>
/// <remarks>
/// What it gives was tried: the step holds and so do the <see cref="Guard"/> warmer ones next to it, and the next colder one does not.
/// Where holding comes and goes with single cycles of the burner, that keeps to the warm side. A guess saves trials.
/// </remarks>
internal sealed class ColdEdge(Func<int, bool> holds, int steps)
{
    /// <summary>Steps on the warm side that must hold too.</summary>
    public const int Guard = 2;

    private const int FirstStride = 4;

    private readonly Dictionary<int, bool> _tried = [];

    /// <summary>The step; -1 where the warmest does not hold.</summary>
    /// <param name="guess">Where to look first.</param>
    public int Find(int guess)
    {
        (int warm, int cold) = Around(Math.Clamp(guess, 0, steps));
        while (true)
        {
            while (cold - warm > 1)
            {
                int middle = (warm + cold) / 2;
                if (Holds(middle)) warm = middle;
                else cold = middle;
            }

            int gap = Enumerable.Range(1, Guard).Select(k => warm - k).FirstOrDefault(s => s >= 0 && !Holds(s), -1);
            if (gap < 0) return warm;
            (warm, cold) = (-1, gap);
        }
    }

    // A step that holds, or -1, and a colder one that does not, or one past the end.
    private (int Warm, int Cold) Around(int guess)
    {
        int stride = FirstStride;
        if (Holds(guess))
        {
            int warm = guess;
            for (; warm < steps; stride *= 2)
            {
                int next = Math.Min(steps, warm + stride);
                if (!Holds(next)) return (warm, next);
                warm = next;
            }

            return (warm, steps + 1);
        }

        int cold = guess;
        for (; cold > 0; stride *= 2)
        {
            int next = Math.Max(0, cold - stride);
            if (Holds(next)) return (next, cold);
            cold = next;
        }

        return (-1, cold);
    }

    private bool Holds(int step)
    {
        if (!_tried.TryGetValue(step, out bool held)) _tried[step] = held = holds(step);
        return held;
    }
}
