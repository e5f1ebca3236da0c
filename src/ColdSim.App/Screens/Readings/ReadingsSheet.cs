using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Screens.Readings;

/// <summary>Draws the page of readings: its head, and below it the form, the log or the fit.</summary>
internal static class ReadingsSheet
{
    /// <summary>From this width on there are words beside the strip.</summary>
    public const int Wide = 100;

    private const int Top = 2;

    public static void Draw(Sheet sheet, ReadingsPage page)
    {
        string which = page.Scenario.Rig.Cylinders.Count == 1 ? CylinderWords.All(page.Scenario.Rig).TrimEnd(',') : CylinderWords.Names(page.Scenario.Rig);
        which = CellText.Cut(which, sheet.Width / 2);
        sheet.PutBefore(sheet.Width, 0, which);
        sheet.Put(0, 0, CellText.Cut(CellText.SingleWidth(page.Scenario.Title), sheet.Width - which.Length - 2), CellStyle.Strong);
        int x = 0;
        foreach ((ReadingsTab tab, string name) in ((ReadingsTab, string)[])[(ReadingsTab.Log, "log"), (ReadingsTab.Entry, "new reading"), (ReadingsTab.Fit, "fit")])
        {
            string text = tab == page.Tab ? $"[{name}]" : $" {name} ";
            sheet.Put(x, 1, text, tab == page.Tab ? CellStyle.Strong : CellStyle.Plain);
            x += text.Length + 1;
        }

        if (page.DueJob is not null)
            sheet.Put(x + 1, 1, page.IsWriting ? "writing…" : "reckoning…");
        if (page.File is null)
        {
            Body(sheet, [("The demo has no file of its own, so there is no log beside it.", CellStyle.Plain), ("'coldsim new trip.toml' writes a scenario to begin with; 'coldsim view trip.toml' opens it.", CellStyle.Plain)], 0);
            PageElements.Foot(sheet, "", []);
            return;
        }

        if (page.Tab == ReadingsTab.Entry)
        {
            EntrySheet.Draw(sheet, page);
            return;
        }

        IReadOnlyList<(string Text, CellStyle Style)> lines = Lines(page, sheet.Width);
        int rows = sheet.Height - Top - 1;
        Body(sheet, lines, Math.Clamp(page.Row, 0, Math.Max(0, lines.Count - rows)));
        PageElements.Foot(sheet, "", page.Keys);
    }

    /// <summary>The lines that can be scrolled.</summary>
    public static IReadOnlyList<(string Text, CellStyle Style)> Lines(ReadingsPage page, int width)
    {
        List<(string, CellStyle)> lines = [];
        if (page.Notice.Length > 0)
            lines.AddRange([.. CellText.Wrap(page.Notice, width).Select(l => (l, CellStyle.Strong)), ("", CellStyle.Plain)]);
        lines.AddRange(page.Tab == ReadingsTab.Fit ? FitLines(page, width) : LogLines(page, width));
        return lines;
    }

    private static void Body(Sheet sheet, IReadOnlyList<(string Text, CellStyle Style)> lines, int first)
    {
        for (int y = Top; y < sheet.Height - 1 && first < lines.Count; y++, first++)
            sheet.Put(0, y, CellText.Cut(lines[first].Text, sheet.Width), lines[first].Style);
    }

    private static List<(string Text, CellStyle Style)> LogLines(ReadingsPage page, int width)
    {
        if (page.Log is not { } log || page.Shown is not { } shown)
            return [("The log is not read yet; Enter reads it.", CellStyle.Plain)];
        List<(string, CellStyle)> lines = [];
        foreach (Files.FileProblem problem in log.LeftOut)
            lines.AddRange(CellText.Wrap($"left out: {CellText.SingleWidth(problem.ToString())}", width).Select(l => (l, CellStyle.Strong)));
        if (shown.Rows.Count == 0 && log.Measured.Rows.Count == 0)
            return [.. lines, ("No readings yet. Enter writes the first one down.", CellStyle.Plain)];
        if (shown.Rows.Count == 0)
            return [.. lines, .. MeasuredLines(page, log, width)];
        IReadOnlyList<string> table = LogTable(page, shown, width);
        lines.AddRange(table.Take(2).Select(l => (l, CellStyle.Strong)));
        lines.AddRange(table.Skip(2).Select((l, i) => (l, shown.Rows[i].Mark is ReadingMark.Far or ReadingMark.LooksWrong ? CellStyle.Strong : CellStyle.Plain)));
        string marks = shown.Rows.Any(r => r.Mark != ReadingMark.None) ? "; F far off, W looks wrong, A after a wrong one" : "";
        lines.AddRange(CellText.Wrap($"predicted from the reading before, {(page.WithFit ? "with the coach as just fitted" : LogText.Parameters(page.Scenario))}{marks}", width).Select(l => (l, CellStyle.Plain)));
        if (shown.Days.Count > 0)
        {
            lines.Add(("", CellStyle.Plain));
            IReadOnlyList<string> days = LogText.DailyTable(shown, page.Scenario, page.Units);
            lines.AddRange(days.Select((l, i) => (l, i < 3 ? CellStyle.Strong : CellStyle.Plain)));
        }

        if (log.Measured.Rows.Count > 0)
            lines.AddRange([("", CellStyle.Plain), .. MeasuredLines(page, log, width)]);
        return lines;
    }

    private static IEnumerable<(string Text, CellStyle Style)> MeasuredLines(ReadingsPage page, PredictedLog log, int width)
    {
        TextSection section = MeasuredText.Section(log.Measured, page.Scenario, page.Units);
        yield return (section.Title, CellStyle.Strong);
        foreach (string line in section.Lines.SelectMany(l => CellText.Wrap(CellText.SingleWidth(l), width)))
            yield return (line, CellStyle.Plain);
    }

    private static IReadOnlyList<string> LogTable(ReadingsPage page, LogPrediction shown, int width)
    {
        bool several = page.Scenario.Rig.Cylinders.Count > 1, wide = width >= Wide, strip = wide || !several;
        UnitStyle u = page.Units;
        return TextTable.Lines(
            [
                new(["line"]), new(["read"], Left: true), .. several ? [new TextColumn(["cylinder"], Left: true)] : Array.Empty<TextColumn>(), new(["method"], Left: true),
                new(["holds", u.MassUnit]), new(["±"]), new(["pre-", "dicted"]), new(["off", u.MassUnit]), new(["times"]), new([""]),
                .. strip ? [new TextColumn(["standard errors", ResidualStrip.Heading], Left: true)] : Array.Empty<TextColumn>(),
                .. wide ? [new TextColumn([""], Left: true)] : Array.Empty<TextColumn>(),
            ],
            [
                .. shown.Rows.Select(r => (IReadOnlyList<string>)
                [
                    UnitStyle.Number(r.Row.Reading.Line, 0), ClockText.DayClock(r.Row.Reading.Time.ToOffset(page.Scenario.Start.Offset)),
                    .. several ? [CellText.Cut(page.Scenario.Rig.NameOf(r.Row.Reading.Cylinder), 12)] : Array.Empty<string>(),
                    r.Row.Reading.Reading.Name, Mass(r.Row.Contents.Mass.Kilograms, u), Mass(r.Row.Contents.StandardUncertainty.Kilograms, u),
                    r.Predicted is { } p ? Mass(p.Kilograms, u) : r.Row.Reading.Filled ? "filled" : "-", r.Off is { } off ? Mass(off.Kilograms, u) : "-",
                    r.Times is { } times ? UnitStyle.Number(times, 1) : "-", Letter(r.Mark),
                    .. strip ? [ResidualStrip.Of(r.Times)] : Array.Empty<string>(),
                    .. wide ? [CellText.Cut($"{LogFigures.Marks[r.Mark].Text} {CellText.SingleWidth(r.Row.Reading.Note)}".Trim(), width - 84)] : Array.Empty<string>(),
                ]),
            ]);
    }

    private static string Letter(ReadingMark mark) => mark switch
    {
        ReadingMark.Far => "F",
        ReadingMark.LooksWrong => "W",
        ReadingMark.AfterWrong => "A",
        _ => "",
    };

    private static string Mass(double kg, UnitStyle units) => UnitStyle.Number(units.MassIn(kg), 2);

    private static IEnumerable<(string Text, CellStyle Style)> FitLines(ReadingsPage page, int width)
    {
        if (page.Fit is not { } made)
        {
            return CellText.Wrap("Not fitted yet. Enter runs the simulator through the log until its coach fits the readings best; that takes seconds, and Esc stops it.", width)
                .Select(l => (l, CellStyle.Plain));
        }

        if (made.Report is not { } fit)
        {
            return
            [
                ("Too little to learn from:", CellStyle.Strong),
                .. made.Reasons.SelectMany(r => CellText.Wrap(r, width - 2).Select((l, i) => ((i == 0 ? "- " : "  ") + l, CellStyle.Plain))),
            ];
        }

        List<(string, CellStyle)> lines = [("What was learned, with 80 % intervals", CellStyle.Strong)];
        lines.AddRange(TextTable.Lines(
            [new([""], Left: true), new(["value"]), new(["from"]), new(["to"]), new(["learned", "%"]), new([""], Left: true)],
            [
                .. fit.Estimates.Select(e => (IReadOnlyList<string>)
                [
                    FitWords.Name(e.Kind), FitWords.Value(e.Kind, e.Value), FitWords.Value(e.Kind, e.Low), FitWords.Value(e.Kind, e.High), UnitStyle.Number(100 * e.Learned_frac, 0),
                    e.IsIdentified ? "from the readings" : "mostly assumed",
                ]),
            ],
            gap: 2).Select(l => (l, CellStyle.Plain)));
        foreach (FitKind kind in fit.Silent)
            lines.Add(($"{FitWords.Name(kind)}: the readings say nothing; the scenario's stays", CellStyle.Plain));
        foreach (IReadOnlyList<FitKind> group in fit.Confused)
            lines.AddRange(CellText.Wrap($"{string.Join(" and ", group.Select(FitWords.Name))} cannot be separated: more of one with less of the other fits as well", width).Select(l => (l, CellStyle.Plain)));
        lines.Add(("", CellStyle.Plain));
        lines.Add(("Reading less fit", CellStyle.Strong));
        UnitStyle u = page.Units;
        lines.AddRange(TextTable.Lines(
            [
                new(["line"]), new(["read"], Left: true), new(["holds", u.MassUnit]), new(["±"]), new(["fitted", u.MassUnit]), new(["off", u.MassUnit]), new(["times"]),
                new(["standard errors", ResidualStrip.Heading], Left: true), new([""], Left: true),
            ],
            [
                .. fit.Residuals.Select(r => (IReadOnlyList<string>)
                [
                    UnitStyle.Number(r.Row.Reading.Line, 0), ClockText.DayClock(r.Row.Reading.Time.ToOffset(fit.Scenario.Start.Offset)), Mass(r.Row.Contents.Mass.Kilograms, u),
                    Mass(r.Row.Contents.StandardUncertainty.Kilograms, u), Mass(r.Predicted.Kilograms, u), Mass(r.Off.Kilograms, u), UnitStyle.Number(r.Times, 1), ResidualStrip.Of(r.Times),
                    r.Gross ? "left out" : "",
                ]),
            ]).Select((l, i) => (l, i < 2 || fit.Residuals[i - 2].Gross ? CellStyle.Strong : CellStyle.Plain)));
        lines.AddRange(CellText.Wrap(
            $"scatter {UnitStyle.Number(fit.ReducedChiSquare, 2)} of what the errors let expect; times: how far off what all other readings say, in standard uncertainties. "
            + "To keep the fit: coldsim fit FILE --out COPY", width).Select(l => (l, CellStyle.Plain)));
        return lines;
    }
}
