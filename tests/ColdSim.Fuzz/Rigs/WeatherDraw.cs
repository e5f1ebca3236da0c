using System.Globalization;
using System.Text;

namespace ColdSim.Fuzz.Rigs;

/// <summary>Draws a weather file: mild or extreme, steady or by leaps, with and without humidity, sun, cloud and pressure.</summary>
internal sealed class WeatherDraw(Random random)
{
    private static readonly int[] Spacings_min = [10, 30, 60, 60, 60, 120, 180];

    public static DateTimeOffset First { get; } = new(2027, 1, 12, 12, 0, 0, TimeSpan.FromHours(-7));

    /// <summary>Its text.</summary>
    /// <param name="days">How long it is.</param>
    public string Of(int days)
    {
        int spacing_min = Spacings_min[random.Next(Spacings_min.Length)], rows = days * 1440 / spacing_min + 1;
        double mean_C = -45 + 65 * random.NextDouble(), swing_K = 15 * random.NextDouble(), leap_K = random.Next(3) == 0 ? 12 : 2;
        double wind_m_s = random.Next(4) == 0 ? 30 : 8;
        bool dew = random.Next(3) > 0, sun = random.Next(3) > 0, cloud = random.Next(3) > 0, pressure = random.Next(4) == 0;
        StringBuilder text = new("time,air [°C],wind [m/s]");
        if (dew) text.Append(",dew point [°C]");
        if (sun) text.Append(",sun [W/m²]");
        if (cloud) text.Append(",cloud [%]");
        if (pressure) text.Append(",pressure [hPa]");
        text.Append('\n');
        for (int i = 0; i < rows; i++)
        {
            DateTimeOffset at = First.AddMinutes(i * spacing_min);
            double air_C = Math.Clamp(mean_C + swing_K * Math.Sin((at.Hour - 9) / 24.0 * 2 * Math.PI) + leap_K * (2 * random.NextDouble() - 1), -60, 45);
            text.Append(at.ToString("yyyy-MM-ddTHH:mmzzz", CultureInfo.InvariantCulture));
            Add(text, air_C);
            Add(text, wind_m_s * random.NextDouble());
            if (dew) Add(text, Math.Max(-75, air_C - 12 * random.NextDouble()));
            if (sun) Add(text, at.Hour is > 7 and < 17 ? 900 * random.NextDouble() : 0);
            if (cloud) Add(text, 100 * random.NextDouble());
            if (pressure) Add(text, 650 + 380 * random.NextDouble());
            text.Append('\n');
        }

        return text.ToString();
    }

    private static void Add(StringBuilder text, double value) => text.Append(CultureInfo.InvariantCulture, $",{value:0.#}");
}
