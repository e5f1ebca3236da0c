using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Trips;

/// <summary>The least surplus of a night: gas that could have been given at full delivery pressure, less what was asked.</summary>
/// <remarks>
/// Looked for among the minutes in which gas is asked for; below zero something went short. It is read off the run's curves at the
/// first look, because most runs are never asked for it.
/// </remarks>
/// <param name="Surplus">As gross heat.</param>
/// <param name="At">When.</param>
public sealed record Margin(Power Surplus, DateTimeOffset At)
{
    /// <summary>A night's; null where nothing asked for gas.</summary>
    /// <param name="run">The run.</param>
    /// <param name="night">The night.</param>
    public static Margin? Of(RunReport run, NightReport night)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(night);
        DateTimeOffset start = run.Scenario.Start;
        int from = (int)Math.Ceiling((night.From - start).TotalSeconds / RunSeries.Spacing_s);
        int to = Math.Min(run.Series.Count - 1, (int)Math.Floor((night.To - start).TotalSeconds / RunSeries.Spacing_s));
        int at = -1;
        double least_W = double.PositiveInfinity;
        for (int i = Math.Max(1, from); i <= to; i++)
        {
            if (!(run.Series.Asked_W[i] > 0)) continue;
            double surplus_W = run.Series.CanGiveNow_W[i] - run.Series.Asked_W[i];
            if (surplus_W < least_W) (least_W, at) = (surplus_W, i);
        }

        return at < 0 ? null : new Margin(Power.FromWatts(least_W), start.AddSeconds(at * RunSeries.Spacing_s));
    }
}
