using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Planning.Climate;
using UnitsNet;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>What a weather file holds as text, beside what its answer says.</summary>
internal static class WeatherText
{
    private const int GapsShown = 8;
    private static readonly CultureInfo Words = CultureInfo.InvariantCulture;

    /// <summary>What goes below the answer, which has the curve and the coldest hours already.</summary>
    public static IReadOnlyList<TextSection> Sections(WeatherFileReport answer, UnitStyle units)
    {
        List<TextSection> sections = [new(answer.File, About(answer, units)), new("Cold", Cold(answer, units))];
        if (SpellText.Section(answer, units) is { } spell)
            sections.Add(spell);
        if (answer.Weather.AllGaps > 0)
            sections.Add(new("Gaps, each bridged by a straight line", Gaps(answer.Weather)));
        if (answer.Notes.Count > 0)
            sections.Add(new("Notes", RunText.Points(answer.Notes, units)));
        return sections;
    }

    private static IReadOnlyList<string> About(WeatherFileReport answer, UnitStyle units)
    {
        WeatherStation s = answer.Weather.Station;
        WeatherDigest d = answer.Digest;
        List<(string, string)> rows =
        [
            ("read as", answer.Weather.Format.Title()),
            ("station", string.Join(", ", ((string?[])[s.Name, s.Id]).Where(t => !string.IsNullOrEmpty(t))) is { Length: > 0 } name ? name : "not in the file"),
            ("position", Position(s, units)),
            ("times", answer.Weather.Clock),
            ("from", Moment(d.From)),
            ("to", Moment(d.To)),
            ("rows", d.Rows.ToString("#,0", Words) + (answer.Weather.Outside > 0 ? $", {answer.Weather.Outside.ToString("#,0", Words)} outside the window" : "")),
            ("has", Has(answer.Counts)),
            ("gaps", answer.Weather.AllGaps == 0 ? "none" : answer.Weather.AllGaps.ToString("#,0", Words)),
        ];
        return [.. rows.SelectMany(r => Wrap.Lines(r.Item2, first: $"{r.Item1,-10}", rest: new string(' ', 10)))];
    }

    private static string Position(WeatherStation s, UnitStyle units)
    {
        string height = s.Elevation_m is { } m ? units.IsUs ? $"{UnitStyle.Number(m / Foot_m, 0)} ft above the sea" : $"{UnitStyle.Number(m, 0)} m above the sea" : "";
        string place = s is { Latitude_deg: { } latitude, Longitude_deg: { } longitude }
            ? $"{UnitStyle.Number(Math.Abs(latitude), 2)}° {(latitude < 0 ? "S" : "N")} {UnitStyle.Number(Math.Abs(longitude), 2)}° {(longitude < 0 ? "W" : "E")}" : "";
        return (place, height) switch
        {
            ("", "") => "not in the file",
            (_, "") => place,
            ("", _) => height,
            _ => $"{place}, {height}",
        };
    }

    private static string Has(ColumnCounts counts) => string.Join(
        ", ",
        counts.Each.Where(c => c.Rows > 0)
            .Select(c => c.Rows == counts.Rows ? c.Name : string.Create(Words, $"{c.Name} in {c.Rows:#,0} rows")).Prepend("air"));

    private static List<string> Cold(WeatherFileReport answer, UnitStyle units)
    {
        WeatherDigest d = answer.Digest;
        string threshold = units.Temperature(d.Below_K);
        List<string> lines =
        [
            $"mean {units.Temperature(d.Mean_K)}, highest {units.Temperature(d.High_K)}",
        ];
        if (d.LongestRun is not { } run)
        {
            lines.Add($"never below {threshold}");
            return lines;
        }

        string degreeHours = (units.IsUs ? d.DegreeHours_Kh * 1.8 : d.DegreeHours_Kh).ToString("#,0", Words);
        lines.AddRange(Wrap.Lines($"below {threshold}: {d.HoursBelow.ToString("#,0", Words)} h, {degreeHours} {(units.IsUs ? "°F·h" : "K·h")}"));
        lines.AddRange(Wrap.Lines(
            $"longest run below {threshold}: {Length(run.To - run.From)}, {Moment(run.From)} to {Moment(run.To)}, down to {units.Temperature(run.Low_K)}", rest: "  "));
        return lines;
    }

    /// <summary>The coldest hours, one from noon to noon, the coldest first.</summary>
    internal static IReadOnlyList<string> Coldest(WeatherDigest digest, UnitStyle units) => TextTable.Lines(
        [new(["Coldest hours"], Left: true), new([]), new([], Left: true), new([], Left: true)],
        [
            .. digest.Coldest.Select(r => (IReadOnlyList<string>)
                [Moment(r.Time), units.Temperature(r.Air_K), r.Wind_m_s is { } w ? "wind" : "", r.Wind_m_s is { } v ? units.Speed(v) : ""]),
        ],
        gap: 2);

    private static List<string> Gaps(WeatherResult weather)
    {
        List<string> lines =
        [
            .. weather.Gaps.OrderByDescending(g => g.Length).Take(GapsShown).OrderBy(g => g.From)
                .Select(g => $"  {Moment(g.From)} to {Moment(g.To)}, {g.Length.TotalHours.ToString("0.#", Words)} h"),
        ];
        if (weather.AllGaps > GapsShown)
            lines.Add($"  and {(weather.AllGaps - GapsShown).ToString("#,0", Words)} shorter ones");
        return lines;
    }

    internal static string Length(TimeSpan span) => span.TotalDays >= 2
        ? string.Create(Words, $"{span.TotalDays:0.0} days") : ClockText.Span(Duration.FromSeconds(span.TotalSeconds));

    private static string Moment(DateTimeOffset time) => ClockText.WithOffset(time);
}
