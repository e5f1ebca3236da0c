using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.MoistAir;

public class SaturationVapourTests
{
    // 300 ppm: the handbook's own statement of how well the formula follows its table.
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(-5, 401.74)]
    [InlineData(5, 872.6)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    [InlineData(100, 101418.0)]
    [Outside("ASHRAE Fundamentals 2017, psychrometrics", Field.MoistAir, Through = "PsychroLib")]
    public void Saturation_pressure_matches_ASHRAE_table_3(double t_C, double expected_Pa)
        => Assert.Equal(1, SaturationVapour.Pressure_Pa(t_C + 273.15) / expected_Pa, 3e-4);

    [Fact]
    public void Water_and_ice_meet_at_the_triple_point_and_below_it_water_is_higher()
    {
        // The two fits are separate; they meet within 0.01 %.
        Assert.Equal(1, SaturationVapour.PressureOverWater_Pa(273.16) / SaturationVapour.PressureOverIce_Pa(273.16), 1e-4);
        Gen.Double[180, 272].Sample(t => SaturationVapour.PressureOverWater_Pa(t) > SaturationVapour.PressureOverIce_Pa(t));
    }

    [Fact]
    public void The_stable_phase_is_ice_below_freezing_and_water_from_there_on()
    {
        Assert.Equal(SaturationVapour.PressureOverIce_Pa(273.149), SaturationVapour.Pressure_Pa(273.149));
        Assert.Equal(SaturationVapour.PressureOverWater_Pa(273.15), SaturationVapour.Pressure_Pa(273.15));
    }

    [Fact]
    public void Dew_point_undoes_the_pressure_over_water()
        => Gen.Double[173.2, 473.1].Sample(t => Math.Abs(SaturationVapour.DewPoint_K(SaturationVapour.PressureOverWater_Pa(t)) - t) < 1e-7);

    [Fact]
    public void Pressure_rises_with_temperature()
        => Gen.Select(Gen.Double[174, 470], Gen.Double[0.01, 3]).Sample((t, more)
            => SaturationVapour.Pressure_Pa(t + more) > SaturationVapour.Pressure_Pa(t));

    [Fact]
    public void Short_formula_stays_within_half_a_percent_of_the_long_one()
    {
        Gen.Double[233.15, 313.15].Sample(t => Math.Abs((MagnusFormula.OverWater_Pa(t) / SaturationVapour.PressureOverWater_Pa(t)) - 1) < 5e-3);
        Gen.Double[203.15, 273.15].Sample(t => Math.Abs((MagnusFormula.OverIce_Pa(t) / SaturationVapour.PressureOverIce_Pa(t)) - 1) < 2e-3);
    }

    // By the printed formulas, by hand.
    [Fact]
    public void Short_formulas_have_the_printed_constants()
    {
        Assert.Equal(610.94, MagnusFormula.OverWater_Pa(273.15), 1e-9);
        Assert.Equal(611.21, MagnusFormula.OverIce_Pa(273.15), 1e-9);
        Assert.Equal(610.94 * Math.Exp(17.625 * 20 / 263.04), MagnusFormula.OverWater_Pa(293.15), 1e-6);
        Assert.Equal(611.21 * Math.Exp(22.587 * -20 / 253.86), MagnusFormula.OverIce_Pa(253.15), 1e-6);
    }

    // Half of the saturation pressure over water at 0 °C, as weather services report humidity.
    [Fact]
    public void Vapour_pressure_is_the_humidity_of_that_over_water_in_frost_too()
        => Assert.Equal(0.5 * SaturationVapour.PressureOverWater_Pa(258.15), Humidity.VapourPressure_Pa(258.15, 0.5), 1e-9);

    [Fact]
    public void Short_dew_point_is_the_inverse_of_the_short_formula_over_water()
        => Gen.Double[200, 310].Sample(t => Math.Abs(MagnusFormula.DewPoint_K(MagnusFormula.OverWater_Pa(t)) - t) < 1e-9);

    [Theory]
    [InlineData(173)]
    [InlineData(473.2)]
    [InlineData(double.NaN)]
    public void A_temperature_out_of_range_is_refused_with_its_value_and_the_limits(double t_K)
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => SaturationVapour.PressureOverWater_Pa(t_K));
        Assert.Equal("t_K", e.ParamName);
        Assert.Equal(t_K, e.ActualValue);
        Assert.Contains("173.15 to 473.15 K", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Ice_above_the_triple_point_and_a_dew_point_of_nothing_are_refused()
    {
        Assert.Contains("173.15 to 273.16 K", Assert.Throws<ArgumentOutOfRangeException>(() => SaturationVapour.PressureOverIce_Pa(274)).Message, StringComparison.Ordinal);
        Assert.Equal("vapourPressure_Pa", Assert.Throws<ArgumentOutOfRangeException>(() => SaturationVapour.DewPoint_K(0)).ParamName);
    }

    [Fact]
    public void Slopes_of_saturation_are_those_of_its_curves()
        => Gen.Double[220, 273].Sample(t_K =>
        {
            const double d = 1e-3;
            Assert.Equal((Math.Log(MagnusFormula.OverIce_Pa(t_K + d)) - Math.Log(MagnusFormula.OverIce_Pa(t_K - d))) / (2 * d), MagnusFormula.OverIceSlope_1_K(t_K), 1e-7);
            Assert.Equal((Math.Log(MagnusFormula.OverWater_Pa(t_K + d)) - Math.Log(MagnusFormula.OverWater_Pa(t_K - d))) / (2 * d), MagnusFormula.OverWaterSlope_1_K(t_K), 1e-7);
        });
}
