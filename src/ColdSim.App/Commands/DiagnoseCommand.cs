using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Files.Signs;
using ColdSim.Planning;
using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim diagnose</c>: why there is no heat, from what is seen and heard.</summary>
internal static class DiagnoseCommand
{
    private const int MostAsked = 4;

    public static Command Of(Host host)
    {
        DiagnoseOptions o = new();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "diagnose",
            "Say why the furnace gives no heat, from what is seen and heard: causes with their odds, the next test, and what never to do. "
                + "At a terminal, "
                + "without a sign, it asks.",
            "coldsim diagnose",
            "coldsim diagnose --stove fades --furnace minutes --air \"-8 °F\" --left 1/3",
            "coldsim diagnose --furnace fan-only --fan slow --volts \"10.8 V\"",
            "coldsim diagnose trip.toml --furnace clicks --did swapped --json") { o.File, o.Smell, o.CarbonMonoxide };
        foreach (Option option in (IEnumerable<Option>)[.. o.Signs, units, json, length.Full, length.Brief])
            command.Options.Add(option);
        command.SetAction(async (parsed, cancel) =>
        {
            UnitStyle style = parsed.UnitStyle(units);
            DiagnosisQuestion question = await QuestionAsync(parsed, o, parsed.GetValue(json), host, cancel).ConfigureAwait(false);
            return await CommandRunner.RunAsync(Work(question), host, style, parsed.GetValue(json), length.Of(parsed),
                cancel).ConfigureAwait(false);
        });
        return command;
    }

    private static CommandWork<DiagnosisReport> Work(DiagnosisQuestion question) => new()
    {
        Answer = (_, _) => DiagnosisReport.Of(question),
        OnScreen = DiagnosisAnswer.Of,
        Text = (report, to) => to.Write(DiagnosisText.Sections(report, to.Units, Cautions.Short)),
        Json = JsonReport.Write,
    };

    private static async Task<DiagnosisQuestion> QuestionAsync(ParseResult parsed, DiagnoseOptions o, bool json, Host host,
        CancellationToken cancel)
    {
        // Whoever smells gas waits for no file to be read.
        if (parsed.GetValue(o.Smell))
            return new() { Emergency = Emergency.GasSmell };
        if (parsed.GetValue(o.CarbonMonoxide))
            return new() { Emergency = Emergency.CarbonMonoxide };
        Dictionary<string, string> given = o.Given(parsed);
        Scenario? rig = Rig(parsed.GetValue(o.File), given, host);
        DiagnosisQuestion question = Read(given, rig);
        if (question.HasEvidence)
            return question;
        if (host.Answer is null || !host.OutIsTerminal || json)
            throw CommandFault.Input(["coldsim: nothing was said of what is seen or heard; it does not guess. Look at these first:",
                .. First(question), "See 'coldsim diagnose --help'."]);
        Emergency emergency = await Task.Run(() => DiagnoseInterview.Ask(given, rig, host), cancel).WaitAsync(cancel).ConfigureAwait(false);
        if (emergency != Emergency.None)
            return new() { Emergency = emergency };
        question = Read(given, rig);
        return question.HasEvidence ? question
            : throw CommandFault.Input(["coldsim: nothing is known yet; it does not guess. Look at these first:", .. First(question)]);
    }

    private static IEnumerable<string> First(DiagnosisQuestion question)
        => DiagnosisReport.Ask(question).DistinctBy(DiagnosisWords.OptionOf).Take(MostAsked)
            .Select(t => $"  --{DiagnosisWords.OptionOf(t)}: {DiagnosisWords.QuestionOf(t)}");

    private static DiagnosisQuestion Read(Dictionary<string, string> given, Scenario? rig)
    {
        SignReader input = new(given, rig);
        DiagnosisQuestion question = input.Question();
        return input.Faults.Count == 0 ? question
            : throw CommandFault.Input(
                [.. input.Faults.Distinct().Select(f => $"coldsim: --{f.Name}: {f.What}"), "See 'coldsim diagnose --help'."]);
    }

    private static Scenario? Rig(string? file, Dictionary<string, string> given, Host host)
    {
        bool own = given.ContainsKey("cylinder") || given.ContainsKey("furnace-input");
        if (file is not null && own)
            throw CommandFault.Input("coldsim: FILE and --cylinder or --furnace-input both say what the rig is; drop one",
                "See 'coldsim diagnose --help'.");
        string? path = file ?? (own ? null : KeptRig.Find(host));
        return path is null ? null : ScenarioFile.Read(path, host);
    }
}
