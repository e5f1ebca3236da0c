using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Furnace;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Nights;

public class FirstOutTests
{
    private static Rig With(double capacity_Ah, double left) => Heated() with
    {
        Cylinders = [Bottle("40 lb", left)],
        Power = new PowerSpecification { Battery = BatterySpecification.Of(BatteryChemistry.Agm, capacity_Ah * NominalVoltage.AmpereHour_J) },
    };

    private static NightReport Night(double capacity_Ah, double left, double air_C = -12) => ColdSim.Tests.Model.Rigs.Nights(With(capacity_Ah, left), Steady(air_C), 1).Nights[0];

    [Fact]
    public void A_night_with_enough_of_both_holds()
    {
        NightReport night = Night(400, 0.9);
        Assert.Equal((Verdict.Holds, FirstOut.Nothing), (night.Verdict, night.FirstOut));
        Assert.Null(night.Power!.FlatAt);
    }

    [Fact]
    public void A_flat_battery_is_never_told_as_holding()
    {
        NightReport night = Night(20, 0.9);
        Assert.Equal((Verdict.RunsFlat, FirstOut.Battery), (night.Verdict, night.FirstOut));
        Assert.NotNull(night.Power!.FlatAt);
        Assert.InRange(night.Power.GasLeftAtFlat!.Value.Kilograms, night.LeftAtEnd.Kilograms, night.LeftAtEnd.Kilograms + night.GasUsed.Kilograms);
        Assert.True(night.InsideLow < UnitsNet.Temperature.FromDegreesCelsius(5));
        Assert.Null(night.FirstShort);
    }

    [Fact]
    public void Gas_that_is_gone_before_the_battery_is_told_as_dry()
    {
        NightReport night = Night(400, 0.05);
        Assert.Equal(Verdict.RunsDry, night.Verdict);
        Assert.NotEqual(FirstOut.Battery, night.FirstOut);
    }

    [Fact]
    public void Without_a_battery_there_is_nothing_to_tell_of_it()
    {
        RunReport run = ColdSim.Tests.Model.Rigs.Nights(Heated(), Steady(-12), 1);
        Assert.Null(run.Nights[0].Power);
        Assert.Equal(0, run.Ledger.Electric_J);
    }

    [Fact]
    public void Electricity_of_a_night_is_what_its_fan_drew_by_the_clock()
    {
        NightReport night = Night(400, 0.9);
        double fan_W = FurnaceSpecification.UsualFanCurrent_A(20_000 * Btu_h) * NominalVoltage.Bus_V;
        // Between the flame's own time and that with a whole purge before and after every start.
        Assert.InRange(night.Power!.Drawn[PowerSpecification.FanPlace].Energy.Joules, fan_W * night.BurnerTime.Seconds,
            fan_W * (night.BurnerTime.Seconds + (night.BurnerStarts + 1) * 107));
    }
}
