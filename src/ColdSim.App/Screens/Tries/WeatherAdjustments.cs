using System.Globalization;

namespace ColdSim.App.Screens.Tries;

/// <summary>The weather: how low the night falls, and the wind.</summary>
internal static class WeatherAdjustments
{
    private const string ColderKey = "weather.colder", WindKey = "weather.wind_factor";
    private const double Most_K = 30;

    /// <summary>All of them; a low is that of the night that is looked at, and all weather moves with it.</summary>
    public static IEnumerable<Adjustment> Of() =>
    [
        new("low", "low of the night")
        {
            AsItIs = Colder_K,
            Show = (colder_K, p) => $"{p.Units.WholeTemperature(Low_K(p) - colder_K)}",
            Grid = p => new(
                Math.Ceiling(p.Units.TemperatureIn(Low_K(p) - Most_K)), Math.Floor(p.Units.TemperatureIn(Low_K(p) + Most_K)), 1,
                colder_K => p.Units.TemperatureIn(Low_K(p) - colder_K), shown => Low_K(p) - p.Units.Kelvin(shown)),
            Changes = (colder_K, _) => [new(ColderKey, $"\"{Number(colder_K)} K\"")],
        },
        new("wind", "wind")
        {
            AsItIs = p => Mean_m_s(p) > 0.05 ? Factor(p) : null,
            Show = (factor, p) => p.Units.Speed(factor * Mean_m_s(p)),
            Grid = p => new(0, Math.Floor(p.Units.SpeedIn(5 * Mean_m_s(p))), 1, factor => p.Units.SpeedIn(factor * Mean_m_s(p)), shown => shown / p.Units.SpeedIn(Mean_m_s(p))),
            Changes = (factor, _) => [new(WindKey, Number(factor))],
            WhyOff = _ => "calm",
            IsEasierHigh = false,
        },
    ];

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static double? Colder_K(TryPlace place) => place.Written(ColderKey) ?? 0;

    private static double Factor(TryPlace place) => place.Written(WindKey) ?? 1;

    // The night's low without what the file takes off.
    private static double Low_K(TryPlace place) => place.AsItIs.Nights[Math.Min(place.Night, place.AsItIs.Nights.Count - 1)].OutsideLow.Kelvins + (Colder_K(place) ?? 0);

    private static double Mean_m_s(TryPlace place)
    {
        Drawing.MinuteRange span = Drawing.MinuteRange.Of(place.AsItIs, Math.Min(place.Night, place.AsItIs.Nights.Count - 1));
        double sum = 0;
        for (int i = span.From; i < span.To; i++)
            sum += place.AsItIs.Series.Wind_m_s[i];
        return Factor(place) > 0 ? sum / span.Length / Factor(place) : 0;
    }
}
