using ColdSim.Model.Engine;
using ColdSim.Model.Thermostat;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Limits;

/// <summary>Finds the limits of one set-up, the fullest first, each from where the fuller one's was.</summary>
internal sealed class LimitSearch(StandardNight night, LimitAxis axis, SetUp setUp, CancellationToken cancel)
{
    private const double FirstGuess_frac = 0.6;

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
        Dictionary<int, Tried> tried = [];
        bool Holds(int step)
        {
            Tried t = Try(fill_frac, step);
            tried[step] = t;
            return t.Holds;
        }

        int found = new ColdEdge(Holds, axis.Steps).Find(guess);
        LedgerBalance ledger = tried.Values.MaxBy(t => double.IsNaN(t.Ledger.WorstEnergy_frac) ? double.PositiveInfinity : t.Ledger.WorstEnergy_frac)!.Ledger;
        LimitCell cell = new()
        {
            Fill_frac = fill_frac,
            Kind = found < 0 ? LimitKind.NotAtWarmest : found == axis.Steps ? LimitKind.HoldsAtColdest : LimitKind.Found,
            Step = found,
            Low_K = found < 0 ? double.NaN : axis.Low_K(found),
            Contents_kg = setUp.Filled(fill_frac).Cylinders.Sum(c => c.Contents_kg),
            RunsDry = tried.TryGetValue(found + 1, out Tried? colder) && colder.Night.Verdict == Verdict.RunsDry,
            Ledger = ledger,
        };
        if (found < 0) return cell;
        NightReport at = tried[found].Night;
        return cell with
        {
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

    private Tried Try(double fill_frac, int step)
    {
        RunReport report = NightRun.Of(night.Over(setUp.Filled(fill_frac), axis.Low_K(step)), cancel);
        return new Tried(report.Nights[0], report.Ledger, report.End == RunEnd.Complete && report.Summary.Verdict == Verdict.Holds);
    }

    private sealed record Tried(NightReport Night, LedgerBalance Ledger, bool Holds);
}
