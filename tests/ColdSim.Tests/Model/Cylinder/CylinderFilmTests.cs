using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

public class CylinderFilmTests
{
    private static readonly CylinderSurroundings Fixed = Some.Sheltered with
    {
        FixedConvection_W_m2K = 9,
        FixedRadiation_W_m2K = 4,
        FixedFin_m = 0,
        FixedFrost_m = 0,
        InsideFilm_W_m2K = 120,
    };

    private static readonly Gen<FrostLayer> AnyFrost =
        Gen.Select(Gen.Double[0, 0.02], Gen.Double[80, 500]).Select((thick_m, density) => new FrostLayer(thick_m * density, thick_m));

    private static (double Wetted_m2, double Line_m, double Dry_m) Walls(CylinderBody body, double mass_kg, double t_K)
    {
        PressureVessel v = body.Vessel;
        double level_m = v.LiquidLevel_m(body.Contents(mass_kg, t_K).LiquidVolume_m3);
        return (v.WettedArea_m2(level_m), v.FinRootLength_m(level_m), v.DryFinLength_m(level_m));
    }

    [Fact]
    public void No_sane_state_gives_anything_that_is_not_a_number()
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Gen.Double[0, 1], Gen.Double[195, 330], AnyFrost).Sample((s, w, fill, t_K, frost) =>
        {
            CylinderBody body = new(s);
            double mass_kg = fill * fill * fill * s.LegalFill_kg;
            HeatCoupling c = HeatCoupling.At(body, w, mass_kg, t_K, frost);
            Assert.True(c.Conductance_W_K > 0 && double.IsFinite(c.Conductance_W_K));
            // The environment has no limit of its own: full sun on a wall as warm as still air is a great temperature behind a film of nearly nothing. The heat has:
            // sun, 75 W/m²K of film (20 m/s and radiation) against air and sky, and on a wall of -78 °C far more from vapour that freezes.
            Assert.True(c.Environment_K > 0 && double.IsFinite(c.Environment_K));
            double vapour_K = 2.835e6 * Humidity.VapourDensity_kg_m3(w.VapourPressure_Pa, w.Air_K) / (DryAir.Density_kg_m3(w.Air_K, w.Pressure_Pa) * 1006 * 0.91);
            double most_W_m2 = 500 + 75 * (Math.Abs(w.Air_K - t_K) + 30 + vapour_K);
            Assert.InRange(c.Heat_W(t_K) / body.Vessel.OutsideArea_m2, -most_W_m2, most_W_m2);
            Assert.True(double.IsFinite(c.FrostFlux_kg_m2s) && double.IsFinite(c.FrostInward_kg_m2s));
            FrostLayer after = frost.After(c, 600);
            Assert.True(after.Mass_kg_m2 >= 0 && after.Thickness_m >= 0 && double.IsFinite(after.Resistance_m2K_W));
            Assert.True(double.IsFinite(SteadySupply.Draw_kg_s(body, w, mass_kg, t_K, 0, frost)));
            CylinderContents contents = body.Contents(mass_kg, t_K);
            Assert.True(double.IsFinite(body.Warming_K_s(contents, c.Heat_W(t_K), 1e-4)) && double.IsFinite(body.StoredEnergy_J(mass_kg, t_K)));
        }, iter: 5000);

    [Fact]
    public void Full_sun_on_a_wall_as_warm_as_still_air_goes_in_through_the_wetted_wall_and_its_fin()
    {
        // The state at which the environment was found to be 736 K: the film is that of radiation from a bright wall alone, and nearly all sun goes inward.
        CylinderSurroundings bright = new() { WindExposure_frac = 0, SkyView_frac = 0, SunExposure_frac = 1, Emissivity_frac = 0.126, SolarAbsorptance_frac = 0.4125 };
        CylinderBody body = new(Some.Cylinder("30 lb", bright));
        WeatherSample w = Some.Weather(226) with { CylinderSun_W_m2 = 445.7 };
        HeatCoupling c = HeatCoupling.At(body, w, 5, 226, default);
        double absorbed_W_m2 = 0.4125 * 445.7;
        (double wetted_m2, double line_m, double dry_m) = Walls(body, 5, 226);
        Assert.True(c.Environment_K > 500);
        Assert.InRange(c.Heat_W(226), 0.98 * absorbed_W_m2 * wetted_m2, absorbed_W_m2 * (wetted_m2 + dry_m * line_m));
    }

    [Fact]
    public void The_conductance_is_never_that_of_more_wall_than_there_is()
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Some.Fill, Gen.Double[200, 320], Gen.Double[0, 2], Gen.Bool).Sample((s, w, fill, t_K, fin_m, given) =>
        {
            CylinderSurroundings around = s.Surroundings with { FixedConvection_W_m2K = 9, FixedRadiation_W_m2K = 4, FixedFin_m = given ? fin_m : null };
            CylinderBody body = new(s with { Surroundings = around });
            return HeatCoupling.At(body, w, fill * s.LegalFill_kg, t_K, default).Conductance_W_K <= body.Vessel.OutsideArea_m2 * 13 * (1 + 1e-9);
        }, iter: 3000);

    // In frost only: more wind may warm a surface past freezing, where frosting turns into dew, which sets less heat free.
    [Fact]
    public void Under_a_roof_in_warmer_air_below_freezing_more_wind_never_gives_less()
        => Gen.Select(Some.Size, Some.Fill, Gen.Double[231, 262], Gen.Double[1, 11], Gen.Double[0, 15], Gen.Double[0, 5], Gen.Double[0, 1]).Sample((size, fill, allowed_K, above_K, wind, more, humidity) =>
        {
            CylinderBody body = new(Some.Cylinder(size));
            double Draw(double wind_m_s) => SteadySupply.Draw_kg_s(
                body, Some.Weather(allowed_K + above_K, wind_m_s, humidity), fill * size.LegalFill_kg, allowed_K, 0, default);
            return Draw(wind + more) >= Draw(wind) * (1 - 1e-12);
        }, iter: 5000);

    [Fact]
    public void A_fuller_cylinder_never_gives_less()
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Some.Fill, Gen.Double[0.5, 1], Gen.Double[205, 300]).Sample((s, w, fill, part, allowed_K) =>
        {
            CylinderBody body = new(s);
            double Draw(double mass_kg) => SteadySupply.Draw_kg_s(body, w, mass_kg, allowed_K, 0, default);
            return Draw(fill * s.LegalFill_kg) >= Draw(fill * part * s.LegalFill_kg) * (1 - 1e-9);
        }, iter: 5000);

    [Fact]
    public void A_colder_liquid_in_the_same_air_never_takes_less_heat()
        => Gen.Select(Some.Size, Some.Fill, Gen.Double[240, 290], Gen.Double[1, 40], Gen.Double[0.1, 10], Gen.Double[0, 15]).Sample((size, fill, air_K, below_K, more_K, wind) =>
        {
            CylinderBody body = new(Some.Cylinder(size));
            WeatherSample w = Some.Weather(air_K, wind);
            double Heat(double t_K) => HeatCoupling.At(body, w, fill * size.LegalFill_kg, t_K, default).Heat_W(t_K);
            double warm_K = air_K - below_K, cold_K = warm_K - more_K;
            if (!body.Contents(fill * size.LegalFill_kg, warm_K).HasLiquid || cold_K < 200) return true;
            return Heat(cold_K) >= Heat(warm_K);
        }, iter: 3000);

    [Fact]
    public void A_measured_conductance_replaces_everything()
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Some.Fill, Gen.Double[200, 320], AnyFrost, Gen.Double[0.1, 20]).Sample((s, w, fill, t_K, frost, g) =>
        {
            CylinderBody body = new(s with { Surroundings = s.Surroundings with { FixedConductance_W_K = g, FixedSun_W = 30 } });
            return HeatCoupling.At(body, w, fill * s.LegalFill_kg, t_K, frost) == new HeatCoupling(g, w.Air_K);
        });

    [Fact]
    public void With_every_film_fixed_the_conductance_has_a_closed_form()
        => Gen.Select(Some.Size, Some.AnyWeather, Gen.Double[0.05, 1], Gen.Double[210, 300], Gen.Double[0, 0.5], Gen.Double[0, 0.02]).Sample((size, w, fill, t_K, fin_m, frost_m) =>
        {
            CylinderBody body = new(Some.Cylinder(size, Fixed with { FixedFin_m = fin_m, FixedFrost_m = frost_m }));
            double mass_kg = fill * size.LegalFill_kg;
            (double wetted_m2, double line_m, double dry_m) = Walls(body, mass_kg, t_K);
            double frost_m2K_W = frost_m / (-8.71e-3 + 4.39e-4 * 150 + 1.05e-6 * 150 * 150);
            double expected = (wetted_m2 + Math.Min(fin_m, dry_m) * line_m) / (1.0 / 13 + frost_m2K_W + 1.0 / 120);
            HeatCoupling c = HeatCoupling.At(body, w, mass_kg, t_K, default);
            Assert.Equal(1, c.Conductance_W_K / expected, 1e-12);
            Assert.Equal(w.Air_K, c.Environment_K, 1e-9);
            Assert.Equal(0, c.FrostFlux_kg_m2s);
        });

    [Fact]
    public void Without_a_fixed_fin_the_dry_wall_counts_by_the_fin_law()
    {
        CylinderBody body = new(Some.Cylinder("30 lb", Fixed with { FixedFin_m = null }));
        (double wetted_m2, double line_m, double dry_m) = Walls(body, 5, 260);
        double m = Math.Sqrt(13 / (48 * 0.0021)), w = 120.0 / 133;
        double fin_m = w * Math.Tanh(m * dry_m) / m / (1 + Math.Sqrt(1 - w) * Math.Tanh(m * dry_m));
        double expected = (wetted_m2 + fin_m * line_m) / (1.0 / 13 + 1.0 / 120);
        Assert.Equal(expected, HeatCoupling.At(body, Some.Weather(265), 5, 260, default).Conductance_W_K, 1e-9);
    }

    [Fact]
    public void A_fixed_sun_does_what_the_weathers_does_that_the_wall_absorbs_as_much_of()
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Some.Fill, Gen.Double[210, 310], Gen.Double[0, 100]).Sample((s, w, fill, t_K, sun_W) =>
        {
            HeatCoupling Coupling(double? sun, in WeatherSample weather) => HeatCoupling.At(
                new CylinderBody(s with { Surroundings = s.Surroundings with { FixedSun_W = sun, SunExposure_frac = 1, SolarAbsorptance_frac = 0.5 } }),
                weather, fill * s.LegalFill_kg, t_K, default);
            double onWall_W_m2 = sun_W / 0.5 / new CylinderBody(s).Vessel.OutsideArea_m2;
            HeatCoupling weathers = Coupling(null, w with { CylinderSun_W_m2 = onWall_W_m2 }), own = Coupling(sun_W, w);
            Assert.Equal(weathers.Environment_K, own.Environment_K, 1e-9);
            Assert.Equal(weathers.Conductance_W_K, own.Conductance_W_K, 1e-12);
        });

    [Fact]
    public void A_cylinder_in_a_fixed_sun_settles_where_its_wall_gives_off_what_it_absorbs()
    {
        // 20 W over the wall's 0.395 m² behind a film of 15 W/m²K is 3.37 K, however little of the wall is wetted; without the film it was 8 K and more.
        CylinderSpecification half = Some.Cylinder("20 lb", Fixed with { FixedConvection_W_m2K = 10, FixedRadiation_W_m2K = 5, FixedSun_W = 20 });
        CylinderBody body = new(half);
        HeatCoupling coupling = HeatCoupling.At(body, Some.Weather(263.15), 0.5 * half.LegalFill_kg, 260, default);
        Assert.Equal(0.3954, body.Vessel.OutsideArea_m2, 5e-5);
        Assert.Equal(263.15 + 3.372, coupling.Environment_K, 1e-3);
        Assert.Equal(0, coupling.Heat_W(coupling.Environment_K), 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    public void A_wall_without_any_film_takes_in_what_it_absorbs_of_the_sun_and_nothing_else(double sun_W)
    {
        CylinderSpecification bare = Some.Cylinder("20 lb", Fixed with { FixedConvection_W_m2K = 0, FixedRadiation_W_m2K = 0, FixedSun_W = sun_W });
        CylinderBody body = new(bare);
        HeatCoupling coupling = HeatCoupling.At(body, Some.Weather(263.15), 0.5 * bare.LegalFill_kg, 240, default);
        double wetted_frac = Walls(body, 0.5 * bare.LegalFill_kg, 240).Wetted_m2 / body.Vessel.OutsideArea_m2;
        Assert.Equal(sun_W * wetted_frac, coupling.Heat_W(240), 1e-4);
    }

    [Fact]
    public void The_sun_raises_the_environment_by_what_is_absorbed_over_the_film()
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Fixed with { SunExposure_frac = 0.5, SolarAbsorptance_frac = 0.4 }));
        WeatherSample w = Some.Weather(265) with { CylinderSun_W_m2 = 130 };
        Assert.Equal(265 + 0.5 * 0.4 * 130 / 13, HeatCoupling.At(body, w, 5, 260, default).Environment_K, 1e-9);
    }

    [Fact]
    public void Sun_never_cools_and_a_colder_sky_never_warms()
        // Frost that melts holds its surface at freezing, so that more sun melts more and warms the wall no more: the same but for rounding. The sky
        // without the fin, because under melting frost a smaller film makes the dry wall a longer one, by a few milliwatts.
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Some.Fill, Gen.Double[210, 273], AnyFrost).Sample((s, w, fill, t_K, frost) =>
        {
            CylinderBody body = new(s);
            double mass_kg = fill * s.LegalFill_kg;
            double now_K = HeatCoupling.At(body, w, mass_kg, t_K, frost).Environment_K;
            double sunny_K = HeatCoupling.At(body, w with { CylinderSun_W_m2 = w.CylinderSun_W_m2 + 100 }, mass_kg, t_K, frost).Environment_K;
            Assert.True(sunny_K >= now_K - 1e-9, $"{sunny_K} after {now_K}");
            CylinderBody withoutFin = new(s with { Surroundings = s.Surroundings with { FixedFin_m = 0 } });
            double Heat(double sky_K) => HeatCoupling.At(withoutFin, w with { Sky_K = sky_K }, mass_kg, t_K, frost).Heat_W(t_K);
            Assert.True(Heat(w.Sky_K - 10) <= Heat(w.Sky_K) + 1e-9, $"{Heat(w.Sky_K - 10)} after {Heat(w.Sky_K)}");
        }, iter: 3000);

    [Fact]
    public void A_clear_sky_over_an_open_wall_acts_through_half_its_view()
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Fixed with { FixedRadiation_W_m2K = null, SkyView_frac = 1, Emissivity_frac = 0.9, InsideFilm_W_m2K = 1e9 }));
        WeatherSample w = Some.Weather(265) with { Sky_K = 240 };
        HeatCoupling c = HeatCoupling.At(body, w, 5, 260, default);
        double seen4 = 0.5 * Math.Pow(240, 4) + 0.5 * Math.Pow(265, 4);
        double flux = 9 * 5 + 0.9 * Radiation.StefanBoltzmann_W_m2K4 * (seen4 - Math.Pow(260, 4));
        (double wetted_m2, _, _) = Walls(body, 5, 260);
        Assert.Equal(flux * wetted_m2, c.Heat_W(260), 1e-4);
    }

    [Fact]
    public void Frost_grows_on_a_cold_wall_in_humid_air_and_never_on_a_bare_one_in_dry_air()
        => Gen.Select(Some.Size, Some.Fill, Gen.Double[215, 260], Gen.Double[5, 15], Gen.Double[0, 10]).Sample((size, fill, t_K, above_K, wind) =>
        {
            CylinderBody body = new(Some.Cylinder(size));
            double mass_kg = fill * size.LegalFill_kg;
            HeatCoupling dry = HeatCoupling.At(body, Some.Weather(t_K + above_K, wind), mass_kg, t_K, default);
            HeatCoupling humid = HeatCoupling.At(body, Some.Weather(t_K + above_K, wind, 0.95), mass_kg, t_K, default);
            Assert.Equal(0, dry.FrostFlux_kg_m2s);
            Assert.Equal(t_K + above_K, dry.Environment_K, 1e-9);
            Assert.True(humid.FrostFlux_kg_m2s > 0);
            // Freezing vapour gives its heat to the wall.
            Assert.True(humid.Environment_K > dry.Environment_K);
        });

    [Fact]
    public void Frost_in_dry_air_goes_again_and_takes_its_heat_along()
    {
        CylinderBody body = new(Some.Cylinder("20 lb"));
        FrostLayer frost = new(0.1, 0.001);
        HeatCoupling c = HeatCoupling.At(body, Some.Weather(265, 3), 5, 255, frost);
        Assert.True(c.FrostFlux_kg_m2s < 0);
        Assert.True(c.Environment_K < 265);
        FrostLayer later = frost.After(c, 600);
        Assert.InRange(later.Mass_kg_m2, 0, 0.1);
        Assert.True(later.Density_kg_m3 > 100 && later.Thickness_m < frost.Thickness_m);
        Assert.Equal(default, frost.After(c, 1e9));
    }

    [Fact]
    public void Heat_of_freezing_is_the_frost_times_its_latent_heat()
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Fixed with { FixedFrost_m = null, InsideFilm_W_m2K = 1e9 }));
        HeatCoupling c = HeatCoupling.At(body, Some.Weather(268, 0, 0.9), 5, 255, default);
        (double wetted_m2, _, _) = Walls(body, 5, 255);
        Assert.Equal(13 * 13 * wetted_m2 + c.FrostFlux_kg_m2s * 2.835e6 * wetted_m2, c.Heat_W(255), 1e-5);
    }

    // kg/m²h worked out elsewhere, h = 4 W/m²K, by air °C, relative humidity, wall °C; printed to whole grams.
    [Theory]
    [InlineData(0, 0.80, -10, 21)]
    [InlineData(0, 0.80, -15, 30)]
    [InlineData(-5, 0.80, -15, 16)]
    [InlineData(-10, 0.80, -20, 12)]
    [InlineData(-18, 0.80, -29, 7)]
    [InlineData(5, 0.90, -5, 35)]
    public void Frost_grows_as_fast_as_worked_out_elsewhere(double air_C, double humidity, double wall_C, double g_m2h)
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Fixed with { FixedConvection_W_m2K = 4, FixedRadiation_W_m2K = 0, FixedFrost_m = null, InsideFilm_W_m2K = 1e9 }));
        HeatCoupling c = HeatCoupling.At(body, Some.Weather(Some.Zero_K + air_C, 0, humidity), 5, Some.Zero_K + wall_C, default);
        Assert.Equal(g_m2h, c.FrostFlux_kg_m2s * 3.6e6, 0.06 * g_m2h + 0.5);
    }

    [Fact]
    public void Thicker_frost_never_raises_the_conductance()
        => Gen.Select(Some.AnyCylinder, Some.AnyWeather, Some.Fill, Gen.Double[210, 300], Gen.Double[0, 0.02], Gen.Double[1e-5, 0.01]).Sample((s, w, fill, t_K, thick_m, more_m) =>
        {
            CylinderBody body = new(s);
            double Conductance(double m) => HeatCoupling.At(body, w, fill * s.LegalFill_kg, t_K, new FrostLayer(150 * m, m)).Conductance_W_K;
            return Conductance(thick_m + more_m) <= Conductance(thick_m) * (1 + 1e-12);
        }, iter: 5000);

    [Fact]
    public void Melting_frost_takes_the_heat_that_would_warm_its_surface_past_freezing()
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Fixed with { FixedFrost_m = null }));
        HeatCoupling c = HeatCoupling.At(body, Some.Weather(283, 0), 5, 276, new FrostLayer(0.5, 0.001));
        Assert.True(c.FrostFlux_kg_m2s < 0);
        Assert.True(c.Environment_K < 283);
    }

    [Fact]
    public void Looking_up_the_film_allocates_nothing()
    {
        CylinderBody body = new(Some.Cylinder("20 lb"));
        WeatherSample w = Some.Weather(265, 3, 0.8);
        FrostLayer frost = new(0.1, 0.001);
        double sum = HeatCoupling.At(body, w, 5, 255, frost).Conductance_W_K;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) sum += HeatCoupling.At(body, w, 8 - 0.008 * i, 240 + 0.02 * i, frost).Conductance_W_K;
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }
}
