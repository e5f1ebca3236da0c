using ColdSim.Model;
using ColdSim.Model.Weather;
using ColdSim.Planning.Quick;

namespace ColdSim.Planning.Limits;

/// <summary>The night that every cell of the chart is run through, but for its low.</summary>
/// <remarks>
/// From 16:00 to dawn. Air falls by <see cref="NightShape"/> from a high at 15:00 to the low at 07:00; wind, humidity and cloud are the
/// scenario's weather defaults all night; no sun. Cylinders are as cold as the air at 16:00, the coach at its set point. Its date does not matter.
/// </remarks>
public sealed record StandardNight
{
    private static readonly TimeOnly Noon = new(12, 0);

    private readonly Scenario _scenario;

    /// <summary>The night of a scenario.</summary>
    /// <param name="scenario">Its thermostat, draws, criteria and weather defaults apply.</param>
    public StandardNight(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        _scenario = scenario;
        DateTimeOffset noon = new(scenario.Start.Date + Noon.ToTimeSpan(), scenario.Start.Offset);
        From = noon + (Dusk - Noon);
        To = noon.AddDays(1) - (Noon - Dawn(scenario.Criteria));
        Air = scenario.WeatherDefaults with { Sun_W_m2 = 0 };
    }

    /// <summary>When the night begins.</summary>
    public static TimeOnly Dusk { get; } = new(16, 0);

    /// <summary>First instant.</summary>
    public DateTimeOffset From { get; }

    /// <summary>Last instant.</summary>
    public DateTimeOffset To { get; }

    /// <summary>The afternoon's high above the low. [K]</summary>
    public const double Swing_K = QuickNight.Swing_K;

    /// <summary>Wind, humidity and cloud.</summary>
    public WeatherDefaults Air { get; }

    /// <summary>Air when the night begins. [K]</summary>
    /// <param name="low_K">The low. [K]</param>
    public static double AtDusk_K(double low_K) => NightShape.Air_K(Dusk.ToTimeSpan().TotalHours, low_K, low_K + Swing_K);

    /// <summary>The night with a low, over a rig.</summary>
    /// <param name="rig">With what is in its cylinders.</param>
    /// <param name="low_K">The low. [K]</param>
    public Scenario Over(Rig rig, double low_K)
    {
        ArgumentNullException.ThrowIfNull(rig);
        DateTimeOffset noon = new(From.Date + Noon.ToTimeSpan(), From.Offset);
        WeatherSeries weather = new(NightShape.Rows(noon, low_K, low_K + Swing_K), Air, rig.Site);
        return _scenario with
        {
            Rig = rig,
            Weather = weather,
            Start = From,
            Nights = 1,
            Legs = [new Leg { From = From, To = To, Site = rig.Site, Weather = weather }],
        };
    }

    // The shape has its low at 07:00, so the night lasts until then at least; after noon there is no dawn.
    private static TimeOnly Dawn(NightCriteria criteria)
    {
        TimeOnly low = new(7, 0);
        return criteria.Dawn > low && criteria.Dawn < Noon ? criteria.Dawn : low;
    }
}
