namespace ColdSim.Files.Weather.Services;

/// <summary>MET Norway's locationforecast: the whole world, hourly for two to three days and in blocks of six hours after.</summary>
internal sealed class MetNorwayService : IForecastService
{
    public string Name => "met-norway";

    public string Title => "MET Norway";

    public Uri Address { get; } = new("https://api.met.no/");

    public string Licence => "Data from MET Norway, CC BY 4.0 (https://api.met.no/doc/License)";

    public bool NeedsContact => true;

    public int MostPastDays => 0;

    public bool IsInUtc => true;

    public bool HasSun => false;

    public async Task<ServiceAnswer> AskAsync(ForecastQuestion question, ForecastClient client, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(client);
        string query = $"weatherapi/locationforecast/2.0/complete?lat={question.Latitude}&lon={question.Longitude}";
        return new(await client.GetAsync(new Uri(question.Address ?? Address, query), cancel).ConfigureAwait(false));
    }
}
