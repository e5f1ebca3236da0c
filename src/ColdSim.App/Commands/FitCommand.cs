using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Files.Logs;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Fits;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim fit</c>: learns from the log how the coach really loses heat.</summary>
internal static class FitCommand
{
    internal const string Backup = ".bak";

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file with a log beside it.");
        Option<string?> target = new("--out") { HelpName = "PATH", Description = "Write a copy of the scenario that carries the fit." };
        Option<bool> force = CommonOptions.Force();
        OutputOption output = new(target, force);
        Option<bool> inPlace = new("--in-place") { Description = "Write the fit into the scenario itself; what was there is kept as FILE.bak." };
        Option<bool> keep = new("--keep-outliers") { Description = "Use grossly wrong readings too; they are named either way." };
        Option<string?> weather = CommonOptions.Weather();
        Option<bool> skip = ScenarioLog.SkipDamaged();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "fit",
            "Learn from the log, the weather and the set points how the coach loses heat.",
            "coldsim fit trip.toml",
            "coldsim fit trip.toml --out learned.toml",
            "coldsim fit trip.toml --in-place")
        { file, target, inPlace, force, keep, weather, skip, units, json, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<FitReport> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            bool edit = parsed.GetValue(inPlace);
            if (edit && output.IsGiven(parsed))
                throw CommandFault.Input("coldsim: give --out or --in-place, not both");
            Scenario scenario = ScenarioFile.Read(path, host, parsed.GetValue(weather));
            bool leaveOut = !parsed.GetValue(keep);
            ReadLog log = ScenarioLog.Read(path, scenario, parsed.GetValue(skip), parsed.UnitStyle(units), host, keepInconsistent: !leaveOut);
            scenario = scenario with { Measurements = log.Measurements };
            string before = Text(path, host);
            OutputKind copied = new("this scenario with a fit", there => FitText.DiffersInFitOnly(there, before));
            OutputFile? copy = edit ? new(path + Backup, copied, parsed.GetValue(force)) : output.Target(parsed, host, copied);
            if (edit)
                OutputOption.Check(copy!, host);
            else if (copy is not null)
                CheckFolder(copy.Path, path);
            return new()
            {
                Answer = (_, cancel) => Fit(scenario, log, leaveOut, path, cancel),
                OnScreen = (fit, style) => FitAnswer.Of(fit, copy is not null, style),
                Text = (fit, to) => to.Write(FitWords.Sections(fit, Table(fit), to.Units, Cautions.Short)),
                Json = JsonReport.Write,
                Files = copy is null ? [] : edit ? InPlace(path, copy, before, Table) : [Copy(copy, before, Table)],
            };

            string Table(FitReport fit) => FitText.Table(fit, Path.GetFileName(LogFile.PathOf(path)));
        }
    }

    private static FitReport Fit(Scenario scenario, ReadLog log, bool leaveOut, string path, CancellationToken cancel)
    {
        try
        {
            return CoachFit.Of(scenario, [.. log.Use.Rows.Select(r => r.Reading)], leaveOut, cancel: cancel);
        }
        catch (TooLittleDataException e)
        {
            throw CommandFault.Input([.. e.Reasons.Select(r => $"{LogFile.PathOf(path)}: {r}"), "coldsim: too little to learn from; nothing was fitted"]);
        }
    }

    private static void CheckFolder(string copy, string path)
    {
        if (Path.GetDirectoryName(Path.GetFullPath(copy)) != Path.GetDirectoryName(Path.GetFullPath(path)))
            throw CommandFault.Input($"coldsim: --out: '{Quote.OfPath(copy)}' is in another folder than '{Quote.OfPath(path)}', where the copy would not find its weather");
    }

    private static FileOutput<FitReport> Copy(OutputFile copy, string before, Func<FitReport, string> table)
        => new(copy, (fit, to) => to.Write(FitText.With(before, table(fit))), _ => $"scenario with the fit written to {copy.Path}");

    // What was there is kept beside it; only the table of the fit is replaced in what was read, so the scenario is edited and not overwritten.
    private static IReadOnlyList<FileOutput<FitReport>> InPlace(string path, OutputFile backup, string before, Func<FitReport, string> table)
        =>
        [
            new(backup, (_, to) => to.Write(before)),
            new(new OutputFile(path, new("this scenario", there => there == before), Force: false) { IsEdit = true }, (fit, to) => to.Write(FitText.With(before, table(fit))),
                _ => $"fit written into {path}; what was there is in {backup.Path}"),
        ];

    /// <summary>The files of a fit that goes into its scenario: first what was there as FILE.bak, then the scenario.</summary>
    /// <exception cref="CommandFault">There is another file of that name.</exception>
    public static IReadOnlyList<FileOutput<FitReport>> InPlace(string path, Host host)
    {
        string before = Text(path, host);
        OutputFile backup = new(path + Backup, new("this scenario with a fit", there => FitText.DiffersInFitOnly(there, before)), Force: false);
        OutputOption.Check(backup, host);
        return InPlace(path, backup, before, fit => FitText.Table(fit, Path.GetFileName(LogFile.PathOf(path))));
    }

    private static string Text(string path, Host host)
    {
        using StreamReader reader = new(host.Files.Open(path));
        return reader.ReadToEnd();
    }
}
