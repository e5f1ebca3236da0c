using ColdSim.Planning.Figures;
using ColdSim.Planning.Logs;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Fits.FitReport>;
using Feed = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Fits.FedTime>;
using Parameter = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Fits.FitParameter>;
using Residual = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Fits.FitResidual>;

namespace ColdSim.Planning.Fits;

/// <summary>What is reported of a fit.</summary>
internal static class FitFigures
{
    /// <summary>The words for what a fit estimates: the keys of <c>[fit]</c>.</summary>
    public static WordTable<FitKind> Kinds { get; } = new WordTable<FitKind>()
        .With(FitKind.HeatLoss, "heat_loss_factor", "heat loss")
        .With(FitKind.Infiltration, "infiltration_factor", "infiltration")
        .With(FitKind.BaseUse, "base_use", "base use")
        .With(FitKind.WindExposure, "wind_exposure", "wind exposure of the cylinder");

    private static IReadOnlyList<Parameter> Parameters { get; } =
    [
        Parameter.Word("key", p => p.Estimate.Kind, Kinds, "what is estimated, `base_use` in W"),
        Parameter.Number("value", p => p.Estimate.Value, "the estimate"),
        Parameter.Number("low", p => p.Estimate.Low, "lower end of its 80 % interval"),
        Parameter.Number("high", p => p.Estimate.High, "upper end"),
        Parameter.Number("standard_uncertainty", p => p.StandardUncertainty, "of the factor's logarithm, of watts, of the part"),
        Parameter.Number("learned", p => p.Estimate.Learned_frac, "part of the variance before that the readings took away"),
        Parameter.Flag("identified", p => p.Estimate.IsIdentified, "whether that is half or more"),
        Parameter.Numbers("correlations", p => p.Correlations, "with each parameter in this order"),
    ];

    /// <summary>A reading and what the fit makes of it.</summary>
    public static IReadOnlyList<Residual> Residuals { get; } =
    [
        Residual.Count("line", r => r.Row.Reading.Line, "its line in the log").InTable(ReportTable.Fit, "line"),
        Residual.Text("cylinder", r => r.OneOf, "which of several cylinders; null for one", canBeAbsent: true)
            .InTable(ReportTable.Fit, "cylinder", left: true, shown: rows => rows.Any(r => r.OneOf is not null)),
        Residual.Time("time", r => r.Row.Reading.Time, "when").InTable(ReportTable.Fit, "read", Display.DayClock, left: true),
        Residual.Quantity("mass_kg", r => r.Row.Contents.Mass, MassUnit.Kilogram, "as read")
            .InTable(ReportTable.Fit, "holds", Display.FineMass)
            .InTable(ReportTable.Fit, "±", Display.FineMass, value: r => r.Row.Contents.StandardUncertainty),
        Residual.Quantity("fitted_kg", r => r.Predicted, MassUnit.Kilogram, "as simulated")
            .InTable(ReportTable.Fit, "fitted", Display.FineMass)
            .InTable(ReportTable.Fit, "off", Display.FineMass, value: r => r.Off),
        Residual.Number("off_in_uncertainties", r => r.Times, "off what all the others say of it, in standard uncertainties of that")
            .InTable(ReportTable.Fit, "times", Display.OneDecimal),
        Residual.Flag("grossly_off", r => r.Gross, "whether it was left out").InTable(ReportTable.Fit, "", left: true, value: r => r.Gross ? "grossly off" : ""),
    ];

    private static IReadOnlyList<Feed> Feeds { get; } =
    [
        Feed.Time("from", f => f.Span.From, "the reading from which on"),
        Feed.Time("to", f => f.Span.To, "the reading up to which"),
        Feed.Text("cylinder", f => f.Cylinder, "the one in use; null where all are open together", canBeAbsent: true),
        Feed.Text("other", f => f.Other, "another one that took over in this time, or may have given part; null where there is none", canBeAbsent: true),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Time("from", f => f.From, "first reading"),
        Document.Time("to", f => f.To, "last reading"),
        Document.Rows("parameters", FitParameter.Of, Parameters, "what the readings move"),
        Document.Texts("silent", f => [.. f.Silent.Select(k => Kinds[k].Key)], "parameters of which the readings say nothing"),
        Document.Texts("confused", f => [.. f.Confused.Select(g => string.Join(' ', g.Select(k => Kinds[k].Key)))],
            "parameters that these readings cannot separate, a group a text, spaces between"),
        Document.Numbers("eigenvalues", f => f.Eigenvalues, "of the normal matrix in spreads of the priors"),
        Document.Number("reduced_chi_square", f => f.ReducedChiSquare, "scatter over what the errors let expect"),
        Document.Count("degrees_of_freedom", f => f.Freedom, "readings less stretches between fillings"),
        Document.Quantity("burner_cycle_kg", f => f.Cycle, MassUnit.Kilogram, "gas of one burner cycle"),
        Document.Count("measured_used", f => f.MeasuredUsed, "temperatures of liquid and wall and pressures that were used beside the readings"),
        Document.Numbers("measured_left_out", f => f.MeasuredLeftOut.Select(line => (double)line), "lines of the log with such values that are grossly off and were left out"),
        Document.Numbers("measured_unclear", f => f.MeasuredUnclear.Select(line => (double)line),
            "lines with such values of several cylinders that were left out because the log does not show well enough which one fed"),
        Document.Rows("feeds", FedTime.Of, Feeds, "which of several cylinders was in use when, as far as the log shows it; empty for one"),
        Document.Rows("readings", f => f.Residuals, Residuals, "reading by reading"),
    ];
}

/// <summary>One estimate with its place in the fit's covariance.</summary>
/// <param name="Estimate">The estimate.</param>
/// <param name="StandardUncertainty">Of the factor's logarithm, of watts, of the part.</param>
/// <param name="Correlations">With every estimate.</param>
internal sealed record FitParameter(FitEstimate Estimate, double StandardUncertainty, IReadOnlyList<double> Correlations)
{
    /// <summary>All of a fit.</summary>
    public static IEnumerable<FitParameter> Of(FitReport fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        int n = fit.Estimates.Count;
        return fit.Estimates.Select((e, i) => new FitParameter(
            e, Math.Sqrt(fit.Factors.Covariance[i * (n + 1)]), [.. Enumerable.Range(0, n).Select(j => fit.Correlations[i * n + j])]));
    }
}

/// <summary>A time in which one of several cylinders was in use, with its name.</summary>
/// <param name="Span">The time.</param>
/// <param name="Cylinder">The name of the one in use; null where all are open together.</param>
/// <param name="Other">The name of another that may have given gas; null where there is none.</param>
internal sealed record FedTime(FeedSpan Span, string? Cylinder, string? Other)
{
    /// <summary>All of a fit.</summary>
    public static IEnumerable<FedTime> Of(FitReport fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        string? Name(int? place) => place is { } p ? fit.Scenario.Rig.NameOf(p) : null;
        return fit.Feeds.Select(f => new FedTime(f, Name(f.Cylinder), Name(f.Other)));
    }
}
