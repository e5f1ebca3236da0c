using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using Xunit;

namespace ColdSim.Tests.Planning.Sensitivity;

/// <summary>How much an answer hangs on gas below the regulator's minimum inlet, on the demo that runs short at a few kilopascals.</summary>
public class MinimumInletTests
{
    private static readonly Lazy<Scenario> Demo = new(() => ScenarioReader.Read(Path.Combine(Root(), "scenarios", "cold-snap.toml")).Scenario!);

    private static readonly Lazy<RunReport> Run = new(() => NightRun.Of(Demo.Value));

    private static string Root([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", ".."));

    private static Scenario With(double minimum_Pa, bool shuts)
        => Demo.Value with { Rig = Demo.Value.Rig with { Regulator = Demo.Value.Rig.Regulator with { MinimumInlet_Pa = minimum_Pa, ShutsBelowMinimum = shuts } } };

    [Fact]
    public void What_hangs_on_it_is_what_the_run_with_a_regulator_that_shuts_comes_to()
    {
        MinimumInletEffect effect = MinimumInletEffect.Of(Run.Value)!;
        RunReport shutting = NightRun.Of(With(Demo.Value.Rig.MinimumInlet_Pa, shuts: true));
        Assert.Equal(shutting.Summary.FirstFailure, effect.FailsAt);
        Assert.False(effect.Holds);
        Assert.True(effect.FailsAt < Run.Value.Summary.FirstFailure);
        Assert.Equal(Demo.Value.Rig.MinimumInlet_Pa, effect.MinimumInlet_Pa);
    }

    [Fact]
    public void A_run_above_its_minimum_inlet_hangs_on_nothing_below()
    {
        RunReport mild = NightRun.Of(With(1000, shuts: false) with { Nights = 1 });
        Assert.Equal(0, mild.Nights[0].BelowMinimumInlet.Seconds);
        Assert.Null(MinimumInletEffect.Of(mild));
    }

    [Fact]
    public void Time_below_the_minimum_inlet_is_counted_while_gas_flows()
    {
        double[] below_s = [.. Run.Value.Nights.Select(n => n.BelowMinimumInlet.Seconds)];
        Assert.Equal(0, below_s[0]);
        Assert.InRange(below_s[1], 1800, Run.Value.Nights[1].To.Subtract(Run.Value.Nights[1].From).TotalSeconds);
        Assert.True(NightRun.Of(With(70_000, shuts: false)).Nights[1].BelowMinimumInlet.Seconds > below_s[1]);
    }

    [Fact]
    public void The_limit_with_a_regulator_that_shuts_is_the_edge_of_its_own_runs()
    {
        LimitChart chart = LimitChart.Of(Demo.Value, LimitAxis.Fahrenheit, [0.65]);
        LimitColumn own = chart.Columns.Single(c => c.RigVariant.AsItIs);
        LimitCell cell = own.NowShutting!;
        Scenario At(int step) => chart.Night.Over(With(Demo.Value.Rig.MinimumInlet_Pa, shuts: true).Rig with { Cylinders = own.RigVariant.AsItIsNow().Cylinders }, chart.Axis.Low_K(step));
        Assert.True(cell.Low_K > own.Now.Low_K);
        Assert.Equal(Verdict.Holds, NightRun.Of(At(cell.Step)).Summary.Verdict);
        Assert.NotEqual(Verdict.Holds, NightRun.Of(At(cell.Step + 1)).Summary.Verdict);
        Assert.All(chart.Columns.Where(c => !c.RigVariant.AsItIs), c => Assert.Null(c.NowShutting));
    }
}
