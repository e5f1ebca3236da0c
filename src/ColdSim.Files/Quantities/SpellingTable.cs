using System.Text;
using UnitsNet.Units;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Quantities;

/// <summary>Every unit that may be written, and how. docs/scenario.md shows the same table.</summary>
internal static class SpellingTable
{
    public static IReadOnlyList<UnitSpelling> All { get; } =
    [
        Si(Dimension.Mass, MassUnit.Kilogram, 1, "kg"),
        Si(Dimension.Mass, MassUnit.Gram, 1e-3, "g"),
        Us(Dimension.Mass, MassUnit.Pound, Pound_kg, "lb", "lbs"),
        Us(Dimension.Mass, MassUnit.Ounce, Ounce_kg, "oz"),

        new(Dimension.Temperature, ["°C", "C", "degC"], 1, ZeroCelsius_K, TemperatureUnit.DegreeCelsius, AnyCase: true),
        new(Dimension.Temperature, ["°F", "F", "degF"], FahrenheitDegree_K, ZeroFahrenheit_R, TemperatureUnit.DegreeFahrenheit, AnyCase: true),
        Si(Dimension.Temperature, TemperatureUnit.Kelvin, 1, "K"),

        Si(Dimension.TemperatureDifference, TemperatureDeltaUnit.Kelvin, 1, "K"),
        Us(Dimension.TemperatureDifference, TemperatureDeltaUnit.DegreeCelsius, 1, "°C", "C", "degC"),
        Us(Dimension.TemperatureDifference, TemperatureDeltaUnit.DegreeFahrenheit, FahrenheitDegree_K, "°F", "F", "degF"),

        Si(Dimension.Power, PowerUnit.Watt, 1, "W"),
        Si(Dimension.Power, PowerUnit.Kilowatt, 1e3, "kW"),
        Us(Dimension.Power, PowerUnit.BritishThermalUnitPerHour, BtuPerHour_W, "BTU/h", "BTU/hr"),
        Us(Dimension.Power, PowerUnit.KilobritishThermalUnitPerHour, 1e3 * BtuPerHour_W, "kBTU/h", "kBTU/hr"),

        Si(Dimension.Energy, EnergyUnit.Joule, 1, "J"),
        Si(Dimension.Energy, EnergyUnit.Kilojoule, 1e3, "kJ"),
        Si(Dimension.Energy, EnergyUnit.Megajoule, 1e6, "MJ"),
        Si(Dimension.Energy, EnergyUnit.KilowattHour, KilowattHour_J, "kWh"),
        Us(Dimension.Energy, EnergyUnit.BritishThermalUnit, Btu_J, "BTU"),

        Si(Dimension.Pressure, PressureUnit.Pascal, 1, "Pa"),
        Si(Dimension.Pressure, PressureUnit.Hectopascal, 100, "hPa"),
        Si(Dimension.Pressure, PressureUnit.Kilopascal, 1e3, "kPa"),
        Si(Dimension.Pressure, PressureUnit.Megapascal, 1e6, "MPa"),
        Si(Dimension.Pressure, PressureUnit.Millibar, 100, "mbar"),
        Si(Dimension.Pressure, PressureUnit.Bar, 1e5, "bar"),
        Us(Dimension.Pressure, PressureUnit.PoundForcePerSquareInch, Psi_Pa, "psi", "psig"),
        Us(Dimension.Pressure, PressureUnit.InchOfWaterColumn, InchOfWater_Pa, "inH2O", "in wc", "inWC"),
        Us(Dimension.Pressure, PressureUnit.InchOfMercury, InchOfMercury_Pa, "inHg"),

        Si(Dimension.Length, LengthUnit.Meter, 1, "m"),
        Si(Dimension.Length, LengthUnit.Centimeter, 0.01, "cm"),
        Si(Dimension.Length, LengthUnit.Millimeter, 0.001, "mm"),
        Us(Dimension.Length, LengthUnit.Inch, Inch_m, "in", "\""),
        Us(Dimension.Length, LengthUnit.Foot, Foot_m, "ft", "'"),

        Si(Dimension.Area, AreaUnit.SquareMeter, 1, "m²", "m2"),
        Si(Dimension.Area, AreaUnit.SquareCentimeter, 1e-4, "cm²", "cm2"),
        Us(Dimension.Area, AreaUnit.SquareFoot, Foot_m * Foot_m, "ft²", "ft2", "sqft"),
        Us(Dimension.Area, AreaUnit.SquareInch, Inch_m * Inch_m, "in²", "in2", "sqin"),

        Si(Dimension.Volume, VolumeUnit.CubicMeter, 1, "m³", "m3"),
        Us(Dimension.Volume, VolumeUnit.Liter, Litre_m3, "L"),
        Us(Dimension.Volume, VolumeUnit.UsGallon, Gallon_m3, "gal"),
        Us(Dimension.Volume, VolumeUnit.CubicFoot, Foot_m * Foot_m * Foot_m, "ft³", "ft3", "cuft"),

        Si(Dimension.Speed, SpeedUnit.MeterPerSecond, 1, "m/s"),
        Si(Dimension.Speed, SpeedUnit.KilometerPerHour, KilometrePerHour_m_s, "km/h"),
        Us(Dimension.Speed, SpeedUnit.MilePerHour, MilePerHour_m_s, "mph", "mi/h"),
        Us(Dimension.Speed, SpeedUnit.Knot, Knot_m_s, "kn", "kt"),

        Si(Dimension.Duration, DurationUnit.Second, 1, "s", "sec"),
        Si(Dimension.Duration, DurationUnit.Millisecond, 1e-3, "ms"),
        Si(Dimension.Duration, DurationUnit.Microsecond, 1e-6, "µs", "μs", "us"),
        Si(Dimension.Duration, DurationUnit.Minute, Minute_s, "min"),
        Si(Dimension.Duration, DurationUnit.Hour, Hour_s, "h", "hr"),
        Si(Dimension.Duration, DurationUnit.Day, Day_s, "d", "day", "days"),

        Si(Dimension.Ratio, RatioUnit.Percent, 0.01, "%"),

        Si(Dimension.MassFlow, MassFlowUnit.KilogramPerHour, 1 / Hour_s, "kg/h", "kg/hr"),
        Si(Dimension.MassFlow, MassFlowUnit.GramPerHour, 1e-3 / Hour_s, "g/h", "g/hr"),
        Us(Dimension.MassFlow, MassFlowUnit.PoundPerHour, Pound_kg / Hour_s, "lb/h", "lb/hr"),

        Us(Dimension.VolumeFlow, VolumeFlowUnit.LiterPerMinute, Litre_m3 / Minute_s, "L/min"),
        Us(Dimension.VolumeFlow, VolumeFlowUnit.CubicMeterPerHour, 1 / Hour_s, "m³/h", "m3/h"),
        Us(Dimension.VolumeFlow, VolumeFlowUnit.CubicFootPerMinute, Foot_m * Foot_m * Foot_m / Minute_s, "ft³/min", "ft3/min", "cfm"),
        Us(Dimension.VolumeFlow, VolumeFlowUnit.UsGallonPerMinute, Gallon_m3 / Minute_s, "gal/min", "gpm"),

        Si(Dimension.Conductance, null, 1, "W/K"),
        Us(Dimension.Conductance, null, BtuPerHour_W / FahrenheitDegree_K, "BTU/h·°F", "BTU/(h·°F)", "BTU/h·F"),

        Si(Dimension.HeatCapacity, EntropyUnit.JoulePerKelvin, 1, "J/K"),
        Si(Dimension.HeatCapacity, EntropyUnit.KilojoulePerKelvin, 1e3, "kJ/K"),
        Si(Dimension.HeatCapacity, EntropyUnit.MegajoulePerKelvin, 1e6, "MJ/K"),
        Us(Dimension.HeatCapacity, null, Btu_J / FahrenheitDegree_K, "BTU/°F", "BTU/F"),

        Si(Dimension.HeatTransferCoefficient, HeatTransferCoefficientUnit.WattPerSquareMeterKelvin, 1, "W/m²K", "W/(m²·K)"),
        Us(Dimension.HeatTransferCoefficient, HeatTransferCoefficientUnit.BtuPerHourSquareFootDegreeFahrenheit,
            BtuPerHour_W / (Foot_m * Foot_m) / FahrenheitDegree_K, "BTU/h·ft²·°F", "BTU/(h·ft²·°F)", "BTU/h·ft²·F"),

        Si(Dimension.Conductivity, ThermalConductivityUnit.WattPerMeterKelvin, 1, "W/mK", "W/(m·K)"),
        Us(Dimension.Conductivity, ThermalConductivityUnit.BtuPerHourFootFahrenheit,
            BtuPerHour_W / Foot_m / FahrenheitDegree_K, "BTU/h·ft·°F", "BTU/(h·ft·°F)", "BTU/h·ft·F"),

        Si(Dimension.SpecificHeat, SpecificEntropyUnit.JoulePerKilogramKelvin, 1, "J/kgK", "J/(kg·K)"),
        Si(Dimension.SpecificHeat, SpecificEntropyUnit.KilojoulePerKilogramKelvin, 1e3, "kJ/kgK", "kJ/(kg·K)"),
        Us(Dimension.SpecificHeat, SpecificEntropyUnit.BtuPerPoundFahrenheit, Btu_J / Pound_kg / FahrenheitDegree_K, "BTU/lb·°F", "BTU/(lb·°F)", "BTU/lb·F"),

        Si(Dimension.HeatingValue, SpecificEnergyUnit.MegajoulePerKilogram, 1e6, "MJ/kg"),
        Si(Dimension.HeatingValue, SpecificEnergyUnit.KilojoulePerKilogram, 1e3, "kJ/kg"),
        Si(Dimension.HeatingValue, SpecificEnergyUnit.KilowattHourPerKilogram, KilowattHour_J, "kWh/kg"),
        Us(Dimension.HeatingValue, SpecificEnergyUnit.BtuPerPound, Btu_J / Pound_kg, "BTU/lb"),

        Si(Dimension.Irradiance, IrradianceUnit.WattPerSquareMeter, 1, "W/m²", "W/m2"),
        Us(Dimension.Irradiance, null, BtuPerHour_W / (Foot_m * Foot_m), "BTU/h·ft²", "BTU/(h·ft²)"),

        Si(Dimension.ThermalInsulance, null, 1, "m²K/W", "m2K/W"),
        Us(Dimension.ThermalInsulance, null,
            Foot_m * Foot_m * FahrenheitDegree_K / BtuPerHour_W, "h·ft²·°F/BTU", "h·ft²·F/BTU", "ft²·h·°F/BTU"),

        Si(Dimension.Current, ElectricCurrentUnit.Ampere, 1, "A"),
        Si(Dimension.Current, ElectricCurrentUnit.Milliampere, 1e-3, "mA"),

        Si(Dimension.Charge, ElectricChargeUnit.Coulomb, 1, "C"),
        Si(Dimension.Charge, ElectricChargeUnit.AmpereHour, AmpereHour_C, "Ah"),

        Si(Dimension.Voltage, ElectricPotentialUnit.Volt, 1, "V"),
        Si(Dimension.Voltage, ElectricPotentialUnit.Millivolt, 1e-3, "mV"),

        Si(Dimension.Angle, AngleUnit.Radian, 1, "rad"),
        Us(Dimension.Angle, AngleUnit.Degree, Degree_rad, "°", "deg"),
    ];

    private static readonly Dictionary<string, UnitSpelling> Exact = Index(u => true, s => s);
    private static readonly Dictionary<string, UnitSpelling> Folded = Index(u => u.AnyCase, s => s.ToUpperInvariant());

    /// <summary>The unit of that dimension, or null.</summary>
    public static UnitSpelling? Find(Dimension dimension, string written)
    {
        string plain = Plain(written);
        return Exact.GetValueOrDefault(Key(dimension, plain)) ?? Folded.GetValueOrDefault(Key(dimension, plain.ToUpperInvariant()));
    }

    /// <summary>Whether it is a unit of any dimension at all.</summary>
    public static bool IsUnit(string written) => Enum.GetValues<Dimension>().Any(d => Find(d, written) is not null);

    /// <summary>The first spelling of every unit of a dimension, for messages.</summary>
    public static IEnumerable<string> Accepted(Dimension dimension) => All.Where(u => u.Dimension == dimension).Select(u => u.Spellings[0]);

    /// <summary>Removes what does not matter in a spelling: spaces, brackets, dots between factors, raised figures.</summary>
    private static string Plain(string written)
    {
        StringBuilder plain = new(written.Length);
        foreach (char c in written)
        {
            if (char.IsWhiteSpace(c) || c is '(' or ')' or '·' or '⋅' or '∙' or '*' or '^')
                continue;
            plain.Append(c switch { '²' or '₂' => '2', '³' => '3', 'º' or '˚' => '°', _ => c });
        }
        return plain.ToString();
    }

    private static Dictionary<string, UnitSpelling> Index(Func<UnitSpelling, bool> which, Func<string, string> fold)
    {
        Dictionary<string, UnitSpelling> index = [];
        foreach (UnitSpelling unit in All.Where(which))
        {
            foreach (string spelling in unit.Spellings)
                index[Key(unit.Dimension, fold(Plain(spelling)))] = unit;
        }
        return index;
    }

    private static string Key(Dimension dimension, string plain) => (char)('A' + (int)dimension) + plain;

    private static UnitSpelling Si(Dimension dimension, Enum? unit, double factor, params string[] spellings)
        => new(dimension, spellings, factor, 0, unit, AnyCase: false);

    private static UnitSpelling Us(Dimension dimension, Enum? unit, double factor, params string[] spellings)
        => new(dimension, spellings, factor, 0, unit, AnyCase: true);
}
