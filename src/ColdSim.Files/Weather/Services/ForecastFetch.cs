using System.Globalization;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Services;

/// <summary>Fetches a forecast: asks the service, reads its answer as any weather file, and cuts it to what was asked.</summary>
internal static class ForecastFetch
{
    /// <summary>Fetches it.</summary>
    /// <param name="service">Who is asked.</param>
    /// <param name="question">What is asked.</param>
    /// <param name="client">Asks over the network.</param>
    /// <param name="clock">The present, and the clock of this computer.</param>
    /// <param name="cancel">Ends it.</param>
    /// <exception cref="ForecastFaultException">There is no forecast to be had.</exception>
    public static async Task<FetchedForecast> AskAsync(
        IForecastService service, ForecastQuestion question, ForecastClient client, TimeProvider clock, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(service);
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(client);
        ArgumentNullException.ThrowIfNull(clock);
        ServiceAnswer answer = await service.AskAsync(question, client, cancel).ConfigureAwait(false);
        FetchedForecast forecast = Read(service, question, answer.Forecast, clock);

        // Only what could be read is kept: a wrong answer would come back until it expires.
        return client.Keep(answer) is { } why
            ? forecast with { Notes = [.. forecast.Notes, $"not kept for a time without network: {why}"] } : forecast;
    }

    private static FetchedForecast Read(IForecastService service, ForecastQuestion question, WebAnswer answer, TimeProvider clock)
    {
        string host = answer.Address.Host;
        ForecastClock shown = ForecastClock.Of(service, question, clock);
        using MemoryStream document = new(answer.Body);
        WeatherResult weather = WeatherFile.Read(document, host, new WeatherRequest { Offset = shown.Offset });
        if (weather.Problems.Count > 0)
            throw ForecastFaultException.NotTheService($"the answer of {host} cannot be read as a forecast: {weather.Problems[0]}");
        DateTimeOffset now = clock.GetUtcNow();
        List<WeatherRow> rows = Cut(weather.Rows, shown.Offset, now.AddDays(question.Days));
        if (rows.Count < 2 || rows[^1].Time <= now)
            throw Past(host, weather.Rows[^1].Time, answer);
        return new()
        {
            Service = service,
            Question = question,
            Answer = answer,
            Weather = weather with { Rows = [] },
            Rows = rows,
            Notes =
            [
                .. ForecastNotes.Of(service, question, rows, now),
                .. weather.Notes.Select(note => note.StartsWith($"{host}: ", StringComparison.Ordinal) ? note[(host.Length + 2)..] : note),
                shown.Words,
            ],
        };
    }

    private static List<WeatherRow> Cut(IReadOnlyList<WeatherRow> all, TimeSpan? offset, DateTimeOffset end)
    {
        List<WeatherRow> rows = new(all.Count);
        foreach (WeatherRow row in all)
        {
            if (row.Time <= end)
                rows.Add(offset is { } shown ? row with { Time = row.Time.ToOffset(shown) } : row);
        }

        return rows;
    }

    private static ForecastFaultException Past(string host, DateTimeOffset end, WebAnswer answer)
    {
        string newer = answer.Trouble is { } trouble ? $"; there is no newer one: {trouble}" : "; is the date of this computer right?";
        return ForecastFaultException.NotTheService(
            string.Create(CultureInfo.InvariantCulture, $"the forecast of {host} ends {InstantText.Of(end)}, before now{newer}"));
    }
}
