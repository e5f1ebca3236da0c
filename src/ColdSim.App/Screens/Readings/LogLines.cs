using ColdSim.App.Text;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Screens.Readings;

/// <summary>The log, predicted against read, and day by day.</summary>
internal static class LogLines
{
    public static IEnumerable<(string Text, Ink Ink)> Of(ReadingsPage page, int width)
    {
        if (page.Book is not { } book || page.Shown is not { } shown)
            return [("The log is not read yet; Enter reads it.", Ink.Plain)];
        List<(string, Ink)> lines = [];
        foreach (Files.FileProblem problem in book.Damaged)
            lines.AddRange(Fitting.Wrap($"left out: {Fitting.OneCellEach(problem.ToString())}", width).Select(l => (l, Ink.Strong)));
        if (shown.Rows.Count == 0)
            return [.. lines, ("No readings yet. Enter writes the first one down.", Ink.Plain)];
        IReadOnlyList<string> table = Table(page, shown, width);
        lines.AddRange(table.Take(2).Select(l => (l, Ink.Strong)));
        lines.AddRange(table.Skip(2).Select((l, i) => (l, shown.Rows[i].Mark is ReadingMark.Far or ReadingMark.LooksWrong ? Ink.Strong : Ink.Plain)));
        string marks = shown.Rows.Any(r => r.Mark != ReadingMark.None) ? "; F far off, W looks wrong, A after a wrong one" : "";
        lines.AddRange(Fitting.Wrap($"predicted from the reading before, {(page.WithFit ? "with the coach as just fitted" : LogText.Parameters(page.Scenario))}{marks}", width).Select(l => (l, Ink.Plain)));
        if (shown.Days.Count > 0)
        {
            lines.Add(("", Ink.Plain));
            IReadOnlyList<string> days = DailyUseText.Table(shown, page.Scenario, page.Units);
            lines.AddRange(days.Select((l, i) => (l, i < 3 ? Ink.Strong : Ink.Plain)));
        }

        return lines;
    }

    private static IReadOnlyList<string> Table(ReadingsPage page, LogPrediction shown, int width)
    {
        bool several = page.Scenario.Rig.Cylinders.Count > 1, wide = width >= ReadingsSheet.Wide, strip = wide || !several;
        UnitStyle u = page.Units;
        return TextTable.Lines(
            [
                new(["line"]), new(["read"], Left: true), .. several ? [new TextColumn(["cylinder"], Left: true)] : Array.Empty<TextColumn>(), new(["method"], Left: true),
                new(["holds", u.MassUnit]), new(["±"]), new(["pre-", "dicted"]), new(["off", u.MassUnit]), new(["times"]), new([""]),
                .. strip ? [new TextColumn(["standard errors", TimesStrip.Heading], Left: true)] : Array.Empty<TextColumn>(),
                .. wide ? [new TextColumn([""], Left: true)] : Array.Empty<TextColumn>(),
            ],
            [
                .. shown.Rows.Select(r => (IReadOnlyList<string>)
                [
                    UnitStyle.Number(r.Row.Reading.Line, 0), ClockText.DayClock(r.Row.Reading.Time.ToOffset(page.Scenario.Start.Offset)),
                    .. several ? [Fitting.Cut(page.Scenario.Rig.NameOf(r.Row.Reading.Cylinder), 12)] : Array.Empty<string>(),
                    r.Row.Reading.Reading.Name, Mass(r.Row.Contents.Mass.Kilograms, u), Mass(r.Row.Contents.StandardUncertainty.Kilograms, u),
                    r.Predicted is { } p ? Mass(p.Kilograms, u) : r.Row.Reading.Filled ? "filled" : "-", r.Off is { } off ? Mass(off.Kilograms, u) : "-",
                    r.Times is { } times ? UnitStyle.Number(times, 1) : "-", Letter(r.Mark),
                    .. strip ? [TimesStrip.Of(r.Times)] : Array.Empty<string>(),
                    .. wide ? [Fitting.Cut($"{LogFigures.Marks[r.Mark].Text} {Fitting.OneCellEach(r.Row.Reading.Note)}".Trim(), width - 84)] : Array.Empty<string>(),
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
}
