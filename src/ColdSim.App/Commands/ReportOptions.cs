using System.CommandLine;
using ColdSim.App.Text.Documents;
using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>What a report is to have in it, and how it is written.</summary>
internal sealed class ReportOptions
{
    private const int UsualMembers = 200, MostMembers = 10_000;

    /// <summary>What may be asked for beside the run.</summary>
    public const string Limits = "limits", Chance = "chance", Buy = "buy", Diagnose = "diagnose", Gauges = "gauges";

    private static readonly string[] Extras = [Limits, Chance, Buy, Diagnose, Gauges];

    public Argument<string> File { get; } = CommonOptions.File("Scenario file.");

    public Option<string?> Out { get; } = new("--out")
    {
        HelpName = "PATH",
        Description = "File to write; the scenario's name with .html or .md in this folder unless given, - for standard output.",
    };

    public Option<bool> Force { get; } = CommonOptions.Force();

    public Option<string?> With { get; } = new("--with")
    {
        HelpName = "LIST",
        Description = "Also any of limits, chance, buy, diagnose and gauges, with a comma between; the first three take further runs.",
        CompletionSources = { Limits, Chance, Buy, Diagnose, Gauges, "limits,chance" },
    };

    public Option<string> Only { get; } = CommonOptions.Choice(
        "--only", "The whole report, or only the limits as a card for the door.", ["all", "limits"], "all");

    public Option<string> Page { get; } = CommonOptions.Choice(
        "--page", "The paper it is printed on: the printer's own, or one of these.", ["any", "a4", "letter", "a5"], "any");

    public Option<string> Format { get; } = CommonOptions.Choice(
        "--format", "One HTML page with everything in it, or Markdown.", ["html", "md"], "html");

    public Option<string?> Svg { get; } = new("--svg")
    {
        HelpName = "FOLDER",
        Description = "Also write each picture alone, as an SVG file in this folder.",
    };

    public Option<double?> Members { get; } = CommonOptions.Number(
        "--members", "N", $"Members of --with chance; {UsualMembers} unless given.", 1, MostMembers, whole: true);

    public Option<string> Units { get; } = CommonOptions.Units();

    public StartOptions Log { get; } = new();

    /// <summary>What is asked for beside the run.</summary>
    /// <exception cref="CommandFault">A word that is none of them.</exception>
    public IReadOnlyList<string> ExtrasOf(ParseResult parsed)
    {
        if (parsed.GetValue(With) is not { } list)
            return [];
        string[] words = list.Split(',', StringSplitOptions.TrimEntries);
        if (words.FirstOrDefault(w => !Extras.Contains(w, StringComparer.Ordinal)) is not { } unknown)
            return words;
        string accepted = string.Join(", ", Extras);
        throw CommandFault.Input($"coldsim: --with takes {accepted}, with a comma between, not '{Quote.Of(unknown)}'", "See 'coldsim report --help'.");
    }

    /// <summary>How many members a chance has.</summary>
    public int MembersOf(ParseResult parsed) => (int)(parsed.GetValue(Members) ?? UsualMembers);

    /// <summary>The paper.</summary>
    public Paper PaperOf(ParseResult parsed) => parsed.GetValue(Page) switch
    {
        "a4" => Paper.A4,
        "letter" => Paper.Letter,
        "a5" => Paper.A5,
        _ => Paper.Any,
    };
}
