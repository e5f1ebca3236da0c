using ColdSim.Model;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Limits;

/// <summary>Finds the limits of one set-up, the fullest first, each from where those of the fuller ones were. No night is run twice.</summary>
/// <param name="night">The standard night.</param>
/// <param name="axis">The lows to try.</param>
/// <param name="setUp">The set-up.</param>
/// <param name="cancel">Stops a run.</param>
internal sealed class LimitSearch(StandardNight night, LimitAxis axis, RigVariant setUp, CancellationToken cancel)
{
    private const double FirstGuess_frac = 0.6;

    // What is expected of a night before there are two to compare: only where to look next hangs on these.
    private const double PressureAtLimit_Pa = 4000, PressureFall_Pa_K = 6500, GasAtLimit_frac = 0.01, EarlierPerKelvin_s = 2700, LimitFall_K = 9;

    /// <summary>Nights that were run.</summary>
    public int Nights { get; private set; }

    public LimitColumn Column(IReadOnlyList<double> fills, Action finished)
    {
        LimitCell[] cells = new LimitCell[fills.Count];
        for (int i = fills.Count - 1; i >= 0; i--)
        {
            cells[i] = Cell(setUp.DrawnDown(fills[i]), fills[i], Guess(cells, i, fills[i]));
            finished();
        }

        Rig rig = setUp.AsItIsNow();
        double now_frac = rig.Cylinders.Sum(c => c.Contents_kg) / rig.Cylinders.Sum(c => c.LegalFill_kg);
        LimitCell now = Cell(rig, now_frac, Nearest(cells, now_frac).Step);
        LimitCell? shutting = setUp.AsItIs && now.PressureLow_Pa < rig.MinimumInlet_Pa && !rig.Regulator.ShutsBelowMinimum
            ? Cell(rig with { Regulator = rig.Regulator with { ShutsBelowMinimum = true } }, now_frac, now.Step)
            : null;
        finished();
        return new LimitColumn(setUp, cells, now) { NowShutting = shutting };
    }

    // Limits of rising fills lie nearly on a straight line over the logarithm of the fill. A step on the warm side is wanted anyhow.
    private int Guess(LimitCell[] cells, int i, double fill_frac)
    {
        if (i + 1 == cells.Length) return (int)(FirstGuess_frac * axis.Steps);
        LimitCell fuller = cells[i + 1];
        if (fuller.Kind != LimitKind.Found) return fuller.Step;
        double fall = LimitFall_K / axis.Step_K;
        if (i + 2 < cells.Length && cells[i + 2].Kind == LimitKind.Found)
            fall = Math.Max(0, cells[i + 2].Step - fuller.Step) / Math.Log(cells[i + 2].Fill_frac / fuller.Fill_frac);
        return fuller.Step - 1 - (int)Math.Round(fall * Math.Log(fuller.Fill_frac / fill_frac));
    }

    private static LimitCell Nearest(LimitCell[] cells, double fill_frac)
    {
        LimitCell nearest = cells[0];
        foreach (LimitCell cell in cells)
        {
            if (Math.Abs(cell.Fill_frac - fill_frac) < Math.Abs(nearest.Fill_frac - fill_frac)) nearest = cell;
        }

        return nearest;
    }

    private LimitCell Cell(Rig rig, double fill_frac, int guess)
    {
        Dictionary<int, NightTrial> tried = [];
        StepTrial Try(int step)
        {
            NightTrial trial = tried[step] = LimitTrial.Of(night.Over(rig, axis.Low_K(step)), cancel);
            Nights++;
            return Expected(trial, axis.Low_K(step), rig);
        }

        int found = new ColdEdge(Try, axis.Steps).Find(guess);
        LimitCell cell = new()
        {
            Fill_frac = fill_frac,
            Kind = found < 0 ? LimitKind.NotAtWarmest : found == axis.Steps ? LimitKind.HoldsAtColdest : LimitKind.Found,
            Step = found,
            Low_K = found < 0 ? double.NaN : axis.Low_K(found),
            Contents_kg = rig.Cylinders.Sum(c => c.Contents_kg),
            FailsColder = tried.TryGetValue(found + 1, out NightTrial? colder) ? colder.Verdict : Verdict.Holds,
            Emptied = colder is { Verdict: Verdict.GasShort or Verdict.GasGone } && colder.Left_kg <= NightCriteria.LastOfGas.DecimalFractions * rig.Cylinders.Sum(c => c.LegalFill_kg),
        };
        if (found < 0) return cell;
        NightTrial at = tried[found];
        return cell with
        {
            Ledger = at.Ledger,
            Used_kg = at.Used_kg,
            Blanket_J = at.Blanket_J,
            InsideLow_K = at.InsideLow_K,
            PressureLow_Pa = at.PressureLow_Pa,
        };
    }

    // A night's pressure falls with its low, its gas goes with the difference of temperature, and a shortage begins the earlier the colder it is.
    private StepTrial Expected(NightTrial trial, double low_K, Rig rig)
    {
        if (!trial.Holds) return new StepTrial(false, double.NaN, double.NaN, 1 + trial.NotRun_s / (EarlierPerKelvin_s * axis.Step_K));
        double pressure_Pa = trial.PressureLow_Pa - PressureAtLimit_Pa;
        double gas_kg = trial.Left_kg - GasAtLimit_frac * rig.Cylinders.Sum(c => c.LegalFill_kg);
        double difference_K = Math.Max(1, rig.Thermostat!.DaySetPoint_K - low_K - StandardNight.Swing_K / 2);
        double steps = Math.Min(pressure_Pa / PressureFall_Pa_K, gas_kg / (trial.Used_kg / difference_K)) / axis.Step_K;
        return new StepTrial(true, pressure_Pa, gas_kg, steps);
    }
}
