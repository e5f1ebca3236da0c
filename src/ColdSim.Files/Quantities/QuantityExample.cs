using System.Globalization;

namespace ColdSim.Files.Quantities;

/// <summary>Quantities such as somebody would write, for messages and pages.</summary>
internal static class QuantityExample
{
    // Units that a bare number may have been meant in, and between which numbers that is likely.
    private static readonly (Dimension Dimension, string Unit, double Low, double High)[] Likely =
    [
        (Dimension.Mass, "lb", 1, 500), (Dimension.Mass, "kg", 0.5, 200),
        (Dimension.Temperature, "°F", -80, 130), (Dimension.Temperature, "°C", -60, 50),
        (Dimension.TemperatureDifference, "°F", 0, 40), (Dimension.TemperatureDifference, "K", 0, 20),
        (Dimension.Power, "BTU/h", 1000, 300_000), (Dimension.Power, "kW", 0.3, 60), (Dimension.Power, "W", 61, 999),
        (Dimension.Pressure, "inH2O", 4, 15), (Dimension.Pressure, "mbar", 20, 150), (Dimension.Pressure, "psi", 16, 400),
        (Dimension.Pressure, "bar", 0.1, 3.9),
        (Dimension.Length, "ft", 3, 70), (Dimension.Length, "m", 1, 20), (Dimension.Length, "in", 3, 60), (Dimension.Length, "mm", 100, 5000),
        (Dimension.Volume, "gal", 1, 200), (Dimension.Volume, "L", 1, 800),
        (Dimension.Speed, "mph", 0, 150), (Dimension.Speed, "m/s", 0, 50),
        (Dimension.Duration, "min", 1, 600), (Dimension.Duration, "h", 0.1, 72),
        (Dimension.Current, "A", 0, 2000), (Dimension.Charge, "Ah", 1, 5000), (Dimension.Voltage, "V", 1, 100),
    ];

    /// <summary>An example of a dimension.</summary>
    public static string Of(Dimension dimension) => dimension switch
    {
        Dimension.Mass => "20 lb",
        Dimension.Temperature => "20 °C",
        Dimension.TemperatureDifference => "2 °F",
        Dimension.Power => "25,000 BTU/h",
        Dimension.Energy => "3 kWh",
        Dimension.Pressure => "11 inH2O",
        Dimension.Length => "24 ft",
        Dimension.Area => "32 m²",
        Dimension.Volume => "6 gal",
        Dimension.Speed => "5 mph",
        Dimension.Duration => "5 min",
        Dimension.Ratio => "80 %",
        Dimension.MassFlow => "0.1 lb/h",
        Dimension.VolumeFlow => "1 gal/min",
        Dimension.Conductance => "110 W/K",
        Dimension.HeatCapacity => "60 kJ/K",
        Dimension.HeatTransferCoefficient => "1.3 W/m²K",
        Dimension.Conductivity => "0.4 W/mK",
        Dimension.SpecificHeat => "460 J/kgK",
        Dimension.HeatingValue => "50.33 MJ/kg",
        Dimension.Irradiance => "400 W/m²",
        Dimension.ThermalInsulance => "0.25 m²K/W",
        Dimension.Current => "5 A",
        Dimension.Charge => "200 Ah",
        Dimension.Voltage => "12.4 V",
        Dimension.Angle => "45 °",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension)),
    };

    /// <summary>A number that was written without its unit, with the units that may have been meant: <c>"62 °F" or "62 °C"</c>.</summary>
    /// <param name="dimension">What it measures.</param>
    /// <param name="number">The number as it was written.</param>
    /// <param name="value">The number.</param>
    /// <param name="fits">Whether a value in SI units is accepted.</param>
    /// <param name="otherwise">What is shown where the number fits no unit.</param>
    public static string WithUnit(Dimension dimension, string number, double value, Func<double, bool> fits, string otherwise)
    {
        List<string> texts = [];
        foreach ((Dimension of, string unit, double low, double high) in Likely)
        {
            if (of == dimension && value >= low && value <= high && fits(SpellingTable.Find(of, unit)!.ToSi(value)))
                texts.Add($"\"{Quote.Of(number)} {unit}\"");
        }

        return texts.Count == 0 ? $"it with its unit, such as \"{otherwise}\"" : string.Join(" or ", texts);
    }

    /// <summary>The same for a number of a TOML file.</summary>
    public static string WithUnit(Dimension dimension, double value, Func<double, bool> fits, string otherwise)
        => WithUnit(dimension, value.ToString(CultureInfo.InvariantCulture), value, fits, otherwise);
}
