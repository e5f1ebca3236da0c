using ColdSim.Planning.Fits;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Tests.Planning.Fits;

public class FitTests(ITestOutputHelper output)
{
    private const int Logs = 50;

    [Fact]
    public void Explore()
    {
        int n = 200;
        (SyntheticLog Log, FitReport Fit)[] all = new (SyntheticLog, FitReport)[n];
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Parallel.For(0, n, i => { SyntheticLog log = SyntheticLog.Of(90_000 + i); all[i] = (log, CoachFit.Of(log.Scenario, log.Readings)); });
        output.WriteLine($"{clock.Elapsed}");
        foreach (FitKind kind in Enum.GetValues<FitKind>())
        {
            var has = all.Where(a => a.Fit.Estimates.Any(e => e.Kind == kind)).Select(a => (a, e: a.Fit.Estimates.First(e => e.Kind == kind))).ToArray();
            if (has.Length == 0) { output.WriteLine($"{kind}: none"); continue; }
            double T(SyntheticLog l) => kind == FitKind.HeatLoss ? l.Truth.HeatLoss : kind == FitKind.Infiltration ? l.Truth.Infiltration : l.Truth.BaseUse_W;
            int ins = has.Count(h => T(h.a.Log) >= h.e.Low && T(h.a.Log) <= h.e.High);
            output.WriteLine($"{kind}: {has.Length} in {100.0 * ins / has.Length:0} % bias {has.Average(h => h.e.Value - T(h.a.Log)):0.000} sd {Math.Sqrt(has.Average(h => Math.Pow(h.e.Value - T(h.a.Log), 2))):0.000} halfwidth {has.Average(h => h.e.High - h.e.Low) / 2:0.000} learned {has.Average(h => h.e.Learned_frac):0.00} told {has.Count(h => h.e.Told)}");
        }
        output.WriteLine($"chi {all.Average(a => a.Fit.ReducedChiSquare):0.00} over one {all.Count(a => a.Fit.ReducedChiSquare > 1)} gross {all.Sum(a => a.Fit.Residuals.Count(r => r.Gross))} cycle {all.Average(a => a.Fit.Cycle.Kilograms):0.000} used {all.Average(a => a.Log.Mass_kg[0]-a.Log.Mass_kg[^1]):0.0} min left {all.Min(a => a.Log.Mass_kg[^1]):0.0}");
        foreach (var (l, f) in all.Take(3)) output.WriteLine(string.Join("; ", f.Estimates.Select(e => $"{e.Kind} {e.Value:0.00} ({e.Low:0.00}-{e.High:0.00})")) + $" corr {string.Join(",", f.Correlations.Select(c => c.ToString("0.00")))} eig {string.Join(",", f.Eigenvalues.Select(c => c.ToString("0.0")))} truth {l.Truth.HeatLoss:0.00} {l.Truth.Infiltration:0.00} {l.Truth.BaseUse_W:0}");
    }
}
