using System.Globalization;

namespace ColdSim.Files.Weather.Services;

/// <summary>Open-Meteo: the whole world, with sun and past days.</summary>
internal sealed class OpenMeteoService : IForecastService
{
    private const string Variables = "temperature_2m,dew_point_2m,wind_speed_10m,shortwave_radiation,cloud_cover,surface_pressure";
    private const int LeastDays = 7;
    private const int MostDays = 16;

    public string Name => "open-meteo";

    public string Title => "Open-Meteo";

    public Uri Address { get; } = new("https://api.open-meteo.com/");

    public string Licence => "Weather data by Open-Meteo.com, CC BY 4.0 (https://open-meteo.com/en/licence); free for non-commercial use";

    public bool NeedsContact => false;

    public int MostPastDays => 14;

    public bool IsInUtc => false;

    public bool HasSun => true;

    public async Task<ServiceAnswer> AskAsync(ForecastQuestion question, ForecastClient client, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(client);

        // Its first day is today from midnight, so the days ahead end within one more. A week at least, so that what is kept answers for
        // fewer days too.
        int days = Math.Min(MostDays, Math.Max(LeastDays, question.Days) + 1);
        string query = string.Create(CultureInfo.InvariantCulture,
            $"v1/forecast?latitude={question.Latitude}&longitude={question.Longitude}&hourly={Variables}"
            + $"&timezone=auto&past_days={question.PastDays}&forecast_days={days}");
        return new(await client.GetAsync(new Uri(question.Address ?? Address, query), cancel).ConfigureAwait(false));
    }
}
