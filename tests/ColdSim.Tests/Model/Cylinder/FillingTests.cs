using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.Propane;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Sizes and fillings against the trade's numbers.</summary>
public class FillingTests
{
    private const double Pound_kg = ColdSim.Physics.Units.ConversionFactors.Pound_kg;
    private const double Psi_Pa = ColdSim.Physics.Units.ConversionFactors.Psi_Pa;
    private const double Water60F_kg_m3 = 999.016;

    private static double Fahrenheit(double f) => (f + 459.67) / 1.8;

    private static double LiquidPart(double filling_frac, double t_K)
        => new TwoPhaseContents(filling_frac * Water60F_kg_m3, 1, t_K).LiquidVolume_m3;

    [Fact, Outside("29CFR1910.110", Field.Propane)]
    public void The_worked_filling_example_of_79_8_gallons_in_100_comes_out()
    {
        // 42 % by weight of liquid of specific gravity 0.510 at 60 °F, put in at 40 °F; our part is how much denser it is there.
        double denser = PropaneSaturation.LiquidDensity_kg_m3(Fahrenheit(40)) / PropaneSaturation.LiquidDensity_kg_m3(Fahrenheit(60));
        Assert.Equal(79.8, 100 * 0.42 / 0.510 / denser, 0.1);
    }

    [Fact, Outside("Canadian gas technician training", Field.Cylinder)]
    public void Forty_two_percent_by_weight_is_eighty_percent_by_volume()
        // Said without a temperature; true of liquid near 40 °F (5 °C).
        => Assert.Equal(0.80, LiquidPart(StandardSize.LegalFill_frac, Fahrenheit(40)), 0.005);

    [Fact]
    public void By_volume_the_legal_filling_depends_on_temperature()
    {
        // Worked out elsewhere from the same equation of state, liquid alone, no vapour: 82.8 and 76.1 %.
        Assert.Equal(0.828, 0.42 * Water60F_kg_m3 / PropaneSaturation.LiquidDensity_kg_m3(Fahrenheit(60)), 0.0006);
        Assert.Equal(0.761, 0.42 * Water60F_kg_m3 / PropaneSaturation.LiquidDensity_kg_m3(Fahrenheit(0)), 0.0006);
    }

    // Worked out elsewhere from the same equation of state; °C.
    [Theory]
    [InlineData(0.42, 63.6)]
    [InlineData(0.44, 54.6)]
    [InlineData(0.45, 49.6)]
    public void A_filling_is_liquid_full_at(double filling_frac, double t_C)
    {
        double volume_m3_kg = 1 / (filling_frac * Water60F_kg_m3);
        Assert.True(SaturationTable.At(273.15 + t_C - 0.1).LiquidVolume_m3_kg < volume_m3_kg);
        Assert.True(SaturationTable.At(273.15 + t_C + 0.1).LiquidVolume_m3_kg > volume_m3_kg);
        Assert.True(new TwoPhaseContents(filling_frac * Water60F_kg_m3, 1, 273.15 + t_C + 0.1).VapourMass_kg < 0);
    }

    [Fact]
    public void Cylinders_start_to_discharge_at_375_psig()
        => Assert.Equal(375, Some.Cylinder("20 lb").ReliefPressure_Pa / Psi_Pa, 1e-9);

    [Fact]
    public void Boiling_reaches_the_relief_setting_at_72_C_and_that_is_after_a_legal_filling_is_liquid_full()
    {
        // Worked out elsewhere: 72.0 °C. The model lets pressure follow boiling there and does not know a liquid-full cylinder.
        double relief_K = PropaneSaturation.Temperature_K(101_325 + Some.Cylinder("20 lb").ReliefPressure_Pa);
        Assert.Equal(72.0, relief_K - 273.15, 0.06);
        Assert.True(new TwoPhaseContents(0.42 * Water60F_kg_m3, 1, relief_K).VapourMass_kg < 0);
    }

    // Water capacities in the training unit's table, lb; it rounds the three middle ones to 48, 72 and 95.
    [Theory]
    [InlineData("5 lb", 12.0)]
    [InlineData("10 lb", 23.8)]
    [InlineData("20 lb", 48)]
    [InlineData("30 lb", 72)]
    [InlineData("40 lb", 95)]
    [InlineData("100 lb", 239)]
    public void Standard_sizes_have_the_water_capacity_of_the_training_table(string size, double water_lb)
        => Assert.Equal(1, StandardSize.Find(size)!.Volume_m3 * 1000 / Pound_kg / water_lb, 0.01);

    // Litres, kg of propane, diameter and overall height in mm.
    [Theory]
    [InlineData(12, 5, 255, 429)]
    [InlineData(24, 10, 309, 540)]
    [InlineData(47, 20, 319, 827)]
    [InlineData(71, 30, 320, 1160)]
    [InlineData(118, 50, 366, 1408)]
    [Outside("Japanese LP-gas page", Field.Cylinder)]
    public void Japanese_cylinders_hold_42_percent_and_leave_room_for_foot_and_collar(double litres, double propane_kg, double diameter_mm, double height_mm)
    {
        Assert.Equal(StandardSize.LegalFill_frac, propane_kg / litres, 0.006);
        // 2:1 heads and 2.5 mm of steel, our assumption; foot ring and collar then take 14 to 20 cm of the height.
        double body_m = new UprightCylinder(litres / 1000, diameter_mm / 1000, 0.0025).Height_m;
        Assert.InRange(height_mm / 1000 - body_m, 0.135, 0.205);
    }
}
