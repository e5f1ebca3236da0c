using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

public class FrostLayerTests
{
    private static CylinderSurroundings Film(double convection_W_m2K, double radiation_W_m2K) => new()
    {
        FixedConvection_W_m2K = convection_W_m2K,
        FixedRadiation_W_m2K = radiation_W_m2K,
        FixedSun_W = 0,
    };

    private static FrostLayer Grown(CylinderSurroundings around, WeatherSample weather, double wall_K, double hours, double step_s = 60)
    {
        CylinderBody body = new(Some.Cylinder("20 lb", around));
        FrostLayer frost = default;
        for (double t_s = 0; t_s < 3600 * hours - 1; t_s += step_s) frost = frost.After(HeatCoupling.At(body, weather, 5, wall_K, frost), step_s);
        return frost;
    }

    // A flat plate at 0.7 m/s (h about 12 W/(m²K)), two hours on: 2.2 Λ^-1.5 √t with Λ = c_p (T_dew - T_wall)/(L (w - w_sat(T_wall))).
    [Theory]
    [InlineData(16, 0.8, -10)]
    [InlineData(16, 0.8, -15)]
    [InlineData(16, 0.5, -5)]
    [Outside("Hermes and others 2014", Field.HeatTransfer, Through = "frostypy")]
    public void Frost_of_two_hours_on_a_cold_plate_is_as_dense_as_measured_within_a_quarter(double air_C, double humidity, double wall_C)
    {
        WeatherSample weather = Some.Weather(Some.Zero_K + air_C, 0, humidity);
        double wall_K = Some.Zero_K + wall_C, e_Pa = weather.VapourPressure_Pa, s_Pa = MagnusFormula.OverIce_Pa(wall_K);
        double w = 0.622 * e_Pa / (Some.Sea_Pa - e_Pa), saturated = 0.622 * s_Pa / (Some.Sea_Pa - s_Pa);
        double lambda = 1007 * (MagnusFormula.DewPoint_K(e_Pa) - wall_K) / (2.83e6 * (w - saturated));
        double measured_kg_m3 = 2.2 * Math.Pow(lambda, -1.5) * Math.Sqrt(7200);
        FrostLayer frost = Grown(Film(12, 4) with { InsideFilm_W_m2K = 1e6 }, weather, wall_K, 2);
        Assert.InRange(frost.Density_kg_m3 / measured_kg_m3, 0.75, 1.25);
    }

    private static double Heat_W(CylinderSurroundings around, WeatherSample weather, double wall_K, FrostLayer frost)
        => HeatCoupling.At(new CylinderBody(Some.Cylinder("20 lb", around)), weather, 5, wall_K, frost).Heat_W(wall_K);

    // Below -8 °C it was 80 kg/m³ whatever the age, and took 28 % of the conductance at -18 °C and 40 % at -5 °C.
    [Theory]
    [InlineData(0, 0.8, -10, 148, 0.80)]
    [InlineData(-10, 0.8, -20, 123, 0.83)]
    [InlineData(-18, 0.8, -29, 107, 0.85)]
    public void Frost_of_a_day_in_still_air_takes_a_sixth_to_a_fifth_of_the_heat(double air_C, double humidity, double wall_C, double density_kg_m3, double left_frac)
    {
        WeatherSample weather = Some.Weather(Some.Zero_K + air_C, 0, humidity);
        double wall_K = Some.Zero_K + wall_C;
        FrostLayer frost = Grown(Film(4, 3.5), weather, wall_K, 24);
        Assert.Equal(density_kg_m3, frost.Density_kg_m3, 2.0);
        Assert.Equal(left_frac, Heat_W(Film(4, 3.5), weather, wall_K, frost) / Heat_W(Film(4, 3.5), weather, wall_K, default), 0.01);
    }

    [Theory]
    [InlineData(5, 0.9, -5)]
    [InlineData(-5, 0.8, -15)]
    [InlineData(-18, 0.8, -29)]
    public void Frost_gets_denser_with_age_below_the_range_of_any_fit_too(double air_C, double humidity, double wall_C)
    {
        double Density(double hours) => Grown(Film(4, 3.5), Some.Weather(Some.Zero_K + air_C, 0, humidity), Some.Zero_K + wall_C, hours).Density_kg_m3;
        double young = Density(0.5), day = Density(24), threeDays = Density(72);
        Assert.True(young > 90 && day > young + 1 && threeDays > day + 1, $"{young} {day} {threeDays}");
    }

    [Fact]
    public void Frost_to_which_nothing_comes_any_more_settles_and_keeps_its_mass_but_for_what_sublimes()
    {
        WeatherSample humid = Some.Weather(268.15, 0, 0.8);
        FrostLayer frost = Grown(Film(4, 3.5), humid, 258.15, 24);
        CylinderBody body = new(Some.Cylinder("20 lb", Film(4, 3.5)));

        // Air as humid as the surface of the frost: nothing comes and nothing goes.
        double low_Pa = 0, high_Pa = humid.VapourPressure_Pa;
        for (int i = 0; i < 60; i++)
        {
            double middle_Pa = 0.5 * (low_Pa + high_Pa);
            if (HeatCoupling.At(body, humid with { VapourPressure_Pa = middle_Pa }, 5, 258.15, frost).FrostFlux_kg_m2s > 0) high_Pa = middle_Pa;
            else low_Pa = middle_Pa;
        }

        FrostLayer later = frost.After(HeatCoupling.At(body, humid with { VapourPressure_Pa = low_Pa }, 5, 258.15, frost), 3600);
        Assert.Equal(frost.Mass_kg_m2, later.Mass_kg_m2, 1e-9);
        Assert.InRange(later.Thickness_m / frost.Thickness_m, 0.9, 0.995);
    }

    [Fact]
    public void The_heat_at_the_surface_adds_up_with_that_of_freezing()
        => Gen.Select(Gen.Double[225, 272], Gen.Double[0.1, 30], Gen.Double[0.05, 1], Gen.Double[0.5, 40], Gen.Double[0, 8], Gen.Double[0, 0.01]).Sample(
            (wall_K, above_K, humidity, convection, radiation, thick_m) =>
            {
                CylinderSurroundings around = Film(convection, radiation) with { FixedFin_m = 0 };
                CylinderBody body = new(Some.Cylinder("20 lb", around));
                WeatherSample weather = Some.Weather(wall_K + above_K, 0, humidity);
                FrostLayer frost = new(150 * thick_m, thick_m);
                double behind = 1 / (frost.Resistance_m2K_W + 1 / around.InsideFilm_W_m2K);
                ExternalHeatTransfer film = new(body, weather, new ExternalConvection(body, weather, wall_K), wall_K, frost.Resistance_m2K_W);
                FrostExchange exchange = FrostExchange.At(weather, film, wall_K, behind, frost);
                double outside_W_m2 = film.Total_W_m2K * (film.Environment_K(0) - exchange.Surface_K) + exchange.Heat_W_m2;
                Assert.Equal(outside_W_m2, behind * (exchange.Surface_K - wall_K), 1e-5);
                if (exchange.Flux_kg_m2s > 0 && exchange.Surface_K < Some.Zero_K)
                {
                    double saturated = Humidity.VapourDensity_kg_m3(MagnusFormula.OverIce_Pa(exchange.Surface_K), exchange.Surface_K);
                    double arriving = Frost.MassTransferCoefficient_m_s(convection, DryAir.Density_kg_m3(weather.Air_K, weather.Pressure_Pa))
                        * (Humidity.VapourDensity_kg_m3(weather.VapourPressure_Pa, weather.Air_K) - saturated);
                    Assert.Equal(arriving, exchange.Flux_kg_m2s, 1e-9 * arriving);
                    Assert.InRange(exchange.Inward_kg_m2s, 0, 10 * arriving + 1e-5);
                }
            }, iter: 3000);

    [Theory]
    [InlineData(0, -10)]
    [InlineData(-18, -29)]
    public void A_layer_comes_out_the_same_by_short_and_by_long_steps(double air_C, double wall_C)
    {
        FrostLayer Of(double step_s) => Grown(Film(4, 3.5), Some.Weather(Some.Zero_K + air_C, 0, 0.8), Some.Zero_K + wall_C, 12, step_s);
        FrostLayer exact = Of(10), coarse = Of(300);
        Assert.Equal(1, coarse.Mass_kg_m2 / exact.Mass_kg_m2, 3e-3);
        Assert.Equal(1, coarse.Thickness_m / exact.Thickness_m, 5e-3);
    }

    [Fact]
    public void A_layer_is_never_lighter_than_it_is_laid_nor_denser_than_old_frost()
        => Gen.Select(Gen.Double[0, 1], Gen.Double[50, 500], Gen.Double[-1e-4, 1e-4], Gen.Double[0, 1e-4], Gen.Double[0.01, 1000]).Sample((mass, density, flux, inward, time_s) =>
        {
            FrostLayer after = new FrostLayer(mass, mass / density).After(new HeatCoupling(5, 260, flux, inward), time_s);
            Assert.True(after.Mass_kg_m2 >= 0 && after.Thickness_m >= 0);
            if (after.Mass_kg_m2 > 0) Assert.InRange(after.Density_kg_m3, 50 - 1e-9, 500 + 1e-6);
        });
}
