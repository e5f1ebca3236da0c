using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Results;
using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim weather</c>: what a weather file holds, and the same as our own CSV.</summary>
internal static class WeatherCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Weather file of any layout that docs/weather-formats.md lists, packed with gzip or not.");
        WeatherOptions o = new();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        ExampleCommand command = new(
            "weather",
            "Look into a weather file: what it is, from where and when, gaps, coldest hours; and turn it into our CSV, or its design night.",
            "coldsim weather station.epw",
            "coldsim weather record.psv.gz --offset -07:00 --night p99 --out night.csv",
            "coldsim weather forecast.json --elevation \"9,200 ft\" --hollow \"4 °F\" \\",
            "    --out camp.csv")
        { file };
        foreach (Option option in (IEnumerable<Option>)[.. o.All, units, json])
            command.Options.Add(option);
        command.SetAction((parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            string? target = CsvTarget.Checked(parsed.GetValue(o.Out), path, "--out", "the file it reads,");
            WeatherAnswer answer = Answer(path, parsed, o, host);
            if (parsed.GetValue(json))
            {
                foreach (string note in answer.Notes)
                    host.Error.WriteLine($"note: {note}");
                host.Out.Flush();
                WeatherJson.Write(answer, host.Output);
            }
            else
            {
                RunText.Write(host.Out, WeatherText.Sections(answer, parsed.UnitStyle(units), host.OutIsTerminal), host.OutIsTerminal && host.Color);
            }

            host.Out.Flush();
            if (target is not null)
                CsvFile.Write(host, target, answer.Night is null ? "weather" : "the night's weather", w => WeatherCsvWriter.Write(answer.Chosen, w, Comment(answer)), cancel);
            return Task.FromResult(ExitCode.Done);
        });
        return command;
    }

    private static WeatherAnswer Answer(string path, ParseResult parsed, WeatherOptions o, Host host)
    {
        WeatherInputs inputs = new(parsed, o);
        WeatherRequest request = inputs.Request();
        double below_K = inputs.Below_K();
        NightWish? wish = inputs.Night();
        (PlaceShift shift, double? elevation_m) = inputs.Shift();
        inputs.Finish();
        WeatherResult weather = Read(path, request, host);
        // The file is named once, above them.
        List<string> notes = [.. weather.Notes.Select(n => n.StartsWith($"{path}: ", StringComparison.Ordinal) ? n[(path.Length + 2)..] : n)];
        SiteSpecification site = new()
        {
            Elevation_m = elevation_m ?? weather.Station.Elevation_m ?? 0,
            Latitude_deg = parsed.GetValue(o.Latitude) ?? weather.Station.Latitude_deg,
            Longitude_deg = parsed.GetValue(o.Longitude) ?? weather.Station.Longitude_deg,
        };
        IReadOnlyList<WeatherRow> rows = Shifted(weather, Complete(shift, elevation_m, weather), site, notes);
        TimeSpan clock = Clock(weather, request, site, notes);
        if (rows.Any(r => r.Time.Offset != clock) && weather.Format is WeatherFormat.Ghcnh or WeatherFormat.Meteostat)
            rows = [.. rows.Select(r => r with { Time = r.Time.ToOffset(clock) })];
        return new WeatherAnswer
        {
            File = path,
            Weather = weather,
            Rows = rows,
            Clock = clock,
            Digest = WeatherDigest.Of(rows, clock, below_K),
            Night = wish?.Pick(ColdNights.Of(rows, clock)),
            Notes = notes,
        };
    }

    private static WeatherResult Read(string path, WeatherRequest request, Host host)
    {
        if (Directory.Exists(path))
            throw CommandFault.Input($"coldsim: '{path}' is a folder, not a weather file");
        if (!File.Exists(path))
            throw CommandFault.Input($"coldsim: there is no file '{path}'");
        WeatherResult weather = host.Parts.ReadWeather(path, request);
        foreach (string warning in weather.Warnings)
            host.Error.WriteLine($"warning: {warning}");
        if (weather.Problems.Count == 0)
            return weather;
        string read = $"coldsim: read as {weather.Format.Title()}; --format reads it as another layout";
        throw CommandFault.Input([.. weather.Problems.Select(p => p.ToString()), read]);
    }

    private static PlaceShift Complete(PlaceShift shift, double? elevation_m, WeatherResult weather)
    {
        if (elevation_m is null)
            return shift;
        double? from_m = shift.StationElevation_m ?? weather.Station.Elevation_m;
        return from_m is not null ? shift with { StationElevation_m = from_m }
            : throw CommandFault.Input("coldsim: --elevation: the file does not tell the station's elevation; give --station-elevation");
    }

    private static IReadOnlyList<WeatherRow> Shifted(WeatherResult weather, PlaceShift shift, SiteSpecification site, List<string> notes)
    {
        if (shift.HollowDrop_K > 0 && site.Latitude_deg is null)
            throw CommandFault.Input("coldsim: --hollow: the file does not tell where the sun sets; give --latitude and --longitude");
        IReadOnlyList<WeatherRow> rows = shift.Apply(weather.Rows, site, new WeatherDefaults().Wind_m_s, out IReadOnlyList<string> said);
        notes.AddRange(said);
        return rows;
    }

    // Times in UTC put noon in the small hours; the meridian's clock is near enough to a local one.
    private static TimeSpan Clock(WeatherResult weather, WeatherRequest request, SiteSpecification site, List<string> notes)
    {
        TimeSpan own = request.Offset ?? weather.Rows[0].Time.Offset;
        if (request.Offset is not null || weather.Format is not (WeatherFormat.Ghcnh or WeatherFormat.Meteostat))
            return own;
        if (site.Longitude_deg is not { } longitude)
        {
            notes.Add("times are in UTC, and so is noon; --offset states a local clock");
            return own;
        }

        TimeSpan meridian = TimeSpan.FromHours(Math.Round(longitude / 15));
        notes.Add($"times are in UTC; shown by the clock of the meridian, UTC{OffsetText.Of(meridian)}; --offset states another");
        return meridian;
    }

    private static string Comment(WeatherAnswer answer)
    {
        List<string> lines = [$" From {Path.GetFileName(answer.File)}, {answer.Weather.Format.Title()}."];
        if (answer.Weather.Station is { Name: { } name })
            lines.Add($" Station: {name}.");
        if (answer.Night is { } night)
            lines.Add(FormattableString.Invariant($" Night of {night.Night.Evening:yyyy-MM-dd}, rank {night.Rank} of {night.Of}: {night.Rule}."));
        lines.AddRange(answer.Notes.Select(n => $" {n}"));
        return string.Join('\n', lines.Select(l => l.ReplaceLineEndings(" ")));
    }
}
