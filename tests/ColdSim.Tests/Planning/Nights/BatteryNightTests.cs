using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Furnace;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Nights;

public class BatteryNightTests
{
    private static Rig With(double capacity_Ah, double left) => Heated() with
    {
        Cylinders = [Bottle("40 lb", left)],
        Power = new PowerSpecification { Battery = BatterySpecification.Of(BatteryChemistry.Agm, capacity_Ah * NominalVoltage.AmpereHour_J) },
    };

    private static NightReport Night(double capacity_Ah, double left, double air_C = -12) => ColdSim.Tests.Model.Rigs.Nights(With(capacity_Ah, left), Steady(air_C), 1).Nights[0];

    [Fact]
    public void Night_with_enough_gas_and_charge_holds()
    {
        NightReport night = Night(400, 0.9);
        Assert.Equal(Verdict.Holds, night.Verdict);
        Assert.Null(night.Power!.FlatAt);
    }

    [Fact]
    public void A_flat_battery_names_the_verdict_of_its_night()
    {
        NightReport night = Night(20, 0.9);
        Assert.Equal(Verdict.BatteryFlat, night.Verdict);
        Assert.Equal(night.Power!.FlatAt, night.FirstFailure);
        Assert.NotNull(night.Power.FlatAt);
        Assert.InRange(night.Power.GasLeftAtFlat!.Value.Kilograms, night.LeftAtEnd.Kilograms, night.LeftAtEnd.Kilograms + night.GasUsed.Kilograms);
        Assert.True(night.InsideLow < UnitsNet.Temperature.FromDegreesCelsius(5));
        Assert.Null(night.FirstShort);
    }

    [Fact]
    public void Gas_that_is_gone_before_the_battery_names_the_verdict()
    {
        NightReport night = Night(400, 0.05);
        Assert.Equal(Verdict.GasGone, night.Verdict);
    }

    [Fact]
    public void Night_without_a_battery_has_no_power_report()
    {
        RunReport run = ColdSim.Tests.Model.Rigs.Nights(Heated(), Steady(-12), 1);
        Assert.Null(run.Nights[0].Power);
        Assert.Equal(0, run.Ledger.Electric_J);
    }

    [Fact]
    public void Energy_of_the_furnace_fan_follows_its_running_time()
    {
        NightReport night = Night(400, 0.9);
        double fan_W = FurnaceSpecification.UsualFanCurrent_A(20_000 * Btu_h) * NominalVoltage.Bus_V;
        // Between the flame's own time and that with a whole purge before and after every start.
        Assert.InRange(night.Power!.Drawn[PowerSpecification.FanPlace].Energy.Joules, fan_W * night.BurnerTime.Seconds,
            fan_W * (night.BurnerTime.Seconds + (night.BurnerStarts + 1) * 107));
    }
}
