using System.CommandLine;
using System.Globalization;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Files.Weather;

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
        AnswerOptions length = new();
        ExampleCommand command = new(
            "weather",
            "Look into a weather file: what it is, from where and when, gaps, coldest hours and nights; and turn it into our CSV, or its design nights.",
            "coldsim weather station.epw",
            "coldsim weather record.psv.gz --offset -07:00 --night p99 --out night.csv",
            "coldsim weather record.epw --coldest 3",
            "coldsim weather record.epw --spell p95 --nights 3 --out spell.csv",
            "coldsim weather forecast.json --elevation \"9,200 ft\" --hollow \"4 °F\" \\",
            "    --out camp.csv",
            "coldsim weather logger.csv --map logger.toml",
            "coldsim weather logger.csv --columns logger.toml --offset +01:00",
            "coldsim weather forecasts/ --against observed.csv --out errors.toml")
        { file };
        foreach (Option option in (IEnumerable<Option>)[.. o.All, units, json, length.Full, length.Brief])
            command.Options.Add(option);
        command.SetAction((parsed, cancel) => parsed.GetValue(o.Against) is { } observed
            ? CommandRunner.RunAsync(
                new VerificationInput(parsed, o, host).Work(parsed.GetRequiredValue(file), observed), host, parsed.UnitStyle(units), parsed.GetValue(json), length.Of(parsed), cancel)
            : parsed.GetResult(o.Map) is null
            ? CommandRunner.RunAsync(Question(parsed), host, parsed.UnitStyle(units), parsed.GetValue(json), length.Of(parsed), cancel)
            : CommandRunner.RunAsync(MapWork.Of(parsed, parsed.GetRequiredValue(file), o, json, host), host, parsed.UnitStyle(units), json: false, length.Of(parsed), cancel));
        return command;

        CommandWork<WeatherFileReport> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            WeatherQuestion question = new WeatherInput(parsed, o, host.Files).Question(path);
            host.Files.Reads.Add(path);
            WeatherReading reading = new(question, host);
            return new()
            {
                Answer = (_, cancel) => reading.Answer(cancel),
                Progress = _ => string.Create(CultureInfo.InvariantCulture, $", {reading.RowsRead:#,0} rows read"),
                OnScreen = (a, style) => WeatherAnswer.Of(a, style, host is { OutIsTerminal: true, Plain: false }),
                Text = (a, to) => to.Write(WeatherText.Sections(a, to.Units)),
                BesideJson = a => a.Notes.Select(note => $"note: {note}"),
                Json = JsonReport.Write,
                Files = o.Output.Of<WeatherFileReport>(parsed, host, WeatherCsvWriter.Kind, a => a.Picked is not { } picked ? "weather" : picked.Spell.Nights == 1 ? "the night's weather" : "the spell's weather", (a, to) => Write(a, question, reading, to)),
            };
        }
    }

    private static void Write(WeatherFileReport answer, WeatherQuestion question, WeatherReading reading, TextWriter output)
    {
        if (answer.Picked is not null)
        {
            WeatherCsvWriter.Write(answer.SpellRows, output, Comment(answer, question));
            return;
        }

        using WeatherCsvWriter csv = new(output, answer.Counts, Comment(answer, question));
        reading.Again(answer, row => csv.Add(row));
    }

    private static string Comment(WeatherFileReport answer, WeatherQuestion question)
    {
        List<string> lines = [WeatherCsvWriter.MadeFrom(Path.GetFileName(answer.File), answer.Weather.Format)];
        WeatherStation station = answer.Weather.Station;

        // What is written is the weather at the place, where one is given.
        lines.AddRange(StationComment.Lines(station with
        {
            Latitude_deg = question.Latitude_deg ?? station.Latitude_deg,
            Longitude_deg = question.Longitude_deg ?? station.Longitude_deg,
            Elevation_m = question.Elevation_m ?? station.Elevation_m,
        }));
        if (answer.Picked is { } picked)
        {
            string nights = picked.Spell.Nights == 1 ? "Night of " : FormattableString.Invariant($"{picked.Spell.Nights} nights from ");
            lines.Add(FormattableString.Invariant($" {nights}{picked.Spell.Evening:yyyy-MM-dd}, rank {picked.Rank} of {picked.Of}: {picked.Rule}."));
        }

        lines.AddRange(answer.Notes.Select(n => $" {n}"));
        return string.Join('\n', lines.Select(l => l.ReplaceLineEndings(" ")));
    }
}
