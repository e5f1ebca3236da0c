using System.Text;
using ColdSim.Files.Weather.Services;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.Files.Weather.Services;

/// <summary>Whatever a service answers, it is a forecast or a sentence that says why it is none.</summary>
public sealed class DamagedAnswerTests : IAsyncLifetime
{
    private const int Answers = 200;
    private const int Seed = 20310114;

    private static readonly DateTimeOffset Now = ServiceAnswers.Start.AddMinutes(10);
    private ReplayServer _server = null!;

    public async Task InitializeAsync() => _server = await ReplayServer.StartAsync();

    public async Task DisposeAsync() => await _server.DisposeAsync();

    [Theory]
    [InlineData("open-meteo", "/v1/forecast")]
    [InlineData("met-norway", "/weatherapi/locationforecast/2.0/complete")]
    [InlineData("nws", "/points/46.2,-94.1")]
    public async Task A_damaged_answer_is_read_or_refused_in_words(string service, string path)
    {
        byte[] good = Encoding.UTF8.GetBytes(service switch
        {
            "open-meteo" => ServiceAnswers.OpenMeteo(2),
            "met-norway" => ServiceAnswers.MetNorway(),
            _ => ServiceAnswers.NwsPoint(_server.Address),
        });
        byte[] answer = good;
        _server.On(path, context => context.Response.Body.WriteAsync(answer).AsTask())
            .On("/gridpoints/XYZ/57,101/forecast/hourly", ReplayServer.Json(ServiceAnswers.NwsHourly(30)));
        using ForecastClient client = new(new ClientPolicy { Attempts = 1 }, null, new FixedClock(Now), "coldsim/1.2.3");
        ForecastQuestion question = new() { Latitude_deg = 46.2, Longitude_deg = -94.1, Days = 2, Address = _server.Address };
        Random random = new(Seed);
        int refused = 0;
        for (int i = 0; i < Answers; i++)
        {
            answer = Damaged(good, random);
            try
            {
                FetchedForecast forecast = await ForecastFetch.AskAsync(ForecastServices.Find(service)!, question, client, new FixedClock(Now), default);
                Assert.True(forecast.Rows.Count > 1);
            }
            catch (ForecastFaultException fault)
            {
                refused++;
                Assert.False(string.IsNullOrWhiteSpace(fault.Message));
            }
        }

        Assert.InRange(refused, 1, Answers);
    }

    // A stretch of it is cut out, doubled, or overwritten with what JSON is made of.
    private static byte[] Damaged(byte[] good, Random random)
    {
        int from = random.Next(good.Length), length = Math.Min(good.Length - from, 1 + random.Next(40));
        byte[] signs = [.. Enumerable.Range(0, length).Select(_ => (byte)"{}[]\",:-0123456789.eEnultrs \u0000\u00ff"[random.Next(30)])];
        return random.Next(3) switch
        {
            0 => [.. good[..from], .. good[(from + length)..]],
            1 => [.. good[..(from + length)], .. good[from..]],
            _ => [.. good[..from], .. signs, .. good[(from + length)..]],
        };
    }
}
