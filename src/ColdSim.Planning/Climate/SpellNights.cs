using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>A night of a spell with its wind and sun, from noon to noon.</summary>
/// <param name="Night">The night.</param>
/// <param name="Wind_m_s">Mean wind; null where the record has none. [m/s]</param>
/// <param name="Sun_J_m2">The sun on level ground from noon to noon; null where the record has none. [J/m²]</param>
public sealed record SpellNight(ColdNight Night, double? Wind_m_s, double? Sun_J_m2);

/// <summary>The nights of a spell, row by row.</summary>
internal static class SpellNights
{
    /// <summary>Each night of the rows that is whole.</summary>
    /// <param name="rows">Rows of the spell, from the one at or before its first noon to the one at or after its last.</param>
    /// <param name="clock">The offset of the clock that noon is read from.</param>
    public static IReadOnlyList<SpellNight> Of(IReadOnlyList<WeatherRow> rows, TimeSpan clock)
    {
        List<SpellNight> nights = [];
        foreach (ColdNight night in ColdNights.Of(rows, clock))
        {
            double? wind_m = Integral(rows, night, r => r.Wind_m_s);
            nights.Add(new(night, wind_m / (night.To - night.From).TotalSeconds, Integral(rows, night, r => r.Sun_W_m2)));
        }

        return nights;
    }

    // By straight lines between the rows, cut at both noons; null where a row has no value.
    private static double? Integral(IReadOnlyList<WeatherRow> rows, ColdNight night, Func<WeatherRow, double?> value)
    {
        double sum = 0;
        for (int i = night.FirstRow; i < night.LastRow; i++)
        {
            if (value(rows[i]) is not { } from || value(rows[i + 1]) is not { } to)
                return null;
            DateTimeOffset start = rows[i].Time, end = rows[i + 1].Time;
            DateTimeOffset a = start < night.From ? night.From : start, b = end > night.To ? night.To : end;
            sum += (At(a) + At(b)) / 2 * (b - a).TotalSeconds;
            double At(DateTimeOffset time) => from + ((to - from) * ((time - start) / (end - start)));
        }

        return sum;
    }
}
