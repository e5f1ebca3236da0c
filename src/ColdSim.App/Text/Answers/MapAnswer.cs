using System.Globalization;
using ColdSim.Files;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;

namespace ColdSim.App.Text.Answers;

/// <summary>A proposed column map, with the first rows as it reads them.</summary>
internal static class MapAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="proposal">The map.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="path">Where the map is written.</param>
    public static Answer Of(MapProposal proposal, UnitStyle units, string path)
    {
        string file = Path.GetFileName(proposal.File);
        string offset = proposal.NeedsOffset ? " --offset -07:00" : "";
        return new()
        {
            Brief = OneLine.Of($"MAP PROPOSED for {file}: {proposal.Map.Columns.Count} columns, {path}"),
            Verdict = $"MAP PROPOSED for {file}, from its headings in line {proposal.Map.HeaderLine}.",
            Consequences =
            [
                $"{string.Join(", ", proposal.Map.Columns.Select(c => $"{c.Key} is '{Quote.Of(c.Value.Heading)}'"))}; times are in {string.Join(", ", proposal.Map.Headings().Select(h => $"'{Quote.Of(h)}'"))}.",
                proposal.NeedsOffset ? "Its times have no offset from UTC: state the clock's, or name its time_zone in the map." : "",
                proposal.Problems.Count > 0 ? $"Read by it, the first rows have faults: {proposal.Problems[0]}" : "",
            ],
            ToDo = "Compare these rows with the file, then read it by the map:",
            Actions = [$"coldsim weather {VisibleText.Of(proposal.File)} --columns {VisibleText.Of(path)}{offset}"],
            Table = Preview(proposal, units),
            AboutGuesses = "Guessed, for the headings do not say it:",
            Guesses = proposal.Guesses,
            Caution = CautionLine.Weather,
        };
    }

    private static AnswerTable? Preview(MapProposal proposal, UnitStyle units)
    {
        if (proposal.Preview.Count == 0)
            return null;
        (string Name, Func<WeatherRow, string> Cell)[] columns =
        [
            ("air", r => units.Temperature(r.Air_K)),
            ("wind", r => r.Wind_m_s is { } v ? units.Speed(v) : "-"),
            ("dew point", r => r.DewPoint_K is { } v ? units.Temperature(v) : "-"),
            ("sun", r => r.Sun_W_m2 is { } v ? $"{UnitStyle.Number(v, 0)} W/m²" : "-"),
            ("cloud", r => r.Cloud_frac is { } v ? $"{UnitStyle.Number(v * 100, 0)} %" : "-"),
            ("pressure", r => r.Pressure_Pa is { } v ? $"{UnitStyle.Number(v / 100, 0)} hPa" : "-"),
        ];
        (string Name, Func<WeatherRow, string> Cell)[] shown = [.. columns.Where(c => proposal.Preview.Any(r => c.Cell(r) != "-"))];
        string format = proposal.NeedsOffset ? "yyyy-MM-dd HH:mm" : "yyyy-MM-dd HH:mm zzz";
        IReadOnlyList<string> lines = TextTable.Lines(
            [new(["first rows"], Left: true), .. shown.Select(c => new TextColumn([c.Name]))],
            [.. proposal.Preview.Select(r => (IReadOnlyList<string>)[r.Time.ToString(format, CultureInfo.InvariantCulture), .. shown.Select(c => c.Cell(r))])],
            gap: 2);
        return new([lines[0]], [.. lines.Skip(1).Select(l => new AnswerRow(l, 1))], _ => "");
    }

    private static IEnumerable<string> Headings(this ColumnMap map) => map.Clock is { } clock ? [.. map.Time, clock] : map.Time;
}
