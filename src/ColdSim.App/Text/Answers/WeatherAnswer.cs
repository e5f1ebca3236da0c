using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Text.Answers;

/// <summary>A weather file at a glance.</summary>
internal static class WeatherAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="weather">The file's report.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="terminal">Whether the curve may be drawn in braille.</param>
    public static Answer Of(WeatherFileReport weather, UnitStyle units, bool terminal)
    {
        string verdict = SpellText.Verdict(weather, units) ?? Coldest(weather.Digest.Coldest[0], units);
        bool spell = weather.SpellNights.Count > 0;
        return new()
        {
            Brief = OneLine.Of($"{verdict}, {Path.GetFileName(weather.File)}"),
            Verdict = verdict + ".",
            Consequences = spell ? [SpellText.Meaning(weather, units), Holds(weather), Gaps(weather.Weather)] : [Holds(weather), Below(weather.Digest, units), Gaps(weather.Weather)],
            Table = Table(weather, units, terminal),
            AboutGuesses = weather.Notes.Count == 0 ? "" : $"Changed while reading ({weather.Notes.Count} in all):",
            Guesses = [.. units.InOwn(weather.Notes)],
            Caution = CautionLine.Weather,
        };
    }

    private static string Coldest(WeatherRow row, UnitStyle units) => $"COLDEST: {units.WholeTemperature(row.Air_K)} on {Moment(row.Time)}";

    private static string Holds(WeatherFileReport weather)
        => $"{Path.GetFileName(weather.File)} has {weather.Digest.Rows.ToString("#,0", CultureInfo.InvariantCulture)} rows from {Moment(weather.Digest.From)} to "
            + $"{Moment(weather.Digest.To)}, read as {weather.Weather.Format.Title()}.";

    private static string Below(WeatherDigest digest, UnitStyle units)
    {
        string threshold = units.WholeTemperature(digest.Below_K);
        return digest.LongestRun is not { } run ? $"It is never below {threshold}."
            : $"It is below {threshold} for {digest.HoursBelow.ToString("#,0", CultureInfo.InvariantCulture)} h, at most {WeatherText.Length(run.To - run.From)} "
                + $"without a break, down to {units.WholeTemperature(run.Low_K)}.";
    }

    private static string Gaps(WeatherResult weather) => weather.AllGaps switch
    {
        0 => "It has no gaps.",
        1 => "It has one gap, bridged by a straight line.",
        var n => string.Create(CultureInfo.InvariantCulture, $"It has {n:#,0} gaps, each bridged by a straight line."),
    };

    private static AnswerTable Table(WeatherFileReport weather, UnitStyle units, bool terminal)
    {
        bool spell = weather.SpellNights.Count > 0;
        IReadOnlyList<string> lines = weather.Coldest is { } coldest ? SpellText.Coldest(coldest, units)
            : spell ? SpellText.Nights(weather.SpellNights, units) : WeatherText.Coldest(weather.Digest, units);
        return new(
            [.. WeatherChart.Lines(weather.Air, units, terminal, days: weather.SpellNights.Count > 1), lines[0]],
            [.. lines.Skip(1).Select((line, i) => new AnswerRow(line, -i))],
            hidden => $"{hidden.Count} more with --full.")
        {
            Title = $"Air temperature{SpellText.Drawn(weather)}:",
            Most = weather.Coldest is null ? 4 : 5,
        };
    }

    private static string Moment(DateTimeOffset time) => ClockText.DayOfYear(time);
}
