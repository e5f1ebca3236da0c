using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Model;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.Planning.Actions;

public class ActionPlanTests
{
    private static readonly Lazy<(RunReport Report, ActionPlan Plan)> Paired = new(() => Planned(OfOneTank(14_000, left: 0.3, air_C: -35)));

    private static readonly Lazy<(RunReport Report, ActionPlan Plan)> Hopeless = new(() => Planned(OfOneTank(90_000, left: 0.3, air_C: -30)));

    private static readonly Lazy<(RunReport Report, ActionPlan Plan)> Easy = new(() => Planned(OfOneTank(8_000, left: 0.6, air_C: -10)));

    [Fact]
    public void Pairs_are_tried_only_where_no_single_action_holds()
    {
        Assert.DoesNotContain(Paired.Value.Plan.Singles, a => a.Holds);
        Assert.NotEmpty(Paired.Value.Plan.Pairs);
        Assert.Null(Paired.Value.Plan.LeaveBefore);
        (_, ActionPlan single) = Planned(OfOneTank(8_000, left: 0.3, air_C: 5));
        Assert.Contains(single.Singles, a => a.Holds);
        Assert.Empty(single.Pairs);
    }

    [Fact]
    public void A_pair_holds_with_its_margin_and_with_a_step_less_of_either_it_does_not()
    {
        (RunReport report, ActionPlan plan) = Paired.Value;
        CandidateAction[] candidates = [.. ActionPlan.Candidates(report, AmountGrid.Us)];
        foreach (PlannedAction pair in plan.Pairs)
        {
            RunReport again = NightRun.Of(pair.Scenario);
            Assert.Equal(Verdict.Holds, again.Summary.Verdict);
            Assert.Equal(again.Summary.LeftAtEnd.Kilograms, pair.LeftAtEnd_kg, 6);
            Scenario With(double first, double second)
                => Of(pair.Changes[1]).Build(Of(pair.Changes[0]).Build(report.Scenario, first), second);
            CandidateAction Of(ActionChange change) => candidates.Single(c => c.Kind == change.Kind);
            if (pair.Changes[0].Less is { } less)
                Assert.NotEqual(Verdict.Holds, NightRun.Of(With(less, pair.Changes[1].Amount)).Summary.Verdict);
            if (pair.Changes[1].Less is { } lower)
                Assert.NotEqual(Verdict.Holds, NightRun.Of(With(pair.Changes[0].Amount, lower)).Summary.Verdict);
        }
    }

    [Fact]
    public void Where_nothing_holds_the_least_harmful_is_named_and_by_when_to_leave()
    {
        (RunReport report, ActionPlan plan) = Hopeless.Value;
        Assert.Empty(plan.Holding);
        Assert.True(plan.LeaveBefore <= report.Summary.FirstFailure);
        Assert.Equal(0, plan.LeaveBefore!.Value.Minute);
        Assert.All(plan.Singles.Where(a => !a.StoppedByCylinder), a => Assert.True(HarmOrder.Only.Compare(plan.LeastHarmful!.Harm, a.Harm) <= 0));
        Assert.StartsWith("Do: leave or plug in before ", ActionText.Introduction(plan), StringComparison.Ordinal);
        Assert.StartsWith("Until then the least harm: ", Assert.Single(ActionText.Lines(plan, report.Scenario, UnitStyle.Us)), StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_is_by_the_last_whole_hour_of_daylight_before_the_failure()
    {
        Scenario scenario = OfOneTank(90_000, left: 0.3, air_C: -30) with { Start = Rigs.Start.AddHours(-4) };
        Assert.Equal(Rigs.Start, Departure.Before(scenario, Rigs.Start.AddHours(11)));
        Assert.Equal(Rigs.Start.AddHours(-1), Departure.Before(scenario, Rigs.Start));

        // No daylight is left before it.
        Scenario late = scenario with { Start = Rigs.Start.AddHours(4.5) };
        Assert.Equal(Rigs.Start.AddHours(7), Departure.Before(late, Rigs.Start.AddHours(7.2)));
        Assert.Equal(late.Start, Departure.Before(late, late.Start.AddMinutes(10)));
    }

    [Fact]
    public void A_run_that_holds_says_how_much_colder_or_with_how_much_less_it_still_would()
    {
        (RunReport report, ActionPlan plan) = Easy.Value;
        SpareMargin spare = plan.Spare!;
        double degree_K = AmountGrid.Us.WeatherDegree_K, pound_kg = AmountGrid.Us.Mass_kg;
        Assert.True(Colder(spare.Colder_K!.Value));
        Assert.False(Colder(spare.Colder_K.Value + degree_K));
        Assert.True(Less(spare.Less_kg!.Value));
        Assert.False(Less(spare.Less_kg.Value + pound_kg));
        Assert.Matches("^It would still hold \\d+ °F colder, or with \\d+ lb less gas\\.$", ActionText.Spare(plan, UnitStyle.Us));
        Assert.Empty(plan.Singles);
        Assert.Equal("", ActionText.Introduction(plan));

        bool Colder(double by_K) => Holds(InputErrors.InWeather(report.Scenario, -by_K, 1));
        bool Less(double by_kg) => Holds(report.Scenario with
        {
            Rig = report.Scenario.Rig with { Cylinders = [report.Scenario.Rig.Cylinders[0] with { Contents_kg = report.Scenario.Rig.Cylinders[0].Contents_kg - by_kg }] },
        });
    }

    [Fact]
    public void What_is_on_board_comes_before_what_is_bought_and_the_least_intrusive_first()
    {
        Rig rig = Rigs.Heated(30_000, 170) with { Cylinders = [Rigs.Bottle("20 lb", 0.25), Rigs.Bottle("20 lb", 0.25)], Appliances = [Rigs.Draw(3_000)] };
        (_, ActionPlan plan) = Planned(Rigs.Scenario(rig, Rigs.Steady(-25), nights: 1));
        ActionKind[] kinds = [.. plan.Singles.Select(a => a.Changes[0].Kind)];
        Assert.Equal(kinds.Order(), kinds);
        bool[] onBoard = [.. plan.Singles.Select(a => a.IsOnBoard)];
        Assert.Equal(onBoard.OrderByDescending(b => b), onBoard);
        Assert.Contains(true, onBoard);
        Assert.Contains(false, onBoard);
    }

    private static bool Holds(Scenario scenario) => NightRun.Of(scenario).Summary.Verdict == Verdict.Holds;

    private static (RunReport Report, ActionPlan Plan) Planned(Scenario scenario)
    {
        RunReport report = NightRun.Of(scenario);
        return (report, ActionPlan.Of(report, AmountGrid.Us));
    }

    // A frame tank is built in: no other size and no second one.
    private static Scenario OfOneTank(double input_Btu_h, double left, double air_C) => Rigs.Scenario(
        new Rig { Cylinders = [Rigs.Bottle("5.9 gal", left)], Appliances = [Rigs.Draw(input_Btu_h)] }, Rigs.Steady(air_C), nights: 1);
}
