using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather;

/// <summary>A column that may stand in a weather file.</summary>
/// <param name="Name">As it is called in messages and written by us.</param>
/// <param name="Aliases">Other headings for the same.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Example">Name with the unit we write.</param>
/// <param name="Low">Lowest value accepted, with its unit.</param>
/// <param name="High">Highest value accepted, with its unit.</param>
internal sealed record WeatherColumn(string Name, string[] Aliases, Dimension Dimension, string Example, string Low, string High)
{
    public static readonly WeatherColumn Air = new("air", ["temperature", "air temperature"], Dimension.Temperature, "air [°C]", "-90 °C", "60 °C");
    public static readonly WeatherColumn Wind = new("wind", ["wind speed"], Dimension.Speed, "wind [m/s]", "0 m/s", "100 m/s");
    public static readonly WeatherColumn Humidity = new("humidity", ["relative humidity"], Dimension.Ratio, "humidity [%]", "0 %", "100 %");
    public static readonly WeatherColumn DewPoint = new("dew point", ["dewpoint"], Dimension.Temperature, "dew point [°C]", "-110 °C", "40 °C");
    public static readonly WeatherColumn Sun = new("sun", ["irradiance", "global irradiance"], Dimension.Irradiance, "sun [W/m²]", "0 W/m²", "1,600 W/m²");
    public static readonly WeatherColumn Cloud = new("cloud", ["cloud cover"], Dimension.Ratio, "cloud [%]", "0 %", "100 %");
    public static readonly WeatherColumn Pressure = new("pressure", ["station pressure"], Dimension.Pressure, "pressure [hPa]", "400 hPa", "1,100 hPa");

    /// <summary>All but the time.</summary>
    public static readonly IReadOnlyList<WeatherColumn> All = [Air, Wind, Humidity, DewPoint, Sun, Cloud, Pressure];

    /// <summary>Every heading that names it.</summary>
    public IEnumerable<string> Headings => [Name, .. Aliases];

    /// <summary>The limits in SI.</summary>
    public (double Low, double High) Limits { get; } = (Si(Low, Dimension), Si(High, Dimension));

    private static double Si(string text, Dimension dimension)
        => SiText.Read(text, dimension, out double si) is { } fault ? throw new ArgumentException(fault.ToString()) : si;
}
