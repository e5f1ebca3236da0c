using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class PublisherFormatTests
{
    private static readonly TimeSpan Eastern = TimeSpan.FromHours(-5);

    [Fact]
    public void Environment_canadas_hours_are_read_in_the_standard_time_stated()
    {
        WeatherResult read = Samples.Good(PublisherSamples.EnvironmentCanada, new() { Offset = Eastern });
        Assert.Equal(WeatherFormat.EnvironmentCanada, read.Format);
        Assert.Equal(4, read.Rows.Count);
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-24, new DateTimeOffset(2031, 1, 10, 3, 0, 0, Eastern)), (coldest.Celsius(), coldest.Time));
        Assert.Equal([5, 2.5, null, 10], read.Rows.Select(r => r.Wind_m_s is { } v ? Math.Round(v, 9) : (double?)null));
        Assert.Equal(-24.5, read.Rows[0].DewPoint_K!.Value - 273.15, 1e-9);
        Assert.Equal(WeatherColumn.DewPoint_K(249.15, 0.8), read.Rows[2].DewPoint_K!.Value, 1e-9);
        Assert.Equal((98_450, (double?)null), (Math.Round(read.Rows[0].Pressure_Pa!.Value, 6), read.Rows[0].Sun_W_m2));
        Assert.Equal(
            ("NOWHERE LAKE", "9999999", 49.5, -82.25, 244.4, Eastern),
            (read.Station.Name, read.Station.Id, read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m, read.Station.Offset));
        Assert.Contains("w: 2 records without a temperature left out", read.Notes);
    }

    [Fact]
    public void Environment_canada_is_asked_for_its_offset_and_never_guessed()
        => Assert.Equal(
            "w:17:1: times are in local standard time, and the file does not say its offset from UTC; accepted: --offset \"-05:00\", or offset under [weather], the standard time of the station's zone; "
            + "at longitude -82.3 often -05:00 or an hour beside it",
            Assert.Single(Samples.Read(PublisherSamples.EnvironmentCanada).Problems).ToString());

    [Fact]
    public void Environment_canadas_newer_file_has_its_station_in_columns()
    {
        WeatherResult read = Samples.Good(PublisherSamples.EnvironmentCanadaColumns, new() { Offset = Eastern });
        Assert.Equal(WeatherFormat.EnvironmentCanada, read.Format);
        Assert.Equal(Samples.Good(PublisherSamples.EnvironmentCanada, new() { Offset = Eastern }).Rows.Take(2), read.Rows);
        Assert.Equal((49.5, -82.25, (double?)null), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m));
    }

    [Fact]
    public void Nsrdb_is_shown_by_the_places_own_zone()
    {
        WeatherResult read = Samples.Good(PublisherSamples.Nsrdb);
        Assert.Equal((WeatherFormat.Nsrdb, 3, false), (read.Format, read.Rows.Count, read.IsTypicalYear));
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-15.1, new DateTimeOffset(2031, 1, 10, 8, 30, 0, TimeSpan.FromHours(-7))), (coldest.Celsius(), coldest.Time));
        Assert.Equal((0.9, -16.8, 20.0, 78_200.0), (coldest.Wind_m_s, Math.Round(coldest.DewPoint_K!.Value - 273.15, 6), coldest.Sun_W_m2, coldest.Pressure_Pa));
        Assert.Equal(
            (40.53, -108.54, 2168.0, TimeSpan.FromHours(-7)), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m, read.Station.Offset));
        WeatherResult local = Samples.Good(PublisherSamples.Nsrdb.Replace(",-108.54,0,2168,-7,", ",-108.54,-7,2168,-7,", StringComparison.Ordinal));
        Assert.Equal(new DateTimeOffset(2031, 1, 10, 15, 0, 0, TimeSpan.FromHours(-7)), local.Rows[0].Time);
    }

    [Fact]
    public void Nsrdbs_months_of_different_years_are_a_typical_year()
    {
        WeatherResult read = Samples.Good(PublisherSamples.Nsrdb.Replace("2031,1,10,15,0,", "2031,1,31,22,30,", StringComparison.Ordinal)
            .Replace("2031,1,10,15,30,", "2031,1,31,23,30,", StringComparison.Ordinal).Replace("2031,1,10,16,0,", "1999,2,1,0,30,", StringComparison.Ordinal));
        Assert.True(read.IsTypicalYear);
        Assert.All(read.Rows.Zip(read.Rows.Skip(1)), p => Assert.Equal(TimeSpan.FromHours(1), p.Second.Time - p.First.Time));
    }

    [Fact]
    public void Pvgis_series_ends_above_its_explanations_and_a_panels_sun_is_not_level_grounds()
    {
        WeatherResult read = Samples.Good(PublisherSamples.PvgisPanel);
        Assert.Equal((WeatherFormat.Pvgis, 3), (read.Format, read.Rows.Count));
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-4.25, new DateTimeOffset(2031, 1, 10, 6, 10, 0, TimeSpan.Zero)), (coldest.Celsius(), coldest.Time));
        Assert.Equal((1.77, (double?)null), (coldest.Wind_m_s, coldest.DewPoint_K));
        Assert.All(read.Rows, r => Assert.Null(r.Sun_W_m2));
        Assert.Contains("w: its sun is on the plane of a panel, slope 30 deg, and is not used; with slope 0 it is that on level ground", read.Notes);
        Assert.Equal((45.0, 8.0, 250.0, (TimeSpan?)null), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m, read.Station.Offset));
        Assert.Equal([0, 0, 35.2], Samples.Good(PublisherSamples.PvgisLevel).Rows.Select(r => Math.Round(r.Sun_W_m2!.Value, 9)));
    }

    [Fact]
    public void Pvgis_typical_year_is_named_as_one()
    {
        WeatherResult read = Samples.Good(PublisherSamples.PvgisTypical);
        Assert.Equal((WeatherFormat.Pvgis, 4, true), (read.Format, read.Rows.Count, read.IsTypicalYear));
        Assert.Contains("w: a typical year, its months from 2007 to 2011, one after another as 2007", read.Notes);
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-3.5, new DateTimeOffset(2007, 1, 31, 23, 0, 0, TimeSpan.Zero)), (coldest.Celsius(), coldest.Time));
        Assert.Equal((1.4, 98_510.0), (coldest.Wind_m_s, coldest.Pressure_Pa));
        Assert.Equal(WeatherColumn.DewPoint_K(269.65, 0.92), coldest.DewPoint_K!.Value, 1e-9);
        Assert.Equal([0, 0, 0, 15], read.Rows.Select(r => r.Sun_W_m2));
        Assert.Equal((250.0, (TimeSpan?)null), (read.Station.Elevation_m, read.Station.Offset));
    }

    [Fact]
    public void Global_hourlys_packed_cells_are_read_with_their_codes_of_quality()
    {
        WeatherResult read = Samples.Good(PublisherSamples.GlobalHourly);
        Assert.Equal((WeatherFormat.GlobalHourly, 3), (read.Format, read.Rows.Count));
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-12.8, new DateTimeOffset(2031, 1, 10, 7, 53, 0, TimeSpan.Zero)), (coldest.Celsius(), coldest.Time));
        Assert.Equal([4.6, 0, 2.1], read.Rows.Select(r => Math.Round(r.Wind_m_s!.Value, 9)));
        Assert.Equal([-11.1, -15, -15], read.Rows.Take(2).Select(r => Math.Round(r.DewPoint_K!.Value - 273.15, 6)).Append(-15));
        Assert.Equal([0.875, 0, 1], read.Rows.Select(r => r.Cloud_frac));
        Assert.Equal([84_000, 84_050], read.Rows.Take(2).Select(r => Math.Round(r.Pressure_Pa!.Value, 6)));
        Assert.All(read.Rows, r => Assert.Null(r.Sun_W_m2));
        Assert.Contains("w: 1 value that failed the publisher's checks left out", read.Notes);
        Assert.Equal(
            ("99999999999", 40.0, -105.2, 1600.0, (TimeSpan?)null),
            (read.Station.Id, read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m, read.Station.Offset));
    }

    [Fact]
    public void A_cell_that_is_not_packed_is_refused_with_its_place()
        => Assert.Equal(
            "w:4:157: air: 'cold,1' cannot be read; accepted: whole numbers and codes parted by commas, such as -0067,1",
            Assert.Single(Samples.Read(PublisherSamples.GlobalHourly.Replace("\"-0128,1\"", "\"cold,1\"", StringComparison.Ordinal)).Problems).ToString());

    [Fact]
    public void Open_meteos_hours_are_found_behind_other_blocks()
    {
        WeatherResult read = Samples.Good(PublisherSamples.OpenMeteoBlocks);
        Assert.Equal((WeatherFormat.OpenMeteo, 3), (read.Format, read.Rows.Count));
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-16, new DateTimeOffset(2031, 1, 10, 7, 0, 0, TimeSpan.FromHours(-7))), (coldest.Celsius(), coldest.Time));
        Assert.Equal((2, -18.0, 50.0), (Math.Round(coldest.Wind_m_s!.Value, 9), Math.Round(coldest.DewPoint_K!.Value - 273.15, 6), coldest.Sun_W_m2));
        Assert.Equal((2400.0, TimeSpan.FromHours(-7)), (read.Station.Elevation_m, read.Station.Offset));
        Assert.Contains("w: 2 blocks before the hours, of the moment or of quarters of an hour, not used", read.Notes);
        Assert.Equal(["w: a further block from line 17 on is not used"], read.Warnings);
    }

    [Fact]
    public void Open_meteos_table_of_several_places_is_read_for_the_nearest()
    {
        Assert.StartsWith("w:1:1: the file holds 2 places: 40, -105.2; 46.25, -94.13; ", Assert.Single(Samples.Read(PublisherSamples.OpenMeteoPlaces).Problems).ToString(), StringComparison.Ordinal);
        WeatherResult read = Samples.Good(PublisherSamples.OpenMeteoPlaces, new() { Near = (46, -94) });
        Assert.Equal([-24, -26.5], read.Rows.Select(r => r.Celsius()));
        Assert.Equal((new DateTimeOffset(2031, 1, 10, 8, 0, 0, TimeSpan.FromHours(-6)), 372.0), (read.Rows[0].Time, read.Station.Elevation_m));
        Assert.Equal([-14, -16], Samples.Good(PublisherSamples.OpenMeteoPlaces, new() { Near = (40, -105) }).Rows.Select(r => r.Celsius()));
    }
}
