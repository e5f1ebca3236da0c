using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Fluids;

/// <summary>What thermodynamics asks of any equation of state, by differences of its own values.</summary>
public class FluidStateTests
{
    private static readonly Gen<(Fluid Of, double T_K, double Rho_kg_m3)> States =
        Gen.Select(Gen.Int[0, 2], Gen.Double[200, 350], Gen.Double[0.05, 0.95], Gen.Double[1.005, 1.05], Gen.Bool).Select((i, t_K, thin, dense, liquid) =>
        {
            Fluid fluid = i == 0 ? ReferenceEquation.Fluid : i == 1 ? NormalButane.Fluid : Isobutane.Fluid;
            SaturatedPhases s = fluid.Saturation.At(t_K);
            return (fluid, t_K, liquid ? dense / s.LiquidVolume_m3_kg : thin / s.VapourVolume_m3_kg);
        });

    // Central differences over a ten-thousandth of the density and a hundredth of a kelvin.
    private static (double ByTemperature, double ByDensity) Slopes(Fluid fluid, double t_K, double rho_kg_m3, Func<FluidState, double> of)
    {
        double dt_K = 0.01, d = 1e-4 * rho_kg_m3;
        return ((of(fluid.At(t_K + dt_K, rho_kg_m3)) - of(fluid.At(t_K - dt_K, rho_kg_m3))) / (2 * dt_K),
            (of(fluid.At(t_K, rho_kg_m3 + d)) - of(fluid.At(t_K, rho_kg_m3 - d))) / (2 * d));
    }

    [Fact]
    public void Its_slopes_are_those_of_its_values()
        => States.Sample(s =>
        {
            FluidState state = s.Of.At(s.T_K, s.Rho_kg_m3);
            (double pressureByT, double pressureByRho) = Slopes(s.Of, s.T_K, s.Rho_kg_m3, v => v.Pressure_Pa);
            (double energyByT, double energyByRho) = Slopes(s.Of, s.T_K, s.Rho_kg_m3, v => v.InternalEnergy_J_kg);
            Assert.Equal(1, state.PressureByTemperature_Pa_K / pressureByT, 1e-6);
            Assert.Equal(1, state.PressureByDensity / pressureByRho, 1e-5);
            Assert.Equal(1, state.Cv_J_kgK / energyByT, 1e-6);
            Assert.Equal(1, state.InternalEnergyByDensity / energyByRho, 1e-4);
        }, iter: 500);

    // T ds = du + p dv, h = u + p/ρ and g = h − T s.
    [Fact]
    public void Entropy_enthalpy_and_Gibbs_energy_belong_to_its_energy_and_pressure()
        => States.Sample(s =>
        {
            FluidState state = s.Of.At(s.T_K, s.Rho_kg_m3);
            (double entropyByT, double entropyByRho) = Slopes(s.Of, s.T_K, s.Rho_kg_m3, v => v.Entropy_J_kgK);
            (_, double energyByRho) = Slopes(s.Of, s.T_K, s.Rho_kg_m3, v => v.InternalEnergy_J_kg);
            Assert.Equal(1, s.T_K * entropyByT / state.Cv_J_kgK, 1e-5);
            double work = state.Pressure_Pa / (s.Rho_kg_m3 * s.Rho_kg_m3);
            Assert.Equal(0, (s.T_K * entropyByRho - energyByRho + work) / (Math.Abs(energyByRho) + Math.Abs(work)), 1e-4);
            Assert.Equal(state.InternalEnergy_J_kg + state.Pressure_Pa / s.Rho_kg_m3, state.Enthalpy_J_kg, 1e-6);
            Assert.Equal(state.Enthalpy_J_kg - s.T_K * state.Entropy_J_kgK, state.Gibbs_J_kg, 1e-6);
        }, iter: 500);

    // cp − cv = T (∂p/∂T)² / (ρ² ∂p/∂ρ), and sound goes by cp/cv ∂p/∂ρ.
    [Fact]
    public void Heat_capacities_and_sound_hang_together()
        => States.Sample(s =>
        {
            FluidState state = s.Of.At(s.T_K, s.Rho_kg_m3);
            double apart = s.T_K * Math.Pow(state.PressureByTemperature_Pa_K / s.Rho_kg_m3, 2) / state.PressureByDensity;
            Assert.Equal(1, (state.Cp_J_kgK - state.Cv_J_kgK) / apart, 1e-9);
            Assert.Equal(1, state.SpeedOfSound_m_s / Math.Sqrt(state.Cp_J_kgK / state.Cv_J_kgK * state.PressureByDensity), 1e-9);
        }, iter: 500);

    // Clausius and Clapeyron; both slopes along the line by differences of the equilibrium itself.
    [Fact]
    public void Along_the_saturation_line_the_slopes_are_those_of_the_equilibrium()
    {
        foreach (Fluid fluid in (Fluid[])[ReferenceEquation.Fluid, NormalButane.Fluid, Isobutane.Fluid])
        {
            foreach (double t_K in (double[])[200, 260, 340])
            {
                PhaseEquilibrium now = PhaseEquilibrium.At(fluid, t_K), warm = PhaseEquilibrium.At(fluid, t_K + 0.01), cold = PhaseEquilibrium.At(fluid, t_K - 0.01);
                Assert.Equal(1, now.PressureSlope_Pa_K / ((warm.Vapour.Pressure_Pa - cold.Vapour.Pressure_Pa) / 0.02), 1e-5);
                Assert.Equal(1, now.DensitySlope_kg_m3K(now.Liquid) / ((warm.Liquid.Density_kg_m3 - cold.Liquid.Density_kg_m3) / 0.02), 1e-5);
                Assert.Equal(1, now.DensitySlope_kg_m3K(now.Vapour) / ((warm.Vapour.Density_kg_m3 - cold.Vapour.Density_kg_m3) / 0.02), 1e-5);
                Assert.Equal(1, now.InternalEnergySlope_J_kgK(now.Vapour) / ((warm.Vapour.InternalEnergy_J_kg - cold.Vapour.InternalEnergy_J_kg) / 0.02), 1e-4);
                Assert.Equal(1, now.InternalEnergySlope_J_kgK(now.Liquid) / ((warm.Liquid.InternalEnergy_J_kg - cold.Liquid.InternalEnergy_J_kg) / 0.02), 1e-5);
                Assert.Equal(now.Liquid.Gibbs_J_kg, now.Vapour.Gibbs_J_kg, 1e-5);
                Assert.Equal(1, now.Liquid.Pressure_Pa / now.Vapour.Pressure_Pa, 1e-7);
            }
        }
    }

    [Fact]
    public void Saturation_is_solved_from_190_to_365_K_and_refused_beyond()
    {
        Assert.True(PhaseEquilibrium.At(ReferenceEquation.Fluid, 190).Vapour.Pressure_Pa > 0);
        Assert.True(PhaseEquilibrium.At(ReferenceEquation.Fluid, 365).Vapour.Pressure_Pa > 3.8e6);
        Assert.Throws<ArgumentOutOfRangeException>(() => PhaseEquilibrium.At(ReferenceEquation.Fluid, 189.99));
        Assert.Throws<ArgumentOutOfRangeException>(() => PhaseEquilibrium.At(ReferenceEquation.Fluid, 365.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => PhaseEquilibrium.At(ReferenceEquation.Fluid, double.NaN));
    }

    [Fact]
    public void Saturated_enthalpies_latent_heat_and_the_heat_of_a_draw_follow_from_volumes_and_energies()
    {
        SaturatedPhases s = NormalButane.Fluid.Saturation.At(280);
        Assert.Equal(s.VapourEnergy_J_kg + s.Pressure_Pa * s.VapourVolume_m3_kg, s.VapourEnthalpy_J_kg, 1e-6);
        Assert.Equal(s.LiquidEnergy_J_kg + s.Pressure_Pa * s.LiquidVolume_m3_kg, s.LiquidEnthalpy_J_kg, 1e-6);
        Assert.Equal(s.VapourEnthalpy_J_kg - s.LiquidEnthalpy_J_kg, s.LatentHeat_J_kg, 1e-6);

        // ρ′/(ρ′ − ρ″) of it: the room of the liquid that goes fills with vapour.
        double liquid = 1 / s.LiquidVolume_m3_kg, vapour = 1 / s.VapourVolume_m3_kg;
        Assert.Equal(s.LatentHeat_J_kg * liquid / (liquid - vapour), s.DrawHeat_J_kg, 1e-6);
    }

    // The edge cells go on: a trial step a little past the table reads what the equation gives there, to some hundred-thousandths.
    [Theory]
    [InlineData(190.5)]
    [InlineData(191)]
    [InlineData(354.5)]
    [InlineData(355)]
    [InlineData(355.5)]
    public void The_line_goes_on_smoothly_a_little_past_its_table(double t_K)
    {
        PhaseEquilibrium e = PhaseEquilibrium.At(ReferenceEquation.Fluid, t_K);
        SaturatedPhases s = ReferenceEquation.Fluid.Saturation.At(t_K);
        Assert.Equal(1, s.Pressure_Pa / e.Vapour.Pressure_Pa, 1e-4);
        Assert.Equal(s.Pressure_Pa, ReferenceEquation.Fluid.Saturation.Pressure_Pa(t_K), 1e-6);
        Assert.Equal(1, s.VapourVolume_m3_kg * e.Vapour.Density_kg_m3, 1e-4);
        Assert.Equal(1, s.LiquidVolume_m3_kg * e.Liquid.Density_kg_m3, 1e-5);
    }
}
