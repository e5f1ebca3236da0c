using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather;

/// <summary>What a heading of an unknown table is likely to mean, by the words in it.</summary>
internal static class HeadingWords
{
    private static readonly (WeatherColumn Column, string[] Parts, string[] Words, string[] Not)[] Meanings =
    [
        (WeatherColumn.DewPoint, ["dew", "taupunkt", "point de ros"], ["td", "dwpt", "dp"], ["flag", "source", "depression"]),
        (WeatherColumn.Humidity, ["humid", "feuchte"], ["rh", "rhum", "hum"], ["flag", "source", "in", "inside", "indoor", "soil", "absolute", "specific"]),
        (WeatherColumn.Wind, ["wind"], ["ws", "wspd", "ff", "wsp"], ["dir", "direction", "richtung", "gust", "chill", "run", "max", "peak", "flag", "source"]),
        (WeatherColumn.Sun, ["solar", "radiation", "irrad", "global", "strahlung", "pyran"], ["ghi", "srad", "sun"], ["uv", "dni", "dhi", "diffuse", "net", "long", "flag", "source", "azimuth", "elevation"]),
        (WeatherColumn.Cloud, ["cloud", "bewölkung", "sky cover"], [], ["type", "base", "height", "flag", "source"]),
        (WeatherColumn.Pressure, ["pres", "baro", "luftdruck"], [], ["sea", "msl", "slp", "altimeter", "vapor", "vapour", "tendency", "flag", "source"]),
        (WeatherColumn.Air, ["temp", "drybulb", "dry bulb", "dry-bulb"], ["air", "t", "ta", "tair", "t2m", "tdry", "tt"],
            ["dew", "wet", "soil", "ground", "water", "in", "inside", "indoor", "room", "feels", "apparent", "chill", "heat", "index", "max", "min", "high", "low", "battery", "panel", "surface", "flag", "source"]),
    ];

    private static readonly (string Written, string Unit)[] Spellings =
    [
        ("celsius", "°C"), ("fahrenheit", "°F"), ("deg c", "°C"), ("deg f", "°F"), ("kmh", "km/h"), ("kph", "km/h"), ("ms", "m/s"), ("kt", "kn"), ("kts", "kn"), ("knots", "kn"), ("pct", "%"),
        ("percent", "%"), ("wm2", "W/m²"), ("w/m^2", "W/m²"), ("mb", "mbar"), ("millibars", "mbar"),
    ];

    /// <summary>The column that a heading is likely to name; null for none that we use.</summary>
    public static WeatherColumn? Meaning(string heading)
    {
        string[] words = Words(heading);
        string all = string.Join(' ', words);
        foreach ((WeatherColumn column, string[] parts, string[] whole, string[] not) in Meanings)
        {
            bool named = Array.Exists(parts, p => all.Contains(p, StringComparison.Ordinal)) || Array.Exists(whole, w => Array.IndexOf(words, w) >= 0);
            if (named && !Array.Exists(not, w => Array.Exists(words, word => w.Length > 3 ? word.Contains(w, StringComparison.Ordinal) : word == w)))
                return column;
        }

        return null;
    }

    /// <summary>The unit that a text names for a column, as we spell it; null where it names none.</summary>
    /// <param name="column">The column.</param>
    /// <param name="text">A heading, or a cell in a line of units.</param>
    public static string? Unit(WeatherColumn column, string text)
    {
        IEnumerable<string> candidates = [text, .. text.Split([' ', '_', ',', '(', ')', '[', ']'], StringSplitOptions.RemoveEmptyEntries).Reverse().Take(2)];
        foreach (string candidate in candidates)
        {
            string plain = candidate.Trim();
            foreach ((string written, string unit) in Spellings)
            {
                if (string.Equals(written, plain, StringComparison.OrdinalIgnoreCase))
                    plain = unit;
            }

            if (plain.Length > 0 && column.FindUnit(plain) is { } known)
                return known.Spellings[0];
        }

        return null;
    }

    /// <summary>The unit that is usual, by the size of the numbers where that decides.</summary>
    public static string Usual(WeatherColumn column, IReadOnlyList<double> numbers)
    {
        double most = numbers.Count == 0 ? double.NaN : numbers.Max();
        if (column.Dimension == Dimension.Temperature)
            return most > 50 ? "°F" : "°C";
        if (column == WeatherColumn.Pressure)
            return most > 20_000 ? "Pa" : most > 200 ? "hPa" : most > 40 ? "kPa" : "inHg";
        return column == WeatherColumn.Wind ? "m/s" : column == WeatherColumn.Sun ? "W/m²" : "%";
    }

    /// <summary>The words of a heading, without what is in brackets, in small letters.</summary>
    public static string[] Words(string heading)
    {
        int open = heading.IndexOfAny(['[', '(']);
        string text = (open > 0 ? heading[..open] : heading).ToLowerInvariant();
        return text.Split([' ', '_', '-', '.', '/', ',', ':', '(', ')', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
    }
}
