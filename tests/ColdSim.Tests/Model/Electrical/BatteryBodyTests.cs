using ColdSim.Model.Electrical;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Electrical;

public class BatteryBodyTests
{
    private const double Zero_K = ColdSim.Physics.Units.ConversionFactors.ZeroCelsius_K;
    private const double Hundred_J = 100 * NominalVoltage.AmpereHour_J;

    private static BatteryBody Bank(BatteryChemistry chemistry) => new(BatterySpecification.Of(chemistry, Hundred_J));

    [Theory]
    [InlineData(-80, 0)]
    [InlineData(-30, 0.45)]
    [InlineData(-15, 0.65)]
    [InlineData(-7.5, 0.75)]
    [InlineData(0, 0.85)]
    [InlineData(12.5, 0.925)]
    [InlineData(25, 1.00)]
    [InlineData(32.5, 1.02)]
    [InlineData(40, 1.04)]
    [InlineData(50, 1.04)]
    public void Capacity_by_temperature_is_that_of_the_advisor_model_at_its_points_and_in_a_straight_line_between(double t_C, double part)
        => Assert.Equal(part, BatteryBody.ColdCapacity_frac(t_C + Zero_K), 1e-12);

    [Theory]
    [InlineData(BatteryChemistry.Flooded, 0.5)]
    [InlineData(BatteryChemistry.Agm, 0.5)]
    [InlineData(BatteryChemistry.Gel, 0.5)]
    public void Half_of_a_lead_acid_bank_is_used(BatteryChemistry chemistry, double part)
        => Assert.Equal(part * Hundred_J, Bank(chemistry).Usable_J(Hundred_J, 25 + Zero_K), 1e-6);

    [Theory]
    [InlineData(BatteryChemistry.Flooded, 1.2, 1.3)]
    [InlineData(BatteryChemistry.Gel, 1.1, 1.25)]
    [InlineData(BatteryChemistry.Agm, 1.05, 1.15)]
    [InlineData(BatteryChemistry.LithiumIronPhosphate, 1, 1.05)]
    public void Exponents_of_Peukert_are_in_the_usual_range(BatteryChemistry chemistry, double least, double most)
        => Assert.InRange(BatterySpecification.Of(chemistry, Hundred_J).PeukertExponent, least, most);

    [Fact]
    public void Below_the_twenty_hour_rate_charge_falls_by_what_is_given()
        => Assert.Equal(60, Bank(BatteryChemistry.Flooded).Drain_W(60), 1e-12);

    [Fact]
    public void Above_it_Peukerts_law_is_kept()
    {
        // 20 A from a bank of 100 Ah rated at 5 A, exponent 1.25: (20/5)^0.25 = 1.414.
        Assert.Equal(240 * Math.Sqrt(2), Bank(BatteryChemistry.Flooded).Drain_W(240), 1e-9);
    }

    [Theory]
    [InlineData(-0.01, 0)]
    [InlineData(0, 10)]
    [InlineData(4.9, 10)]
    [InlineData(7.5, 15)]
    [InlineData(10, 20)]
    [InlineData(13.75, 40)]
    [InlineData(25, 50)]
    [Outside("LiFePO4 maker's manual", Field.Electrical)]
    public void Lithium_takes_nothing_below_freezing_and_little_until_it_is_warm(double t_C, double expected_A)
        => Assert.Equal(expected_A, Bank(BatteryChemistry.LithiumIronPhosphate).Acceptance_W(0.5 * Hundred_J, t_C + Zero_K) / 12, 1e-9);

    [Theory]
    [InlineData(0.5, 25)]
    [InlineData(0.8, 25)]
    [InlineData(0.98, 5)]
    [InlineData(0.99, 2.5)]
    [InlineData(1, 0)]
    public void Charging_of_glass_mat_tapers_from_four_fifths_on(double charge, double expected_A)
        => Assert.Equal(expected_A, Bank(BatteryChemistry.Agm).Acceptance_W(charge * Hundred_J, 25 + Zero_K) / 12, 1e-9);

    [Fact]
    public void Cold_locks_in_charge_that_warmth_gives_back()
    {
        BatteryBody bank = Bank(BatteryChemistry.Agm);
        double stored_J = 0.6 * Hundred_J;
        Assert.True(bank.Usable_J(stored_J, Zero_K + 20) > 0);
        Assert.True(bank.Usable_J(stored_J, Zero_K - 20) < 0);
        Assert.Equal(1, bank.Usable_frac(Hundred_J, Zero_K - 20), 1e-12);
    }

    [Fact]
    public void Energy_in_equals_energy_out_plus_stored_plus_lost()
        => Gen.Select(Gen.Enum<BatteryChemistry>(), Gen.Double[-30, 40], Gen.Double[0, 1], Gen.Double[0, 500], Gen.Double[0, 400], Gen.Double[0, 600])
            .Sample((chemistry, t_C, charge, load_W, solar_W, converter_W) =>
            {
                BatteryBody bank = Bank(chemistry);
                BusFlow f = BusFlow.Of(load_W, solar_W, converter_W, bank.Acceptance_W(charge * Hundred_J, t_C + Zero_K));
                double loss_W = f.Taken_W - bank.Gain_W(f.Taken_W) + bank.Drain_W(f.Given_W) - f.Given_W;
                double stored_W = bank.Gain_W(f.Taken_W) - bank.Drain_W(f.Given_W);
                Assert.Equal(f.Solar_W + f.Converter_W, f.Load_W + stored_W + loss_W, 1e-9);
                Assert.True(loss_W >= -1e-9 && f.Solar_W <= solar_W && f.Converter_W <= converter_W && Math.Min(f.Taken_W, f.Given_W) == 0);
            });

    [Fact]
    public void Voltage_goes_at_flat_and_comes_back_when_recovered_or_carried()
    {
        PowerControl power = new(BatterySpecification.Of(BatteryChemistry.Agm, Hundred_J));
        Assert.False(power.Update(10, 50, 0));
        Assert.False(power.Update(0, -5, 0));
        Assert.True(power.Update(0, 50, 0));
        Assert.False(power.Live);
        Assert.False(power.Update(0.04 * Hundred_J, 50, 100));
        Assert.True(power.Update(0.05 * Hundred_J, 50, 200));
        Assert.True(power.Live);
        Assert.True(power.Update(-1, 50, 300));
        Assert.True(power.Update(-1, -5, 360));
        Assert.True(power.Live);
    }

    [Theory]
    [InlineData(Hundred_J, 50)]
    [InlineData(0, -5)]
    public void The_relay_of_a_low_voltage_disconnect_stays_open_for_a_minute(double usable_J, double lacking_W)
    {
        PowerControl power = new(BatterySpecification.Of(BatteryChemistry.Agm, Hundred_J) with { Reconnect_frac = 0 });
        Assert.True(power.Update(0, 50, 1000));
        Assert.False(power.Update(usable_J, lacking_W, 1059));
        Assert.True(power.Update(usable_J, lacking_W, 1060));
    }
}
