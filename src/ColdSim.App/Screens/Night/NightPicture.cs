using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>A night over its hours, the same on every page that shows one: strips of curves, the burner, words for events, the clock.</summary>
/// <param name="Report">The run.</param>
/// <param name="Strips">Its strips, of <see cref="NightStrips"/>.</param>
/// <param name="Marks">Its marked events, of all nights.</param>
/// <param name="Night">Index of the night.</param>
/// <param name="Minute">The time cursor, as a sample of the run.</param>
internal sealed record NightPicture(RunReport Report, IReadOnlyList<Strip> Strips, IReadOnlyList<EventMark> Marks, int Night, int Minute)
{
    private const int FailureRank = int.MaxValue;

    public MinuteRange Span => MinuteRange.Of(Report, Night);

    /// <summary>Draws the picture into some rows of a sheet; with too few, strips are left out.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="plot">The columns of the time axis.</param>
    /// <param name="top">First row.</param>
    /// <param name="layout">How its rows are shared.</param>
    public void Draw(Sheet sheet, PlotArea plot, int top, PictureLayout layout)
    {
        if (plot.Columns <= 0)
            return;
        MinuteRange span = Span;
        for (int i = 0, y = top; i < Strips.Count; y += layout.StripRows[i++])
            StripDrawing.Draw(sheet, plot, y, layout.StripRows[i], Strips[i], span, Minute);
        if (layout.ShowsBurner)
            Burner(sheet, plot, top + layout.BurnerRow, span);
        int cursor = span.Column(Minute, plot.Columns);
        for (int lane = 0; lane < layout.Lanes; lane++)
            sheet.Put(plot.Left + cursor, top + layout.EventRow + lane, '┊');
        int room = Math.Max(plot.Columns, Math.Min(sheet.Width - plot.Left, plot.Columns + PlotArea.RightMargin - 1));
        EventWords.Draw(sheet, plot.Left, top + layout.EventRow, EventWords.Place(Words(span, plot.Columns), room, layout.Lanes), cursor);
        TimeAxis.DrawHours(sheet, plot, top + layout.ClockRow, span, Minute, Report.Scenario.Start);
    }

    /// <summary>A word for each event of the night, and what the night fails by with its time.</summary>
    private List<EventWord> Words(MinuteRange span, int columns)
    {
        List<EventWord> words = [];
        NightReport night = Report.Nights[Night];
        int failure = -1;
        if (night.Verdict != Verdict.Holds)
        {
            DateTimeOffset first = night.FirstFailure ?? night.From;
            failure = span.Clamp(MinuteRange.MinuteAt(Report, first));
            string text = $"{VerdictWords.Short(night.Verdict).ToUpperInvariant()} {ClockText.Clock(first)}";
            words.Add(new(span.Column(failure, columns), text, FailureRank) { IsFirstFailure = true });
        }

        foreach (EventMark mark in Marks.Where(m => m.Night == Night && m.Minute != failure))
            words.Add(new(span.Column(mark.Minute, columns), mark.Words.Legend, mark.Words.Rank));
        return words;
    }

    /// <summary>How much of each column's time the burner is lit: a blank for never, # for always.</summary>
    private void Burner(Sheet sheet, PlotArea plot, int y, MinuteRange span)
    {
        RunSeries series = Report.Series;
        sheet.PutBefore(plot.Left - 1, y, "burner");
        if (Report.Scenario.Rig.Furnace is null)
        {
            sheet.Put(plot.Left, y, "no furnace");
            return;
        }

        int at = span.Column(Minute, plot.Columns);
        for (int x = 0; x < plot.Columns; x++)
        {
            MinuteRange part = span.Part(x, plot.Columns);
            char lit = Density(series.Burner_frac.AsSpan(part.From..Math.Min(part.To, series.Burner_frac.Length)));
            sheet.Put(plot.Left + x, y, x == at && lit == ' ' ? '┊' : lit, x == at && lit != ' ' ? CellStyle.Pointer : CellStyle.Plain);
        }

        sheet.Put(plot.Right + 1, y, $"lit {UnitStyle.Number(Report.Nights[Night].BurnerTime.Hours, 1)} h");
    }

    private static char Density(ReadOnlySpan<double> lit)
    {
        double sum = 0;
        foreach (double part in lit)
            sum += part;
        return (sum / lit.Length) switch
        {
            >= 0.95 => '#',
            >= 0.6 => '+',
            >= 0.3 => '-',
            > 0 => '.',
            _ => ' ',
        };
    }
}
