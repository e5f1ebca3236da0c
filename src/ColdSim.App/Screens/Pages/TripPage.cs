using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Screens.Pages;

/// <summary>The trip: a row a night with its refills and until when each can wait, and what is to be said of the chosen night.</summary>
internal sealed record TripPage(string Title, UnitStyle Units, Figures<TripReport> Trip, int Row, bool AsText, ScrolledText Scroll) : IPage
{
    private const string NoTrip =
        "This scenario stays in one place and has no refill; write [[stop]] or [[refill]] tables into its file, as docs/trip.md shows, and the trip stands here.";

    private const int LinesBelow = 7;
    private const int LeastNights = 3;

    public char Key => '2';

    string IPage.Title => "trip";

    public IReadOnlyList<string> Help { get; } =
    [
        "TRIP",
        "  A row a night; what is said of the chosen night and its",
        "  refills stands below. Until when a refill can wait is",
        "  found by running the trip again with it moved by days.",
        "  Up, Down, PgUp, PgDn  another night",
        "  Home, End             first, last night",
        "  e, E                  next, previous refill",
        "  l                     everything as text, and back",
        "  Enter                 starts again after a stop",
    ];

    public PageWork? Wanted => Trip.Wanted;

    public static TripPage Of(Scenario scenario, UnitStyle units)
        => new(scenario.Title, units, new(scenario.Trip is null ? null : Work(scenario)), 0, false, new());

    public Sheet Draw(int width, int height)
        => Trip.Work is null ? TextPage.Sentence(width, height, Title, NoTrip)
            : Trip.Value is not { } report ? TextPage.Sentence(width, height, Title, Trip.Say, "Enter start")
            : AsText ? TextPage.Draw(width, height, Title, "trip", Lines(), Scroll, "l table")
            : Table(report, width, height);

    public IPage After(PageMessage message)
    {
        switch (message)
        {
            case PageMessage.UnitsAre units:
                return this with { Units = units.Units };
            case PageMessage.Sized sized:
                return this with { Scroll = Scroll with { Rows = TextPage.RowsOf(sized.Height) } };
            case PageMessage.Opened { At: { } at }:
                return To(Trip.Value is null ? at.Night : Row);
            case PageMessage.Done or PageMessage.Failed or PageMessage.Stopped:
                return this with { Trip = Trip.After(message) };
        }

        if (Trip.Value is null)
            return this with { Trip = Trip.After(message) };
        return message switch
        {
            PageMessage.Turn { Page: OpenPage.Events } => this with { AsText = !AsText },
            PageMessage.Close => this with { AsText = false },
            _ when AsText => this with { Scroll = Scroll.After(message, Lines()) },
            PageMessage.Rows rows => To(Row + rows.Count),
            PageMessage.Pages pages => To(Row + pages.Count * 10),
            PageMessage.NextNight next => To(Row + next.Direction),
            PageMessage.First => To(0),
            PageMessage.Last => To(int.MaxValue),
            PageMessage.NextEvent next => To(OtherRefill(Trip.Value, next.Direction)),
            _ => this,
        };
    }

    private TripPage To(int row) => this with { Row = Math.Clamp(row, 0, Math.Max(0, (Trip.Value?.Nights.Count ?? int.MaxValue) - 1)) };

    private int OtherRefill(TripReport report, int direction)
    {
        for (int i = Row + direction; i >= 0 && i < report.Nights.Count; i += direction)
        {
            if (report.Nights[i].Refills.Count > 0)
                return i;
        }

        return Row;
    }

    private static PageWork Work(Scenario scenario) => new(
        "Running the trip, and trying until when each refill can wait",
        (finished, cancel) =>
        {
            TripReport report = TripRun.Of(scenario, finished, cancel: cancel);
            return PageFaults.IfClosed(report, report.Run.Ledger);
        })
    {
        Parts = "other days",
    };

    private IReadOnlyList<TextLine> Lines()
    {
        if (Trip.Value is not { } report)
            return [];
        IReadOnlyList<TextSection> all = TripText.Sections(report, Units, Cautions.Short);
        return TextLine.Of([all[0] with { Title = "In one sentence" }, .. all.Skip(1)]);
    }

    private Sheet Table(TripReport report, int width, int height)
    {
        Sheet sheet = new(width, height);
        PageParts.Head(sheet, Title, $"night {Row + 1} of {report.Nights.Count}");
        int top = PageParts.Paragraph(sheet, 1, TripSentence.Of(report, Units), 2, Ink.Strong);
        IReadOnlyList<string> lines = TripRows.Lines(report, Units);
        string[] below = [.. Told(report).SelectMany(t => Wrap.Lines(t, width, rest: "  ")).Select(Fitting.OneCellEach)];
        int room = height - top - TripRows.HeadingRows - 2;
        int rows = Math.Min(report.Nights.Count, Math.Max(LeastNights, room - LinesBelow)), told = Math.Min(below.Length, room - rows);
        for (int i = 0; i < TripRows.HeadingRows; i++)
            sheet.Put(0, top + i, Fitting.Cut(lines[i], width));
        top += TripRows.HeadingRows;
        int first = PageParts.FirstRow(Row, rows, report.Nights.Count);
        for (int i = first; i < Math.Min(report.Nights.Count, first + rows); i++)
        {
            string line = (i == Row ? ">" : " ") + lines[TripRows.HeadingRows + i][1..];
            sheet.Put(0, top + i - first, Fitting.Cut(line, width), i == Row ? Ink.Pointer : Ink.Plain);
        }

        top += rows + 1;
        for (int i = 0; i < told; i++)
            sheet.Put(0, top + i, i == told - 1 && told < below.Length ? Fitting.Cut(below[i] + " …", width) : below[i]);
        PageParts.Foot(sheet, "↑↓ night", "e/E refill", "l all as text");
        return sheet;
    }

    private IEnumerable<string> Told(TripReport report)
    {
        TripNight night = report.Nights[Row];
        foreach (int refill in night.Refills)
            yield return RefillSentence.Of(report.Refills[refill], refill, report, Units);
        yield return NightSentence.Of(night.Night, report.Run, Units);
    }
}
