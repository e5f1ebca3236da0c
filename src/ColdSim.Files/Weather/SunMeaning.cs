using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>What an irradiance beside a time stands for.</summary>
public enum SunMeaning
{
    /// <summary>The irradiance at that instant.</summary>
    Instant,

    /// <summary>The mean of the hour that ends then.</summary>
    HourBefore,

    /// <summary>The mean of the hour that begins then.</summary>
    HourAfter,
}

/// <summary>Turns means over hours into values at the stamps, so that straight lines between them carry the same energy.</summary>
internal static class SunAtStamps
{
    /// <summary>The value at a stamp is the mean of the hours on its two sides.</summary>
    public static void Apply(List<WeatherRow> rows, SunMeaning meaning)
    {
        if (meaning == SunMeaning.Instant)
            return;
        double? before = null;
        for (int i = 0; i < rows.Count; i++)
        {
            double? own = rows[i].Sun_W_m2;
            double? other = meaning == SunMeaning.HourAfter ? before
                : i + 1 < rows.Count && rows[i + 1].Time - rows[i].Time <= WeatherGaps.Longest ? rows[i + 1].Sun_W_m2 : null;
            if (own is { } a && other is { } b)
                rows[i] = rows[i] with { Sun_W_m2 = (a + b) / 2 };
            before = own;
        }
    }
}
