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
        Assert.Contains("US National Weather Service gives no sun; a run takes the clear sky's, less what clouds take", forecast.Notes);
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
}
