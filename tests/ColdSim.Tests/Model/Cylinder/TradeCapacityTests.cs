using System.Globalization;
using System.Text;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Steady supply against the trade's rules for what a cylinder can keep giving, rules that do not agree with each other.</summary>
/// <remarks>
/// <para>
/// A capacity is conductance times (air less liquid), so each rule is compared under the liquid temperature that it allows. The
/// upright table is a straight line in air temperature through about -44 °F at every fill: it lets the liquid fall to its boiling
/// point at atmospheric pressure, where no regulator delivers. The rule for tanks says -20 °F and leaves the vapour space out.
/// </para>
/// <para>
/// No rule states wind, shelter, humidity or frost. One set of conditions serves all rows: a light breeze of 1.5 m/s at the cylinder,
/// surroundings at air temperature, no sun, dry air, a wall without frost, steel 2.4 mm thick as a fin above the liquid (none for
/// tanks). It was chosen beforehand and fitted to no row. The table corresponds to 11 to 14 W/m²K on the wetted wall, which
/// that breeze gives; behind the rule for tanks 18 to 19, which takes about 5 m/s. See docs/model-checks.md.
/// </para>
/// </remarks>
public class TradeCapacityTests
{
    private const double Breeze_m_s = 1.5;
    private const double BtuPerHour_W = ColdSim.Physics.Units.ConversionFactors.BtuPerHour_W;
    private const double HeatingValue_J_kg = 50.33e6;
    private const double Pound_kg = ColdSim.Physics.Units.ConversionFactors.Pound_kg;
    private const double Inch_m = 0.0254;
    private const double Gallon_m3 = 3.785411784e-3;

    private static readonly double[] TableAir_F = [0, 20, 40, 60, 70];

    // Pounds in the cylinder, then Btu/h at those air temperatures, as printed.
    private static readonly int[][] Table =
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

    private static double Fahrenheit(double f) => (f + 459.67) / 1.8;

    private static double Upright_Btu_h(double mass_lb, double air_F, double allowed_K, double wind_m_s)
        => SteadySupply.Draw_kg_s(new CylinderBody(Some.Cylinder("100 lb")), Some.Weather(Fahrenheit(air_F), wind_m_s),
            mass_lb * Pound_kg, allowed_K, 0, default) * HeatingValue_J_kg / BtuPerHour_W;

    // A tank by diameter and overall length or volume, its vapour space left out, filled to a part of its volume at the allowed -20 °F.
    private static double Tank_Btu_h(double volume_m3, double diameter_in, double full_frac, double air_F, double wind_m_s)
    {
        CylinderBody body = new(new CylinderSpecification
        {
            Name = "tank",
            Orientation = Orientation.Horizontal,
            Volume_m3 = volume_m3,
            OutsideDiameter_m = diameter_in * Inch_m,
            WallThickness_m = 0.004,
            MetalMass_kg = 1,
            Tare_kg = 1,
            LegalFill_kg = 420 * volume_m3,
            Contents_kg = 420 * volume_m3,
            Surroundings = Some.Sheltered with { FixedFin_m = 0 },
        });
        double allowed_K = Fahrenheit(-20);
        SaturatedPhases s = SaturationTable.At(allowed_K);
        double mass_kg = volume_m3 * (full_frac / s.LiquidVolume_m3_kg + (1 - full_frac) / s.VapourVolume_m3_kg);
        return SteadySupply.Draw_kg_s(body, Some.Weather(Fahrenheit(air_F), wind_m_s), mass_kg, allowed_K, 0, default)
            * HeatingValue_J_kg / BtuPerHour_W;
    }

    private static double TankVolume_m3(double diameter_in, double length_in)
    {
        double r_m = 0.5 * diameter_in * Inch_m - 0.004;
        double straight_m = length_in * Inch_m - 0.5 * diameter_in * Inch_m;
        return Math.PI * r_m * r_m * straight_m + 2 * Math.PI / 3 * r_m * r_m * r_m;
    }

    // Ours over the trade's: 0.98 full at 0 °F, 1.22 nearly empty at 70 °F.
    [Theory]
    [InlineData(100, 0, 113_000)]
    [InlineData(100, 70, 300_000)]
    [InlineData(70, 20, 122_000)]
    [InlineData(50, 40, 125_000)]
    [InlineData(30, 0, 45_000)]
    [InlineData(10, 70, 66_000)]
    public void In_a_light_breeze_a_100_lb_cylinder_gives_what_the_trade_table_says_or_up_to_a_quarter_more(double mass_lb, double air_F, double table_Btu_h)
        => Assert.InRange(Upright_Btu_h(mass_lb, air_F, ReferenceEquation.NormalBoilingPoint_K, Breeze_m_s) / table_Btu_h, 0.95, 1.25);

    [Fact]
    public void The_whole_trade_table_lies_in_the_same_band()
    {
        foreach (int[] row in Table)
        {
            for (int i = 0; i < TableAir_F.Length; i++)
            {
                double breeze = Upright_Btu_h(row[0], TableAir_F[i], ReferenceEquation.NormalBoilingPoint_K, Breeze_m_s) / row[i + 1];
                double still = Upright_Btu_h(row[0], TableAir_F[i], ReferenceEquation.NormalBoilingPoint_K, 0) / row[i + 1];
                Assert.InRange(breeze, 0.95, 1.25);
                // In still air the table promises up to half as much again as we find: a full cylinder on a cold calm night.
                Assert.InRange(still, 0.65, 1.02);
            }
        }
    }

    [Fact]
    public void Down_to_minus_20_F_a_full_100_lb_cylinder_gives_about_the_50_000_Btu_per_hour_of_the_working_rule()
        // The rule gives no liquid temperature; -20 °F is that of the rule for tanks on the same page. Ours is 1.06 of it.
        => Assert.InRange(Upright_Btu_h(100, 0, Fahrenheit(-20), Breeze_m_s) / 50_000, 0.95, 1.15);

    // Diameter × length × K with K 100, 70, 45 on a tank of 24 by 68 in. In the light breeze we give half: 0.53, 0.52, 0.49.
    [Theory]
    [InlineData(0.60, 100)]
    [InlineData(0.30, 70)]
    [InlineData(0.10, 45)]
    public void In_a_light_breeze_a_tank_gives_about_half_of_what_the_trade_rule_says(double full_frac, double k)
        => Assert.InRange(Tank_Btu_h(TankVolume_m3(24, 68), 24, full_frac, 0, Breeze_m_s) / (24 * 68 * k), 0.45, 0.60);

    [Fact]
    public void The_trade_rule_for_tanks_takes_about_5_m_s_of_wind()
    {
        foreach ((double full_frac, double k) in new[] { (0.6, 100.0), (0.5, 90), (0.4, 80), (0.3, 70), (0.2, 60), (0.1, 45) })
            Assert.InRange(Tank_Btu_h(TankVolume_m3(24, 68), 24, full_frac, 0, 5) / (24 * 68 * k), 0.85, 1.0);
    }

    [Fact]
    public void Capacity_goes_with_fill_as_in_the_trade_rule()
    {
        // K over K at half full, which no film coefficient moves: the rule's wetted perimeter against our wetted area with its heads.
        double half = Tank_Btu_h(TankVolume_m3(24, 68), 24, 0.5, 0, Breeze_m_s);
        foreach ((double full_frac, double k) in new[] { (0.6, 100.0), (0.4, 80), (0.3, 70), (0.2, 60), (0.1, 45) })
            Assert.Equal(1, Tank_Btu_h(TankVolume_m3(24, 68), 24, full_frac, 0, Breeze_m_s) / half / (k / 90), 0.07);
    }

    // A tank of 84 lb on a frame at 0 °F; its diameter is not given, we take 14 in. Ours in the light breeze: 0.64, 0.59, 0.57.
    [Theory]
    [InlineData(0.80, 64_000)]
    [InlineData(0.50, 50_400)]
    [InlineData(0.20, 33_000)]
    public void In_a_light_breeze_a_frame_tank_gives_three_fifths_of_what_its_manual_says(double full_frac, double manual_Btu_h)
        => Assert.InRange(Tank_Btu_h(84 * Pound_kg / 420, 14, full_frac, 0, Breeze_m_s) / manual_Btu_h, 0.50, 0.70);

    // The manual's multipliers are linear in air less -20 °F. Ours are a little steeper, as the natural part of the film grows with the
    // difference: 2 % at most in this breeze.
    [Theory]
    [InlineData(-10, 0.50)]
    [InlineData(-5, 0.75)]
    [InlineData(10, 1.50)]
    [InlineData(20, 2.00)]
    [Outside("Motorhome owner manual, winter use of LP gas", Field.Cylinder)]
    public void Capacity_goes_with_air_temperature_nearly_by_the_manuals_multipliers(double air_F, double multiplier)
    {
        double volume_m3 = 84 * Pound_kg / 420;
        double ours = Tank_Btu_h(volume_m3, 14, 0.5, air_F, Breeze_m_s) / Tank_Btu_h(volume_m3, 14, 0.5, 0, Breeze_m_s);
        Assert.Equal(1, ours / multiplier, 0.03);
    }

    [Fact]
    public void In_a_light_breeze_a_1_000_gallon_tank_gives_two_fifths_of_what_a_heater_manual_says()
        // 30 % full, -10 °F; diameter 41 in from memory. Ours is 0.43: the film of a wide tank is thicker.
        => Assert.InRange(Tank_Btu_h(1000 * Gallon_m3, 41, 0.3, -10, Breeze_m_s) / 276_500, 0.38, 0.50);

    [Fact]
    public void The_page_of_model_checks_shows_what_we_compute()
    {
        StringBuilder expected = new();
        foreach (int[] row in Table)
        {
            for (int i = 0; i < TableAir_F.Length; i++)
            {
                double breeze = Upright_Btu_h(row[0], TableAir_F[i], ReferenceEquation.NormalBoilingPoint_K, Breeze_m_s);
                double still = Upright_Btu_h(row[0], TableAir_F[i], ReferenceEquation.NormalBoilingPoint_K, 0);
                expected.Append(CultureInfo.InvariantCulture,
                    $"| {row[0]} | {TableAir_F[i]} | {row[i + 1]:N0} | {Math.Round(breeze / 1000) * 1000:N0} | {breeze / row[i + 1]:F2} | {Math.Round(still / 1000) * 1000:N0} | {still / row[i + 1]:F2} |\n");
            }
        }

        Assert.Contains(expected.ToString(), Page(), StringComparison.Ordinal);
    }

    private static string Page([System.Runtime.CompilerServices.CallerFilePath] string here = "")
    {
        DirectoryInfo? folder = new FileInfo(here).Directory;
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ColdSim.sln"))) folder = folder.Parent;
        return File.ReadAllText(Path.Combine(folder!.FullName, "docs", "model-checks.md"));
    }
}
