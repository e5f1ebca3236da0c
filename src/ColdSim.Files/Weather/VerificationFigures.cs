using ColdSim.Planning.Verification;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Files.Weather.ForecastVerificationReport>;
using Fitted = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Verification.FittedErrors>;
using Forecast = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Verification.VerifiedForecast>;
using Lead = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Verification.LeadErrors>;

namespace ColdSim.Files.Weather;

/// <summary>What is reported of forecasts beside observations.</summary>
internal static class VerificationFigures
{
    private static IReadOnlyList<Lead> Leads { get; } =
    [
        Lead.Count("day", l => l.Day, "1 for the first 24 hours after issue"),
        Lead.Count("forecasts", l => l.Forecasts, "how many forecasts reach there"),
        Lead.Count("hours", l => l.Hours, "how many of their rows there is an observation for"),
        Lead.Number("bias_k", l => l.Bias_K, "mean of forecast less observed air temperature"),
        Lead.Number("spread_k", l => l.Spread_K, "standard deviation about that"),
        Lead.Number("rms_k", l => l.Rms_K, "root of the mean square, the bias included"),
        Lead.Number("autocorrelation_6h", l => l.SixHours, "correlation of an error with the same forecast's six hours later", canBeAbsent: true),
    ];

    private static IReadOnlyList<Forecast> Forecasts { get; } =
    [
        Forecast.Text("name", f => f.Forecast.Name, "its file's name"),
        Forecast.Time("issued", f => f.Forecast.Issued, "when it was issued"),
        Forecast.Count("hours", f => f.Hours, "how many of its rows there is an observation for"),
        Forecast.Number("bias_k", f => f.Bias_K, "mean of forecast less observed air temperature"),
        Forecast.Number("rms_k", f => f.Rms_K, "root of the mean square of that"),
        Forecast.Number("largest_k", f => f.Largest_K, "the one furthest from zero"),
        Forecast.Time("largest_at", f => f.LargestAt, "when that was"),
    ];

    private static IReadOnlyList<Fitted> Sizes { get; } =
    [
        Fitted.Number("temperature_error_k", f => f.Temperature_K, "`temperature_error` of `[chance]`: a day ahead, the bias counted in"),
        Fitted.Number("temperature_growth_k", f => f.TemperatureGrowth_K, "`temperature_growth`: for every day further ahead"),
        Fitted.Number("correlation_time_h", f => f.CorrelationTime_h, "`correlation_time`"),
        Fitted.Number("wind_error", f => f.WindLog, "`wind_error`: of the wind's logarithm", canBeAbsent: true),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("folder", r => r.Folder, "of the forecasts, as it was named"),
        Document.Text("observed", r => r.Observed, "the file of the observations, as it was named"),
        Document.Count("issue_times", r => r.Verification.Forecasts.Count, "how many forecasts there are to compare"),
        Document.Rows("by_day_ahead", r => r.Verification.Leads, Leads, "the errors of all forecasts by days ahead"),
        Document.Rows("forecasts", r => r.Verification.Forecasts, Forecasts, "each forecast, in order of issue"),
        Document.Group("chance", r => r.Verification.Fitted, Sizes, $"sizes of errors for `--members`; null with fewer than {ForecastVerification.LeastIssues} issue times", canBeAbsent: true),
        Document.Texts("notes", r => r.Notes, "what was left out or assumed"),
    ];
}
