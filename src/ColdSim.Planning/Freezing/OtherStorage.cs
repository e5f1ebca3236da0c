using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Freezing;

/// <summary>How inside would have gone in a finished run if the coach stored more or less heat, with the heat that it got in that run.</summary>
/// <remarks>
/// The heat of each minute is what the coach's two nodes need for the run's own curve; the other coach is given the same heat in the same weather. Backward
/// Euler by minutes in both directions, so that an equal coach goes along the run's own curve exactly.
/// </remarks>
internal sealed class OtherStorage
{
    private readonly RunSeries _series;
    private readonly CoachSpecification _coach;
    private readonly double _loss_W_K;
    private readonly double[] _heat_W;
    private readonly double[] _furnishings_K;
    private readonly int _from;

    /// <summary>Finds the heat of each minute.</summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="coach">The coach that was run.</param>
    /// <param name="weather">Weather at the first minute; its loss by kelvin is used for how far the other coach departs.</param>
    /// <param name="clock_s">Clock at that minute. [s]</param>
    /// <param name="from">The first minute, at which the other coach is as warm as the one that was run.</param>
    public OtherStorage(RunSeries series, CoachSpecification coach, in WeatherSample weather, double clock_s, int from)
    {
        (_series, _coach, _from) = (series, coach, from);
        CoachCoupling coupling = new CoachBody(coach).At(weather, clock_s);
        _loss_W_K = coupling.Loss_W_K(series.Inside_K[from] - weather.Air_K) + coupling.Ground_W_K;
        (_heat_W, _furnishings_K) = (new double[series.Count], new double[series.Count]);
        double capacity_W_K = coach.AirCapacity_J_K / RunSeries.Spacing_s, slow_W_K = coach.FurnishingsCapacity_J_K / RunSeries.Spacing_s, h_W_K = coach.Coupling_W_K;
        _furnishings_K[0] = series.Inside_K[0];
        for (int i = 1; i < series.Count; i++)
        {
            double air_K = series.Inside_K[i];
            _furnishings_K[i] = slow_W_K + h_W_K > 0 ? (slow_W_K * _furnishings_K[i - 1] + h_W_K * air_K) / (slow_W_K + h_W_K) : air_K;
            _heat_W[i] = capacity_W_K * (air_K - series.Inside_K[i - 1]) + _loss_W_K * (air_K - series.Outside_K[i]) + h_W_K * (air_K - _furnishings_K[i]);
        }
    }

    /// <summary>How long it is until inside is at a temperature, for a coach of other storage; NaN where it is not before a minute. [s]</summary>
    /// <param name="corner">Factors of stored heat and of the coupling.</param>
    /// <param name="level_K">The temperature. [K]</param>
    /// <param name="last">The last minute looked at.</param>
    public double Until_s((double Storage, double Coupling) corner, double level_K, int last)
    {
        double capacity_W_K = corner.Storage * _coach.AirCapacity_J_K / RunSeries.Spacing_s, slow_W_K = corner.Storage * _coach.FurnishingsCapacity_J_K / RunSeries.Spacing_s;
        double h_W_K = corner.Coupling * _coach.Coupling_W_K, share = slow_W_K + h_W_K > 0 ? h_W_K / (slow_W_K + h_W_K) : 0;
        double air_K = _series.Inside_K[_from], furnishings_K = _furnishings_K[_from];
        if (air_K <= level_K) return 0;
        for (int i = _from + 1; i <= last; i++)
        {
            double before_K = air_K;
            air_K = (capacity_W_K * air_K + _heat_W[i] + _loss_W_K * _series.Outside_K[i] + h_W_K * (1 - share) * furnishings_K)
                / (capacity_W_K + _loss_W_K + h_W_K * (1 - share));
            furnishings_K = (1 - share) * furnishings_K + share * air_K;
            if (air_K <= level_K) return (i - 1 - _from + (before_K - level_K) / (before_K - air_K)) * RunSeries.Spacing_s;
        }

        return double.NaN;
    }
}
