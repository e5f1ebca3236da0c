namespace ColdSim.Planning.Verification;

/// <summary>The errors of one forecast.</summary>
/// <param name="Air_K">Hours after issue, and air temperature forecast less observed, in order of time.</param>
/// <param name="WindLogs">Logarithms of observed wind over forecast wind.</param>
internal sealed record ForecastErrors(List<(double Lead_h, double Error_K)> Air_K, List<double> WindLogs)
{
    // Rows on the hour differ by less than this from being so many hours apart.
    private const double Slack_h = 0.01;

    /// <summary>Each error with the one so many hours later.</summary>
    /// <param name="lag_h">How much later. [h]</param>
    /// <param name="take">Which leads the first of a pair may have.</param>
    public IEnumerable<(double Now_K, double Later_K)> Pairs(double lag_h, Func<double, bool> take)
    {
        int later = 0;
        for (int now = 0; now < Air_K.Count; now++)
        {
            double wanted_h = Air_K[now].Lead_h + lag_h;
            while (later < Air_K.Count && Air_K[later].Lead_h < wanted_h - Slack_h)
                later++;
            if (later < Air_K.Count && Air_K[later].Lead_h <= wanted_h + Slack_h && take(Air_K[now].Lead_h))
                yield return (Air_K[now].Error_K, Air_K[later].Error_K);
        }
    }
}
