using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Reports;

/// <summary>The verdict, why, what to do first, the numbers that matter most and what the answer hangs on.</summary>
internal static class AnswerSection
{
    public static DocumentSection Of(ReportContents contents, UnitStyle units)
    {
        Answer answer = NightsAnswer.Of(contents.Run, contents.Advice, units);
        List<DocumentBlock> blocks = [new ParagraphBlock(answer.Verdict, ParagraphKind.Verdict)];
        if (answer.Consequences.Count > 0)
            blocks.Add(new ParagraphBlock(string.Join(' ', answer.Consequences)));
        if (answer.Why.Length > 0)
            blocks.Add(new ParagraphBlock($"Why: {answer.Why}"));
        if (answer.ToDo.Length > 0)
            blocks.Add(new ParagraphBlock(answer.ToDo));
        if (answer.Actions.Count > 0)
            blocks.Add(new PointsBlock(answer.Actions));
        blocks.Add(new ReadingsBlock([.. Readings(contents.Run.Summary, units)]));
        if (answer.Guesses.Count > 0)
        {
            blocks.Add(new ParagraphBlock(answer.AboutGuesses));
            blocks.Add(new PointsBlock(answer.Guesses));
        }

        if (contents.Run.Scenario.StartedFrom is { } start)
            blocks.Add(new ParagraphBlock(LogStartLine.Of(start, units), ParagraphKind.Note));
        blocks.Add(new ParagraphBlock(answer.Caution, ParagraphKind.Caution));
        return new("answer", "The answer", blocks);
    }

    private static IEnumerable<Reading> Readings(RunSummary summary, UnitStyle units)
    {
        yield return new("Nights that hold", $"{summary.NightsHeld} of {summary.Nights}");
        yield return new("Coldest outside", units.Temperature(summary.OutsideLow.Kelvins));
        if (summary.InsideLow is { } inside)
            yield return new("Coldest inside", units.Temperature(inside.Kelvins));
        yield return new("Gas short in all", summary.ShortTime.Seconds > 0 ? ClockText.Span(summary.ShortTime) : "never");
        yield return new("Gas used", units.Mass(summary.GasUsed.Kilograms));
        yield return new("Left at the end", units.Mass(summary.LeftAtEnd.Kilograms));
        if (summary.ChargeLow is { } charge)
            yield return new("Lowest charge", $"{UnitStyle.Number(charge.Percent, 0)} %");
    }
}
