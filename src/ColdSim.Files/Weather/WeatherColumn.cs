using ColdSim.Files.Quantities;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Files.Weather;

/// <summary>A column that a weather file may have.</summary>
/// <remarks>There is one object for each, so that a set of them need not hash their names.</remarks>
internal sealed class WeatherColumn
{
    private const double DriestAir_frac = 0.001;

    public static readonly WeatherColumn Air = new("air", ["temperature", "air temperature"], Dimension.Temperature, "air [°C]", "-90 °C", "60 °C");
    public static readonly WeatherColumn Wind = new("wind", ["wind speed"], Dimension.Speed, "wind [m/s]", "0 m/s", "100 m/s");
    public static readonly WeatherColumn Humidity = new("humidity", ["relative humidity"], Dimension.Ratio, "humidity [%]", "0 %", "100 %");
    public static readonly WeatherColumn DewPoint = new("dew point", ["dewpoint"], Dimension.Temperature, "dew point [°C]", "-110 °C", "40 °C");
    public static readonly WeatherColumn Sun = new("sun", ["irradiance", "global irradiance"], Dimension.Irradiance, "sun [W/m²]", "0 W/m²", "1,600 W/m²");
    public static readonly WeatherColumn Cloud = new("cloud", ["cloud cover"], Dimension.Ratio, "cloud [%]", "0 %", "100 %");
    public static readonly WeatherColumn Pressure = new("pressure", ["station pressure"], Dimension.Pressure, "pressure [hPa]", "400 hPa", "1,100 hPa");

    /// <summary>All but the time.</summary>
    public static readonly IReadOnlyList<WeatherColumn> All = [Air, Wind, Humidity, DewPoint, Sun, Cloud, Pressure];

    private (double Low, double High)? _limits;

    private WeatherColumn(string name, string[] aliases, Dimension dimension, string example, string low, string high)
        => (Name, Aliases, Dimension, Example, Low, High) = (name, aliases, dimension, example, low, high);

    /// <summary>Its name in messages and in files that we write.</summary>
    public string Name { get; }

    /// <summary>Other headings for the same.</summary>
    public string[] Aliases { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>Name with the unit we write.</summary>
    public string Example { get; }

    /// <summary>Lowest value accepted, with its unit.</summary>
    public string Low { get; }

    /// <summary>Highest value accepted, with its unit.</summary>
    public string High { get; }

    /// <summary>Every heading that names it.</summary>
    public IEnumerable<string> Headings => [Name, .. Aliases];

    /// <summary>Whether a number a little above 100 % is read as 100 %.</summary>
    public bool CanBeOverFull => Dimension == Dimension.Ratio;

    /// <summary>The limits in SI.</summary>
    public (double Low, double High) Limits => _limits ??= (Si(Low, Dimension), Si(High, Dimension));

    /// <summary>A unit of the column by its spelling; weather files have some that nobody else has, such as tenths of the sky.</summary>
    public UnitSpelling Unit(string unit) => FindUnit(unit) ?? throw new ArgumentException($"'{unit}' is not a unit of {Dimension.Name()}", nameof(unit));

    /// <summary>The same, or null.</summary>
    public UnitSpelling? FindUnit(string unit) => unit switch
    {
        "tenths" when Dimension == Dimension.Ratio => new(Dimension.Ratio, ["tenths"], 0.1, 0, null, false),
        "oktas" when Dimension == Dimension.Ratio => new(Dimension.Ratio, ["oktas"], 0.125, 0, null, false),

        // The energy of one hour.
        "Wh/m²" or "Wh/m2" when Dimension == Dimension.Irradiance => new(Dimension.Irradiance, ["Wh/m²"], 1, 0, null, false),
        "mp/h" when Dimension == Dimension.Speed => SpellingTable.Find(Dimension, "mph"),
        _ => SpellingTable.Find(Dimension, unit),
    };

    /// <summary>Dew point from relative humidity, both over water, as weather services give them below freezing too.</summary>
    public static double DewPoint_K(double air_K, double humidity_frac)
        => MagnusFormula.DewPoint_K(Math.Max(humidity_frac, DriestAir_frac) * MagnusFormula.OverWater_Pa(air_K));

    private static double Si(string text, Dimension dimension)
        => SiText.Read(text, dimension, out double si) is { } fault ? throw new ArgumentException(fault.ToString()) : si;
}
