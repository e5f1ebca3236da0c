using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Services;
using UnitsNet;

namespace ColdSim.App.Text.Answers;

/// <summary>A forecast that was fetched.</summary>
/// <param name="Forecast">The forecast.</param>
/// <param name="Weather">Its weather at a glance.</param>
/// <param name="Comment">The lines of comment of its file.</param>
/// <param name="Age">How long ago the service was asked.</param>
internal sealed record ForecastReport(FetchedForecast Forecast, WeatherFileReport Weather, string Comment, TimeSpan Age);

/// <summary>A fetched forecast at a glance.</summary>
internal static class ForecastAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="report">The forecast.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="terminal">Whether the curve may be drawn in braille.</param>
    public static Answer Of(ForecastReport report, UnitStyle units, bool terminal)
    {
        Answer weather = WeatherAnswer.Of(report.Weather, units, terminal);
        FetchedForecast forecast = report.Forecast;
        return weather with
        {
            Consequences = [Reaches(report), Source(forecast), Age(report)],
            AboutGuesses = "Know of it:",
            Guesses = [.. units.InOwn(forecast.Notes)],
            ToDo = $"Next: coldsim tonight --weather {Path.GetFileName(report.Weather.File)}",
        };
    }

    private static string Reaches(ForecastReport report)
    {
        DateTimeOffset from = report.Weather.Digest.From, to = report.Weather.Digest.To;
        return $"{report.Weather.Digest.Rows.ToString(CultureInfo.InvariantCulture)} hours for {report.Forecast.Question.Position}, from {ClockText.WeekdayDateClock(from)} to {ClockText.WeekdayDateClock(to)}.";
    }

    private static string Source(FetchedForecast forecast)
        => $"{forecast.Service.Licence.Split(';')[0]}.";

    private static string Age(ForecastReport report)
    {
        string ago = report.Age.TotalMinutes < 1 ? "just now" : $"{ClockText.Span(Duration.FromMinutes(Math.Round(report.Age.TotalMinutes)))} ago";
        return report.Forecast.Answer switch
        {
            { Origin: AnswerOrigin.KeptFresh } => $"Kept from {ago}; the service has nothing newer yet, so it was not asked.",
            { Origin: AnswerOrigin.Unchanged } => "The service was asked and has nothing newer than the one kept.",
            { Origin: AnswerOrigin.KeptInsteadOfNew, Trouble: { } trouble } => $"FROM {ago.ToUpperInvariant()}, not new: {trouble}.",
            _ => "",
        };
    }
}
