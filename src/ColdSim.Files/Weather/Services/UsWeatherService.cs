using System.Text.Json;
using ColdSim.Files.Weather.Formats;

namespace ColdSim.Files.Weather.Services;

/// <summary>The US National Weather Service: the United States, about six and a half days, hour by hour.</summary>
internal sealed class UsWeatherService : IForecastService
{
    public string Name => "nws";

    public string Title => "US National Weather Service";

    public Uri Address { get; } = new("https://api.weather.gov/");

    public string Licence => "Weather data of the US National Weather Service, public domain (https://www.weather.gov/disclaimer)";

    public bool NeedsContact => true;

    public int MostPastDays => 0;

    public bool IsInUtc => false;

    public bool HasSun => false;

    // A position is asked first; its answer says where the hours of its cell are.
    public async Task<ServiceAnswer> AskAsync(ForecastQuestion question, ForecastClient client, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(client);
        Uri address = question.Address ?? Address;
        Uri position = new(address, $"points/{question.Latitude},{question.Longitude}");
        WebAnswer point = await PointAsync(position, client, cancel).ConfigureAwait(false);
        if (HoursOf(point.Body) is not { } hours || !Uri.TryCreate(hours, UriKind.Absolute, out Uri? hourly))
        {
            throw ForecastFaultException.NotTheService(
                $"{address.Host} does not say where the hours of this position are; try another service with --from");
        }

        // Only its path is used: wherever an answer points, nobody else is asked.
        Uri own = new UriBuilder(address) { Path = address.AbsolutePath + hourly.AbsolutePath.TrimStart('/') }.Uri;
        return new(await client.GetAsync(own, cancel).ConfigureAwait(false), point);
    }

    private static string? HoursOf(byte[] point)
    {
        using JsonDocument json = JsonDocument.Parse(point);
        return json.RootElement.Object("properties")?.Text("forecastHourly");
    }

    private static async Task<WebAnswer> PointAsync(Uri address, ForecastClient client, CancellationToken cancel)
    {
        try
        {
            return await client.GetAsync(address, cancel).ConfigureAwait(false);
        }
        catch (ForecastFaultException fault) when (!fault.IsTemporary)
        {
            throw ForecastFaultException.Refused(
                $"{fault.Message}; this service covers the United States only, open-meteo and met-norway the world (--from)");
        }
    }
}
