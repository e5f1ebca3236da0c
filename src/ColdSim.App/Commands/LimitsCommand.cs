using System.CommandLine;
using System.Globalization;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim limits</c>: the coldest night this rig is fed through, by fill and set-up.</summary>
internal static class LimitsCommand
{
    private const int MostFills = 20;

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file, with a furnace.");
        Option<string?> fills = new("--fills")
        {
            HelpName = "LIST",
            Description = "Fills to find, in % of the legal filling with commas between; 10,20,30,40,50,65,80,100 unless given.",
        };
        Option<bool> page = new("--one-page") { Description = "Print one page of plain text to tape inside a cupboard door." };
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        OutputOption csv = OutputOption.Csv("Also write the limits, a row a cell, to this file.");
        StartOptions log = new();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "limits",
            "Find the coldest night through which this rig's furnace is fed, by fill, blanket and cylinders.",
            "coldsim limits trip.toml",
            "coldsim limits trip.toml --fills 25,50,75,100 --units si",
            "coldsim limits trip.toml --one-page > door.txt",
            "coldsim limits trip.toml --csv limits.csv")
        { file, fills, page, units, json, csv.Path, csv.Separator, csv.Force, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<LimitChart> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            IReadOnlyList<double> asked = parsed.GetValue(fills) is { } list ? Fills(list) : LimitChart.UsualFills;
            bool onePage = parsed.GetValue(page);
            if (parsed.GetValue(json) && onePage)
                throw CommandFault.Input("coldsim: --json and --one-page do not go together", "See 'coldsim limits --help'.");
            Scenario scenario = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host).Scenario;
            if (scenario.Rig.Furnace is null)
                throw CommandFault.Input($"coldsim: '{path}' has no [furnace]; limits are the nights through which one is fed");

            // What is printed is run at whole degrees of the person's own unit.
            LimitAxis axis = parsed.UnitStyle(units).IsUs ? LimitAxis.Fahrenheit : LimitAxis.Celsius;
            int cells = (asked.Count + 1) * RigVariant.Of(scenario.Rig).Count;
            return new()
            {
                Answer = (done, cancel) => LimitChart.Of(scenario, axis, asked, done, cancel: cancel),
                Progress = done => $", {done} of {cells} done",
                Ledgers = new("these limits", c => c.Cells.SelectMany(OpenLedger).Take(1)) { With = "the scenario" },
                OnScreen = onePage ? null : LimitAnswer.Of,
                Text = (c, to) =>
                {
                    if (onePage)
                        to.Write(LimitPage.Lines(c, to.Units, host.Clock.GetLocalNow()));
                    else
                        to.Write(LimitText.Sections(c, to.Units, Cautions.Short));
                },
                BesideJson = c => ScenarioFile.Assumed(c.Scenario),
                Json = JsonReport.Write,
                Files = csv.Of<LimitChart>(parsed, host, CsvReport.LimitsKind, _ => "limits", (a, to) => CsvReport.Write(a, to, csv.Form(parsed, units))),
            };
        }
    }

    private static IEnumerable<string> OpenLedger(LimitCell cell) => cell.Ledger is { } ledger ? LedgerLine.IfOpen(ledger, LimitWords.Percent(cell.Fill_frac)) : [];

    private static List<double> Fills(string list)
    {
        List<double> fills = [];
        foreach (string word in list.Split(',', StringSplitOptions.TrimEntries))
        {
            bool read = double.TryParse(word.TrimEnd('%').TrimEnd(), NumberStyles.Float, CultureInfo.InvariantCulture, out double percent);
            if (!read || !(percent >= 1 && percent <= 100))
                throw CommandFault.Input($"coldsim: --fills takes numbers from 1 to 100 with commas between, not '{Quote.Of(word)}'", "See 'coldsim limits --help'.");
            if (!fills.Contains(percent / 100)) fills.Add(percent / 100);
        }

        return fills.Count <= MostFills ? fills
            : throw CommandFault.Input($"coldsim: --fills takes at most {MostFills} fills, not {fills.Count}", "See 'coldsim limits --help'.");
    }
}
