using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.Planning.Nights;

/// <summary>Runs without curves beside whole ones, over members of which some hold.</summary>
public class LeanRunTests
{
    private const int Members = 24;

    private static readonly Scenario Doubtful = Rigs.Scenario(
        Rigs.Heated() with { Cylinders = [Rigs.Bottle("20 lb", 0.8) with { InitialTemperature_K = 268 }] },
        Rigs.Changing(h => -6 - 5 * Math.Cos(h / 12 * Math.PI)), 2);

    [Fact]
    public void A_run_that_ends_with_the_first_failure_says_of_every_member_whether_it_holds()
    {
        bool[] whole = [.. Each(s => NightRun.Lean(s, UnwatchedRun.Only).Holds)];
        Assert.Contains(true, whole);
        Assert.Contains(false, whole);
        Assert.Equal(whole, Each(s => NightRun.LeanWhileItHolds(s) is not null));
    }

    [Fact]
    public void A_run_that_holds_is_the_whole_run()
    {
        foreach ((LeanRun? part, LeanRun whole) in Each(s => (NightRun.LeanWhileItHolds(s), NightRun.Lean(s, UnwatchedRun.Only))))
        {
            if (part is null) continue;
            Assert.Equal(whole.Nights, part.Nights);
            Assert.Equal(whole.Ledger, part.Ledger);
        }
    }

    [Fact]
    public void A_run_without_curves_fails_first_when_the_whole_one_does()
    {
        foreach ((RunReport whole, LeanRun lean) in Each(s => (NightRun.Of(s), NightRun.Lean(s, UnwatchedRun.Only))))
        {
            double failure_s = lean.Nights.Select(n => n.FirstFailure_s).FirstOrDefault(double.IsFinite, double.NaN);
            Assert.Equal(whole.Summary.FirstFailure, double.IsNaN(failure_s) ? null : Doubtful.Start.AddSeconds(failure_s));
            Assert.Equal(whole.Summary.BlanketEnergy.Joules, lean.Nights.Sum(n => n.Blanket_J));
        }
    }

    [Fact]
    public void A_failure_ends_the_run_early()
    {
        Scenario failing = Doubtful with { Rig = Doubtful.Rig with { Cylinders = [Rigs.Bottle("20 lb", 0.1) with { InitialTemperature_K = 250 }] } };
        using CancellationTokenSource failed = new();
        NightCalendar calendar = new(failing);
        Last last = new();
        NightWatch watch = new(failing, calendar, last, RunDetail.Nights) { Failed = failed };
        Assert.ThrowsAny<OperationCanceledException>(() => new LegRun(failing, watch).Go(NightRun.LegsOf(failing)[0], failed.Token));
        Assert.InRange(last.Time_s, 1, 0.7 * calendar.Duration_s);
    }

    [Fact]
    public void A_caller_who_cancels_is_not_taken_for_a_failure()
    {
        using CancellationTokenSource cancelled = new();
        cancelled.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => NightRun.LeanWhileItHolds(Doubtful, cancelled.Token));
    }

    private static IEnumerable<T> Each<T>(Func<Scenario, T> run)
    {
        ForecastMembers members = new(Doubtful, 5);
        double[] drawn = new double[Enum.GetValues<Uncertainty>().Length];
        for (int i = 0; i < Members; i++) yield return run(members.Of(i, drawn));
    }

    private sealed class Last : IRunObserver
    {
        public double Time_s { get; private set; }

        public void Stepped(StepRecord record) => Time_s = record.To.Time_s;

        public void Happened(in SimulationEvent happened, in ColdSim.Model.Engine.Snapshot moment)
        {
        }
    }
}
