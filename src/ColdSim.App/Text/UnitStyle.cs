using System.Globalization;
using ColdSim.Planning.Actions;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>The units a person reads.</summary>
internal enum UnitSystem
{
    /// <summary>Degrees Fahrenheit, pounds, pounds per square inch, BTU.</summary>
    Us,

    /// <summary>Degrees Celsius, kilograms, millibars, kilowatts.</summary>
    Si,
}

/// <summary>Turns SI numbers into what a person reads, in one unit system; the same words everywhere.</summary>
internal sealed class UnitStyle(UnitSystem system)
{
    private const string BelowAir = "below air";

    public static UnitStyle Us { get; } = new(UnitSystem.Us);

    public static UnitStyle Si { get; } = new(UnitSystem.Si);

    public bool IsUs => system == UnitSystem.Us;

    /// <summary>The amounts that a person with these units can set or buy.</summary>
    public AmountGrid Grid => IsUs ? AmountGrid.Us : AmountGrid.Metric;

    public string TemperatureUnit => IsUs ? "°F" : "°C";

    public string MassUnit => IsUs ? "lb" : "kg";

    public string PressureUnit => IsUs ? "psi" : "mbar";

    public string DeliveryUnit => IsUs ? "inH2O" : "mbar";

    public string PowerUnit => IsUs ? "BTU/h" : "kW";

    public string EnergyUnit => IsUs ? "BTU" : "MJ";

    public string SpeedUnit => IsUs ? "mph" : "m/s";

    public double TemperatureIn(double kelvin) => IsUs ? kelvin * 1.8 - ZeroFahrenheit_R : kelvin - ZeroCelsius_K;

    /// <summary>The temperature of a number that a person reads. [K]</summary>
    public double Kelvin(double temperature) => IsUs ? (temperature + ZeroFahrenheit_R) / 1.8 : temperature + ZeroCelsius_K;

    /// <summary>The mass of a number that a person reads. [kg]</summary>
    public double Kilograms(double mass) => IsUs ? mass * Pound_kg : mass;

    public double DifferenceIn(double kelvin) => IsUs ? kelvin * 1.8 : kelvin;

    public double MassIn(double kg) => IsUs ? kg / Pound_kg : kg;

    public double PressureIn(double pa) => IsUs ? pa / Psi_Pa : pa / 100;

    public double DeliveryIn(double pa) => IsUs ? pa / InchOfWater_Pa : pa / 100;

    public double PowerIn(double watt) => IsUs ? watt / BtuPerHour_W : watt / 1000;

    public double EnergyIn(double joule) => IsUs ? joule / Btu_J : joule / 1e6;

    public double SpeedIn(double m_s) => IsUs ? m_s / MilePerHour_m_s : m_s;

    public string Temperature(double kelvin) => $"{TemperatureNumber(kelvin)} {TemperatureUnit}";

    /// <summary>A temperature for a row that names its unit once.</summary>
    public string TemperatureNumber(double kelvin) => Number(TemperatureIn(kelvin), IsUs ? 0 : 1);

    public string Difference(double kelvin) => $"{Number(DifferenceIn(kelvin), 1)} {TemperatureUnit}";

    /// <summary>A difference of temperature in whole degrees.</summary>
    public string WholeDifference(double kelvin) => $"{Number(DifferenceIn(kelvin), 0)} {TemperatureUnit}";

    /// <summary>A temperature in whole degrees.</summary>
    public string WholeTemperature(double kelvin) => $"{Number(TemperatureIn(kelvin), 0)} {TemperatureUnit}";

    /// <summary>A mass as finely as it is known: whole pounds or half kilograms from ten pounds on, tenths below.</summary>
    public string RoundMass(double kg)
    {
        double mass = MassIn(kg);
        return IsUs ? $"{Number(mass, mass >= 10 ? 0 : 1)} lb"
            : mass >= 5 ? $"{Number(Math.Round(mass * 2) / 2, 1)} kg" : $"{Number(mass, 1)} kg";
    }

    public string Mass(double kg) => $"{MassNumber(kg)} {MassUnit}";

    /// <summary>A mass for a row that names its unit once.</summary>
    public string MassNumber(double kg) => Number(MassIn(kg), IsUs ? 1 : 2);

    public string Pressure(double pa) => $"{PressureNumber(pa)} {PressureUnit}";

    /// <summary>A pressure for a row that names its unit once.</summary>
    public string PressureNumber(double pa) => Number(PressureIn(pa), IsUs ? 1 : 0);

    /// <summary>A gauge pressure for a row that names its unit once: liquid below its boiling point makes less than the air's, which no
    /// cylinder's gauge shows as a number.</summary>
    public string GaugePressureNumber(double pa) => PressureNumber(pa) is var number && number.StartsWith('-') ? BelowAir : number;

    /// <summary>A gauge pressure in a sentence, such as "12.1 psi" or "pressure below air".</summary>
    public string GaugePressure(double pa) => GaugePressureNumber(pa) is var number && number == BelowAir ? $"pressure {BelowAir}"
        : $"{number} {PressureUnit}";

    public string Delivery(double pa) => $"{Number(DeliveryIn(pa), 1)} {DeliveryUnit}";

    public string Power(double watt) => $"{PowerNumber(watt)} {PowerUnit}";

    /// <summary>A power for a row that names its unit once.</summary>
    public string PowerNumber(double watt) => IsUs
        ? Hundreds(PowerIn(watt)).ToString("#,0", CultureInfo.InvariantCulture)
        : Number(PowerIn(watt), 2);

    public string Energy(double joule) => IsUs
        ? $"{(Math.Round(EnergyIn(joule) / 1000) * 1000).ToString("#,0", CultureInfo.InvariantCulture)} {EnergyUnit}"
        : $"{Number(EnergyIn(joule), 0)} {EnergyUnit}";

    public string Height(double m) => IsUs ? $"{(Math.Round(m / Foot_m / 10) * 10).ToString("#,0", CultureInfo.InvariantCulture)} ft" : $"{Number(m, 0)} m";

    public string Speed(double m_s) => $"{Number(SpeedIn(m_s), 0)} {SpeedUnit}";

    /// <summary>A voltage, the same in both systems.</summary>
    public static string Volts(double volts) => $"{Number(volts, 2)} V";

    /// <summary>BTU/h to the next hundred. A plate's 19,250 goes up, whatever the last bit of its conversion and back.</summary>
    public static double Hundreds(double btu_h) => Math.Round(Math.Round(btu_h / 100, 9), MidpointRounding.AwayFromZero) * 100;

    /// <summary>A number with fixed decimals, invariant, without a minus before zero.</summary>
    public static string Number(double value, int decimals)
    {
        string text = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text[1..] : text;
    }
}
