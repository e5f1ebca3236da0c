using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Frost, dew and melting at a surface behind fixed films, each by its own heat balance.</summary>
public class FrostExchangeTests
{
    private const double Zero_K = Some.Zero_K;
    private const double Convection_W_m2K = 9, Outside_W_m2K = 13, Inside_W_m2K = 120;
    private const double Sublimation_J_kg = 2.835e6, Vaporisation_J_kg = 2.501e6, Fusion_J_kg = 3.34e5;

    private static (FrostExchange Exchange, double Behind_W_m2K) At(WeatherSample weather, double liquid_K, FrostLayer frost)
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Some.Sheltered with { FixedConvection_W_m2K = Convection_W_m2K, FixedRadiation_W_m2K = 4, InsideFilm_W_m2K = Inside_W_m2K }));
        double behind_W_m2K = 1 / (frost.Resistance_m2K_W + 1 / Inside_W_m2K);
        ExternalHeatTransfer film = new(body, weather, new ExternalConvection(body, weather, liquid_K), liquid_K, frost.Resistance_m2K_W);
        return (FrostExchange.At(weather, film, liquid_K, behind_W_m2K, frost), behind_W_m2K);
    }

    // Lewis: h / (ρ c Le^(2/3)), with 0.87 to the two thirds 0.9113.
    private static double Transfer_m_s(WeatherSample weather) => Convection_W_m2K / (weather.Pressure_Pa / (287.05 * weather.Air_K) * 1006 * 0.9113);

    private static double Air_kg_m3(WeatherSample weather) => weather.VapourPressure_Pa / (461.5 * weather.Air_K);

    private static double OverWater_kg_m3(double t_K) => MagnusFormula.OverWater_Pa(t_K) / (461.5 * t_K);

    private static double OverIce_kg_m3(double t_K) => MagnusFormula.OverIce_Pa(t_K) / (461.5 * t_K);

    // A bare wall above freezing in damp air is wet with dew, which gives its heat of vaporisation and runs off.
    [Fact]
    public void Dew_on_a_wall_above_freezing_gives_its_heat_and_leaves_nothing_behind()
        => Gen.Select(Gen.Double[274, 290], Gen.Double[2, 20], Gen.Double[0.85, 1]).Sample((liquid_K, above_K, humidity) =>
        {
            WeatherSample weather = Some.Weather(liquid_K + above_K, 0, humidity);
            (FrostExchange e, double behind) = At(weather, liquid_K, default);
            Assert.Equal((0.0, 0.0), (e.Flux_kg_m2s, e.Inward_kg_m2s));
            Assert.Equal(0, Outside_W_m2K * (weather.Air_K - e.Surface_K) + e.Heat_W_m2 - behind * (e.Surface_K - liquid_K), 1e-6);
            double dew_W_m2 = Vaporisation_J_kg * Transfer_m_s(weather) * Math.Max(0, Air_kg_m3(weather) - OverWater_kg_m3(e.Surface_K));
            Assert.Equal(dew_W_m2, e.Heat_W_m2, 2e-3 * dew_W_m2 + 1e-3);
        }, iter: 1000);

    [Fact]
    public void On_a_dry_wall_in_dry_air_nothing_happens()
    {
        foreach (double liquid_K in (double[])[250, 280])
        {
            (FrostExchange e, double behind) = At(Some.Weather(285, 0, 0.05), liquid_K, default);
            Assert.Equal((0.0, 0.0, 0.0), (e.Flux_kg_m2s, e.Inward_kg_m2s, e.Heat_W_m2));
            Assert.Equal((Outside_W_m2K * 285 + behind * liquid_K) / (Outside_W_m2K + behind), e.Surface_K, 1e-9);
        }
    }

    // Between the dew points over ice and over water a wall above freezing stays dry, and one below it gets frost.
    [Fact]
    public void Saturation_counts_over_ice_below_freezing_and_over_water_above()
    {
        WeatherSample At260(double part) => Some.Weather(262) with { VapourPressure_Pa = part * MagnusFormula.OverIce_Pa(258) * 262 / 258 };
        double liquid_K = 258 - Outside_W_m2K * 4 / Inside_W_m2K;
        Assert.Equal(0, At(At260(0.99), liquid_K, default).Exchange.Flux_kg_m2s);
        Assert.True(At(At260(1.01), liquid_K, default).Exchange.Flux_kg_m2s > 0);

        // By as much as the vapour over ice lies below that over water at -15 °C, a seventh.
        Assert.True(MagnusFormula.OverWater_Pa(258) > 1.1 * MagnusFormula.OverIce_Pa(258));
    }

    // Frost whose surface would be above freezing is at freezing and melts by what comes in beyond what goes to the liquid; dew adds its heat.
    [Theory]
    [InlineData(290, 0.3)]
    [InlineData(285, 0.9)]
    [InlineData(290, 0.6)]
    public void Frost_melts_by_what_the_balance_at_freezing_leaves_over(double air_K, double humidity)
    {
        const double Liquid_K = 272.5;
        FrostLayer frost = new(0.5, 0.001);
        WeatherSample weather = Some.Weather(air_K, 0, humidity);
        (FrostExchange e, double behind) = At(weather, Liquid_K, frost);
        double dew_W_m2 = Vaporisation_J_kg * Transfer_m_s(weather) * Math.Max(0, Air_kg_m3(weather) - OverWater_kg_m3(Zero_K));
        double over_W_m2 = Outside_W_m2K * (air_K - Zero_K) - behind * (Zero_K - Liquid_K) + dew_W_m2;
        Assert.Equal(Zero_K, e.Surface_K);
        Assert.True(over_W_m2 > 20);
        Assert.Equal(-over_W_m2 / Fusion_J_kg, e.Flux_kg_m2s, 1e-3 * over_W_m2 / Fusion_J_kg);
        Assert.Equal(dew_W_m2 - over_W_m2, e.Heat_W_m2, 1e-3 * over_W_m2);
        if (humidity == 0.9) Assert.True(dew_W_m2 > 30);
    }

    // Fick: heat through the frost times diffusivity and slope of the saturated density over ice, over the layer's conductivity.
    [Fact]
    public void Melting_frost_lets_vapour_into_itself_by_the_heat_that_goes_through_it()
    {
        const double Liquid_K = 270;
        FrostLayer frost = new(0.3, 0.0015);
        WeatherSample weather = Some.Weather(290, 0, 0.3);
        (FrostExchange e, double behind) = At(weather, Liquid_K, frost);
        double slope = (OverIce_kg_m3(Zero_K + 1e-3) - OverIce_kg_m3(Zero_K - 1e-3)) / 2e-3;
        double drive = behind * (Zero_K - Liquid_K) * Frost.VapourDiffusivity_m2_s(Zero_K, Some.Sea_Pa) * slope;
        Assert.True(e.Flux_kg_m2s < 0);
        Assert.Equal(1, e.Inward_kg_m2s / Frost.Inward_kg_m2s(drive, 200), 2e-3);
    }

    [Fact]
    public void Frost_as_dense_as_old_frost_takes_nothing_more_inward_nor_does_frost_through_which_heat_goes_outward()
    {
        Assert.Equal(0, At(Some.Weather(265, 0, 0.9), 250, new FrostLayer(0.5, 0.001)).Exchange.Inward_kg_m2s);
        Assert.True(At(Some.Weather(265, 0, 0.9), 250, new FrostLayer(0.499, 0.001)).Exchange.Inward_kg_m2s > 0);
        Assert.Equal(0, At(Some.Weather(255, 0, 0.9), 262, new FrostLayer(0.2, 0.001)).Exchange.Inward_kg_m2s);
    }

    // A wall above freezing melts frost from behind; only heat from outside counts, or what would warm the surface from the wall in cold air.
    [Fact]
    public void On_a_wall_above_freezing_frost_melts_by_what_comes_from_outside_or_would_warm_the_surface()
    {
        FrostLayer frost = new(0.5, 0.001);
        Assert.Equal(-Outside_W_m2K * (283 - Zero_K) / Fusion_J_kg, At(Some.Weather(283), 276, frost).Exchange.Flux_kg_m2s, 1e-9);
        (FrostExchange cold, double behind) = At(Some.Weather(268), 280, frost);
        double dry_K = (Outside_W_m2K * 268 + behind * 280) / (Outside_W_m2K + behind);
        Assert.True(dry_K > Zero_K);
        Assert.Equal(-Outside_W_m2K * (dry_K - Zero_K) / Fusion_J_kg, cold.Flux_kg_m2s, 1e-9);
    }

    [Fact]
    public void Frost_that_loses_keeps_its_density_and_frost_that_grows_gets_the_lightest_on_top()
    {
        FrostLayer layer = new(0.4, 0.002);

        // Half of it goes: half as thick, 200 kg/m³ as before.
        FrostLayer less = layer.After(new HeatCoupling(5, 260, -2e-4), 1000);
        Assert.Equal((0.2, 0.001), (less.Mass_kg_m2, less.Thickness_m));

        // 0.1 kg/m² arrive, laid at 50 kg/m³: 2 mm more.
        FrostLayer more = layer.After(new HeatCoupling(5, 260, 1e-4), 1000);
        Assert.Equal(0.5, more.Mass_kg_m2, 1e-12);
        Assert.Equal(0.004, more.Thickness_m, 1e-12);

        // 0.1 arrive and 0.15 go inward: the surface gives 0.05 up, 0.25 mm of it at its density.
        FrostLayer denser = layer.After(new HeatCoupling(5, 260, 1e-4, 1.5e-4), 1000);
        Assert.Equal(0.5, denser.Mass_kg_m2, 1e-12);
        Assert.Equal(0.00175, denser.Thickness_m, 1e-12);
        Assert.Equal(default, layer.After(new HeatCoupling(5, 260, -4e-4), 1000));
    }

    [Fact]
    public void Frost_keeps_between_the_lightest_and_the_oldest()
    {
        Assert.Equal(50, new FrostLayer(0.1, 0.1 / 30).After(new HeatCoupling(5, 260), 1).Density_kg_m3, 1e-9);
        Assert.Equal(500, new FrostLayer(0.1, 0.1 / 499).After(new HeatCoupling(5, 260, 0, 1e-3), 60).Density_kg_m3, 1e-9);
        Assert.Equal(600, new FrostLayer(0.1, 0.1 / 600).After(new HeatCoupling(5, 260), 1).Density_kg_m3, 1e-9);

        // The first frost on a bare wall, of which more goes inward than arrives, is laid as light as any.
        Assert.True(default(FrostLayer).After(new HeatCoupling(5, 260, 1e-5, 2e-5), 100) is { Mass_kg_m2: > 0, Density_kg_m3: >= 50 });
        Assert.Equal((0.0, 0.0), (default(FrostLayer).Resistance_m2K_W, default(FrostLayer).Density_kg_m3));
    }
}
