using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Figures;

namespace ColdSim.App.Screens.Signs;

/// <summary>Sets a diagnosis into the room beside the form. What matters least goes first; the likeliest cause and what never to do
/// stay.</summary>
internal static class DiagnosePanel
{
    private const int CauseWidth = 24, MostFirst = 5;

    private static readonly Room[] Rooms =
    [
        new(Gaps: true, Causes: 6, Expected: true, ToDo: true),
        new(Gaps: true, Causes: 4, Expected: true, ToDo: true),
        new(Gaps: true, Causes: 4, Expected: false, ToDo: true),
        new(Gaps: false, Causes: 4, Expected: false, ToDo: true),
        new(Gaps: false, Causes: 3, Expected: false, ToDo: true),
        new(Gaps: false, Causes: 2, Expected: false, ToDo: true),
        new(Gaps: false, Causes: 3, Expected: false, ToDo: false),
        new(Gaps: false, Causes: 2, Expected: false, ToDo: false),
        new(Gaps: false, Causes: 1, Expected: false, ToDo: false),
        new(Gaps: false, Causes: 0, Expected: false, ToDo: false),
    ];

    /// <summary>The lines, at most so many.</summary>
    /// <param name="report">The diagnosis.</param>
    /// <param name="units">Units to print.</param>
    /// <param name="width">Columns.</param>
    /// <param name="rows">Rows.</param>
    public static IReadOnlyList<AnswerLine> Of(DiagnosisReport report, UnitStyle units, int width, int rows)
    {
        if (report.Question.Emergency != Emergency.None)
            return Urgent(DiagnosisAnswer.Of(report, units), width, rows);
        if (!report.HasAnswer)
            return [.. First(report, width, rows).Take(rows)];
        Answer answer = DiagnosisAnswer.Of(report, units);
        foreach (Room room in Rooms)
        {
            List<AnswerLine> lines = Lines(report, answer, units, width, room);
            if (lines.Count <= rows)
                return lines;
        }

        return [.. Stressed(answer.Brief, width), .. Plain(answer.Caution, width)];
    }

    // With few rows the verdict and what to do stay.
    private static AnswerLine[] Urgent(Answer answer, int width, int rows)
    {
        AnswerLine[] verdict = [.. Stressed(answer.Verdict, width)];
        AnswerLine[] toDo = [.. answer.Actions.SelectMany((a, i) => Numbered(i + 1, a, width))];
        AnswerLine[] whole =
        [
            .. verdict, .. answer.Consequences.SelectMany(c => Plain(c, width)), .. Plain(answer.ToDo, width), .. toDo,
            .. Plain(answer.Caution, width),
        ];
        return whole.Length <= rows ? whole : [.. verdict.Concat(toDo).Take(rows)];
    }

    private static IEnumerable<AnswerLine> First(DiagnosisReport report, int width, int rows)
    {
        AnswerLine[] never = [.. Plain(CauseWords.Never(Cause.TooCold), width)];
        List<AnswerLine> lines = [.. Stressed("Nothing seen or heard yet, so nothing is guessed. Look at these first:", width)];
        foreach (NextTest test in report.Tests.DistinctBy(DiagnosisWords.OptionOf).Take(MostFirst))
        {
            AnswerLine[] next = [.. Wrap.Lines(DiagnosisWords.ToDoOf(test), width, "- ", "  ").Select(l => new AnswerLine(l))];
            if (lines.Count + next.Length + never.Length <= rows)
                lines.AddRange(next);
        }

        return [.. lines, .. never];
    }

    private static List<AnswerLine> Lines(DiagnosisReport report, Answer answer, UnitStyle units, int width, Room room)
    {
        List<AnswerLine> lines = [.. Stressed(answer.Verdict, width)];
        Add(lines, [.. Causes(report, units, width, room.Causes)], room.Gaps);
        if (room.Expected)
            Add(lines, [.. answer.Consequences.SelectMany(c => Plain(c, width))], room.Gaps);
        string test = report.Tests.Count > 0 ? $"Test next: {DiagnosisWords.ToDoOf(report.Tests[0])}" : answer.ToDo;
        Add(lines, [.. Plain(test, width)], room.Gaps);
        if (room.ToDo)
            Add(lines, [.. Plain(answer.Actions[0], width)], room.Gaps);
        Add(lines, [.. Plain(answer.Caution, width)], room.Gaps);
        return lines;
    }

    // The cells are those of the answer's table; where there is no room beside it, the evidence is below the cause.
    private static IEnumerable<AnswerLine> Causes(DiagnosisReport report, UnitStyle units, int width, int most)
    {
        if (most == 0)
            yield break;
        RankedCause[] shown = [.. report.Causes.Take(most)];
        FigureTable table = new(ReportTable.Diagnosis, units) { Gap = 2 };
        IReadOnlyList<string> wide = table.Lines(DiagnosisFigures.CauseFigures, shown);
        if (wide.All(l => l.Length <= width))
        {
            foreach (string line in wide)
                yield return new(line);
            yield break;
        }

        foreach (IReadOnlyList<string> cells in table.Grid(DiagnosisFigures.CauseFigures, shown).Rows)
        {
            yield return new($"{cells[0].PadRight(CauseWidth)} {cells[1]}");
            foreach (string line in Wrap.Lines($"for {cells[2]}; against {cells[3]}", width, "  ", "  "))
                yield return new(line);
        }
    }

    private static void Add(List<AnswerLine> lines, IReadOnlyList<AnswerLine> part, bool gap)
    {
        if (gap && part.Count > 0)
            lines.Add(new(""));
        lines.AddRange(part);
    }

    private static IEnumerable<AnswerLine> Stressed(string text, int width)
        => Wrap.Lines(text, width).Select(l => new AnswerLine(l, Stressed: true));

    private static IEnumerable<AnswerLine> Plain(string text, int width) => Wrap.Lines(text, width).Select(l => new AnswerLine(l));

    private static IEnumerable<AnswerLine> Numbered(int place, string text, int width)
        => Wrap.Lines(text, width, $"{UnitStyle.Number(place, 0)}. ", "   ").Select(l => new AnswerLine(l));

    private sealed record Room(bool Gaps, int Causes, bool Expected, bool ToDo);
}
