using ColdSim.Model.Weather;

namespace ColdSim.Planning.Verification;

/// <summary>Forecasts of one place beside what was observed there: how far off they were, by how far ahead they looked.</summary>
public sealed record ForecastVerification
{
    /// <summary>The fewest issue times from which sizes of errors are taken.</summary>
    public const int LeastIssues = 20;

    // Below this a wind's logarithm says more of the anemometer than of the wind.
    private const double LeastWind_m_s = 1;
    private const int SixHours_h = 6;
    private const int LeastPairs = 20;
    private const int MostDays = 16;

    private ForecastVerification(IReadOnlyList<VerifiedForecast> forecasts, IReadOnlyList<LeadErrors> leads, FittedErrors? fitted)
        => (Forecasts, Leads, Fitted) = (forecasts, leads, fitted);

    /// <summary>Each forecast, in order of issue; those that no observation reaches are left out.</summary>
    public IReadOnlyList<VerifiedForecast> Forecasts { get; }

    /// <summary>All of them by days ahead.</summary>
    public IReadOnlyList<LeadErrors> Leads { get; }

    /// <summary>Sizes of errors for members; null where there are fewer than <see cref="LeastIssues"/> forecasts.</summary>
    public FittedErrors? Fitted { get; }

    /// <summary>Compares them.</summary>
    /// <param name="forecasts">No two with one issue time.</param>
    /// <param name="observed">In order of time.</param>
    public static ForecastVerification Of(IReadOnlyList<IssuedForecast> forecasts, IReadOnlyList<WeatherRow> observed)
    {
        ArgumentNullException.ThrowIfNull(forecasts);
        ArgumentNullException.ThrowIfNull(observed);
        ObservedAir air = new(observed);
        List<VerifiedForecast> verified = [];
        List<ForecastErrors> all = [];
        foreach (IssuedForecast forecast in forecasts.OrderBy(f => f.Issued))
        {
            ForecastErrors errors = Errors(forecast, air);
            if (errors.Air_K.Count == 0)
                continue;
            all.Add(errors);
            (double lead_h, double largest_K) = errors.Air_K.MaxBy(e => Math.Abs(e.Error_K));
            verified.Add(new(
                forecast, errors.Air_K.Count, errors.Air_K.Average(e => e.Error_K), Math.Sqrt(errors.Air_K.Average(e => e.Error_K * e.Error_K)), largest_K,
                forecast.Issued.AddHours(lead_h)));
        }

        List<LeadErrors> leads = [];
        for (int day = 1; day <= MostDays; day++)
        {
            if (Lead(all, day) is { } lead)
                leads.Add(lead);
        }

        return new(verified, leads, all.Count >= LeastIssues ? FittedErrors.Of(all, leads) : null);
    }

    private static ForecastErrors Errors(IssuedForecast forecast, ObservedAir observed)
    {
        ForecastErrors errors = new([], []);
        foreach (WeatherRow row in forecast.Rows)
        {
            double lead_h = (row.Time - forecast.Issued).TotalHours;
            if (lead_h < 0 || lead_h >= 24 * MostDays || observed.At(row.Time) is not { } was)
                continue;
            errors.Air_K.Add((lead_h, row.Air_K - was.Air_K));
            if (row.Wind_m_s >= LeastWind_m_s && was.Wind_m_s >= LeastWind_m_s)
                errors.WindLogs.Add(Math.Log(was.Wind_m_s.Value / row.Wind_m_s.Value));
        }

        return errors;
    }

    private static LeadErrors? Lead(List<ForecastErrors> all, int day)
    {
        double sum = 0, squares = 0;
        int hours = 0, forecasts = 0;
        foreach (ForecastErrors errors in all)
        {
            int before = hours;
            foreach ((double lead_h, double error_K) in errors.Air_K)
            {
                if (DayOf(lead_h) != day)
                    continue;
                (sum, squares, hours) = (sum + error_K, squares + (error_K * error_K), hours + 1);
            }

            forecasts += hours > before ? 1 : 0;
        }

        if (hours < 2)
            return null;
        double bias_K = sum / hours, spread_K = Math.Sqrt(Math.Max(0, squares - (hours * bias_K * bias_K)) / (hours - 1));
        return new(day, forecasts, hours, bias_K, spread_K, Math.Sqrt(squares / hours), After(all, day, bias_K, spread_K));
    }

    private static double? After(List<ForecastErrors> all, int day, double bias_K, double spread_K)
    {
        double sum = 0;
        int pairs = 0;
        foreach (ForecastErrors errors in all)
        {
            foreach ((double now_K, double later_K) in errors.Pairs(SixHours_h, lead_h => DayOf(lead_h) == day))
                (sum, pairs) = (sum + ((now_K - bias_K) * (later_K - bias_K)), pairs + 1);
        }

        return pairs < LeastPairs || spread_K <= 0 ? null : Math.Clamp(sum / pairs / (spread_K * spread_K), -1, 1);
    }

    internal static int DayOf(double lead_h) => (int)(lead_h / 24) + 1;
}
