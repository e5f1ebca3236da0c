using ColdSim.Model.Weather;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>How much colder and windier a weather is taken than its file or its days have it.</summary>
/// <param name="Colder_K">Taken off air and dew point. [K]</param>
/// <param name="WindFactor">What wind is multiplied by.</param>
internal readonly record struct WeatherOffset(double Colder_K, double WindFactor)
{
    // No weather is colder, warmer or windier.
    private const double Coldest_K = 190, Warmest_K = 330, Windiest_m_s = 60;

    /// <summary>As the file has it.</summary>
    public static WeatherOffset None { get; } = new(0, 1);

    /// <summary>Reads it.</summary>
    /// <param name="section"><c>[weather]</c>.</param>
    public static WeatherOffset Read(SectionReader section) => new(section.GetOrDefault(WeatherKeys.Colder), section.Get(WeatherKeys.WindFactor) ?? 1);

    /// <summary>Whether a table says nothing else of the weather.</summary>
    /// <param name="section"><c>[weather]</c>.</param>
    public static bool IsAllOf(SectionReader section)
        => WeatherKeys.Declared.Keys.All(k => !section.Has(k) || k == WeatherKeys.Colder || k == WeatherKeys.WindFactor) && !section.Has(WeatherDaysSection.Declared);

    /// <summary>Both together.</summary>
    public WeatherOffset With(WeatherOffset other) => new(Colder_K + other.Colder_K, WindFactor * other.WindFactor);

    /// <summary>The rows with it; what is done is named among the assumptions.</summary>
    public IReadOnlyList<WeatherRow> Apply(IReadOnlyList<WeatherRow> rows, Reading reading)
    {
        if (this == None || rows.Count == 0)
            return rows;
        if (Colder_K != 0)
            reading.Assume($"weather: {Math.Abs(Colder_K):0.#} K {(Colder_K > 0 ? "colder" : "warmer")} than it is given, as 'colder' says");
        if (WindFactor != 1)
            reading.Assume($"weather: {WindFactor:0.##} times the wind that is given, as 'wind_factor' says");
        WeatherRow[] shifted = new WeatherRow[rows.Count];
        for (int i = 0; i < shifted.Length; i++)
        {
            WeatherRow row = rows[i];
            double air_K = Math.Clamp(row.Air_K - Colder_K, Coldest_K, Warmest_K);
            shifted[i] = row with
            {
                Air_K = air_K,
                DewPoint_K = row.DewPoint_K is { } dew_K ? Math.Max(dew_K + air_K - row.Air_K, Coldest_K) : null,
                Wind_m_s = row.Wind_m_s is { } wind_m_s ? Math.Min(wind_m_s * WindFactor, Windiest_m_s) : null,
            };
        }

        return shifted;
    }

    /// <summary>The assumed values with it.</summary>
    public WeatherDefaults Apply(WeatherDefaults defaults) => this == None ? defaults : defaults with { Wind_m_s = Math.Min(defaults.Wind_m_s * WindFactor, Windiest_m_s) };
}
