using ColdSim.Physics.SunAndSky;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.SunAndSky;

public class SunAndSkyTests
{
    private const double Degree = Math.PI / 180;

    // The paper's worked example: 17 October 2003, 19:30:30 UTC (day 290), 39.742476° N, 105.1786° W, without refraction.
    private static SunAngles Example => SunPosition.At(290, 365, 19 + (30.5 / 60), 39.742476, -105.1786);

    private static double ExampleYear_rad => SunPosition.FractionalYear_rad(290, 365, 19 + (30.5 / 60));

    // 0.3° and half a minute: what the short series claims; the example is exact to a thousandth of that.
    [Fact]
    [Outside("Reda and Andreas 2004", Field.SunAndSky, Through = "pvlib")]
    public void Altitude_matches_the_worked_example_of_the_exact_algorithm() => Assert.Equal(39.872046, Example.Altitude_rad / Degree, 0.3);

    [Fact]
    [Outside("Reda and Andreas 2004", Field.SunAndSky, Through = "pvlib")]
    public void Azimuth_matches_the_worked_example_of_the_exact_algorithm() => Assert.Equal(194.340241, Example.Azimuth_rad / Degree, 0.3);

    [Fact]
    [Outside("Reda and Andreas 2004", Field.SunAndSky, Through = "pvlib")]
    public void Declination_matches_the_worked_example_of_the_exact_algorithm() => Assert.Equal(-9.31434, SunPosition.Declination_rad(ExampleYear_rad) / Degree, 0.3);

    [Fact]
    [Outside("Reda and Andreas 2004", Field.SunAndSky, Through = "pvlib")]
    public void Equation_of_time_matches_the_worked_example_of_the_exact_algorithm() => Assert.Equal(14.64, SunPosition.EquationOfTime_min(ExampleYear_rad), 0.5);

    // The calculator's sheet for 23 June 2021, 01:00 at UTC-06:00, 40° N, 105° W. The short series is off by 0.03° and 0.53 min there:
    // 0.1° of hour angle, which is what it is good for.
    [Fact]
    [Outside("NOAA solar calculator", Field.SunAndSky, Through = "navtools")]
    public void Declination_and_equation_of_time_match_the_example_of_the_published_calculator()
    {
        double year_rad = SunPosition.FractionalYear_rad(174, 365, 7);
        Assert.Equal(23.42154087, SunPosition.Declination_rad(year_rad) / Degree, 0.3);
        Assert.Equal(-2.246194634, SunPosition.EquationOfTime_min(year_rad), 0.6);
    }

    [Theory]
    [InlineData(5, 48.6298687941956)]
    [InlineData(10, 135.741748091813)]
    [InlineData(30, 487.894132885425)]
    [InlineData(50, 778.766689344363)]
    [InlineData(90, 1035.09203253450)]
    [Outside("pvlib 2014", Field.SunAndSky)]
    public void Haurwitz_clear_sky_matches_pvlib(double altitude_deg, double expected_W_m2)
        => Assert.Equal(expected_W_m2, HorizontalIrradiance.ClearSky_W_m2(Math.Sin(altitude_deg * Degree)), 1e-9);

    [Fact]
    [Outside("pvlib 2014", Field.SunAndSky)]
    public void Isotropic_sky_on_a_tilt_of_40_degrees_matches_pvlib()
        => Assert.Equal(88.30222215594891, SurfaceIrradiance.Plane_W_m2(0, 100, 0, new SunAngles(-1, 0), 40 * Degree, 0, 0.25), 1e-9);

    [Fact]
    [Outside("pvlib 2014", Field.SunAndSky)]
    public void Light_from_the_ground_on_a_tilt_of_40_degrees_matches_pvlib()
        => Assert.Equal(26.32000014911496, SurfaceIrradiance.Plane_W_m2(0, 0, 900, new SunAngles(-1, 0), 40 * Degree, 0, 0.25), 1e-6);

    // Its tests round to whole watts.
    [Theory]
    [InlineData(0.405723511, 50, 41.5703604)]
    [InlineData(0.768214312, 1000, 170.790318)]
    [Outside("pvlib 2014", Field.SunAndSky)]
    public void Diffuse_part_matches_pvlib(double clearness, double level_W_m2, double expected_W_m2)
        => Assert.Equal(expected_W_m2, level_W_m2 * HorizontalIrradiance.DiffuseFraction(clearness), 0.5);

    [Fact]
    public void Sun_is_due_south_at_its_highest_and_a_day_has_one_noon()
    {
        SunAngles best = default;
        for (double hour = 0; hour < 24; hour += 1.0 / 60)
        {
            SunAngles sun = SunPosition.At(15, 365, hour, 48, 0);
            best = sun.Altitude_rad > best.Altitude_rad ? sun : best;
        }

        Assert.Equal(180, best.Azimuth_rad / Degree, 0.5);

        // 90° - latitude + declination, which Spencer's series puts at -21.3° for mid-January.
        Assert.Equal(90 - 48 - 21.25, best.Altitude_rad / Degree, 0.15);
    }

    [Fact]
    public void Sun_rises_in_the_east_and_sets_in_the_west()
    {
        Assert.InRange(SunPosition.At(80, 365, 8, 45, 0).Azimuth_rad, Math.PI / 2, Math.PI);
        Assert.InRange(SunPosition.At(80, 365, 16, 45, 0).Azimuth_rad, Math.PI, 1.5 * Math.PI);
        Assert.True(SunPosition.At(355, 365, 12, 80, 0).Altitude_rad < 0);
    }

    [Fact]
    public void Level_surface_gets_the_global_irradiance()
        => Gen.Select(Gen.Double[0.01, 1.5], Gen.Double[0, 1000], Gen.Double[0, 400], Gen.Double[0, 6]).Sample((altitude, beam, diffuse, azimuth) =>
        {
            double global = (beam * Math.Sin(altitude)) + diffuse;
            return Math.Abs(SurfaceIrradiance.Plane_W_m2(beam, diffuse, global, new SunAngles(altitude, azimuth), 0, 1, 0.6) - global) < 1e-9;
        });

    [Fact]
    public void No_beam_reaches_a_wall_when_the_sun_is_down()
    {
        SunAngles down = new(-0.1, Math.PI);
        Assert.Equal(0, SurfaceIrradiance.Plane_W_m2(800, 0, 0, down, Math.PI / 2, Math.PI, 0.6));
        Assert.Equal(0, SurfaceIrradiance.VerticalCylinder_W_m2(800, 0, 0, -0.1, 0.6));
    }

    [Fact]
    public void Upright_cylinder_gets_the_mean_of_upright_planes_all_round()
    {
        SunAngles sun = new(0.4, 2.0);
        double sum = 0;
        const int n = 3_600;
        for (int i = 0; i < n; i++)
        {
            sum += SurfaceIrradiance.Plane_W_m2(600, 120, 350, sun, Math.PI / 2, Math.Tau * i / n, 0.7);
        }

        Assert.Equal(sum / n, SurfaceIrradiance.VerticalCylinder_W_m2(600, 120, 350, 0.4, 0.7), 1e-3);
    }

    [Fact]
    public void Diffuse_fraction_joins_up_and_stays_between_nought_and_one()
    {
        Assert.Equal(HorizontalIrradiance.DiffuseFraction(0.22), HorizontalIrradiance.DiffuseFraction(0.22 + 1e-12), 1e-3);
        Assert.Equal(HorizontalIrradiance.DiffuseFraction(0.80), HorizontalIrradiance.DiffuseFraction(0.80 + 1e-12), 2e-3);
        Gen.Double[0, 1].Sample(kt => HorizontalIrradiance.DiffuseFraction(kt) is > 0.1 and <= 1);
    }

    [Fact]
    public void Full_cloud_leaves_a_quarter_and_more_cloud_never_lets_through_more()
    {
        Assert.Equal(100, HorizontalIrradiance.CloudySky_W_m2(400, 1), 1e-9);
        Assert.Equal(400, HorizontalIrradiance.CloudySky_W_m2(400, 0), 1e-9);
        Gen.Select(Gen.Double[0, 0.9], Gen.Double[0, 0.1]).Sample((n, more) => HorizontalIrradiance.CloudySky_W_m2(400, n + more) <= HorizontalIrradiance.CloudySky_W_m2(400, n));
    }

    [Fact]
    public void Sunshine_above_the_air_is_strongest_in_early_January_and_averages_the_solar_constant()
    {
        double[] year = [.. Enumerable.Range(1, 365).Select(HorizontalIrradiance.ExtraterrestrialNormal_W_m2)];
        Assert.Equal(1361, year.Average(), 1e-6);
        Assert.True(HorizontalIrradiance.ExtraterrestrialNormal_W_m2(3) > HorizontalIrradiance.ExtraterrestrialNormal_W_m2(184) + 80);
        Assert.Equal(0, HorizontalIrradiance.Extraterrestrial_W_m2(20, -0.1));
    }

    // The printed series evaluated by another program: fraction of the year, equation of time in minutes, declination in degrees.
    [Theory]
    [InlineData(15, 365, 9, 0.238847113, -8.5845033, -21.2948760)]
    [InlineData(100, 366, 18, 1.703841917, -1.6326625, 7.6474780)]
    [InlineData(200, 365, 3, 3.419171731, -6.1608552, 21.0690587)]
    [InlineData(320, 365, 21, 5.497787144, 14.8799102, -18.6548262)]
    public void Year_equation_of_time_and_declination_are_the_printed_series(int day, int days, double utc_h, double year_rad, double time_min, double declination_deg)
    {
        Assert.Equal(year_rad, SunPosition.FractionalYear_rad(day, days, utc_h), 1e-8);
        Assert.Equal(time_min, SunPosition.EquationOfTime_min(year_rad), 1e-5);
        Assert.Equal(declination_deg, SunPosition.Declination_rad(year_rad) / Degree, 1e-6);
    }

    // Worked out by another program from the same series by turning vectors: altitude, and azimuth from north by east.
    [Theory]
    [InlineData(15, 18, 45.2, -112.6, 19.841840, 155.458882)]
    [InlineData(200, 3, -33, 151, 34.195560, 343.637835)]
    [InlineData(355, 22, 60, -150, 6.575614, 180.456452)]
    [InlineData(80, 14, 10, 20, 41.172606, 261.083731)]
    public void The_sun_is_where_turned_vectors_put_it(int day, double utc_h, double latitude, double longitude, double altitude_deg, double azimuth_deg)
    {
        SunAngles sun = SunPosition.At(day, 365, utc_h, latitude, longitude);
        Assert.Equal(altitude_deg, sun.Altitude_rad / Degree, 1e-5);
        Assert.Equal(azimuth_deg, sun.Azimuth_rad / Degree, 1e-5);
        Assert.Equal(Math.Sin(altitude_deg * Degree), sun.CosZenith, 1e-7);
    }

    // By the printed formulas in another program.
    [Theory]
    [InlineData(0.1, 0.991)]
    [InlineData(0.22, 0.9802)]
    [InlineData(0.3, 0.9485956)]
    [InlineData(0.5, 0.65915)]
    [InlineData(0.7, 0.2439796)]
    [InlineData(0.9, 0.165)]
    public void Diffuse_part_follows_the_printed_polynomial(double clearness, double part)
        => Assert.Equal(part, HorizontalIrradiance.DiffuseFraction(clearness), 1e-9);

    [Theory]
    [InlineData(3, 1405.8531)]
    [InlineData(91, 1361.1933)]
    [InlineData(172, 1316.8187)]
    public void Sunshine_above_the_air_goes_with_the_distance_of_the_sun(int day, double normal_W_m2)
    {
        Assert.Equal(normal_W_m2, HorizontalIrradiance.ExtraterrestrialNormal_W_m2(day), 1e-3);
        Assert.Equal(0.5 * normal_W_m2, HorizontalIrradiance.Extraterrestrial_W_m2(day, 0.5), 1e-3);
        Assert.Equal(0, HorizontalIrradiance.ClearSky_W_m2(0));
    }

    // Beam 700, diffuse 120, level 450 W/m², ground 0.6; sun 25° up at 150°, plane tilted 60° to 200°: the cosine from vectors, by another program.
    [Fact]
    public void A_tilted_plane_and_an_upright_cylinder_get_what_vectors_say()
    {
        SunAngles sun = new(25 * Degree, 150 * Degree);
        Assert.Equal(658.57669395, SurfaceIrradiance.Plane_W_m2(700, 120, 450, sun, 60 * Degree, 200 * Degree, 0.6), 1e-6);
        Assert.Equal(396.94070998, SurfaceIrradiance.VerticalCylinder_W_m2(700, 120, 450, 25 * Degree, 0.6), 1e-6);
        Assert.Equal(195, SurfaceIrradiance.VerticalCylinder_W_m2(700, 120, 450, 0, 0.6), 1e-9);
        Assert.Equal(195, SurfaceIrradiance.Plane_W_m2(700, 120, 450, new SunAngles(0, 0), 90 * Degree, 0, 0.6), 1e-9);
    }

    // Emissivity of the sky by the published parabola 0.711 + 0.56 x + 0.73 x², x the dew point in °C over 100, worked out by hand; cloud adds
    // 0.784 of what a clear sky lacks, in proportion. A drier sky than -38.4 °C, the bottom of the parabola, is no warmer.
    [Theory]
    [InlineData(20, 0, 0.8522)]
    [InlineData(0, 0, 0.7110)]
    [InlineData(-20, 0, 0.6282)]
    [InlineData(-38.356, 0, 0.6036)]
    [InlineData(-60, 0, 0.6036)]
    [InlineData(0, 1, 0.93758)]
    [InlineData(0, 0.5, 0.82429)]
    public void Sky_radiates_by_its_dew_point_and_cloud(double dewPoint_C, double cloud, double emissivity)
        => Assert.Equal(emissivity, Math.Pow(SkyTemperature.BerdahlMartin_K(280, dewPoint_C + 273.15, cloud) / 280, 4), 5e-5);

    // 1 - 0.75 n^3.4, worked out by hand.
    [Theory]
    [InlineData(0.5, 0.92895)]
    [InlineData(0.8, 0.64878)]
    public void Half_a_sky_of_cloud_takes_little_and_four_fifths_a_third(double cloud, double part)
        => Assert.Equal(part, HorizontalIrradiance.CloudySky_W_m2(1000, cloud) / 1000, 1e-4);

    [Fact]
    public void Sky_is_colder_than_the_air_and_clouds_and_moisture_warm_it()
        => Gen.Select(Gen.Double[240, 290], Gen.Double[0.5, 20], Gen.Double[0, 0.99]).Sample((air, depression, n) =>
        {
            double dew = air - depression;
            double bm = SkyTemperature.BerdahlMartin_K(air, dew, n);
            return bm < air && SkyTemperature.BerdahlMartin_K(air, dew, n + 0.01) > bm && SkyTemperature.BerdahlMartin_K(air, dew + 0.4, n) >= bm;
        });

    [Fact]
    public void Place_and_time_out_of_range_are_refused_with_value_and_limits()
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => SunPosition.At(1, 365, 12, 91, 0));
        Assert.Equal(("latitude_deg", (object)91.0), (e.ParamName, e.ActualValue));
        Assert.Contains("-90 to 90", e.Message, StringComparison.Ordinal);
        Assert.Contains("1 to 365", Assert.Throws<ArgumentOutOfRangeException>(() => SunPosition.At(366, 365, 12, 0, 0)).Message, StringComparison.Ordinal);
        Assert.Contains("0 to 24 h", Assert.Throws<ArgumentOutOfRangeException>(() => SunPosition.At(1, 365, 24.1, 0, 0)).Message, StringComparison.Ordinal);
    }
}
