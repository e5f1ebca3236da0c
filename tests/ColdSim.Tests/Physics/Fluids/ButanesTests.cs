using ColdSim.Physics.Fluids;
using Xunit;

namespace ColdSim.Tests.Physics.Fluids;

public class ButanesTests
{
    private static readonly Fluid Iso = Isobutane.Fluid, Normal = NormalButane.Fluid;

    [Fact, Outside("CoolPropFluids", Field.Propane)]
    public void Normal_butane_matches_the_state_stored_with_an_open_property_library()
        => Matches(Normal, 467.63750000000005, 3530.492651689028, 6189994.483731955, 47861.671413925265, 152.79309067928807);

    [Fact, Outside("CoolPropFluids", Field.Propane)]
    public void Isobutane_matches_the_state_stored_with_an_open_property_library()
        => Matches(Iso, 448.59100000000007, 3491.7811094555955, 5887949.640936111, 43954.82224114979, 144.56367156827787);

    private static void Matches(Fluid fluid, double t_K, double mol_m3, double p_Pa, double h_J_mol, double s_J_molK)
    {
        FluidState s = fluid.At(t_K, mol_m3 * fluid.MolarMass_kg_mol);
        Assert.Equal(1, s.Pressure_Pa / p_Pa, 1e-8);
        Assert.Equal(1, s.Enthalpy_J_kg * fluid.MolarMass_kg_mol / h_J_mol, 1e-8);
        Assert.Equal(1, s.Entropy_J_kgK * fluid.MolarMass_kg_mol / s_J_molK, 1e-8);
    }

    [Fact, Outside("Buecker2006", Field.Propane, FromMemory = true)]
    public void They_boil_at_their_remembered_boiling_points()
    {
        Assert.Equal(101_325, Normal.Saturation.Pressure_Pa(272.66), 30.0);
        Assert.Equal(101_325, Iso.Saturation.Pressure_Pa(261.401), 30.0);
    }

    // The same equations worked out once outside this program, four digits: kPa at °C.
    [Theory]
    [InlineData(-40, 28.7, 16.8)]
    [InlineData(-30, 46.6, 28.2)]
    [InlineData(-20, 72.5, 45.2)]
    [InlineData(-10, 108.4, 69.6)]
    [InlineData(0, 157.0, 103.2)]
    [InlineData(10, 220.6, 148.5)]
    [InlineData(20, 302.2, 207.7)]
    public void Saturation_pressures_are_those_of_an_independent_evaluation(double t_C, double iso_kPa, double normal_kPa)
    {
        Assert.Equal(iso_kPa, Iso.Saturation.Pressure_Pa(t_C + 273.15) / 1000, 0.11);
        Assert.Equal(normal_kPa, Normal.Saturation.Pressure_Pa(t_C + 273.15) / 1000, 0.11);
    }

    [Theory]
    [InlineData(-20, 622, 603)]
    [InlineData(0, 601, 581)]
    [InlineData(20, 579, 557)]
    public void Liquid_densities_are_those_of_an_independent_evaluation(double t_C, double normal_kg_m3, double iso_kg_m3)
    {
        Assert.Equal(normal_kg_m3, 1 / Normal.Saturation.At(t_C + 273.15).LiquidVolume_m3_kg, 0.6);
        Assert.Equal(iso_kg_m3, 1 / Iso.Saturation.At(t_C + 273.15).LiquidVolume_m3_kg, 0.6);
    }

    [Fact]
    public void Enthalpy_and_entropy_are_on_the_refrigeration_zero_at_0_C()
    {
        foreach (Fluid fluid in (Fluid[])[Normal, Iso])
        {
            FluidState l = PhaseEquilibrium.At(fluid, 273.15).Liquid;
            Assert.Equal(200_000, l.Enthalpy_J_kg, 0.5);
            Assert.Equal(1000, l.Entropy_J_kgK, 2e-3);
        }
    }

    [Fact]
    public void Tables_agree_with_the_full_equations()
    {
        foreach (Fluid fluid in (Fluid[])[Normal, Iso])
        {
            for (double t_K = SaturationLine.Lowest_K; t_K <= SaturationLine.Highest_K; t_K += 1.37)
            {
                PhaseEquilibrium e = PhaseEquilibrium.At(fluid, t_K);
                SaturatedPhases s = fluid.Saturation.At(t_K);
                Assert.Equal(e.Liquid.Pressure_Pa, e.Vapour.Pressure_Pa, 1e-3);
                Assert.Equal(1, s.Pressure_Pa / e.Vapour.Pressure_Pa, 4e-7);
                Assert.Equal(1, s.LiquidVolume_m3_kg * e.Liquid.Density_kg_m3, 1e-7);
                Assert.Equal(1, s.VapourVolume_m3_kg * e.Vapour.Density_kg_m3, 4e-7);
                Assert.Equal(1, s.LatentHeat_J_kg / (e.Vapour.Enthalpy_J_kg - e.Liquid.Enthalpy_J_kg), 1e-7);
            }
        }
    }
}
