using ColdSim.Model.Electrical;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.SunAndSky;
using Xunit;

namespace ColdSim.Tests.Model.Electrical;

public class SolarPanelTests
{
    private static readonly SolarPanelSpecification Flat = new() { Rated_W = 200 };
    private static readonly SiteSpecification Place = new() { Latitude_deg = 45, Longitude_deg = -105 };

    // Local noon, a little off the equation of time.
    private static readonly DateTimeOffset Noon = new(2027, 1, 15, 19, 10, 0, TimeSpan.Zero);

    [Fact]
    [Outside("pvlib 2014", Field.Electrical)]
    public void Cells_of_100_W_at_900_W_m2_and_30_C_give_what_pvlib_says()
        => Assert.Equal(88.65, new SolarPanelSpecification { Rated_W = 100, PowerPerKelvin_1_K = -0.003 }.Cells_W(900, 303.15), 1e-9);

    [Fact]
    public void Cells_at_800_W_m2_in_air_of_20_C_have_the_temperature_of_the_data_sheet()
        => Assert.Equal(Flat.NominalCell_K, Flat.Cell_K(800, 293.15), 1e-9);

    [Fact]
    public void Cold_cells_give_more_and_snow_leaves_its_part_dark()
    {
        Assert.True(Flat.Power_W(500, 253.15) > Flat.Power_W(500, 293.15));
        Assert.Equal(0, (Flat with { SnowCover_frac = 1 }).Power_W(500, 253.15));
        Assert.Equal(0.25 * Flat.Power_W(500, 253.15), (Flat with { SnowCover_frac = 0.75 }).Power_W(500, 253.15), 1e-9);
    }

    [Fact]
    public void A_level_panel_gets_the_level_sun_and_a_tilted_one_more_at_winter_noon()
    {
        SunAngles sun = GlobalHorizontalIrradiance.Position(Noon, Place)!.Value;
        double flat_W_m2 = Flat.PlaneSun_W_m2(400, sun, Noon.DayOfYear, 0.6);
        Assert.Equal(400, flat_W_m2, 1e-9);
        Assert.True((Flat with { Tilt_rad = 1 }).PlaneSun_W_m2(400, sun, Noon.DayOfYear, 0.6) > 1.5 * flat_W_m2);
        Assert.Equal(400, Flat.PlaneSun_W_m2(400, null, 15, 0.6), 1e-9);
    }

    [Fact]
    public void Sun_that_the_weather_does_not_give_comes_from_sky_and_cloud_and_leaves_the_windows_as_they_were()
    {
        WeatherRow[] rows = [.. Enumerable.Range(0, 3).Select(h => new WeatherRow(Noon.AddHours(h), 263.15, Cloud_frac: 0))];
        int row = 0;
        WeatherSample clear = new WeatherSeries(rows, new WeatherDefaults(), Place).At(0, ref row);
        Assert.InRange(clear.LevelSun_W_m2, 350, 450);
        Assert.Equal(0, clear.WindowSun_W_m2);
        Assert.Equal(0, new WeatherSeries(rows, new WeatherDefaults(), new SiteSpecification()).At(0, ref row).LevelSun_W_m2);
        WeatherRow[] stated = [.. rows.Select(r => r with { Sun_W_m2 = 123 })];
        Assert.Equal(123, new WeatherSeries(stated, new WeatherDefaults(), Place).At(0, ref row).LevelSun_W_m2);
    }
}
