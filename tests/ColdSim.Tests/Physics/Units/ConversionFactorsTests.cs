using System.Reflection;
using System.Text.RegularExpressions;
using ColdSim.Tests.Files;
using UnitsNet;
using Xunit;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Tests.Physics.Units;

public class ConversionFactorsTests
{
    // Conventional, at 0 °C: UnitsNet's own inch of mercury is rounded at its ninth digit.
    private const double MercuryDensity_kg_m3 = 13_595.1;

    private static readonly Dictionary<string, double> UnitsNetHas = new()
    {
        [nameof(Pound_kg)] = Mass.FromPounds(1).Kilograms,
        [nameof(Ounce_kg)] = Mass.FromOunces(1).Kilograms,
        [nameof(Inch_m)] = Length.FromInches(1).Meters,
        [nameof(Foot_m)] = Length.FromFeet(1).Meters,
        [nameof(Gallon_m3)] = Volume.FromUsGallons(1).CubicMeters,
        [nameof(Litre_m3)] = Volume.FromLiters(1).CubicMeters,
        [nameof(MilePerHour_m_s)] = Speed.FromMilesPerHour(1).MetersPerSecond,
        [nameof(KilometrePerHour_m_s)] = Speed.FromKilometersPerHour(1).MetersPerSecond,
        [nameof(Knot_m_s)] = Speed.FromKnots(1).MetersPerSecond,
        [nameof(Psi_Pa)] = Pressure.FromPoundsForcePerSquareInch(1).Pascals,
        [nameof(InchOfWater_Pa)] = Pressure.FromInchesOfWaterColumn(1).Pascals,
        [nameof(InchOfMercury_Pa)] = MercuryDensity_kg_m3 * Acceleration.FromStandardGravity(1).MetersPerSecondSquared * Length.FromInches(1).Meters,
        [nameof(StandardAtmosphere_Pa)] = Pressure.FromAtmospheres(1).Pascals,
        [nameof(Btu_J)] = Energy.FromBritishThermalUnits(1).Joules,
        [nameof(BtuPerHour_W)] = Energy.FromBritishThermalUnits(1).Joules / Duration.FromHours(1).Seconds,
        [nameof(WattHour_J)] = Energy.FromWattHours(1).Joules,
        [nameof(KilowattHour_J)] = Energy.FromKilowattHours(1).Joules,
        [nameof(AmpereHour_C)] = ElectricCharge.FromAmpereHours(1).Coulombs,
        [nameof(Minute_s)] = Duration.FromMinutes(1).Seconds,
        [nameof(Hour_s)] = Duration.FromHours(1).Seconds,
        [nameof(Day_s)] = Duration.FromDays(1).Seconds,
        [nameof(Degree_rad)] = Angle.FromDegrees(1).Radians,
        [nameof(ZeroCelsius_K)] = Temperature.FromDegreesCelsius(0).Kelvins,
        [nameof(FahrenheitDegree_K)] = TemperatureDelta.FromDegreesFahrenheit(1).Kelvins,
        [nameof(ZeroFahrenheit_R)] = Temperature.FromDegreesFahrenheit(0).DegreesRankine,
        [nameof(StandardGravity_m_s2)] = Acceleration.FromStandardGravity(1).MetersPerSecondSquared,
    };

    public static TheoryData<string> Names => [.. Factors.Select(f => f.Name)];

    private static IEnumerable<FieldInfo> Factors
        => typeof(ColdSim.Physics.Units.ConversionFactors).GetFields(BindingFlags.Public | BindingFlags.Static);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_factor_agrees_with_UnitsNet_to_1e_11(string name)
    {
        double ours = (double)Factors.Single(f => f.Name == name).GetRawConstantValue()!;

        Assert.InRange(ours / UnitsNetHas[name], 1 - 1e-11, 1 + 1e-11);
    }

    [Fact]
    public void The_BTU_per_hour_is_exact_where_UnitsNet_rounds_at_the_eleventh_digit()
    {
        double rounded = (double)Power.FromBritishThermalUnitsPerHour(1).Watts;
        Assert.Equal(1055.05585262 / 3600, BtuPerHour_W);
        Assert.NotEqual(BtuPerHour_W, rounded);
        Assert.InRange(BtuPerHour_W / rounded, 1 - 1e-10, 1 + 1e-10);
    }

    [Fact]
    public void No_other_source_file_writes_a_factor_out()
    {
        string[] digits = ["0.45359237", "0.3048", "0.44704", "6894.757", "249.0889", "3386.388", "1055.0558", "0.29307", "3.785411784", "273.15"];
        Regex comment = new("//[^\n]*");
        string[] found =
        [
            .. Directory.EnumerateFiles(DocPage.Source, "*.cs", SearchOption.AllDirectories)
                .Where(f => Path.GetFileName(f) != "ConversionFactors.cs" && !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
                .SelectMany(f => digits.Where(d => comment.Replace(File.ReadAllText(f), "").Contains(d, StringComparison.Ordinal)).Select(d => $"{Path.GetFileName(f)} has {d}")),
        ];
        Assert.Empty(found);
    }
}
