using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using Comparison = ColdSim.Planning.Compare.Comparison;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim compare</c>: the scenario as it is and each of its options, side by side.</summary>
internal static class CompareCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file, with [[option]] tables unless --sizes or a second file is given.");
        Argument<string?> second = new("SECOND") { Description = "Another scenario file: say what differs in it and what that does.", Arity = ArgumentArity.ZeroOrOne };
        Option<string[]> only = new("--option")
        {
            HelpName = "NAME",
            Description = "Of the file's options compare only this one; may be given again.",
        };
        only.CompletionSources.Add(CompletionsCommand.OptionNames(file, host));
        Option<string?> sizes = new Option<string?>("--sizes")
        {
            HelpName = "LIST",
            Description = "Compare these common cylinder sizes, filled to the same part, instead of the file's options.",
        }.OfferingSizes();
        Option<double?> nights = CommonOptions.Nights();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        OutputOption csv = OutputOption.Csv("Also write the table, a row an option, to this file.");
        Option<bool> fail = new("--fail-if-short") { Description = "End with exit code 1 if nothing compared holds all nights." };
        StartOptions log = new();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "compare",
            "Run a scenario as it is and with each of its options, and rank them; or run two scenarios and say what differs.",
            "coldsim compare trip.toml",
            "coldsim compare trip.toml warmer.toml",
            "coldsim compare trip.toml --sizes \"20 lb,30 lb,40 lb,100 lb\"",
            "coldsim compare trip.toml --option \"100 lb cylinder\"",
            "coldsim compare trip.toml --csv options.csv --units si",
            "coldsim compare trip.toml --json > options.json")
        { file, second, only, sizes, nights, units, json, csv.Path, csv.Separator, csv.Force, fail, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief };
        command.SetAction((parsed, cancel) => parsed.GetValue(second) is { } other
            ? CommandRunner.RunAsync(Two(parsed, other), host, parsed.UnitStyle(units), parsed.GetValue(json), length.Of(parsed), cancel)
            : CommandRunner.RunAsync(Question(parsed), host, parsed.UnitStyle(units), parsed.GetValue(json), length.Of(parsed), cancel));
        return command;

        CommandWork<ComparedFiles> Two(ParseResult parsed, string other)
        {
            string? ofOneFile = csv.IsGiven(parsed) ? csv.Path.Name
                : parsed.GetValue(sizes) is not null ? sizes.Name
                : parsed.GetResult(only) is not null ? only.Name : null;
            if (ofOneFile is not null)
                throw CommandFault.Input($"coldsim: {ofOneFile} goes with one file; drop '{Quote.OfPath(other)}' or that option", "See 'coldsim compare --help'.");
            return CompareFiles.Work(Started(parsed.GetRequiredValue(file)), Started(other), parsed.GetValue(fail), host);

            (string, Scenario) Started(string path)
            {
                Scenario scenario = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host).Scenario;
                return (path, parsed.GetValue(nights) is { } n ? ScenarioFile.WithNights(scenario, (int)n) : scenario);
            }
        }

        CommandWork<Advised<Comparison>> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            StartedScenario started = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host);
            Scenario scenario = started.Scenario;
            bool swept = parsed.GetValue(sizes) is not null;
            if (swept && parsed.GetResult(only) is not null)
            {
                throw CommandFault.Input(
                    "coldsim: --option and --sizes do not go together: --sizes takes the place of the file's options", "See 'coldsim compare --help'.");
            }

            IReadOnlyList<ComparedOption> options = parsed.GetValue(sizes) is { } list ? SizeSweep.Of(scenario, Sizes(list)) : Chosen(started.Options, parsed.GetValue(only) ?? [], path);
            if (options.Count == 0)
                throw CommandFault.Input(Nothing(path, parsed.GetValue(sizes)));
            if (parsed.GetValue(nights) is { } n)
            {
                scenario = ScenarioFile.WithNights(scenario, (int)n);
                options = [.. options.Select(o => o with { Scenario = ScenarioFile.WithNights(o.Scenario, (int)n) })];
            }

            bool failIfShort = parsed.GetValue(fail), advise = length.WantsAdvice(parsed, json);
            return new()
            {
                Answer = (done, cancel) => WithGuesses(Comparison.Of(scenario, options, done, cancel: cancel), advise, cancel),
                Progress = done => $", {done} of {options.Count + 1} done",
                Ledgers = new("this comparison", c => c.Of.Rows.SelectMany(r => LedgerLine.IfOpen(r.Ledger, r.Option.Name))),
                OnScreen = (c, to) => CompareAnswer.Of(c.Of, c.Guesses, to),
                Text = (c, to) => to.Write(CompareText.Sections(c.Of, to.Units, Cautions.Short, swept)),
                BesideJson = c => ScenarioFile.Assumed(c.Of.Base),
                Json = (c, stream) => JsonReport.Write(c.Of, stream),
                Files = csv.Of<Advised<Comparison>>(parsed, host, CsvReport.CompareKind, _ => "table", (c, to) => CsvReport.Write(c.Of, to, csv.Form(parsed, units))),
                Fails = c => failIfShort && !c.Of.AnyHolds,
            };
        }
    }

    private static IReadOnlyList<ComparedOption> Chosen(IReadOnlyList<ComparedOption> options, string[] names, string path)
    {
        if (names.Length == 0)
            return options;
        string[] unknown = [.. names.Where(n => !options.Any(o => o.Name.Equals(n, StringComparison.OrdinalIgnoreCase)))];
        string[] known = [.. options.Select(o => o.Name)];
        return unknown.Length == 0
            ? [.. options.Where(o => names.Contains(o.Name, StringComparer.OrdinalIgnoreCase))]
            : throw CommandFault.Input([.. unknown.Select(n => $"coldsim: --option: '{Quote.OfPath(path)}' has no option '{Quote.Of(n)}'; "
                + (NearestName.Of(n, known) is { } nearest ? $"did you mean \"{nearest}\"?"
                    : $"there are {string.Join(", ", known.Select(k => $"\"{k}\""))}"))]);
    }

    private static Advised<Comparison> WithGuesses(Comparison comparison, bool advise, CancellationToken cancel)
    {
        ComparedRow best = comparison.Best;
        return Advised.With(comparison, advise && !best.StoppedByCylinder, best.Option.Scenario, best.Summary, cancel);
    }

    private static string Nothing(string path, string? sizes) => sizes is null
        ? $"coldsim: '{path}' has no [[option]] to compare with; write one, or give --sizes"
        : $"coldsim: --sizes: '{Quote.Of(sizes!)}' names nothing but the scenario's own cylinder";

    private static List<CylinderSpecification> Sizes(string list)
    {
        List<CylinderSpecification> sizes = [];
        List<string> unknown = [];
        foreach (string name in list.Split(',', StringSplitOptions.TrimEntries))
        {
            if (CommonOptions.Size(name, "--sizes", out string fault) is not { } size)
                unknown.Add($"coldsim: {fault}");
            else if (!sizes.Any(s => s.Name == size.Name))
                sizes.Add(size.Full());
        }

        return unknown.Count == 0 ? sizes : throw CommandFault.Input([.. unknown, "See 'coldsim compare --help'."]);
    }
}
