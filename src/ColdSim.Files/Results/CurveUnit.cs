using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Results;

/// <summary>What a curve of a run measures, with its unit and decimals in either system.</summary>
/// <param name="Si">The metric unit's symbol.</param>
/// <param name="SiDigits">Decimals in it.</param>
/// <param name="InSi">The value in it, from SI.</param>
/// <param name="Us">The US unit's symbol.</param>
/// <param name="UsDigits">Decimals in it.</param>
/// <param name="InUs">The value in it, from SI.</param>
internal sealed record CurveUnit(string Si, int SiDigits, Func<double, double> InSi, string Us, int UsDigits, Func<double, double> InUs)
{
    /// <summary>From K.</summary>
    public static CurveUnit Temperature { get; } = new("°C", 2, k => k - ZeroCelsius_K, "°F", 2, k => k * 1.8 - ZeroFahrenheit_R);

    /// <summary>From m/s.</summary>
    public static CurveUnit Speed { get; } = new("m/s", 2, v => v, "mph", 2, v => v / MilePerHour_m_s);

    /// <summary>From kg.</summary>
    public static CurveUnit Mass { get; } = new("kg", 5, m => m, "lb", 5, m => m / Pound_kg);

    /// <summary>From Pa, before the regulator.</summary>
    public static CurveUnit CylinderPressure { get; } = new("mbar gauge", 2, p => p / 100, "psi gauge", 4, p => p / Psi_Pa);

    /// <summary>From Pa, behind the regulator.</summary>
    public static CurveUnit DeliveryPressure { get; } = new("mbar gauge", 3, p => p / 100, "inH2O gauge", 4, p => p / InchOfWater_Pa);

    /// <summary>From W of gas or heat.</summary>
    public static CurveUnit Heat { get; } = new("kW", 4, w => w / 1000, "BTU/h", 1, w => w / BtuPerHour_W);

    /// <summary>From W of electricity, which both systems have in watts.</summary>
    public static CurveUnit Electric { get; } = new("W", 1, w => w, "W", 1, w => w);

    /// <summary>From a part of one.</summary>
    public static CurveUnit Percent { get; } = new("%", 2, f => f * 100, "%", 2, f => f * 100);

    /// <summary>A whole number, without a unit.</summary>
    public static CurveUnit Count { get; } = new("", 0, n => n, "", 0, n => n);

    /// <summary>The heading of a curve.</summary>
    public string Heading(string name, bool us) => Si.Length == 0 ? name : $"{name} [{(us ? Us : Si)}]";

    /// <summary>A value as it is written.</summary>
    public string Cell(double si, CsvForm form) => form.Number(form.IsUs ? InUs(si) : InSi(si), form.IsUs ? UsDigits : SiDigits);
}
