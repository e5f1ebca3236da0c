namespace ColdSim.Files.Weather.Services;

/// <summary>The services that can be asked.</summary>
internal static class ForecastServices
{
    /// <summary>All of them; the first is asked unless another is named.</summary>
    public static IReadOnlyList<IForecastService> All { get; } = [new OpenMeteoService(), new UsWeatherService(), new MetNorwayService()];

    /// <summary>The service of a name; null where there is none.</summary>
    public static IForecastService? Find(string name) => All.FirstOrDefault(s => s.Name == name);
}
