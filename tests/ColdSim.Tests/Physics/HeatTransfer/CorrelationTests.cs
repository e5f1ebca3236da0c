using ColdSim.Physics.HeatTransfer;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.HeatTransfer;

public class CorrelationTests
{
    // Textbook example 9.2 (Bergman and others), which prints 147; a public library that checked it with the paper has the further digits.
    [Fact]
    [Outside("Churchill and Chu 1975", Field.HeatTransfer, Through = "ht")]
    public void Churchill_Chu_vertical_plate_matches_the_worked_value_of_Pr_0_69_and_Gr_2_63e9()
        => Assert.Equal(147.16185223770603, NaturalConvection.VerticalPlate(0.69 * 2.63e9, 0.69), 1e-9);

    [Fact]
    [Outside("Churchill and Chu 1975", Field.HeatTransfer, Through = "ht")]
    public void Churchill_Chu_horizontal_cylinder_matches_the_worked_value_of_Pr_0_69_and_Gr_2_63e9()
        => Assert.Equal(139.13493970073597, NaturalConvection.HorizontalCylinder(0.69 * 2.63e9, 0.69), 1e-9);

    // Textbook example 7.4, which prints 40.6.
    [Fact]
    [Outside("Churchill and Bernstein 1977", Field.HeatTransfer, Through = "ht")]
    public void Churchill_Bernstein_matches_the_worked_value_of_Re_6071()
        => Assert.Equal(40.63708594124974, ForcedConvection.CrossFlow(6071, 0.7), 1e-9);

    [Fact]
    public void Air_forms_stay_within_half_a_percent_of_the_full_ones_and_of_wind_within_1_2_percent()
        => Gen.Select(Gen.Double[2, 11], Gen.Double[0.70, 0.73]).Sample((log, pr) =>
        {
            double x = Math.Pow(10, log);
            return Near(NaturalConvection.VerticalPlateInAir(x), NaturalConvection.VerticalPlate(x, pr)) && Near(NaturalConvection.HorizontalCylinderInAir(x), NaturalConvection.HorizontalCylinder(x, pr))
                && Math.Abs((ForcedConvection.CrossFlowInAir(x) / ForcedConvection.CrossFlow(x, pr)) - 1) < 0.012;

            static bool Near(double a, double b) => Math.Abs((a / b) - 1) < 5e-3;
        });

    [Fact]
    public void More_wind_and_more_difference_never_cool_less()
        => Gen.Select(Gen.Double[0, 30], Gen.Double[0.01, 5], Gen.Double[0, 60], Gen.Double[0.01, 5]).Sample((wind, gust, dT, more) =>
        {
            double h0 = H(wind, dT);
            return H(wind + gust, dT) > h0 && H(wind, dT + more) > h0;

            // Air held at one temperature, so that only the driving forces change.
            static double H(double wind, double dT) => ForcedConvection.Blend(
                ForcedConvection.CrossFlowInAir(wind * 2e4), NaturalConvection.VerticalPlateInAir(dT * 3e6), 3);
        });

    [Fact]
    public void Blend_returns_the_only_one_present_and_its_short_cuts_agree_with_the_power()
    {
        foreach (double n in (double[])[3, 3.5, 4])
        {
            Assert.Equal(7, ForcedConvection.Blend(7, 0, n), 1e-12);
            Assert.Equal(7, ForcedConvection.Blend(0, 7, n), 1e-12);
            Assert.Equal(5 * Math.Pow(2, 1 / n), ForcedConvection.Blend(5, 5, n), 1e-12);
        }
    }

    [Fact]
    public void Rayleigh_number_grows_with_the_cube_of_length_and_the_square_of_pressure_and_is_the_same_for_warm_and_cold_walls()
    {
        double ra = Rayleigh(255, 265, 0.3, 1e5);
        Assert.Equal(8, Rayleigh(255, 265, 0.6, 1e5) / ra, 1e-12);
        Assert.Equal(0.64, Rayleigh(255, 265, 0.3, 0.8e5) / ra, 1e-12);
        Assert.Equal(ra, Rayleigh(265, 255, 0.3, 1e5), ra * 1e-12);
    }

    // Film 300 K: textbook air tables give ν 15.89e-6, α 22.5e-6, so g β ΔT L³/(ν α) = 9.807/300 · 20 · 0.027/(15.89e-6 · 22.5e-6).
    // Its density of 1.161 kg/m³ is that at one bar. 1 %: three printed digits, and other property fits.
    [Fact]
    [Outside("Incropera and DeWitt", Field.HeatTransfer, FromMemory = true)]
    public void Rayleigh_number_agrees_with_textbook_air_at_300_K()
        => Assert.Equal(1, Rayleigh(290, 310, 0.3, 1e5) / (9.807 / 300 * 20 * 0.027 / (15.89e-6 * 22.5e-6)), 0.01);

    [Fact]
    public void Reynolds_number_is_density_wind_and_length_over_viscosity()
        => Assert.Equal(
            2 * 0.3 * ColdSim.Physics.MoistAir.DryAir.Density_kg_m3(260, 9e4) / ColdSim.Physics.MoistAir.DryAir.DynamicViscosity_Pa_s(260),
            new AirFilm(255, 265, 9e4).Reynolds(2, 0.3), 1e-9);

    private static double Rayleigh(double wall_K, double air_K, double length_m, double pressure_Pa)
        => new AirFilm(wall_K, air_K, pressure_Pa).Rayleigh(wall_K - air_K, length_m);
}
