using ColdSim.Physics.Propane;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Harms;
using Xunit;

namespace ColdSim.Tests.Planning.Gauges;

public class PressureReadingTests
{
    private const double Air_Pa = 101_325;
    private const double T_K = 263.15;
    private static readonly GaugedCylinder Cylinder = GaugeReadingTests.Cylinder("20 lb");
    private static readonly double Saturation_Pa = PropaneSaturation.Pressure_Pa(T_K) - Air_Pa;

    private static PressureReading At(double gauge_Pa) => new()
    {
        Gauge_Pa = gauge_Pa,
        Air_Pa = Air_Pa,
        Temperature_K = T_K,
        TemperatureError_K = 2,
        Rested = true,
    };

    // Worked out elsewhere from 1.42 MPa of ethane at -20 °C: 23.7 psi pure, 25.5 and 29.1 with 1 and 3 %.
    [Theory]
    [InlineData(0.01, 25.5)]
    [InlineData(0.03, 29.1)]
    public void One_to_three_percent_of_ethane_reads_8_to_23_percent_high_at_0_F(double ethane_frac, double psi)
        => Assert.Equal(psi, (PressureReading.WithEthane_Pa(459.67 / 1.8, ethane_frac) - Air_Pa) / 6894.757, 0.1);

    [Theory]
    [InlineData(0.3, PressureVerdict.LiquidGone)]
    [InlineData(0.95, PressureVerdict.CannotTell)]
    [InlineData(1, PressureVerdict.CannotTell)]
    [InlineData(1.23, PressureVerdict.CannotTell)]
    [InlineData(1.8, PressureVerdict.LighterGasOrAir)]
    public void Verdict_is_given_only_for_a_clear_difference(double part, PressureVerdict verdict)
        => Assert.Equal(verdict, At(part * Saturation_Pa).Judge(Cylinder).Verdict);

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.8)]
    public void No_verdict_without_rest_or_without_a_temperature(double part)
    {
        Assert.Equal(PressureVerdict.CannotTell, (At(part * Saturation_Pa) with { Rested = false }).Judge(Cylinder).Verdict);
        Assert.Equal(PressureVerdict.CannotTell, (At(part * Saturation_Pa) with { Temperature_K = null }).Judge(Cylinder).Verdict);
    }

    [Fact]
    public void The_vapour_that_is_left_goes_back_to_its_pressure()
    {
        double p_Pa = 0.3 * Saturation_Pa + Air_Pa;
        PressureFinding finding = At(0.3 * Saturation_Pa).Judge(Cylinder);
        double mass_kg = finding.Vapour!.Mass.Kilograms;
        Assert.Equal(p_Pa, ReferenceEquation.At(T_K, mass_kg / Cylinder.Volume_m3).Pressure_Pa, 1);
        Assert.Equal(p_Pa, DriftTable.At(Cylinder, mass_kg, T_K).Pressure.Pascals, 1);
        Assert.InRange(finding.Vapour.StandardUncertainty.Kilograms, 0.001, 0.05);
    }

    [Fact]
    public void Saturation_pressure_gives_the_liquid_s_temperature()
    {
        PressureFinding finding = At(Saturation_Pa).Judge(Cylinder);
        Assert.Equal(T_K, finding.LiquidTemperature!.Value.Kelvins, 1e-4);
        Assert.True(finding.LiquidTemperatureWithEthane < finding.LiquidTemperature);
    }
}
