using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Actions;

/// <summary>What is proposed for every demo is run again here, in full and from the scenario that it makes.</summary>
[Trait("Category", "Slow")]
public class DemoActionsTests
{
    public static TheoryData<string> Demos => [.. Directory.GetFiles(DocPage.Scenarios, "*.toml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void An_action_holds_with_its_margin_and_a_step_less_of_it_does_not(string demo)
    {
        RunReport report = NightRun.Of(ScenarioReader.Read(Path.Combine(DocPage.Scenarios, demo)).Scenario!);
        foreach (AmountGrid grid in (AmountGrid[])[AmountGrid.Us, AmountGrid.Metric])
        {
            ActionPlan plan = ActionPlan.Of(report, grid);
            CandidateAction[] candidates = [.. ActionPlan.Candidates(report, grid)];
            Assert.Equal(report.Summary.Verdict == Verdict.Holds, plan.Spare is not null);
            foreach (PlannedAction action in plan.Singles)
            {
                RunReport again = NightRun.Of(action.Scenario);
                ActionChange change = Assert.Single(action.Changes);
                Assert.True(Holds(again) == action.Holds, $"{demo}: {change}");
                Assert.Equal(again.Nights[^1].LeftAtEnd.Kilograms, action.LeftAtEnd_kg, 6);
                if (again.Summary.InsideLow is { } low) Assert.Equal(low.Kelvins, action.InsideLow_K, 6);
                Assert.Equal(again.Summary.FirstFailure, action.FailsAt);
                if (!action.Holds || change.Less is not { } less) continue;
                CandidateAction candidate = candidates.Single(c => c.Kind == change.Kind && c.Amounts.Contains(change.Amount) && c.Change(0).Now == change.Now);
                Assert.False(Holds(NightRun.Of(candidate.Build(report.Scenario, less))), $"{demo}: {change} less a step");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_line_of_an_action_is_in_one_system_of_units(string demo)
    {
        RunReport report = NightRun.Of(ScenarioReader.Read(Path.Combine(DocPage.Scenarios, demo)).Scenario!);
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            ActionPlan plan = ActionPlan.Of(report, units.Grid);
            Assert.All(ActionText.Lines(plan, report.Scenario, units).Append(ActionText.Spare(plan, units)), l => Assert.DoesNotContain(units.IsUs ? "°C" : "°F", l));
        }
    }

    private static bool Holds(RunReport report)
        => report.Summary.Verdict == Verdict.Holds && report.End is (RunEnd.Complete or RunEnd.WeatherEnded) && report.Ledger.Closes;
}
