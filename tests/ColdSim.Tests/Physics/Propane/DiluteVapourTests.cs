using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Propane;

public class DiluteVapourTests
{
    private static readonly Gen<(double T_K, double Rho_kg_m3)> Vapours =
        Gen.Select(Gen.Double[DiluteVapour.Lowest_K, DiluteVapour.Highest_K], Gen.Double[1e-4, 1.1]).Select((t_K, saturated) =>
            (t_K, Math.Min(DiluteVapour.Highest_kg_m3, saturated / SaturationTable.At(t_K).VapourVolume_m3_kg)));

    [Fact]
    public void Its_series_is_the_reference_equation()
        => Vapours.Sample(v =>
        {
            FluidState exact = ReferenceEquation.EnergyAt(v.T_K, v.Rho_kg_m3), series = DiluteVapour.At(v.T_K, v.Rho_kg_m3);
            const double r = ReferenceEquation.GasConstant_J_kgK;
            Assert.Equal(1, series.Pressure_Pa / exact.Pressure_Pa, 1e-10);
            Assert.Equal(0, (series.InternalEnergy_J_kg - exact.InternalEnergy_J_kg) / (r * v.T_K), 1e-10);
            Assert.Equal(0, (series.Enthalpy_J_kg - exact.Enthalpy_J_kg) / (r * v.T_K), 1e-10);
            Assert.Equal(0, (series.Cv_J_kgK - exact.Cv_J_kgK) / r, 1e-7);
            Assert.Equal(1, series.PressureByTemperature_Pa_K / exact.PressureByTemperature_Pa_K, 1e-9);
            Assert.Equal(1, series.PressureByDensity / exact.PressureByDensity, 1e-9);
        });

    [Fact]
    public void Its_energy_and_heat_capacity_agree_where_the_table_goes_from_one_interval_to_the_next()
    {
        const double rho_kg_m3 = 3, h_K = 0.1;
        for (double t_K = DiluteVapour.Lowest_K + 2; t_K < DiluteVapour.Highest_K; t_K += 2)
        {
            double difference = (DiluteVapour.At(t_K + h_K, rho_kg_m3).InternalEnergy_J_kg - DiluteVapour.At(t_K - h_K, rho_kg_m3).InternalEnergy_J_kg) / (2 * h_K);
            Assert.Equal(1, difference / DiluteVapour.At(t_K, rho_kg_m3).Cv_J_kgK, 1e-6);
        }
    }

    [Fact]
    public void Beyond_its_table_it_is_the_equation_itself()
    {
        Assert.Equal(ReferenceEquation.EnergyAt(330, 5).Pressure_Pa, DiluteVapour.At(330, 5).Pressure_Pa);
        Assert.Equal(ReferenceEquation.EnergyAt(300, 40).Pressure_Pa, DiluteVapour.At(300, 40).Pressure_Pa);
    }
}
