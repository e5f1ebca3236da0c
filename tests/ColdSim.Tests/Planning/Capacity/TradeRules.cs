using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using ColdSim.Tests.Model.Cylinder;

namespace ColdSim.Tests.Planning.Capacity;

/// <summary>The printed capacities that docs/model-checks.md shows beside the model's.</summary>
internal static class TradeRules
{
    public const string Handbook = "LP-gas installation guide 2011", Motorhome = "Motorhome owner manual, winter use of LP gas", Heater = "Agricultural heater manual";

    private const double Steel_kg_m3 = 7850, Hour_s = 3600;

    /// <summary>Air temperatures of the table for the 100 lb upright. [°F]</summary>
    public static IReadOnlyList<double> TableAir_F { get; } = [0, 20, 40, 60, 70];

    /// <summary>Pounds in the cylinder, then Btu/h at those air temperatures, as printed.</summary>
    public static IReadOnlyList<int[]> Table { get; } =
    [
        [100, 113_000, 167_000, 214_000, 277_000, 300_000],
        [90, 104_000, 152_000, 200_000, 247_000, 277_000],
        [80, 94_000, 137_000, 180_000, 214_000, 236_000],
        [70, 83_000, 122_000, 160_000, 199_000, 214_000],
        [60, 75_000, 109_000, 140_000, 176_000, 192_000],
        [50, 64_000, 94_000, 125_000, 154_000, 167_000],
        [40, 55_000, 79_000, 105_000, 131_000, 141_000],
        [30, 45_000, 66_000, 85_000, 107_000, 118_000],
        [20, 36_000, 51_000, 68_000, 83_000, 92_000],
        [10, 28_000, 38_000, 49_000, 60_000, 66_000],
    ];

    /// <summary>A cell of that table. It lets the liquid fall to its boiling point in air.</summary>
    public static TradeRule Upright(double mass_lb, double air_F, double printed_Btu_h) => new(
        "100 lb upright", $"{mass_lb:0} lb, {air_F:0} °F", printed_Btu_h * ConversionFactors.BtuPerHour_W,
        Some.Cylinder("100 lb") with { Contents_kg = mass_lb * ConversionFactors.Pound_kg }, TradeRule.Fahrenheit(air_F), ReferenceEquation.NormalBoilingPoint_K);

    /// <summary>A tank of diameter and overall length at 0 °F: diameter × length × K for its fill.</summary>
    public static TradeRule ByDiameterAndLength(double full_frac, double k) => Tank(
        "diameter × length × K", $"24 by 68 in, {full_frac * 100:0} % full, K {k:0}", 24 * 68 * k * ConversionFactors.BtuPerHour_W,
        TankVolume_m3(24, 68), 24 * ConversionFactors.Inch_m, full_frac, TradeRule.Fahrenheit(0), TradeRule.Fahrenheit(-20));

    /// <summary>The frame tank of a motorhome's manual, 84 lb; its diameter is assumed.</summary>
    public static TradeRule FrameTank(double full_frac, double air_F, double printed_Btu_h) => Tank(
        "motorhome's manual", $"84 lb tank, {full_frac * 100:0} % full, {air_F:0} °F", printed_Btu_h * ConversionFactors.BtuPerHour_W,
        84 * ConversionFactors.Pound_kg / 420, 14 * ConversionFactors.Inch_m, full_frac, TradeRule.Fahrenheit(air_F), TradeRule.Fahrenheit(-20));

    /// <summary>Rules that say which liquid they allow, -20 °F; the first and the last two by assumption.</summary>
    public static IReadOnlyList<TradeRule> ToMinus20F { get; } =
    [
        new("working rule", "100 lb upright, full, 0 °F", 50_000 * ConversionFactors.BtuPerHour_W, Some.Cylinder("100 lb"), TradeRule.Fahrenheit(0), TradeRule.Fahrenheit(-20)),
        .. new[] { (0.6, 100.0), (0.5, 90), (0.4, 80), (0.3, 70), (0.2, 60), (0.1, 45) }.Select(r => ByDiameterAndLength(r.Item1, r.Item2)),
        FrameTank(0.8, 0, 64_000), FrameTank(0.5, 0, 50_400), FrameTank(0.2, 0, 33_000),
        Tank("heater's manual", "1,000 gal, 30 % full, -10 °F", 276_500 * ConversionFactors.BtuPerHour_W, 1000 * ConversionFactors.Gallon_m3, 41 * ConversionFactors.Inch_m, 0.3,
            TradeRule.Fahrenheit(-10), TradeRule.Fahrenheit(-20)),
    ];

    /// <summary>Rules that say nothing of the liquid; where they say nothing of fill and air, 30 % and -10 °C are assumed.</summary>
    public static IReadOnlyList<TradeRule> WithoutLiquid { get; } =
    [
        Bottle("German association, continuous", "5 kg", 0.2, -10), Bottle("", "11 kg", 0.3, -10), Bottle("", "33 kg", 0.6, -10),
        Bottle("German association, half the time", "5 kg", 0.5, -10), Bottle("", "11 kg", 0.8, -10), Bottle("", "33 kg", 1.8, -10),
        Metric("German burner maker", "990 L", 0.99, 0.8, 1.6, -15), Metric("", "3,000 L", 3, 1.25, 2.5, -15), Metric("", "5,000 L", 5, 1.25, 4, -15),
        Metric("", "990 L", 0.99, 0.8, 2.5, -10), Metric("", "3,000 L", 3, 1.25, 4.5, -10), Metric("", "5,000 L", 5, 1.25, 6.5, -10),
        Japanese(10, 24, 0.309, 8.5, 0.27), Japanese(20, 47, 0.319, 16, 0.54), Japanese(50, 118, 0.366, 35, 1.35),
        Gallons(115, 24, 10), Gallons(250, 30, 0), Gallons(250, 30, -10), Gallons(400, 37, -20), Gallons(600, 41, -30),
    ];

    /// <summary>The German association's bursts of 20 minutes: size and kg/h.</summary>
    public static IReadOnlyList<TradeRule> Bursts { get; } = [Bottle("", "5 kg", 1, -10, 0.5), Bottle("", "11 kg", 1.5, -10, 0.5), Bottle("", "33 kg", 3, -10, 0.5)];

    private static double Kilogram_W(double kg_h) => kg_h / Hour_s * TradeRule.HeatingValue_J_kg;

    private static TradeRule Bottle(string name, string size, double kg_h, double air_C, double fill_frac = 0.3)
    {
        CylinderSpecification full = Some.Cylinder(size);
        return new(name, FormattableString.Invariant($"{size} at {air_C:0} °C"), Kilogram_W(kg_h), full with { Contents_kg = fill_frac * full.LegalFill_kg }, air_C + ConversionFactors.ZeroCelsius_K, double.NaN);
    }

    private static TradeRule Metric(string name, string size, double volume_m3, double diameter_m, double kg_h, double air_C)
        => Tank(name, FormattableString.Invariant($"{size} at {air_C:0} °C"), Kilogram_W(kg_h), volume_m3, diameter_m, 0.3, air_C + ConversionFactors.ZeroCelsius_K, double.NaN, fin: true);

    private static TradeRule Japanese(double size_kg, double litres, double diameter_m, double tare_kg, double kg_h) => new(
        size_kg == 10 ? "Japanese page" : "", FormattableString.Invariant($"{size_kg:0} kg at 20 °C"), Kilogram_W(kg_h),
        Some.Cylinder("33 kg") with
        {
            Name = "Japanese",
            Volume_m3 = litres / 1000,
            OutsideDiameter_m = diameter_m,
            MetalMass_kg = 0.8 * tare_kg,
            Tare_kg = tare_kg,
            LegalFill_kg = size_kg,
            Contents_kg = 0.3 * size_kg,
        },
        20 + ConversionFactors.ZeroCelsius_K, double.NaN);

    private static TradeRule Gallons(double gallons, double diameter_in, double air_F) => Tank(
        gallons == 115 ? "US furnace maker, 8 h" : "", FormattableString.Invariant($"{gallons:0} gal at {air_F:0} °F"), 125_000 * ConversionFactors.BtuPerHour_W,
        gallons * ConversionFactors.Gallon_m3, diameter_in * ConversionFactors.Inch_m, 0.3, TradeRule.Fahrenheit(air_F), double.NaN, fin: true);

    // Filled to a part of its volume; shell by the formula for 250 psi and 20,000 psi. A rule for the wetted wall alone leaves the dry wall out.
    private static TradeRule Tank(
        string name, string what, double printed_W, double volume_m3, double diameter_m, double full_frac, double air_K, double liquid_K, bool fin = false)
    {
        double wall_m = 250.0 / 20_000 * diameter_m / 2;
        double shell_kg = Steel_kg_m3 * wall_m * (4 * volume_m3 / diameter_m + 0.5 * diameter_m * diameter_m);
        double at_K = double.IsNaN(liquid_K) ? air_K : liquid_K;
        ColdSim.Physics.Fluids.SaturatedPhases s = SaturationTable.At(at_K);
        double mass_kg = volume_m3 * (full_frac / s.LiquidVolume_m3_kg + (1 - full_frac) / s.VapourVolume_m3_kg);
        return new(name, what, printed_W, new CylinderSpecification
        {
            Name = "tank",
            Orientation = Orientation.Horizontal,
            Volume_m3 = volume_m3,
            OutsideDiameter_m = diameter_m,
            WallThickness_m = wall_m,
            MetalMass_kg = shell_kg,
            Tare_kg = shell_kg,
            LegalFill_kg = 420 * volume_m3,
            Contents_kg = mass_kg,
            Surroundings = fin ? Some.Sheltered : Some.Sheltered with { FixedFin_m = 0 },
        }, air_K, liquid_K);
    }

    private static double TankVolume_m3(double diameter_in, double length_in)
    {
        double r_m = 0.5 * diameter_in * ConversionFactors.Inch_m - 0.004;
        double straight_m = length_in * ConversionFactors.Inch_m - 0.5 * diameter_in * ConversionFactors.Inch_m;
        return Math.PI * r_m * r_m * straight_m + 2 * Math.PI / 3 * r_m * r_m * r_m;
    }
}
