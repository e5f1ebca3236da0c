using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using Xunit;
using static ColdSim.Tests.Planning.Trips.SomeTrips;

namespace ColdSim.Tests.Planning.Trips;

/// <summary>How long a refill can wait. A pair of 20 lb cylinders feeds 5,000 BTU/h, some 5.5 lb a day, from Tuesday 16:00 on.</summary>
[Trait("Category", "Slow")]
public class RefillWaitTests
{
    private static RefillWait Wait(double left, double to_h, Refill refill) => TripRun.Of(Of(Pair(left), [Stop("a", 0, to_h)], refill)).Refills[0].Wait;

    [Fact]
    public void Refill_without_which_no_night_goes_worse_is_not_needed()
        => Assert.Equal(new RefillWait(WaitKind.NotNeeded), Wait(0.9, 68, Fill(19)));

    [Fact]
    public void Wait_is_unknown_where_the_ledger_of_a_trial_does_not_close()
    {
        Scenario scenario = Of(Pair(0.35), [Stop("a", 0, 164)], Fill(19));
        RunWithRefills planned = RunWithRefills.Of(scenario);
        RunReport Open(Scenario s, CancellationToken cancel) => NightRun.Of(s, cancel) with { Ledger = new(1, 1e-3, 0, 0, 0, 0, 0, 0) };
        Assert.Equal(WaitKind.CanWait, new RefillWaitSearch(scenario, planned, null).Of(0, default).Kind);
        Assert.Equal(new RefillWait(WaitKind.NotKnown), new RefillWaitSearch(scenario, planned, null, Open).Of(0, default));
        TripReport report = TripRun.Of(scenario);
        Assert.EndsWith(
            "; how long it can wait is not known, for the ledger of a run with it moved does not close.",
            TripSentence.OfRefill(report.Refills[0] with { Wait = new(WaitKind.NotKnown) }, 0, report, UnitStyle.Us), StringComparison.Ordinal);
    }

    [Fact]
    public void Refill_can_wait_until_the_day_before_the_first_night_that_would_go_worse()
    {
        RefillWait wait = Wait(0.35, 164, Fill(19));
        Assert.Equal(WaitKind.CanWait, wait.Kind);
        Assert.Equal(wait.Latest!.Value.AddDays(1), wait.Next);
        Assert.True(wait.Worse!.Verdict > Verdict.Holds);
        Assert.True(wait.Worse.From < wait.Next!.Value);

        // Put off to that day it still holds, and a day more it does not.
        Assert.Equal(Verdict.Holds, Moved(0.35, 164, wait.Latest.Value).Nights.First(n => n.Number == wait.Worse.Number).Verdict);
        Assert.NotEqual(Verdict.Holds, Moved(0.35, 164, wait.Next.Value).Nights.First(n => n.Number == wait.Worse.Number).Verdict);
    }

    [Fact]
    public void Closed_days_are_skipped()
    {
        RefillWait open = Wait(0.35, 164, Fill(19));
        ClosedDays closed = new() { Weekly = [open.Latest!.Value.DayOfWeek] };
        RefillWait wait = Wait(0.35, 164, Fill(19) with { Closed = closed });
        Assert.True(wait.Latest is null || wait.Latest < open.Latest);
        Assert.False(wait.Latest is { } latest && closed.Has(DateOnly.FromDateTime(latest.DateTime)));
        Assert.Equal(open.Next, wait.Next);
    }

    [Fact]
    public void Refill_whose_next_open_day_is_too_late_cannot_wait()
    {
        RefillWait wait = Wait(0.2, 116, Fill(19));
        Assert.Equal(WaitKind.CannotWait, wait.Kind);
        Assert.Null(wait.Latest);
        Assert.Equal(Start.AddHours(43), wait.Next);
    }

    [Fact]
    public void Refill_on_the_last_day_of_a_stop_has_no_later_day()
    {
        TripStop[] stops = [Stop("a", 0, 30), Stop("b", 34, 116)];
        RefillWait wait = TripRun.Of(Of(Pair(0.35), stops, Fill(19))).Refills[0].Wait;
        Assert.Equal(WaitKind.NoLaterDay, wait.Kind);
        Assert.NotNull(wait.Worse);
    }

    [Fact]
    public void Several_workers_give_the_same_waits_as_one()
    {
        Scenario scenario = Of(Pair(0.35), [Stop("a", 0, 188)], Fill(19), Fill(67, 1));
        TripReport one = TripRun.Of(scenario, workers: 1), many = TripRun.Of(scenario, workers: 4);
        Assert.Equal(one.Refills.Select(r => (r.Wait.Kind, r.Wait.Latest, r.Wait.Next)), many.Refills.Select(r => (r.Wait.Kind, r.Wait.Latest, r.Wait.Next)));
    }

    [Fact]
    public void Cancelled_trip_stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => TripRun.Of(Of([Stop("a", 0, 44)], Fill(19)), cancel: source.Token));
    }

    private static RunReport Moved(double left, double to_h, DateTimeOffset at)
        => NightRun.Of(Of(Pair(left), [Stop("a", 0, to_h)], Fill((at - Start).TotalHours)));
}
