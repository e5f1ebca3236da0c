using System.CommandLine;
using ColdSim.Planning.Quick;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim tonight</c>: the answer for one night from what is known at dusk, without a file.</summary>
internal static class TonightCommand
{
    public static Command Of(Host host)
    {
        TonightOptions options = new();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        Option<bool> fail = CommonOptions.FailIfShort();
        ExampleCommand command = new(
            "tonight",
            "Answer for one night without any file: does this cylinder carry this furnace?",
            "coldsim tonight --low \"-8 °F\" --cylinder \"20 lb\" --left 1/3 \\",
            "    --furnace \"25000 BTU/h\"",
            "coldsim tonight --low -22C --cylinder 30lb --left \"9 kg\" --furnace \"7 kW\" \\",
            "    --length \"7 m\" --grade good --units si");
        AnswerOptions length = new();
        options.AddTo(command);
        command.Options.Add(units);
        command.Options.Add(json);
        command.Options.Add(fail);
        command.Options.Add(length.Full);
        command.Options.Add(length.Brief);
        command.SetWork(
            host,
            parsed => RunWork.Of(
                QuickScenario.Of(new TonightInput(parsed, options).Question(host.Clock)),
                parsed.GetValue(fail),
                withAdvice: length.WantsAdvice(parsed, json)),
            units,
            json,
            length);
        return command;
    }
}
