using UnitsNet;

namespace ColdSim.Files.Quantities;

/// <summary>Quantities as people write them, with units of either system; docs/scenario.md lists the units.</summary>
/// <remarks>The culture of the machine never matters. A fault is one sentence that says what was found and what is accepted.</remarks>
internal static class QuantityText
{
    /// <summary>Reads such as "20 lb".</summary>
    public static bool TryParseMass(string text, out Mass value, out string fault)
        => TryParse(text, Dimension.Mass, si => Mass.FromKilograms(si), out value, out fault);

    /// <summary>Reads such as "-8 °F".</summary>
    public static bool TryParseTemperature(string text, out Temperature value, out string fault)
        => TryParse(text, Dimension.Temperature, si => Temperature.FromKelvins(si), out value, out fault);

    /// <summary>Reads such as "2 °F".</summary>
    public static bool TryParseTemperatureDelta(string text, out TemperatureDelta value, out string fault)
        => TryParse(text, Dimension.TemperatureDifference, si => TemperatureDelta.FromKelvins(si), out value, out fault);

    /// <summary>Reads such as "25,000 BTU/h".</summary>
    public static bool TryParsePower(string text, out Power value, out string fault)
        => TryParse(text, Dimension.Power, si => Power.FromWatts(si), out value, out fault);

    /// <summary>Reads such as "11 inH2O".</summary>
    public static bool TryParsePressure(string text, out Pressure value, out string fault)
        => TryParse(text, Dimension.Pressure, si => Pressure.FromPascals(si), out value, out fault);

    /// <summary>Reads such as "12 1/4 in".</summary>
    public static bool TryParseLength(string text, out Length value, out string fault)
        => TryParse(text, Dimension.Length, si => Length.FromMeters(si), out value, out fault);

    /// <summary>Reads such as "10 gal".</summary>
    public static bool TryParseVolume(string text, out Volume value, out string fault)
        => TryParse(text, Dimension.Volume, si => Volume.FromCubicMeters(si), out value, out fault);

    /// <summary>Reads such as "12 mph".</summary>
    public static bool TryParseSpeed(string text, out Speed value, out string fault)
        => TryParse(text, Dimension.Speed, si => Speed.FromMetersPerSecond(si), out value, out fault);

    /// <summary>Reads such as "5 min".</summary>
    public static bool TryParseDuration(string text, out Duration value, out string fault)
        => TryParse(text, Dimension.Duration, si => Duration.FromSeconds(si), out value, out fault);

    /// <summary>Reads such as "80 %".</summary>
    public static bool TryParseRatio(string text, out Ratio value, out string fault)
        => TryParse(text, Dimension.Ratio, si => Ratio.FromDecimalFractions(si), out value, out fault);

    private static bool TryParse<T>(string text, Dimension dimension, Func<double, T> make, out T value, out string fault)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(text);
        QuantityFault? wrong = SiText.Read(text, dimension, out double si);
        value = wrong is null ? make(si) : default;
        fault = wrong?.ToString() ?? "";
        return wrong is null;
    }
}
