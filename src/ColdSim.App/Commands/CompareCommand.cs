using System.CommandLine;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim compare</c>: the scenario as it is and each of its options, side by side.</summary>
internal static class CompareCommand
{
    private const int MostNights = 400;

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file, with [[option]] tables unless --sizes is given.");
        Option<string?> sizes = new("--sizes")
        {
            HelpName = "LIST",
            Description = "Compare these common cylinder sizes, filled alike, instead of the file's options.",
        };
        Option<double?> nights = CommonOptions.Number("--nights", "N", "Nights to run, instead of the scenario's.", 1, MostNights, whole: true);
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        Option<string?> csv = new("--csv") { HelpName = "PATH", Description = "Also write the table, a row an option, to this file." };
        Option<bool> fail = new("--fail-if-short") { Description = "End with exit code 1 if nothing compared holds all nights." };
        ExampleCommand command = new(
            "compare",
            "Run a scenario as it is and with each of its options, and rank them.",
            "coldsim compare trip.toml",
            "coldsim compare trip.toml --sizes \"20 lb,30 lb,40 lb,100 lb\"",
            "coldsim compare trip.toml --csv options.csv --units si",
            "coldsim compare trip.toml --json > options.json")
        { file, sizes, nights, units, json, csv, fail };
        command.SetAction(async (parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            ScenarioReading reading = ScenarioFile.Good(path, host);
            Scenario scenario = reading.Scenario!;
            IReadOnlyList<ComparedOption> options = parsed.GetValue(sizes) is { } list
                ? SizeSweep.Of(scenario, Sizes(list, host.Parts))
                : reading.Options;
            if (options.Count == 0)
                throw CommandFault.Input(Nothing(path, parsed.GetValue(sizes)));
            if (parsed.GetValue(nights) is { } n)
            {
                scenario = OtherNights.In(scenario, (int)n);
                options = [.. options.Select(o => o with { Scenario = OtherNights.In(o.Scenario, (int)n) })];
            }

            CompareAnswer answer = new(host, parsed.UnitStyle(units), parsed.GetValue(json), parsed.GetValue(fail))
            {
                CsvPath = CsvTarget.Checked(parsed.GetValue(csv), path),
                Swept = parsed.GetValue(sizes) is not null,
            };
            return await answer.GiveAsync(scenario, options, cancel).ConfigureAwait(false);
        });
        return command;
    }

    private static string Nothing(string path, string? sizes) => sizes is null
        ? $"coldsim: '{path}' has no [[option]] to compare with; write one, or give --sizes"
        : $"coldsim: --sizes: '{sizes}' names nothing but the scenario's own cylinder";

    private static List<CylinderSpecification> Sizes(string list, Parts parts)
    {
        List<CylinderSpecification> sizes = [];
        List<string> unknown = [];
        foreach (string name in list.Split(',', StringSplitOptions.TrimEntries))
        {
            if (parts.FindCylinder(name) is not { } size)
                unknown.Add($"coldsim: --sizes: '{name}' is not a common size; there are {string.Join(", ", parts.CylinderNames())}");
            else if (!sizes.Any(s => s.Name == size.Name))
                sizes.Add(size);
        }

        return unknown.Count == 0 ? sizes : throw CommandFault.Input([.. unknown, "See 'coldsim compare --help'."]);
    }
}
