using ColdSim.Physics.Fluids;
using ColdSim.Physics.Mixtures;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.Mixtures;

/// <summary>A mixed gas whose vapour is drawn at a temperature that is held: what stays.</summary>
public class DistillationTests
{
    private const double Volume_m3 = 0.0216;

    private static readonly Gen<(GasMasses Gas, double T_K)> Filled =
        from t_K in Gen.Double[235, 290]
        from kg in Gen.Double[2, 8]
        from propane in Gen.Double[0.2, 0.8]
        from normal in Gen.Double[0.05, 0.95]
        select (new GasMasses(propane, (1 - propane) * normal, (1 - propane) * (1 - normal)) * kg, t_K);

    [Fact]
    public void What_is_left_is_what_a_draw_in_twenty_times_as_many_steps_leaves()
        => Gen.Select(Filled, Gen.Double[0.05, 0.95]).Sample((of, part) =>
        {
            const int steps = 4_000;
            double left_kg = part * of.Gas.Sum, dm_kg = (of.Gas.Sum - left_kg) / steps;
            GasMasses fine = of.Gas;
            for (int i = 0; i < steps; i++) fine -= MixedContents.Of(fine, Volume_m3, of.T_K).Vapour * dm_kg;
            GasMasses left = MixedContents.Drawn(of.Gas, Volume_m3, of.T_K, left_kg);
            Assert.Equal(left_kg, left.Sum, 1e-9);
            for (int i = 0; i < GasSpecies.Count; i++) Assert.Equal(fine[i], left[i], 2e-3 * left_kg);
            Assert.True(left.Parts().Propane < of.Gas.Parts().Propane);
        }, iter: 40);

    [Fact]
    public void Nothing_drawn_leaves_everything()
    {
        GasMasses gas = new(3, 2, 1);
        Assert.Equal(gas, MixedContents.Drawn(gas, Volume_m3, 260, gas.Sum));
        Assert.Equal(gas, MixedContents.Drawn(gas, Volume_m3, 260, gas.Sum + 1));
    }

    [Fact]
    public void Left_behind_is_the_liquid_at_which_the_pressure_is_just_what_is_needed()
        => Gen.Select(Filled, Gen.Double[0.2, 0.9]).Sample((of, part) =>
        {
            double start_Pa = MixedContents.Of(of.Gas, Volume_m3, of.T_K).Pressure_Pa;
            GasMasses late = MixedContents.Drawn(of.Gas, Volume_m3, of.T_K, part * of.Gas.Sum);
            MixedContents then = MixedContents.Of(late, Volume_m3, of.T_K);
            Assert.True(then.Pressure_Pa < start_Pa);
            if (then.LiquidMass_kg <= 0.05) return;
            Assert.Equal(then.LiquidMass_kg, MixedContents.LeftBehind_kg(of.Gas, Volume_m3, of.T_K, then.Pressure_Pa), 2e-3 * of.Gas.Sum);
        }, iter: 40);

    [Fact]
    public void All_is_left_behind_where_the_pressure_is_too_low_already_and_nothing_of_a_gas_that_keeps_its_pressure()
    {
        GasMasses gas = new(3, 2, 1);
        MixedContents now = MixedContents.Of(gas, Volume_m3, 260);
        Assert.Equal(now.LiquidMass_kg, MixedContents.LeftBehind_kg(gas, Volume_m3, 260, now.Pressure_Pa));
        Assert.Equal(now.LiquidMass_kg, MixedContents.LeftBehind_kg(gas, Volume_m3, 260, 2 * now.Pressure_Pa));
        Assert.InRange(MixedContents.LeftBehind_kg(gas, Volume_m3, 260, 0.999 * now.Pressure_Pa), 0.9 * now.LiquidMass_kg, now.LiquidMass_kg - 1e-6);

        GasMasses pure = new(5, 0, 0);
        Assert.Equal(0, MixedContents.LeftBehind_kg(pure, Volume_m3, 260, 0.9 * MixedContents.Of(pure, Volume_m3, 260).Pressure_Pa));
        Assert.Equal(0, MixedContents.LeftBehind_kg(gas * 1e-3, Volume_m3, 260, 1e6));
    }

    [Fact]
    public void The_first_drop_of_a_vapour_is_what_its_last_liquid_was()
        => Filled.Sample(of =>
        {
            double sum_m3 = 0;
            for (int i = 0; i < GasSpecies.Count; i++) sum_m3 += of.Gas[i] * GasSpecies.All[i].Fluid.Saturation.At(of.T_K).VapourVolume_m3_kg;
            GasMasses dry = of.Gas * (Volume_m3 / sum_m3);
            GasMasses last = MixedContents.Of(dry * (1 + 1e-8), Volume_m3, of.T_K).Liquid, first = MixedContents.Of(dry * (1 - 1e-8), Volume_m3, of.T_K).Liquid;
            for (int i = 0; i < GasSpecies.Count; i++) Assert.Equal(last[i], first[i], 1e-6);
        }, iter: 200);

    [Fact]
    public void Past_the_end_of_the_saturation_line_heat_capacity_is_still_the_derivative_of_energy()
        => Gen.Select(Gen.Double[1, 40], Gen.Double[0.1, 0.8], Gen.Double[0.01, 0.1]).Sample((past_K, propane, kg) =>
        {
            const double h = 1e-3;
            double t_K = SaturationLine.Highest_K + past_K;
            GasMasses gas = new GasMasses(propane, 0.4 * (1 - propane), 0.6 * (1 - propane)) * kg;
            double slope = (MixedContents.Of(gas, Volume_m3, t_K + h).InternalEnergy_J - MixedContents.Of(gas, Volume_m3, t_K - h).InternalEnergy_J) / (2 * h);
            Assert.Equal(1, MixedContents.Of(gas, Volume_m3, t_K).HeatCapacity_J_K / slope, 1e-6);
        }, iter: 200);
}
