using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Fits;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim fit</c>: learns from the log how the coach really loses heat.</summary>
internal static class FitCommand
{
    private const string Backup = ".bak";

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file with a log beside it.");
        Option<string?> target = new("--out") { HelpName = "PATH", Description = "Write a copy of the scenario that carries the fit." };
        Option<bool> inPlace = new("--in-place") { Description = "Write the fit into the scenario itself; what was there is kept as FILE.bak." };
        Option<bool> keep = new("--keep-outliers") { Description = "Use grossly wrong readings too; they are named either way." };
        Option<bool> skip = ScenarioLog.SkipDamaged();
        Option<bool> json = CommonOptions.Json();
        ExampleCommand command = new(
            "fit",
            "Learn from the log, the weather and the set points how the coach loses heat.",
            "coldsim fit trip.toml",
            "coldsim fit trip.toml --out learned.toml",
            "coldsim fit trip.toml --in-place")
        { file, target, inPlace, keep, skip, json };
        command.SetWork(host, Question, json: json);
        return command;

        CommandWork<FitReport> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            string? copy = Target(parsed.GetValue(target), parsed.GetValue(inPlace), path, host);
            Scenario scenario = ScenarioFile.Read(path, host);
            if (scenario.Rig.Cylinders.Count > 1)
                throw CommandFault.Input($"coldsim: '{path}' has {scenario.Rig.Cylinders.Count} cylinders; a fit needs one, for which of them fed when is not in the log");
            bool leaveOut = !parsed.GetValue(keep);
            ReadLog log = ScenarioLog.Read(path, scenario, parsed.GetValue(skip), UnitStyle.Us, host, keepInconsistent: !leaveOut);
            return new()
            {
                Answer = (_, cancel) => Fit(scenario, log, leaveOut, path, cancel),
                Text = (fit, to) => to.Write(FitWords.Sections(fit, Table(fit), Cautions.Short)),
                Json = JsonReport.Write,
                Files = Files(path, copy, host, Table),
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

    private static string? Target(string? copy, bool inPlace, string path, Host host)
    {
        if (inPlace)
            return copy is null ? path : throw CommandFault.Input("coldsim: give --out or --in-place, not both");
        if (copy is null)
            return null;
        string full = Path.GetFullPath(copy);
        if (full == Path.GetFullPath(path))
            throw CommandFault.Input($"coldsim: --out would overwrite the scenario '{path}'; --in-place does that, and keeps what was there");
        if (host.Files.Exists(full) || host.Files.FolderExists(full))
            throw CommandFault.Input($"coldsim: --out: '{copy}' exists already and is left as it is");
        if (Path.GetDirectoryName(full) != Path.GetDirectoryName(Path.GetFullPath(path)))
            throw CommandFault.Input($"coldsim: --out: '{copy}' is in another folder than '{path}', where the copy would not find its weather");
        return copy;
    }

    // In place, what was there is kept beside it.
    private static IReadOnlyList<FileOutput<FitReport>> Files(string path, string? copy, Host host, Func<FitReport, string> table)
    {
        if (copy is null)
            return [];
        FileOutput<FitReport> fitted = new(copy, (fit, to) => to.Write(FitText.With(Text(path, host), table(fit))), _ => copy == path
            ? $"fit written into {path}; what was there is in {path}{Backup}" : $"scenario with the fit written to {copy}");
        return copy == path ? [new(path + Backup, (_, to) => to.Write(Text(path, host))), fitted] : [fitted];
    }

    private static string Text(string path, Host host)
    {
        using StreamReader reader = new(host.Files.Open(path));
        return reader.ReadToEnd();
    }
}
