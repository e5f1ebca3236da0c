using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Propane;

public class ReferenceEquationTests
{
    // The paper's table of values for checking programs; eight printed digits. T K, mol/dm3, MPa, cv, cp J/(mol K), w m/s.
    [Theory, Outside("Lemmon2009", Field.Propane, FromMemory = true)]
    [InlineData(200, 14, 2.3795138, 61.078424, 93.475362, 1381.9552)]
    [InlineData(300, 12, 19.053797, 73.972542, 108.61529, 958.40520)]
    [InlineData(300, 0.4, 0.84694991, 69.021875, 85.753997, 221.88959)]
    [InlineData(400, 5, 6.6462840, 97.017439, 271.07044, 194.65847)]
    public void Matches_the_check_points_of_Lemmon_2009(double t_K, double mol_L, double p_MPa, double cv, double cp, double w_m_s)
    {
        FluidState s = ReferenceEquation.At(t_K, mol_L * 1000 * ReferenceEquation.MolarMass_kg_mol);
        Assert.Equal(1, s.Pressure_Pa / (p_MPa * 1e6), 2e-7);
        Assert.Equal(1, s.Cv_J_kgK * ReferenceEquation.MolarMass_kg_mol / cv, 2e-7);
        Assert.Equal(1, s.Cp_J_kgK * ReferenceEquation.MolarMass_kg_mol / cp, 2e-7);
        Assert.Equal(1, s.SpeedOfSound_m_s / w_m_s, 2e-7);
    }

    [Fact]
    public void Energy_alone_is_the_same_as_with_entropy()
        => Gen.Select(Gen.Double[180, 900], Gen.Double[-9, 2.7]).Sample((t_K, log) =>
        {
            FluidState whole = ReferenceEquation.At(t_K, Math.Pow(10, log)), energy = ReferenceEquation.EnergyAt(t_K, Math.Pow(10, log));
            Assert.Equal(whole.InternalEnergy_J_kg, energy.InternalEnergy_J_kg, 1e-11 * 1e6);
            Assert.Equal(1, energy.Cv_J_kgK / whole.Cv_J_kgK, 1e-11);
            Assert.Equal(whole.Pressure_Pa, energy.Pressure_Pa, 1e-11 * (1e6 + Math.Abs(whole.Pressure_Pa)));
            Assert.Equal(whole.PressureByDensity, energy.PressureByDensity, 1e-10 * (1e5 + Math.Abs(whole.PressureByDensity)));
            Assert.Equal(whole.PressureByTemperature_Pa_K, energy.PressureByTemperature_Pa_K, 1e-10 * (1e4 + Math.Abs(whole.PressureByTemperature_Pa_K)));
        });

    [Fact, Outside("CoolPropFluids", Field.Propane)]
    public void Matches_the_state_stored_with_an_open_property_library()
    {
        FluidState s = ReferenceEquation.At(406.879, 4500 * ReferenceEquation.MolarMass_kg_mol);
        Assert.Equal(1, s.Pressure_Pa / 6_838_746.441, 1e-8);
        Assert.Equal(1, s.Enthalpy_J_kg * ReferenceEquation.MolarMass_kg_mol / 29379.952339, 1e-8);
        Assert.Equal(1, s.Entropy_J_kgK * ReferenceEquation.MolarMass_kg_mol / 101.690465, 1e-8);
    }

    [Fact]
    public void Enthalpy_and_entropy_are_on_the_refrigeration_zero_at_0_C()
    {
        // By convention (IIR) 200 kJ/kg and 1 kJ/(kg K) on saturated liquid at 0 °C; a1 and a2 are rounded to 7 digits.
        FluidState l = PhaseEquilibrium.At(ReferenceEquation.Fluid, 273.15).Liquid;
        Assert.Equal(200_000, l.Enthalpy_J_kg, 0.05);
        Assert.Equal(1000, l.Entropy_J_kgK, 1e-3);
    }

    [Theory]
    [InlineData(195)]
    [InlineData(250)]
    [InlineData(310)]
    [InlineData(352)]
    public void Derivatives_agree_with_differences(double t_K)
    {
        const double h = 1e-4;
        double rho = PhaseEquilibrium.At(ReferenceEquation.Fluid, t_K).Liquid.Density_kg_m3 * 1.01;
        FluidState s = ReferenceEquation.At(t_K, rho);
        double byDensity = (ReferenceEquation.At(t_K, rho + h).Pressure_Pa - ReferenceEquation.At(t_K, rho - h).Pressure_Pa) / (2 * h);
        double byTemperature = (ReferenceEquation.At(t_K + h, rho).Pressure_Pa - ReferenceEquation.At(t_K - h, rho).Pressure_Pa) / (2 * h);
        double cv = (ReferenceEquation.At(t_K + h, rho).InternalEnergy_J_kg - ReferenceEquation.At(t_K - h, rho).InternalEnergy_J_kg) / (2 * h);
        Assert.Equal(1, s.PressureByDensity / byDensity, 1e-6);
        Assert.Equal(1, s.PressureByTemperature_Pa_K / byTemperature, 1e-6);
        Assert.Equal(1, s.Cv_J_kgK / cv, 1e-6);
    }
}
