using ColdSim.Planning;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Logs;
using ColdSim.Tests.Planning.Fits;

namespace ColdSim.Benchmarks.Planning;

/// <summary>
/// How often the true heat loss of invented logs of two-cylinder rigs lies in the stated 80 % interval, and how well it is known what an unread
/// cylinder holds and which one is in use; <c>-- coverage two</c> runs it, <c>-- coverage two 50</c> fifty of them.
/// </summary>
internal static class TwoCylinderCoverage
{
    /// <summary>Logs unless fewer are wanted.</summary>
    public const int Logs = 200;

    private const int FirstSeed = 20_000;
    private const double Interval = 1.2816;
    private const double PriorSpread = 0.3;
    private const double Sure_frac = 0.8;

    private sealed record Outcome(TwoCylinders How, double? Times, double Width, bool IsInside);

    /// <summary>Prints a line for each arrangement and one for all; 0 where heat loss lies within 74 to 86 % with half of the prior's width.</summary>
    /// <param name="logs">How many.</param>
    public static int Run(int logs)
    {
        Outcome[] all = [.. Enumerable.Range(FirstSeed, logs).Select(Fit)];
        foreach (TwoCylinders how in Enum.GetValues<TwoCylinders>())
            Print(how.ToString(), [.. all.Where(o => o.How == how)]);
        (double inside, double width) = Print("all", all);
        Starts(logs);
        return inside is >= 74 and <= 86 && width <= 0.5 * 2 * Interval * PriorSpread ? 0 : 1;
    }

    private static Outcome Fit(int seed)
    {
        TwoCylinderLog log = TwoCylinderLog.Of(seed);
        TwoCylinders how = (TwoCylinders)(seed % 3);
        try
        {
            FitReport fit = CoachFit.Of(log.Scenario, [.. LogConsistency.Of(log.Readings, log.Scenario).Kept.Rows.Select(r => r.Reading)]);
            FitEstimate heat = fit.Estimates.First(e => e.Kind == FitKind.HeatLoss);
            double width = Math.Log(heat.High / heat.Low), truth = log.Truth.HeatLoss;
            return new(how, Math.Log(heat.Value / truth) / (width / 2 / Interval), width, truth >= heat.Low && truth <= heat.High);
        }
        catch (TooLittleDataException)
        {
            return new(how, null, double.NaN, false);
        }
    }

    private static (double Inside, double Width) Print(string name, Outcome[] outcomes)
    {
        Outcome[] fits = [.. outcomes.Where(o => o.Times is not null)];
        double inside = 100.0 * fits.Count(o => o.IsInside) / Math.Max(1, fits.Length), width = fits.Select(o => o.Width).Order().ElementAt(fits.Length / 2);
        Console.WriteLine(FormattableString.Invariant(
            $"{name}: {fits.Length} fits of {outcomes.Length}, {inside:0.0} % inside, median width {width:0.000} of ln x against {2 * Interval * PriorSpread:0.000} before, mean error {fits.Average(o => o.Times!.Value):0.00} and rms {Math.Sqrt(fits.Average(o => o.Times!.Value * o.Times.Value)):0.00} standard uncertainties"));
        return (inside, width);
    }

    // Logs of which nothing is left out and nobody filled a cylinder after its last reading: that nobody can know.
    private static void Starts(int logs)
    {
        int rigs = 0, right = 0, sure = 0, sureRight = 0;
        List<double> times = [], off_kg = [], asRead_kg = [];
        for (int seed = FirstSeed; seed < FirstSeed + logs; seed++)
        {
            TwoCylinderLog log = TwoCylinderLog.Of(seed);
            UseLog kept = LogConsistency.Of(log.Readings, log.Scenario).Kept;
            if (kept.Rows.Count < log.Readings.Count || log.FilledUnread.Contains(true) || LogFeeds.Of(log.Scenario, kept, default) is not { } feeds)
                continue;
            if (!feeds.Together)
            {
                bool isSure = feeds.InUse_frac[feeds.InUse] >= Sure_frac, isRight = feeds.InUse == log.InUseAtEnd;
                (rigs, right) = (rigs + 1, right + (isRight ? 1 : 0));
                (sure, sureRight) = (sure + (isSure ? 1 : 0), sureRight + (isSure && isRight ? 1 : 0));
            }

            for (int i = 0; i < 2; i++)
            {
                if (kept.LatestOf(i) is not { } last || kept.Rows[^1].Reading.Time - last.Reading.Time < TimeSpan.FromHours(1))
                    continue;
                double error_kg = feeds.Held_kg[^1][i] - log.AtEnd_kg[i];
                times.Add(error_kg / feeds.Uncertainty_kg[i]);
                off_kg.Add(Math.Abs(error_kg));
                asRead_kg.Add(Math.Abs(last.Contents.Mass.Kilograms - log.AtEnd_kg[i]));
            }
        }

        Console.WriteLine(FormattableString.Invariant(
            $"in use: right in {right} of {rigs}, where stated as sure in {sureRight} of {sure}; {times.Count} cylinders not read last: off {off_kg.Average():0.00} kg in the mean (as last read {asRead_kg.Average():0.00} kg), rms {Math.Sqrt(times.Average(t => t * t)):0.00} standard uncertainties"));
    }
}
