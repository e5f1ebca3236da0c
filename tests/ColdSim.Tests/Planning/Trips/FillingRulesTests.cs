using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Physics.Propane;
using ColdSim.Planning;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Model.Cylinder;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Trips;

/// <summary>Where a filling stops, by volume and by weight.</summary>
public class FillingRulesTests
{
    private const double Water60F_kg_m3 = 999.016;

    private static double Fahrenheit(double f) => (f + 459.67) / 1.8;

    private static CylinderState AlgebraicState(double propane_kg, double t_K) => new(propane_kg, t_K, default);

    [Fact, Outside("29CFR1910.110", Field.Propane)]
    public void The_worked_example_of_79_8_gallons_in_100_at_40_F_comes_out_in_liquid()
    {
        // 42 % by weight of liquid of 0.510 at 60 °F, put in at 40 °F: 42 / 0.510 / 1.031. Ours is propane, of 0.508 there.
        double full_kg = 0.42 * Water60F_kg_m3;
        double liquid_kg = Filling.AtVolume_kg(1, 0.798, Fahrenheit(40)) - 0.202 * PropaneSaturation.VapourDensity_kg_m3(Fahrenheit(40));
        Assert.Equal(1, liquid_kg / full_kg, 0.007);
    }

    // Worked out elsewhere from the same equation of state, liquid alone, as part of the water weight.
    [Theory]
    [InlineData(60, 0.406)]
    [InlineData(40, 0.418)]
    [InlineData(-4, 0.444)]
    [InlineData(-22, 0.454)]
    public void Eighty_percent_by_volume_weighs_more_the_colder_it_is(double t_F, double part)
    {
        double liquid_kg = 0.8 * PropaneSaturation.LiquidDensity_kg_m3(Fahrenheit(t_F));
        Assert.Equal(part, liquid_kg / Water60F_kg_m3, 0.0006);
        Assert.True(Filling.AtVolume_kg(1, 0.8, Fahrenheit(t_F)) > liquid_kg);
    }

    [Fact]
    public void Filled_to_80_percent_at_60_F_it_reads_less_at_40_F()
    {
        CylinderSpecification cylinder = Some.Cylinder("20 lb");
        double mass_kg = Filling.AtVolume_kg(cylinder.Volume_m3, 0.8, Fahrenheit(60));
        double liquid = CylinderContents.Of(mass_kg, cylinder.Volume_m3, Fahrenheit(40)).LiquidVolume_m3 / cylinder.Volume_m3;
        // Liquid shrinks by the 1.031 of the tables, less what condenses from above it.
        Assert.Equal(0.8 / 1.031, liquid, 0.003);
    }

    [Fact]
    public void A_cold_filling_by_volume_goes_over_the_weight_and_is_flagged()
    {
        CylinderSpecification cylinder = Some.Cylinder("30 lb");
        FilledCylinder cold = Filling.Of(cylinder, AlgebraicState(2, 253.15), null, FillLimit.Volume, 253.15);
        Assert.Equal(FillingEnd.Volume, cold.End);
        Assert.Equal(0.8, cold.Liquid_frac, 1e-6);
        Assert.True(cold.IsOverWeight);
        Assert.Equal(cold.Propane_kg - cylinder.LegalFill_kg, cold.OverWeight_kg, 12);
        // Worked out elsewhere: filled to 80 % with liquid at -20 °C it is liquid-full at 52.7 °C; ours holds its vapour, too.
        Assert.InRange(cold.LiquidFull_K - 273.15, 51, 53);
        FilledCylinder warm = Filling.Of(cylinder, AlgebraicState(2, 288), null, FillLimit.Volume, 288);
        Assert.False(warm.IsOverWeight);
        Assert.True(warm.Propane_kg < cylinder.LegalFill_kg);
    }

    [Fact]
    public void Filling_by_weight_stops_at_the_legal_filling_at_any_temperature()
    {
        CylinderSpecification cylinder = Some.Cylinder("30 lb");
        foreach (double t_K in (double[])[243.15, 263.15, 293.15])
        {
            FilledCylinder filled = Filling.Of(cylinder, AlgebraicState(3, t_K), null, FillLimit.Weight, t_K);
            Assert.Equal(FillingEnd.Weight, filled.End);
            Assert.Equal(cylinder.LegalFill_kg, filled.Propane_kg, 12);
            Assert.False(filled.IsOverWeight);
        }
    }

    [Fact]
    public void Requested_mass_is_filled_where_it_fits_and_a_full_cylinder_takes_none()
    {
        CylinderSpecification cylinder = Some.Cylinder("20 lb");
        FilledCylinder some = Filling.Of(cylinder, AlgebraicState(3, 263), 2, FillLimit.Weight, 263);
        Assert.Equal((FillingEnd.Amount, 5.0), (some.End, some.Propane_kg));
        FilledCylinder none = Filling.Of(cylinder, AlgebraicState(cylinder.LegalFill_kg, 263), 2, FillLimit.Weight, 263);
        Assert.Equal((FillingEnd.Full, cylinder.LegalFill_kg), (none.End, none.Propane_kg));
    }

    [Fact]
    public void Old_and_new_mix_between_their_temperatures_and_energy_is_kept()
        => Gen.Select(Gen.Double[0.5, 4], Gen.Double[235, 300], Gen.Double[0.2, 4], Gen.Double[235, 300]).Sample((before_kg, before_K, added_kg, added_K) =>
        {
            CylinderSpecification cylinder = Some.Cylinder("20 lb");
            double mixed_K = Filling.MixedTemperature_K(cylinder, before_kg, before_K, added_kg, added_K);
            double shell_J_K = cylinder.MetalMass_kg * cylinder.MetalHeat_J_kgK;
            double Energy_J(double kg, double t_K) => CylinderContents.Of(kg, cylinder.Volume_m3, t_K).InternalEnergy_J + shell_J_K * t_K;
            double left_J = Energy_J(before_kg + added_kg, mixed_K) - Energy_J(before_kg, before_K) - added_kg * SaturationTable.At(added_K).LiquidEnthalpy_J_kg;
            Assert.True(Math.Abs(left_J) < 1, $"{left_J} J");
            // Vapour that condenses under what comes in warms it by up to a few kelvins.
            Assert.InRange(mixed_K, Math.Min(before_K, added_K) - 1, Math.Max(before_K, added_K) + 6);
        });

    [Fact]
    public void A_filling_never_passes_its_own_limit_and_never_takes_anything_out()
        => Gen.Select(Some.Size, Gen.Double[0, 0.9], Gen.Double[235, 300], Gen.Double[235, 300], Gen.Bool).Sample((size, part, before_K, supply_K, byWeight) =>
        {
            CylinderSpecification cylinder = Some.Cylinder(size);
            CylinderState before = AlgebraicState(part * cylinder.LegalFill_kg, before_K);
            FilledCylinder after = Filling.Of(cylinder, before, null, byWeight ? FillLimit.Weight : FillLimit.Volume, supply_K);
            Assert.True(after.Propane_kg >= before.Propane_kg);
            if (byWeight) Assert.True(after.Propane_kg <= cylinder.LegalFill_kg + 1e-9);
            else Assert.True(after.Liquid_frac <= 0.8 + 1e-9 || after.End == FillingEnd.Full, $"{after}");
        });
}
