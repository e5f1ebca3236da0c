using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Pictures;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Reports;

/// <summary>The nights in a table, and each by itself: a sentence, its strip chart, what happened, and its hours as numbers.</summary>
internal static class NightSections
{
    // All curves of a report together, so that many nights take no more room than a few.
    private const int MostPointsInAll = 40_000, MostPoints = 700, LeastPoints = 60, CurvesOfANight = 9;

    // Of more nights than these, the answer and the table fill a page.
    private const int FewNights = 7;

    /// <summary>The table.</summary>
    public static DocumentSection Table(RunReport run, UnitStyle units)
    {
        FigureTable.Cells<NightReport> outcome = new(new(["Outcome"], Left: true), int.MaxValue, (n, _) => NightOutcome.Short(n));
        return new(
            "nights", "Night by night",
            [
                new TableBlock("The nights, each from noon to noon", Grid(ReportTable.NightsOnScreen, run, units, outcome)),
                new FoldedBlock("More of each night", [new TableBlock("The nights in more figures", Grid(ReportTable.Nights, run, units))], run.Nights.Count <= FewNights),
            ]);
    }

    /// <summary>Each night.</summary>
    public static IEnumerable<DocumentSection> Each(RunReport run, UnitStyle units)
    {
        NightScales scales = new(run, units);
        int points = Math.Clamp(MostPointsInAll / run.Nights.Count / CurvesOfANight, LeastPoints, MostPoints);
        IReadOnlyList<EventRow> events = EventRows.Of(run, units);
        foreach (NightReport night in run.Nights)
        {
            EventRow[] own = [.. events.Where(e => IsIn(e.Event.Time, night, run))];
            yield return new(
                $"night-{UnitStyle.Number(night.Number, 0)}", $"{ClockText.NightName(night)}: {NightOutcome.Short(night)}",
                [
                    new ParagraphBlock(NightSentence.Of(night, run, units)),
                    new PictureBlock(NightPicture.Of(run, night, scales, points)),
                    own.Length == 0 ? new ParagraphBlock("Nothing unusual happens.", ParagraphKind.Note)
                        : new TableBlock("What happens", Events(own, units)),
                    new FoldedBlock(
                        "The hours as numbers", [new TableBlock("The curves at each full hour", HourTable.Of(scales.CurvesOf(night), run, scales))],
                        OnPaper: false),
                ])
            { ShortTitle = ClockText.NightShort(night), StartsPage = true };
        }
    }

    private static TextGrid Grid(ReportTable table, RunReport run, UnitStyle units, params IEnumerable<FigureTable.Cells<NightReport>> own)
        => new FigureTable(table, units) { Context = FigureContext.Of(run.Scenario) }.Grid(NightFigures.All, run.Nights, own);

    private static TextGrid Events(EventRow[] events, UnitStyle units) => new FigureTable(ReportTable.Events, units).Grid(
        EventFigures.All, [.. events.Select(e => e.Event)],
        new FigureTable.Cells<ReportedEvent>(new(["Mark"], Left: true), -2, (e, _) => EventKinds.Of(e.Kind).Letter.ToString()),
        new FigureTable.Cells<ReportedEvent>(new(["What"], Left: true), -1, (_, place) => events[place].What));

    // As the list of a run parts them: what lies before the first night is its, what lies after the last is that one's.
    private static bool IsIn(DateTimeOffset time, NightReport night, RunReport run)
        => (night.Number == 1 || time >= night.From) && (night.Number == run.Nights.Count || time < run.Nights[night.Number].From);
}
