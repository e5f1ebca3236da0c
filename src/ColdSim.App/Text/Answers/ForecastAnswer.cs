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
/// <param name="Now">The present.</param>
internal sealed record ForecastReport(FetchedForecast Forecast, WeatherFileReport Weather, string Comment, DateTimeOffset Now)
{
    /// <summary>How long ago the service was asked.</summary>
    public TimeSpan Age => Now - Forecast.Answer.CheckedAt;

    /// <summary>The hours to come, from the last one that has begun.</summary>
    public IReadOnlyList<WeatherRow> Ahead { get; } = [.. Forecast.Rows.Where(r => r.Time > Now.AddHours(-1))];
}

/// <summary>A fetched forecast at a glance: the lows of the nights to come, who says so, and how new it is.</summary>
internal static class ForecastAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="report">The forecast.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(ForecastReport report, UnitStyle units)
    {
        WeatherRow coldest = report.Ahead.MinBy(r => r.Air_K);
        string verdict = $"COLDEST: {units.WholeTemperature(coldest.Air_K)} on {ClockText.WeekdayDateClock(coldest.Time)}";
        string file = report.Weather.File.Contains(' ', StringComparison.Ordinal) ? $"\"{report.Weather.File}\"" : report.Weather.File;
        return new()
        {
            Brief = OneLine.Of($"{verdict}, {report.Forecast.Service.Title}{(IsNew(report) ? "" : $", {Ago(report)}")}"),
            Verdict = verdict + ".",
            Consequences = [Reaches(report), Newness(report)],
            Table = Nights(report, units),
            AboutGuesses = "About this forecast:",
            Guesses = [.. units.InOwn([.. report.Forecast.Notes.Select(note => note + ".")])],
            ToDo = $"Next: coldsim tonight {(BeginsInTheNight(report) ? "--now " : "")}--weather {file}",
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

    // Tonight begins at 18:00 unless it is said to begin now; a forecast without past hours may begin after that.
    private static bool BeginsInTheNight(ForecastReport report)
        => report.Forecast.Rows[0].Time is var first && first.TimeOfDay.TotalHours is > 18 or < 6 && first > report.Now.AddHours(-2);

    private static string Reaches(ForecastReport report)
    {
        WeatherDigest digest = report.Weather.Digest;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{report.Forecast.Service.Title} for {report.Forecast.Question.Position}: {digest.Rows} hours, "
            + $"{ClockText.WeekdayDateClock(digest.From)} to {ClockText.WeekdayDateClock(digest.To)}.");
    }

    private static string Newness(ForecastReport report) => report.Forecast.Answer.Origin switch
    {
        AnswerOrigin.KeptFresh => $"It was fetched {Ago(report)}; there is nothing newer yet, so the service was not asked again.",
        AnswerOrigin.Unchanged => "The service was asked and has nothing newer than the one kept.",
        AnswerOrigin.KeptInsteadOfNew => $"It is not new: it was fetched {Ago(report)}.",
        _ => Issued(report),
    };

    private static string Issued(ForecastReport report)
        => report.Forecast.Weather.Station.Issued is { } issued
            ? $"It was issued {ClockText.WeekdayDateClock(issued.ToOffset(report.Weather.Clock))}." : "";

    private static AnswerTable? Nights(ForecastReport report, UnitStyle units)
    {
        IReadOnlyList<NightLow> nights = NightLows.Of(report.Ahead);
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
                    n.Evening.ToString("ddd dd MMM", CultureInfo.InvariantCulture), UnitStyle.Number(units.TemperatureIn(n.Low_K), 0),
                    ClockText.Clock(n.LowAt), n.Wind_m_s is { } wind ? UnitStyle.Number(units.SpeedIn(wind), 0) : "-",
                ]),
            ],
            gap: 2);
        int head = lines.Count - nights.Count;
        return new(
            [.. lines.Take(head)],
            [.. lines.Skip(head).Select((line, i) => new AnswerRow(line, -i))],
            hidden => $"{hidden.Count} more {(hidden.Count == 1 ? "night" : "nights")} with --full.")
        {
            Most = 8,
        };
    }
}
