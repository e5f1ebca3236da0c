using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Logs;
using static ColdSim.App.Text.UnitStyle;

namespace ColdSim.App.Text;

/// <summary>A fit as text, beside what its answer says: what was not learned, and reading by reading.</summary>
internal static class FitWords
{
    /// <summary>What goes below the answer, which has what was learned already.</summary>
    public static IReadOnlyList<TextSection> Sections(FitReport fit, string table, UnitStyle units, IReadOnlyList<string> cautions) =>
    [
        new("What the readings do not show", RunText.Points(Hidden(fit))),
        .. fit.Feeds.Count == 0 ? Array.Empty<TextSection>() : [new TextSection("Which cylinder fed", [.. FeedWords.Of(fit).SelectMany(l => Wrap.Lines(l))])],
        new($"Reading by reading, {units.MassUnit}", Readings(fit, units)),
        new("Lines for the scenario", [.. table.TrimEnd().Split('\n').SelectMany(l => l.StartsWith('#') ? Wrap.Lines(l[2..], first: "# ", rest: "# ") : [l])]),
        new("Assumed", RunText.Points(
        [
            "the simulator run through the log's weather and set points; reading errors as in coldsim log show",
            $"unknown to the model: {Number(100 * LogPrediction.Day_frac, 0)} % of a day's use from day to day, {Number(100 * LogPrediction.Lasting_frac, 0)} % of it always, "
                + $"half a burner cycle ({Number(units.MassIn(fit.Cycle.Kilograms / 2), units.IsUs ? 2 : 3)} {units.MassUnit}) in a mass",
            .. AtCylinder(fit, units),
            .. fit.Feeds.Count == 0 ? Array.Empty<string>() : [FeedWords.Assumed(fit)],
            "before any reading: heat loss within 30 %; infiltration a tenth more than stated, within 40 %; base use 150 W, within 100 W",
        ])),
        new("Cautions", RunText.Points(cautions, units)),
    ];

    private static IEnumerable<string> AtCylinder(FitReport fit, UnitStyle units)
    {
        if (fit.MeasuredUsed > 0)
        {
            yield return "unknown to the model of a cylinder's liquid, with which temperatures and pressures are compared: "
                + $"{units.Difference(MeasuredErrors.Lasting_K)} always and {units.Difference(MeasuredErrors.Each_K)} each time";
        }

        if (fit.MeasuredLeftOut.Count > 0)
            yield return $"temperatures or pressures that are grossly off, in lines {string.Join(", ", fit.MeasuredLeftOut.Select(l => Number(l, 0)))} of the log, were left out";
        if (fit.MeasuredUnclear.Count > 0)
        {
            string lines = string.Join(", ", fit.MeasuredUnclear.Select(l => Number(l, 0)));
            yield return $"temperatures or pressures in lines {lines} of the log were left out: for the "
                + $"{Number(FeedClarity.Settles.TotalHours, 0)} hours before them, the log does not show well enough which cylinder fed, or from how much";
        }
    }

    /// <summary>How many temperatures and pressures were used beside the readings of contents; nothing where there are none.</summary>
    internal static IEnumerable<string> Measured(FitReport fit)
    {
        if (fit.MeasuredUsed + fit.MeasuredUnclear.Count + fit.MeasuredLeftOut.Count == 0)
            yield break;
        string unclear = fit.MeasuredUnclear.Count == 0 ? "" : $"; {Number(fit.MeasuredUnclear.Count, 0)} not, as it is unclear which cylinder fed";
        string wrong = fit.MeasuredLeftOut.Count == 0 ? "" : $"; {Number(fit.MeasuredLeftOut.Count, 0)} not, as grossly off";
        yield return $"Temperatures and pressures of the {(fit.Feeds.Count == 0 ? "cylinder" : "cylinders")} used: {Number(fit.MeasuredUsed, 0)}{unclear}{wrong}.";
    }

    /// <summary>A reading that the rest contradicts.</summary>
    internal static string Gross(FitResidual r, UnitStyle units)
        => $"Line {r.Row.Reading.Line} of the log, {ClockText.DayClock(r.Row.Reading.Time)}, is wrong or misread: {units.Mass(Math.Abs(r.Off.Kilograms))} "
            + $"{(r.Off.Pounds > 0 ? "more" : "less")} than the rest says, {Number(Math.Abs(r.Times), 0)} standard uncertainties. Look at it again.";

    /// <summary>Said where the readings scatter more than their errors; null where they do not.</summary>
    internal static string? Scatter(FitReport fit) => fit.ReducedChiSquare <= 3 ? null
        : $"The readings are {Number(Math.Sqrt(fit.ReducedChiSquare), 1)} times further off than their errors explain: a filling that the log lacks, other set points "
            + "than the scenario's, or another cylinder. The ranges are widened by that.";

    /// <summary>What was learned, a row each.</summary>
    internal static IReadOnlyList<string> Table(FitReport fit) => TextTable.Lines(
        [new([""], Left: true), new(["value"]), new(["from"]), new(["to"]), new(["learned, %"]), new([""], Left: true)],
        [
            .. fit.Estimates.Select(e => (IReadOnlyList<string>)
            [
                Name(e.Kind), Value(e.Kind, e.Value), Value(e.Kind, e.Low), Value(e.Kind, e.High), Number(100 * e.Learned_frac, 0), e.IsIdentified ? "" : "still mostly assumed",
            ]),
        ],
        gap: 2);

    private static IEnumerable<string> Hidden(FitReport fit)
    {
        foreach (IReadOnlyList<FitKind> group in fit.Confused)
            yield return $"{string.Join(" and ", group.Select(Name))} cannot be separated: more of one with less of the other fits as well.";
        foreach (FitEstimate e in fit.Estimates.Where(e => !e.IsIdentified))
            yield return $"{Name(e.Kind)}: {Number(100 * e.Learned_frac, 0)} % of the doubt is gone; the rest is still assumed.";
        foreach (FitKind kind in fit.Silent)
            yield return $"{Name(kind)}: moves the gas used by less than a few burner cycles; the scenario's stays.";
        int n = fit.Estimates.Count;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < i; j++)
                yield return $"correlation of {Name(fit.Estimates[j].Kind)} and {Name(fit.Estimates[i].Kind)}: {Number(fit.Correlations[i * n + j], 2)}";
        }

        yield return $"scatter: {Number(fit.ReducedChiSquare, 2)} times what the errors explain, {fit.Freedom} degrees of freedom";
    }

    // By the scenario's clock, which may not be the log's.
    private static IReadOnlyList<string> Readings(FitReport fit, UnitStyle units) => new FigureTable(ReportTable.Fit, units) { Gap = 2, Offset = fit.Scenario.Start.Offset }.Lines(FitFigures.Residuals, fit.Residuals);

    internal static string Name(FitKind kind) => FitFigures.Kinds[kind].Text;

    internal static string Value(FitKind kind, double value) => kind switch
    {
        FitKind.BaseUse => $"{Number(value, 0)} W",
        FitKind.WindExposure => Number(value, 2),
        _ => $"x {Number(value, 2)}",
    };
}
