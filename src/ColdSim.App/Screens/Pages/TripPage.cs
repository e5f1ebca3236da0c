using System.Globalization;
using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Screens.Pages;

/// <summary>The trip: a row a night with its refills and until when each can wait, and the chosen night in words.</summary>
internal sealed record TripPage(string Title, UnitStyle Units, Pending<TripReport> Trip, int Row, bool AsText, ScrolledText Scroll) : IPage
{
    private const string NoTrip =
        "This scenario stays in one place and has no refill; "
        + "write [[stop]] or [[refill]] tables into its file, as docs/trip.md shows, and the trip is shown here.";

    private const int HeadingRows = 3;
    private const int WidestName = 6;
    private const int LinesBelow = 7;

    // With less room the words below give way, so that more nights are seen.
    private const int Roomy = 24;
    private const int FewLinesBelow = 4;
    private const int RoomForPicture = 16;
    private const int LeastNights = 3;

    public char Key => '2';

    string IPage.Title => "trip";

    public IReadOnlyList<string> Help { get; } =
    [
        "TRIP",
        "  A row a night, then the gas left over the whole trip with",
        "  each refill and failing night at its time, then words on",
        "  the chosen night and its refills. Until when a refill can",
        "  wait is found by running the trip again with it moved by",
        "  days.",
    ];

    public IReadOnlyList<KeyBinding> Keys => Trip.Job is null ? [] : Trip.Value is null ? KeyBindings.Start
        : AsText ? [.. KeyBindings.Scrolling, KeyBindings.AsText(true, "table")]
        :
        [
            .. KeyBindings.ChoosingNights,
            new("Tab", "next refill; Shift-Tab the one before", new PageMessage.NextEvent(1), "Tab refill"),
            KeyBindings.AsText(false, "table"),
        ];

    /// <summary>The cursor of all pages as it was seen last.</summary>
    public TimeCursor? Seen { get; init; }

    public TimeCursor? Cursor => Trip.Value is { } report ? TimeCursor.InNight(report.Run, Row, Seen) : Seen;

    public PageJob? DueJob => Trip.DueJob;

    public static TripPage Of(Scenario scenario, UnitStyle units)
        => new(scenario.Title, units, new(scenario.Trip is null ? null : CreateJob(scenario)), 0, false, new());

    public Sheet Draw(int width, int height)
        => Trip.Job is null ? TextPage.Sentence(width, height, Title, NoTrip, Keys)
            : Trip.Value is not { } report ? TextPage.Sentence(width, height, Title, Trip.Status, Keys)
            : AsText ? TextPage.Draw(width, height, Title, "trip", Lines(), Scroll, Keys)
            : Table(report, width, height);

    public IPage Update(PageMessage message)
    {
        switch (message)
        {
            case PageMessage.UnitsChanged units:
                return this with { Units = units.Units };
            case PageMessage.Resized size:
                return this with { Scroll = Scroll with { Rows = TextPage.RowsOf(size.Height) } };
            case PageMessage.Opened { At: { } at }:
                return (this with { Seen = at }).To(at.Night);
            case PageMessage.Completed or PageMessage.Failed or PageMessage.Cancelled:
                return this with { Trip = Trip.Update(message) };
        }

        if (Trip.Value is null)
            return this with { Trip = Trip.Update(message) };
        return message switch
        {
            PageMessage.ToggleList => this with { AsText = !AsText },
            PageMessage.Close => this with { AsText = false },
            _ when AsText => this with { Scroll = Scroll.Update(message, Lines()) },
            PageMessage.Rows rows => To(Row + rows.Count),
            PageMessage.Pages pages => To(Row + pages.Count * 10),
            PageMessage.NextNight next => To(Row + next.Direction),
            PageMessage.First => To(0),
            PageMessage.Last => To(int.MaxValue),
            PageMessage.NextEvent next => To(OtherRefill(Trip.Value, next.Direction)),
            _ => this,
        };
    }

    private TripPage To(int row)
        => this with { Seen = Cursor, Row = Math.Clamp(row, 0, Math.Max(0, (Trip.Value?.Nights.Count ?? int.MaxValue) - 1)) };

    private int OtherRefill(TripReport report, int direction)
    {
        for (int i = Row + direction; i >= 0 && i < report.Nights.Count; i += direction)
        {
            if (report.Nights[i].Refills.Count > 0)
                return i;
        }

        return Row;
    }

    private static PageJob CreateJob(Scenario scenario) => new(
        "Running the trip, and trying until when each refill can wait",
        (finished, cancel) =>
        {
            TripReport report = TripRun.Of(scenario, finished, cancel: cancel);
            return PageJob.IfClosed(report, report.Run.Ledger);
        })
    {
        StepName = "other days",
    };

    private IReadOnlyList<TextLine> Lines()
        => Trip.Value is { } report ? TextLine.Of(TripText.Sections(report, Units, Cautions.Short)) : [];

    private Sheet Table(TripReport report, int width, int height)
    {
        Sheet sheet = new(width, height);
        PageElements.Head(sheet, Title, $"night {Row + 1} of {report.Nights.Count}");
        int top = PageElements.Paragraph(sheet, 1, TripSentence.Of(report, Units), 2, CellStyle.Strong);
        IReadOnlyList<string> lines = Rows(report);
        string[] below = [.. Sentences(report).SelectMany(t => Wrap.Lines(t, width, rest: "  ")).Select(CellText.SingleWidth)];
        int room = height - top - HeadingRows - 1;
        int picture = room >= RoomForPicture ? Math.Max(TripPicture.LeastRows, room / 3) : 0;
        int spare = room - picture - 1, words = picture > 0 && room < Roomy ? FewLinesBelow : LinesBelow;
        int rows = Math.Min(report.Nights.Count, Math.Max(LeastNights, spare - words)), shown = Math.Min(below.Length, spare - rows);
        for (int i = 0; i < HeadingRows; i++)
            sheet.Put(0, top + i, CellText.Cut(lines[i], width));
        top += HeadingRows;
        int first = PageElements.FirstRow(Row, rows, report.Nights.Count);
        for (int i = first; i < Math.Min(report.Nights.Count, first + rows); i++)
        {
            string line = (i == Row ? ">" : " ") + lines[HeadingRows + i][1..];
            sheet.Put(0, top + i - first, CellText.Cut(line, width), i == Row ? CellStyle.Pointer : CellStyle.Plain);
        }

        top += rows;
        if (picture > 0)
            TripPicture.Draw(sheet, top, picture, report, Units, Cursor?.Minute ?? 0);
        top += picture + 1;
        for (int i = 0; i < shown; i++)
            sheet.Put(0, top + i, i == shown - 1 && shown < below.Length ? CellText.Cut(below[i] + " …", width) : below[i]);
        PageElements.Foot(sheet, "", Keys);
        return sheet;
    }

    private IEnumerable<string> Sentences(TripReport report)
    {
        TripNight night = report.Nights[Row];
        foreach (int refill in night.Refills)
            yield return TripSentence.OfRefill(report.Refills[refill], refill, report, Units);
        yield return NightSentence.Of(night.Night, report.Run, Units);
    }

    // The heading's rows, then a row a night; the first column is left blank for a pointer. One cylinder alone needs no name.
    private IReadOnlyList<string> Rows(TripReport report)
    {
        FigureContext context = FigureContext.Of(report.Run.Scenario);
        FigureTable table = new(ReportTable.TripPage, Units)
        {
            Context = context,
            NameLines = name => [context.Cylinders.Count == 1 ? "" : name.Length > WidestName ? name[..WidestName] : name],
        };
        return table.Lines(
            TripFigures.Nights, TripNightRow.Of(report),
            new(new([" "], Left: true), -3, (_, _) => " "),
            new(new(["Refill, and when", "it can wait until"], Left: true), 5, (r, _) => Waits(r.Night, report)));
    }

    private static string Waits(TripNight night, TripReport report)
        => night.Refills.Count == 0 ? "" : night.Refills.Count == 1 ? Wait(night.Refills[0], report)
            : string.Join(", ", night.Refills.Select(r => $"R{r + 1}")) + ": see below";

    private static string Wait(int refill, TripReport report) => $"R{refill + 1} " + (report.Refills[refill] switch
    {
        { Wait: { Kind: WaitKind.CanWait, Latest: { } latest } } => $"until {latest.ToString("ddd d MMM", CultureInfo.InvariantCulture)}",
        { Wait.Kind: WaitKind.Refused, Outcome: null } => "not reached",
        { Wait.Kind: var kind } => TripFigures.Waits[kind].Text,
    });
}
