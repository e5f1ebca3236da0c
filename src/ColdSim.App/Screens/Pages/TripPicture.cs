using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Screens.Pages;

/// <summary>The gas left over the whole trip, with words for its refills and for nights that fail at their times, and the days.</summary>
internal static class TripPicture
{
    /// <summary>With fewer rows it is not worth drawing.</summary>
    public const int LeastRows = 5;

    private const int RowsForTwoLanes = 8;
    private const int FailureRank = 1;

    /// <param name="sheet">The sheet.</param>
    /// <param name="top">First row.</param>
    /// <param name="rows">All its rows.</param>
    /// <param name="report">The trip.</param>
    /// <param name="units">Units to read.</param>
    /// <param name="minute">The time cursor, as a sample of the run.</param>
    public static void Draw(Sheet sheet, int top, int rows, TripReport report, UnitStyle units, int minute)
    {
        PlotArea plot = PlotArea.Across(sheet.Width);
        if (plot.Columns <= 0)
            return;
        RunSeries series = report.Run.Series;
        MinuteRange span = new(0, Math.Max(1, series.Count));
        int lanes = rows >= RowsForTwoLanes ? 2 : 1, words = top + rows - lanes - 1;
        ValueAxis axis = ValueAxis.Around(0, Curve.Over(series.Propane_kg, units.MassIn, 0, span.To).High, units.MassUnit);
        Curve left = new("gas left", series.Propane_kg, units.MassIn, axis, Stroke.Line, CellStyle.GasLeft);
        int cursor = span.Clamp(minute), column = span.Column(cursor, plot.Columns);
        StripDrawing.Draw(sheet, plot, top, words - top, new(left), span, cursor);
        for (int lane = 0; lane < lanes; lane++)
            sheet.Put(plot.Left + column, words + lane, '┊');
        IReadOnlyList<PlacedWord> placed = EventWords.Place(Words(report, span, plot.Columns), sheet.Width - plot.Left, lanes);
        EventWords.Draw(sheet, plot.Left, words, placed, column);
        TimeAxis.DrawDays(sheet, plot, words + lanes, span, cursor, report.Run.Scenario.Start);
    }

    /// <summary>A word for each night that fails and for each refill that is reached, in the order of their times.</summary>
    private static List<EventWord> Words(TripReport report, MinuteRange span, int columns)
    {
        List<EventWord> words = [];
        foreach (NightReport night in report.Run.Nights.Where(n => n.Verdict != Verdict.Holds))
        {
            DateTimeOffset at = night.FirstFailure ?? night.From;
            string text = VerdictWords.Short(night.Verdict);
            words.Add(words.Count > 0 ? new(Column(at), text, FailureRank)
                : new(Column(at), $"{text.ToUpperInvariant()} {ClockText.ShortDayClock(at)}", FailureRank) { IsFirstFailure = true });
        }

        for (int i = 0; i < report.Refills.Count; i++)
        {
            if (report.Refills[i] is { Outcome: { } outcome } refill)
                words.Add(new(Column(refill.Refill.At), $"R{i + 1} {Done(outcome)}", 0));
        }

        return [.. words.OrderBy(w => w.Column)];

        int Column(DateTimeOffset time) => span.Column(span.Clamp(MinuteRange.MinuteAt(report.Run, time)), columns);
    }

    private static string Done(RefillOutcome outcome)
        => outcome.Refused ? "refused" : outcome.Refill.Kind == Planning.RefillKind.Exchange ? "exchanged" : "filled";
}
