using ColdSim.Planning.Compare;

namespace ColdSim.App.Text.Answers;

/// <summary>Two files as an answer: how each goes, what differs in them, and their nights side by side.</summary>
internal static class ChangeAnswer
{
    private const int MostInputs = 6;

    /// <summary>The answer.</summary>
    /// <param name="change">What was run.</param>
    /// <param name="first">The first file's name.</param>
    /// <param name="second">The second's.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(AnswerChange change, string first, string second, UnitStyle units)
    {
        string verdict = $"1st, {first}: {Upper(change.Before.Verdict)}; 2nd, {second}: {Upper(change.After.Verdict)}";
        IReadOnlyList<string> inputs = ChangeText.Inputs(change, units);
        return new()
        {
            Brief = Wrap.Cut(verdict, Wrap.Columns),
            Verdict = verdict + ".",
            ToDo = inputs.Count == 0 ? "Nothing differs in what the files say." : $"What differs, 1st → 2nd:{(inputs.Count > MostInputs ? FormattableString.Invariant($" {inputs.Count} keys, of which {MostInputs} here; --full has all") : "")}",
            Actions = [.. inputs.Take(MostInputs)],
            Table = ChangeText.Nights(change, units),
            Caution = CautionLine.Estimate,
        };
    }

    /// <summary>The same with everything that differs and all nights.</summary>
    public static IReadOnlyList<TextSection> Sections(AnswerChange change, UnitStyle units)
    {
        IReadOnlyList<string> inputs = ChangeText.Inputs(change, units);
        AnswerTable table = ChangeText.Nights(change, units);
        return
        [
            new("What differs, 1st → 2nd", inputs.Count == 0 ? ["Nothing in what the files say."] : RunText.Points(inputs)),
            new("The nights", [table.Title, .. table.Head, .. table.Rows.Select(r => r.Line)]),
        ];
    }

    private static string Upper(string verdict) => verdict == "holds" ? "HOLDS" : $"FAILS ({ChangeText.Word(verdict)})";
}
