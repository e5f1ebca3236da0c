using ColdSim.Planning;
using ColdSim.Planning.Fits;
using ColdSim.Tests.Planning.Fits;

namespace ColdSim.Benchmarks.Planning;

/// <summary>How often the truth of 200 invented logs lies in the stated 80 % interval; <c>-- coverage</c> runs it.</summary>
internal static class FitCoverage
{
    private const int Logs = 200;
    private const int FirstSeed = 20_000;

    /// <summary>Prints a line a parameter; 0 where heat loss lies within 74 to 86 %.</summary>
    public static int Run()
    {
        SyntheticLog[] logs = new SyntheticLog[Logs];
        FitReport[] fits = new FitReport[Logs];
        Parallel.For(0, Logs, i =>
        {
            logs[i] = SyntheticLog.Of(FirstSeed + i);
            fits[i] = CoachFit.Of(logs[i].Scenario, logs[i].Readings);
        });
        double heat = 0;
        foreach (FitKind kind in (FitKind[])[FitKind.HeatLoss, FitKind.Infiltration, FitKind.BaseUse])
        {
            (double Truth, FitEstimate Estimate)[] pairs =
            [
                .. Enumerable.Range(0, Logs).SelectMany(i => fits[i].Estimates.Where(e => e.Kind == kind).Select(e => (Value(logs[i].Truth, kind), e))),
            ];
            double inside = 100.0 * pairs.Count(p => p.Truth >= p.Estimate.Low && p.Truth <= p.Estimate.High) / Math.Max(1, pairs.Length);
            if (kind == FitKind.HeatLoss)
                heat = inside;
            Console.WriteLine(FormattableString.Invariant(
                $"{kind}: {pairs.Length} fits, {inside:0.0} % inside, mean error {pairs.Average(p => p.Estimate.Value - p.Truth):0.000}, half width {pairs.Average(p => (p.Estimate.High - p.Estimate.Low) / 2):0.000}, told in {pairs.Count(p => p.Estimate.IsIdentified)}"));
        }

        return heat is >= 74 and <= 86 ? 0 : 1;
    }

    private static double Value(FittedFactors truth, FitKind kind) => kind switch
    {
        FitKind.HeatLoss => truth.HeatLoss,
        FitKind.Infiltration => truth.Infiltration,
        _ => truth.BaseUse_W,
    };
}
