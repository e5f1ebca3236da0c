using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using Xunit;

namespace ColdSim.Tests;

/// <summary>The fortnight's story: fourteen nights at three stops hold on two refills, of which one can wait and the other cannot.</summary>
public class FortnightStoryTests
{
    internal static readonly Lazy<TripReport> Story = new(() =>
    {
        ReadResult read = ScenarioReader.Read(Path.Combine(Root(), "scenarios", "fortnight.toml"));
        Assert.Empty(read.Problems);
        return TripRun.Of(read.Scenario!);
    });

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    [Fact]
    public void Fourteen_nights_at_three_stops_all_hold()
    {
        Assert.Equal(RunEnd.Complete, Story.Value.Run.End);
        Assert.All(Story.Value.Nights, n => Assert.Equal(Verdict.Holds, n.Night.Verdict));
        Assert.Equal([0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 2, 2, 2, 2], Story.Value.Nights.Select(n => n.Stop));
    }

    [Fact]
    public void The_first_refill_can_wait_a_day()
    {
        RefillWait wait = Story.Value.Refills[0].Wait;
        Assert.Equal(WaitKind.CanWait, wait.Kind);
        Assert.Equal(new DateTime(2027, 1, 12, 11, 0, 0), wait.Latest!.Value.DateTime);
        Assert.Null(wait.Next);
    }

    [Fact]
    public void The_second_cannot_for_its_station_is_closed_on_Sunday_and_that_night_would_run_dry()
    {
        RefillWait wait = Story.Value.Refills[1].Wait;
        Assert.Equal(WaitKind.CannotWait, wait.Kind);
        Assert.Equal(DayOfWeek.Saturday, Story.Value.Refills[1].Refill.At.DayOfWeek);
        Assert.Equal(DayOfWeek.Monday, wait.Next!.Value.DayOfWeek);
        Assert.Equal((Verdict.GasGone, new DateTime(2027, 1, 17, 12, 0, 0)), (wait.Worse!.Verdict, wait.Worse.From.DateTime));
    }

    [Fact]
    public void The_cold_filling_by_volume_is_over_its_weight_and_the_one_by_weight_is_not()
    {
        Assert.True(Story.Value.Refills[0].Outcome!.After.IsOverWeight);
        Assert.Equal(FillingEnd.Volume, Story.Value.Refills[0].Outcome!.After.End);
        Assert.False(Story.Value.Refills[1].Outcome!.After.IsOverWeight);
        Assert.Equal(FillingEnd.Weight, Story.Value.Refills[1].Outcome!.After.End);
    }

    [Fact]
    public void A_full_30_lb_cylinder_is_too_heavy_for_one() => Assert.All(Story.Value.Refills, r => Assert.True(r.TooHeavy));

    [Fact]
    public void The_blanket_has_power_at_the_second_stop_only()
        => Assert.All(Story.Value.Nights, n => Assert.Equal(n.Stop == 1, n.Night.BlanketEnergy.WattHours > 0));

    [Fact]
    public void The_books_close_and_gas_adds_up()
    {
        RunSummary summary = Story.Value.Run.Summary;
        Assert.True(Story.Value.Run.Ledger.Closes, Story.Value.Run.Ledger.ToString());
        Assert.Equal(
            summary.LeftAtEnd.Kilograms, summary.LeftAtStart.Kilograms + Story.Value.Bought.Kilograms - summary.GasUsed.Kilograms, 1e-9);
    }
}
