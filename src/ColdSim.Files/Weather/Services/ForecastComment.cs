namespace ColdSim.Files.Weather.Services;

/// <summary>The comment above a forecast in our own CSV: source, time of issue, position, licence, and what is to be known of it.</summary>
internal static class ForecastComment
{
    /// <summary>The lines, with a line feed between.</summary>
    public static string Of(FetchedForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        WeatherStation station = forecast.Weather.Station;
        List<string> lines =
        [
            WeatherCsvWriter.MadeFrom(forecast.Answer.Address.Host, forecast.Weather.Format),
            $" Source: {forecast.Service.Title}, {forecast.Answer.Address.GetLeftPart(UriPartial.Path)}",
            $" Fetched: {InstantText.Of(forecast.Answer.CheckedAt.ToUniversalTime())}",
            $" Position asked for: {forecast.Question.Position}",
            .. StationComment.Lines(station),
        ];
        if (station.Issued is null)
            lines.Add(" Issued: the service does not say");
        lines.Add($" Licence: {forecast.Service.Licence}");
        lines.AddRange(forecast.Notes.Select(note => $" Note: {note}"));
        return string.Join('\n', lines.Select(line => line.ReplaceLineEndings(" ")));
    }
}
