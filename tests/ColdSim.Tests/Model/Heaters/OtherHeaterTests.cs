using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;
using ColdSim.Model.Heaters;
using ColdSim.Model.Site;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Heaters;

public class OtherHeaterTests
{
    private static Rig With(OtherHeater heater, bool hookup = true, double breaker_W = 3600) => new()
    {
        Site = new SiteSpecification { Hookup = hookup, Breaker_W = breaker_W },
        Cylinders = [BigTank()],
        Coach = OneNode(100, inside_C: -10),
        Heaters = [heater],
    };

    private static readonly OtherHeater Electric = new() { Name = "fan heater", Output_W = 1500, Supply = HeaterSupply.ShorePower };

    private static double After_C(Rig rig, double hours = 48) => Run(rig, Steady(-10), hours).Last.Inside_K - Zero_K;

    [Fact]
    public void A_steady_heater_raises_the_coach_by_its_heat_over_the_loss() => Assert.Equal(5, After_C(With(Electric)), 0.01);

    [Fact]
    public void An_electric_heater_needs_a_hookup_and_one_with_its_own_fuel_does_not()
    {
        Assert.Equal(-10, After_C(With(Electric, hookup: false)), 1e-6);
        Assert.Equal(5, After_C(With(Electric with { Supply = HeaterSupply.OwnFuel }, hookup: false)), 0.01);
    }

    [Fact]
    public void An_electric_heater_gets_no_more_than_the_breaker_leaves()
    {
        Assert.Equal(0, After_C(With(Electric, breaker_W: 1000)), 0.01);
        StorageWaterHeater water = new() { Name = "water heater", Input_W = 3000, ElectricInput_W = 1400, Water_kg = 400, Initial_K = 283, StandingLoss_W_K = 0 };

        // The element heats 400 kg for days on end and leaves 1,000 W of 2,400.
        Assert.Equal(0, After_C(With(Electric, breaker_W: 2400) with { Appliances = [water] }, 15), 0.5);
    }

    [Fact]
    public void The_converter_takes_its_part_of_the_breaker_first()
    {
        BatterySpecification full = BatterySpecification.Of(BatteryChemistry.Agm, 100 * NominalVoltage.AmpereHour_J) with { InitialCharge_frac = 1 };
        ConverterSpecification converter = new();
        PowerSpecification power = new() { Battery = full, Converter = converter, Loads = [new ElectricLoad { Name = "fans", Power_W = 240 }] };
        double left_W = 1800 - converter.Mains_W(240);
        Assert.InRange(left_W, 1400, 1499);
        Assert.Equal(-10 + left_W / 100, After_C(With(Electric, breaker_W: 1800) with { Power = power }), 0.01);
    }

    [Fact]
    public void Heater_thermostat_keeps_the_coach_within_its_band()
    {
        Trace run = Run(With(Electric with { Thermostat = new SwitchBand(Zero_K, Zero_K + 2) }), Steady(-10), 48);
        foreach (StepRecord step in run.Steps.Where(s => s.From.Time_s > 24 * 3600)) Assert.InRange(step.To.Inside_K - Zero_K, -0.1, 2.1);
        Assert.True(run.Result.Ledger.Closes);
    }

    [Fact]
    public void Covers_lower_the_loss_in_their_hours_only()
    {
        CoachSpecification covered = OneNode(100) with { Covers_W_K = 15, CoverHours = [new ClockWindow(20 * 3600, 7 * 3600)] };
        CoachBody body = new(covered);
        Assert.Equal(85, body.At(Steady(-10).First(), 23 * 3600).Loss_W_K(27), 1e-9);
        Assert.Equal(100, body.At(Steady(-10).First(), 12 * 3600).Loss_W_K(27), 1e-9);
        Trace run = Run(With(Electric) with { Coach = OneNode(100, 0.2e6, inside_C: 5) with { Covers_W_K = 25, CoverHours = covered.CoverHours } }, Steady(-10), 15);

        // Four to eight in the evening uncovered: 15 K above outside; then 20 K.
        Assert.Equal(5, run.At(4 * 3600).Inside_K - Zero_K, 0.05);
        Assert.Equal(10, run.At(14.5 * 3600).Inside_K - Zero_K, 0.05);
    }
}
