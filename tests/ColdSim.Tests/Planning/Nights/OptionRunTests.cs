using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.Planning.Nights;

/// <summary>Options whose first legs are the base's, run with the base, beside the same options run alone.</summary>
public class OptionRunTests
{
    private const int Members = 4;
    private const double Part = 0.5;

    private static readonly ReadResult Fortnight = ScenarioReader.Read(Shell.Demo("fortnight.toml"));

    [Theory]
    [InlineData("no hookup at Kettle Siding", 3)] // two legs before it and the road to it
    [InlineData("50 °F at night", 0)]
    [InlineData("second refill by volume", 4)]
    public void An_option_has_the_legs_before_its_first_change_in_common_with_the_base(string name, int legs)
        => Assert.Equal(legs, Fortnight.Options.Single(o => o.Name == name).SharedLegs(Fortnight.Scenario!));

    [Fact]
    public void What_is_paid_and_when_a_station_is_closed_parts_no_legs()
    {
        Scenario scenario = Fortnight.Scenario!;
        IReadOnlyList<Refill> refills = [.. scenario.Trip!.Refills.Select(r => r with { Price = null, Closed = ClosedDays.None, Station = "another" })];
        ComparedOption cheaper = Option(scenario, trip => trip with { Refills = refills });
        Assert.Equal(scenario.Legs.Count, cheaper.SharedLegs(scenario));
        ComparedOption later = Option(scenario, trip => trip with { Refills = [refills[0] with { At = refills[0].At.AddMinutes(1) }, refills[1]] });
        Assert.Equal(0, later.SharedLegs(scenario));
    }

    [Fact]
    public void Options_run_with_the_base_give_what_they_give_alone()
    {
        ForecastMembers own = new(Poorer(Fortnight.Scenario!), 7);
        ForecastMembers[] others = [.. Fortnight.Options.Select(o => new ForecastMembers(Poorer(o.Scenario), 7))];
        double[] drawn = new double[Enum.GetValues<Uncertainty>().Length];
        List<bool> held = [];
        for (int i = 0; i < Members; i++)
        {
            OptionRun[] runs = [.. others.Select((m, o) => new OptionRun(m.Of(i, drawn), Fortnight.Options[o].SharedLegs(Fortnight.Scenario!), default))];
            LeanRun with = NightRun.Lean(own.Of(i, drawn), UnwatchedRun.Only, runs, default);
            Assert.Equal(NightRun.Lean(own.Of(i, drawn), UnwatchedRun.Only).Nights, with.Nights);
            for (int o = 0; o < others.Length; o++)
            {
                using OptionRun run = runs[o];
                LeanRun? along = run.Finish(), alone = NightRun.LeanWhileItHolds(others[o].Of(i, drawn));
                Assert.Equal(alone?.Nights, along?.Nights);
                Assert.Equal(alone?.Ledger, along?.Ledger);
                Assert.Equal(alone?.End, along?.End);
                held.Add(along is not null);
            }
        }

        Assert.Contains(true, held);
        Assert.Contains(false, held);
    }

    [Fact]
    public void An_option_ends_where_its_base_ends_within_the_legs_in_common()
    {
        Scenario full = Rigs.Scenario(
            new Rig { Cylinders = [(Rigs.Bottle("20 lb", 1.17) with { InitialTemperature_K = 275 }).Fixed(15)] }, Rigs.Steady(45), 2);
        using OptionRun option = new(full, 1, default);
        LeanRun run = NightRun.Lean(full, UnwatchedRun.Only, [option], default);
        Assert.Equal(RunEnd.LiquidFull, run.End);
        LeanRun? same = option.Finish();
        Assert.Equal(run.End, same?.End);
        Assert.Equal(run.Nights, same?.Nights);
    }

    [Fact]
    public void A_caller_who_cancels_is_not_taken_for_a_failure()
    {
        using CancellationTokenSource cancelled = new();
        using OptionRun option = new(Fortnight.Scenario!, 1, cancelled.Token);
        cancelled.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(option.Finish);
    }

    // With so little gas at the start some of the options hold, in some of the members.
    private static Scenario Poorer(Scenario scenario)
        => scenario with { Rig = scenario.Rig with { Cylinders = [.. scenario.Rig.Cylinders.Select(c => c with { Contents_kg = Part * c.Contents_kg })] } };

    private static ComparedOption Option(Scenario scenario, Func<Trip, Trip> change)
    {
        Trip trip = change(scenario.Trip!);
        return new ComparedOption("made up", scenario with { Trip = trip, Legs = ColdSim.Planning.Trips.TripLegs.Of(trip, scenario.Rig.Cylinders) }) { ChangesTripOnly = true };
    }
}
