using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Weather;

public class WeatherSeriesTests
{
    private static readonly SiteSpecification Nowhere = new();

    private static WeatherSample At(WeatherSeries series, double time_s)
    {
        int row = 0;
        return series.At(time_s, ref row);
    }

    [Fact]
    public void Series_is_linear_between_rows_and_constant_beyond_its_ends()
    {
        WeatherSeries series = Changing(h => h * h, 3, 1, wind_m_s: 4);
        Assert.Equal(Zero_K + 2.5, At(series, 1.5 * 3600).Air_K, 1e-9);
        Assert.Equal(Zero_K + 4 + 0.25 * 5, At(series, 2.25 * 3600).Air_K, 1e-9);
        Assert.Equal(Zero_K, At(series, -50).Air_K, 1e-9);
        Assert.Equal(Zero_K + 9, At(series, 1e6).Air_K, 1e-9);
        Assert.Equal(4, Count(series));
    }

    private static int Count(WeatherSeries series) => series.Count;

    [Fact]
    public void Value_does_not_depend_on_the_caller_s_last_place()
    {
        WeatherSeries series = Changing(h => 5 * Math.Sin(h), 48);
        Gen.Select(Gen.Double[-3600, 50 * 3600], Gen.Int[-5, 80]).Sample((time_s, guess) =>
        {
            int row = guess;
            return series.At(time_s, ref row) == At(series, time_s);
        });
    }

    [Fact]
    public void The_next_row_is_the_first_one_after_a_time()
    {
        WeatherSeries series = Changing(_ => 0, 3);
        Assert.Equal(3600, series.NextRow_s(0, 0));
        Assert.Equal(3600, series.NextRow_s(3599.9, 0));
        Assert.Equal(7200, series.NextRow_s(3600, 1));
        Assert.Equal(double.PositiveInfinity, series.NextRow_s(10_800, 2));
    }

    [Fact]
    public void Values_missing_in_a_row_come_from_the_defaults()
    {
        WeatherDefaults defaults = new() { Wind_m_s = 3.5, RelativeHumidity_frac = 0.6, Sun_W_m2 = 100 };
        SiteSpecification site = new() { Elevation_m = 1500, GroundAlbedo_frac = 0.6 };
        WeatherSeries series = new([new(Start, 265), new(Start.AddHours(1), 265)], defaults, site);
        WeatherSample s = At(series, 0);
        Assert.Equal(3.5, s.Wind_m_s);
        Assert.Equal(0.6 * SaturationVapour.PressureOverWater_Pa(265), s.VapourPressure_Pa, 0.01 * s.VapourPressure_Pa);
        Assert.Equal(StandardAtmosphere.Pressure_Pa(1500), s.Pressure_Pa, 1e-9);
        Assert.Equal(100 * 0.5 * 1.6, s.WindowSun_W_m2, 1e-9);
        Assert.True(s.Sky_K < 265);
    }

    [Fact]
    public void Values_of_a_row_override_the_defaults()
    {
        WeatherSeries series = new(
            [new(Start, 270, 7, 262, 0, 1, 88_000), new(Start.AddHours(1), 270, 7, 262, 0, 0, 88_000)], new WeatherDefaults(), Nowhere);
        WeatherSample cloudy = At(series, 0), clear = At(series, 3600);
        Assert.Equal((7.0, 88_000.0), (cloudy.Wind_m_s, cloudy.Pressure_Pa));
        Assert.Equal(SaturationVapour.PressureOverWater_Pa(262), cloudy.VapourPressure_Pa, 1e-9);
        Assert.True(clear.Sky_K < cloudy.Sky_K && cloudy.Sky_K < 270);
    }

    [Fact]
    public void A_low_winter_sun_shines_more_on_walls_than_on_the_ground()
    {
        SiteSpecification site = new() { Latitude_deg = 45, Longitude_deg = -112, GroundAlbedo_frac = 0.2 };
        DateTimeOffset noon = new(2027, 1, 12, 12, 30, 0, TimeSpan.FromHours(-7));
        WeatherSeries series = new([new(noon, 265, Sun_W_m2: 420), new(noon.AddHours(12), 265, Sun_W_m2: 0)], new WeatherDefaults(), site);
        WeatherSample day = At(series, 0), night = At(series, 12 * 3600);
        Assert.InRange(day.CylinderSun_W_m2, 200, 900);
        Assert.InRange(day.WindowSun_W_m2, 200, 900);
        Assert.Equal((0, 0), (night.WindowSun_W_m2, night.CylinderSun_W_m2));

        // A wall cannot get more than beam straight on, sky and ground together.
        Assert.True(day.CylinderSun_W_m2 < 1361);
    }

    [Fact]
    public void The_same_instant_in_another_offset_is_the_same_sun()
    {
        SiteSpecification site = new() { Latitude_deg = 45, Longitude_deg = -112 };
        DateTimeOffset noon = new(2027, 1, 12, 12, 30, 0, TimeSpan.FromHours(-7));
        WeatherSample here = At(new([new(noon, 265, Sun_W_m2: 420), new(noon.AddHours(1), 265)], new(), site), 0);
        WeatherSample there = At(new([new(noon.ToOffset(TimeSpan.FromHours(9)), 265, Sun_W_m2: 420), new(noon.AddHours(1), 265)], new(), site), 0);
        Assert.Equal(here, there);
    }

    [Fact]
    public void A_change_of_offset_in_the_file_is_no_jump_in_time()
    {
        // Clocks go forward at two: the rows are an hour apart as instants, and so is the run.
        DateTimeOffset before = new(2027, 3, 14, 1, 0, 0, TimeSpan.FromHours(-7)), after = new(2027, 3, 14, 3, 0, 0, TimeSpan.FromHours(-6));
        WeatherSeries series = new([new(before, 270), new(after, 272), new(after.AddHours(1), 272)], new(), Nowhere);
        Assert.Equal(271, At(series, 1800).Air_K, 1e-9);
        Assert.Equal(7200, (series.Last - series.First).TotalSeconds);
    }

    [Fact]
    public void Rows_that_do_not_come_one_after_the_other_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new WeatherSeries([new(Start, 270)], new(), Nowhere));
        Assert.Throws<ArgumentException>(() => new WeatherSeries([new(Start, 270), new(Start, 271)], new(), Nowhere));
        Assert.Throws<ArgumentException>(() => new WeatherSeries([new(Start, 270), new(Start.AddHours(-1), 271)], new(), Nowhere));
    }

    // ---- the clock

    [Theory]
    [InlineData(22, 6.5, 22, true)]
    [InlineData(22, 6.5, 6.5, false)]
    [InlineData(22, 6.5, 0, true)]
    [InlineData(22, 6.5, 12, false)]
    [InlineData(8, 9, 8.5, true)]
    [InlineData(8, 9, 9, false)]
    [InlineData(7, 7, 3, true)]
    [InlineData(20, 24, 23.99, true)]
    [InlineData(20, 24, 0, false)]
    [InlineData(20, 0, 23.99, true)]
    [InlineData(20, 0, 0, false)]
    public void A_window_holds_its_start_and_not_its_end(double from_h, double to_h, double clock_h, bool inside)
        => Assert.Equal(inside, new ClockWindow(from_h * 3600, to_h * 3600).Contains(clock_h * 3600));

    [Fact]
    public void A_window_changes_at_its_edges_and_nowhere_else()
        => Gen.Select(Gen.Int[0, 1440], Gen.Int[0, 1440], Gen.Double[0, 86_399]).Sample((from, to, clock_s) =>
        {
            ClockWindow w = new(from * 60, to * 60);
            double wait_s = w.UntilEdge_s(clock_s);
            Assert.InRange(wait_s, 1e-9, 86_400);
            bool now = w.Contains(clock_s);
            for (double x = 0.02; x < 1; x += 0.07) Assert.Equal(now, w.Contains((clock_s + x * wait_s) % 86_400));
        });

    [Fact]
    public void The_run_s_clock_goes_round_and_names_the_next_edge()
    {
        RunClock clock = new(Start, [new ClockWindow(22 * 3600, 6.5 * 3600)]);
        Assert.Equal(16 * 3600, clock.At_s(0));
        Assert.Equal(0, clock.At_s(8 * 3600));
        Assert.Equal(3600, clock.At_s(33 * 3600));
        Assert.Equal(6 * 3600, clock.NextEdge_s(0));
        Assert.Equal(14.5 * 3600, clock.NextEdge_s(6 * 3600));
        Assert.Equal(double.PositiveInfinity, new RunClock(Start, []).NextEdge_s(0));
    }
}
