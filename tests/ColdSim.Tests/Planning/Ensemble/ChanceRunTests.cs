using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.Model;
using ColdSim.Tests.Planning.Trips;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>Whole ensembles.</summary>
public class ChanceRunTests
{
    // About as likely to hold as not.
    private static readonly Scenario Doubtful = Rigs.Scenario(
        Rigs.Heated() with { Cylinders = [Rigs.Bottle("20 lb", 0.8) with { InitialTemperature_K = 268 }] },
        Rigs.Changing(h => -6 - 5 * Math.Cos(h / 12 * Math.PI)), 1);

    private static readonly int[] Workers = [1, 2, 5];
    private static readonly double[] Fills = [0.5, 0.65, 0.8, 0.95];

    public static TheoryData<string> Scenarios => ["one place", "trip"];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Every_member_equals_the_plain_run_with_all_errors_zero(string which)
    {
        Scenario scenario = which == "trip"
            ? SomeTrips.Of([SomeTrips.Stop("a", 0, 18, -15), SomeTrips.Stop("b", 24, 44, -20)], SomeTrips.Fill(10))
            : Doubtful with { Nights = 2 };
        scenario = scenario with { Errors = ErrorSizes.None };
        IReadOnlyList<NightReport> plain = NightRun.Of(scenario).Nights;
        ForecastMembers members = new(scenario, 7);
        double[] drawn = new double[7];
        for (int i = 0; i < 3; i++)
        {
            LeanRun run = NightRun.Lean(members.Of(i, drawn), new Trace());
            Assert.Equal(plain.Select(n => n.Verdict), run.Nights.Select(n => n.Verdict));
            Assert.Equal(plain.Select(n => n.LeftAtDawn?.Kilograms ?? double.NaN), run.Nights.Select(n => n.LeftAtDawn_kg));
            Assert.Equal(plain.Select(n => n.LeftAtEnd.Kilograms), run.Nights.Select(n => n.LeftAtEnd_kg));
            Assert.Equal(plain.Select(n => n.Harm.ToString()), run.Nights.Select(n => n.Harm.ToString()));
            Assert.Equal(plain.Select(n => n.DryAt), run.Nights.Select(n => double.IsNaN(n.Dry_s) ? (DateTimeOffset?)null : scenario.Start.AddSeconds(n.Dry_s)));
        }

        ChanceReport report = ChanceRun.Of(scenario, [], 3, 7);
        Assert.True(report.AllNights.Count is 0 or 3);
        Assert.Empty(report.Influences);
    }

    [Fact]
    public void The_same_seed_gives_the_same_on_any_number_of_workers_and_another_gives_another()
    {
        ComparedOption[] options = [new("fuller", Filled(0.95))];
        ChanceReport[] same = [.. Workers.Select(workers => ChanceRun.Of(Doubtful, options, 40, 3, workers: workers))];
        foreach (ChanceReport report in same)
        {
            Assert.Equal(same[0].AllNights, report.AllNights);
            Assert.Equal(same[0].Nights.Select(n => n.LeftAtDawn_kg), report.Nights.Select(n => n.LeftAtDawn_kg));
            Assert.Equal(same[0].Dry, report.Dry);
            Assert.Equal(same[0].Influences, report.Influences);
            Assert.Equal(same[0].Options[0].AllNights, report.Options[0].AllNights);
            Assert.Equal(same[0].Fan, report.Fan);
        }

        Assert.NotEqual(same[0].Influences, ChanceRun.Of(Doubtful, [], 40, 4).Influences);
    }

    [Fact]
    public void A_member_does_not_depend_on_the_members_before_it()
    {
        double[] drawn = new double[7], again = new double[7];
        ForecastMembers one = new(Doubtful, 1), other = new(Doubtful, 1);
        for (int i = 0; i < 5; i++) one.Of(i, drawn);
        LeanRun late = NightRun.Lean(one.Of(9, drawn), new Trace()), alone = NightRun.Lean(other.Of(9, again), new Trace());
        Assert.Equal(again, drawn);
        Assert.Equal(alone.Nights, late.Nights);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_chance_rises_with_the_fill()
    {
        ComparedOption[] options = [.. Fills.Select(f => new ComparedOption($"{f}", Filled(f)))];
        IReadOnlyList<OptionChance> chances = ChanceRun.Of(Doubtful, options, 150, 1).Options;
        Assert.All(chances.Zip(chances.Skip(1)), p => Assert.True(p.Second.AllNights.Chance_frac >= p.First.AllNights.Low_frac));
        Assert.True(chances[^1].AllNights.Low_frac > chances[0].AllNights.High_frac);
    }

    [Fact]
    public void Chance_rises_with_contents_and_air_temperature_and_falls_with_heat_loss()
    {
        ChanceReport report = ChanceRun.Of(Doubtful, [], 200, 1);
        Dictionary<Uncertainty, double> found = report.Influences.ToDictionary(i => i.Of, i => i.Correlation);
        Assert.True(found[Uncertainty.Temperature] > 0.2);
        Assert.True(found[Uncertainty.HeatLoss] < -0.2);
        Assert.True(found[Uncertainty.Contents] > 0);
        Assert.Equal(1, report.Influences.Sum(i => i.Share_frac), 9);
        Assert.InRange(report.AllNights.Chance_frac, 0.02, 0.98);
    }

    [Fact]
    public void Interrupted_run_reports_the_members_that_are_done()
    {
        using CancellationTokenSource source = new();
        ChanceReport report = ChanceRun.Of(Doubtful, [], 100_000, 1, new After(5, source), workers: 1, source.Token);
        Assert.Equal(5, report.Done);
        Assert.Equal(5, report.AllNights.Of);
        Assert.True(report.IsPartial);
        Assert.ThrowsAny<OperationCanceledException>(() => ChanceRun.Of(Doubtful, [], 10, 1, cancel: source.Token));
    }

    [Fact]
    public void Fan_equals_the_curve_without_errors()
    {
        Scenario sure = Doubtful with { Errors = ErrorSizes.None };
        RunSeries series = NightRun.Of(sure).Series;
        Assert.All(ChanceRun.Of(sure, [], 2, 1).Fan, p =>
        {
            int minute = (int)(p.Time_s / 60);
            Assert.Equal(p.Left_kg.Low, p.Left_kg.High);
            Assert.Equal(series.Propane_kg[minute], p.Left_kg.Median, 0.01);
            Assert.Equal(series.Inside_K[minute], p.Inside_K!.Median, 0.03);
        });
    }

    [Fact]
    public void Members_until_settled_are_the_first_of_a_given_number_on_any_number_of_workers()
    {
        Scenario sparing = Doubtful with { WantedChance_frac = 0.97 };
        ComparedOption[] options = [new("fuller", Filled(0.95))];
        ChanceReport[] settled = [.. Workers.Select(workers => ChanceRun.UntilSettled(sparing, options, 3, workers: workers))];
        ChanceReport given = ChanceRun.Of(sparing, options, settled[0].Done, 3);
        Assert.Equal(ChanceSide.Below, settled[0].Decision!.Side);
        Assert.False(settled[0].IsPartial);
        foreach (ChanceReport report in settled)
        {
            Assert.Equal(settled[0].Decision, report.Decision);
            Assert.Equal(given.AllNights, report.AllNights);
            Assert.Equal(given.Options[0].AllNights, report.Options[0].AllNights);
            Assert.Equal(given.Influences, report.Influences);
            Assert.Equal(given.Fan, report.Fan);
            Assert.Equal(given.Ledger, report.Ledger);
        }
    }

    [Fact]
    public void What_is_not_settled_by_the_most_members_stays_open()
    {
        Scenario even = Doubtful with { WantedChance_frac = ChanceRun.Of(Doubtful, [], 60, 3).AllNights.Chance_frac };
        ChanceReport report = ChanceRun.UntilSettled(even, [], 3, most: 60);
        Assert.Equal((60, ChanceSide.Open), (report.Done, report.Decision!.Side));
        Assert.False(report.IsPartial);
    }

    [Fact]
    public void Interrupted_before_a_look_nothing_is_settled()
    {
        using CancellationTokenSource source = new();
        ChanceReport report = ChanceRun.UntilSettled(Doubtful with { WantedChance_frac = 0.9999 }, [], 1, finished: new After(9, source), workers: 1, cancel: source.Token);
        Assert.Equal((9, ChanceSide.Open, true), (report.Done, report.Decision!.Side, report.IsPartial));
    }

    private static Scenario Filled(double part)
        => Doubtful with { Rig = Doubtful.Rig with { Cylinders = [Rigs.Bottle("20 lb", part) with { InitialTemperature_K = 268 }] } };

    private sealed class After(int members, CancellationTokenSource source) : IProgress<int>
    {
        public void Report(int value)
        {
            if (value == members) source.Cancel();
        }
    }
}
