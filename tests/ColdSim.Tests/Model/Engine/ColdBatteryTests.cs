using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class ColdBatteryTests
{
    private static Trace Night(BatteryChemistry chemistry, double charge, WeatherSeries weather, double hours, double sun_W = 0)
    {
        PowerSpecification power = new()
        {
            Battery = BatterySpecification.Of(chemistry, 100 * NominalVoltage.AmpereHour_J) with { Inside = false, InitialCharge_frac = charge, UsableDepth_frac = 1 },
            Loads = [new ElectricLoad { Name = "lamp", Power_W = 6 }],
            Panels = sun_W > 0 ? [new SolarPanelSpecification { Rated_W = sun_W }] : [],
        };
        return Run(new Rig { Cylinders = [BigTank()], Power = power }, weather, hours);
    }

    private static WeatherSeries Dip(double low_C) => Changing(h => h is >= 4 and <= 8 ? low_C : -5, 24);

    [Fact]
    public void Lithium_gives_nothing_below_its_limit_and_again_above_it()
    {
        Trace run = Night(BatteryChemistry.LithiumIronPhosphate, 1, Dip(-25), 20);
        double gone_s = run.First_s(EventKind.VoltageGone), back_s = run.First_s(EventKind.VoltageBack);
        Assert.Equal(gone_s, run.First_s(EventKind.BatteryCutOut));

        // From -5 at three to -25 at four it passes -20 at 3 h 45 min; back from -25 at eight to -18 at 8 h 21 min.
        Assert.Equal(3.75 * 3600, gone_s, 0.1);
        Assert.Equal(8.35 * 3600, back_s, 0.1);
        Assert.All(run.Steps.Where(s => s.From.Time_s >= gone_s && s.To.Time_s <= back_s), s => Assert.Equal(s.Power!.ChargeBefore_frac, s.Power.Charge_frac));
    }

    [Fact]
    public void Lead_acid_gives_below_lithiums_limit()
        => Assert.False(Night(BatteryChemistry.Agm, 1, Dip(-25), 20).Has(EventKind.VoltageGone));

    [Theory]
    [InlineData(0.3, true)]
    [InlineData(0.95, false)]
    public void A_lead_acid_battery_freezes_if_it_is_discharged(double charge, bool freezes)
    {
        Trace run = Night(BatteryChemistry.Flooded, charge, Dip(-22), 20);
        Assert.Equal(freezes, run.Has(EventKind.BatteryFreezes));
        Assert.Equal(freezes, run.Has(EventKind.BatteryThawed));
        if (!freezes) return;
        SimulationEvent at = run.Events.Single(e => e.Kind == EventKind.BatteryFreezes);
        StepRecord frozen = run.Steps.First(s => s.From.Time_s >= at.Time_s);
        Assert.Equal(frozen.Power!.ChargeBefore_frac, at.Value, 1e-12);
        Assert.True(frozen.Power.IsFrozen && frozen.From.Outside_K < LeadAcidFreezing.AtCharge_K(at.Value));
        Assert.All(run.Steps.Where(s => s.Power!.IsFrozen), s => Assert.Equal(s.Power!.ChargeBefore_frac, s.Power.Charge_frac));
    }

    [Fact]
    public void Lithium_never_freezes() => Assert.False(Night(BatteryChemistry.LithiumIronPhosphate, 0.05, Dip(-40), 20).Has(EventKind.BatteryFreezes));

    [Fact]
    public void A_frozen_battery_takes_no_charge()
    {
        Trace run = Night(BatteryChemistry.Flooded, 0.1, Changing(_ => -30, 24, sun_W_m2: 400), 10, sun_W: 200);
        Assert.All(run.Steps, s => Assert.Equal(0.1, s.Power!.Charge_frac, 1e-12));
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-9);
    }
}
