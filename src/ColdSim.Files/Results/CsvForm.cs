using System.Globalization;
using UnitsNet;
using UnitsNet.Units;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Results;

/// <summary>How a CSV is written: in whose units, and for which kind of spreadsheet.</summary>
/// <param name="IsUs">US units, metric ones otherwise.</param>
/// <param name="Separator">What parts the fields; with a semicolon goes the decimal comma, as in the spreadsheets of much of Europe.</param>
public sealed record CsvForm(bool IsUs, char Separator = CsvForm.Comma)
{
    private const char Comma = ',', Semicolon = ';';

    /// <summary>Metric units, fields parted by commas.</summary>
    public static CsvForm Metric { get; } = new(IsUs: false);

    /// <summary>The heading of the column beside the first time of a row.</summary>
    internal const string OffsetHeading = "UTC offset";

    /// <summary>Every form that is written, to know a file by its headings.</summary>
    internal static IReadOnlyList<CsvForm> All { get; } = [Metric, new(true), new(false, Semicolon), new(true, Semicolon)];

    /// <summary>A number with fixed decimals; empty where it is not finite. Rounded first, so that a hair below zero gets no minus.</summary>
    internal string Number(double value, int digits)
    {
        if (!double.IsFinite(value))
            return "";
        string text = (Math.Round(value, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Separator == Comma ? text : text.Replace('.', ',');
    }

    /// <summary>A time by its own clock, as a spreadsheet reads it.</summary>
    internal static string Time(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);

    /// <summary>The offset of a clock from UTC, such as "-07:00".</summary>
    internal static string Offset(DateTimeOffset time) => time.ToString("zzz", CultureInfo.InvariantCulture);

    /// <summary>The unit's symbol in a heading.</summary>
    internal string Symbol(Enum unit) => unit switch
    {
        MassUnit.Kilogram => IsUs ? "lb" : "kg",
        TemperatureUnit.DegreeCelsius => IsUs ? "°F" : "°C",
        TemperatureDeltaUnit.Kelvin => IsUs ? "°F" : "K",
        PowerUnit.Watt => IsUs ? "BTU/h" : "kW",
        EnergyUnit.WattHour => "Wh",
        EnergyUnit.Megajoule => IsUs ? "BTU" : "MJ",
        DurationUnit.Minute => "min",
        DurationUnit.Hour => "h",
        RatioUnit.Percent => "%",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "no symbol"),
    };

    /// <summary>A quantity in the unit of its heading.</summary>
    internal string Cell(IQuantity quantity, Enum unit, int digits)
    {
        double value = quantity.As(unit);
        return unit switch
        {
            MassUnit.Kilogram when IsUs => Number(value / Pound_kg, digits),
            TemperatureUnit.DegreeCelsius when IsUs => Number(value * 1.8 + 32, digits),
            TemperatureDeltaUnit.Kelvin when IsUs => Number(value * 1.8, digits),
            PowerUnit.Watt => IsUs ? Number(value / BtuPerHour_W, digits) : Number(value / 1000, digits + 3),
            EnergyUnit.Megajoule when IsUs => Number(value * 1e6 / Btu_J, 0),
            _ => Number(value, digits),
        };
    }
}
