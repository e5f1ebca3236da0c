using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Capacity;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim capacity</c>: what a cylinder can give, by air temperature, fill and time.</summary>
internal static class CapacityCommand
{
    public static Command Of(Host host)
    {
        CapacityOptions options = new();
        Option<string> units = CommonOptions.Choice(
            "--units", "Units to print: us (°F, lb, BTU) or si (°C, kg, kW); si for a size in kg unless given.", ["us", "si"], "us");
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "capacity",
            "Print how much gas a cylinder can give, by air temperature and fill, for a stated time.",
            "coldsim capacity \"20 lb\"                  for 4 hours, by temperature and fill",
            "coldsim capacity \"20 lb\" --for night      from 16:00 to 07:00",
            "coldsim capacity 100lb --fill 30%         by temperature and time",
            "coldsim capacity \"11 kg\" --low -5C,-15C --for 8h --wind \"5 m/s\"",
            "coldsim capacity 30lb --low 0F --fill \"12 lb\" --json")
        { options.Cylinder, options.Low, options.Fill, options.Wind, options.Time, units, json, length.Full, length.Brief };
        command.SetAction((parsed, cancel) =>
        {
            CapacityInput input = new(parsed, options);
            UnitStyle style = Style(parsed, units, parsed.GetRequiredValue(options.Cylinder));
            return CommandRunner.RunAsync(Work(input.Question(style)), host, style, parsed.GetValue(json), length.Of(parsed), cancel);
        });
        return command;
    }

    private static CommandWork<CapacityTable> Work(CapacityQuestion question)
    {
        int cells = question.Times.Count * question.Lows_K.Count * question.Fills_frac.Count;
        return new()
        {
            Answer = (done, cancel) => CapacityTable.Of(question, done, cancel: cancel),
            Progress = done => $", {done} of {cells} done",
            Ledgers = new("these capacities", t => t.Cells.SelectMany(c => c.Ledger is { } ledger ? LedgerLine.IfOpen(ledger) : []).Take(1)) { With = "the command line" },
            OnScreen = CapacityAnswer.Of,
            Text = (table, to) => to.Write(CapacityText.Sections(table, to.Units, Cautions.Short)),
            Json = JsonReport.Write,
        };
    }

    // Who names a size by the kilogram reads kilograms, unless the units are given.
    private static UnitStyle Style(ParseResult parsed, Option<string> units, string size)
        => parsed.GetResult(units) is { Implicit: false } ? parsed.UnitStyle(units) : StandardSize.Find(size) is { IsMetric: true } ? UnitStyle.Si : UnitStyle.Us;
}
