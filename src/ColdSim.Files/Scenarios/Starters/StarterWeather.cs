using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Planning.Quick;

namespace ColdSim.Files.Scenarios.Starters;

/// <summary>Weather made up of the nights' lows.</summary>
internal static class StarterWeather
{
    /// <summary>The most nights.</summary>
    public const int MostNights = 14;

    /// <summary>Hourly rows as CSV, from noon before the first night to noon after the last.</summary>
    /// <param name="lows">The lows as they are written, each a temperature with its unit.</param>
    /// <param name="noon">Noon before the first night.</param>
    public static string Of(IReadOnlyList<string> lows, DateTimeOffset noon)
    {
        ArgumentNullException.ThrowIfNull(lows);
        double[] lows_K =
            [.. lows.Select(l => SiText.Read(l, Dimension.Temperature, out double k) is null ? k : throw new ArgumentException(l, nameof(lows)))];
        List<WeatherRow> rows = [];
        for (int h = 0; h <= 24 * lows_K.Length; h++)
        {
            // Until 07:00 the air falls to the night's low, then it rises to the high of the day that follows.
            double clock_h = (12 + h) % 24;
            int night = Math.Min(h / 24, lows_K.Length - 1), next = Math.Min(night + 1, lows_K.Length - 1);
            bool rising = clock_h is > 7 and < 15;
            int low = rising && clock_h < 12 ? night : rising ? Math.Max(0, night - 1) : night;
            int high = rising && clock_h < 12 ? next : night;
            rows.Add(new(noon.AddHours(h), NightShape.Air_K(clock_h, lows_K[low], lows_K[high] + QuickNight.Swing_K)));
        }

        using StringWriter text = new(CultureInfo.InvariantCulture);
        WeatherCsvWriter.Write(
            rows, text, " Made up of the lows that were given, with highs 10 K (18 °F) above them.\n Replace it with a forecast or a record.");
        return text.ToString();
    }
}
