using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>The outlook of a run in several legs: each sample's is its leg's.</summary>
internal sealed class LegOutlook(IReadOnlyList<Leg> legs, Func<Leg, SupplyOutlook> outlook) : ISupplyOutlook
{
    private readonly SupplyOutlook?[] _outlooks = new SupplyOutlook?[legs.Count];
    private int _last;

    /// <inheritdoc/>
    public double AllowedLiquid_K(RunSeries series, int sample) => At(sample).AllowedLiquid_K(series, sample);

    /// <inheritdoc/>
    public double LeftBehind_kg(RunSeries series, int sample, int cylinder, double t_K) => At(sample).LeftBehind_kg(series, sample, cylinder, t_K);

    /// <inheritdoc/>
    public double CanGiveNow_W(RunSeries series, int sample) => At(sample).CanGiveNow_W(series, sample);

    /// <inheritdoc/>
    public double CanKeepGiving_W(RunSeries series, int sample) => At(sample).CanKeepGiving_W(series, sample);

    private SupplyOutlook At(int sample)
    {
        double time_s = sample * RunSeries.Spacing_s;
        while (_last > 0 && time_s < (legs[_last].From - legs[0].From).TotalSeconds) _last--;
        while (_last < legs.Count - 1 && time_s >= (legs[_last].To - legs[0].From).TotalSeconds) _last++;
        return _outlooks[_last] ??= outlook(legs[_last]);
    }
}
