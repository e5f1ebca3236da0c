using System.Globalization;
using ColdSim.Files.Quantities;
using CsCheck;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace ColdSim.Tests.Files;

public class QuantityTextTests
{
    [Theory]
    [InlineData("20 lb", 9.0718474)]
    [InlineData("20lb", 9.0718474)]
    [InlineData("20 lbs", 9.0718474)]
    [InlineData("9 kg", 9)]
    [InlineData("12 oz", 0.3401942775)]
    [InlineData("1,250 g", 1.25)]
    public void Masses_are_read(string text, double kg)
    {
        Assert.True(QuantityText.TryParseMass(text, out Mass mass, out string fault), fault);
        Assert.Equal(kg, mass.Kilograms, 1e-12);
    }

    [Theory]
    [InlineData("-8 °F", -22.222222222222)]
    [InlineData("-8 F", -22.222222222222)]
    [InlineData("-8 degF", -22.222222222222)]
    [InlineData("−8 °F", -22.222222222222)]
    [InlineData("-22 °C", -22)]
    [InlineData("-22 C", -22)]
    [InlineData("-22º C", -22)]
    [InlineData("251.15 K", -22)]
    public void Temperatures_are_read(string text, double celsius)
    {
        Assert.True(QuantityText.TryParseTemperature(text, out Temperature temperature, out string fault), fault);
        Assert.Equal(celsius, temperature.DegreesCelsius, 9);
    }

    [Fact]
    public void A_difference_of_temperatures_has_no_zero_to_shift()
    {
        Assert.True(QuantityText.TryParseTemperatureDelta("1.8 °F", out TemperatureDelta delta, out _));
        Assert.Equal(1, delta.Kelvins, 12);
    }

    [Theory]
    [InlineData(Dimension.Power, "25000 BTU/h", 7326.77675425)]
    [InlineData(Dimension.Power, "25,000 BTU/h", 7326.77675425)]
    [InlineData(Dimension.Power, "25 kbtu/hr", 7326.77675425)]
    [InlineData(Dimension.Power, "7.3 kW", 7300)]
    [InlineData(Dimension.Pressure, "11 inH2O", 2739.97799166)]
    [InlineData(Dimension.Pressure, "11 inH₂O", 2739.97799166)]
    [InlineData(Dimension.Pressure, "11 in wc", 2739.97799166)]
    [InlineData(Dimension.Pressure, "11 inWC", 2739.97799166)]
    [InlineData(Dimension.Pressure, "30 psi", 206842.718795)]
    [InlineData(Dimension.Pressure, "30 PSIG", 206842.718795)]
    [InlineData(Dimension.Pressure, "2 bar", 200_000)]
    [InlineData(Dimension.Pressure, "24.92 inHg", 84388.804916)]
    [InlineData(Dimension.Speed, "10 mph", 4.4704)]
    [InlineData(Dimension.Speed, "36 km/h", 10)]
    [InlineData(Dimension.Speed, "10 kn", 5.14444444444)]
    [InlineData(Dimension.Conductance, "1.9 W/K", 1.9)]
    [InlineData(Dimension.Conductance, "100 BTU/h·°F", 52.7527926)]
    [InlineData(Dimension.Conductance, "100 BTU/(h·°F)", 52.7527926)]
    [InlineData(Dimension.Conductance, "100 Btu/hF", 52.7527926)]
    [InlineData(Dimension.HeatTransferCoefficient, "1.3 W/m2K", 1.3)]
    [InlineData(Dimension.HeatTransferCoefficient, "1.3 W/m²K", 1.3)]
    [InlineData(Dimension.HeatTransferCoefficient, "1.3 W/(m^2*K)", 1.3)]
    [InlineData(Dimension.HeatTransferCoefficient, "1 BTU/h·ft²·°F", 5.6782633)]
    [InlineData(Dimension.Duration, "60 s", 60)]
    [InlineData(Dimension.Duration, "5 min", 300)]
    [InlineData(Dimension.Duration, "2 h", 7200)]
    [InlineData(Dimension.Ratio, "1/3", 1.0 / 3)]
    [InlineData(Dimension.Ratio, "80 %", 0.8)]
    [InlineData(Dimension.Ratio, "0.8", 0.8)]
    [InlineData(Dimension.Volume, "10 gal", 0.03785411784)]
    [InlineData(Dimension.Volume, "21.6 L", 0.0216)]
    [InlineData(Dimension.Length, "12 1/4 in", 0.31115)]
    [InlineData(Dimension.Length, "1/2 in", 0.0127)]
    [InlineData(Dimension.Length, "24 ft", 7.3152)]
    [InlineData(Dimension.Area, "1 sqft", 0.09290304)]
    [InlineData(Dimension.Area, "85 cm²", 0.0085)]
    [InlineData(Dimension.Area, "10 in2", 0.0064516)]
    [InlineData(Dimension.MassFlow, "1 lb/h", 0.000125997881)]
    [InlineData(Dimension.HeatCapacity, "1.4 MJ/K", 1.4e6)]
    [InlineData(Dimension.HeatingValue, "21,591 BTU/lb", 50220666)]
    [InlineData(Dimension.Power, "1.2e3 W", 1200)]
    [InlineData(Dimension.Power, "1,234,567.5 W", 1234567.5)]
    public void Quantities_are_read_into_si(Dimension dimension, string text, double si)
    {
        Assert.Null(SiText.Read(text, dimension, out double value));
        Assert.Equal(si, value, Math.Abs(si) * 1e-8);
    }

    [Theory]
    [InlineData("20", "'20' has no unit; write \"20 lb\" or \"20 kg\"; accepted for mass: kg, g, lb, oz")]
    [InlineData("20 lbx", "unknown unit 'lbx'; accepted for mass: kg, g, lb, oz; did you mean 'lb'?")]
    [InlineData("20 psi", "'psi' is not a unit of mass; accepted for mass: kg, g, lb, oz")]
    [InlineData("12,5 lb", "a decimal comma; write 12.5 lb")]
    [InlineData("0,125 lb", "a decimal comma; write 0.125 lb")]
    [InlineData("12,50,000 lb", "the commas of '12,50,000 lb' are not between groups of three digits before the point; accepted for mass: kg, g, lb, oz")]
    [InlineData("12.5,000 lb", "the commas of '12.5,000 lb' are not between groups of three digits before the point; accepted for mass: kg, g, lb, oz")]
    [InlineData("NaN kg", "'NaN kg' does not begin with a number; accepted for mass: kg, g, lb, oz")]
    [InlineData("∞ kg", "'∞ kg' does not begin with a number; accepted for mass: kg, g, lb, oz")]
    [InlineData("1e999 kg", "'1e999 kg' does not begin with a number; accepted for mass: kg, g, lb, oz")]
    [InlineData("1/0 kg", "'1/0 kg' divides by zero; accepted for mass: kg, g, lb, oz")]
    [InlineData("", "nothing is written; accepted for mass: kg, g, lb, oz")]
    [InlineData("1.2.3 kg", "'1.2.3 kg' does not begin with a number; accepted for mass: kg, g, lb, oz")]
    public void A_bad_mass_is_refused_by_name(string text, string expected)
    {
        Assert.False(QuantityText.TryParseMass(text, out _, out string fault));
        Assert.Equal(expected, fault);
    }

    [Fact]
    public void Capitals_matter_where_they_change_the_meaning()
    {
        QuantityFault? fault = SiText.Read("3 mJ", Dimension.Energy, out _);
        Assert.Equal("unknown unit 'mJ'", fault?.What);
    }

    [Fact]
    public void The_culture_of_the_machine_does_not_matter()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        try
        {
            CultureInfo.CurrentCulture = german;
            Assert.True(QuantityText.TryParseLength("12.25 in", out Length length, out _));
            Assert.Equal(12.25, length.Inches, 12);
            Assert.False(QuantityText.TryParseLength("12,25 in", out _, out _));
            Assert.True(QuantityText.TryParsePower("25,000 BTU/h", out Power power, out _));
            Assert.Equal(25_000, power.BritishThermalUnitsPerHour, 4);
            Assert.Equal("s.toml:1:1: unknown key 'x' at the top level", Fixtures.Faults("x = 1.5\n" + Fixtures.Least)[0].Split(';')[0]);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_factor_agrees_with_the_units_library_to_1e_10()
        => Assert.All(SpellingTable.All, u => Assert.InRange(u.ToSi(1) / InUnitsNet(u), 1 - 1e-10, 1 + 1e-10));

    // What the library rounds or does not have is made up of units that it has in full.
    private static double InUnitsNet(UnitSpelling unit)
    {
        double btu_J = Energy.FromBritishThermalUnits(1).Joules, hour_s = Duration.FromHours(1).Seconds, pound_kg = Mass.FromPounds(1).Kilograms;
        double foot_m = Length.FromFeet(1).Meters, degree_K = TemperatureDelta.FromDegreesFahrenheit(1).Kelvins;
        return (unit.Dimension, unit.Spellings[0]) switch
        {
            (Dimension.MassFlow, "lb/h") => pound_kg / hour_s,
            (Dimension.Conductivity, "BTU/h·ft·°F") => btu_J / hour_s / foot_m / degree_K,
            (Dimension.HeatingValue, "BTU/lb") => btu_J / pound_kg,

            // A column of mercury of conventional density; the library has 25.4 torr.
            (Dimension.Pressure, "inHg") => Length.FromInches(1).Meters * 13_595.1 * Acceleration.FromStandardGravity(1).MetersPerSecondSquared,
            (Dimension.Conductance, "BTU/h·°F") => btu_J / hour_s / degree_K,
            (Dimension.HeatCapacity, "BTU/°F") => btu_J / degree_K,
            (Dimension.Irradiance, "BTU/h·ft²") => btu_J / hour_s / (foot_m * foot_m),
            (Dimension.ThermalInsulance, "h·ft²·°F/BTU") => hour_s * foot_m * foot_m * degree_K / btu_J,
            (Dimension.Conductance or Dimension.ThermalInsulance, _) => 1,
            _ => UnitConverter.Convert(1, unit.UnitsNetUnit!, Si(unit.Dimension)),
        };
    }

    private static Enum Si(Dimension dimension) => dimension switch
    {
        Dimension.Ratio => RatioUnit.DecimalFraction,
        Dimension.MassFlow => MassFlowUnit.KilogramPerSecond,
        Dimension.VolumeFlow => VolumeFlowUnit.CubicMeterPerSecond,
        Dimension.HeatingValue => SpecificEnergyUnit.JoulePerKilogram,
        _ => SpellingTable.All.First(o => o.Dimension == dimension && o.Factor == 1 && o.Offset == 0).UnitsNetUnit!,
    };

    [Fact]
    public void No_spelling_is_claimed_by_two_units_of_a_dimension()
        => Assert.All(SpellingTable.All, u => Assert.All(u.Spellings, s => Assert.Same(u, SpellingTable.Find(u.Dimension, s))));

    [Fact]
    public void Any_text_is_read_or_refused_and_never_throws()
        => Gen.String[Gen.Char["0123456789.,-+eE/ °CFlbkgin%·²−∞"], 0, 12].Sample(text =>
        {
            foreach (Dimension dimension in Enum.GetValues<Dimension>())
                Assert.True(SiText.Read(text, dimension, out double si) is not null || double.IsFinite(si));
        });
}
