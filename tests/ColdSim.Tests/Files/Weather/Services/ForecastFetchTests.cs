using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Services;
using ColdSim.Model.Weather;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.Files.Weather.Services;

/// <summary>What each service is asked, and what its answer becomes.</summary>
public sealed class ForecastFetchTests : IAsyncLifetime
{
    private static readonly DateTimeOffset Now = ServiceAnswers.Start.AddMinutes(10);
    private static readonly ForecastQuestion Question = new() { Latitude_deg = 46.2, Longitude_deg = -94.1, Days = 7 };

    private ReplayServer _server = null!;

    public async Task InitializeAsync() => _server = await ReplayServer.StartAsync();

    public async Task DisposeAsync() => await _server.DisposeAsync();

    private async Task<FetchedForecast> FetchAsync(string service, ForecastQuestion? question = null, DateTimeOffset? now = null)
    {
        using ForecastClient client = new(new ClientPolicy { Attempts = 1 }, null, new FixedClock(now ?? Now), "coldsim/1.2.3");
        return await ForecastFetch.AskAsync(
            ForecastServices.Find(service)!, (question ?? Question) with { Address = _server.Address }, client, new FixedClock(now ?? Now), default);
    }

    private ReplayServer Nws(string? hourly = null) => _server
        .On("/points/46.2,-94.1", ReplayServer.Text(200, "application/geo+json", ServiceAnswers.NwsPoint(new Uri("https://elsewhere.example/"))))
        .On("/gridpoints/XYZ/57,101/forecast/hourly", ReplayServer.Text(200, "application/geo+json", hourly ?? ServiceAnswers.NwsHourly()));

    [Fact]
    public async Task The_us_service_is_asked_for_the_position_and_then_for_its_hours_and_nobody_else_is()
    {
        Nws();
        FetchedForecast forecast = await FetchAsync("nws");
        Assert.Equal(["/points/46.2,-94.1", "/gridpoints/XYZ/57,101/forecast/hourly"], _server.Received.Select(r => r.Path));
        Assert.Equal((156, ServiceAnswers.Start), (forecast.Rows.Count, forecast.Rows[0].Time));
        WeatherRow coldest = forecast.Rows.MinBy(r => r.Air_K);
        Assert.Equal((244.261, ServiceAnswers.Start.AddHours(15)), (Math.Round(coldest.Air_K, 3), coldest.Time));
        Assert.Equal(372, forecast.Weather.Station.Elevation_m);
        Assert.Equal(2.2352, forecast.Rows[0].Wind_m_s!.Value, 1e-9);
        Assert.Contains("US National Weather Service gives no sun and no cloud; a run takes the sun of a clear sky, less what half cloud takes", forecast.Notes);
        Assert.Contains("US National Weather Service gives no past hours; the forecast begins 2031-01-14T16:00-06:00", forecast.Notes);
        Assert.Contains("US National Weather Service gives 6.5 days of the 7 asked for; the forecast ends 2031-01-21T03:00-06:00", forecast.Notes);
    }

    [Fact]
    public async Task Outside_the_united_states_it_says_who_covers_the_world()
    {
        _server.On("/points/61.2,10.5", ReplayServer.Text(404, "application/problem+json", ServiceAnswers.NwsOutside));
        ForecastFaultException fault = await Assert.ThrowsAsync<ForecastFaultException>(() => FetchAsync("nws", Question with { Latitude_deg = 61.2, Longitude_deg = 10.5 }));
        Assert.Equal(
            "127.0.0.1 answers 404: \"Unable to provide data for requested point 61.2,10.5\"; it has no forecast for this position; "
            + "this service covers the United States only, open-meteo and met-norway the world (--from)",
            fault.Message);
    }

    [Fact]
    public async Task A_position_answer_without_the_hours_address_is_refused()
    {
        _server.On("/points/46.2,-94.1", ReplayServer.Json("{\"properties\":{}}"));
        Assert.Contains("does not say where the hours", (await Assert.ThrowsAsync<ForecastFaultException>(() => FetchAsync("nws"))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("https://elsewhere.example/https://elsewhere.example/hours", "/https://elsewhere.example/hours")]
    [InlineData("https://elsewhere.example//elsewhere.example/hours", "/elsewhere.example/hours")]
    [InlineData("ftp://elsewhere.example/a/../hours", "/hours")]
    public async Task Whatever_address_the_position_answer_names_only_the_service_is_asked(string named, string asked)
    {
        _server.On("/points/46.2,-94.1", ReplayServer.Json($"{{\"properties\":{{\"forecastHourly\":\"{named}\"}}}}")).On(asked, ReplayServer.Json(ServiceAnswers.NwsHourly()));
        Assert.Equal(156, (await FetchAsync("nws")).Rows.Count);
        Assert.Equal(asked, _server.Received[1].Path);
    }

    [Theory]
    [InlineData(46.200000001, -94.1, "46.2, -94.1")]
    [InlineData(46.123456, -0.00001, "46.1235, 0")]
    [InlineData(-41.3, 174.78, "-41.3, 174.78")]
    public void A_position_is_sent_with_at_most_four_decimals_and_no_zeros_at_its_end(double latitude, double longitude, string sent)
        => Assert.Equal(sent, (Question with { Latitude_deg = latitude, Longitude_deg = longitude }).Position);

    [Fact]
    public async Task Days_ahead_are_counted_from_now()
    {
        Nws();
        FetchedForecast forecast = await FetchAsync("nws", Question with { Days = 2 });
        Assert.Equal(ServiceAnswers.Start.AddDays(2), forecast.Rows[^1].Time);
        Assert.DoesNotContain(forecast.Notes, n => n.Contains("asked for;", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_clock_that_is_asked_for_is_the_one_that_is_shown()
    {
        Nws();
        FetchedForecast forecast = await FetchAsync("nws", Question with { Offset = TimeSpan.FromHours(-7) });
        Assert.Equal((ServiceAnswers.Start, TimeSpan.FromHours(-7)), (forecast.Rows[0].Time, forecast.Rows[0].Time.Offset));
    }

    [Fact]
    public async Task A_forecast_that_is_over_is_refused()
    {
        Nws(ServiceAnswers.NwsHourly(10));
        ForecastFaultException fault = await Assert.ThrowsAsync<ForecastFaultException>(() => FetchAsync("nws", now: Now.AddDays(1)));
        Assert.Equal("the forecast of 127.0.0.1 ends 2031-01-15T01:00-06:00, before now; is the date of this computer right?", fault.Message);
    }

    [Fact]
    public async Task An_answer_that_is_no_forecast_is_refused_with_its_place()
    {
        Nws("{\"properties\":{\"periods\":[]}}");
        ForecastFaultException fault = await Assert.ThrowsAsync<ForecastFaultException>(() => FetchAsync("nws"));
        Assert.StartsWith("the answer of 127.0.0.1 cannot be read as a forecast: 127.0.0.1:1:1: no hours in the list 'periods'", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Open_meteo_is_asked_for_all_that_a_run_uses_and_its_hours_of_today_are_kept()
    {
        _server.On("/v1/forecast", ReplayServer.Json(ServiceAnswers.OpenMeteo()));
        FetchedForecast forecast = await FetchAsync("open-meteo");
        Assert.Equal(
            "?latitude=46.2&longitude=-94.1&hourly=temperature_2m,dew_point_2m,wind_speed_10m,shortwave_radiation,cloud_cover,surface_pressure"
            + "&timezone=auto&past_days=0&forecast_days=8",
            Assert.Single(_server.Received).Query);
        Assert.Equal((ServiceAnswers.Start.AddHours(-16), ServiceAnswers.Start.AddDays(7)), (forecast.Rows[0].Time, forecast.Rows[^1].Time));
        WeatherRow coldest = forecast.Rows.MinBy(r => r.Air_K);
        Assert.Equal((244.25, 7), (Math.Round(coldest.Air_K, 2), coldest.Time.Hour));
        Assert.Equal((2.0, 0.25, 97_000.0), (Math.Round(coldest.Wind_m_s!.Value, 9), coldest.Cloud_frac!.Value, Math.Round(coldest.Pressure_Pa!.Value, 6)));
        Assert.Contains(forecast.Rows, r => r.Sun_W_m2 > 100);
        Assert.Null(forecast.Weather.Station.Issued);
        Assert.DoesNotContain(forecast.Notes, n => n.Contains("no sun", StringComparison.Ordinal) || n.Contains("no past", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Open_meteo_is_asked_for_a_week_where_fewer_days_are_wanted()
    {
        _server.On("/v1/forecast", ReplayServer.Json(ServiceAnswers.OpenMeteo()));
        Assert.Equal(ServiceAnswers.Start.AddDays(2), (await FetchAsync("open-meteo", Question with { Days = 2 })).Rows[^1].Time);
        Assert.EndsWith("&forecast_days=8", Assert.Single(_server.Received).Query, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Open_meteo_gives_past_days()
    {
        _server.On("/v1/forecast", ReplayServer.Json(ServiceAnswers.OpenMeteo()));
        await FetchAsync("open-meteo", Question with { PastDays = 3, Days = 16 });
        Assert.EndsWith("&past_days=3&forecast_days=16", Assert.Single(_server.Received).Query, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Met_norways_blocks_keep_their_printed_lows_and_the_file_says_from_when()
    {
        _server.On("/weatherapi/locationforecast/2.0/complete", ReplayServer.Json(ServiceAnswers.MetNorway()));
        FetchedForecast forecast = await FetchAsync("met-norway");
        Assert.Equal("?lat=46.2&lon=-94.1", Assert.Single(_server.Received).Query);
        WeatherRow coldest = forecast.Rows.MinBy(r => r.Air_K);
        DateTimeOffset block = ServiceAnswers.Start.AddHours(48 + 18);
        Assert.Equal(-41.5, Math.Round(coldest.Air_K - 273.15, 6));
        Assert.InRange(coldest.Time, block, block.AddHours(6));
        Assert.Equal(-5, Math.Round(forecast.Rows.Where(r => r.Time >= block && r.Time <= block.AddHours(6)).Max(r => r.Air_K) - 273.15, 6));
        Assert.All(forecast.Rows.Zip(forecast.Rows.Skip(1)), pair => Assert.Equal(TimeSpan.FromHours(1), pair.Second.Time - pair.First.Time));
        Assert.Contains(forecast.Notes, n => n.StartsWith($"from {Iso(ServiceAnswers.Start.AddHours(47))} on in blocks", StringComparison.Ordinal) || n.StartsWith($"from {Iso(ServiceAnswers.Start.AddHours(48))} on in blocks", StringComparison.Ordinal));
        Assert.Equal(new DateTimeOffset(2031, 1, 14, 20, 37, 12, TimeSpan.Zero), forecast.Weather.Station.Issued);
        string comment = ForecastComment.Of(forecast);
        Assert.Contains("\n Licence: Data from MET Norway, CC BY 4.0 (https://api.met.no/doc/License)\n", comment, StringComparison.Ordinal);
        Assert.Contains(" on in blocks of some hours", comment, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-6, -6, "this computer's clock, UTC-06:00")]
    [InlineData(-5, -5, "this computer's clock, UTC-05:00")]
    [InlineData(1, -6, "the clock of the longitude, UTC-06:00")]
    public async Task A_service_in_utc_is_shown_by_this_computers_clock_where_that_fits_the_place(int here_h, int shown_h, string words)
    {
        _server.On("/weatherapi/locationforecast/2.0/complete", ReplayServer.Json(ServiceAnswers.MetNorway()));
        FetchedForecast forecast = await FetchAsync("met-norway", now: Now.ToOffset(TimeSpan.FromHours(here_h)));
        Assert.All(forecast.Rows, r => Assert.Equal(TimeSpan.FromHours(shown_h), r.Time.Offset));
        Assert.Contains($"MET Norway gives times in UTC; they are put on {words}; --offset gives another", forecast.Notes);
    }

    [Theory]
    [InlineData("open-meteo", "/v1/forecast")]
    [InlineData("met-norway", "/weatherapi/locationforecast/2.0/complete")]
    [InlineData("nws", "/other")]
    public async Task What_is_written_is_read_back_the_same_with_its_place(string service, string path)
    {
        Nws();
        _server.On(path, ReplayServer.Json(service == "open-meteo" ? ServiceAnswers.OpenMeteo() : ServiceAnswers.MetNorway()));
        FetchedForecast forecast = await FetchAsync(service);
        using StringWriter csv = new();
        WeatherCsvWriter.Write(forecast.Rows, csv, ForecastComment.Of(forecast));
        WeatherResult read = Samples.Good(csv.ToString());
        Assert.Equal(forecast.Rows.Select(r => r.Time), read.Rows.Select(r => r.Time));
        Assert.All(forecast.Rows.Zip(read.Rows), pair => Assert.Equal(pair.First.Air_K, pair.Second.Air_K, 0.006));
        Assert.Equal(forecast.Rows.Select(r => r.Cloud_frac), read.Rows.Select(r => r.Cloud_frac));
        Assert.Equal(forecast.Rows.Select(r => r.Sun_W_m2 is null), read.Rows.Select(r => r.Sun_W_m2 is null));
        WeatherStation station = forecast.Weather.Station;
        Assert.Equal((station.Latitude_deg, station.Longitude_deg, station.Elevation_m), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m));
    }

    private static string Iso(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mmzzz", System.Globalization.CultureInfo.InvariantCulture);
}
