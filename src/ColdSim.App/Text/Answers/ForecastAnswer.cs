using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Services;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using UnitsNet;

namespace ColdSim.App.Text.Answers;

/// <summary>A forecast that was fetched.</summary>
/// <param name="Forecast">The forecast.</param>
/// <param name="Weather">Its weather at a glance.</param>
/// <param name="Comment">The lines of comment of its file.</param>
/// <param name="Age">How long ago the service was asked.</param>
internal sealed record ForecastReport(FetchedForecast Forecast, WeatherFileReport Weather, string Comment, TimeSpan Age);

/// <summary>A fetched forecast at a glance: the lows of the nights to come, who says so, and how new it is.</summary>
internal static class ForecastAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="report">The forecast.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(ForecastReport report, UnitStyle units)
    {
        WeatherRow coldest = report.Weather.Digest.Coldest[0];
        string verdict = $"COLDEST: {units.WholeTemperature(coldest.Air_K)} on {ClockText.WeekdayDateClock(coldest.Time)}";
        string file = report.Weather.File;
        return new()
        {
            Brief = OneLine.Of($"{verdict}, {report.Forecast.Service.Title}{(IsNew(report) ? "" : $", {Ago(report)}")}"),
            Verdict = verdict + ".",
            Consequences = [Reaches(report), Newness(report)],
            Table = Nights(report, units),
            AboutGuesses = "About this forecast:",
            Guesses = [.. units.InOwn([.. report.Forecast.Notes.Select(note => note + ".")])],
            ToDo = $"Next: coldsim tonight --weather {(file.Contains(' ', StringComparison.Ordinal) ? $"\"{file}\"" : file)}",
            Caution = CautionLine.Weather,
        };
    }

    /// <summary>How long ago the service was asked, in words.</summary>
    public static string Ago(ForecastReport report)
        => report.Age.TotalMinutes < 1 ? "just now"
            : report.Age.TotalDays >= 2 ? string.Create(CultureInfo.InvariantCulture, $"{report.Age.TotalDays:0} days ago")
            : $"{ClockText.Span(Duration.FromMinutes(report.Age.TotalMinutes))} ago";

    /// <summary>Whether the service said so now.</summary>
    private static bool IsNew(ForecastReport report) => report.Forecast.Answer.Origin is AnswerOrigin.Service or AnswerOrigin.Unchanged;

    private static string Reaches(ForecastReport report)
    {
        WeatherDigest digest = report.Weather.Digest;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{report.Forecast.Service.Title} for {report.Forecast.Question.Position}: {digest.Rows} hours, {ClockText.WeekdayDateClock(digest.From)} "
            + $"to {ClockText.WeekdayDateClock(digest.To)}.");
    }

    private static string Newness(ForecastReport report) => report.Forecast.Answer.Origin switch
    {
        AnswerOrigin.KeptFresh => $"It was fetched {Ago(report)}; there is nothing newer yet, so the service was not asked again.",
        AnswerOrigin.Unchanged => "The service was asked and has nothing newer than the one kept.",
        AnswerOrigin.KeptInsteadOfNew => $"It is not new: it was fetched {Ago(report)}.",
        _ => Issued(report),
    };

    private static string Issued(ForecastReport report)
        => report.Forecast.Weather.Station.Issued is { } issued ? $"It was issued {ClockText.WeekdayDateClock(issued.ToOffset(report.Weather.Clock))}." : "";

    private static AnswerTable? Nights(ForecastReport report, UnitStyle units)
    {
        IReadOnlyList<NightLow> nights = NightLows.Of(report.Forecast.Rows);
        if (nights.Count == 0)
            return null;
        IReadOnlyList<string> lines = TextTable.Lines(
            [
                new(["Night"], Left: true), new(["Low", units.TemperatureUnit], Left: false), new(["", "at"], Left: false),
                new(["Wind", units.SpeedUnit], Left: false),
            ],
            [
                .. nights.Select(n => (IReadOnlyList<string>)
                [
                    n.Evening.ToString("ddd dd MMM", CultureInfo.InvariantCulture), UnitStyle.Number(units.TemperatureIn(n.Low_K), 0), ClockText.Clock(n.LowAt),
                    n.Wind_m_s is { } wind ? UnitStyle.Number(units.SpeedIn(wind), 0) : "-",
                ]),
            ],
            gap: 2);
        return new([.. lines.Take(lines.Count - nights.Count)], [.. lines.Skip(lines.Count - nights.Count).Select((line, i) => new AnswerRow(line, -i))], hidden => $"{hidden.Count} more nights with --full.");
    }
}
