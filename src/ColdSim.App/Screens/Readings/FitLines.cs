using ColdSim.App.Text;
using ColdSim.Planning.Fits;
using static ColdSim.App.Text.UnitStyle;

namespace ColdSim.App.Screens.Readings;

/// <summary>The fit: what was learned and how sure, and what is left of each reading.</summary>
internal static class FitLines
{
    public static IEnumerable<(string Text, Ink Ink)> Of(ReadingsPage page, int width)
    {
        if (page.Fit is not { } made)
        {
            return Fitting.Wrap("Not fitted yet. Enter runs the simulator through the log until its coach goes best through the readings; that takes seconds, and Esc stops it.", width)
                .Select(l => (l, Ink.Plain));
        }

        if (made.Report is not { } fit)
        {
            return
            [
                ("Too little to learn from:", Ink.Strong),
                .. made.Reasons.SelectMany(r => Fitting.Wrap(r, width - 2).Select((l, i) => ((i == 0 ? "- " : "  ") + l, Ink.Plain))),
            ];
        }

        List<(string, Ink)> lines = [("What was learned, with 80 % intervals", Ink.Strong)];
        lines.AddRange(TextTable.Lines(
            [new([""], Left: true), new(["value"]), new(["from"]), new(["to"]), new(["learned", "%"]), new([""], Left: true)],
            [
                .. fit.Estimates.Select(e => (IReadOnlyList<string>)
                [
                    FitWords.Name(e.Kind), FitWords.Value(e.Kind, e.Value), FitWords.Value(e.Kind, e.Low), FitWords.Value(e.Kind, e.High), Number(100 * e.Learned_frac, 0),
                    e.IsIdentified ? "told by the readings" : "mostly assumed",
                ]),
            ],
            gap: 2).Select(l => (l, Ink.Plain)));
        foreach (FitKind kind in fit.Silent)
            lines.Add(($"{FitWords.Name(kind)}: the readings say nothing; the scenario's stays", Ink.Plain));
        foreach (IReadOnlyList<FitKind> group in fit.Confused)
            lines.AddRange(Fitting.Wrap($"{string.Join(" and ", group.Select(FitWords.Name))} cannot be told apart: more of one with less of the other fits as well", width).Select(l => (l, Ink.Plain)));
        lines.Add(("", Ink.Plain));
        lines.Add(("Reading less fit", Ink.Strong));
        UnitStyle u = page.Units;
        lines.AddRange(TextTable.Lines(
            [
                new(["line"]), new(["read"], Left: true), new(["holds", u.MassUnit]), new(["±"]), new(["fitted", u.MassUnit]), new(["off", u.MassUnit]), new(["times"]),
                new(["standard errors", TimesStrip.Heading], Left: true), new([""], Left: true),
            ],
            [
                .. fit.Residuals.Select(r => (IReadOnlyList<string>)
                [
                    Number(r.Row.Reading.Line, 0), ClockText.DayClock(r.Row.Reading.Time.ToOffset(fit.Scenario.Start.Offset)), Mass(r.Row.Contents.Mass.Kilograms, u),
                    Mass(r.Row.Contents.StandardUncertainty.Kilograms, u), Mass(r.Predicted.Kilograms, u), Mass(r.Off.Kilograms, u), Number(r.Times, 1), TimesStrip.Of(r.Times),
                    r.Gross ? "left out" : "",
                ]),
            ]).Select((l, i) => (l, i < 2 || fit.Residuals[i - 2].Gross ? Ink.Strong : Ink.Plain)));
        lines.AddRange(Fitting.Wrap(
            $"scatter {Number(fit.ReducedChiSquare, 2)} of what the errors let expect; times: how far off what all other readings say, in standard uncertainties. "
            + "To keep the fit: coldsim fit FILE --out COPY", width).Select(l => (l, Ink.Plain)));
        return lines;
    }

    private static string Mass(double kg, UnitStyle units) => Number(units.MassIn(kg), 2);
}
