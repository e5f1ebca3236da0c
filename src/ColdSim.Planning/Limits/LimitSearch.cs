using ColdSim.Model;
using ColdSim.Model.Thermostat;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Limits;

/// <summary>Finds the limits of one set-up, the fullest first, each from where the fuller one's was.</summary>
internal sealed class LimitSearch(StandardNight night, LimitAxis axis, RigVariant setUp, CancellationToken cancel)
{
    private const double FirstGuess_frac = 0.6;
    private const double Empty_frac = 0.05;

    public LimitColumn Column(IReadOnlyList<double> fills, Action finished)
    {
        LimitCell[] cells = new LimitCell[fills.Count];
        int guess = (int)(FirstGuess_frac * axis.Steps);
        for (int i = fills.Count - 1; i >= 0; i--)
        {
            cells[i] = Cell(fills[i], guess);
            guess = cells[i].Step;
            finished();
        }

        return new LimitColumn(setUp, cells);
    }

    private LimitCell Cell(double fill_frac, int guess)
    {
        Rig rig = setUp.Filled(fill_frac);
        Dictionary<int, double> left_kg = [];
        bool Holds(int step)
        {
            (bool holds, left_kg[step]) = LimitTrial.Of(night.Over(rig, axis.Low_K(step)), cancel);
            return holds;
        }

        int found = new ColdEdge(Holds, axis.Steps).Find(guess);
        LimitCell cell = new()
        {
            Fill_frac = fill_frac,
            Kind = found < 0 ? LimitKind.NotAtWarmest : found == axis.Steps ? LimitKind.HoldsAtColdest : LimitKind.Found,
            Step = found,
            Low_K = found < 0 ? double.NaN : axis.Low_K(found),
            Contents_kg = rig.Cylinders.Sum(c => c.Contents_kg),
            Emptied = left_kg.TryGetValue(found + 1, out double left) && left <= Empty_frac * rig.Cylinders.Sum(c => c.LegalFill_kg),
        };
        if (found < 0) return cell;
        RunReport report = NightRun.Of(night.Over(rig, axis.Low_K(found)), cancel);
        NightReport at = report.Nights[0];
        if (at.Verdict != Verdict.Holds)
            throw new InvalidOperationException($"A limit of {axis.Low_K(found)} K does not hold when it is run again.");
        return cell with
        {
            Ledger = report.Ledger,
            Used_kg = at.GasUsed.Kilograms,
            Blanket_J = at.BlanketEnergy.Joules,
            InsideLow_K = at.InsideLow?.Kelvins ?? double.NaN,
            FurnaceTooSmall = at.InsideLow?.Kelvins < Asked_K(),
        };
    }

    // Where inside may be with the thermostat served: at the lower set point less its band and what the criteria leave.
    private double Asked_K()
    {
        ThermostatSpecification thermostat = setUp.Rig.Thermostat!;
        double criteria_K = night.Over(setUp.Rig, axis.Warmest_K).Criteria.BelowSetPoint.Kelvins;
        return Math.Min(thermostat.DaySetPoint_K, thermostat.NightSetPoint_K) - thermostat.Differential_K - criteria_K;
    }
}

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
