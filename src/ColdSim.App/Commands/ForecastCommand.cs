using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Disk;
using ColdSim.Files.Results;
using ColdSim.Files.Weather;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim forecast</c>: the only command that asks the network, and only when it is given.</summary>
internal static class ForecastCommand
{
    private const string OutputName = "forecast.csv";

    public static Command Of(Host host)
    {
        ForecastOptions o = new();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "forecast",
            "Fetch an hourly forecast for a position from a public weather service and write it as our CSV. It says what is sent to whom; "
            + "no other command sends anything.",
            "coldsim forecast --at 46.2,-94.1",
            "coldsim forecast --at 46.2,-94.1 --days 3 --out camp.csv",
            "coldsim forecast --at \"61.2 N, 10.5 E\" --from met-norway \\",
            "    --contact you@example.org",
            "coldsim tonight --rig trip.toml --weather forecast.csv");
        foreach (Option option in (IEnumerable<Option>)[.. o.All, units, json, length.Full, length.Brief])
            command.Options.Add(option);
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<ForecastReport> Question(ParseResult parsed)
        {
            ForecastInquiry inquiry = new ForecastInput(parsed, o, host).Inquiry();
            OutputFile output = new(parsed.GetValue(o.Output.Path) ?? OutputName, WeatherCsvWriter.Kind, parsed.GetValue(o.Output.Force));
            OutputOption.Check(output, host, "--out: ");
            ForecastAsking asking = new(inquiry, output.Path, host);
            return new()
            {
                Answer = (_, cancel) => asking.Answer(cancel),
                Progress = _ => asking.Progress,
                OnScreen = (a, style) => ForecastAnswer.Of(a, style),
                Text = (a, to) => to.Write(WeatherText.Sections(a.Weather, to.Units)),
                BesideJson = a => a.Weather.Notes.Select(note => $"note: {note}"),
                Json = (a, stream) => JsonReport.Write(a.Weather, stream),
                Files =
                [
                    new(output, (a, to) => WeatherCsvWriter.Write(a.Forecast.Rows, to, a.Comment), _ => $"the forecast written to {output.Path}"),
                ],
            };
        }
    }
}
