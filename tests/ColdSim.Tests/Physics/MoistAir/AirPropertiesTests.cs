using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.MoistAir;

public class AirPropertiesTests
{
    // 5e-5: the table prints five digits.
    [Theory]
    [InlineData(288.15, 1.7894e-5)]
    [InlineData(275.15, 1.7260e-5)]
    [InlineData(262.17, 1.6612e-5)]
    [InlineData(249.19, 1.5949e-5)]
    [InlineData(236.22, 1.5271e-5)]
    [Outside("US Standard Atmosphere 1976", Field.HeatTransfer, Through = "fluids")]
    public void Viscosity_matches_the_standard_atmosphere(double t_K, double expected_Pa_s)
        => Assert.Equal(1, DryAir.DynamicViscosity_Pa_s(t_K) / expected_Pa_s, 5e-5);

    // At 1000 m geometric height, 281.651 K.
    [Fact]
    [Outside("US Standard Atmosphere 1976", Field.HeatTransfer, Through = "fluids")]
    public void Conductivity_matches_the_standard_atmosphere_at_1000_m()
        => Assert.Equal(0.0248134, DryAir.Conductivity_W_mK(281.6510), 1e-6);

    // 1e-4: four to five printed digits, and our gas constant is of today.
    [Theory]
    [InlineData(288.15, 101_325, 1.2250)]
    [InlineData(249.19, 47_218, 0.66011)]
    [Outside("US Standard Atmosphere 1976", Field.MoistAir, Through = "fluids")]
    public void Density_matches_the_standard_atmosphere(double t_K, double p_Pa, double expected_kg_m3)
        => Assert.Equal(1, DryAir.Density_kg_m3(t_K, p_Pa) / expected_kg_m3, 1e-4);

    // 1 Pa: the table prints whole pascals.
    [Theory]
    [InlineData(-500, 107_478)]
    [InlineData(500, 95_461)]
    [InlineData(1000, 89_875)]
    [InlineData(4000, 61_640)]
    [Outside("ASHRAE Fundamentals 2017, psychrometrics", Field.MoistAir, Through = "PsychroLib")]
    public void Pressure_by_elevation_matches_ASHRAE_table_1(double elevation_m, double expected_Pa)
        => Assert.Equal(expected_Pa, StandardAtmosphere.Pressure_Pa(elevation_m), 1.0);

    // The handbook's constants differ in the fifth digit.
    [Fact]
    [Outside("PsychroLib 2018", Field.MoistAir)]
    public void Density_of_moist_air_matches_30_C_and_20_g_kg_at_95461_Pa()
    {
        double vapour_Pa = 95_461 * 0.02 / (Humidity.MolarMassRatio + 0.02);
        Assert.Equal(1, Humidity.MoistAirDensity_kg_m3(303.15, 95_461, vapour_Pa) / 1.08411986348219, 1e-4);
    }

    // Grams in a cubic metre of saturated air, as meteorological tables print them (from memory): over water at 20 and 0 °C, over ice below.
    [Theory]
    [InlineData(20, 17.30)]
    [InlineData(0, 4.847)]
    [InlineData(-10, 2.139)]
    [InlineData(-20, 0.884)]
    public void A_cubic_metre_of_saturated_air_holds_the_vapour_of_the_tables(double t_C, double printed_g_m3)
    {
        double t_K = t_C + 273.15, saturated_Pa = t_C >= 0 ? SaturationVapour.PressureOverWater_Pa(t_K) : SaturationVapour.PressureOverIce_Pa(t_K);
        Assert.Equal(printed_g_m3, 1000 * Humidity.VapourDensity_kg_m3(saturated_Pa, t_K), 0.002 * printed_g_m3);
    }

    [Fact]
    public void Vapour_and_dry_air_densities_add_up_to_that_of_moist_air()
        => Gen.Select(Gen.Double[250, 310], Gen.Double[0, 3000]).Sample((t, e)
            => Math.Abs(DryAir.Density_kg_m3(t, 90_000 - e) + Humidity.VapourDensity_kg_m3(e, t) - Humidity.MoistAirDensity_kg_m3(t, 90_000, e)) < 1e-6);

    [Fact]
    public void Arguments_out_of_range_are_refused_with_value_and_limits()
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => Humidity.VapourPressure_Pa(280, 50));
        Assert.Equal(("relativeHumidity_frac", (object)50.0), (e.ParamName, e.ActualValue));
        Assert.Contains("0 to 1", e.Message, StringComparison.Ordinal);
        Assert.Contains("-5000 to 11000 m", Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.Pressure_Pa(12_000)).Message, StringComparison.Ordinal);
    }
}
