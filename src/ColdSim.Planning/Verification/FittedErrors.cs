namespace ColdSim.Planning.Verification;

/// <summary>Sizes of a forecast's errors as members need them (<see cref="ErrorSizes"/>), from many forecasts.</summary>
/// <param name="Temperature_K">Of the air a day ahead, about the forecast as it is: the bias is counted in. [K]</param>
/// <param name="TemperatureGrowth_K">How much that grows for every day further ahead. [K]</param>
/// <param name="CorrelationTime_h">Time over which an error is forgotten to 1/e. [h]</param>
/// <param name="WindLog">Of the logarithm of the wind; null where forecasts or observations have too little wind.</param>
public sealed record FittedErrors(double Temperature_K, double TemperatureGrowth_K, double CorrelationTime_h, double? WindLog)
{
    // As [chance] accepts them.
    private const double MostTemperature_K = 10, MostGrowth_K = 3, LeastTime_h = 1, MostTime_h = 240, MostWindLog = 1.5;
    private const int LeastWinds = 100;

    // Hours between the errors that are correlated; later ones know too little.
    private static readonly double[] Lags_h = [1, 2, 3, 6, 9, 12, 18, 24, 36, 48, 72];

    /// <summary>Fits them.</summary>
    internal static FittedErrors Of(IReadOnlyList<ForecastErrors> all, IReadOnlyList<LeadErrors> leads)
    {
        (double day_K, double growth_K) = Line(leads);
        double squares = 0;
        int winds = 0;
        foreach (double log in all.SelectMany(e => e.WindLogs))
            (squares, winds) = (squares + (log * log), winds + 1);
        return new(
            Math.Clamp(day_K, 0, MostTemperature_K), Math.Clamp(growth_K, 0, MostGrowth_K), Math.Clamp(Forgotten_h(all, leads), LeastTime_h, MostTime_h),
            winds < LeastWinds ? null : Math.Min(MostWindLog, Math.Sqrt(squares / winds)));
    }

    // The straight line through the errors of each day ahead, which are those of the middle of the day; weighted by how many forecasts reach there.
    private static (double DayAhead_K, double Growth_K) Line(IReadOnlyList<LeadErrors> leads)
    {
        double n = 0, x = 0, y = 0, xx = 0, xy = 0;
        foreach (LeadErrors lead in leads)
        {
            double ahead = lead.Day - 1.5;
            (n, x, y) = (n + lead.Forecasts, x + (lead.Forecasts * ahead), y + (lead.Forecasts * lead.Rms_K));
            (xx, xy) = (xx + (lead.Forecasts * ahead * ahead), xy + (lead.Forecasts * ahead * lead.Rms_K));
        }

        double varied = (n * xx) - (x * x), growth = varied <= 0 ? 0 : Math.Max(0, ((n * xy) - (x * y)) / varied);
        return ((y - (growth * x)) / n, growth);
    }

    // Where the correlation falls below 1/e, on straight lines of its logarithm between the lags.
    private static double Forgotten_h(IReadOnlyList<ForecastErrors> all, IReadOnlyList<LeadErrors> leads)
    {
        double before_h = 0, before = 1;
        foreach (double lag_h in Lags_h)
        {
            if (Correlation(all, leads, lag_h) is not { } now)
                continue;
            if (now <= 1 / Math.E)
            {
                double log = Math.Log(before), fall = log - Math.Log(Math.Max(now, 0.01));
                return before_h + ((lag_h - before_h) * (log + 1) / fall);
            }

            (before_h, before) = (lag_h, now);
        }

        return before_h > 0 && before < 1 ? -before_h / Math.Log(before) : MostTime_h;
    }

    // Each error less the bias of its day ahead and in parts of that day's spread, so that errors near and far ahead count the same.
    private static double? Correlation(IReadOnlyList<ForecastErrors> all, IReadOnlyList<LeadErrors> leads, double lag_h)
    {
        Dictionary<int, LeadErrors> byDay = leads.Where(l => l.Spread_K > 0).ToDictionary(l => l.Day);
        double sum = 0, nows = 0, laters = 0;
        foreach (ForecastErrors errors in all)
        {
            ForecastErrors scaled = new(
                [.. errors.Air_K.Where(e => byDay.ContainsKey(ForecastVerification.DayOf(e.Lead_h)))
                    .Select(e => (e.Lead_h, (e.Error_K - byDay[ForecastVerification.DayOf(e.Lead_h)].Bias_K) / byDay[ForecastVerification.DayOf(e.Lead_h)].Spread_K))],
                []);
            foreach ((double now, double later) in scaled.Pairs(lag_h, _ => true))
                (sum, nows, laters) = (sum + (now * later), nows + (now * now), laters + (later * later));
        }

        return nows <= 0 || laters <= 0 ? null : sum / Math.Sqrt(nows * laters);
    }
}
