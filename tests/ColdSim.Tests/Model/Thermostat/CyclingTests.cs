using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Thermostat;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Thermostat;

public class CyclingTests
{
    private const double Output_W = 5000;

    private static readonly double[] Loads = [0.1, 0.3, 0.5, 0.7, 0.9];

    private static Trace Cycling(double load_frac, ThermostatSpecification thermostat, double capacity_J_K, double loss_W_K = 100)
    {
        Rig rig = new() { Cylinders = [BigTank()], Coach = OneNode(loss_W_K, capacity_J_K), Thermostat = thermostat, Furnace = Prompt(Output_W) };
        return Run(rig, Steady(20 - load_frac * Output_W / loss_W_K, 40), 36);
    }

    // Calls for heat an hour, from the first whole cycle to the last.
    private static double Cycles_h(Trace run)
    {
        double[] calls_s = run.Times_s(EventKind.HeatCalled);
        return (calls_s.Length - 2) / (calls_s[^1] - calls_s[1]) * 3600;
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.7)]
    [InlineData(0.9)]
    public void A_bare_switch_on_one_node_follows_the_trade_s_cycling_law(double load_frac)
    {
        const double capacity_J_K = 0.6e6, band_K = 0.2;
        double most_h = 3600 * Output_W / (4 * capacity_J_K * band_K);
        Trace run = Cycling(load_frac, BareSwitch(20, band_K), capacity_J_K);
        double law_h = 4 * most_h * load_frac * (1 - load_frac);
        Assert.Equal(law_h, Cycles_h(run), 0.01 * law_h);
    }

    // The furnace test's fixed cycle, 3.87 minutes on and 13.3 off, is the law at five cycles an hour and the load of 0.2254.
    [Fact]
    [Outside("ASHRAE 103", Field.Furnace, FromMemory = true)]
    public void The_furnace_test_s_fixed_cycle_is_the_law_at_five_an_hour()
    {
        double load_frac = 3.87 / (3.87 + 13.3);
        Trace run = Cycling(load_frac, BareSwitch(20, 0.2), Output_W * 180 / 0.2);
        double[] on_s = run.Times_s(EventKind.HeatCalled), off_s = run.Times_s(EventKind.HeatSatisfied);
        int last = off_s.Length - 1;
        Assert.Equal(3.87, (off_s[last] - on_s.Last(t => t < off_s[last])) / 60, 0.04);
        Assert.Equal(13.3, (on_s.First(t => t > off_s[last - 1]) - off_s[last - 1]) / 60, 0.13);
    }

    [Fact]
    public void A_slow_sensor_slows_the_cycling()
    {
        double bare_h = Cycles_h(Cycling(0.4, BareSwitch(20, 0.5), 0.3e6));
        double slow_h = Cycles_h(Cycling(0.4, BareSwitch(20, 0.5) with { SensorLag_s = 180 }, 0.3e6));
        Assert.True(slow_h < 0.7 * bare_h, $"{slow_h} against {bare_h} an hour");
    }

    [Fact]
    public void Shortest_times_are_kept_whatever_the_band()
        => Gen.Select(Gen.Double[0.05, 2], Gen.Double[0, 600], Gen.Double[0, 600], Gen.Double[0.1, 0.9], Gen.OneOf(Gen.Const(0.0), Gen.Double[30, 300]))
            .Sample((band_K, run_s, off_s, load, lag_s) =>
            {
                Trace run = Cycling(load, BareSwitch(20, band_K) with { MinimumRun_s = run_s, MinimumOff_s = off_s, SensorLag_s = lag_s }, 0.2e6);
                SimulationEvent[] switches = [.. run.Events.Where(e => e.Kind is EventKind.HeatCalled or EventKind.HeatSatisfied)];
                for (int i = 1; i < switches.Length; i++)
                {
                    double least_s = switches[i].Kind == EventKind.HeatSatisfied ? run_s : off_s;
                    Assert.True(switches[i].Kind != switches[i - 1].Kind);
                    Assert.True(switches[i].Time_s - switches[i - 1].Time_s >= least_s - 1e-6);
                }
            }, iter: 20);

    [Fact]
    public void A_furnace_of_the_right_size_cycles_a_handful_of_times_an_hour_and_less_at_both_ends()
    {
        double[] rates_h = [.. Loads.Select(load =>
        {
            double output_W = 20_000 * Btu_h * 0.77;
            Rig rig = Heated() with { Cylinders = [BigTank()], Coach = TwoNodes(110) };
            return Cycles_h(Run(rig, Steady(20 - load * output_W / 110, 40), 36));
        })];
        Assert.All(rates_h, n => Assert.InRange(n, 0.5, 9));
        Assert.InRange(rates_h[2], 2, 9);
        Assert.True(rates_h[0] < rates_h[1] && rates_h[1] < rates_h[2] && rates_h[2] > rates_h[3] && rates_h[3] > rates_h[4], string.Join(" ", rates_h));
    }

    [Fact]
    public void A_setting_back_waits_for_the_house_to_cool_and_a_morning_rise_calls_at_once()
    {
        Rig rig = Heated() with { Thermostat = Holding(20, 15) };
        Trace run = Run(rig, Steady(0, 30), 20, step_s: 60);
        double night_s = 6 * 3600, morning_s = 14.5 * 3600;
        Assert.DoesNotContain(run.Times_s(EventKind.HeatCalled), t => t > night_s + 130 && t < night_s + 3600);
        Assert.Contains(run.Times_s(EventKind.HeatCalled), t => t >= morning_s - 300 && t <= morning_s + 121);
        Assert.Equal(20 + Zero_K, run.At(night_s - 60).SetPoint_K);
        Assert.Equal(15 + Zero_K, run.At(night_s + 60).SetPoint_K);
        Assert.Equal(20 + Zero_K, run.At(morning_s + 60).SetPoint_K);
    }

    [Fact]
    public void The_switch_turns_at_the_edges_of_its_band()
    {
        ThermostatControl control = new(BareSwitch(20, 1));
        control.SetClock(0);
        Assert.False(control.Update(Zero_K + 19.51, 0));
        Assert.True(control.Update(Zero_K + 19.49, 1));
        Assert.False(control.Update(Zero_K + 20.49, 2));
        Assert.True(control.Update(Zero_K + 20.51, 3));
        Assert.False(control.Calls);
    }

    [Fact]
    public void A_band_of_nothing_is_refused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => new ThermostatControl(BareSwitch(20, 0)));
}
