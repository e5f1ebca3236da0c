using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Electrical;
using ColdSim.Model.Furnace;
using ColdSim.Model.Nodes;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Furnace;

/// <summary>What of a furnace's heat and of its fan's reaches the coach, in the end state of one that never stops.</summary>
public class FurnaceHeatTests
{
    private const double Output_W = 3000, Fan_A = 20, Fan_W = 240, Loss_W_K = 150, Outside_C = -10;

    // Too small ever to satisfy its thermostat: inside ends where heat and loss are equal.
    private static Rig Small(double fan_A = 0, double ductLoss_frac = 0) => new()
    {
        Cylinders = [BigTank()],
        Coach = OneNode(Loss_W_K, inside_C: 10),
        Thermostat = Holding(30),
        Furnace = Prompt(Output_W) with { FanCurrent_A = fan_A, DuctLoss_frac = ductLoss_frac },
    };

    private static double Ends_C(Rig rig)
    {
        Trace run = Run(rig, Steady(Outside_C), 24);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-9);
        return run.Last.Inside_K - Zero_K;
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_fan_warms_the_coach_by_its_power_while_it_runs_with_or_without_a_battery(bool battery)
    {
        PowerSpecification? power = battery
            ? new() { Battery = BatterySpecification.Of(BatteryChemistry.LithiumIronPhosphate, 1000 * NominalVoltage.AmpereHour_J) } : null;
        Assert.Equal(Outside_C + (Output_W + Fan_W) / Loss_W_K, Ends_C(Small(Fan_A) with { Power = power }), 0.01);
    }

    [Fact]
    public void A_fan_at_rest_warms_nothing()
        => Assert.Equal(
            Ends_C(Small() with { Thermostat = Holding(-40) }), Ends_C(Small(Fan_A) with { Thermostat = Holding(-40) }), 1e-6);

    [Fact]
    public void What_ducts_lose_outside_does_not_warm_the_coach()
        => Assert.Equal(Outside_C + 0.8 * (Output_W + Fan_W) / Loss_W_K, Ends_C(Small(Fan_A, ductLoss_frac: 0.2)), 0.01);

    [Fact]
    public void What_ducts_bring_to_a_bay_is_a_part_of_furnace_and_fan()
    {
        ThermalNode bay = new() { Name = "belly", Capacity_J_K = 20e3, Outside_W_K = 10, Duct_frac = 0.1 };
        Trace run = Run(Small(Fan_A) with { Water = [bay] }, Steady(Outside_C), 24);
        Assert.Equal(Outside_C + 0.1 * (Output_W + Fan_W) / 10, run.Steps[^1].Node_K[0] - Zero_K, 0.01);
        Assert.Equal(Outside_C + 0.9 * (Output_W + Fan_W) / Loss_W_K, run.Last.Inside_K - Zero_K, 0.01);
    }

    [Fact]
    public void A_fan_after_the_flame_warms_the_coach_to_its_end()
    {
        Rig rig = Small(Fan_A) with { Thermostat = Holding(12), Coach = OneNode(Loss_W_K, inside_C: 20), Furnace = Plated() with { FanCurrent_A = Fan_A } };
        Trace run = Run(rig, Steady(Outside_C), 6);
        double off_s = run.First_s(ColdSim.Model.Engine.EventKind.BurnerOff), stops_s = off_s + 90;
        double off_C = run.Steps.First(s => s.To.Time_s >= off_s).To.Inside_K - Zero_K;

        // Its end is not landed on, and the step that goes over it ends as warm as one node by its closed form.
        ColdSim.Model.Engine.StepRecord over = run.Steps.First(s => s.To.Time_s > stops_s);
        Assert.True(over.From.Time_s < stops_s);
        double ThenLost(double since_s) => Math.Exp(-(over.To.Time_s - since_s) * Loss_W_K / 0.6e6);
        double expected_C = Outside_C + (off_C - Outside_C) * ThenLost(off_s) + Fan_W / Loss_W_K * (ThenLost(stops_s) - ThenLost(off_s));
        Assert.Equal(expected_C, over.To.Inside_K - Zero_K, 2e-5);
    }
}
