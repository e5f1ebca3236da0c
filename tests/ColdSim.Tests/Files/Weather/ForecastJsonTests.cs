using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class ForecastJsonTests
{
    [Fact]
    public void Open_metos_answer_is_read_with_its_place_and_the_units_it_names()
    {
        WeatherResult read = Samples.Good(ForecastSamples.OpenMeteo);
        Assert.Equal(WeatherFormat.OpenMeteoJson, read.Format);
        Assert.Equal(4, read.Rows.Count);
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-25, new DateTimeOffset(2031, 1, 10, 7, 0, 0, TimeSpan.FromHours(-6))), (coldest.Celsius(), coldest.Time));
        Assert.Equal([4.4704, 2.2352, 0, 8.9408], read.Rows.Select(r => Math.Round(r.Wind_m_s!.Value, 9)));
        Assert.Equal([-25, -25, -20, -15], read.Rows.Select(r => Math.Round(r.DewPoint_K!.Value - 273.15, 6)));
        Assert.Equal([0, 0, 60, 120], read.Rows.Select(r => r.Sun_W_m2));
        Assert.Equal(97_000, read.Rows[0].Pressure_Pa!.Value, 1e-6);
        Assert.Equal((46.25, -94.125, 372.0, TimeSpan.FromHours(-6)), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m, read.Station.Offset));
    }

    [Fact]
    public void Cloud_a_little_over_100_percent_is_read_as_100_and_counted()
    {
        WeatherResult read = Samples.Good(ForecastSamples.OpenMeteo);
        Assert.Equal([1, 0.5, 0, 0.25], read.Rows.Select(r => r.Cloud_frac));
        Assert.Contains("w: cloud up to 101 % in 1 row, read as 100 %", read.Notes);
        WeatherResult own = Samples.Good("time,air [°C],humidity [%],cloud [%]\n2025-01-14T01:00Z,-1,103,101\n2025-01-14T02:00Z,-2,104.5,100\n");
        Assert.Equal(["w: humidity up to 104.5 % in 2 rows, read as 100 %", "w: cloud up to 101 % in 1 row, read as 100 %"], own.Notes);
        Assert.Equal("w:2:22: cloud [%]: 111 is out of range; accepted: 0 % to 100 %", Samples.Read("time,air [°C],cloud [%]\n2025-01-14T01:00Z,-1,111\n").Problems[0].ToString());
    }

    [Fact]
    public void Seconds_since_1970_are_shown_by_the_places_clock()
    {
        string unix = ForecastSamples.OpenMeteo.Replace("\"iso8601\"", "\"unixtime\"", StringComparison.Ordinal);
        DateTimeOffset first = new(2031, 1, 10, 6, 0, 0, TimeSpan.FromHours(-6));
        for (int hour = 0; hour < 4; hour++)
            unix = unix.Replace($"\"2031-01-10T{6 + hour:00}:00\"", $"{first.AddHours(hour).ToUnixTimeSeconds()}", StringComparison.Ordinal);
        Assert.Equal(Samples.Good(ForecastSamples.OpenMeteo).Rows, Samples.Good(unix).Rows);
    }

    [Fact]
    public void Of_several_places_the_nearest_is_read_and_without_a_position_they_are_named()
    {
        string both = $"[{ForecastSamples.OpenMeteo}, {ForecastSamples.OpenMeteo.Replace("46.25", "40.5", StringComparison.Ordinal).Replace("-4.0, -13.0", "-4.0, -22.0", StringComparison.Ordinal)}]";
        Assert.Equal(
            "w:1:1: the file holds 2 places: 46.25, -94.13; 40.5, -94.13; accepted: one place, or --latitude and --longitude (latitude and longitude under [place]) to take the nearest",
            Assert.Single(Samples.Read(both).Problems).ToString());
        WeatherResult read = Samples.Good(both, new() { Near = (41, -94) });
        Assert.Equal((-30, 40.5), (read.Rows.Min(r => r.Celsius()), read.Station.Latitude_deg));
        Assert.Contains("w: of 2 places the nearest is used, 40.5, -94.13", read.Notes);
        Assert.Equal(-25, Samples.Good(both, new() { Near = (47, -94) }).Rows.Min(r => r.Celsius()));
    }

    [Theory]
    [InlineData("\"temperature_2m\": [-4.0, -13.0, 5.0, 14.0]", "\"temperature_2m\": [-4.0, -13.0]", "w:1:1: 'temperature_2m' has 2 values for 4 times")]
    [InlineData("\"temperature_2m\": \"°F\"", "\"temperature_2m\": \"furlong\"", "w:1:1: hourly_units: 'furlong' is not a unit of temperature")]
    [InlineData("-4.0, -13.0", "-4.0, 1300", "w:10:30: temperature_2m: 1300 °F is out of range; accepted: -90 °C to 60 °C")]
    [InlineData("\"2031-01-10T08:00\"", "\"soon\"", "w:9:54: time: not a date and time; accepted: such as 2024-01-31T23:00, or seconds since 1970")]
    [InlineData("\"temperature_2m\": [-4.0", "\"temperature_80m\": [-4.0", "w:1:1: no list 'temperature_2m' in 'hourly'; accepted: an hourly answer with temperature_2m")]
    public void What_is_wrong_in_open_meteos_answer_is_said_with_its_place(string was, string @is, string expected)
    {
        string text = ForecastSamples.OpenMeteo.Replace(was, @is, StringComparison.Ordinal);
        Assert.NotEqual(ForecastSamples.OpenMeteo, text);
        Assert.Equal(expected.Replace("w:1:1: ", "w:1:1: ", StringComparison.Ordinal), Assert.Single(Samples.Read(text).Problems).ToString());
    }

    [Fact]
    public void An_answer_that_refuses_is_quoted()
        => Assert.Equal(
            "w:1:1: the service refused: Latitude must be in range; accepted: an hourly answer with temperature_2m",
            Samples.Read("{\"error\":true,\"reason\":\"Latitude must be in range\"}").Problems[0].ToString());

    [Fact]
    public void Met_norways_forecast_is_read_with_its_place_and_time_of_issue()
    {
        WeatherResult read = Samples.Good(ForecastSamples.MetNorway);
        Assert.Equal(WeatherFormat.MetNorway, read.Format);
        Assert.Equal(14, read.Rows.Count);
        Assert.All(read.Rows.Zip(read.Rows.Skip(1)), p => Assert.Equal(TimeSpan.FromHours(1), p.Second.Time - p.First.Time));
        WeatherRow coldest = read.Rows.MinBy(r => r.Air_K);
        Assert.Equal((-14, new DateTimeOffset(2031, 1, 10, 8, 0, 0, TimeSpan.Zero)), (coldest.Celsius(), coldest.Time));
        Assert.Equal((1.5, -10.0, 0.125), (read.Rows[0].Wind_m_s, read.Rows[0].DewPoint_K - 273.15, read.Rows[0].Cloud_frac));
        Assert.Equal(-10.3, read.Rows[1].DewPoint_K!.Value - 273.15, 0.05);
        Assert.All(read.Rows, r => Assert.Equal((null, null), (r.Sun_W_m2, r.Pressure_Pa)));
        Assert.Equal((60.25, 10.75, 510.0, (TimeSpan?)null), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m, read.Station.Offset));
        Assert.Equal(new DateTimeOffset(2031, 1, 10, 4, 30, 0, TimeSpan.Zero), read.Station.Issued);
    }

    [Fact]
    public void The_lowest_and_highest_printed_for_a_block_are_in_its_curve()
    {
        WeatherResult read = Samples.Good(ForecastSamples.MetNorway);
        Assert.Equal([-8, -9, -11.5, -14, -9.5, -5, -5.5, -6], read.Rows.Take(8).Select(r => r.Celsius()));
        Assert.Equal([2, 2.5, 3, 3.5, 4, 4.5, 5], read.Rows.Skip(1).Take(7).Select(r => Math.Round(r.Wind_m_s!.Value, 9)));
        Assert.Equal([-6, -6.333333, -6.666667, -7, -7.333333, -7.666667, -8], read.Rows.Skip(7).Select(r => r.Celsius()));
        Assert.Contains(
            "w: from 2031-01-10T06:00+00:00 on in blocks of some hours; the hours between lie on straight lines, through the lowest and highest printed for each block", read.Notes);
        Assert.Empty(read.Gaps);
    }

    [Fact]
    public void A_compact_forecast_says_that_a_nights_low_may_be_missed()
    {
        string compact = ForecastSamples.MetNorway.Replace("\"air_temperature_min\": -", "\"unused\": -", StringComparison.Ordinal).Replace("\"air_temperature_max\": ", "\"unused2\": ", StringComparison.Ordinal);
        WeatherResult read = Samples.Good($"{{\"status_code\": 200, \"data\": {compact}}}");
        Assert.Equal([-9, -8.5, -8, -7.5, -7, -6.5, -6], read.Rows.Skip(1).Take(7).Select(r => r.Celsius()));
        Assert.Contains(read.Notes, n => n.EndsWith("no lowest of a block is printed, so a night's low may be missed", StringComparison.Ordinal));
    }

    [Fact]
    public void The_forecast_of_days_and_nights_is_refused_by_name()
    {
        string problem = Assert.Single(Samples.Read(ForecastSamples.NwsHalfDays).Problems).ToString();
        Assert.Equal(
            "w:6:1: the forecast of 12-hour periods, not the hourly one: a period of 12 h; accepted: the answer of the service's 'forecastHourly', whose address ends in /forecast/hourly",
            problem);
    }

    [Fact]
    public void The_us_services_forecast_says_its_clock_and_its_time_of_issue()
    {
        string issued = Samples.Forecast.Replace("\"units\": \"us\",", "\"units\": \"us\", \"updateTime\": \"2031-03-08T20:15:00+00:00\",", StringComparison.Ordinal);
        WeatherStation station = Samples.Good(issued).Station;
        Assert.Equal((TimeSpan.FromHours(-7), new DateTimeOffset(2031, 3, 8, 20, 15, 0, TimeSpan.Zero)), (station.Offset, station.Issued));
    }

    [Theory]
    [InlineData("{\"title\": \"Not Found\"}")]
    [InlineData("[1, 2, 3]")]
    public void Json_of_an_unknown_kind_is_called_that(string text)
    {
        WeatherResult read = Samples.Read(text);
        Assert.Equal("JSON of an unknown kind", read.OtherKind);
        Assert.StartsWith("w:1:1: the file is JSON of an unknown kind; accepted: ", Assert.Single(read.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_file_says_of_itself_is_kept_in_our_csv()
    {
        WeatherStation station = new()
        {
            Name = "Gunnison, CO",
            Latitude_deg = 38.5339,
            Longitude_deg = -106.9331,
            Elevation_m = 2339.3,
            Issued = new DateTimeOffset(2031, 1, 10, 4, 30, 0, TimeSpan.Zero),
        };
        using StringWriter csv = new();
        WeatherCsvWriter.Write(Samples.Good("time,air [°C]\n2031-01-10T05:00-07:00,-1\n2031-01-10T06:00-07:00,-2\n").Rows, csv, string.Join('\n', StationComment.Lines(station)));
        Assert.Equal(station with { Offset = TimeSpan.FromHours(-7) }, Samples.Good(csv.ToString()).Station);
    }
}
