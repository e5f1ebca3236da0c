using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Tests.Files;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Tests.Planning.Fits;

public class FitTests(ITestOutputHelper output)
{
    private const int Logs = 200;

    // Half of the logs from each: over two hundred, either set alone is off by some three in a hundred, one up and one down.
    private static readonly int[] FirstSeeds = [5_000, 20_000];

    [Fact]
    [Trait("Category", "Slow")]
    public void The_true_heat_loss_lies_in_the_stated_interval_about_four_times_in_five()
    {
        bool[] inside = new bool[Logs], told = new bool[Logs];
        Parallel.For(0, Logs, i =>
        {
            SyntheticLog log = SyntheticLog.Of(FirstSeeds[i % 2] + i / 2);
            FitEstimate heat = CoachFit.Of(log.Scenario, log.Readings).Estimates.First(e => e.Kind == FitKind.HeatLoss);
            inside[i] = log.Truth.HeatLoss >= heat.Low && log.Truth.HeatLoss <= heat.High;
            told[i] = heat.IsIdentified;
        });
        output.WriteLine($"{inside.Count(x => x)} of {Logs}");
        Assert.All(told, Assert.True);
        Assert.InRange(inside.Count(x => x), 0.7 * Logs, 0.9 * Logs);
    }

    [Fact]
    public void A_difference_spans_more_than_a_few_burner_cycles()
    {
        SyntheticLog log = SyntheticLog.Of(7);
        FitRun run = new(FitProblem.Of(log.Scenario, UseLog.Of(log.Readings, log.Scenario.Rig)));
        FittedFactors middle = FitPrior.Of(log.Scenario.Rig).Aggregate(FittedFactors.None, (f, p) => f.With(p.Kind, p.Middle));
        FitSteps steps = new(run, FitPrior.Of(log.Scenario.Rig), middle);
        double cycle_kg = run.At(middle).Cycle_kg;
        Assert.InRange(cycle_kg, 0.005, 0.2);
        Assert.Contains(steps.Priors, p => p.Kind == FitKind.HeatLoss);
        for (int i = 0; i < steps.Priors.Count; i++)
        {
            double[] up = new double[steps.Priors.Count], down = new double[steps.Priors.Count];
            (up[i], down[i]) = (steps.Steps[i], -steps.Steps[i]);
            double moved_kg = Math.Abs(run.At(steps.At(up)).Values[^1] - run.At(steps.At(down)).Values[^1]);
            Assert.True(moved_kg > 4 * cycle_kg, $"{steps.Priors[i].Kind}: {moved_kg} kg against a cycle of {cycle_kg} kg");
        }
    }

    [Theory]
    [InlineData(4, 2.3)]
    [InlineData(7, -3)]
    [Trait("Category", "Slow")]
    public void A_gross_outlier_is_flagged_and_does_not_move_the_answer(int index, double off_kg)
    {
        SyntheticLog log = SyntheticLog.Of(11);
        FitReport clean = CoachFit.Of(log.Scenario, log.Readings);
        FitReport spoiled = CoachFit.Of(log.Scenario, log.Off(index, off_kg).Readings);
        Assert.DoesNotContain(clean.Residuals, r => r.Gross);
        Assert.Equal(index + 2, Assert.Single(spoiled.Residuals, r => r.Gross).Row.Reading.Line);
        FitEstimate heat = clean.Estimates[0];
        Assert.InRange(spoiled.Estimates[0].Value, heat.Low, heat.High);
        Assert.Single(CoachFit.Of(log.Scenario, log.Off(index, off_kg).Readings, leaveOut: false).Residuals, r => r.Gross && r.Row.Reading.Line == index + 2);
    }

    [Fact]
    public void Error_of_the_tare_does_not_change_the_fit()
    {
        SyntheticLog log = SyntheticLog.Of(12);
        LogReading[] heavier = [.. log.Readings.Select(r => r with
        {
            Reading = new WeightReading { Name = "weight", Scale_kg = ((WeightReading)r.Reading).Scale_kg + 0.6, Tare_kg = ((WeightReading)r.Reading).Tare_kg },
        })];
        Assert.Equal(CoachFit.Of(log.Scenario, log.Readings).Estimates[0].Value, CoachFit.Of(log.Scenario, heavier).Estimates[0].Value, 0.005);
    }

    [Fact]
    public void Interval_with_a_filling_is_not_used()
    {
        SyntheticLog log = SyntheticLog.Of(13);
        LogReading[] filled = [.. log.Readings.Select((r, i) => i < 6 ? r : r with
        {
            Filled = i == 6,
            Reading = new WeightReading { Name = "weight", Scale_kg = ((WeightReading)r.Reading).Scale_kg + 5, Tare_kg = ((WeightReading)r.Reading).Tare_kg },
        })];
        FitEstimate whole = CoachFit.Of(log.Scenario, log.Readings).Estimates[0], parts = CoachFit.Of(log.Scenario, filled).Estimates[0];
        Assert.InRange(parts.Value, whole.Low, whole.High);
    }

    [Fact]
    public void Stretches_combined_equal_the_stretches_alone()
    {
        SyntheticLog log = SyntheticLog.Of(17, days: 6, filledAt: 6);
        FitRun Through(IEnumerable<LogReading> readings) => new(FitProblem.Of(log.Scenario, UseLog.Of(readings, log.Scenario.Rig)));
        FitRun both = Through(log.Readings);
        Assert.Equal(2, both.Problem.Stretches.Count);
        FitPrediction together = both.At(FittedFactors.None), again = both.At(FittedFactors.None with { });
        double[] alone = [.. Through(log.Readings.Take(6)).At(FittedFactors.None).Values, .. Through(log.Readings.Skip(6)).At(FittedFactors.None).Values];
        Assert.Equal(alone, together.Values);
        Assert.Same(together, again);
    }

    [Fact]
    public void Too_little_data_is_refused_with_every_reason()
    {
        SyntheticLog log = SyntheticLog.Of(14);
        TooLittleDataException few = Assert.Throws<TooLittleDataException>(() => CoachFit.Of(log.Scenario, [.. log.Readings.Take(3)]));
        Assert.Equal(2, few.Reasons.Count);
        Assert.Contains("at least 5", few.Reasons[0], StringComparison.Ordinal);
        Assert.Contains("at least 48 h", few.Reasons[1], StringComparison.Ordinal);
        LogReading late = log.Readings[^1] with { Time = log.Scenario.Weather.Last.AddHours(1) };
        Assert.Contains("lies outside the weather", Assert.Throws<TooLittleDataException>(() => CoachFit.Of(log.Scenario, [.. log.Readings, late])).Message, StringComparison.Ordinal);
        Assert.Contains("no furnace", Assert.Throws<TooLittleDataException>(() => CoachFit.Of(
            log.Scenario with { Rig = log.Scenario.Rig with { Furnace = null } }, log.Readings)).Message, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Cancelled_fit_skips_its_remaining_runs()
    {
        SyntheticLog log = SyntheticLog.Of(14);
        using CancellationTokenSource source = new();
        StopsAt third = new(3, source);
        Assert.ThrowsAny<OperationCanceledException>(() => CoachFit.Of(log.Scenario, log.Readings, finished: third, cancel: source.Token));

        // Only what ran beside the third may still have come to its end.
        Assert.InRange(third.Runs, 3, 3 + 2 * Environment.ProcessorCount);
        StopsAt never = new(int.MaxValue, source);
        CoachFit.Of(log.Scenario, log.Readings, finished: never);
        Assert.True(never.Runs > 10);
    }

    [Fact]
    public void A_fit_that_was_cancelled_before_runs_nothing()
    {
        SyntheticLog log = SyntheticLog.Of(14);
        StopsAt none = new(int.MaxValue, new());
        Assert.ThrowsAny<OperationCanceledException>(() => CoachFit.Of(log.Scenario, log.Readings, finished: none, cancel: new(canceled: true)));
        Assert.Equal(0, none.Runs);
    }

    [Fact]
    public void A_fit_written_into_a_scenario_reads_back_and_is_replaced_by_the_next()
    {
        SyntheticLog log = SyntheticLog.Of(15);
        FitReport fit = CoachFit.Of(log.Scenario, log.Readings);
        string table = FitText.Table(fit, "s.log.csv");
        string scenario = Fixtures.Least + "\n# mine\n[coach]\nheat_loss = \"80 W/K\"\nlength = \"6 m\"\nleakage_area = \"90 cm²\"\n";
        string once = FitText.With(scenario, table);
        Assert.Equal(once, FitText.With(once, table));
        Assert.StartsWith(scenario, once, StringComparison.Ordinal);
        ReadResult read = Fixtures.Read(once);
        Assert.Empty(read.Problems);
        FittedFactors factors = read.Scenario!.Fit!.Factors;
        Assert.Equal(fit.Factors.HeatLoss, factors.HeatLoss, 5e-4);
        Assert.Equal(fit.Factors.BaseUse_W, factors.BaseUse_W, 0.5);
        Assert.Equal(fit.Factors.Estimated, factors.Estimated);
        Assert.Equal(fit.Factors.Covariance[0], factors.Covariance[0], 1e-3 * 0.3);
        Assert.Equal(80 * factors.HeatLoss, read.Scenario.Rig.Coach!.HeatLoss[0].Conductance_W_K, 9);
        Assert.Equal(80, read.Scenario.Fit.Before.Coach!.HeatLoss[0].Conductance_W_K, 9);
    }

    private sealed class StopsAt(int run, CancellationTokenSource source) : IProgress<int>
    {
        private int _runs;

        public int Runs => Volatile.Read(ref _runs);

        public void Report(int value)
        {
            if (Interlocked.Increment(ref _runs) == run)
                source.Cancel();
        }
    }
}
