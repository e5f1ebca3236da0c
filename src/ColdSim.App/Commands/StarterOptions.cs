using System.CommandLine;
using ColdSim.Files;
using ColdSim.Files.Scenarios.Starters;

namespace ColdSim.App.Commands;

/// <summary>The options of <c>new</c> that answer its questions.</summary>
internal sealed class StarterOptions
{
    private readonly Option<string?>[] _answers =
    [
        Answer("--place", "PLACE", "Place and height, such as \"Trailhead, 5,300 ft\"."),
        Answer("--coach", "COACH", "Length and build, such as \"24 ft, leaky\"."),
        Answer("--cylinders", "LIST", "Such as \"30 lb 1/3 + 30 lb full, changeover\"."),
        Answer("--where", "WHERE", "Where they are: open, by the wall, tongue cover or ventilated locker.").Offering("open", "by the wall", "tongue cover", "ventilated locker"),
        Answer("--furnace", "POWER", "Input on its plate, such as \"25,000 BTU/h\"."),
        Answer("--thermostat", "T", "By day and by night, such as \"68 °F, 61 °F\"."),
        Answer("--battery", "BATTERY", "Kind and capacity, such as \"lithium 200 Ah\", or none."),
        Answer("--people", "WHO", "How many, and when somebody is up: \"2, 06:30-22:30\"."),
        Answer("--weather", "WEATHER", "A file, or the coming nights' lows: \"-8 °F, 2 °F\"."),
    ];

    private readonly Option<string?> _kind = new Option<string?>("--kind") { HelpName = string.Join('|', StarterRig.Kinds), Description = "A rig to begin with; nothing is asked." }
        .Offering(StarterRig.Kinds);

    /// <summary>All of them.</summary>
    public IEnumerable<Option> All => [_kind, .. _answers];

    /// <summary>Whether one is given, so that nothing is asked.</summary>
    public bool AreGiven(ParseResult parsed) => All.Any(o => parsed.GetResult(o) is not null);

    /// <summary>The rig that they say.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="path">Where the scenario goes.</param>
    /// <param name="metric">Whether what is not said is metric.</param>
    /// <param name="host">Where the command runs.</param>
    /// <exception cref="CommandFault">One is not understood.</exception>
    public StarterRig Rig(ParseResult parsed, string path, bool metric, Host host)
    {
        StarterRig rig = StarterRig.Unknown(metric);
        IReadOnlyList<StarterQuestion> questions = StarterQuestion.All(metric);
        if (parsed.GetValue(_kind) is { } kind)
        {
            rig = StarterRig.Kinds.Contains(kind, StringComparer.Ordinal) ? StarterRig.OfKind(kind, metric)
                : throw CommandFault.Input($"coldsim: --kind takes {string.Join(", ", StarterRig.Kinds)}, not '{Quote.Of(kind)}'", "See 'coldsim new --help'.");
        }

        List<string> faults = [];
        for (int i = 0; i < _answers.Length; i++)
        {
            if (parsed.GetValue(_answers[i]) is not { } answer || StarterQuestion.IsUnknown(answer))
                continue;
            StarterRig answered = questions[i].Put(rig, answer.Trim());
            IReadOnlyList<string> wrong = StarterFiles.Faults(answered, path, host.Clock.GetLocalNow(), host.Files.Open);
            faults.AddRange(wrong.Select(w => $"coldsim: {_answers[i].Name}: {w}"));
            rig = wrong.Count == 0 ? answered : rig;
        }

        return faults.Count == 0 ? rig : throw CommandFault.Input([.. faults, "See 'coldsim new --help'."]);
    }

    private static Option<string?> Answer(string name, string helpName, string description) => CommonOptions.Quantity(name, helpName, description);
}
