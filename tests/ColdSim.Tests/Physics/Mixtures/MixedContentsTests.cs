using ColdSim.Physics.Fluids;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Mixtures;

public class MixedContentsTests
{
    private const double Volume_m3 = 0.0216;

    private static readonly Gen<(GasMasses Gas, double T_K)> WithLiquid =
        from t_K in Gen.Double[200, 320]
        from fill in Gen.Double[0.1, 0.80]
        from propane in Gen.Double[0, 1]
        from normal in Gen.Double[0, 1]
        from iso in Gen.Double[0.001, 1]
        select (new GasMasses(propane, normal, iso) * (fill * Volume_m3 * 480 / (propane + normal + iso)), t_K);

    private static readonly Gen<(GasMasses Gas, double T_K)> Thin =
        from of in WithLiquid
        from part in Gen.Double[0.05, 0.95]
        select (of.Gas * (part * Dew(of.Gas, of.T_K)), of.T_K);

    // What to multiply masses by so that the last liquid is just gone.
    private static double Dew(GasMasses gas, double t_K)
    {
        double sum_m3 = 0;
        for (int i = 0; i < GasSpecies.Count; i++) sum_m3 += gas[i] * GasSpecies.All[i].Fluid.Saturation.At(t_K).VapourVolume_m3_kg;
        return Volume_m3 / sum_m3;
    }

    [Fact]
    public void Pure_propane_comes_out_as_the_pure_model_says()
        => Gen.Select(Gen.Double[200, 320], Gen.Double[0.1, 0.85]).Sample((t_K, fill) =>
        {
            double mass_kg = fill * Volume_m3 * 480;
            TwoPhaseContents pure = new(mass_kg, Volume_m3, t_K);
            MixedContents mixed = MixedContents.Of(new GasMasses(mass_kg, 0, 0), Volume_m3, t_K);
            Assert.Equal(1, mixed.Pressure_Pa / pure.Pressure_Pa, 1e-12);
            Assert.Equal(1, mixed.LiquidMass_kg / pure.LiquidMass_kg, 1e-8);
            Assert.Equal(1, mixed.InternalEnergy_J / pure.InternalEnergy_J, 1e-8);
            Assert.Equal(1, mixed.HeatCapacity_J_K / pure.HeatCapacity_J_K, 1e-8);
            Assert.Equal(1, mixed.DrawHeat_J_kg / pure.DrawHeat_J_kg, 1e-8);
            Assert.Equal(1, mixed.VapourEnthalpy_J_kg / pure.VapourEnthalpy_J_kg, 1e-12);
            Assert.InRange(mixed.PressureByMass_Pa_kg, -1e-3, 1e-3);
        }, iter: 300);

    [Fact]
    public void Pure_propane_without_liquid_comes_out_as_its_equation_says()
    {
        FluidState own = ReferenceEquation.At(260, 3);
        MixedContents mixed = MixedContents.Of(new GasMasses(3 * Volume_m3, 0, 0), Volume_m3, 260);
        Assert.Equal(1, mixed.Pressure_Pa / own.Pressure_Pa, 1e-12);
        Assert.Equal(1, mixed.VapourEnthalpy_J_kg / own.Enthalpy_J_kg, 1e-12);
        Assert.Equal(1, mixed.HeatCapacity_J_K / (3 * Volume_m3 * own.Cv_J_kgK), 1e-9);
        Assert.Equal(1, mixed.DrawHeat_J_kg / (260 * own.PressureByTemperature_Pa_K / 3), 1e-9);
        Assert.Equal(1, mixed.PressureByMass_Pa_kg / (own.PressureByDensity / Volume_m3), 1e-9);
    }

    [Fact]
    public void Liquid_and_vapour_fill_the_vessel_and_hold_every_species()
        => WithLiquid.Sample(of =>
        {
            MixedContents c = MixedContents.Of(of.Gas, Volume_m3, of.T_K);
            double vapour_kg = of.Gas.Sum - c.LiquidMass_kg;
            GasMasses both = c.Liquid * c.LiquidMass_kg + c.Vapour * vapour_kg;
            Assert.Equal(1, vapour_kg / (c.VapourDensity_kg_m3 * (Volume_m3 - c.LiquidVolume_m3)), 1e-6);
            for (int i = 0; i < GasSpecies.Count; i++) Assert.Equal(of.Gas[i], both[i], 1e-9);
            Assert.Equal(1, c.Pressure_Pa / MixedContents.BubblePressure_Pa(c.Liquid, of.T_K), 1e-9);
        }, iter: 300);

    [Fact]
    public void Heat_capacity_is_the_derivative_of_energy()
        => Gen.OneOf(WithLiquid, Thin).Sample(of =>
        {
            const double h = 1e-3;
            double byTemperature = (Of(of.Gas, of.T_K + h).InternalEnergy_J - Of(of.Gas, of.T_K - h).InternalEnergy_J) / (2 * h);
            Assert.Equal(1, Of(of.Gas, of.T_K).HeatCapacity_J_K / byTemperature, 1e-4);
        }, iter: 300);

    [Fact]
    public void Heat_of_a_draw_is_vapour_enthalpy_less_the_derivative_of_energy_by_what_leaves()
        => Gen.OneOf(WithLiquid, Thin).Sample(of =>
        {
            MixedContents c = Of(of.Gas, of.T_K);
            double dm_kg = 1e-4 * Math.Min(1, of.Gas.Sum);
            double byMass = (Of(of.Gas + c.Vapour * dm_kg, of.T_K).InternalEnergy_J - Of(of.Gas - c.Vapour * dm_kg, of.T_K).InternalEnergy_J) / (2 * dm_kg);
            Assert.Equal(1, (c.VapourEnthalpy_J_kg - byMass) / c.DrawHeat_J_kg, 1e-4);
        }, iter: 300);

    [Fact]
    public void Pressure_by_mass_is_the_derivative_of_pressure()
        => Gen.OneOf(WithLiquid, Thin).Sample(of =>
        {
            MixedContents c = Of(of.Gas, of.T_K);
            double dm_kg = 1e-3 * of.Gas.Sum;
            double byMass = (Of(of.Gas + c.Vapour * dm_kg, of.T_K).Pressure_Pa - Of(of.Gas - c.Vapour * dm_kg, of.T_K).Pressure_Pa) / (2 * dm_kg);
            Assert.Equal(byMass, c.PressureByMass_Pa_kg, 1e-3 * Math.Abs(byMass) + 1e-3);
        }, iter: 300);

    [Fact]
    public void Pressure_and_energy_go_on_without_a_jump_where_the_last_liquid_goes()
        => WithLiquid.Sample(of =>
        {
            GasMasses dry = of.Gas * Dew(of.Gas, of.T_K);
            MixedContents with = Of(dry * (1 + 1e-9), of.T_K), without = Of(dry * (1 - 1e-9), of.T_K);
            Assert.True(with.LiquidMass_kg > 0 && without.LiquidMass_kg <= 0);
            Assert.Equal(1, without.Pressure_Pa / with.Pressure_Pa, 1e-6);
            Assert.Equal(1, without.InternalEnergy_J / with.InternalEnergy_J, 1e-6);
            Assert.Equal(1, without.VapourDensity_kg_m3 / with.VapourDensity_kg_m3, 1e-6);
        }, iter: 300);

    [Fact]
    public void A_thin_gas_is_an_ideal_mixture()
    {
        GasMasses gas = new GasMasses(0.5, 0.3, 0.2) * 1e-5;
        double moles = gas.Propane / ReferenceEquation.MolarMass_kg_mol + (gas.NormalButane + gas.Isobutane) / NormalButane.MolarMass_kg_mol;
        Assert.Equal(1, Of(gas, 290).Pressure_Pa / (moles * 8.314472 * 290 / Volume_m3), 1e-4);
    }

    [Fact]
    public void A_look_allocates_nothing()
    {
        GasMasses gas = new(3, 2, 1);
        double sum = Of(gas, 250).Pressure_Pa + Of(gas * 1e-3, 250).Pressure_Pa;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) sum += Of(gas, 220 + 0.1 * i).DrawHeat_J_kg + Of(gas * 1e-3, 220 + 0.1 * i).DrawHeat_J_kg;
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    private static MixedContents Of(GasMasses gas, double t_K) => MixedContents.Of(gas, Volume_m3, t_K);
}
