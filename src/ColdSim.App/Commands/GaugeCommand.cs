using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning.Gauges;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim gauge</c>: what a reading of a cylinder means, one subcommand a method.</summary>
internal static class GaugeCommand
{
    public static Command Of(Host host) => new ExampleCommand(
        "gauge",
        "Turn readings of a cylinder into what is in it: weight, echo, line on the wall, float, pressure, or several at once; or say what they should show.",
        "coldsim gauge weight --cylinder \"20 lb\" --scale \"31.2 lb\" --tare \"17.6 lb\"",
        "coldsim gauge expect trip.toml --at 04:00",
        "coldsim gauge line --help")
    {
        Weight(host), Echo(host), Line(host), Float(host), Pressure(host), Combine(host), GaugeExpectCommand.Of(host),
    };

    private static ExampleCommand Weight(Host host)
    {
        GaugeOptions o = new();
        ExampleCommand command = new(
            "weight",
            "From a scale and the stamped tare.",
            "coldsim gauge weight --cylinder \"20 lb\" --scale \"31.2 lb\" --tare \"17.6 lb\" \\",
            "    --furnace \"25000 BTU/h\"",
            "coldsim gauge weight --cylinder 30lb --scale \"20.1 kg\" --tare \"11.4 kg\" \\",
            "    --ice \"0.3 kg\" --units si");
        return Complete(command, host, o, [o.Scale, .. o.OfWeight, o.Temperature], q => q.Weight());
    }

    private static ExampleCommand Echo(Host host)
    {
        GaugeOptions o = new();
        ExampleCommand command = new(
            "echo",
            "From a sensor below that hears the liquid's surface: a time, or what it shows as height or percentage.",
            "coldsim gauge echo --cylinder \"20 lb\" --time \"230 us\" --temperature -22C",
            "coldsim gauge echo --cylinder \"20 lb\" --percent \"30 %\" \\",
            "    --assumed-temperature 20C --temperature \"-8 °F\"");
        return Complete(command, host, o, [o.Time, o.EchoHeight, o.EchoPercent, o.EchoError, .. o.OfEcho, .. o.OfLevel], q => q.Echo());
    }

    private static ExampleCommand Line(Host host)
    {
        GaugeOptions o = new();
        ExampleCommand command = new(
            "line",
            "From the height on the wall where it turns cold under hot water, or where frost ends.",
            "coldsim gauge line --cylinder \"20 lb\" --height \"5.1 in\" --temperature \"10 °F\"");
        return Complete(command, host, o, [o.LineHeight, o.LineBy, o.Foot, o.LineError, .. o.OfLevel], q => q.Line());
    }

    private static ExampleCommand Float(Host host)
    {
        GaugeOptions o = new();
        ExampleCommand command = new(
            "float",
            "From the float gauge of a lying tank.",
            "coldsim gauge float --cylinder \"20 gal\" --percent \"35 %\" --temperature -10C");
        return Complete(command, host, o, [o.FloatPercent, o.FloatError, .. o.OfLevel], q => q.Float());
    }

    private static ExampleCommand Pressure(Host host)
    {
        GaugeOptions o = new();
        ExampleCommand command = new(
            "pressure",
            "What a gauge pressure says (how warm the liquid is, whether there is any) and what it does not (how much).",
            "coldsim gauge pressure --cylinder \"20 lb\" --pressure \"12 psi\" \\",
            "    --temperature \"20 °F\" --rested");
        return Complete(
            command, host, o, [o.Pressure, o.PressureError, o.Elevation, o.Temperature, o.TemperatureError, o.Rested], q => q.Pressure());
    }

    private static ExampleCommand Combine(Host host)
    {
        GaugeOptions o = new();
        ExampleCommand command = new(
            "combine",
            "Several readings at once, each option as often as it was read, and which of them to repeat; errors that they share stay shared.",
            "coldsim gauge combine --cylinder \"20 lb\" --tare \"17.6 lb\" \\",
            "    --temperature \"10 °F\" --weight \"31.2 lb\" --weight \"31.0 lb\" \\",
            "    --line \"5.1 in\" --echo-time \"230 us\"",
            "coldsim gauge combine --cylinder \"20 lb\" --level \"34 %\" \\",
            "    --echo-percent \"41 %\" --percent-of full --pressure \"24 psi\"");
        return Complete(
            command, host, o,
            [
                o.Weights, o.Lines, o.FrostLines, o.EchoTimes, o.EchoHeights, o.EchoPercents, o.Heights, o.Floats,
                o.Pressure, o.PressureError, o.Elevation,
                .. o.OfWeight, .. o.OfEcho, o.Foot, o.LineError, o.HeightError, o.FloatError, .. o.OfLevel,
            ],
            q => q.Combine());
    }

    private static ExampleCommand Complete(
        ExampleCommand command, Host host, GaugeOptions o, IEnumerable<Option> own, Func<GaugeInput, GaugeQuestion> ask)
    {
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        foreach (Option option in (IEnumerable<Option>)[.. o.OfCylinder, .. own, o.Furnace, units, json, length.Full, length.Brief])
            command.Options.Add(option);
        command.SetWork(
            host,
            parsed =>
            {
                GaugeQuestion question = ask(new GaugeInput(parsed, o));
                return new CommandWork<GaugeReport>
                {
                    Answer = (_, _) => Answer(question),
                    OnScreen = GaugeAnswer.Of,
                    Text = (report, to) => to.Write(GaugeText.Sections(report, to.Units, Cautions.Short)),
                    Json = JsonReport.Write,
                };
            },
            units,
            json,
            length);
        return command;
    }

    private static GaugeReport Answer(GaugeQuestion question)
    {
        try
        {
            return GaugeReport.Of(question);
        }
        catch (ImpossibleReadingException e)
        {
            throw CommandFault.Input($"coldsim: {e.Message}");
        }
    }
}
