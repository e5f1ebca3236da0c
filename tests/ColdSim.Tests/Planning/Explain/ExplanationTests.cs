using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.Planning.Explain;

public class ExplanationTests
{
    public static TheoryData<Limit> Limits => [.. Enum.GetValues<Limit>()];

    [Theory]
    [MemberData(nameof(Limits))]
    [Trait("Category", "Slow")]
    public void Six_rigs_have_six_limits(Limit limit)
    {
        Explanation explanation = Explained.Of(limit);
        Assert.Equal(limit, explanation.Limit!.Binds);
        Assert.Empty(explanation.Limit.Ties);
        Assert.Equal(0.1, explanation.Limit.Part_frac);
    }

    // The claim without the code that made it: each limit eased by a tenth, run again here, and the latest first shortage looked for.
    [Theory]
    [MemberData(nameof(Limits))]
    public void The_limit_named_is_the_one_whose_easing_delays_the_shortage_most(Limit limit)
    {
        Scenario scenario = SixRigs.Of(limit);
        DateTimeOffset Latest(Relaxation relaxation) => relaxation.Eased(scenario, 0.1).Select(e => NightRun.Of(e))
            .Select(r => r.Summary.Verdict == Verdict.Holds ? DateTimeOffset.MaxValue : r.Summary.FirstShort!.Value)
            .DefaultIfEmpty(DateTimeOffset.MinValue).Max();
        Assert.Equal(limit, Relaxation.All.MaxBy(Latest)!.Limit);
    }

    [Fact]
    public void A_battery_that_fails_first_has_electrical_actions_and_no_limit_of_the_gas()
    {
        Assert.Null(Explained.Flat.Limit);
        ActionKind[] tried = [.. Explained.Flat.Plan!.Singles.Select(a => a.Changes[0].Kind)];
        Assert.Contains(ActionKind.Battery, tried);
        Assert.DoesNotContain(ActionKind.TopUp, tried);
        Assert.DoesNotContain(Explained.Demo.Plan!.Singles, a => a.Changes[0].Kind == ActionKind.Battery);
    }

    [Fact]
    public void A_flat_battery_explained_in_us_units() => Snapshot.Match(Text(Explained.Flat));

    [Fact]
    public void The_outcome_does_not_depend_on_how_many_run_at_once()
    {
        Scenario scenario = SixRigs.Of(Limit.HeatIntoLiquid);
        Explanation one = Explanation.Of(scenario, AmountGrid.Us, workers: 1), again = Explained.Of(Limit.HeatIntoLiquid);
        Assert.Equal(one.Limit!.Eased, again.Limit!.Eased);
        Assert.Equal(one.Chain, again.Chain);
        Assert.Equal(
            one.Plan!.Singles.Select(a => (a.Changes[0], a.Holds, a.FailsAt, a.LeftAtEnd_kg)), again.Plan!.Singles.Select(a => (a.Changes[0], a.Holds, a.FailsAt, a.LeftAtEnd_kg)));
        Assert.Equal(Text(one), Text(again));
    }

    [Fact]
    public void The_chain_adds_up_to_the_warmth_that_liquid_and_shell_gave()
    {
        ChainOfCause chain = Explained.Demo.Chain;
        CylinderBody body = new(Explained.Demo.Report.Scenario.Rig.Cylinders[0]);
        CylinderContents contents = body.Contents(chain.Left_kg + 0.5 * chain.Given_kg, 0.5 * (chain.LiquidFrom_K + chain.LiquidTo_K));
        double given_J = (contents.HeatCapacity_J_K + body.ShellHeat_J_K) * (chain.LiquidFrom_K - chain.LiquidTo_K);
        double spent_J = chain.Evaporation_J - chain.Surroundings_J - chain.Sun_J - chain.Blanket_J;
        Assert.Equal(1, spent_J / given_J, 0.03);
        Assert.True(chain.Asked_W > chain.CanGive_W);
        Assert.Equal(0, chain.Blanket_J);
    }

    [Fact]
    public void Explanation_without_a_shortage_gives_the_margin()
    {
        Explanation explanation = Explanation.Of(Rigs.Scenario(Rigs.Heated(), Rigs.Steady(5), nights: 1), AmountGrid.Us);
        Assert.Null(explanation.Shortage);
        Assert.Empty(explanation.Plan!.Singles);
        Assert.Matches("^Nothing is short: at its tightest, .*, the regulator can pass .* and the burners need .*\\.$", ExplainText.Sentence(explanation, UnitStyle.Us));
    }

    [Fact]
    public void Explanation_of_an_instant_describes_that_instant_only()
    {
        Scenario scenario = SixRigs.Of(Limit.HeatIntoLiquid);
        Explanation explanation = Explanation.Of(scenario, AmountGrid.Us, scenario.Start.AddHours(2));
        Assert.Equal(scenario.Start.AddHours(2), explanation.Chain.To);
        Assert.Null(explanation.Limit);
        Assert.Throws<TimeOutsideRunException>(() => Explanation.Of(scenario, AmountGrid.Us, scenario.Start.AddDays(9)));
    }

    [Fact]
    public void Cancelled_explanation_stops()
    {
        using CancellationTokenSource source = new();
        int runs = 0;
        Assert.ThrowsAny<OperationCanceledException>(() => Explanation.Of(
            SixRigs.Of(Limit.Appliances),
            AmountGrid.Us,
            finished: () =>
            {
                if (Interlocked.Increment(ref runs) == 3) source.Cancel();
            },
            cancel: source.Token));
    }

    [Fact]
    public void The_demo_explained_in_us_units() => Snapshot.Match(Text(Explained.Demo));

    [Fact]
    public void A_regulator_explained_in_si_units() => Snapshot.Match(Text(Explained.Of(Limit.Regulator), UnitStyle.Si));

    [Fact]
    public void Nothing_is_wider_than_eighty_columns()
        => Assert.All(Enum.GetValues<Limit>().Select(l => Text(Explained.Of(l))).SelectMany(t => t.Split('\n')), l => Assert.InRange(l.Length, 0, 80));

    [Fact]
    public void A_regulator_that_never_passes_all_appliances_is_no_fault()
        => Assert.Null(NightRun.Of(SixRigs.Of(Limit.Regulator)).Nights[0].AllowedLiquid);

    [Fact]
    public void The_what_if_factors_do_what_they_say_and_nothing_when_left_alone()
    {
        WeatherSample weather = new(263, 3, 200, 250, 90_000, 0, 0);
        HeatCoupling At(Func<CylinderSurroundings, CylinderSurroundings> change)
        {
            CylinderSpecification cylinder = Rigs.Bottle("40 lb", 0.3);
            return HeatCoupling.At(new CylinderBody(cylinder with { Surroundings = change(cylinder.Surroundings) }), weather, 5, 255, default);
        }

        double asItIs_W_K = At(s => s).Conductance_W_K;
        Assert.Equal(1.1 * asItIs_W_K, At(s => s with { HeatGain_factor = 1.1 }).Conductance_W_K);
        Assert.True(At(s => s with { WettingExtra_m3 = 0.003 }).Conductance_W_K > asItIs_W_K);
        Assert.Equal(asItIs_W_K, At(s => s with { HeatGain_factor = 1, WettingLiquid_factor = 1, WettingExtra_m3 = 0 }).Conductance_W_K);
        WeatherSeries series = Rigs.Steady(-5);
        int row = 0;
        Assert.Equal(0.9 * series.At(0, ref row).Pressure_Pa, series.UnderPressure(0.9).At(0, ref row).Pressure_Pa);
    }

    [Fact]
    public void Every_similar_fault_has_signs_and_a_source()
        => Assert.All(SimilarFaults.All, l => Assert.False(string.IsNullOrEmpty(l.Signs) || string.IsNullOrEmpty(l.Source)));

    [Fact]
    public void A_blend_explained_in_us_units() => Snapshot.Match(Text(Explained.Blend));

    [Fact]
    public void Liquid_of_a_blend_is_reported_at_the_instant_and_the_rest_with_its_night()
    {
        RunReport run = Explained.Blend.Report;
        ChainOfCause early = ChainOfCause.Before(run, run.Scenario.Start.AddHours(1)), late = Explained.Blend.Chain;
        Assert.Equal(1, late.Liquid!.Value.Sum, 9);
        Assert.True(early.Liquid!.Value.Propane > late.Liquid.Value.Propane + 0.2);
        Assert.Same(run.Nights[0].Blends[0], early.Blend);
        Assert.Same(run.Nights[Explained.Blend.Night - 1].Blends[0], late.Blend);
        Assert.Same(run.Nights[^1].Blends[0], ChainOfCause.Before(run, run.Nights[^1].To).Blend);
        Assert.Null(Explained.Demo.Chain.Liquid);
        Assert.Null(Explained.Demo.Chain.Blend);
    }

    private static string Text(Explanation explanation, UnitStyle? units = null)
    {
        using StringWriter text = new() { NewLine = "\n" };
        RunText.Write(text, ExplainText.Sections(explanation, units ?? UnitStyle.Us, ["A caution."]), bold: false);
        return text.ToString();
    }
}
