using System.Globalization;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Services;

/// <summary>What a forecast lacks of what was asked, and of what a run uses, in sentences.</summary>
internal static class ForecastNotes
{
    public static IEnumerable<string> Of(
        IForecastService service, ForecastQuestion question, IReadOnlyList<WeatherRow> rows, DateTimeOffset now)
    {
        DateTimeOffset end = rows[^1].Time;
        if (end < now.AddDays(question.Days).AddHours(-1))
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{service.Title} gives {(end - now).TotalDays:0.#} days of the {question.Days} asked for; "
                + $"the forecast ends {InstantText.Of(end)}");
        }

        bool hasCloud = rows.Any(r => r.Cloud_frac is not null);
        if (!service.HasSun)
        {
            yield return $"{service.Title} gives no sun{(hasCloud ? "" : " and no cloud")}; "
                + $"a run takes the sun of a clear sky, less what {(hasCloud ? "the forecast's" : "half")} cloud takes";
        }

        if (service.MostPastDays == 0)
            yield return $"{service.Title} gives no past hours; the forecast begins {InstantText.Of(rows[0].Time)}";
    }
}
