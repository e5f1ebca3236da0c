using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim tonight</c>: the answer for one night, of a rig that has a file or from what is known at dusk.</summary>
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
            "Answer for one night: does your rig, or without any file this cylinder, carry the furnace?",
            "coldsim tonight --low \"-8 °F\" --left 1/3,full",
            "coldsim tonight --rig trip.toml --weather forecast.csv",
            "coldsim tonight --low \"-8 °F\" --cylinder \"20 lb\" --left 1/3 \\",
            "    --furnace \"25000 BTU/h\"",
            "coldsim tonight --low -22C --cylinder 30lb --left \"9 kg\" --furnace \"7 kW\" \\",
            "    --length \"7 m\" --grade good --units si",
            "coldsim tonight --low 0F --cylinder \"20 lb,30 lb\" --left 1/3,full \\",
            "    --joined changeover --furnace \"30000 BTU/h\"",
            "coldsim tonight --now --inside-now \"48 °F\" --low \"-8 °F\" --left 1/4,empty");
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
                new TonightInput(parsed, options, parsed.UnitStyle(units), host).Scenario(),
                parsed.GetValue(fail),
                adviseIn: length.WantsAdvice(parsed, json) ? parsed.UnitStyle(units) : null),
            units,
            json,
            length);
        return command;
    }
}
