using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Text.Answers;

/// <summary>Why there is no heat, as an answer: the cause, the evidence, the next test, what to do, and what never to do.</summary>
internal static class DiagnosisAnswer
{
    private const int MostEvidence = 4;
    private const int Rows = 5;

    // Then what to do about the second need not be said.
    private const double Sure_frac = 0.9;

    /// <summary>The answer.</summary>
    public static Answer Of(DiagnosisReport report, UnitStyle units) => report.Question.Emergency switch
    {
        Emergency.GasSmell => GasSmell(),
        Emergency.CarbonMonoxide => CarbonMonoxide(),
        _ => Ranked(report, units),
    };

    /// <summary>What comes before any other answer, the first first.</summary>
    public static IReadOnlyList<Answer> Emergencies => [GasSmell(), CarbonMonoxide()];

    private static Answer GasSmell() => new()
    {
        Brief = "Gas smell: everybody out now; no flame, no switch; valve shut if safe; call.",
        Verdict = "A smell of gas: everybody out now, and stay out.",
        Consequences = ["Put out flames on the way; touch no switch, no phone inside, start no engine."],
        ToDo = "Do, in this order:",
        Actions =
        [
            "Out, all of you, upwind, and leave the door open.",
            "Shut the cylinder's valve, if it is outside and you can reach it safely.",
            "Call the emergency number or the fire service from away.",
            "Have the leak found and repaired before anything is lit again.",
        ],
        Caution = "Caution: gas is heavier than air and gathers low. Nothing else is answered before that.",
    };

    private static Answer CarbonMonoxide() => new()
    {
        Brief = "Signs of carbon monoxide: everybody out into fresh air now; call for help.",
        Verdict = "Signs of carbon monoxide: everybody out into fresh air now, and stay out.",
        Consequences = ["It has no smell, and people who breathe it do not notice how ill they are."],
        ToDo = "Do, in this order:",
        Actions =
        [
            "Out, all of you; carry who cannot walk.",
            "Call the emergency number: headache, dizziness or sickness need a doctor now.",
            "Shut the cylinder's valve, if it is outside and you can reach it safely.",
            "Light nothing until a technician has checked furnace, vents and alarm.",
        ],
        Caution = "Caution: an alarm that sounds is right until somebody has measured. Nothing else comes before it.",
    };

    private static Answer Ranked(DiagnosisReport report, UnitStyle units)
    {
        RankedCause first = report.Causes[0], second = report.Causes[1];
        string verdict = Verdict(first, second);
        return new()
        {
            Brief = OneLine.Of($"{Capital(DiagnosisFigures.Causes[first.Cause].Text)}, {DiagnosisFigures.OddsOf(first)}; next "
                + $"{DiagnosisFigures.Causes[second.Cause].Text}, {DiagnosisFigures.OddsOf(second)}."),
            Verdict = verdict,
            Consequences = DiagnosisText.Expected(report, units) is { } expected ? [expected] : [],
            Why = Why(first, report, units),
            ToDo = report.Tests.Count > 0
                ? $"Test next: {DiagnosisWords.ToDoWithOption(report.Tests[0])} "
                    + $"It tells \"{DiagnosisFigures.Causes[first.Cause].Text}\" from "
                    + $"\"{DiagnosisFigures.Causes[second.Cause].Text}\" best for its trouble."
                : first.Probability_frac >= Sure_frac ? "Clear enough without a further test."
                    : "No further test here tells the first two apart.",
            Actions = Actions(first, second),
            Table = Table(report, units),
            Caution = CauseWords.Never(first.Cause),
        };
    }

    private static string Verdict(RankedCause first, RankedCause second)
    {
        string odds = DiagnosisFigures.OddsOf(first);
        return first.Probability_frac >= DiagnosisReport.Likely_frac
            ? $"{Capital(CauseWords.Likelihood(first.Probability_frac))}, {CauseWords.Clause(first.Cause)}: odds {odds}."
            : $"Not clear yet. The likeliest: {CauseWords.Clause(first.Cause)} (odds {odds}), or {CauseWords.Clause(second.Cause)} "
                + $"({DiagnosisFigures.OddsOf(second)}).";
    }

    private static string Why(RankedCause cause, DiagnosisReport report, UnitStyle units)
    {
        string[] with = Names(cause.Evidence.Where(e => e.IsFor)), against = Names(cause.Evidence.Where(e => e.IsAgainst));
        string speaksFor = with.Length == 0 ? "nothing speaks for it more than for others." : $"{string.Join("; ", with)}.";
        return against.Length == 0 ? speaksFor : $"{speaksFor} Against it: {string.Join("; ", against)}.";

        string[] Names(IEnumerable<Evidence> evidence)
            => [.. evidence.Take(MostEvidence).Select(e => DiagnosisWords.Of(e, report.Question, units))];
    }

    private static string[] Actions(RankedCause first, RankedCause second)
    {
        return first.Probability_frac >= Sure_frac ? [CauseWords.ToDo(first.Cause)] : [.. new[] { first, second }.Select(Action)];

        static string Action(RankedCause cause)
            => $"{Capital(DiagnosisFigures.Causes[cause.Cause].Text)}: {Lower(CauseWords.ToDo(cause.Cause))}";
    }

    private static AnswerTable Table(DiagnosisReport report, UnitStyle units)
    {
        IReadOnlyList<string> lines = DiagnosisText.Table(report, units);
        int head = lines.Count - report.Causes.Count;
        return new(
            [.. lines.Take(head)],
            [.. report.Causes.Select((c, i) => new AnswerRow(lines[head + i], -i))],
            hidden => $"{hidden.Count} more causes are less likely still.")
        {
            Most = Rows,
        };
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
