using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Fluids;

public class VapourSeriesTests
{
    private static readonly Fluid[] Fluids = [ReferenceEquation.Fluid, NormalButane.Fluid, Isobutane.Fluid];

    private static readonly Gen<(Fluid Of, double T_K, double Rho_kg_m3)> Vapours =
        Gen.Select(Gen.Int[0, 2], Gen.Double[DiluteSeries.Lowest_K, DiluteSeries.Highest_K], Gen.Double[1e-4, 1.1]).Select((i, t_K, saturated) =>
            (Fluids[i], t_K, Math.Min(DiluteSeries.Highest_kg_m3, saturated / Fluids[i].Saturation.At(Math.Min(t_K, SaturationLine.Highest_K)).VapourVolume_m3_kg)));

    [Fact]
    public void Its_series_is_the_equation()
        => Vapours.Sample(v =>
        {
            FluidState exact = v.Of.EnergyAt(v.T_K, v.Rho_kg_m3), series = v.Of.VapourAt(v.T_K, v.Rho_kg_m3);
            double r = 8.314472 / v.Of.MolarMass_kg_mol;
            Assert.Equal(1, series.Pressure_Pa / exact.Pressure_Pa, 1e-10);
            Assert.Equal(0, (series.InternalEnergy_J_kg - exact.InternalEnergy_J_kg) / (r * v.T_K), 1e-10);
            Assert.Equal(0, (series.Enthalpy_J_kg - exact.Enthalpy_J_kg) / (r * v.T_K), 1e-10);
            Assert.Equal(0, (series.Cv_J_kgK - exact.Cv_J_kgK) / r, 1e-7);
            Assert.Equal(1, series.PressureByTemperature_Pa_K / exact.PressureByTemperature_Pa_K, 1e-9);
            Assert.Equal(1, series.PressureByDensity / exact.PressureByDensity, 1e-9);
        }, iter: 3_000);

    [Fact]
    public void Its_energy_and_heat_capacity_agree_where_the_table_goes_from_one_interval_to_the_next()
    {
        const double rho_kg_m3 = 3, h_K = 0.1;
        for (double t_K = DiluteSeries.Lowest_K + 2; t_K < DiluteSeries.Highest_K; t_K += 2)
        {
            double difference = (ReferenceEquation.Fluid.VapourAt(t_K + h_K, rho_kg_m3).InternalEnergy_J_kg - ReferenceEquation.Fluid.VapourAt(t_K - h_K, rho_kg_m3).InternalEnergy_J_kg) / (2 * h_K);
            Assert.Equal(1, difference / ReferenceEquation.Fluid.VapourAt(t_K, rho_kg_m3).Cv_J_kgK, 1e-6);
        }
    }

    [Fact]
    public void Beyond_its_table_it_is_the_equation_itself()
    {
        Assert.Equal(ReferenceEquation.EnergyAt(645, 5).Pressure_Pa, ReferenceEquation.Fluid.VapourAt(645, 5).Pressure_Pa);
        Assert.Equal(ReferenceEquation.EnergyAt(300, 40).Pressure_Pa, ReferenceEquation.Fluid.VapourAt(300, 40).Pressure_Pa);
    }
}
