namespace ColdSim.App.Text.Answers;

/// <summary>A line of an answer as it is printed.</summary>
/// <param name="Text">The line.</param>
/// <param name="Stressed">Whether a terminal stresses it.</param>
internal readonly record struct AnswerLine(string Text, bool Stressed = false);

/// <summary>
/// Sets an answer into the rows of a terminal. What matters least goes first: blank lines and further rows of the table, then guesses, then further
/// actions; verdict, reason, first action and caution stay.
/// </summary>
internal static class AnswerLayout
{
    /// <summary>The rows of a plain terminal without the one for the prompt.</summary>
    public const int Rows = 23;

    private const int Everything = int.MaxValue;

    // Rows from which on an answer is a table before all else, and its blank lines go before its rows.
    private const int LongTable = 12;

    private static readonly Room[] LongRooms =
    [
        new(Gaps: true, Table: Everything - 1, Actions: 4, Guesses: 3, Consequences: 3),
        new(Gaps: false, Table: Everything - 1, Actions: 4, Guesses: 3, Consequences: 3),
        new(Gaps: false, Table: LongTable, Actions: 4, Guesses: 3, Consequences: 3),
        new(Gaps: false, Table: LongTable - 2, Actions: 4, Guesses: 2, Consequences: 3),
    ];

    private static readonly Room[] Rooms =
    [
        new(Gaps: true, Table: 7, Actions: 4, Guesses: 3, Consequences: 3),
        new(Gaps: true, Table: 6, Actions: 3, Guesses: 3, Consequences: 3),
        new(Gaps: true, Table: 5, Actions: 3, Guesses: 2, Consequences: 3),
        new(Gaps: false, Table: 7, Actions: 3, Guesses: 3, Consequences: 3),
        new(Gaps: false, Table: 6, Actions: 3, Guesses: 3, Consequences: 3),
        new(Gaps: false, Table: 6, Actions: 3, Guesses: 2, Consequences: 3),
        new(Gaps: false, Table: 5, Actions: 3, Guesses: 2, Consequences: 2),
        new(Gaps: false, Table: 4, Actions: 3, Guesses: 2, Consequences: 2),
        new(Gaps: false, Table: 3, Actions: 3, Guesses: 1, Consequences: 2),
        new(Gaps: false, Table: 3, Actions: 2, Guesses: 1, Consequences: 2),
        new(Gaps: false, Table: 2, Actions: 2, Guesses: 0, Consequences: 1),
        new(Gaps: false, Table: 1, Actions: 1, Guesses: 0, Consequences: 1),
        new(Gaps: false, Table: 0, Actions: 1, Guesses: 0, Consequences: 1),
    ];

    /// <summary>The answer in at most so many rows.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="rows">The rows there are.</param>
    public static IReadOnlyList<AnswerLine> Fit(Answer answer, int rows)
    {
        List<AnswerLine> lines = [];
        foreach (Room room in answer.Table is { Most: >= LongTable } ? LongRooms.Concat(Rooms) : Rooms)
        {
            lines = Lines(answer, room);
            if (lines.Count <= rows)
                return lines;
        }

        int kept = Math.Max(1, rows - 1);
        return [.. lines.Take(kept), new("More with --full.")];
    }

    /// <summary>The answer with every row, action and guess that it has.</summary>
    public static IReadOnlyList<AnswerLine> Whole(Answer answer) => Lines(answer, new(Gaps: true, Everything, Everything, Everything, Everything));

    private static List<AnswerLine> Lines(Answer answer, Room room)
    {
        List<AnswerLine> lines = [.. Wrap.Lines(answer.Verdict).Select(l => new AnswerLine(l, Stressed: true))];
        Add(lines, Wrap.Lines(string.Join(' ', answer.Consequences.Take(room.Consequences))), gap: false);
        Add(lines, answer.Why == "" ? [] : Wrap.Lines($"Why: {answer.Why}", rest: "  "), room.Gaps);
        IReadOnlyList<string> actions = [.. answer.Actions.Take(room.Actions)];
        Add(lines, answer.ToDo == "" ? [] : Wrap.Lines(answer.ToDo, rest: "  "), room.Gaps);
        Add(lines, [.. actions.SelectMany(a => Wrap.Lines(a, first: "- ", rest: "  "))], gap: false);
        if (answer.Table is { } table && room.Table > 0)
            Add(lines, Table(table, room.Table == Everything ? Everything : Math.Min(room.Table, table.Most)), room.Gaps);
        string[] guesses = [.. answer.Guesses.Take(room.Guesses)];
        if (guesses.Length > 0)
            Add(lines, [.. Wrap.Lines(answer.AboutGuesses, rest: "  "), .. guesses.SelectMany(g => Wrap.Lines(g, first: "- ", rest: "  "))], room.Gaps);
        Add(lines, Wrap.Lines(answer.Caution, rest: "  "), room.Gaps);
        return lines;
    }

    private static void Add(List<AnswerLine> lines, IReadOnlyList<string> part, bool gap)
    {
        if (part.Count == 0 || part.All(l => l.Length == 0))
            return;
        if (gap)
            lines.Add(new(""));
        lines.AddRange(part.Select(l => new AnswerLine(l)));
    }

    // The most important rows in their own order; the line that counts the rest takes the place of one of them.
    private static IReadOnlyList<string> Table(AnswerTable table, int most)
    {
        int count = table.Rows.Count <= most ? table.Rows.Count : Math.Max(1, most - 1);
        int[] shown = [.. Enumerable.Range(0, table.Rows.Count).OrderByDescending(i => table.Rows[i].Importance).Take(count).Order()];
        int[] hidden = [.. Enumerable.Range(0, table.Rows.Count).Except(shown)];
        return
        [
            .. table.Title == "" ? [] : Wrap.Lines(table.Title), .. table.Head, .. shown.Select(i => table.Rows[i].Line),
            .. hidden.Length == 0 ? Array.Empty<string>() : [table.More(hidden)],
        ];
    }

    private sealed record Room(bool Gaps, int Table, int Actions, int Guesses, int Consequences);
}
